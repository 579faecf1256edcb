#include "seed/scenario/shelves.h"

#include <array>
#include <stdexcept>

namespace heatkeep::scenario {

std::vector<Place> places() {
  std::vector<Place> all;
  for (int bay = 1; bay <= 8; ++bay) {
    for (int level = 1; level <= 5; ++level) {
      constexpr std::array<std::int64_t, 5> kCarries{4000, 3000, 2500, 2000, 1500};
      all.push_back({"B" + std::to_string(bay) + "-" + std::to_string(level), "rack", bay, level, bay * 10 + level, bay <= 5 ? 6500 : 4000,
                     bay <= 5 ? kCarries[static_cast<std::size_t>(level - 1)] : 2500});
    }
  }
  for (int i = 1; i <= 4; ++i) { all.push_back({"Y-" + std::to_string(i), "yard", 0, 0, 100 + i, 12'500, 20'000}); }
  all.push_back({"SAW-1", "saw", 0, 0, 1, 0, 0});
  all.push_back({"SAW-2", "saw", 0, 0, 2, 0, 0});
  all.push_back({"GATE", "gate", 0, 0, 120, 0, 0});
  all.push_back({"Q-1", "quarantine", 0, 0, 110, 6500, 5000});
  all.push_back({"SCRAP-STEEL", "scrap", 0, 0, 3, 0, 0});
  all.push_back({"SCRAP-ALLOY", "scrap", 0, 0, 4, 0, 0});
  all.push_back({"SCRAP-STAINLESS", "scrap", 0, 0, 5, 0, 0});
  all.push_back({"SCRAP-NONFERROUS", "scrap", 0, 0, 6, 0, 0});
  return all;
}

Shelves::Shelves() : places_(places()), load_g_(places_.size(), 0) {}

std::string Shelves::put(bool drop, std::size_t group, std::int64_t length_mm, std::int64_t mass_g) {
  constexpr std::int64_t kByCraneOnly = 800'000;
  std::vector<std::size_t> candidates;
  for (std::size_t i = 0; i < places_.size(); ++i) {
    if (places_[i].kind == "rack" && (places_[i].bay > 5) == drop && mass_g <= kByCraneOnly) candidates.push_back(i);
  }
  const std::size_t first = candidates.empty() ? 0 : group * 7 % candidates.size();
  std::vector<std::size_t> order;
  for (std::size_t i = 0; i < candidates.size(); ++i) order.push_back(candidates[(first + i) % candidates.size()]);
  for (std::size_t i = 0; i < places_.size(); ++i) {
    if (places_[i].kind == "yard") order.push_back(i);
  }
  for (const std::size_t i : order) {
    const Place& p = places_[i];
    if (length_mm > p.max_length_mm || load_g_[i] + mass_g > p.max_mass_kg * 950) continue;
    load_g_[i] += mass_g;
    return p.name;
  }
  throw std::runtime_error("no place is left for " + std::to_string(mass_g) + " g");
}

}  // namespace heatkeep::scenario
