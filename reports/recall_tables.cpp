#include <algorithm>
#include <cctype>
#include <functional>
#include <nlohmann/json.hpp>
#include <set>

#include "reports/flow_parts.h"
#include "reports/quantity_text.h"
#include "reports/recall_report.h"
#include "reports/record_says.h"
#include "reports/table_csv.h"
#include "reports/whole_file.h"

namespace heatkeep {
namespace {

using Json = nlohmann::ordered_json;

Json RecordJson(const RecallRecord& record) {
  Json out{{"record", "recall"},
           {"scope", record.scope},
           {"ref", record.ref},
           {"mill", record.mill},
           {"drill", record.drill},
           {"asked_at", record.asked_at},
           {"asked_by", record.asked_by},
           {"laps", Json::array()},
           {"digest_before", record.digest_before},
           {"digest_after", record.digest_after},
           {"sums", Json::array()},
           {"lines", Json::array()}};
  for (const RecallRecord::Lap& lap : record.laps) out["laps"].push_back(Json{{"what", lap.what}, {"milliseconds", lap.milliseconds}});
  for (const RecallSum& sum : RecallSums(record))
    out["sums"].push_back(
        Json{{"whereabouts", sum.whereabouts}, {"pieces", sum.pieces}, {"length_nm", sum.length.nm}, {"mass_g", sum.mass.g}});
  for (const RecallLine& l : record.lines)
    out["lines"].push_back(Json{{"whereabouts", l.whereabouts},
                                {"what", l.what},
                                {"tag", l.tag},
                                {"count", l.count},
                                {"length_nm", l.length.nm},
                                {"mass_g", l.mass.g},
                                {"mill", l.mill},
                                {"heat", l.heat},
                                {"grade", l.grade},
                                {"section", l.section},
                                {"condition", l.condition},
                                {"owner", l.owner},
                                {"site", l.site},
                                {"place", l.place},
                                {"walk", l.walk},
                                {"order", l.order},
                                {"line", l.line},
                                {"customer", l.customer},
                                {"note", l.note},
                                {"gone_at", l.gone_at},
                                {"words", l.words},
                                {"held", l.held}});
  out["proof"] = ProofJson(record.proof);
  return out;
}

Table Lines(const std::string& name, const RecallRecord& record, const std::function<bool(const RecallLine&)>& wanted) {
  Table table{name,
              {{"where", 12},
               {"site", 10},
               {"place", 14},
               {"tag", 12},
               {"what", 12},
               {"count", 8},
               {"length mm (of all)", 14, 3},
               {"mass kg (of all)", 12, 3},
               {"mill", 14},
               {"heat", 14},
               {"grade", 14},
               {"section", 16},
               {"condition", 10},
               {"owner", 14},
               {"order", 12},
               {"line", 8},
               {"customer", 24},
               {"delivery note", 16},
               {"gone at", 22},
               {"words", 40},
               {"held", 7}},
              {}};
  for (const RecallLine& l : record.lines)
    if (wanted(l))
      table.rows.push_back({l.whereabouts,
                            l.site,
                            l.place,
                            l.tag,
                            l.what,
                            std::int64_t{l.count},
                            MmCell(l.length),
                            KgCell(l.mass),
                            l.mill,
                            l.heat,
                            l.grade,
                            l.section,
                            l.condition,
                            l.owner,
                            l.order,
                            l.line,
                            l.customer,
                            l.note,
                            l.gone_at,
                            l.words,
                            std::string(l.held ? "HELD" : "")});
  return table;
}

Table Everything(const RecallRecord& record) {
  return Lines("Where it is", record, [](const RecallLine&) { return true; });
}

Table About(const RecallRecord& record) {
  Table table{"About", {{"what", 22}, {"value", 90}}, {}};
  const auto say = [&](const std::string& what, const std::string& words) { table.rows.push_back({what, words}); };
  say(record.drill ? "DRILL of a recall of" : "recall of",
      record.scope + " " + record.ref + (record.mill.empty() ? "" : " of " + record.mill));
  say("asked at", record.asked_at);
  say("asked by", record.asked_by);
  for (const RecallRecord::Lap& lap : record.laps) say(lap.what + ", after", std::to_string(lap.milliseconds) + " ms");
  say("record's digest", ProofWords(record.proof));
  say("statement", OwnWorkStatement());
  return table;
}

}  // namespace

bool IsToVisit(const RecallLine& line) {
  const std::set<std::string> near{"on rack", "at door", "at saw", "on site"};
  return near.contains(line.whereabouts);
}
bool IsWithCustomer(const RecallLine& line) { return line.whereabouts == "shipped" || line.whereabouts == "sold"; }

std::vector<RecallSum> RecallSums(const RecallRecord& record) {
  std::vector<RecallSum> sums;
  for (const RecallLine& l : record.lines) {
    auto sum = std::find_if(sums.begin(), sums.end(), [&](const RecallSum& s) { return s.whereabouts == l.whereabouts; });
    if (sum == sums.end()) sum = sums.insert(sums.end(), RecallSum{l.whereabouts, 0, {}, {}});
    sum->pieces += l.count;
    sum->length += l.length;
    sum->mass += l.mass;
  }
  return sums;
}

std::string RecallText(const RecallRecord& record) {
  std::string text;
  for (const RecallSum& sum : RecallSums(record))
    text += sum.whereabouts + ": " + std::to_string(sum.pieces) + ", " + MetreText(sum.length) + ", " + KgText(sum.mass) + "\n";
  return text;
}

std::vector<std::string> RecallCustomers(const RecallRecord& record) {
  std::set<std::string> names;
  for (const RecallLine& l : record.lines)
    if (IsWithCustomer(l) && !l.customer.empty()) names.insert(l.customer);
  return {names.begin(), names.end()};
}

std::string LetterFileName(int number, const std::string& customer) {
  std::string plain;
  for (const char c : customer) {
    const auto sign = static_cast<unsigned char>(c);
    if (sign < 128 && std::isalnum(sign) != 0) plain += static_cast<char>(std::tolower(sign));
    else if (!plain.empty() && plain.back() != '_') plain += '_';
  }
  plain = plain.substr(0, 40);
  while (!plain.empty() && plain.back() == '_') plain.pop_back();
  return "letter_" + std::to_string(number) + (plain.empty() ? "" : "_" + plain) + ".pdf";
}

std::string RecallSays(const RecallRecord& record) { return RecordSays(RecordJson(record)); }
std::string RecallJson(const RecallRecord& record) { return RecordJson(record).dump(2, ' ', false, Json::error_handler_t::replace) + "\n"; }

void WriteRecallJson(const std::string& path, const RecallRecord& record) {
  const std::string text = RecallJson(record);
  WriteWholeBytes(path, text.data(), text.size());
}

void WriteRecallCsv(const std::string& path, const RecallRecord& record) { WriteTableCsv(path, Everything(record)); }

void WriteRecallXlsx(const std::string& path, const RecallRecord& record, const PrintOptions& options) {
  const std::vector<Table> tables{Everything(record), Lines("Places to visit", record, IsToVisit),
                                  Lines("With customers", record, IsWithCustomer), About(record)};
  WriteWorkbook(path, (record.drill ? "DRILL: recall of " : "Recall of ") + record.scope + " " + record.ref, tables, options);
}

}  // namespace heatkeep
