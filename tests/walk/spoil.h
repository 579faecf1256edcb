// Arguments as nobody should give them: missing, empty, with quotes and backslashes, too long, of another kind,
// negative, zero, huge, another piece's.
#pragma once

#include <optional>
#include <random>
#include <string>

#include "client/gateway/deeds.h"

namespace heatkeep {

using Dice = std::mt19937_64;
using Argument = std::optional<std::string>;

// One value of an argument of this SQL type ("text", "bigint", "jsonb", ...), spoilt. other: a tag of another piece.
Argument Spoil(Dice& dice, const std::string& type, const Argument& value, const std::string& other);

}  // namespace heatkeep
