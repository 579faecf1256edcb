#include "client/allocator/replan.h"

#include <algorithm>
#include <chrono>
#include <limits>
#include <optional>
#include <set>

#include "client/allocator/allocate.h"
#include "client/allocator/eligible.h"
#include "client/allocator/plan_of_layouts.h"
#include "client/allocator/replan_changes.h"
#include "client/allocator/replan_words.h"
#include "client/allocator/value.h"

namespace heatkeep::allocator {
namespace {

std::size_t At(int i) { return static_cast<std::size_t>(i); }

// Lines that share heats: by the name they share, or by themselves.
std::string WishOf(const Line& line, int index) {
  if (!line.one_heat.empty()) return "one heat " + line.one_heat;
  return line.max_heats > 0 ? "line " + std::to_string(index) : std::string();
}

class Mending {
 public:
  explicit Mending(const Disturbed& now) : now_(now), problem_(now.problem), begin_(std::chrono::steady_clock::now()) {}

  Plan Run() {
    const std::vector<Pulled> staying = Staying([](const Pulled&) { return true; });
    Plan best = Completed(staying, 0.4);
    if (best.value.unmet_pieces > 0 || best.value.bars_opened > BarsOf(staying)) {
      Plan filled = Completed(Filled(staying), 0.3);
      if (Ahead(filled, best, 1)) best = std::move(filled);
    }
    if (best.value.unmet_pieces > 0) {
      Plan anew = Completed(Staying([](const Pulled& p) { return p.fixed; }), 1.0);
      if (Ahead(anew, best, 0)) best = std::move(anew);
    }
    return best;
  }

 private:
  template <class Stays>
  std::vector<Pulled> Staying(const Stays& stays) const {
    std::vector<Pulled> staying;
    for (const Pulled& p : now_.pulled)
      if (!p.cuts.empty() && stays(p)) staying.push_back(p);
    return staying;
  }

  int BarsOf(const std::vector<Pulled>& pulled) const {
    return static_cast<int>(
        std::count_if(pulled.begin(), pulled.end(), [&](const Pulled& p) { return problem_.pieces[At(p.piece)].kind == PieceKind::Bar; }));
  }

  // Is `a` better in what is unmet and in the first `keys` keys of the aim?
  bool Ahead(const Plan& a, const Plan& b, std::size_t keys) const {
    const auto figures = [&](const Plan& plan) {
      std::vector<std::int64_t> all = FiguresOf(problem_, plan.value);
      std::set<int> priorities;
      for (const Line& line : problem_.lines) priorities.insert(line.priority);
      all.resize(std::min(all.size(), priorities.size() + keys));
      return all;
    };
    return figures(a) < figures(b);
  }

  std::vector<int> Missing(const std::vector<Pulled>& pulled) const {
    std::vector<int> missing;
    for (const Line& line : problem_.lines) missing.push_back(line.quantity);
    for (const Pulled& p : pulled)
      for (const auto& [line, count] : p.cuts) missing[At(line)] -= count;
    for (int& m : missing) m = std::max(m, 0);
    return missing;
  }

  std::map<std::string, std::set<std::string>> HeatsOf(const std::vector<Pulled>& pulled) const {
    std::map<std::string, std::set<std::string>> heats;
    for (const Pulled& p : pulled)
      for (const auto& [line, count] : p.cuts)
        if (const std::string wish = WishOf(problem_.lines[At(line)], line); !wish.empty())
          heats[wish].insert(problem_.pieces[At(p.piece)].heat);
    return heats;
  }

  // Missing cuts put into the rests of the pieces that stay and are not yet at the saw, longest first.
  std::vector<Pulled> Filled(std::vector<Pulled> pulled) const {
    std::vector<int> missing = Missing(pulled), order;
    auto heats = HeatsOf(pulled);
    for (std::size_t i = 0; i < missing.size(); ++i)
      if (missing[i] > 0) order.push_back(static_cast<int>(i));
    std::stable_sort(order.begin(), order.end(),
                     [&](int a, int b) { return problem_.lines[At(a)].CutLength() > problem_.lines[At(b)].CutLength(); });
    for (const int line : order) {
      const Line& asked = problem_.lines[At(line)];
      const std::size_t most = !asked.one_heat.empty() ? 1 : static_cast<std::size_t>(asked.max_heats);
      const std::string wish = WishOf(asked, line);
      for (Pulled& p : pulled) {
        const Piece& piece = problem_.pieces[At(p.piece)];
        if (p.fixed || WhyNot(problem_, piece, asked)) continue;
        std::set<std::string> with = heats[wish];
        with.insert(piece.heat);
        if (!wish.empty() && with.size() > most) continue;
        while (missing[At(line)] > 0) {
          std::map<int, int> more = p.cuts;
          ++more[line];
          if (!StillHolds(problem_, p.piece, more)) break;
          p.cuts = std::move(more);
          --missing[At(line)];
          heats[wish] = with;
        }
      }
    }
    return pulled;
  }

  // What is still missing, on the metal that is still free. A wish for heats that have been settled is held by a cut that
  // only metal of that heat gives, asked for before all others.
  struct Remainder {
    Problem problem;
    std::map<int, std::set<std::string>> anchors;  // anchor line -> names of one_heat it holds
  };
  Remainder RemainderOf(const std::vector<Pulled>& pulled) const {
    Remainder rest{problem_, {}};
    Problem& r = rest.problem;
    for (const Pulled& p : pulled)
      if (std::optional<int>& count = r.pieces[At(p.piece)].count) count = *count - 1;
    const std::vector<int> missing = Missing(pulled);
    const auto heats = HeatsOf(pulled);
    std::map<std::string, std::string> anchored;  // one_heat -> heat
    for (std::size_t i = 0; i < missing.size(); ++i) {
      Line& line = r.lines[i];
      line.quantity = missing[i];
      const auto settled = heats.find(WishOf(line, static_cast<int>(i)));
      if (missing[i] == 0 || settled == heats.end()) continue;
      const std::set<std::string>& there = settled->second;
      const int more = line.max_heats - static_cast<int>(there.size());
      if (line.one_heat.empty() && more > 0) {
        line.max_heats = more;
        continue;
      }
      if (line.one_heat.empty()) line.one_heat = "\x01line " + std::to_string(i);
      anchored.emplace(line.one_heat, Richest(r, line, there));
    }
    for (const auto& [name, heat] : anchored) Anchor(rest, name, heat);
    return rest;
  }

  static constexpr Length kAnchor{1'000 * kNmPerMm};

  static void Anchor(Remainder& rest, const std::string& name, const std::string& heat) {
    Problem& r = rest.problem;
    Piece piece;
    piece.tag = piece.section =
        "\x01"
        "anchor";
    piece.grade = name;
    piece.heat = heat;
    piece.kind = PieceKind::Drop;
    piece.length = kAnchor;
    piece.square_ends = 2;
    Line line;
    line.section = piece.section;
    line.grade = name;
    line.nominal = kAnchor;
    line.one_heat = name;
    line.priority = std::numeric_limits<int>::min();
    r.exceptions.insert(r.exceptions.begin(), {piece.section, name, {}});
    r.pieces.push_back(piece);
    rest.anchors[static_cast<int>(r.lines.size())].insert(name);
    r.lines.push_back(line);
  }

  // Of these heats the one with most free metal for the line.
  static std::string Richest(const Problem& problem, const Line& line, const std::set<std::string>& heats) {
    std::map<std::string, std::int64_t> free;
    for (const Piece& piece : problem.pieces)
      if (piece.count.value_or(1) > 0 && heats.contains(piece.heat) && !WhyNot(problem, piece, line)) free[piece.heat] += piece.length.nm;
    std::string richest = *heats.begin();
    for (const auto& [heat, nm] : free)
      if (nm > free[richest]) richest = heat;
    return richest;
  }

  Plan Completed(const std::vector<Pulled>& pulled, double share) {
    std::vector<Layout> layouts;
    for (const Pulled& p : pulled) layouts.push_back(MakeLayout(problem_, p.piece, 1, {p.cuts.begin(), p.cuts.end()}));
    const std::vector<int> missing = Missing(pulled);
    if (std::any_of(missing.begin(), missing.end(), [](int m) { return m > 0; })) {
      Remainder rest = RemainderOf(pulled);
      const double used = std::chrono::duration<double>(std::chrono::steady_clock::now() - begin_).count();
      rest.problem.limits.seconds = std::max(0.0, (problem_.limits.seconds - used) * share);
      const Plan repair = Allocate(rest.problem);
      std::set<std::string> loose;  // wishes the search did not hold to the heat that is settled
      for (const Short& s : repair.shorts)
        if (const auto it = rest.anchors.find(s.line); it != rest.anchors.end()) loose.insert(it->second.begin(), it->second.end());
      for (const Layout& layout : repair.layouts) {
        if (At(layout.piece) >= problem_.pieces.size()) continue;
        const bool good = std::none_of(layout.cuts.begin(), layout.cuts.end(),
                                       [&](const Cut& cut) { return loose.contains(rest.problem.lines[At(cut.line)].one_heat); });
        if (good) layouts.push_back(layout);
      }
    }
    return PlanOfLayouts(problem_, layouts);
  }

  const Disturbed& now_;
  const Problem& problem_;
  std::chrono::steady_clock::time_point begin_;
};

}  // namespace

Replanned Replan(const Problem& problem, const Plan& plan, const std::vector<bool>& fixed, const std::vector<Change>& changes) {
  const Disturbed now = Disturb(problem, plan, fixed, changes);
  Replanned answer;
  answer.plan = Mending(now).Run();
  answer.problem = now.problem;
  SayChanges(problem, plan, answer);
  return answer;
}

}  // namespace heatkeep::allocator
