// From rows of the book to what the allocator is asked. Part of plan_door.h and replan_door.h.
#pragma once

#include <functional>
#include <optional>
#include <set>
#include <string>

#include "client/gateway/plan_door.h"

namespace heatkeep {

// What a saw and the shop's settings say.
struct ShopRules {
  std::string saw;
  bool bundled = false;
  Length kerf, trim, grip, widest;
  int bars_at_a_time = 0;           // in a bundle at most; 0: not known
  std::set<std::string> too_large;  // sections of the book that the saw does not take
  std::int64_t cents_per_min = 0;
  allocator::FineMoney per_pull, per_setup, per_extra_heat, plain_below;
};
// Throws std::invalid_argument for a saw that is not in the book.
ShopRules ReadShopRules(Connection& connection, const std::string& saw, bool bundled);
void AddShopRules(const ShopRules& shop, BookProblem& asked);

// A row of api.cut_lines; its quantity is what is open.
allocator::Line LineOf(const Row& row);

// A row of api.candidates or api.plan_metal with the keep length of its group; answers its index.
int AddPiece(const Row& row, const ShopRules& shop, BookProblem& asked);

// The grades that may stand in, and every free piece that could serve the lines.
void AddFreeMetal(Connection& connection, const ShopRules& shop, BookProblem& asked);

// "K3317 of Vandrek": two mills can use the same number. A wish is of its cut list: two lists can use the same word.
std::string HeatName(const std::string& heat, const std::string& mill);
std::string OneHeatName(const std::string& cut_list, const std::string& wish);

// Is what is cut (no plan), or what this layout of this plan means to cut, counted as settled?
using HeatsElsewhere = std::function<bool(std::optional<std::int64_t> plan, std::optional<std::int64_t> layout_no)>;

// Lines that limit their heats keep to those they have metal of already. Of a line that may have more heats still, the new
// ones are as many as are left to it: never too many, now and then fewer than could be. Requires all pieces to be there.
void KeepToSettledHeats(Connection& connection, const HeatsElsewhere& elsewhere, allocator::Problem& problem);

}  // namespace heatkeep
