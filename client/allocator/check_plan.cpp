#include "client/allocator/check_plan.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <utility>

namespace heatkeep::allocator {
namespace {

struct Check {
  const Problem& problem;
  const Plan& plan;
  std::vector<std::string> faults;

  std::vector<long long> placed, used;
  std::map<std::string, std::set<std::string>> heats_of_group;  // one_heat name -> heats
  std::vector<std::set<std::string>> heats_of_line;
  std::map<std::string, std::set<std::string>> heats_of_order;
  std::set<std::string> setups;
  Value value;  // as worked out here, but for lost worth and money
  long long lost_low = 0, lost_high = 0, money_low = 0, money_high = 0;

  void Fault(const std::string& where, const std::string& what) { faults.push_back(where + ": " + what); }

  static bool Listed(const std::vector<GradeSubstitute>& t, const std::string& a, const std::string& g, const std::string& order,
                     long long& extra) {
    for (const auto& r : t)
      if (r.asked == a && r.given == g && (r.order.empty() || r.order == order)) return extra += r.extra_per_metre.micro, true;
    return false;
  }
  static bool Listed(const std::vector<SectionSubstitute>& t, const std::string& a, const std::string& g, const std::string& order,
                     long long& extra) {
    for (const auto& r : t)
      if (r.asked == a && r.given == g && (r.order.empty() || r.order == order)) return extra += r.extra_per_metre.micro, true;
    return false;
  }

  // Price x length, rounded half up; long double carries it exactly enough for any amount below 10^18.
  static long long Money(long long per_metre, long long nm) {
    const long long whole = nm / 1000000000LL, part = nm % 1000000000LL;
    const long double exact = static_cast<long double>(per_metre) * static_cast<long double>(part) / 1e9L;
    return per_metre * whole + static_cast<long long>(std::floor(exact + 0.5L));
  }

  // Worth of a rest, between two figures that differ only where rounding is in doubt.
  static std::pair<long long, long long> RestWorth(long long nm, const GroupRules& rules) {
    if (nm <= 0 || nm < rules.keep.nm) return {0, 0};
    if (rules.rests) {
      long long worth = 0;  // of the longest grid length that is not longer
      for (std::size_t i = 0; i < rules.rests->of.size() && static_cast<long long>(i) * rules.rests->step.nm <= nm; ++i)
        worth = rules.rests->of[i].nm;
      return {worth, worth};
    }
    const long double um = static_cast<long double>(nm) / 1000.0L * -std::expm1(-static_cast<long double>(nm) / 1e9L);
    return {static_cast<long long>(std::floor(um + 0.5L - 1e-6L)) * 1000, static_cast<long long>(std::floor(um + 0.5L + 1e-6L)) * 1000};
  }

  void OneLayout(const Layout& layout, const std::string& where) {
    if (layout.piece < 0 || static_cast<std::size_t>(layout.piece) >= problem.pieces.size()) return Fault(where, "there is no such piece");
    const Piece& piece = problem.pieces[static_cast<std::size_t>(layout.piece)];
    const GroupRules* rules = &problem.rules;
    for (auto e = problem.exceptions.rbegin(); e != problem.exceptions.rend(); ++e)
      if ((e->section.empty() || e->section == piece.section) && (e->grade.empty() || e->grade == piece.grade)) rules = &e->rules;
    if (layout.repeat < 1) return Fault(where, "repeat is below 1");
    if (layout.cuts.empty()) return Fault(where, "nothing is cut");
    used[static_cast<std::size_t>(layout.piece)] += layout.repeat;
    if (!piece.held.empty()) Fault(where, "the piece may not be used: " + piece.held);

    const long long k = rules->kerf.nm, g = rules->grip.nm, t = rules->trim.nm, d = piece.doubt.nm;
    const bool rough_near = piece.square_ends == 0 && t > 0;
    const bool rough_far = piece.square_ends < 2 && t > 0;
    long long n = 0, sum = 0, longest = 0, extra_money_low = 0;
    std::map<long long, long long> by_length;
    for (const Cut& cut : layout.cuts) {
      if (cut.line < 0 || static_cast<std::size_t>(cut.line) >= problem.lines.size()) return Fault(where, "there is no such line");
      if (cut.count < 1) return Fault(where, "a cut with count below 1");
      const Line& line = problem.lines[static_cast<std::size_t>(cut.line)];
      if (cut.length.nm != line.nominal.nm + line.face.nm + line.aim.nm) Fault(where, "a cut has not its line's length");
      n += cut.count;
      sum += cut.length.nm * cut.count;
      longest = std::max<long long>(longest, cut.length.nm);
      by_length[cut.length.nm] += cut.count;
      placed[static_cast<std::size_t>(cut.line)] += static_cast<long long>(cut.count) * layout.repeat;
      long long extra = 0;
      if (piece.section != line.section && !Listed(problem.sections, line.section, piece.section, line.order, extra))
        Fault(where, "wrong section");
      if (piece.grade != line.grade && !Listed(problem.grades, line.grade, piece.grade, line.order, extra)) Fault(where, "wrong grade");
      if (!line.condition.empty() && line.condition != piece.condition) Fault(where, "wrong condition");
      if (line.owner != piece.owner) Fault(where, "wrong owner");
      if (static_cast<int>(piece.papers) < static_cast<int>(line.papers)) Fault(where, "papers too weak");
      if (piece.heat.empty() && (!line.one_heat.empty() || line.max_heats > 0)) Fault(where, "heat not known");
      if (std::count(line.refused_heats.begin(), line.refused_heats.end(), piece.heat) > 0) Fault(where, "heat refused");
      extra_money_low += Money(extra, cut.length.nm) * cut.count;
      if (!line.one_heat.empty()) heats_of_group[line.one_heat].insert(piece.heat);
      heats_of_line[static_cast<std::size_t>(cut.line)].insert(piece.heat);
      heats_of_order[line.order].insert(piece.heat);
    }
    // The ending, case by case.
    const long long before = piece.length.nm - (rough_near ? t + k : 0);
    const long long full = before - sum - n * k;  // left over if every cut costs a full kerf
    long long left = 0, kerf = n * k + (rough_near ? k : 0);
    bool uncut = false;
    if (full > 0 || (full == 0 && k > 0)) {
      left = full;
      if (full == 0) {  // the blade leaves just at the end
        if (g > 0) Fault(where, "nothing is left for the vice");
        if (rough_far) Fault(where, "the last piece ends at a rough end");
        if (d > 0) Fault(where, "a doubtful length is used up");
      }
      if (full - d < g) Fault(where, "less is left than the vice must hold");
      if (g == 0 && rough_far && full - d < t) Fault(where, "the last piece reaches into the rough end");
    } else if (full == -k) {
      uncut = true;
      kerf -= k;
      if (longest < g) Fault(where, "no piece is long enough for the vice");
      if (rough_far) Fault(where, "the last piece ends at a rough end");
      if (d > 0) Fault(where, "a doubtful length is used up");
    } else if (full > -k) {
      kerf += full;
      if (g > 0) Fault(where, "nothing is left for the vice");
      if (rough_far) Fault(where, "the last piece ends at a rough end");
      if (d > 0) Fault(where, "a doubtful length is used up");
    } else {
      Fault(where, "more is cut than the piece holds");
    }
    if (uncut && g > 0 && !layout.cuts.empty() && layout.cuts.back().length.nm < g)
      Fault(where, "the last piece, left uncut, is too short for the vice");
    if (layout.trim.nm != (rough_near ? t : 0)) Fault(where, "wrong trim");
    if (layout.kerf.nm != kerf) Fault(where, "wrong kerf");
    if (layout.left.nm != left) Fault(where, "wrong length left");
    if (layout.trim.nm + layout.kerf.nm + sum + layout.left.nm != piece.length.nm)
      Fault(where, "trim, kerf, cuts and what is left do not add up to the piece");
    const LeftKind kind = left == 0 ? LeftKind::None : left >= rules->keep.nm ? LeftKind::Drop : LeftKind::Scrap;
    if (layout.left_kind != kind) Fault(where, "what is left is called by the wrong name");

    // What it amounts to.
    const long long times = layout.repeat;
    const bool own = piece.owner.empty();
    std::string setup = piece.section + "\n" + piece.grade;
    for (const auto& [length, count] : by_length) setup += "\n" + std::to_string(length) + "x" + std::to_string(count);
    setups.insert(setup);
    value.pieces_pulled += layout.repeat;
    value.consumed_length.nm += piece.length.nm * times;
    if (piece.kind == PieceKind::Bar) value.bars_opened += layout.repeat;
    if (piece.kind == PieceKind::Bar && own) value.new_length.nm += piece.length.nm * times;
    if (kind == LeftKind::Scrap) value.scrap_length.nm += left * times;
    std::pair<long long, long long> taken{0, 0}, rest{0, 0};
    if (own) {
      taken = piece.kind == PieceKind::Bar
          ? std::pair<long long, long long>{(piece.length.nm + 500) / 1000 * 1000, (piece.length.nm + 500) / 1000 * 1000}
          : piece.worth && piece.length >= rules->keep ? std::pair<long long, long long>{piece.worth->nm, piece.worth->nm}
                                                       : RestWorth(piece.length.nm, *rules);
      rest = RestWorth(left, *rules);
    }
    lost_low += (taken.first - rest.second) * times;
    lost_high += (taken.second - rest.first) * times;
    long long money =
        extra_money_low + piece.costs.per_pull.micro + piece.costs.per_cut.micro * (n + (rough_near && t > 0 ? 1 : 0) - (uncut ? 1 : 0));
    if (own && piece.kind == PieceKind::Drop && piece.length < rules->keep)
      money += Money(piece.costs.scrap_per_metre.micro, piece.length.nm);
    if (own && kind == LeftKind::Scrap) money -= Money(piece.costs.scrap_per_metre.micro, left);
    money_low += (money + Money(piece.costs.per_metre.micro, taken.first - rest.second)) * times;
    money_high += (money + Money(piece.costs.per_metre.micro, taken.second - rest.first)) * times;
  }

  void Lines() {
    std::map<int, long long> listed;
    for (const Short& s : plan.shorts) {
      if (s.line < 0 || static_cast<std::size_t>(s.line) >= problem.lines.size()) {
        Fault("short", "there is no such line");
        continue;
      }
      if (s.why.empty()) Fault("short", "no reason is given");
      listed[s.line] += s.missing;
    }
    for (std::size_t i = 0; i < problem.lines.size(); ++i) {
      const Line& line = problem.lines[i];
      const std::string where = "line " + line.order + "/" + line.line;
      const long long missing = line.quantity - placed[i];
      if (missing < 0) Fault(where, "gets more than it asks");
      if (missing != listed[static_cast<int>(i)]) Fault(where, "what is missing is not what the plan says");
      if (missing > 0) {
        value.unmet_by_priority[line.priority] += static_cast<int>(missing);
        value.unmet_pieces += static_cast<int>(missing);
      }
      if (line.max_heats > 0 && heats_of_line[i].size() > static_cast<std::size_t>(line.max_heats))
        Fault(where, "comes from too many heats");
    }
    for (const auto& [name, heats] : heats_of_group)
      if (heats.size() > 1) Fault("one heat " + name, "comes from more than one heat");
    for (std::size_t i = 0; i < problem.pieces.size(); ++i)
      if (problem.pieces[i].count && used[i] > *problem.pieces[i].count)
        Fault("piece " + problem.pieces[i].tag, "is used more often than it exists");
  }

  void Figures() {
    value.layouts = static_cast<int>(setups.size());
    const Value& said = plan.value;
    if (said.unmet_by_priority != value.unmet_by_priority || said.unmet_pieces != value.unmet_pieces) Fault("value", "unmet is wrong");
    if (said.bars_opened != value.bars_opened) Fault("value", "bars_opened is wrong");
    if (said.new_length != value.new_length) Fault("value", "new_length is wrong");
    if (said.consumed_length != value.consumed_length) Fault("value", "consumed_length is wrong");
    if (said.scrap_length != value.scrap_length) Fault("value", "scrap_length is wrong");
    if (said.pieces_pulled != value.pieces_pulled) Fault("value", "pieces_pulled is wrong");
    if (said.layouts != value.layouts) Fault("value", "layouts is wrong");
    if (said.lost_worth.nm < lost_low || said.lost_worth.nm > lost_high) Fault("value", "lost_worth is wrong");
    long long fixed = problem.per_setup.micro * value.layouts;
    for (const auto& [order, heats] : heats_of_order) fixed += problem.per_extra_heat.micro * (static_cast<long long>(heats.size()) - 1);
    if (said.money.micro < money_low + fixed || said.money.micro > money_high + fixed) Fault("value", "money is wrong");
  }

  // Bounds and claims of proof, key by key in the aim's order.
  void Claims() {
    std::size_t next = 0;
    bool all_before = true, leading = false;
    const std::vector<Key> keys = KeysOf(problem.aim);
    for (std::size_t at = 0; at < keys.size(); ++at) {
      const Key key = keys[at];
      bool equal = false;
      if (key == Key::Unmet) {
        if (const auto& b = plan.bound.unmet_by_priority) {
          if (*b > plan.value.unmet_by_priority && all_before) LexAbove(*b);
          equal = *b == plan.value.unmet_by_priority;
        }
      } else if (const auto it = plan.bound.figures.find(key); it != plan.bound.figures.end()) {
        if (!all_before) Fault("bound", NameOf(key) + " is bounded though a key before it is not proved");
        if (it->second > FigureOf(plan.value, key)) Fault("bound", NameOf(key) + " is above the value");
        equal = it->second == FigureOf(plan.value, key);
      }
      const bool claimed = next < plan.proved_keys.size() && plan.proved_keys[next] == key;
      if (claimed) ++next;
      if (claimed && !(equal && all_before)) Fault("proof", NameOf(key) + " is not proved");
      if (at == 1) leading = claimed;
      all_before = all_before && claimed;
    }
    if (next != plan.proved_keys.size()) Fault("proof", "keys are not those of the aim in their order");
    if (plan.proved != leading) Fault("proof", "proved does not say whether the leading key is proved");
    const bool is_short = plan.value.unmet_pieces > 0;
    if ((plan.status == Status::Short) != is_short) Fault("status", "short is said wrongly");
    if (plan.status == Status::Proved && !plan.proved) Fault("status", "proved is said wrongly");
  }

  // Priorities in order: the bound may not be above the value where they first differ.
  void LexAbove(const std::map<int, int>& bound) {
    std::set<int> all;
    for (const auto& [p, c] : bound) all.insert(p);
    for (const auto& [p, c] : plan.value.unmet_by_priority) all.insert(p);
    for (int p : all) {
      const auto b = bound.find(p), v = plan.value.unmet_by_priority.find(p);
      const int x = b == bound.end() ? 0 : b->second, y = v == plan.value.unmet_by_priority.end() ? 0 : v->second;
      if (x > y) return Fault("bound", "unmet is above the value");
      if (x < y) return;
    }
  }
};

}  // namespace

std::vector<std::string> CheckPlan(const Problem& problem, const Plan& plan) {
  Check check{problem, plan, {}, {}, {}, {}, {}, {}, {}, {}, 0, 0, 0, 0};
  check.placed.assign(problem.lines.size(), 0);
  check.used.assign(problem.pieces.size(), 0);
  check.heats_of_line.resize(problem.lines.size());
  for (std::size_t i = 0; i < plan.layouts.size(); ++i) check.OneLayout(plan.layouts[i], "layout " + std::to_string(i + 1));
  check.Lines();
  check.Figures();
  check.Claims();
  return check.faults;
}

}  // namespace heatkeep::allocator
