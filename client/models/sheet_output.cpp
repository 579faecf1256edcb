#include "client/models/sheet_output.h"

#include <QDir>
#include <QFile>

#include "client/gateway/readings.h"
#include "client/models/paper_sender.h"
#include "reports/pick_list.h"

namespace heatkeep {

SheetOut PrintSheet(Connection& book, std::int64_t plan, const DeskSettings& settings) {
  SheetOut out;
  const std::optional<Sheet> sheet = ReadSheet(book, plan);
  PrintOptions print;
  print.printed_at = ReadServerTime(book);
  print.author = book.User();
  try {
    if (!sheet) throw std::invalid_argument("there is no plan " + std::to_string(plan));
    const bool printer = !settings.paper_printer.isEmpty();
    const QString file = PaperFile(QString("plan-%1").arg(plan), printer ? QDir::tempPath() : settings.paper_folder);
    out.where = (printer ? settings.paper_printer : file).toStdString();
    WritePickListPdf(file.toStdString(), *sheet, print, settings.units.Ruler());
    if (printer) {
      SendToPrinter(settings.paper_printer, file);
      QFile::remove(file);
    }
  } catch (const std::exception& error) {
    out.failed = error.what();
  }
  return out;
}

}  // namespace heatkeep
