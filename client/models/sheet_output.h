// The pick list of a plan from a desk: made into a PDF and sent to the desk's printer for papers, or left in its folder for them.
#pragma once

#include <cstdint>
#include <string>

#include "client/gateway/connection.h"
#include "client/models/desk_settings.h"

namespace heatkeep {

struct SheetOut {
  std::string where;   // the printer or the file
  std::string failed;  // why it is not out; empty: it is
};

// To be run on a lane of the book's link. PaintSession() must have been called. Throws DbError.
SheetOut PrintSheet(Connection& book, std::int64_t plan, const DeskSettings& settings);

}  // namespace heatkeep
