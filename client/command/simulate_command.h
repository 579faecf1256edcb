// heatkeep simulate: a seeded year in the rack under several policies, as a plain table or JSON, and drawn.
#pragma once

#include <cstdint>
#include <iosfwd>
#include <string>
#include <vector>

namespace heatkeep::command {

struct SimulateOptions {
  std::uint64_t seed = 1;
  int lines = 2500, groups = 60, days = 250;
  int threads = 2, iterations = 5;    // iterations: budget of one plan
  std::vector<std::string> policies;  // empty: all, in the order of the table
  std::string out;                    // folder for the pictures (SVG and PNG); made if missing; empty: none
  bool json = false;
};

// 0, or 2 with what is wrong on `err` and nothing on `out`. The same options give the same output.
int RunSimulate(const SimulateOptions& options, std::ostream& out, std::ostream& err);

}  // namespace heatkeep::command
