#include "reports/list_report.h"

#include <nlohmann/json.hpp>
#include <optional>

#include "reports/quantity_text.h"
#include "reports/table_csv.h"
#include "schema/terms/number_text.h"

namespace heatkeep {
namespace {

bool IsNumber(ListKind kind) { return kind != ListKind::Text && kind != ListKind::Mono; }

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

// The number a spreadsheet takes, in the unit of the head.
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

// Of what is known; nothing where no row says it.
std::optional<std::int64_t> SumOf(const ListReport& list, std::size_t column) {
  std::optional<std::int64_t> sum;
  for (const ListRow& row : list.rows)
    if (const auto* value = std::get_if<std::int64_t>(&row[column])) sum = sum.value_or(0) + *value;
  return sum;
}

Table TableOf(const ListReport& list) {
  Table table{"List", {}, {}, {}};
  for (const ListColumn& c : list.columns) table.columns.push_back({HeadOf(c, list.currency), std::max(8.0, 12 * c.share), DecimalsOf(c.kind)});
  for (const ListRow& row : list.rows) {
    std::vector<Cell> cells;
    for (std::size_t i = 0; i < row.size(); ++i) {
      const auto* value = std::get_if<std::int64_t>(&row[i]);
      cells.push_back(value && list.columns[i].kind != ListKind::Count ? Cell(InUnit(*value, list.columns[i].kind)) : row[i]);
    }
    table.rows.push_back(std::move(cells));
  }
  if (!list.charted.empty() && list.rows.size() > 1) table.chart = {list.what, list.chart_labels, list.charted};
  return table;
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

nlohmann::ordered_json ListJson(const ListReport& list) {
  nlohmann::ordered_json rows = nlohmann::ordered_json::array(), sums = nlohmann::ordered_json::object();
  for (const ListRow& row : list.rows) {
    nlohmann::ordered_json one = nlohmann::ordered_json::object();
    for (std::size_t i = 0; i < row.size(); ++i) {
      const ListColumn& c = list.columns[i];
      if (const auto* text = std::get_if<std::string>(&row[i])) one[c.key] = text->empty() ? nlohmann::ordered_json() : nlohmann::ordered_json(*text);
      else one[c.key] = std::get<std::int64_t>(row[i]);
    }
    rows.push_back(std::move(one));
  }
  for (std::size_t i = 0; i < list.columns.size(); ++i)
    if (list.columns[i].summed) {
      const std::optional<std::int64_t> sum = SumOf(list, i);
      sums[list.columns[i].key] = sum ? nlohmann::ordered_json(*sum) : nlohmann::ordered_json(nullptr);
    }
  return {{"list", list.what}, {"subject", list.subject}, {"note", list.note}, {"currency", list.currency}, {"rows", rows}, {"sums", sums}};
}

void WriteListXlsx(const std::string& path, const ListReport& list, const PrintOptions& options) { WriteWorkbook(path, list.what, {TableOf(list)}, options); }

void WriteListCsv(const std::string& path, const ListReport& list) { WriteTableCsv(path, TableOf(list)); }

}  // namespace heatkeep
