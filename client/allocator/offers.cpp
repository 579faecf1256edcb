#include "client/allocator/offers.h"

#include <algorithm>
#include <limits>
#include <set>

#include "client/allocator/cut_arithmetic.h"
#include "client/allocator/eligible.h"
#include "client/allocator/shortage.h"
#include "schema/terms/last_piece.h"

namespace heatkeep::allocator {
namespace {

std::size_t At(int i) { return static_cast<std::size_t>(i); }

std::string Of(const Line& line) { return "order " + line.order + " line " + line.line; }

void SayEnd(const Problem& problem, const LastPiece& end, EndOffers& offers) {
  if (offers.whole) offers.words.push_back("issued whole, no cut");
  if (offers.last_is_rest) offers.words.push_back("the last piece is what remains, no cut for it");
  if (offers.last_uncut)
    offers.words.push_back("offered: leave the last piece uncut at " + InMillimetres(*offers.last_uncut) + ", in its tolerance; " +
                           InMillimetres(offers.chips_saved) + " less to chips" + (end.left.nm > 0 ? " and waste" : ""));
  if (offers.thin)
    offers.words.push_back("warning: the last cut parts off " +
                           (end.left.nm > 0 ? "only " + InMillimetres(end.left) : std::string("nothing")) + ", less than " +
                           InMillimetres(kThinSlice) + ": the blade may wander");
  for (const Further& f : offers.further)
    offers.words.push_back("offered, not taken: what is left would give " + std::to_string(f.count) + " more of " +
                           Of(problem.lines[At(f.line)]) + " at " + InMillimetres(f.length) + ", and leave " + InMillimetres(f.left));
}

// Pieces of the line that were placed, and the heats they come from.
struct Placed {
  int count = 0;
  std::set<std::string> heats;
};
Placed PlacedOf(const Problem& problem, const Plan& plan, const Line& line, int index) {
  Placed placed;
  for (const Layout& layout : plan.layouts)
    for (const Cut& cut : layout.cuts) {
      const bool group = !line.one_heat.empty() && problem.lines[At(cut.line)].one_heat == line.one_heat;
      if (cut.line == index) placed.count += cut.count * layout.repeat;
      if (cut.line == index || group) placed.heats.insert(problem.pieces[At(layout.piece)].heat);
    }
  return placed;
}

// How many cuts of the line, up to `most`, one piece of it holds alone.
int HeldBy(const Room& room, Length length, int most) {
  int count = most;
  while (count > 0 && !Fits(room, (length + room.kerf) * count, length)) --count;
  return count;
}

// With papers weaker than asked for: pieces of the line that the metal the plan leaves would give, and those papers. The line's rule on
// heats stands.
std::optional<std::pair<int, PaperType>> WithWeakerPapers(const Problem& problem, const Plan& plan, int index, int missing) {
  const Line& line = problem.lines[At(index)];
  Line weaker = line;
  weaker.papers = PaperType::None;
  std::vector<std::int64_t> free;
  for (const Piece& piece : problem.pieces) free.push_back(piece.count ? *piece.count : std::numeric_limits<std::int32_t>::max());
  for (const Layout& layout : plan.layouts) free[At(layout.piece)] -= layout.repeat;
  std::set<std::string> heats = PlacedOf(problem, plan, line, index).heats;
  const int most_heats = !line.one_heat.empty() ? 1 : line.max_heats;
  std::vector<std::size_t> order;
  for (std::size_t i = 0; i < problem.pieces.size(); ++i)
    if (free[i] > 0 && problem.pieces[i].papers < line.papers && !WhyNot(problem, problem.pieces[i], weaker)) order.push_back(i);
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t a, std::size_t b) { return problem.pieces[a].papers > problem.pieces[b].papers; });
  int count = 0;
  PaperType papers = line.papers;
  for (const std::size_t i : order) {
    const Piece& piece = problem.pieces[i];
    if (most_heats > 0 && !heats.contains(piece.heat) && static_cast<int>(heats.size()) >= most_heats) continue;
    const Room room = RoomOf(piece, RulesFor(problem, piece));
    for (std::int64_t n = 0; n < free[i] && count < missing; ++n) {
      const int held = HeldBy(room, line.CutLength(), missing - count);
      if (held == 0) break;
      count += held;
      heats.insert(piece.heat);
      papers = std::min(papers, piece.papers);
    }
  }
  if (count == 0) return std::nullopt;
  return std::make_pair(count, papers);
}

}  // namespace

EndOffers OffersOf(const Problem& problem, const Layout& layout) {
  const Piece& piece = problem.pieces[At(layout.piece)];
  const GroupRules& rules = RulesFor(problem, piece);
  const Room room = RoomOf(piece, rules);
  EndOffers offers;
  int pieces = 0;
  for (const Cut& cut : layout.cuts) pieces += cut.count;
  const Cut& last = layout.cuts.back();
  const Line& line = problem.lines[At(last.line)];
  const bool good_far_end = piece.square_ends == 2 || rules.trim.nm == 0;
  LastPiece end;
  end.last = last.length;
  end.kerf = layout.kerf - room.trim_kerf - room.kerf * (pieces - 1);
  end.left = layout.left;
  end.doubt = piece.doubt;
  end.longest = line.nominal + line.face + line.tolerance_plus;
  end.good_far_end = good_far_end;
  offers.thin = IsThin(end);
  offers.whole = pieces == 1 && end.kerf.nm == 0 && room.trim.nm == 0 && layout.left.nm == 0;
  offers.last_is_rest = !offers.whole && end.kerf.nm == 0 && layout.left.nm == 0 && room.kerf.nm > 0;
  if ((offers.last_uncut = LastUncut(end))) offers.chips_saved = end.kerf + end.left;
  const Length stays = room.grip.nm > 0 ? room.grip : good_far_end ? Length{} : rules.trim;
  std::set<int> seen;
  for (const Cut& cut : layout.cuts) {
    if (!seen.insert(cut.line).second) continue;
    const int count = FurtherPieces(layout.left, cut.length, room.kerf, piece.doubt, stays);
    if (count > 0) offers.further.push_back({cut.line, count, cut.length, layout.left - (cut.length + room.kerf) * count});
  }
  SayEnd(problem, end, offers);
  return offers;
}

std::vector<WayOut> WaysOut(const Problem& problem, const Plan& plan, std::size_t index) {
  const Short& s = plan.shorts.at(index);
  const Line& line = problem.lines[At(s.line)];
  const int placed = PlacedOf(problem, plan, line, s.line).count;
  std::vector<WayOut> ways;
  if (placed > 0)
    ways.push_back({WayOutKind::PartShip, placed,
                    "part ship: " + std::to_string(placed) + " of " + std::to_string(placed + s.missing) + " can be cut and shipped now"});
  ways.push_back({WayOutKind::Wait, s.missing, "wait: until metal for the other " + std::to_string(s.missing) + " is here"});
  if (const auto weaker = WithWeakerPapers(problem, plan, s.line, s.missing))
    ways.push_back({WayOutKind::WeakerPapers, weaker->first,
                    "weaker papers: " + std::to_string(weaker->first) + " from metal with " +
                        (weaker->second == PaperType::None ? "no papers" : NameOf(weaker->second)) +
                        ", once the customer accepts that in writing for " + std::to_string(weaker->first)});
  return ways;
}

}  // namespace heatkeep::allocator
