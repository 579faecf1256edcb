#include "reports/balance_record.h"
#include "reports/flow_parts.h"
#include "reports/record_says.h"
#include "reports/table_csv.h"
#include "reports/trace_report.h"
#include "reports/workbook.h"

namespace heatkeep {
namespace {

Table Lines(const TraceRecord& record) {
  Table table{"Trace",
              {{"depth", 7},
               {"what", 14},
               {"name", 16},
               {"from piece", 14},
               {"count", 8},
               {"length mm (of one)", 14, 3},
               {"left mm", 12, 3},
               {"kerf mm (of all)", 12, 3},
               {"mass kg (of all)", 12, 3},
               {"mill", 14},
               {"heat", 14},
               {"grade", 14},
               {"section", 16},
               {"condition", 10},
               {"document", 22},
               {"receipt", 30},
               {"where now", 36},
               {"held", 7},
               {"at", 22},
               {"by", 16}},
              {}};
  for (const TraceLine& l : record.lines)
    table.rows.push_back({std::int64_t{l.depth},
                          l.what,
                          l.name,
                          l.parent,
                          std::int64_t{l.count},
                          MmCell(l.length),
                          MmCell(l.now),
                          MmCell(l.kerf),
                          KgCell(l.mass),
                          l.mill,
                          l.heat,
                          l.grade,
                          l.section,
                          l.condition,
                          l.document,
                          l.receipt,
                          l.where_now,
                          std::string(l.held ? "HELD" : ""),
                          l.at,
                          l.by});
  return table;
}

Table About(const TraceRecord& record) {
  return {"About",
          {{"what", 22}, {"value", 90}},
          {{std::string("trace record of"), record.kind + " " + record.subject},
           {std::string("asked at"), record.asked_at},
           {std::string("asked by"), record.asked_by},
           {std::string("book's digest"), record.digest},
           {std::string("happenings"), record.happenings},
           {std::string("record's digest"), ProofWords(record.proof)},
           {std::string("statement"), OwnWorkStatement()}}};
}

Table Heats(const OrderHeats& heats) {
  Table table{"Heats", {{"what", 18}, {"heat", 16}, {"mill", 16}, {"cut pieces", 10}, {"words", 90}}, {}};
  for (const OrderHeats::Heat& h : heats.heats) {
    std::string tags;
    for (const std::string& tag : h.pieces) tags += (tags.empty() ? "cut from " : ", ") + tag;
    table.rows.push_back({h.identity, h.heat, h.mill, std::int64_t{h.cut_pieces}, tags});
  }
  const auto say = [&](const std::string& what, const std::string& words) {
    table.rows.push_back({what, std::string(), std::string(), std::string(), words});
  };
  say("statement", heats.statement);
  say("looked at", heats.looked_at);
  for (const std::string& before : heats.before) say("before", before);
  for (const std::string& wrong : heats.wrong) say("WRONG", wrong);
  return table;
}

}  // namespace

void WriteTraceCsv(const std::string& path, const TraceRecord& record) { WriteTableCsv(path, Lines(record)); }

void WriteTraceXlsx(const std::string& path, const TraceRecord& record, const PrintOptions& options) {
  std::vector<Table> tables{Lines(record)};
  for (std::size_t i = 0; i < record.balances.size(); ++i) {
    const std::string number = record.balances.size() > 1 ? " " + std::to_string(i + 1) : "";
    Table table = BalanceTable(record.balances[i], "Balance" + number);
    table.columns.push_back({"heat", 16});
    for (auto& row : table.rows) row.emplace_back(record.balances[i].heat);
    tables.push_back(std::move(table));
  }
  if (record.heats) tables.push_back(Heats(*record.heats));
  tables.push_back(About(record));
  WriteWorkbook(path, "Trace record of " + record.kind + " " + record.subject, tables, options);
}

}  // namespace heatkeep
