#include "client/models/label_output.h"

#include "client/gateway/read_labels.h"
#include "client/gateway/stock_deeds.h"
#include "client/models/paper_sender.h"
#include "client/records/label_setup.h"
#include "client/records/printed_now.h"
#include "reports/label_sheet.h"

namespace heatkeep {

LabelsOut PrintLabels(Connection& book, const std::vector<std::string>& tags, const DeskSettings& settings) {
  LabelsOut out;
  std::vector<std::int64_t> jobs;
  try {
    const LabelSetup setup = ReadLabelSetup(book);
    const LabelPaper paper = PaperCalled(setup.paper);
    const LabelSize size = SizeFor({0, 0, paper.across, paper.down});
    const PrintOptions print = PrintedNow(book);
    const WaitingLabels waiting = ReadWaitingLabels(book, tags);
    std::vector<LabelFace> faces;
    for (const PieceLabel& label : waiting.labels) faces.push_back(FaceOf(label, size, print.printed_at.substr(0, 10), print.author));
    out.labels = static_cast<int>(faces.size());
    jobs = waiting.jobs;
    if (faces.empty()) return out;
    const PaperWay way = WayFor("labels", settings.label_printer, settings.label_folder);
    out.where = way.where();
    Send(way, [&](const std::string& file) { WriteLabels(file, faces, paper, setup.look, 1, print); });
    StockDeeds(book).LabelPrinted(NewRequest(), {{"jobs", jobs}, {"printer", out.where}});
  } catch (const DbError&) { throw; } catch (const std::exception& error) {
    out.failed = error.what();
    if (out.where.empty()) out.where = "labels";
    for (const std::int64_t job : jobs)
      StockDeeds(book).LabelFailed(NewRequest(), {{"job", std::to_string(job)}, {"printer", out.where}, {"reason", out.failed}});
  }
  return out;
}

}  // namespace heatkeep
