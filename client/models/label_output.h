// Labels from a desk: those that wait for these tags are made into a file of the label paper set in the book and sent to the printer
// set at the desk, or left in its folder; then the book is told that they are out, or that they failed (they stay in the queue).
#pragma once

#include <string>
#include <vector>

#include "client/gateway/connection.h"
#include "client/models/desk_settings.h"

namespace heatkeep {

struct LabelsOut {
  int labels = 0;
  std::string where;   // the printer or the file
  std::string failed;  // why they are not out; empty: they are
};

// To be run on a lane of the book's link. PaintSession() must have been called. Throws DbError; what goes wrong with paper or printer
// is in `failed`.
LabelsOut PrintLabels(Connection& book, const std::vector<std::string>& tags, const DeskSettings& settings);

}  // namespace heatkeep
