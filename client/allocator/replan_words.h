// What is different between a plan and its mended one, in words. Part of replan.h.
#pragma once

#include "client/allocator/replan.h"

namespace heatkeep::allocator {

// Sets kept, planned_anew and words of `answer` from its plan and the one before.
void SayChanges(const Problem& problem, const Plan& before, Replanned& answer);

}  // namespace heatkeep::allocator
