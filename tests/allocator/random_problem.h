// Seeded problems of every kind, the same on every machine.
#pragma once

#include <cstdint>

#include "client/allocator/problem.h"

namespace heatkeep::allocator::test {

struct Shape {
  int most_cuts = 8;    // in all
  int most_pieces = 5;  // kinds of piece
  bool heats = true;    // lines with one_heat and max_heats too
};

Problem RandomProblem(std::uint64_t seed, const Shape& shape);

}  // namespace heatkeep::allocator::test
