// The metal balance of a lot on the screen: what came in as one bar, split into where it is now, each part with its letter and words
// below; and the check in words.
#pragma once

#include <QWidget>
#include <optional>

#include "client/models/reading_units.h"
#include "schema/terms/rows.h"

namespace heatkeep {

class BalanceBarView : public QWidget {
  Q_OBJECT

 public:
  explicit BalanceBarView(QWidget* parent = nullptr) : QWidget(parent) {}

  void Show(const std::optional<HeatBalance>& balance, ReadingUnits units);

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override { return sizeHint(); }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  struct Part {
    QString letter, words;
    Length length;
  };
  std::vector<Part> Parts() const;

  std::optional<HeatBalance> balance_;
  ReadingUnits units_;
};

}  // namespace heatkeep
