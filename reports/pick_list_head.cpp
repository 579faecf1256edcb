#include <QPainter>
#include <QPolygonF>

#include "reports/pick_list_block.h"
#include "reports/quantity_text.h"
#include "reports/sheet_words.h"
#include "schema/terms/counted.h"

namespace heatkeep {
namespace {

std::string Counts(const Sheet& sheet) {
  int drops = 0;
  int pieces = 0;
  for (const SheetBlock& block : sheet.blocks) {
    if (block.kind == "drop") ++drops;
    pieces += PieceCount(block);
  }
  const int bars = static_cast<int>(sheet.blocks.size()) - drops;
  return std::to_string(sheet.blocks.size()) + " to pull: " + Counted(drops, "drop") + ", " + Counted(bars, "full bar") + "  \u00B7  " +
      Counted(pieces, "cut piece");
}

std::string Settings(const Sheet& sheet) {
  return "kerf " + StopNumber(sheet.kerf) + ", trim " + MmNumber(sheet.trim) + ", grip " + MmText(sheet.grip) +
      (sheet.bundled ? "  \u00B7  CUT IN BUNDLES" : "") + "  \u00B7  lift by hand up to " + KgText(sheet.lift_limit) + "  \u00B7  made " +
      ShortTime(sheet.made_at) + (sheet.made_by.empty() ? "" : " by " + sheet.made_by);
}

// A triangle with an exclamation mark, `side` mm.
void Sign(Pen& pen, double x, double y, double side) {
  QPainter& painter = pen.painter();
  const double d = pen.dots();
  painter.setPen(QPen(Qt::black, 0.5 * d, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
  painter.setBrush(Qt::NoBrush);
  painter.drawPolygon(QPolygonF(
      {QPointF((x + side / 2) * d, y * d), QPointF((x + side) * d, (y + side * 0.88) * d), QPointF(x * d, (y + side * 0.88) * d)}));
  pen.text(x, y + side * 0.24, side, "!", {side * 0.58, true, false, false, Align::Center});
}

double FirstHead(Pen* pen, const Sheet& sheet, double width) {
  const double x = kMargin;
  double y = kMargin + 4.4;
  const TextStyle big{8, true};
  if (pen != nullptr) {
    double at = x;
    const std::string keys[] = {"Sheet " + sheet.number, "Saw " + sheet.saw};
    for (const std::string& key : keys) {
      const double wide = std::min(TextWidthMm(key, big), width * 0.32);
      pen->text(at, y, wide + 0.5, key, big);
      at += wide + 9;
    }
    double end = x + width;
    if (!sheet.one_heat.empty()) {
      const TextStyle style{5, true};
      const double wide = std::min(TextWidthMm(sheet.one_heat, style), width * 0.3) + 5;
      pen->box(x + width - wide, y + 0.8, wide, 8.2, 0.7);
      pen->text(x + width - wide + 2.5, y + 1.8, wide - 5, sheet.one_heat, style);
      end -= wide + 4;
    }
    if (!sheet.due.empty()) pen->text(at, y + 2.6, end - at, "due " + ShortTime(sheet.due), {5.2, true});
  }
  y += 10.4;
  const TextStyle body{3.3};
  const TextStyle strong{3.5, true};
  if (pen != nullptr) pen->text(x, y, width, Counts(sheet), strong);
  y += 4.8;
  if (pen != nullptr) pen->text(x, y, width, Settings(sheet), body);
  y += 4.6;
  if (!sheet.proof.empty()) {
    const std::string words = "Plan: " + sheet.proof;
    if (pen != nullptr) pen->paragraph(x, y, width, words, body);
    y += ParagraphHeight(words, width, body) + 0.6;
  }
  const TextStyle caution{2.6};
  const double inner = width - 13;
  const double height = ParagraphHeight(CautionWords(), inner, caution) + 1.8;
  if (pen != nullptr) {
    pen->box(x, y + 0.5, width, height, 0.35);
    Sign(*pen, x + 2.2, y + 0.5 + (height - 7) / 2, 7.4);
    pen->paragraph(x + 11.5, y + 1.3, inner, CautionWords(), caution);
  }
  return y + height + 1.6 - kMargin;
}

}  // namespace

double DrawSheetHead(Pen* pen, const Sheet& sheet, double width, int page, int pages) {
  if (pen != nullptr) {
    const std::string title =
        page == 1 ? "Pick list and saw sheet" : "Pick list and saw sheet  " + sheet.number + "  \u00B7  Saw " + sheet.saw;
    pen->text(kMargin, kMargin - 0.6, width - 34, title, {3.8, true});
    pen->text(kMargin + width - 32, kMargin - 0.4, 32, "page " + std::to_string(page) + " of " + std::to_string(pages),
              {3.5, false, false, false, Align::Right});
  }
  return page == 1 ? FirstHead(pen, sheet, width) : 6.5;
}

}  // namespace heatkeep
