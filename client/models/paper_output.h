// A paper from a desk: made into a PDF and sent to the desk's printer for papers, or left in its folder for them.
#pragma once

#include <QString>
#include <functional>
#include <string>

#include "client/gateway/connection.h"
#include "client/models/desk_settings.h"
#include "reports/paper.h"

namespace heatkeep {

// What is to be printed: takes what it prints along, and reads of the book what else it needs.
struct DeskPaper {
  QString kind = {};  // begins the file's name: "plan-12"; empty: there is nothing to print
  std::function<void(Connection& book, const std::string& file, const PrintOptions& print)> write = {};
};

struct PaperOut {
  std::string where;   // the printer or the file
  std::string failed;  // why it is not out; empty: it is
};

// To be run on a lane of the book's link. PaintSession() must have been called. Throws DbError.
PaperOut PrintPaper(Connection& book, const DeskPaper& paper, const DeskSettings& settings);

// The pick list of a plan, in the reader's units.
DeskPaper PickListPaper(std::int64_t plan, ReadingUnits units);

}  // namespace heatkeep
