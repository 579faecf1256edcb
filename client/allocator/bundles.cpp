#include "client/allocator/bundles.h"

#include <map>
#include <string>
#include <tuple>

namespace heatkeep::allocator {

std::vector<Bundle> BundlesOf(const Problem& problem, const Plan& plan, int at_a_time) {
  using Stops = std::map<std::int64_t, int>;  // cut length -> count
  using Sign = std::tuple<std::string, std::string, std::int64_t, int, std::vector<std::int64_t>, std::string, Stops>;
  std::map<Sign, std::size_t> at;
  std::vector<Bundle> bundles;
  for (std::size_t i = 0; i < plan.layouts.size(); ++i) {
    const Layout& layout = plan.layouts[i];
    const Piece& piece = problem.pieces.at(static_cast<std::size_t>(layout.piece));
    const GroupRules& rules = RulesFor(problem, piece);
    Stops stops;
    bool heat_counts = false;
    for (const Cut& cut : layout.cuts) {
      const Line& line = problem.lines.at(static_cast<std::size_t>(cut.line));
      stops[cut.length.nm] += cut.count;
      heat_counts = heat_counts || !line.one_heat.empty() || line.max_heats > 0;
    }
    const auto it = at.try_emplace(Sign{piece.section,
                                        piece.grade + "\n" + piece.condition + "\n" + piece.owner,
                                        piece.length.nm,
                                        piece.square_ends,
                                        {rules.kerf.nm, rules.trim.nm, rules.grip.nm, rules.keep.nm},
                                        heat_counts ? "heat " + piece.heat : std::string(),
                                        stops},
                                   bundles.size())
                        .first;
    if (it->second < bundles.size() && at_a_time > 0 && bundles[it->second].bars + layout.repeat > at_a_time) it->second = bundles.size();
    if (it->second == bundles.size()) bundles.emplace_back();
    bundles[it->second].layouts.push_back(static_cast<int>(i));
    bundles[it->second].bars += layout.repeat;
  }
  return bundles;
}

}  // namespace heatkeep::allocator
