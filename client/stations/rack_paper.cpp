// The rack on paper: what nobody used, worths and ages, lengths against what was asked for, where it lies, yield, and the rows shown.
#include "client/stations/rack_station.h"
#include "client/stations/screen_paper.h"
#include "client/stations/yield_view.h"

namespace heatkeep {

DeskPaper RackStation::Paper() {
  if (!work_.read()) return {};
  const RackGroup& group = work_.group();
  ScreenPage page = PageOf(tr("Rack and drops"),
                           group.grade.empty() ? tr("whole rack") : QString::fromStdString(group.section + " " + group.grade), units());
  page.full = rows_->full_length();
  page.parts = {WordsPart({}, head_->text() + '\n' + next_->text()),
                DrawnPart(tr("Lengths"), *lengths_),
                WordsPart(tr("Worth and age"), worth_->text()),
                DrawnPart(tr("Where it lies"), *map_),
                DrawnPart(tr("Yield"), *yield_),
                TablePart(unused_only_ ? tr("What nobody used") : tr("Drops"), table_)};
  return PaperOf("rack", std::move(page));
}

}  // namespace heatkeep
