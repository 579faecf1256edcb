// What a length of metal is worth, in length of full bar.
//   worth(r) = r * chance(r),   chance(r) = 1 - exp(-r / 1 m) for r >= keep, 0 below;   a full bar's chance is 1.
// Rounded half up to whole micrometres. Wherever rounding could be in doubt it is computed in whole numbers (60
// binary places), not with the machine's own exp, so that every machine gets the same figure. Never falls as r grows.
#pragma once

#include "schema/terms/length.h"

namespace heatkeep::allocator {

Length WorthOfRest(Length r, Length keep);  // r <= 0 is worth nothing
Length WorthOfBar(Length r);                // r rounded half up to whole micrometres

}  // namespace heatkeep::allocator
