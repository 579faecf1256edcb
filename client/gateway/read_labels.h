// What labels say, read from the book. Each throws DbError; an empty answer means there is none.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "client/gateway/connection.h"
#include "schema/terms/label_rows.h"

namespace heatkeep {

// The labels that wait or failed, in the order they were asked for: of these tags, or all.
// Two labels are two pieces: of several that wait for one piece the last is printed; `jobs` are those of all of them.
struct WaitingLabels {
  struct Job {
    std::int64_t number = 0;
    std::string tag;
  };
  std::vector<PieceLabel> labels;
  std::vector<Job> jobs;
};
WaitingLabels ReadWaitingLabels(Connection& connection, const std::vector<std::string>& tags = {});

// Every place, in walking order.
std::vector<PlaceLabel> ReadPlaceLabels(Connection& connection);

// The cut pieces of an order that are on site, a line and lot each.
std::vector<BatchLabel> ReadBatchLabels(Connection& connection, const std::string& order);

}  // namespace heatkeep
