#include "client/allocator/plain_choice.h"

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <tuple>

#include "client/allocator/cut_arithmetic.h"
#include "client/allocator/eligible.h"
#include "client/allocator/plan_of_layouts.h"
#include "client/allocator/value.h"

namespace heatkeep::allocator {
namespace {

std::size_t At(int i) { return static_cast<std::size_t>(i); }

struct Opened {
  int piece = 0;
  std::map<int, int> cuts;  // line -> count
  Length taken, longest;
};

// What is on the bench so far.
struct Bench {
  std::vector<Opened> opened;
  std::vector<std::int64_t> stock;
  std::vector<int> missing;                  // by line
  std::vector<std::set<std::string>> heats;  // by line
};

class Hand {
 public:
  explicit Hand(const Problem& problem) : problem_(problem), may_(problem.lines.size()) {
    std::int64_t most = 0;
    for (const Line& line : problem.lines) most += line.quantity;
    for (const Piece& piece : problem.pieces) {
      first_.stock.push_back(piece.count ? std::min<std::int64_t>(*piece.count, most) : most);
      rooms_.push_back(RoomOf(piece, RulesFor(problem, piece)));
      order_.push_back(static_cast<int>(order_.size()));
    }
    std::stable_sort(order_.begin(), order_.end(), [&](int a, int b) {
      const Piece &x = problem.pieces[At(a)], &y = problem.pieces[At(b)];
      return std::make_pair(x.kind == PieceKind::Bar, x.length) < std::make_pair(y.kind == PieceKind::Bar, y.length);
    });
    for (const Line& line : problem.lines) first_.missing.push_back(line.quantity);
    first_.heats.resize(problem.lines.size());
  }

  std::vector<Layout> Make(bool priority_first) {
    Bench bench = first_;
    for (const std::vector<int>& unit : Units(priority_first)) PlaceUnit(bench, unit);
    std::vector<Layout> layouts;
    for (const Opened& o : bench.opened) layouts.push_back(MakeLayout(problem_, o.piece, 1, {o.cuts.begin(), o.cuts.end()}));
    return layouts;
  }

 private:
  const Line& LineAt(int i) const { return problem_.lines[At(i)]; }

  // Lines that must share one heat are one unit; every other line is its own.
  std::vector<std::vector<int>> Units(bool priority_first) const {
    std::map<std::string, std::vector<int>> groups;
    std::vector<std::vector<int>> units;
    for (std::size_t i = 0; i < problem_.lines.size(); ++i) {
      const Line& line = problem_.lines[i];
      if (line.one_heat.empty()) units.push_back({static_cast<int>(i)});
      else groups[line.one_heat].push_back(static_cast<int>(i));
    }
    for (auto& [name, lines] : groups) units.push_back(std::move(lines));
    const auto before = [&](int a, int b) {
      const auto key = [&](int i) {
        const Line& line = LineAt(i);
        return std::make_tuple(priority_first ? line.priority : 0, -line.CutLength().nm, line.due.empty(), line.due, i);
      };
      return key(a) < key(b);
    };
    for (std::vector<int>& unit : units) std::sort(unit.begin(), unit.end(), before);
    std::sort(units.begin(), units.end(), [&](const auto& a, const auto& b) { return before(a.front(), b.front()); });
    return units;
  }

  void PlaceUnit(Bench& bench, const std::vector<int>& unit) {
    const Line& line = LineAt(unit.front());
    if (line.one_heat.empty() && line.max_heats != 1) return Place(bench, unit.front(), nullptr);
    std::set<std::string> heats;
    for (const int i : unit)
      for (std::size_t p = 0; p < problem_.pieces.size(); ++p)
        if (May(i)[p] && bench.stock[p] > 0) heats.insert(problem_.pieces[p].heat);
    for (const Opened& o : bench.opened) heats.insert(problem_.pieces[At(o.piece)].heat);
    std::optional<Bench> best;
    std::tuple<std::int64_t, std::int64_t, std::size_t> least;
    for (const std::string& heat : heats) {
      Bench trial = bench;
      for (const int i : unit) Place(trial, i, &heat);
      std::int64_t missing = 0, bars = 0;
      for (const int i : unit) missing += trial.missing[At(i)];
      for (std::size_t o = bench.opened.size(); o < trial.opened.size(); ++o) {
        const Piece& piece = problem_.pieces[At(trial.opened[o].piece)];
        if (piece.kind == PieceKind::Bar) bars += piece.length.nm;
      }
      const auto score = std::make_tuple(missing, bars, trial.opened.size());
      if (best && score >= least) continue;
      best = std::move(trial);
      least = score;
    }
    if (best) bench = std::move(*best);
  }

  const std::vector<char>& May(int line) {
    std::vector<char>& may = may_[At(line)];
    if (may.empty())
      for (const Piece& piece : problem_.pieces) may.push_back(WhyNot(problem_, piece, LineAt(line)) ? 0 : 1);
    return may;
  }

  bool HeatAllowed(const Bench& bench, int line, const std::string& heat) const {
    const int most = LineAt(line).max_heats;
    const std::set<std::string>& used = bench.heats[At(line)];
    return most == 0 || used.contains(heat) || static_cast<int>(used.size()) < most;
  }

  // As many of the line's missing cuts as the opened piece still holds.
  void Fill(Bench& bench, Opened& o, int line) {
    const Length l = LineAt(line).CutLength();
    const Room& room = rooms_[At(o.piece)];
    int& missing = bench.missing[At(line)];
    while (missing > 0 && Fits(room, o.taken + l + room.kerf, std::max(o.longest, l))) {
      o.taken += l + room.kerf;
      o.longest = std::max(o.longest, l);
      ++o.cuts[line];
      --missing;
      bench.heats[At(line)].insert(problem_.pieces[At(o.piece)].heat);
    }
  }

  void Place(Bench& bench, int line, const std::string* heat) {
    const auto allowed = [&](int piece) {
      const std::string& own = problem_.pieces[At(piece)].heat;
      return May(line)[At(piece)] && (!heat || own == *heat) && HeatAllowed(bench, line, own);
    };
    std::vector<std::pair<Length, std::size_t>> rooms;
    for (std::size_t o = 0; o < bench.opened.size(); ++o) {
      const Opened& opened = bench.opened[o];
      const Room& room = rooms_[At(opened.piece)];
      rooms.emplace_back(room.exact.value_or(room.room) - opened.taken, o);
    }
    std::sort(rooms.begin(), rooms.end());
    for (const auto& [room, o] : rooms) {
      if (bench.missing[At(line)] == 0) return;
      if (allowed(bench.opened[o].piece)) Fill(bench, bench.opened[o], line);
    }
    for (const int piece : order_) {
      while (bench.missing[At(line)] > 0 && bench.stock[At(piece)] > 0 && allowed(piece)) {
        Opened fresh{piece, {}, {}, {}};
        Fill(bench, fresh, line);
        if (fresh.cuts.empty()) break;
        --bench.stock[At(piece)];
        bench.opened.push_back(std::move(fresh));
      }
      if (bench.missing[At(line)] == 0) return;
    }
  }

  const Problem& problem_;
  std::vector<std::vector<char>> may_;  // by line, piece; worked out when first asked
  std::vector<Room> rooms_;
  std::vector<int> order_;  // pieces: drops, then bars, shortest first
  Bench first_;
};

}  // namespace

Plan PlanByHand(const Problem& problem) {
  Hand hand(problem);
  Plan plan = PlanOfLayouts(problem, hand.Make(false));
  if (plan.value.unmet_pieces == 0) return plan;
  Plan urgent = PlanOfLayouts(problem, hand.Make(true));
  return FiguresOf(problem, urgent.value) < FiguresOf(problem, plan.value) ? urgent : plan;
}

}  // namespace heatkeep::allocator
