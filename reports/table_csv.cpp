#include "reports/table_csv.h"

#include <array>
#include <cstdio>

#include "reports/whole_file.h"

namespace heatkeep {
namespace {

// "-2315000", "-0.5": a number and no formula. A sign before it, digits, at most one point between them.
bool IsNegativeNumber(const std::string& text) {
  if (text.size() < 2 || text[0] != '-' || text.find_first_not_of("0123456789.", 1) != std::string::npos) return false;
  const std::size_t point = text.find('.');
  return point == std::string::npos || (point > 1 && point + 1 < text.size() && text.find('.', point + 1) == std::string::npos);
}

std::string Quoted(const std::string& text) {
  if (IsNegativeNumber(text)) return text;
  // the signs a spreadsheet begins a formula with, also behind blanks
  const std::size_t first = text.find_first_not_of(' ');
  const bool formula = first != std::string::npos && std::string("=+-@\t\r\n").find(text[first]) != std::string::npos;
  std::string all = formula ? "'" + text : text;
  if (all.find_first_of(",\"\r\n'") == std::string::npos) return all;
  std::string quoted = "\"";
  for (const char c : all) quoted += c == '"' ? std::string("\"\"") : std::string(1, c);
  return quoted + "\"";
}

std::string Number(double value, int decimals) {
  std::array<char, 64> text{};
  std::snprintf(text.data(), text.size(), "%.*f", decimals, value);
  return text.data();
}

}  // namespace

std::string TableCsv(const Table& table) {
  std::string csv;
  for (std::size_t i = 0; i < table.columns.size(); ++i) csv += (i > 0 ? "," : "") + Quoted(table.columns[i].head);
  csv += "\r\n";
  for (const auto& row : table.rows) {
    for (std::size_t i = 0; i < row.size(); ++i) {
      if (i > 0) csv += ',';
      if (const auto* text = std::get_if<std::string>(&row[i])) csv += Quoted(*text);
      if (const auto* number = std::get_if<double>(&row[i])) csv += Number(*number, table.columns[i].decimals);
      if (const auto* whole = std::get_if<std::int64_t>(&row[i])) csv += std::to_string(*whole);
    }
    csv += "\r\n";
  }
  return csv;
}

void WriteTableCsv(const std::string& path, const Table& table) {
  const std::string text = TableCsv(table);
  WriteWholeBytes(path, text.data(), text.size());
}

}  // namespace heatkeep
