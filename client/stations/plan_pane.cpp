#include "client/stations/plan_pane.h"

#include <QVBoxLayout>
#include <algorithm>

namespace heatkeep {

PlanPane::PlanPane(QWidget* parent)
    : QWidget(parent), aim_(new PlainWords(FontOf(Size::Body, true))), proof_(new PlainWords(FontOf(Size::SectionHead))),
      figures_(new PlainWords(FontOf(Size::Table), Use::Quiet)), short_all_(new QScrollArea), short_(new SignLine), bars_(new PlanBars) {
  auto* down = Down(this);
  short_all_->setFrameShape(QFrame::NoFrame);
  short_all_->setWidgetResizable(true);
  short_all_->setWidget(short_);
  short_all_->setAccessibleName(tr("what it lacks"));
  for (QWidget* part : std::initializer_list<QWidget*>{aim_, proof_, figures_, short_all_}) down->addWidget(part);
  down->addWidget(bars_, 1);
}

void PlanPane::Show(const QString& aim, bool in_hand, const QString& proof, const QString& figures, const QString& lacks) {
  aim_->setVisible(!aim.isEmpty());
  aim_->setText(in_hand ? tr("%1 - in hand").arg(aim) : aim);
  proof_->setText(proof);
  proof_->setFont(FontOf(aim.isEmpty() ? Size::SectionHead : Size::Body));
  figures_->setText(figures);
  figures_->setVisible(!figures.isEmpty());
  short_->Say(Sign::Warning, lacks);
  short_all_->setVisible(!lacks.isEmpty());
  FitShortage();
}

// As high as its words, but never more than a third beside bars.
void PlanPane::FitShortage() {
  const int words = short_->heightForWidth(std::max(200, short_all_->viewport()->width() - kBetween));
  short_all_->setFixedHeight(std::min(words + 2, bars_->count() > 0 ? height() / 3 : std::max(0, height() * 4 / 5)));
}

void PlanPane::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  FitShortage();
}

}  // namespace heatkeep
