// The grade-and-section groups that Ostrel Shaftworks stocks. Grades and sections are real ones by public
// designation; that this shop stocks them is invented.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "seed/scenario/reference.h"

namespace heatkeep::scenario {

enum class Shape { Round, Hexagon, Square, Flat };

struct Group {
  std::string grade;
  std::string section;    // as the shop writes it
  std::string condition;  // EN delivery condition, temper for aluminium and brass; one a group
  Shape shape = Shape::Round;
  std::int64_t width_um = 0;   // diameter, across flats, side or width
  std::int64_t height_um = 0;  // flats only
  std::int64_t bar_mm = 0;     // nominal mill length
  int demand = 0;              // 1 seldom asked for .. 5 the shop's daily bread

  bool inch() const { return section.ends_with("in"); }
};

const std::vector<Group>& groups();

// Grams by theory of `length_mm` of the group's nominal section, rounded half up.
std::int64_t grams(const Group& g, const Grade& grade, std::int64_t length_mm);

}  // namespace heatkeep::scenario
