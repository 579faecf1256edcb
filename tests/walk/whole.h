// What must be true of a book whatever was done in it. Computed here from the views and the rows, apart from what the
// book's own checks compute; each sentence that comes back is one thing that is not so.
#pragma once

#include <string>
#include <vector>

#include "tests/schema/small_shop.h"

namespace heatkeep {

struct Wholeness {
  std::vector<std::string> broken;
  std::int64_t heats = 0;      // whose balance was added up
  std::int64_t verify_ms = 0;  // what api.verify_book took
};

Wholeness LookWhetherWhole(SmallShop& shop);

}  // namespace heatkeep
