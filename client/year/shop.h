// An invented shop and what it is asked to cut, from a seed. Grades and sections are real designations; prices,
// lengths, orders and quantities are invented. The same seed, counts and days give the same shop and lines anywhere.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "client/allocator/problem.h"
#include "schema/terms/length.h"
#include "schema/terms/mass.h"
#include "schema/terms/section.h"

namespace heatkeep::year {

// One section of one grade.
struct Group {
  std::string grade, section;
  MassPerMetre mass;
  allocator::FineMoney price_per_metre, scrap_per_metre;
  std::vector<Length> bars;  // the four mill lengths it is bought in, shortest first
  allocator::GroupRules rules;
};

// A line of a cut list, to be cut on its day.
struct DayLine {
  int day = 0;
  int group = 0;
  int order = 0;
  Length cut;
  int quantity = 1;
};

struct ShopSize {
  int groups = 60;
  int lines = 2500;  // a year's worth; the days before are just as busy
  int days = 250;    // working days
  int before = 500;  // days that are lived before the year begins
};

struct Shop {
  std::vector<Group> groups;
  std::vector<DayLine> lines;  // by day: -before .. days - 1
  int days = 0, before = 0;
};

// Throws std::invalid_argument: groups 1..200, lines >= 1, days 1..5000, before 0..5000.
Shop MakeShop(std::uint64_t seed, const ShopSize& size);

// Mass of a length of the group's bar, to the nearest gram.
Mass MassOf(const Group& group, Length length);

}  // namespace heatkeep::year
