#include "reports/screen_page.h"

#include <QPainter>
#include <algorithm>

#include "reports/flow_parts.h"
#include "reports/paper_table.h"
#include "reports/sheet_words.h"

namespace heatkeep {
namespace {

constexpr double kFine = 100;       // dots a mm when measuring
constexpr double kTitle = 5.2;      // the line above a bar
constexpr double kMostDrawn = 150;  // mm: the height of a drawing at most

BarView ViewOf(const ScreenPage& page, double y, double width, bool ruler, double mm) {
  BarView view = PaperView(kMargin * mm, y * mm, width * mm, page.full, mm);
  view.symbol = false;
  view.ruler = ruler;
  view.bar_height = 7 * mm;
  view.units = page.units;
  view.keep_word = page.keep_word;
  view.scrap_word = page.scrap_word;
  return view;
}

FlowItem BarItem(const ScreenPage& page, const PageBar& bar, bool ruler, double width) {
  const double bar_height = PieceBarHeight(bar.bar, ViewOf(page, 0, width, ruler, kFine)) / kFine;
  return {
      kTitle + bar_height + 2.4, [page, bar, ruler, width](Pen& pen, double y) {
        const double tag = TextWidthMm(bar.title, {3.6, true, true}) + 2.5, right = std::min(width * 0.35, TextWidthMm(bar.right, {3}) + 1);
        pen.text(kMargin, y + 0.5, tag, bar.title, {3.6, true, true, false, Align::Left, true});
        pen.text(kMargin + tag, y + 1, width - tag - right - 2, bar.beside, {2.9});
        pen.text(kMargin + width - right, y + 1, right, bar.right, {3, false, false, false, Align::Right});
        PaintPieceBar(pen.painter(), bar.bar, ViewOf(page, y + kTitle, width, ruler, pen.dots()));
      }};
}

FlowItem Drawing(const PagePart& part, double width) {
  const double scale = std::min(width / part.drawn.width(), kMostDrawn / part.drawn.height());
  return {part.drawn.height() * scale + 3, [picture = part.drawing, scale](Pen& pen, double y) {
            QPainter& painter = pen.painter();
            painter.save();
            painter.translate(kMargin * pen.dots(), (y + 1) * pen.dots());
            // a picture is played to the size it was drawn at, whatever the paper's dots are
            const double dots = pen.dots() * scale * picture.logicalDpiX() / painter.device()->logicalDpiX();
            painter.scale(dots, dots);
            QPicture(picture).play(&painter);
            painter.restore();
          }};
}

void AddRows(Flow& flow, const PagePart& part, Length full, double width) {
  PaperTable table;
  table.gap = 2.2;
  double shares = 0;
  for (const PageColumn& c : part.columns) shares += c.share;
  const double room = width - table.gap * static_cast<double>(part.columns.size() - 1);
  for (const PageColumn& c : part.columns) {
    PaperColumn column{c.head};
    column.width = room * c.share / shares;
    column.height = 2.9;
    column.mono = c.mono;
    column.align = c.number ? Align::Right : Align::Left;
    column.shrinks = true;
    if (c.bar)
      column.draw = [&part, full](Pen& pen, double x, double y, double wide, std::size_t row) {
        if (!part.rows[row].bar) return;
        const double d = pen.dots();
        BarView view = TagView(x * d, (y + 0.9) * d, wide * d, full, d);
        view.bar_height = 2.6 * d;
        view.symbol = false;
        view.text = view.bar_height * 1.1;
        PaintPieceBar(pen.painter(), *part.rows[row].bar, view);
      };
    table.columns.push_back(std::move(column));
  }
  AddTable(flow, width, table, part.rows.size(), [&part](std::size_t row) { return part.rows[row].texts; });
}

}  // namespace

void WriteScreenPage(const std::string& path, const ScreenPage& page, const PrintOptions& options) {
  const double width = PageWidth(options.size) - 2 * kMargin;
  Flow flow;
  SetRecordHead(
      flow,
      {page.what, page.subject, "printed " + ShortTime(options.printed_at) + (options.author.empty() ? "" : ", " + options.author), "", 0},
      width);
  for (const PagePart& part : page.parts) {
    if (!part.head.empty()) flow.items.push_back(SectionHead(kMargin, width, part.head));
    for (const std::string& words : part.words) flow.items.push_back(TextRow(kMargin, width, words, {3.3}, 0.9));
    if (!part.drawn.isEmpty()) flow.items.push_back(Drawing(part, width));
    if (!part.rows.empty()) AddRows(flow, part, page.full, width);
    for (std::size_t i = 0; i < part.bars.size(); ++i) flow.items.push_back(BarItem(page, part.bars[i], i == 0, width));
  }
  if (flow.items.empty()) flow.items.push_back(TextRow(kMargin, width, page.empty_words, {3.3}));
  if (flow.items.back().with_next) flow.items.back().with_next = false;
  WriteFlow(path, flow, options);
}

}  // namespace heatkeep
