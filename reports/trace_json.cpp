#include <nlohmann/json.hpp>

#include "reports/balance_record.h"
#include "reports/flow_parts.h"
#include "reports/record_says.h"
#include "reports/trace_report.h"
#include "reports/whole_file.h"

namespace heatkeep {

namespace {

using Json = nlohmann::ordered_json;

Json HeatsJson(const OrderHeats& heats) {
  Json out{{"one_heat", heats.one_heat}, {"statement", heats.statement}, {"looked_at", heats.looked_at},
           {"heats", Json::array()},     {"before", heats.before},       {"wrong", heats.wrong}};
  for (const OrderHeats::Heat& h : heats.heats)
    out["heats"].push_back(
        Json{{"mill", h.mill}, {"heat", h.heat}, {"identity", h.identity}, {"cut_pieces", h.cut_pieces}, {"pieces", h.pieces}});
  return out;
}

Json RecordJson(const TraceRecord& record) {
  Json out;
  out["record"] = "trace";
  out["kind"] = record.kind;
  out["subject"] = record.subject;
  out["asked_at"] = record.asked_at;
  out["asked_by"] = record.asked_by;
  out["digest"] = record.digest;
  out["happenings"] = record.happenings;
  out["statement"] = OwnWorkStatement();
  out["lines"] = Json::array();
  for (const TraceLine& l : record.lines)
    out["lines"].push_back(Json{{"depth", l.depth},
                                {"what", l.what},
                                {"name", l.name},
                                {"parent", l.parent},
                                {"count", l.count},
                                {"length_nm", l.length.nm},
                                {"mass_g", l.mass.g},
                                {"mill", l.mill},
                                {"heat", l.heat},
                                {"grade", l.grade},
                                {"section", l.section},
                                {"condition", l.condition},
                                {"document", l.document},
                                {"receipt", l.receipt},
                                {"where_now", l.where_now},
                                {"at", l.at},
                                {"by", l.by},
                                {"held", l.held},
                                {"now_nm", l.now.nm},
                                {"kerf_nm", l.kerf.nm}});
  out["balances"] = Json::array();
  for (const HeatBalance& balance : record.balances) out["balances"].push_back(BalanceJson(balance));
  if (record.heats) out["heats"] = HeatsJson(*record.heats);
  out["proof"] = ProofJson(record.proof);
  return out;
}

}  // namespace

std::string TraceSays(const TraceRecord& record) { return RecordSays(RecordJson(record)); }

std::string TraceJson(const TraceRecord& record) {
  // A text that is not UTF-8 is written with a replacement sign: a record must come out.
  return RecordJson(record).dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

void WriteTraceJson(const std::string& path, const TraceRecord& record) {
  const std::string text = TraceJson(record);
  WriteWholeBytes(path, text.data(), text.size());
}

}  // namespace heatkeep
