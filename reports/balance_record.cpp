#include "reports/balance_record.h"

#include <nlohmann/json.hpp>

#include "reports/piece_bar.h"
#include "reports/record_says.h"
#include "reports/table_csv.h"

namespace heatkeep {

BalanceSums SumsOf(const HeatBalance& balance) {
  BalanceSums sums;
  for (const BalanceClass& c : balance.classes) {
    (c.in ? sums.in : sums.out) += c.length;
    (c.in ? sums.in_mass : sums.out_mass) += c.mass;
  }
  return sums;
}

std::string ClassLetter(const HeatBalance& balance, std::size_t index) {
  if (balance.classes[index].in) return "";
  int letter = -1;
  for (std::size_t i = 0; i <= index; ++i)
    if (!balance.classes[i].in) ++letter;
  return OrderLetters::letter(letter);
}

Table BalanceTable(const HeatBalance& balance, const std::string& name) {
  Table table{name, {{"class", 18}, {"direction", 10}, {"length mm", 18, 6}, {"mass kg", 12, 3}, {"length nm (exact)", 22}}, {}};
  const auto row = [&](const std::string& what, const std::string& direction, Length length, Mass mass) {
    table.rows.push_back({what, direction, MmCell(length), KgCell(mass), std::to_string(length.nm)});
  };
  for (const BalanceClass& c : balance.classes) row(c.name, c.in ? "in" : "out", c.length, c.mass);
  const BalanceSums sums = SumsOf(balance);
  row("sum in", "", sums.in, sums.in_mass);
  row("sum out", "", sums.out, sums.out_mass);
  row("difference", "", sums.difference(), sums.in_mass - sums.out_mass);
  return table;
}

nlohmann::ordered_json BalanceJson(const HeatBalance& balance) {
  nlohmann::ordered_json out;
  out["mill"] = balance.mill;
  out["heat"] = balance.heat;
  out["grade"] = balance.grade;
  out["section"] = balance.section;
  out["condition"] = balance.condition;
  out["papers"] = balance.papers;
  out["classes"] = nlohmann::ordered_json::array();
  for (const BalanceClass& c : balance.classes)
    out["classes"].push_back({{"name", c.name}, {"in", c.in}, {"length_nm", c.length.nm}, {"mass_g", c.mass.g}});
  const BalanceSums sums = SumsOf(balance);
  out["in_nm"] = sums.in.nm;
  out["out_nm"] = sums.out.nm;
  out["difference_nm"] = sums.difference().nm;
  out["in_g"] = sums.in_mass.g;
  out["out_g"] = sums.out_mass.g;
  out["balanced"] = sums.balanced();
  return out;
}

namespace {

nlohmann::ordered_json AloneJson(const HeatBalance& balance) { return {{"record", "metal balance"}, {"balance", BalanceJson(balance)}}; }

}  // namespace

std::string BalanceSays(const HeatBalance& balance) { return RecordSays(AloneJson(balance)); }

void WriteBalanceXlsx(const std::string& path, const HeatBalance& balance, const PrintOptions& options, const RecordProof& proof) {
  Table about{"About", {{"what", 22}, {"value", 90}}, {{std::string("record's digest"), ProofWords(proof)}}};
  WriteWorkbook(path, "Metal balance of heat " + balance.heat, {BalanceTable(balance, "Balance"), std::move(about)}, options);
}

void WriteBalanceCsv(const std::string& path, const HeatBalance& balance) { WriteTableCsv(path, BalanceTable(balance, "Balance")); }

std::string BalanceRecordJson(const HeatBalance& balance, const PrintOptions& options, const RecordProof& proof) {
  nlohmann::ordered_json out = AloneJson(balance);
  out["printed_at"] = options.printed_at;
  out["author"] = options.author;
  out["proof"] = ProofJson(proof);
  return out.dump(2, ' ', false, nlohmann::ordered_json::error_handler_t::replace);
}

}  // namespace heatkeep
