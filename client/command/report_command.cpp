#include "client/command/report_command.h"

#include <ostream>
#include <stdexcept>

#include "client/command/option_text.h"
#include "client/gateway/deeds.h"
#include "client/gateway/readings.h"
#include "client/gateway/snapshot.h"
#include "client/records/proved_record.h"
#include "reports/balance_record.h"
#include "reports/measured_list.h"
#include "reports/pick_list.h"
#include "reports/sheet_json.h"
#include "reports/trace_report.h"
#include "schema/terms/condition_text.h"
#include "schema/terms/date_text.h"
#include "schema/terms/section.h"

namespace heatkeep::command {
namespace {

// "Vandrek round 80 +QT; Vandrek round 80, no condition"
std::string LotNames(const std::vector<HeatBalance>& lots) {
  std::string names;
  for (const HeatBalance& lot : lots)
    names += (names.empty() ? "" : "; ") + lot.mill + " " + lot.section + (lot.condition.empty() ? ", no condition" : " " + lot.condition);
  return names;
}

}  // namespace

int RunReportSheet(const BookCall& call, std::int64_t plan, const PaperOptions& options) {
  return WithBook(call, [&](Connection& connection) {
    const std::optional<Sheet> sheet = ReadSheet(connection, plan);
    if (!sheet) throw std::invalid_argument("there is no plan " + std::to_string(plan) + "; `heatkeep plan list` names them");
    WorkWatch watch(call.err, options.progress);
    const PrintOptions print = PrintFor(connection, options, &watch);
    const Units units = options.inch ? Units::Inch : Units::Metric;
    const auto json = [&] { return SheetJson(*sheet).dump(2); };
    return WritePapers(call, options,
                       {{".pdf", [&](const std::string& p) { WritePickListPdf(p, *sheet, print, units); }},
                        {".xlsx", [&](const std::string& p) { WritePickListXlsx(p, *sheet, print); }},
                        {".json", TextWriter(json)}},
                       json);
  });
}

int RunReportTrace(const BookCall& call, const std::string& kind, const std::string& name, const std::string& mill,
                   const PaperOptions& options) {
  return WithBook(call, [&](Connection& connection) {
    const std::optional<TraceRecord> record = ReadProvedTrace(connection, {kind, name, mill});
    if (!record)
      throw std::invalid_argument("the book knows no " + kind + " \"" + name + "\"" +
                                  (kind == "order" ? " that anything was cut for; `heatkeep cutlist list` names the open ones"
                                                   : "; `heatkeep stock` names what is here"));
    WorkWatch watch(call.err, options.progress);
    const PrintOptions print = PrintFor(connection, options, &watch);
    return WritePapers(call, options,
                       {{".pdf", [&](const std::string& p) { WriteTracePdf(p, *record, print); }},
                        {".xlsx", [&](const std::string& p) { WriteTraceXlsx(p, *record, print); }},
                        {".json", [&](const std::string& p) { WriteTraceJson(p, *record); }},
                        {".csv", [&](const std::string& p) { WriteTraceCsv(p, *record); }}},
                       [&] { return TraceJson(*record); });
  });
}

int RunReportBalance(const BookCall& call, const BalanceOfLot& asked, const PaperOptions& options) {
  return WithBook(call, [&](Connection& connection) {
    const std::string& heat = asked.heat;
    const RecordSubject subject{"heat", heat, asked.mill};
    Snapshot snapshot(connection);
    std::vector<HeatBalance> lots = ReadBalances(connection, "heat", heat, asked.mill);
    if (lots.empty()) throw std::invalid_argument("the book knows no heat \"" + heat + "\"; `heatkeep stock` names what is here");
    const std::string all = LotNames(lots);
    if (!asked.section.empty())
      std::erase_if(lots, [wanted = ReadSection(asked.section)](const HeatBalance& lot) { return ReadSection(lot.section) != wanted; });
    if (!asked.condition.empty()) {
      const std::string wanted = asked.condition == "none" ? "" : NormalCondition(asked.condition);
      std::erase_if(lots, [&](const HeatBalance& lot) { return NormalCondition(lot.condition) != wanted; });
    }
    if (lots.size() != 1) {
      throw std::invalid_argument(
          (lots.empty() ? "heat \"" + heat + "\" has no such lot here (" + all + ")"
                        : "heat \"" + heat + "\" is " + std::to_string(lots.size()) + " lots here (" + LotNames(lots) + ")") +
          "; expected --mill, --section and --condition of one");
    }
    WorkWatch watch(call.err, options.progress);
    const PrintOptions print = PrintFor(connection, options, &watch);
    const HeatBalance& lot = lots.front();
    const RecordProof proof = ProofOf(connection, subject, BalanceSays(lot));
    snapshot.End();
    KeepRecord(connection, subject, proof);
    const auto json = [&] { return BalanceRecordJson(lot, print, proof); };
    return WritePapers(call, options,
                       {{".pdf", [&](const std::string& p) { WriteBalancePdf(p, lot, print, proof); }},
                        {".xlsx", [&](const std::string& p) { WriteBalanceXlsx(p, lot, print, proof); }},
                        {".json", TextWriter(json)},
                        {".csv", [&](const std::string& p) { WriteBalanceCsv(p, lot); }}},
                       json);
  });
}

int RunReportMeasured(const BookCall& call, const MeasuredQuestion& asked, const PaperOptions& options) {
  return WithBook(call, [&](Connection& connection) {
    for (const auto& [option, day] : {std::pair{"--from", asked.from}, std::pair{"--until", asked.to}})
      if (!day.empty()) ReadOption(option, day, [](const std::string& words) { return ReadIsoDate(words); });
    const std::vector<MeasuredRow> rows = ReadMeasured(connection, asked.from, asked.to, asked.heat);
    std::string title = asked.heat.empty() ? "all heats" : "heat " + asked.heat;
    if (!asked.from.empty()) title += ", from " + asked.from;
    if (!asked.to.empty()) title += ", to " + asked.to;
    WorkWatch watch(call.err, options.progress);
    const PrintOptions print = PrintFor(connection, options, &watch);
    const auto json = [&] { return MeasuredJson(rows).dump(2); };
    return WritePapers(call, options,
                       {{".pdf", [&](const std::string& p) { WriteMeasuredPdf(p, title, rows, print); }},
                        {".xlsx", [&](const std::string& p) { WriteMeasuredXlsx(p, title, rows, print); }},
                        {".csv", [&](const std::string& p) { WriteMeasuredCsv(p, rows); }},
                        {".json", TextWriter(json)}},
                       json);
  });
}

int RunSeal(const BookCall& call) {
  return WithBook(call, [&](Connection& connection) {
    const Json seal = Deeds(connection).SealBook(NewRequest());
    call.out << "seal " << seal["seal"] << " after happening " << seal["last_happening"] << ": " << seal["digest"].get<std::string>()
             << '\n';
    return 0;
  });
}

}  // namespace heatkeep::command
