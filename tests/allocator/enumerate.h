// The best plan of a tiny problem by trying every way to give every cut to every piece. Shares nothing with the
// allocator but the problem's own types.
#pragma once

#include <vector>

#include "client/allocator/problem.h"

namespace heatkeep::allocator::test {

// Least score, in the aim's order: unmet by priority (priorities 1..9), then bars, new length, lost worth, pulls and
// layouts as the aim has them, or consumed length, or money. At most 10 cuts and few pieces.
std::vector<long long> BestByEnumeration(const Problem& problem);

// What a person at the rack would do: longest cuts first, into an opened piece with the least room that still fits,
// else the shortest drop, else the shortest bar. Only for problems without one_heat and max_heats.
std::vector<long long> PlainChoiceScore(const Problem& problem);

}  // namespace heatkeep::allocator::test
