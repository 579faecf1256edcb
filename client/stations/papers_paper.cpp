// The papers station on paper: the record of what is traced (proved and kept, where the login may keep one), else what is said of it or
// what waits.
#include "client/stations/papers_station.h"
#include "client/stations/screen_paper.h"

namespace heatkeep {

DeskPaper PapersStation::Paper() {
  const std::optional<PapersAnswer>& answer = work_.answer();
  if (answer && answer->record && desk().link.May("keep_record")) return TracePaper(answer->what);
  ScreenPage page = PageOf(tr("Papers"), answer ? head_->text() : tr("what waits"), units());
  if (answer) page.parts = {WordsPart({}, what_->text()), WordsPart(tr("What the book says"), papers_->words())};
  else page.parts = {WaitingPart({}, *waiting_)};
  return PaperOf("papers", std::move(page));
}

}  // namespace heatkeep
