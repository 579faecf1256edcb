// The seed's files as rows, read by a few lines of the tests' own.
#pragma once

#include <map>
#include <string>
#include <utility>
#include <vector>

#include "schema/terms/section.h"

namespace heatkeep::seed_test {

using Row = std::map<std::string, std::string>;

struct File {
  std::string header;  // the first line as it stands, without its line end
  std::vector<Row> rows;
};

// `file` below seed/. A row with a wrong number of fields fails the test and is left out. With `western` the
// file is ; -delimited Windows-1252 and comes back as UTF-8.
File rows_of(const std::string& file, bool western = false);
std::string bytes_of(const std::string& file);

using GroupKey = std::pair<std::string, std::string>;  // grade and section key
GroupKey group_of(const Row& row);

// The opening balance's and the deliveries' rows together.
std::vector<Row> all_metal();

// Grams by theory of the row's `length` of its section, all `count` of them.
Mass theory_of(const Row& row);

}  // namespace heatkeep::seed_test
