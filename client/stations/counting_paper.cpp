// The counting station on paper: a count sheet to be written on, blind like the screen; once a place is counted, what differs.
#include "client/stations/counting_station.h"
#include "client/stations/screen_paper.h"

namespace heatkeep {
namespace {

constexpr int kBlankLines = 24;

}  // namespace

DeskPaper CountingStation::Paper() {
  const CountRow* const count = work_.count(place_);
  const bool counted = count && count->state == "counted", may_look = desk().link.May("approve_count");
  if (place_.isEmpty()) return {};
  ScreenPage page = PageOf(counted ? tr("Count, what differs") : tr("Count sheet"), place_, units());
  if (counted) {
    page.parts.push_back(WordsPart({}, approve_what_->text()));
    if (may_look) page.parts.push_back(TablePart({}, *differences_));
    if (may_look && differences_->rowCount() == 0)
      page.parts.push_back(WordsPart({}, tr("Nothing differs: what was counted is what the book says.")));
    page.parts.push_back(
        WordsPart({}, tr("Looked at, by whom: ................................   What it comes from: ................................")));
  } else {
    page.parts.push_back(WordsPart(
        {}, tr("Write down every tag that lies here, as it is read, and what carries no tag. What should lie here is not on this sheet.")));
    PagePart lines = TablePart({}, *here_);
    for (int i = 0; i < kBlankLines; ++i)
      lines.rows.push_back({{"............", "......................", "............", "................................"}});
    page.parts.push_back(std::move(lines));
  }
  return PaperOf("count", std::move(page));
}

}  // namespace heatkeep
