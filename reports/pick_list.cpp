#include "reports/pick_list.h"

#include <algorithm>
#include <memory>
#include <utility>

#include "reports/flow_parts.h"
#include "reports/paint_session.h"
#include "reports/pick_list_block.h"
#include "reports/quantity_text.h"
#include "schema/terms/counted.h"

namespace heatkeep {
namespace {

constexpr TextStyle kBody{3.3};
constexpr TextStyle kStrong{3.5, true};

struct Sums {
  Length pulled, cut, kerf, trim, kept, scrapped;
  Mass mass;
  int kept_count = 0, scrapped_count = 0, pieces = 0;
};

Sums SumsOf(const Sheet& sheet) {
  Sums s;
  for (const SheetBlock& block : sheet.blocks) {
    s.pulled += block.length;
    s.mass += block.mass;
    s.kerf += block.kerf_all;
    s.trim += block.trim;
    for (const SheetCut& cut : block.cuts) {
      s.cut += cut.set * cut.count;
      s.pieces += cut.count;
    }
    if (block.left.nm <= 0) continue;
    const bool kept = block.fate == LeftFate::Drop;
    (kept ? s.kept : s.scrapped) += block.left;
    ++(kept ? s.kept_count : s.scrapped_count);
  }
  return s;
}

void AddSums(Flow& flow, const Sheet& sheet, double width) {
  const Sums s = SumsOf(sheet);
  flow.items.push_back(SectionHead(kMargin, width, "Sums"));
  const std::vector<std::pair<std::string, std::string>> rows = {
      {"pulled", MetreText(s.pulled) + ", " + KgText(s.mass) + ", " + Counted(sheet.blocks.size(), "piece")},
      {"cut pieces", MetreText(s.cut) + ", " + Counted(s.pieces, "piece")},
      {"kerf", MetreText(s.kerf)},
      {"trim", MetreText(s.trim)},
      {"drops to keep", MetreText(s.kept) + ", " + Counted(s.kept_count, "piece")},
      {"scrap", MetreText(s.scrapped) + ", " + Counted(s.scrapped_count, "piece")}};
  flow.items.push_back({3 * 4.8,
                        [=](Pen& pen, double y) {
                          for (std::size_t i = 0; i < rows.size(); ++i) {
                            const double x = kMargin + (i < 3 ? 0 : width / 2);
                            const double at = y + 4.8 * static_cast<double>(i % 3);
                            pen.text(x, at, 27, rows[i].first, kBody);
                            pen.text(x + 27, at, width / 2 - 29, rows[i].second, kStrong);
                          }
                        },
                        true});
  flow.items.push_back(TextRow(kMargin, width,
                               "Pulled = cut pieces + kerf + trim + drops + scrap. Metres above are rounded "
                               "to the millimetre; the book keeps them exactly.",
                               {2.6}));
}

void AddShorts(Flow& flow, const Sheet& sheet, double width) {
  if (sheet.shorts.empty()) return;
  flow.items.push_back(SectionHead(kMargin, width, "Short: not on this sheet"));
  const double why_x = 92;
  for (const SheetShort& row : sheet.shorts) {
    const std::string what = std::to_string(row.missing) + " \u00D7 " + WantedText(row.length) + "  " + row.section + " " + row.grade;
    const double why_width = width - why_x;
    const double height = std::max(9.4, ParagraphHeight(row.why, why_width, kBody) + 1);
    flow.items.push_back({height, [=](Pen& pen, double y) {
                            pen.text(kMargin, y, why_x - 3, row.order + "/" + row.line, kStrong);
                            pen.text(kMargin, y + 4.4, why_x - 3, what, {3.0});
                            pen.paragraph(kMargin + why_x, y, why_width, row.why, kBody);
                          }});
  }
}

void AddSignatures(Flow& flow, double width) {
  flow.items.push_back({14, [=](Pen& pen, double y) {
                          const double part = width / 3;
                          const std::string words[] = {"pulled by", "cut by", "date and time"};
                          for (int i = 0; i < 3; ++i) {
                            const double x = kMargin + i * part;
                            pen.line(x, y + 9, x + part - 5, y + 9);
                            pen.text(x, y + 9.6, part - 5, words[i], {2.4});
                          }
                        }});
}

}  // namespace

Flow PickListFlow(const Sheet& sheet, const PrintOptions& options, Units units) {
  PaintSession();
  const double width = PageWidth(options.size) - 2 * kMargin;
  auto letters = std::make_shared<OrderLetters>();
  BlockLook look{kMargin, width, {}, 0, sheet.lift_limit, units};
  std::vector<PieceBar> bars;
  for (const SheetBlock& block : sheet.blocks) {
    look.full = std::max(look.full, block.length);
    bars.push_back(PieceBarOf(block, *letters));
  }
  look.symbol_width = std::min(SymbolWidth(bars, PaperView(0, 0, width, look.full, 100)) / 100, width * 0.2);
  Flow flow;
  flow.title = "Pick list and saw sheet " + sheet.number;
  flow.head_height = DrawSheetHead(nullptr, sheet, width, 1, 1);
  flow.next_head_height = DrawSheetHead(nullptr, sheet, width, 2, 2);
  flow.head = [sheet, width](Pen& pen, int page, int pages) { DrawSheetHead(&pen, sheet, width, page, pages); };
  for (const SheetBlock& block : sheet.blocks)
    flow.items.push_back(
        {DrawBlock(nullptr, 0, block, look, *letters), [=](Pen& pen, double y) { DrawBlock(&pen, y, block, look, *letters); }});
  if (sheet.blocks.empty()) flow.items.push_back(TextRow(kMargin, width, "Nothing to pull on this sheet.", kStrong, 3));
  AddShorts(flow, sheet, width);
  AddSums(flow, sheet, width);
  AddSignatures(flow, width);
  return flow;
}

void WritePickListPdf(const std::string& path, const Sheet& sheet, const PrintOptions& options, Units units) {
  WriteFlow(path, PickListFlow(sheet, options, units), options);
}

}  // namespace heatkeep
