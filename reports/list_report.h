// A list out of the book - stock, drops, yield, what to buy - as paper and files. One description, four forms: PDF with a sum
// line and, where asked, a chart; XLSX with real numbers; CSV; JSON with the book's own whole units.
#pragma once

#include <nlohmann/json_fwd.hpp>
#include <string>
#include <vector>

#include "reports/paper.h"
#include "reports/workbook.h"

namespace heatkeep {

// What a number is, and so how it is shown and with which unit in the head: Length mm (Metres: m), Mass kg, Money in the
// book's currency, Percent with one decimal.
enum class ListKind { Text, Mono, Length, Metres, Mass, Money, Count, Percent };

struct ListColumn {
  std::string key;    // in JSON; ends in _nm, _g, _cents where it is one of those
  std::string head;   // without the unit
  ListKind kind = ListKind::Text;
  double share = 1;   // of the paper's width, beside the others
  bool summed = false;
};

// Whole nanometres, grams, hundredths of money, counts, tenths of a per cent: std::int64_t; an empty text: nothing is known.
using ListRow = std::vector<Cell>;

struct ListReport {
  std::string what, subject;  // "Drops by age and worth", "round 80"
  std::string currency;       // "EUR"; empty: amounts without a word
  std::string note;           // how the figures are meant; printed under the table
  std::string count_of = "lines";
  double least_row = 0;       // height of a row on paper in mm, where it is written in by hand; 0: as high as its words
  std::vector<ListColumn> columns;
  std::vector<ListRow> rows;  // each as long as `columns`
  // A line chart of these columns over the rows, in their order (from the second row on); none: no chart.
  std::vector<std::size_t> charted;
  std::size_t chart_labels = 0;
};

// "length mm", "worth EUR".
std::string HeadOf(const ListColumn& column, const std::string& currency);
// "312 drops".
std::string RowCount(const ListReport& list);
// "312 drops, length 418.612 m, mass 6 210.400 kg".
std::string CountLine(const ListReport& list);

// {"list", "note", "currency", "rows": [{key: value}], "sums": {key: value}}; what is not known is null.
nlohmann::ordered_json ListJson(const ListReport& list);

// All throw std::runtime_error with the path and the reason and leave an older file as it was.
void WriteListPdf(const std::string& path, const ListReport& list, const PrintOptions& options);
void WriteListXlsx(const std::string& path, const ListReport& list, const PrintOptions& options);
void WriteListCsv(const std::string& path, const ListReport& list);

// A cell as the paper shows it.
std::string ShownCell(const Cell& cell, ListKind kind);

}  // namespace heatkeep
