#include "client/stations/plan_pane.h"

#include <QVBoxLayout>

namespace heatkeep {
namespace {

constexpr int kShortLines = 4;  // of what it lacks; the rest is counted

}  // namespace

PlanPane::PlanPane(QWidget* parent)
    : QWidget(parent), aim_(new PlainWords(FontOf(Size::Body, true))), proof_(new PlainWords(FontOf(Size::SectionHead))),
      figures_(new PlainWords(FontOf(Size::Table), Use::Quiet)), short_(new SignLine), bars_(new PlanBars) {
  auto* down = Down(this);
  for (QWidget* words : std::initializer_list<QWidget*>{aim_, proof_, figures_, short_}) down->addWidget(words);
  down->addWidget(bars_, 1);
}

void PlanPane::Show(const QString& aim, bool in_hand, const QString& proof, const QString& figures, const QString& lacks) {
  aim_->setVisible(!aim.isEmpty());
  aim_->setText(in_hand ? tr("%1 - in hand").arg(aim) : aim);
  proof_->setText(proof);
  proof_->setFont(FontOf(aim.isEmpty() ? Size::SectionHead : Size::Body));
  figures_->setText(figures);
  figures_->setVisible(!figures.isEmpty());
  QStringList lines = lacks.split('\n', Qt::SkipEmptyParts);
  const auto more = static_cast<int>(lines.size()) - kShortLines;
  if (more > 0) lines = lines.mid(0, kShortLines) << tr("and %n more line(s)", nullptr, more);
  short_->Say(Sign::Warning, lines.join('\n'));
}

}  // namespace heatkeep
