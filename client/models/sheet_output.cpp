#include "client/models/sheet_output.h"

#include "client/models/paper_sender.h"
#include "client/records/printed_now.h"
#include "reports/pick_list.h"

namespace heatkeep {

SheetOut PrintSheet(Connection& book, std::int64_t plan, const DeskSettings& settings) {
  SheetOut out;
  const std::optional<Sheet> sheet = ReadSheet(book, plan);
  const PrintOptions print = PrintedNow(book);
  try {
    if (!sheet) throw std::invalid_argument("there is no plan " + std::to_string(plan));
    const PaperWay way = WayFor(QString("plan-%1").arg(plan), settings.paper_printer, settings.paper_folder);
    out.where = way.where();
    Send(way, [&](const std::string& file) { WritePickListPdf(file, *sheet, print, settings.units.Ruler()); });
  } catch (const std::exception& error) {
    out.failed = error.what();
  }
  return out;
}

}  // namespace heatkeep
