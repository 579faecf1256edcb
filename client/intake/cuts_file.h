// The cut list: what is to be cut.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "client/intake/checked_rows.h"
#include "schema/terms/papers.h"
#include "schema/terms/section.h"
#include "schema/terms/tolerance_text.h"

namespace heatkeep::intake {

struct CutsFileRow {
  int line_in_file = 0;
  std::string order, line;
  Section section;
  std::string grade;
  Length length;     // > 0, as ordered
  int quantity = 1;  // >= 1
  std::optional<Tolerance> tolerance;
  std::string due;       // ISO date or empty
  int priority = 5;      // >= 1
  std::string one_heat;  // or empty
  int max_heats = 0;     // 0: any number
  Length face;           // >= 0
  Papers papers = Papers::None;
  std::string owner, condition, customer;  // condition in its normal form
};

// What its header may be, and what each column says.
const std::vector<Column>& CutsColumns();

// `name` is what the file is called in problems. Never throws for what is in the bytes.
FileRows<CutsFileRow> ReadCutsFile(std::string_view bytes, const std::string& name, const ReadingOptions& how = {});

}  // namespace heatkeep::intake
