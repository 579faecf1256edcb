// The family tree of a trace on the screen: every piece as a bar to scale under the piece it came from, what left it in words below.
// Scrolls; up and down choose a piece, Enter opens it.
#pragma once

#include <QAbstractScrollArea>
#include <vector>

#include "client/models/reading_units.h"
#include "reports/family_tree.h"

namespace heatkeep {

class FamilyTreeView : public QAbstractScrollArea {
  Q_OBJECT

 public:
  explicit FamilyTreeView(QWidget* parent = nullptr);

  void Show(const std::vector<TraceLine>& lines, ReadingUnits units);
  int pieces() const { return static_cast<int>(pieces_.size()); }

 signals:
  void Opened(const QString& tag);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;

 private:
  struct Placed {
    TreePiece piece;
    PieceBar bar;
    bool same_metal = false;         // as the piece it is from: not said again
    std::vector<std::string> words;  // as reports has them; the reader's are found for what is painted
    int top = 0, height = 0;
  };
  void Arrange();
  BarView ViewOf(const Placed& placed, double y) const;
  int IndentOf(const Placed& placed) const;
  void Choose(int piece);
  int At(int y) const;

  std::vector<Placed> pieces_;
  ReadingUnits units_;
  Length full_;
  int chosen_ = -1;
};

}  // namespace heatkeep
