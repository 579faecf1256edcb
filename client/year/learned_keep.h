// What one group learns from its own past, once a month: its keep length, and which drops do not earn their place.
#pragma once

#include <optional>
#include <vector>

#include "client/year/drop_worth.h"
#include "client/year/group_rack.h"
#include "client/year/shop.h"

namespace heatkeep::year {

class LearnedKeep {
 public:
  // Both must outlive it. `lines`: all of the group's, by day; of these only those before a review's day are looked at.
  LearnedKeep(const Group& group, const std::vector<DayLine>& lines) : group_(group), lines_(lines) {}

  // Scraps the drops that, racked as they are, will not earn their place; returns the keep length from now on.
  Length Review(int today, GroupRack& rack);

 private:
  const Group& group_;
  const std::vector<DayLine>& lines_;
  std::optional<Length> keep_;
};

}  // namespace heatkeep::year
