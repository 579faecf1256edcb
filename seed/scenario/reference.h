// The grades and their limits as seed/reference/ has them: what a certificate may say and what a metre
// weighs.
#pragma once

#include <cstdint>
#include <filesystem>
#include <map>
#include <string>
#include <vector>

namespace heatkeep::scenario {

// Mass per cent in ten-thousandths: 0.035 % is 350. Where a grade has limits by thickness, the narrowest of
// all.
struct Limit {
  std::string element;
  std::int64_t least = 0;
  std::int64_t most = 0;  // requires most >= least; without an upper limit in the table: least + a half
  int decimals = 2;       // as many as the table prints
};

struct Grade {
  std::int64_t density_kg_m3 = 0;
  std::vector<Limit> limits;  // in the table's order
};

// By designation. Throws std::runtime_error with file and line when a table cannot be read.
std::map<std::string, Grade> read_reference(const std::filesystem::path& folder);

}  // namespace heatkeep::scenario
