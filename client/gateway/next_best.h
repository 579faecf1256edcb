// The next-best source of a layout: what to take when the piece is not there.
#pragma once

#include <string>
#include <vector>

#include "client/allocator/plan.h"
#include "client/allocator/problem.h"

namespace heatkeep {

// By piece of the problem: whether the plan takes it.
std::vector<bool> TakenPieces(const allocator::Problem& problem, const allocator::Plan& plan);

// The shortest piece that the plan leaves, that may serve every cut of the layout and holds them all, on one heat where a
// line asks for one: "A000123X in B3-2, 1900 mm"; empty when there is none.
std::string NextBest(const allocator::Problem& problem, const std::vector<bool>& taken, const allocator::Layout& layout);

}  // namespace heatkeep
