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
  const auto fail = [&](const std::vector<std::int64_t>& which, const std::string& why) {
    out.failed += (out.failed.empty() ? "" : "; ") + why;
    for (const std::int64_t job : which)
      StockDeeds(book).LabelFailed(NewRequest(),
                                   {{"job", std::to_string(job)}, {"printer", out.where.empty() ? "labels" : out.where}, {"reason", why}});
  };
  try {
    const LabelSetup setup = ReadLabelSetup(book);
    const LabelPaper paper = PaperCalled(setup.paper);
    const LabelSize size = SizeFor({0, 0, paper.across, paper.down});
    const PrintOptions print = PrintedNow(book);
    const WaitingLabels waiting = ReadWaitingLabels(book, tags);
    std::vector<LabelFace> faces;
    for (const PieceLabel& label : waiting.labels) {
      LabelFace face = FaceOf(label, size, print.printed_at.substr(0, 10), print.author);
      std::vector<std::int64_t> its;
      for (const auto& job : waiting.jobs)
        if (job.tag == label.tag) its.push_back(job.number);
      if (const std::string wrong = WrongWithLabel({0, 0, paper.across, paper.down}, face, setup.look); !wrong.empty()) {
        fail(its, wrong);
        continue;
      }
      jobs.insert(jobs.end(), its.begin(), its.end());
      faces.push_back(std::move(face));
    }
    out.labels = static_cast<int>(faces.size());
    if (faces.empty()) return out;
    const PaperWay way = WayFor("labels", settings.label_printer, settings.label_folder);
    out.where = way.where();
    Send(way, [&](const std::string& file) { WriteLabels(file, faces, paper, setup.look, 1, print); });
    StockDeeds(book).LabelPrinted(NewRequest(), {{"jobs", jobs}, {"printer", out.where}});
  } catch (const DbError&) { throw; } catch (const std::exception& error) {
    fail(jobs, error.what());
    if (out.where.empty()) out.where = "labels";
  }
  return out;
}

}  // namespace heatkeep
