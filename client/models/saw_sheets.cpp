#include "client/models/saw_sheets.h"

#include <QDateTime>
#include <algorithm>
#include <tuple>

#include "client/gateway/readings.h"
#include "client/models/qt_words.h"
#include "client/queue/saw_queue.h"

namespace heatkeep {

SawSheets ReadSawSheets(Connection& book, const std::string& saw) {
  SawSheets all;
  std::vector<PlanRow> plans;
  for (const PlanRow& plan : ReadPlans(book, Plans::Live))
    if (plan.saw == saw) plans.push_back(plan);
  std::stable_sort(plans.begin(), plans.end(), [](const PlanRow& a, const PlanRow& b) {
    return std::pair(a.due.empty(), std::tie(a.due, a.plan)) < std::pair(b.due.empty(), std::tie(b.due, b.plan));
  });
  for (const PlanRow& plan : plans) {
    std::optional<Sheet> sheet = ReadSheet(book, plan.plan);
    if (sheet && std::any_of(sheet->blocks.begin(), sheet->blocks.end(), [](const SheetBlock& b) { return b.state != "done"; }))
      all.sheets.push_back(std::move(*sheet));
  }
  for (const SawRow& row : ReadSaws(book))
    if (row.saw == saw) all.stop_stroke = row.stop_stroke;
  all.devices = ReadLengthDevices(book);
  all.tape_doubt = ReadTapeDoubt(book);
  all.places = ReadNames(book, "places", "place");
  all.handover = ReadOpenHandover(book, saw);
  return all;
}

std::string SheetsFileOf(const std::string& queue_file) { return queue_file + ".sheets"; }

void EachKeptSince(const std::string& queue_file, std::int64_t since_ms,
                   const std::function<void(const std::string& deed, const nlohmann::json& body)>& each) {
  constexpr std::int64_t kSecond = 1000;  // the queue's times are whole seconds
  for (const SawQueue::Entry& entry : SawQueue(queue_file).Entries()) {
    const std::int64_t at = QDateTime::fromString(Q(entry.deed.at("true_at")), Qt::ISODate).toMSecsSinceEpoch();
    if (entry.outcome == "waits" || at + kSecond > since_ms) each(entry.deed.at("deed"), entry.deed.at("body"));
  }
}

}  // namespace heatkeep
