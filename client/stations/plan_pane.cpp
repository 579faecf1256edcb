#include "client/stations/plan_pane.h"

#include <QVBoxLayout>

namespace heatkeep {

PlanPane::PlanPane(QWidget* parent)
    : QWidget(parent), aim_(new PlainWords(FontOf(Size::Body, true))), proof_(new PlainWords(FontOf(Size::SectionHead))),
      figures_(new PlainWords(FontOf(Size::Table), Use::Quiet)), bars_(new PlanBars) {
  auto* down = new QVBoxLayout(this);
  down->setContentsMargins(0, 0, 0, 0);
  down->setSpacing(kInside);
  for (QWidget* words : {aim_, proof_, figures_}) down->addWidget(words);
  down->addWidget(bars_, 1);
}

void PlanPane::Show(const QString& aim, bool in_hand, const QString& proof, const QString& figures) {
  aim_->setVisible(!aim.isEmpty());
  aim_->setText(in_hand ? tr("%1 - in hand").arg(aim) : aim);
  proof_->setText(proof);
  proof_->setFont(FontOf(aim.isEmpty() ? Size::SectionHead : Size::Body));
  figures_->setText(figures);
  figures_->setVisible(!figures.isEmpty());
}

}  // namespace heatkeep
