// A block of a sheet as what was cut: the body of the deed record_cut.
#pragma once

#include <map>
#include <nlohmann/json.hpp>
#include <string>

#include "schema/terms/rows.h"

namespace heatkeep::command {

// Good pieces by "order/line" where they differ from the plan; lines not named were cut as planned.
using DoneCounts = std::map<std::string, int>;

// The strokes in cutting order: the trim with its kerf, every piece with a kerf. When all was cut as planned the last
// piece gets the kerf the layout gave it (less than a full one, or none, where the metal is used up).
nlohmann::json StrokesOf(const SheetBlock& block, const DoneCounts& done);

// The last piece is not cut: what is left of `start` is the piece, whole. Requires a good piece as the last stroke.
void LeaveLastUncut(nlohmann::json& strokes, Length start);

// What is left by arithmetic: `start` less trim, pieces and kerf.
Length RestOf(const nlohmann::json& strokes, Length start);

// "ORDER/LINE=COUNT". Throws BadText.
std::pair<std::string, int> ReadDone(const std::string& text);

}  // namespace heatkeep::command
