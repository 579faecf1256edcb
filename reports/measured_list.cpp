#include "reports/measured_list.h"

#include <algorithm>
#include <map>
#include <nlohmann/json.hpp>

#include "reports/flow_parts.h"
#include "reports/quantity_text.h"
#include "reports/sheet_words.h"
#include "reports/table_csv.h"
#include "reports/workbook.h"

namespace heatkeep {
namespace {

constexpr double kRow = 9.2;

struct Place {
  const char* head;
  double from, wide;  // shares of the width
  Align align;
};
constexpr Place kColumns[] = {
    {"when", 0, 0.16, Align::Left},        {"who, with what", 0.16, 0.18, Align::Left}, {"piece, heat", 0.34, 0.19, Align::Left},
    {"book mm", 0.53, 0.10, Align::Right}, {"measured mm", 0.63, 0.11, Align::Right},   {"difference mm", 0.74, 0.12, Align::Right},
    {"why", 0.87, 0.13, Align::Left}};

std::string Signed(Length length) { return (length.nm > 0 ? "+" : "") + MmNumber(length); }

FlowItem Head(double width) {
  return {5.6, [=](Pen& pen, double y) {
            for (const Place& c : kColumns)
              pen.text(kMargin + c.from * width, y + 0.6, c.wide * width - 1, c.head, {2.6, true, false, false, c.align});
            pen.line(kMargin, y + 4.9, kMargin + width, y + 4.9, 0.3);
          }};
}

FlowItem Row(const MeasuredRow& r, double width) {
  const double why = kColumns[6].wide * width - 1;
  const double height = std::max(kRow, ParagraphHeight(r.reason, why, {2.6}) + 1.6);
  FlowItem item{height, [=](Pen& pen, double y) {
                  const auto cell = [&](int column, const std::string& words, const TextStyle& style, double down = 0.9) {
                    const Place& c = kColumns[column];
                    TextStyle s = style;
                    s.align = c.align;
                    pen.text(kMargin + c.from * width, y + down, c.wide * width - 1, words, s);
                  };
                  cell(0, ShortTime(r.at), {3.1});
                  cell(0, r.told_by, {2.6}, 4.9);
                  cell(1, r.who, {3.1});
                  cell(1, r.measured_with, {2.6}, 4.9);
                  cell(2, r.tag, {3.3, true, true, false, Align::Left, true}, 0.8);
                  cell(2, (r.heat.empty() ? "heat unknown" : r.heat) + ", " + r.section, {2.6}, 4.9);
                  cell(3, MmNumber(r.book), {3.1});
                  cell(4, MmNumber(r.measured), {3.1});
                  cell(5, Signed(r.difference), {3.1, true});
                  pen.paragraph(kMargin + kColumns[6].from * width, y + 0.9, why, r.reason, {2.6});
                  pen.line(kMargin, y + height - 0.1, kMargin + width, y + height - 0.1, 0.1);
                }};
  item.head = 0;
  return item;
}

struct Sum {
  int count = 0;
  Length shorter, longer;  // both >= 0
  void add(Length difference) {
    ++count;
    if (difference.nm < 0) shorter -= difference;
    else longer += difference;
  }
};

std::string Words(const Sum& sum) {
  std::string words = std::to_string(sum.count) + (sum.count == 1 ? " length" : " lengths");
  if (sum.shorter.nm > 0) words += ", " + MmText(sum.shorter) + " shorter than written";
  if (sum.longer.nm > 0) words += (sum.shorter.nm > 0 ? " and " : ", ") + MmText(sum.longer) + " longer";
  return words;
}

Table TableOf(const std::vector<MeasuredRow>& rows) {
  Table table{"Measured",
              {{"when", 22},
               {"who", 16},
               {"measured with", 18},
               {"told by", 14},
               {"tag", 12},
               {"kind", 8},
               {"mill", 14},
               {"heat", 14},
               {"section", 16},
               {"grade", 14},
               {"book mm", 12, 3},
               {"measured mm", 12, 3},
               {"difference mm", 13, 3},
               {"why", 40}},
              {}};
  for (const MeasuredRow& r : rows)
    table.rows.push_back({r.at, r.who, r.measured_with, r.told_by, r.tag, r.kind, r.mill, r.heat, r.section, r.grade, MmCell(r.book),
                          MmCell(r.measured), MmCell(r.difference), r.reason});
  return table;
}

}  // namespace

std::string MeasuredCountLine(const std::vector<MeasuredRow>& rows) {
  if (rows.empty()) return "nothing was measured otherwise than written";
  Sum all;
  for (const MeasuredRow& r : rows) all.add(r.difference);
  return Words(all);
}

nlohmann::ordered_json MeasuredJson(const std::vector<MeasuredRow>& rows) {
  nlohmann::ordered_json list = nlohmann::ordered_json::array();
  for (const MeasuredRow& r : rows)
    list.push_back({{"at", r.at},
                    {"who", r.who},
                    {"measured_with", r.measured_with},
                    {"told_by", r.told_by},
                    {"tag", r.tag},
                    {"kind", r.kind},
                    {"mill", r.mill},
                    {"heat", r.heat},
                    {"section", r.section},
                    {"grade", r.grade},
                    {"book_nm", r.book.nm},
                    {"measured_nm", r.measured.nm},
                    {"difference_nm", r.difference.nm},
                    {"why", r.reason}});
  return list;
}

void WriteMeasuredPdf(const std::string& path, const std::string& title, const std::vector<MeasuredRow>& rows,
                      const PrintOptions& options) {
  const double width = PageWidth(options.size) - 2 * kMargin;
  Flow flow;
  SetRecordHead(flow, {"Who measured", title, MeasuredCountLine(rows) + "  \u00B7  printed " + ShortTime(options.printed_at), "", 0},
                width);
  flow.repeated.push_back(Head(width));
  if (!rows.empty()) {
    flow.items.push_back(flow.repeated[0]);
    flow.items.back().with_next = true;
  }
  std::map<std::string, Sum> sums;
  for (const MeasuredRow& row : rows) {
    flow.items.push_back(Row(row, width));
    sums[row.who + ", " + row.measured_with].add(row.difference);
  }
  flow.items.push_back(TextRow(kMargin, width, MeasuredCountLine(rows), {3.5, true}, 1));
  for (const auto& [who, sum] : sums) flow.items.push_back(TextRow(kMargin, width, who + ": " + Words(sum), {3.1}));
  WriteFlow(path, flow, options);
}

void WriteMeasuredXlsx(const std::string& path, const std::string& title, const std::vector<MeasuredRow>& rows,
                       const PrintOptions& options) {
  WriteWorkbook(path, "Who measured: " + title, {TableOf(rows)}, options);
}

void WriteMeasuredCsv(const std::string& path, const std::vector<MeasuredRow>& rows) { WriteTableCsv(path, TableOf(rows)); }

}  // namespace heatkeep
