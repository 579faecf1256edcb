#include "client/gateway/next_best.h"

#include <algorithm>

#include "client/allocator/cut_arithmetic.h"
#include "client/allocator/eligible.h"
#include "schema/terms/length_text.h"

namespace heatkeep {
namespace {

using namespace allocator;

bool MayServe(const Problem& problem, const Piece& piece, const Piece& instead_of, const Layout& layout) {
  return std::all_of(layout.cuts.begin(), layout.cuts.end(), [&](const Cut& cut) {
    const Line& line = problem.lines[static_cast<std::size_t>(cut.line)];
    const bool same_heat = (line.one_heat.empty() && line.max_heats == 0) || piece.heat == instead_of.heat;
    return same_heat && !WhyNot(problem, piece, line);
  });
}

bool Holds(const Problem& problem, const Piece& piece, const Layout& layout) {
  const GroupRules& rules = RulesFor(problem, piece);
  Length taken, longest;
  for (const Cut& cut : layout.cuts) {
    taken += (cut.length + rules.kerf) * cut.count;
    longest = std::max(longest, cut.length);
  }
  return Fits(RoomOf(piece, rules), taken, longest);
}

}  // namespace

std::vector<bool> TakenPieces(const Problem& problem, const Plan& plan) {
  std::vector<bool> taken(problem.pieces.size(), false);
  for (const Layout& layout : plan.layouts) taken[static_cast<std::size_t>(layout.piece)] = true;
  return taken;
}

std::string NextBest(const Problem& problem, const std::vector<bool>& taken, const Layout& layout) {
  const Piece& chosen = problem.pieces[static_cast<std::size_t>(layout.piece)];
  const Piece* best = nullptr;
  for (std::size_t i = 0; i < problem.pieces.size(); ++i) {
    const Piece& piece = problem.pieces[i];
    if (taken[i] || piece.section != chosen.section || (best != nullptr && piece.length >= best->length)) continue;
    if (Holds(problem, piece, layout) && MayServe(problem, piece, chosen, layout)) best = &piece;
  }
  if (best == nullptr) return "";
  return best->tag + (best->place.empty() ? "" : " in " + best->place) + ", " + WriteMm(best->length, Rounding::Down) + " mm";
}

}  // namespace heatkeep
