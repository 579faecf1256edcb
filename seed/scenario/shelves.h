// Where metal lies: 8 bays x 5 levels, the yard, and the places that are no storage. Bays 1-5 hold bars, 6-8
// drops.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace heatkeep::scenario {

struct Place {
  std::string name, kind;  // kind: rack, yard, saw, gate, quarantine, scrap
  int bay = 0, level = 0;  // 0: none
  int walk = 0;
  std::int64_t max_length_mm = 0;  // 0: no limit
  std::int64_t max_mass_kg = 0;    // 0: no limit
};

std::vector<Place> places();

// Puts metal away and remembers what lies where, so that no place carries more than it may.
class Shelves {
 public:
  Shelves();
  // The place for so many grams of one group, each piece `length_mm` long: the group's own shelf first.
  std::string put(bool drop, std::size_t group, std::int64_t length_mm, std::int64_t mass_g);

 private:
  std::vector<Place> places_;
  std::vector<std::int64_t> load_g_;
};

}  // namespace heatkeep::scenario
