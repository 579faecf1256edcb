#include <nlohmann/json.hpp>

#include "reports/balance_record.h"
#include "reports/flow_parts.h"
#include "reports/trace_report.h"
#include "reports/whole_file.h"

namespace heatkeep {

std::string TraceJson(const TraceRecord& record) {
  using Json = nlohmann::ordered_json;
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
                                {"held", l.held}});
  out["balances"] = Json::array();
  for (const HeatBalance& balance : record.balances) out["balances"].push_back(BalanceJson(balance));
  // A text that is not UTF-8 is written with a replacement sign: a record must come out.
  return out.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

void WriteTraceJson(const std::string& path, const TraceRecord& record) {
  const std::string text = TraceJson(record);
  WriteWholeBytes(path, text.data(), text.size());
}

}  // namespace heatkeep
