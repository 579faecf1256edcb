#include "client/planning/draft_sheet.h"

#include <algorithm>
#include <tuple>
#include <utility>

#include "client/allocator/eligible.h"
#include "schema/terms/wide.h"

namespace heatkeep::planning {
namespace {

using allocator::LeftKind;

// ng a metre x nm is 1e-18 g; halves up.
Mass MassOf(const allocator::Piece& piece, Length length) {
  const Wide gram = Wide{1'000'000'000} * 1'000'000'000;
  return {static_cast<std::int64_t>((Wide{piece.mass.ng} * length.nm + gram / 2) / gram)};
}

SheetBlock BlockOf(const Draft& draft, const allocator::Layout& layout) {
  const allocator::Problem& problem = draft.asked.problem;
  const allocator::Piece& piece = problem.pieces.at(static_cast<std::size_t>(layout.piece));
  SheetBlock b;
  b.place = piece.place;
  b.tag = piece.tag;
  b.kind = piece.kind == allocator::PieceKind::Bar ? "bar" : "drop";
  b.section = piece.section;
  b.grade = piece.grade;
  b.condition = piece.condition;
  b.heat = piece.heat;
  b.papers = allocator::NameOf(piece.risk.empty() ? piece.papers : allocator::PaperType::None);
  b.risk = piece.risk;
  b.owner = piece.owner;
  b.mark_end = "unknown";
  b.state = "draft";
  b.length = piece.length;
  b.doubt = piece.doubt;
  b.mass = MassOf(piece, piece.length);
  b.trim = layout.trim;
  b.kerf_each = allocator::RulesFor(problem, piece).kerf;
  b.kerf_all = layout.kerf;
  b.grip = draft.asked.grip;
  b.stays = draft.asked.grip.nm > 0 ? draft.asked.grip : draft.asked.trim;
  b.left = layout.left;
  b.fate = layout.left.nm == 0                                     ? LeftFate::None
      : layout.left_kind == LeftKind::Drop || !piece.owner.empty() ? LeftFate::Drop
                                                                   : LeftFate::Scrap;
  b.left_mass = MassOf(piece, layout.left);
  for (const allocator::Cut& cut : layout.cuts) {
    const allocator::Line& line = problem.lines.at(static_cast<std::size_t>(cut.line));
    SheetCut c;
    c.order = line.order;
    c.line = line.line;
    c.count = cut.count;
    c.set = cut.length;
    c.nominal = line.nominal;
    c.face = line.face;
    c.one_heat = !line.one_heat.empty();
    c.max_heats = line.max_heats;
    b.cuts.push_back(std::move(c));
  }
  return b;
}

// To the cent, halves away from zero.
Money CentsOf(allocator::FineMoney money) { return {(money.micro + (money.micro < 0 ? -500'000 : 500'000)) / 1'000'000}; }

LeftFate FateOf(LeftKind kind) {
  return kind == LeftKind::Drop ? LeftFate::Drop : kind == LeftKind::Scrap ? LeftFate::Scrap : LeftFate::None;
}

}  // namespace

std::vector<DraftPiece> PiecesOf(const Draft& draft) {
  const allocator::Problem& problem = draft.asked.problem;
  std::vector<DraftPiece> pieces;
  for (std::size_t i = 0; i < draft.plan.layouts.size(); ++i) {
    DraftPiece p;
    p.block = BlockOf(draft, draft.plan.layouts[i]);
    for (const allocator::Alternative& a : draft.extras.why.at(i)) {
      const allocator::Piece& other = problem.pieces.at(static_cast<std::size_t>(a.piece));
      p.next.push_back({other.tag, other.place, other.length, a.left, FateOf(a.left_kind), a.opens_bar, {}});
      if (a.dearer) p.next.back().dearer = CentsOf(*a.dearer);
    }
    p.notes = draft.extras.ends.at(i).words;
    for (const StandIn& s : draft.extras.stand_ins)
      if (s.layout == i) p.notes.push_back("stands in: " + s.words);
    pieces.push_back(std::move(p));
  }
  std::ranges::stable_sort(pieces, [](const DraftPiece& a, const DraftPiece& b) {
    return std::tie(a.block.section, a.block.grade, b.block.length) < std::tie(b.block.section, b.block.grade, a.block.length);
  });
  return pieces;
}

std::vector<DraftShort> ShortsOf(const Draft& draft) {
  std::vector<DraftShort> shorts;
  for (std::size_t i = 0; i < draft.plan.shorts.size(); ++i) {
    const allocator::Short& s = draft.plan.shorts[i];
    const allocator::Line& line = draft.asked.problem.lines.at(static_cast<std::size_t>(s.line));
    shorts.push_back({line.order, line.line, line.section, line.grade, s.why, s.missing, {}});
    for (const allocator::WayOut& way : draft.extras.ways_out.at(i)) shorts.back().ways_out.push_back(way.words);
  }
  return shorts;
}

DraftFigures FiguresOf(const Draft& draft, const std::vector<DraftPiece>& pieces) {
  const allocator::Value& value = draft.plan.value;
  DraftFigures f;
  f.pieces = value.pieces_pulled;
  f.bars = value.bars_opened;
  f.missing = value.unmet_pieces;
  f.set_ups = value.layouts;
  f.new_length = value.new_length;
  for (const DraftPiece& piece : pieces) {
    const SheetBlock& b = piece.block;
    if (b.kind == "drop") ++f.drops;
    if (b.fate == LeftFate::Scrap) f.scrap = f.scrap + b.left;
    if (b.fate != LeftFate::Drop) continue;
    ++f.kept;
    f.kept_length = f.kept_length + b.left;
  }
  return f;
}

std::string DifferenceWords(const std::vector<Draft>& drafts, const std::vector<Draft>& others) {
  allocator::Difference sum;
  bool first = true;
  for (const Draft& d : drafts) {
    const auto other = std::ranges::find_if(others, [&](const Draft& o) { return o.question.saw == d.question.saw; });
    if (other == others.end()) continue;
    const allocator::Difference one = allocator::DifferenceOf(d.asked.problem, d.plan, other->asked.problem, other->plan);
    if (std::exchange(first, false)) {
      sum = one;
      continue;
    }
    sum.unmet_pieces += one.unmet_pieces;
    sum.bars_opened += one.bars_opened;
    sum.pieces_pulled += one.pieces_pulled;
    sum.layouts += one.layouts;
    sum.new_length.nm += one.new_length.nm;
    sum.consumed_length.nm += one.consumed_length.nm;
    sum.lost_worth.nm += one.lost_worth.nm;
    sum.new_mass = sum.new_mass && one.new_mass ? std::optional(Mass{sum.new_mass->g + one.new_mass->g}) : std::nullopt;
    sum.money = sum.money && one.money ? std::optional(allocator::FineMoney{sum.money->micro + one.money->micro}) : std::nullopt;
  }
  return allocator::DifferenceWords(sum);
}

}  // namespace heatkeep::planning
