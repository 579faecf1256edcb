// What a length of metal is worth, in length of full bar.
//   worth(r) = r * chance(r),   chance(r) = 1 - exp(-r / 1 m) for r >= keep, 0 below;   a full bar's chance is 1.
// Rounded half up to whole micrometres. Wherever rounding could be in doubt it is computed in whole numbers (60
// binary places), not with the machine's own exp, so that every machine gets the same figure. Never falls as r grows.
//
// Where a shop's own history says what a rest is worth, that counts instead for rests from the keep length on: LearnedWorth.
#pragma once

#include <cstddef>
#include <vector>

#include "schema/terms/length.h"

namespace heatkeep::allocator {

// Of grid length i * step, i = 0, 1, ...; between them the shorter one's counts, beyond them the last. Never falls, is never
// more than the rest's own length, and is in whole micrometres.
struct LearnedWorth {
  Length step;  // > 0
  std::vector<Length> of;
};

// r <= 0 is worth nothing.
Length WorthOfRest(Length r, Length keep, const LearnedWorth* learned = nullptr);
Length WorthOfBar(Length r);  // r rounded half up to whole micrometres

}  // namespace heatkeep::allocator
