#include "tests/allocator/enumerate.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <set>

namespace heatkeep::allocator::test {
namespace {

using Score = std::vector<long long>;
std::size_t At(int i) { return static_cast<std::size_t>(i); }

struct Copy {
  int piece;
  bool same_as_before;  // a copy of the piece before it
};

struct Tally {
  long long bars = 0, fresh = 0, lost = 0, consumed = 0, money = 0, pulls = 0;
};

long long Worth(long long nm, long long keep) {
  if (nm <= 0 || nm < keep) return 0;
  const long double um = static_cast<long double>(nm) / 1000 * (1 - std::exp(-static_cast<long double>(nm) / 1e9L));
  return static_cast<long long>(std::floor(um + 0.5L)) * 1000;
}
long long Price(long long per_metre, long long nm) {
  return static_cast<long long>(std::floor(static_cast<long double>(per_metre) * static_cast<long double>(nm) / 1e9L + 0.5L));
}

bool May(const Problem& problem, const Piece& p, const Line& l, long long* extra) {
  bool section = p.section == l.section, grade = p.grade == l.grade;
  *extra = 0;
  if (!section)
    for (const auto& r : problem.sections)
      if (!section && r.asked == l.section && r.given == p.section && (r.order.empty() || r.order == l.order))
        section = true, *extra += r.extra_per_metre.micro;
  if (!grade)
    for (const auto& r : problem.grades)
      if (!grade && r.asked == l.grade && r.given == p.grade && (r.order.empty() || r.order == l.order))
        grade = true, *extra += r.extra_per_metre.micro;
  const bool heat = (l.one_heat.empty() && l.max_heats == 0) || !p.heat.empty();
  return section && grade && heat && p.held.empty() && p.owner == l.owner && p.papers >= l.papers &&
      (l.condition.empty() || l.condition == p.condition);
}

// Cuts one piece, step by step, the longest piece left for last when it can stay whole.
std::optional<Tally> CutUp(const Problem& problem, const Piece& p, const std::vector<int>& lines) {
  GroupRules r = problem.rules;
  for (std::size_t e = problem.exceptions.size(); e-- > 0;) {
    const auto& x = problem.exceptions[e];
    if ((x.section.empty() || x.section == p.section) && (x.grade.empty() || x.grade == p.grade)) r = x.rules;
  }
  std::vector<long long> lengths;
  Tally t;
  for (int i : lines) {
    const Line& l = problem.lines[At(i)];
    long long extra = 0;
    if (!May(problem, p, l, &extra)) return std::nullopt;
    lengths.push_back(l.nominal.nm + l.face.nm + l.aim.nm);
    t.money += Price(extra, lengths.back());
  }
  std::sort(lengths.begin(), lengths.end());
  const bool far_good = p.square_ends == 2 || r.trim.nm == 0;
  long long left = p.length.nm, cuts_made = 0;
  if (p.square_ends == 0 && r.trim.nm > 0) {
    left -= r.trim.nm + r.kerf.nm;
    ++cuts_made;
  }
  for (std::size_t i = 0; i < lengths.size(); ++i) {
    const bool last = i + 1 == lengths.size();
    const long long l = lengths[i], rest = left - l - r.kerf.nm;
    if (last && left == l) {
      if (!far_good || p.doubt.nm > 0 || l < r.grip.nm) return std::nullopt;
      left = 0;
    } else if (rest > 0) {
      if (rest - p.doubt.nm < r.grip.nm) return std::nullopt;
      if (last && r.grip.nm == 0 && !far_good && rest - p.doubt.nm < r.trim.nm) return std::nullopt;
      left = rest;
      ++cuts_made;
    } else {
      if (!last || l >= left || r.grip.nm > 0 || !far_good || p.doubt.nm > 0) return std::nullopt;
      left = 0;
      ++cuts_made;
    }
  }
  const bool own = p.owner.empty(), bar = p.kind == PieceKind::Bar;
  t.pulls = 1;
  t.bars = bar ? 1 : 0;
  t.fresh = bar && own ? p.length.nm : 0;
  t.consumed = p.length.nm;
  if (own) t.lost = (bar ? (p.length.nm + 500) / 1000 * 1000 : Worth(p.length.nm, r.keep.nm)) - Worth(left, r.keep.nm);
  t.money += Price(p.costs.per_metre.micro, t.lost) + p.costs.per_pull.micro + p.costs.per_cut.micro * cuts_made;
  if (own && !bar && p.length < r.keep) t.money += Price(p.costs.scrap_per_metre.micro, p.length.nm);
  if (own && left > 0 && left < r.keep.nm) t.money -= Price(p.costs.scrap_per_metre.micro, left);
  return t;
}

struct Enumeration {
  const Problem& problem;
  std::vector<int> cuts;  // the line of every single cut
  std::vector<Copy> copies;
  std::vector<int> where;                                       // by cut: copy, or -1
  std::vector<std::map<unsigned, std::optional<Tally>>> known;  // by piece: cuts taken -> tally
  Score best;

  void Try(std::size_t i, int used) {
    if (i == cuts.size()) {
      const Score score = Rate();
      if (!score.empty() && (best.empty() || score < best)) best = score;
      return;
    }
    // Equal cuts of one line go to copies in ascending order, unmet last.
    const int least = i > 0 && cuts[i] == cuts[i - 1] ? (where[i - 1] < 0 ? static_cast<int>(copies.size()) : where[i - 1]) : 0;
    for (int c = least; c < static_cast<int>(copies.size()); ++c) {
      where[i] = c;
      Try(i + 1, used);
    }
    where[i] = -1;
    Try(i + 1, used);
  }

  Score Rate() {
    std::vector<unsigned> taken(copies.size(), 0);
    std::vector<long long> unmet(10, 0);
    for (std::size_t i = 0; i < cuts.size(); ++i) {
      if (where[i] < 0) ++unmet[At(problem.lines[At(cuts[i])].priority)];
      else taken[At(where[i])] |= 1u << i;
    }
    Tally sum;
    std::set<std::string> setups;
    std::map<std::string, std::set<std::string>> order_heats, group_heats;
    std::map<int, std::set<std::string>> line_heats;
    for (std::size_t c = 0; c < copies.size(); ++c) {
      if (taken[c] == 0) continue;
      if (copies[c].same_as_before && taken[c - 1] == 0) return {};  // equal copies are used in order
      const Piece& p = problem.pieces[At(copies[c].piece)];
      std::vector<int> lines;
      for (std::size_t i = 0; i < cuts.size(); ++i)
        if (taken[c] >> i & 1u) lines.push_back(cuts[i]);
      auto [it, fresh] = known[At(copies[c].piece)].try_emplace(taken[c]);
      if (fresh) it->second = CutUp(problem, p, lines);
      if (!it->second) return {};
      const Tally& t = *it->second;
      sum.bars += t.bars, sum.fresh += t.fresh, sum.lost += t.lost, sum.consumed += t.consumed;
      sum.money += t.money, sum.pulls += t.pulls;
      std::vector<long long> lengths;
      for (int i : lines) {
        const Line& l = problem.lines[At(i)];
        lengths.push_back(l.nominal.nm + l.face.nm + l.aim.nm);
        order_heats[l.order].insert(p.heat);
        if (!l.one_heat.empty()) group_heats[l.one_heat].insert(p.heat);
        if (l.max_heats > 0) line_heats[i].insert(p.heat);
      }
      std::sort(lengths.begin(), lengths.end());
      std::string setup = p.section + "|" + p.grade;
      for (long long l : lengths) setup += "|" + std::to_string(l);
      setups.insert(setup);
    }
    for (const auto& [name, heats] : group_heats)
      if (heats.size() > 1) return {};
    for (const auto& [line, heats] : line_heats)
      if (heats.size() > At(problem.lines[At(line)].max_heats)) return {};
    sum.money += problem.per_setup.micro * static_cast<long long>(setups.size());
    for (const auto& [order, heats] : order_heats) sum.money += problem.per_extra_heat.micro * (static_cast<long long>(heats.size()) - 1);
    Score score = unmet;
    const long long layouts = static_cast<long long>(setups.size());
    switch (problem.aim) {
      case Aim::FewestBars: score.push_back(sum.bars); [[fallthrough]];
      case Aim::DropsFirst: score.insert(score.end(), {sum.fresh, sum.lost, sum.pulls, layouts}); break;
      case Aim::LeastMetres: score.push_back(sum.consumed); break;
      case Aim::LeastMoney: score.push_back(sum.money); break;
    }
    return score;
  }
};

Enumeration Prepare(const Problem& problem) {
  Enumeration e{problem, {}, {}, {}, {}, {}};
  for (std::size_t i = 0; i < problem.lines.size(); ++i)
    for (int n = 0; n < problem.lines[i].quantity; ++n) e.cuts.push_back(static_cast<int>(i));
  for (std::size_t i = 0; i < problem.pieces.size(); ++i) {
    const int most = static_cast<int>(e.cuts.size());
    for (int n = 0; n < std::min(most, problem.pieces[i].count.value_or(most)); ++n) e.copies.push_back({static_cast<int>(i), n > 0});
  }
  e.where.assign(e.cuts.size(), -1);
  e.known.resize(problem.pieces.size());
  return e;
}

}  // namespace

std::vector<long long> BestByEnumeration(const Problem& problem) {
  Enumeration e = Prepare(problem);
  e.Try(0, 0);
  return e.best;
}

std::vector<long long> PlainChoiceScore(const Problem& problem) {
  Enumeration e = Prepare(problem);
  const auto length = [&](std::size_t cut) { return problem.lines[At(e.cuts[cut])].CutLength(); };
  std::vector<std::size_t> order(e.cuts.size());
  for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return length(a) > length(b); });
  std::vector<std::vector<int>> on(e.copies.size());
  for (std::size_t cut : order) {
    std::optional<std::size_t> best;
    std::vector<long long> best_rank;
    for (std::size_t c = 0; c < e.copies.size(); ++c) {
      const Piece& p = problem.pieces[At(e.copies[c].piece)];
      std::vector<int> with = on[c];
      with.push_back(e.cuts[cut]);
      if (!CutUp(problem, p, with)) continue;
      long long room = p.length.nm;
      for (int i : on[c]) room -= problem.lines[At(i)].CutLength().nm + problem.rules.kerf.nm;
      const std::vector<long long> rank = {on[c].empty() ? 1 : 0, on[c].empty() && p.kind == PieceKind::Bar ? 1 : 0, room};
      if (!best || rank < best_rank) best = c, best_rank = rank;
    }
    if (!best) continue;
    on[*best].push_back(e.cuts[cut]);
    e.where[cut] = static_cast<int>(*best);
  }
  return e.Rate();
}

}  // namespace heatkeep::allocator::test
