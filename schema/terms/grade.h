// A grade as a standard names it. Two designations are two grades, even where tables call them equivalent.
#pragma once

#include <string>

#include "schema/terms/density.h"

namespace heatkeep {

struct Grade {
  std::string designation;  // "42CrMo4", "4140": the grade's name in this book
  std::string number;       // "1.7225", or empty
  std::string uns;          // "G41400", or empty
  std::string family;       // "alloy steel", "austenitic stainless", ...
  std::string standard;     // where its limits stand
  Density density;
  std::string density_source;
  std::string source, evidence;  // of the row itself
};

}  // namespace heatkeep
