// What may be cut from what: every hard rule in one place.
#pragma once

#include <optional>
#include <string>

#include "client/allocator/problem.h"

namespace heatkeep::allocator {

// Nothing if the piece may serve the line (its length apart), else the first rule that forbids it, in words.
// Order: held, section, grade, condition, owner, papers, heat known where heats are counted, heat refused.
std::optional<std::string> WhyNot(const Problem& problem, const Piece& piece, const Line& line);

// What standing in for the section or grade asked for costs per metre of cut; nothing if it stands in for neither.
FineMoney SubstituteExtra(const Problem& problem, const Piece& piece, const Line& line);

std::string NameOf(PaperType papers);  // "3.1", or "none"

}  // namespace heatkeep::allocator
