// What a file would be understood as, before anything is done with it.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "client/intake/file_rows.h"
#include "client/intake/row_values.h"

namespace heatkeep::intake {

enum class TableKind { Stock, Cuts, Delivery, Opening, Certificates, Grades };

// "stock", "cuts", "delivery", "opening", "certificates", "grades", in this order.
const std::vector<std::string>& TableKindWords();

struct LookedRow {
  int line = 0;
  std::vector<ReadValue> values;  // of the columns that the file has, in its order
};

struct Look {
  TableFacts facts;
  char decimal_mark = '.';
  std::vector<LookedRow> rows;  // the first good ones
  std::size_t good = 0;         // how many lines are good
  std::vector<FileProblem> problems, warnings;
};

// Reads the file as the deed for it would, and shows at most `most` rows. how.bad_lines does not matter: good lines are
// shown beside the problems of the bad ones.
Look LookAt(TableKind kind, std::string_view bytes, const std::string& name, ReadingOptions how, std::size_t most);

}  // namespace heatkeep::intake
