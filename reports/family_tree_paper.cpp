#include <QPainter>
#include <algorithm>
#include <memory>

#include "reports/family_tree.h"
#include "reports/flow_parts.h"
#include "reports/quantity_text.h"
#include "reports/sheet_words.h"
#include "reports/trace_report.h"

namespace heatkeep {
namespace {

constexpr double kStep = 5;    // indentation of one depth
constexpr int kDeepest = 8;    // deeper pieces are not indented further; each says what it came from
constexpr double kHead = 5.2;  // the line with the tag
constexpr double kSpace = 2.2;
constexpr double kFine = 100;  // dots a mm when measuring: fonts have whole dots, and the print has so many
constexpr TextStyle kSmall{2.7};

struct Measures {
  double width = 0, indent = 0;  // of the page; of the deepest piece
  Length full;
  std::shared_ptr<OrderLetters> letters;
};

BarView ViewOf(double y, int depth, const Measures& m, double mm) {
  const double indent = std::min(depth, kDeepest) * kStep;
  BarView view = PaperView((kMargin + indent) * mm, y * mm, (m.width - m.indent) * mm, m.full, mm);
  view.symbol = false;
  view.ruler = depth == 0;  // a root's, for all below it: they have its scale
  view.bar_height = 6.4 * mm;
  view.text = 2.6 * mm;
  return view;
}

std::string About(const TreePiece& p) {
  const TraceLine& l = p.piece;
  std::string text = l.what + " of " + MmText(l.length) + (l.parent.empty() ? "" : " from " + l.parent);
  if (!l.heat.empty()) text += "  \u00B7  heat " + HeatInGroups(l.heat) + (l.mill.empty() ? "" : " " + l.mill);
  text += "  \u00B7  " + l.section + (l.grade.empty() ? "" : "  \u00B7  " + l.grade) + (l.condition.empty() ? "" : " " + l.condition);
  return text;
}

// Strokes of the tree left of a piece: the bows of open parents and the one to the piece itself.
void Bows(Pen& pen, double y, double height, int depth, const std::vector<bool>& follows) {
  for (int d = 1; d <= std::min(depth, kDeepest); ++d) {
    const double x = kMargin + (d - 1) * kStep + 1.6;
    const bool more = follows[static_cast<std::size_t>(d - 1)], own = d == std::min(depth, kDeepest);
    if (own || more) pen.line(x, y, x, more ? y + height : y + kHead / 2, 0.25);
    if (own) pen.line(x, y + kHead / 2, x + kStep - 2.2, y + kHead / 2, 0.25);
  }
}

FlowItem PieceItem(const TreePiece& piece, const std::vector<bool>& follows, const Measures& m) {
  const int depth = piece.piece.depth;
  const double indent = std::min(depth, kDeepest) * kStep, width = m.width - indent;
  const PieceBar bar = TreeBar(piece, *m.letters);
  const std::vector<std::string> words = TreeWords(piece, *m.letters);
  const double bar_height = PieceBarHeight(bar, ViewOf(0, depth, m, kFine)) / kFine;
  double height = kHead + bar_height + 0.8 + kSpace;
  for (const std::string& line : words) height += ParagraphHeight(line, width, kSmall);
  const bool held = piece.piece.held;
  const std::string where = (held ? "HELD, " : "") + piece.piece.where_now;
  return {height, [=](Pen& pen, double y) {
            Bows(pen, y, height, depth, follows);
            const double x = kMargin + indent, tag = TextWidthMm(piece.piece.name, {3.6, true, true}) + 2.5;
            const double room = std::min(width * 0.42, TextWidthMm(where, {3, held}) + 1);
            pen.text(x, y + 0.5, tag, piece.piece.name, {3.6, true, true, false, Align::Left, true});
            pen.text(x + tag, y + 1, width - tag - room - 2, About(piece), {2.8});
            pen.text(kMargin + m.width - room, y + 1, room, where, {3, held, false, false, Align::Right});
            PaintPieceBar(pen.painter(), bar, ViewOf(y + kHead, depth, m, pen.dots()));
            double at = y + kHead + bar_height + 0.6;
            for (const std::string& line : words) at += pen.paragraph(x, at, width, line, kSmall);
          }};
}

}  // namespace

void AddFamilyTree(Flow& flow, const std::vector<TraceLine>& lines, double width) {
  const std::vector<TreePiece> pieces = TreePieces(lines);
  if (pieces.empty()) return;
  std::vector<TraceLine> nodes;
  Measures m;
  m.width = width;
  m.letters = std::make_shared<OrderLetters>();
  for (const TreePiece& piece : pieces) {
    nodes.push_back(piece.piece);
    m.full = std::max(m.full, TreeBar(piece, *m.letters).length);
    m.indent = std::max(m.indent, std::min(piece.piece.depth, kDeepest) * kStep);
  }
  flow.items.push_back(SectionHead(kMargin, width, "Family tree"));
  flow.items.push_back(
      TextRow(kMargin, width,
              "Every piece to one scale, under the piece it came from. A letter is an order, the same one on all bars; what left otherwise "
              "says so; \u201Cother\u201D is metal this record is not about. Kerf is drawn in the bar.",
              kSmall, 1.5));
  flow.items.back().with_next = true;
  const auto strokes = TreeStrokes(nodes);
  for (std::size_t i = 0; i < pieces.size(); ++i) flow.items.push_back(PieceItem(pieces[i], strokes[i], m));
}

}  // namespace heatkeep
