#include "client/planning/expected_worth.h"

#include <map>

#include "client/gateway/read_rows.h"
#include "client/planning/learned_worth.h"
#include "client/year/worth_curve.h"
#include "schema/terms/wide.h"

namespace heatkeep::planning {
namespace {

using Json = nlohmann::json;
using allocator::FineMoney;

Length LengthOf(const Json& drop) { return {drop["length_nm"].get<std::int64_t>()}; }

// What a metre costs where this much metal costs so many hundredths.
FineMoney PerMetre(const Json& cents, Length length) {
  return {static_cast<std::int64_t>(Wide{cents.get<std::int64_t>()} * 1'000'000 * 1'000'000'000 / length.nm)};
}

}  // namespace

std::size_t AddExpectedWorth(Connection& connection, std::vector<Json>& drops) {
  const PastDemand past = ReadPastDemand(connection);
  const Json saws = ReadRows(connection, "saws", "saw");
  std::map<std::pair<std::string, std::string>, std::vector<Json*>> groups;
  for (Json& drop : drops) {
    drop["expected_cents"] = nullptr;
    if (!drop["replacement_cents"].is_null() && !drop["scrap_cents"].is_null())
      groups[{drop["section"].get<std::string>(), drop["grade"].get<std::string>()}].push_back(&drop);
  }
  std::size_t worked_out = 0;
  for (auto& [group, rack] : groups) {
    std::optional<year::Past> known = PastOf(past, group.first, group.second);
    if (!known || saws.empty()) continue;
    year::WorthRules rules;
    Length longest;
    for (const Json* drop : rack) {
      if ((*drop)["blocked"].is_null()) known->rack.push_back({LengthOf(*drop), PaperOf((*drop)["papers"].get<std::string>()), {}});
      if (LengthOf(*drop) <= longest) continue;
      longest = LengthOf(*drop);
      rules.replace_per_metre = PerMetre((*drop)["replacement_cents"], longest);
      rules.scrap_per_metre = PerMetre((*drop)["scrap_cents"], longest);
    }
    rules.return_cost = {past.cents_return};
    rules.shelf_per_year = {past.cents_shelf_year};
    rules.kerf = {saws[0]["kerf_nm"].get<std::int64_t>()};
    rules.grip = {saws[0]["grip_nm"].get<std::int64_t>()};
    std::map<allocator::PaperType, year::WorthCurve> curves;  // a drop with stronger papers serves more
    for (Json* drop : rack) {
      const allocator::PaperType papers = PaperOf((*drop)["papers"].get<std::string>());
      auto curve = curves.find(papers);
      if (curve == curves.end()) curve = curves.emplace(papers, year::WorthCurve({longest, papers, {}}, *known, rules, longest)).first;
      (*drop)["expected_cents"] = year::Cents(curve->second.Racked(LengthOf(*drop))).cents;
      ++worked_out;
    }
  }
  return worked_out;
}

}  // namespace heatkeep::planning
