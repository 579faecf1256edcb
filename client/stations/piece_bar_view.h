// A piece bar as large as a station shows it, with the next cut lit and a ruler above.
#pragma once

#include <QWidget>
#include <optional>

#include "client/models/reading_units.h"
#include "reports/piece_bar.h"

namespace heatkeep {

class PieceBarView : public QWidget {
  Q_OBJECT

 public:
  explicit PieceBarView(QWidget* parent = nullptr);

  // `full`: the longest piece of the view, its scale; the piece itself where there is only one.
  void Show(const std::optional<PieceBar>& bar, ReadingUnits units, Length full = {}, int lit_run = -1);
  int lit_run() const { return lit_run_; }

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;
  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  BarView ViewOf(double width) const;

  std::optional<PieceBar> bar_;
  ReadingUnits units_;
  Length full_;
  int lit_run_ = -1;
};

}  // namespace heatkeep
