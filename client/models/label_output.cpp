#include "client/models/label_output.h"

#include <QDir>
#include <QFile>
#include <stdexcept>

#include "client/gateway/read_labels.h"
#include "client/gateway/readings.h"
#include "client/gateway/stock_deeds.h"
#include "client/models/paper_sender.h"
#include "reports/label_sheet.h"

namespace heatkeep {
namespace {

struct Waiting {
  std::vector<LabelFace> faces;
  std::vector<std::int64_t> jobs;
};

// Of several labels that wait for one piece the last is printed; all are told.
Waiting WaitingFor(Connection& book, const std::vector<std::string>& tags, LabelSize size, const std::string& day) {
  Waiting waiting;
  std::vector<PieceLabel> labels = ReadWaitingLabels(book, tags);
  for (std::size_t i = 0; i < labels.size(); ++i) {
    waiting.jobs.push_back(labels[i].job);
    bool later = false;
    for (std::size_t k = i + 1; k < labels.size(); ++k) later = later || labels[k].tag == labels[i].tag;
    if (!later) waiting.faces.push_back(FaceOf(labels[i], size, day, book.User()));
  }
  return waiting;
}

}  // namespace

LabelsOut PrintLabels(Connection& book, const std::vector<std::string>& tags, const DeskSettings& settings) {
  LabelsOut out;
  const bool printer = !settings.label_printer.isEmpty();
  std::vector<std::int64_t> jobs;
  try {
    const LabelPaper paper = PaperCalled(ReadSetting(book, "label_paper", "100x50"));
    const LabelLook look{ReadSetting(book, "label_code", "data-matrix") == "qr" ? MatrixCode::Qr : MatrixCode::DataMatrix, std::stoi(ReadSetting(book, "label_dpi", "203"))};
    PrintOptions print;
    print.printed_at = ReadServerTime(book);
    print.author = book.User();
    const Waiting waiting = WaitingFor(book, tags, SizeFor({0, 0, paper.across, paper.down}), print.printed_at.substr(0, 10));
    out.labels = static_cast<int>(waiting.faces.size());
    jobs = waiting.jobs;
    if (waiting.faces.empty()) return out;
    const QString file = PaperFile("labels", printer ? QDir::tempPath() : settings.label_folder);
    out.where = (printer ? settings.label_printer : file).toStdString();
    WriteLabels(file.toStdString(), waiting.faces, paper, look, 1, print);
    if (printer) {
      SendToPrinter(settings.label_printer, file);
      QFile::remove(file);
    }
    StockDeeds(book).LabelPrinted(NewRequest(), {{"jobs", jobs}, {"printer", out.where}});
  } catch (const DbError&) {
    throw;
  } catch (const std::exception& error) {
    out.failed = error.what();
    if (out.where.empty()) out.where = "labels";
    for (const std::int64_t job : jobs) StockDeeds(book).LabelFailed(NewRequest(), {{"job", std::to_string(job)}, {"printer", out.where}, {"reason", out.failed}});
  }
  return out;
}

}  // namespace heatkeep
