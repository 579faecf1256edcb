#include "client/models/paper_output.h"

#include "client/gateway/readings.h"
#include "client/models/paper_sender.h"
#include "client/records/printed_now.h"
#include "reports/pick_list.h"

namespace heatkeep {

PaperOut PrintPaper(Connection& book, const DeskPaper& paper, const DeskSettings& settings) {
  PaperOut out;
  const PrintOptions print = PrintedNow(book);
  try {
    const PaperWay way = WayFor(paper.kind, settings.paper_printer, settings.paper_folder);
    out.where = way.where();
    Send(way, [&](const std::string& file) { paper.write(book, file, print); });
  } catch (const DbError&) { throw; } catch (const std::exception& error) {
    out.failed = error.what();
  }
  return out;
}

DeskPaper PickListPaper(std::int64_t plan, ReadingUnits units) {
  return {QString("plan-%1").arg(plan), [plan, units](Connection& book, const std::string& file, const PrintOptions& print) {
            const std::optional<Sheet> sheet = ReadSheet(book, plan);
            if (!sheet) throw std::invalid_argument("there is no plan " + std::to_string(plan));
            WritePickListPdf(file, *sheet, print, units.Ruler());
          }};
}

}  // namespace heatkeep
