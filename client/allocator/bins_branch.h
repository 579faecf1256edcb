// Are so many bins enough? Tried out to the end, with the relaxation as a bound (bins_search.h says how).
#pragma once

#include <cstdint>
#include <set>
#include <vector>

#include "client/allocator/bins.h"
#include "client/allocator/bins_relaxation.h"

namespace heatkeep::allocator {

class BinsBranch {
 public:
  // At most `nodes` rests are looked at.
  BinsBranch(const Bins& bins, BinsRelaxation& relaxation, const BinsControl& control, std::int64_t nodes)
      : bins_(bins), relaxation_(relaxation), control_(control), nodes_(nodes) {}

  enum class Answer { Yes, No, Unknown };
  Answer Within(std::int64_t goal, Packing& found);
  std::int64_t nodes() const { return seen_; }

 private:
  struct Child {
    double use;
    std::int64_t loss;
    Fill fill;
  };
  Answer Try(std::vector<int>& rest, std::int64_t more);
  bool Whole(const std::vector<int>& rest, std::int64_t more);
  bool Children(const std::vector<int>& rest, std::int64_t more, std::vector<Child>& children);

  const Bins& bins_;
  BinsRelaxation& relaxation_;
  const BinsControl& control_;
  std::int64_t nodes_, seen_ = 0;
  std::set<std::vector<int>> failed_;
  Packing taken_;
};

}  // namespace heatkeep::allocator
