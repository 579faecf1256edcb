// A year in the rack: the same lists, cut day by day under one policy.
//
// Groups do not touch each other. The days before the year are lived under the plain choice from an empty rack, so
// that every policy begins with the same drops and the same past. Each day a group's lines are one list; full bars
// come in before by one buying rule for all (GroupRack::Receive; `need` is what a new bar every time would take), and
// every line is delivered in full. Every plan is checked, every account closes (std::logic_error if not).
// The same shop, policy and settings give the same year on any machine and number of threads.
#pragma once

#include <string>
#include <vector>

#include "client/allocator/problem.h"
#include "client/year/group_rack.h"
#include "client/year/policy.h"
#include "client/year/shop.h"

namespace heatkeep::year {

struct YearSettings {
  int iterations = 60;  // budget of one plan (allocator::Limits)
  int threads = 2;      // groups side by side
};

// At the end of a day, all groups.
struct DayFigures {
  int drops = 0;
  Length drop_length;
  Mass drop_mass;
  Mass bought;  // since the year began: full bars opened. What the lorry brought differs only by the stock of full bars
};

struct YearResult {
  Policy policy = Policy::Plain;
  DayFigures start;
  std::vector<DayFigures> days;
  Account total;  // lengths of all groups together
  Mass received, bought, delivered, kerf, trim, scrap, cleared;
  Mass bars_start, bars_end;
  int lists = 0;     // plans made
  int by_clock = 0;  // plans whose search the clock ended: must be 0 for the year to repeat
};

// The shop as it stands when the year begins.
class YearStart {
 public:
  YearStart(const Shop& shop, const YearSettings& settings);  // the shop must outlive it
  YearStart(Shop&&, const YearSettings&) = delete;
  YearResult Live(Policy policy) const;

 private:
  const Shop& shop_;
  YearSettings settings_;
  std::vector<std::vector<DayLine>> lines_;  // by group
  std::vector<GroupRack> racks_;
};

}  // namespace heatkeep::year
