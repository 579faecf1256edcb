// The saw on paper: the pick list of the plan in hand, else what waits.
#include "client/stations/saw_station.h"
#include "client/stations/screen_paper.h"

namespace heatkeep {

DeskPaper SawStation::Paper() {
  if (const Sheet* sheet = work_.sheet(); sheet && QString::fromStdString(sheet->number).toLongLong() > 0)
    return PickListPaper(std::stoll(sheet->number), units());
  ScreenPage page = PageOf(tr("Saw"), desk().settings.saw, units());
  page.parts = {WaitingPart(tr("What waits"), *waiting_)};
  return PaperOf("saw", std::move(page));
}

}  // namespace heatkeep
