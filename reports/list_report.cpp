#include "reports/list_report.h"

#include <nlohmann/json.hpp>
#include <optional>

#include "reports/quantity_text.h"
#include "reports/table_csv.h"
#include "reports/whole_file.h"
#include "schema/terms/number_text.h"

namespace heatkeep {
namespace {

bool IsNumber(ListKind kind) { return kind != ListKind::Text && kind != ListKind::Mono && kind != ListKind::Bar; }

int DecimalsOf(ListKind kind) {
  switch (kind) {
    case ListKind::Length:
    case ListKind::Metres:
    case ListKind::Mass: return 3;
    case ListKind::Money: return 2;
    case ListKind::Percent: return 1;
    default: return 0;
  }
}

// All decimals shown, so that figures stand under each other: 1 234.50.
std::string Fixed(std::int64_t value, int places) {
  std::string text = WriteScaled(value, places, true);
  const std::size_t point = text.find('.');
  if (point == std::string::npos) text += '.';
  const std::size_t decimals = point == std::string::npos ? 0 : text.size() - point - 1;
  return text + std::string(static_cast<std::size_t>(places) - decimals, '0');
}

// Of what is known; nothing where no row says it.
std::optional<std::int64_t> SumOf(const ListReport& list, std::size_t column) {
  std::optional<std::int64_t> sum;
  for (const ListRow& row : list.rows)
    if (const auto* value = std::get_if<std::int64_t>(&row[column])) sum = sum.value_or(0) + *value;
  return sum;
}

// What is for paper only is left out. `rows` must live as long as the table is written.
Table TableOf(const std::string& name, const std::vector<ListColumn>& columns, const std::vector<ListRow>& rows,
              const std::string& currency) {
  Table table{name, {}, {}};
  std::vector<std::size_t> shown;
  for (std::size_t i = 0; i < columns.size(); ++i) {
    if (columns[i].kind == ListKind::Bar) continue;
    table.columns.push_back({HeadOf(columns[i], currency), std::max(8.0, 12 * columns[i].share), DecimalsOf(columns[i].kind)});
    shown.push_back(i);
  }
  for (const ListRow& row : rows) {
    std::vector<Cell> cells;
    cells.reserve(shown.size());
    for (const std::size_t i : shown) {
      const auto* value = std::get_if<std::int64_t>(&row[i]);
      cells.push_back(value && columns[i].kind != ListKind::Count ? Cell(InUnit(*value, columns[i].kind)) : row[i]);
    }
    table.rows.push_back(std::move(cells));
  }
  return table;
}

Table TableOf(const ListReport& list) { return TableOf("List", list.columns, list.rows, list.currency); }

nlohmann::ordered_json RowsJson(const std::vector<ListColumn>& columns, const std::vector<ListRow>& rows) {
  nlohmann::ordered_json all = nlohmann::ordered_json::array();
  for (const ListRow& row : rows) {
    nlohmann::ordered_json one = nlohmann::ordered_json::object();
    for (std::size_t i = 0; i < row.size(); ++i) {
      if (columns[i].kind == ListKind::Bar) continue;
      if (const auto* text = std::get_if<std::string>(&row[i]))
        one[columns[i].key] = text->empty() ? nlohmann::ordered_json() : nlohmann::ordered_json(*text);
      else one[columns[i].key] = std::get<std::int64_t>(row[i]);
    }
    all.push_back(std::move(one));
  }
  return all;
}

}  // namespace

std::string HeadOf(const ListColumn& column, const std::string& currency) {
  switch (column.kind) {
    case ListKind::Length: return column.head + " mm";
    case ListKind::Metres: return column.head + " m";
    case ListKind::Mass: return column.head + " kg";
    case ListKind::Money: return currency.empty() ? column.head : column.head + " " + currency;
    case ListKind::Percent: return column.head + " %";
    default: return column.head;
  }
}

std::string ShownCell(const Cell& cell, ListKind kind) {
  if (const auto* text = std::get_if<std::string>(&cell)) return text->empty() && IsNumber(kind) ? "-" : *text;
  const std::int64_t value = std::get<std::int64_t>(cell);
  switch (kind) {
    case ListKind::Length: return MmNumber({value});
    case ListKind::Metres: return Fixed(value / 1'000'000, 3);
    case ListKind::Mass: return KgNumber({value});
    case ListKind::Money: return Fixed(value, 2);
    case ListKind::Percent: return Fixed(value, 1);
    default: return WriteWhole(value, true);
  }
}

std::string RowCount(const ListReport& list) {
  std::string of = list.count_of;
  if (list.rows.size() == 1 && of.ends_with('s') && of.find(' ') == std::string::npos) of.pop_back();
  return std::to_string(list.rows.size()) + " " + of;
}

std::string CountLine(const ListReport& list) {
  std::string words = RowCount(list);
  for (std::size_t i = 0; i < list.columns.size(); ++i) {
    const std::optional<std::int64_t> sum = list.columns[i].summed ? SumOf(list, i) : std::nullopt;
    if (!sum) continue;
    const ListKind kind = list.columns[i].kind == ListKind::Length ? ListKind::Metres : list.columns[i].kind;
    ListColumn whole = list.columns[i];
    whole.kind = kind;
    const std::string head = HeadOf(whole, list.currency);  // "mass kg"
    const std::string unit = head.substr(whole.head.size());
    words += ", " + whole.head + " " + ShownCell(*sum, kind) + unit;
  }
  return words;
}

double InUnit(std::int64_t value, ListKind kind) {
  switch (kind) {
    case ListKind::Length: return MmCell({value});
    case ListKind::Metres: return MmCell({value}) / 1000;
    case ListKind::Mass: return KgCell({value});
    case ListKind::Money: return static_cast<double>(value) / 100;
    case ListKind::Percent: return static_cast<double>(value) / 10;
    default: return static_cast<double>(value);
  }
}

bool HasChart(const ListReport& list) { return list.chart && list.chart->rows.size() > 1; }

nlohmann::ordered_json ListJson(const ListReport& list) {
  nlohmann::ordered_json sums = nlohmann::ordered_json::object();
  for (std::size_t i = 0; i < list.columns.size(); ++i)
    if (list.columns[i].summed) {
      const std::optional<std::int64_t> sum = SumOf(list, i);
      sums[list.columns[i].key] = sum ? nlohmann::ordered_json(*sum) : nlohmann::ordered_json(nullptr);
    }
  nlohmann::ordered_json json{{"list", list.what},
                              {"subject", list.subject},
                              {"note", list.note},
                              {"currency", list.currency},
                              {"rows", RowsJson(list.columns, list.rows)},
                              {"sums", sums}};
  if (HasChart(list)) json["chart"] = {{"title", list.chart->title}, {"rows", RowsJson(list.chart->columns, list.chart->rows)}};
  return json;
}

void WriteListXlsx(const std::string& path, const ListReport& list, const PrintOptions& options) {
  std::vector<Table> tables{TableOf(list)};
  if (HasChart(list)) {
    tables.push_back(TableOf("Chart", list.chart->columns, list.chart->rows, list.currency));
    tables.back().chart = {list.chart->title, 0, list.chart->drawn, list.chart->bars};
  }
  WriteWorkbook(path, list.what, tables, options);
}

void WriteListCsv(const std::string& path, const ListReport& list) { WriteTableCsv(path, TableOf(list)); }

void WriteListJson(const std::string& path, const ListReport& list) {
  const std::string text = ListJson(list).dump(2) + "\n";
  WriteWholeBytes(path, text.data(), text.size());
}

}  // namespace heatkeep
