// The planning station on paper: the pick list of a plan that is promised, the bars of what is proposed, else the lines that are open.
#include "client/stations/plan_station.h"
#include "client/stations/plan_words.h"
#include "client/stations/screen_paper.h"

namespace heatkeep {

DeskPaper PlanStation::Paper() {
  if (const auto plan = work_.chosen_plan()) return work_.sheet() ? PickListPaper(*plan, units()) : DeskPaper{};
  ScreenPage page = PageOf(work_.proposal() ? tr("Proposed, not promised yet") : tr("Open lines"), head_->text(), units());
  for (std::size_t i = 0; i < work_.proposals().size(); ++i) {
    const PlanProposal& proposal = work_.proposals()[i];
    const bool several = work_.proposals().size() > 1;
    page.full = std::max(page.full, LongestOf(proposal));
    QStringList words{ProofWords(proposal), FiguresWords(proposal.figures, units())};
    if (const QString lacks = ShortWords(proposal); !lacks.isEmpty()) words << lacks;
    if (several && i == work_.in_hand()) words << work_.difference();
    page.parts.push_back(WordsPart(several ? AimWords(proposal.aim) : QString(), words.join('\n')));
    OrderLetters letters;
    for (PagePart& part : BarParts(GroupsOf(proposal, units(), letters))) page.parts.push_back(std::move(part));
  }
  if (!work_.proposal()) {
    page.parts.push_back(TablePart({}, lines_));
    if (lines_.rowCount() == 0) page.parts = {WaitingPart({}, *waiting_)};
  }
  return PaperOf("planning", std::move(page));
}

}  // namespace heatkeep
