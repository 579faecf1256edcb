// A list out of the book - stock, drops, yield, what to buy - as paper and files. One description, four forms: PDF with a sum
// line and, where one helps, a chart; XLSX with real numbers; CSV; JSON with the book's own whole units.
#pragma once

#include <nlohmann/json_fwd.hpp>
#include <optional>
#include <string>
#include <vector>

#include "reports/paper.h"
#include "reports/workbook.h"

namespace heatkeep {

// What a number is, and so how it is shown and with which unit in the head: Length mm (Metres: m), Mass kg, Money in the
// book's currency, Percent with one decimal. Bar: a length that is drawn, on paper only, to one scale.
enum class ListKind { Text, Mono, Length, Metres, Mass, Money, Count, Percent, Bar };

struct ListColumn {
  std::string key;   // in JSON; ends in _nm, _g, _cents where it is one of those
  std::string head;  // without the unit
  ListKind kind = ListKind::Text;
  double share = 1;  // of the paper's width, beside the others
  bool summed = false;
  std::string blank = {};  // what stands on paper where nothing is known: "......." to be written on
};

// Whole nanometres, grams, hundredths of money, counts, tenths of a per cent: std::int64_t; an empty text: nothing is known.
using ListRow = std::vector<Cell>;

// What the rows come to, drawn: the first column names each row, those of `drawn` are drawn.
struct ListChart {
  std::string title;
  std::vector<ListColumn> columns;
  std::vector<ListRow> rows;
  std::vector<std::size_t> drawn;  // all of one kind
  bool bars = true;                // else a line over the rows in their order
};

struct ListReport {
  std::string what, subject;  // "Drops by age and worth", "round 80"
  std::string currency;       // "EUR"; empty: amounts without a word
  std::string note;           // how the figures are meant; printed under the table
  std::string count_of = "lines";
  double least_row = 0;        // height of a row on paper in mm, where it is written in by hand; 0: as high as its words
  std::size_t blank_rows = 0;  // on paper behind the others, to be written on
  std::vector<ListColumn> columns;
  std::vector<ListRow> rows;            // each as long as `columns`
  std::optional<ListChart> chart = {};  // drawn where it has two rows or more
};

// "length mm", "worth EUR".
std::string HeadOf(const ListColumn& column, const std::string& currency);
// "312 drops".
std::string RowCount(const ListReport& list);
// "312 drops, length 418.612 m, mass 6 210.400 kg".
std::string CountLine(const ListReport& list);
// A cell as the paper shows it.
std::string ShownCell(const Cell& cell, ListKind kind);
// The number a spreadsheet or a chart takes, in the unit of the head.
double InUnit(std::int64_t value, ListKind kind);
bool HasChart(const ListReport& list);

// {"list", "subject", "note", "currency", "rows": [{key: value}], "sums": {key: value}}, and where there is one
// "chart": {"title", "rows"}; what is not known is null.
nlohmann::ordered_json ListJson(const ListReport& list);

// All throw std::runtime_error with the path and the reason and leave an older file as it was.
void WriteListPdf(const std::string& path, const ListReport& list, const PrintOptions& options);
void WriteListXlsx(const std::string& path, const ListReport& list, const PrintOptions& options);
void WriteListCsv(const std::string& path, const ListReport& list);
void WriteListJson(const std::string& path, const ListReport& list);

}  // namespace heatkeep
