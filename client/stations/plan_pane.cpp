#include "client/stations/plan_pane.h"

#include <QVBoxLayout>
#include <algorithm>

namespace heatkeep {
namespace {

constexpr int kLeastShortage = 48;  // two lines and a half

}  // namespace

PlanPane::PlanPane(QWidget* parent)
    : QWidget(parent), aim_(new PlainWords(FontOf(Size::Body, true))), proof_(new PlainWords(FontOf(Size::SectionHead))),
      figures_(new PlainWords(FontOf(Size::Table), Use::Quiet)), short_all_(new QScrollArea), short_(new SignLine), bars_(new PlanBars) {
  auto* down = Down(this);
  short_all_->setFrameShape(QFrame::NoFrame);
  short_all_->setWidgetResizable(true);
  short_all_->setWidget(short_);
  short_all_->setAccessibleName(tr("what it lacks"));
  for (QWidget* part : std::initializer_list<QWidget*>{aim_, proof_, figures_}) down->addWidget(part);
  down->addWidget(short_all_, 1000);  // up to its greatest height, before the bars get any more
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

// As high as its words, but never more than a third beside bars; where there is no room it scrolls and pushes nothing out of the window.
void PlanPane::FitShortage() {
  const int words = short_->heightForWidth(std::max(200, short_all_->viewport()->width() - kBetween));
  const int most = bars_->count() > 0 ? std::min(words + 2, std::max(kLeastShortage, height() / 3)) : words + 2;
  short_all_->setMinimumHeight(std::min(most, kLeastShortage));
  short_all_->setMaximumHeight(most);
}

void PlanPane::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  FitShortage();
}

}  // namespace heatkeep
