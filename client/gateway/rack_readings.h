// What the owner and the planner look at of the rack: places with their load, our own pieces with their worths, months of use. Each
// throws DbError.
#pragma once

#include <cstdint>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <vector>

#include "client/gateway/connection.h"
#include "schema/terms/length.h"
#include "schema/terms/mass.h"

namespace heatkeep {

struct PlaceLoad {
  std::string place, site, kind, bay, level;
  std::int64_t walk = 0, pieces = 0;
  Mass load, most;  // most: 0 where the place has no limit
};
// Every place in walking order with what lies there, whoever owns it.
std::vector<PlaceLoad> ReadPlaceLoads(Connection& connection);

// The keep length in force for a section and grade: below it a rest is scrap. Nothing where no free piece of it is there.
std::optional<Length> ReadKeepLength(Connection& connection, const std::string& grade, const std::string& section);

// Our own pieces as api.own_pieces has them, without what stops each (which is asked piece by piece): a row of JSON each, by section,
// grade and length.
std::vector<nlohmann::json> ReadOwnPieces(Connection& connection);

struct UseMonth {
  std::string month;  // "2026-03"
  Mass used, good;
};
// Our own metal that was used up, month by month, the latest `months`.
std::vector<UseMonth> ReadUseByMonth(Connection& connection, int months);

}  // namespace heatkeep
