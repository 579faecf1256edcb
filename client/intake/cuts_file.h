// The cut list: what is to be cut. Header: order,line,section,grade,length,quantity and perhaps
// tolerance,due,priority,one_heat,max_heats,face,papers,owner,condition,customer.
//   length     with unit, or millimetres; over 0     quantity   whole, 1 or more
//   tolerance  like -0/+1 (millimetres, or a unit)   due        ISO date
//   priority   whole, 1 is highest; empty: 5         one_heat   a name: its lines come from one heat
//   max_heats  whole, 1 or more; empty: any number   face       allowance added to the length; empty: 0
//   papers     at least 2.1, 2.2, 3.1 or 3.2         owner      empty: the shop's own metal
// An order's line stands once.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "client/intake/file_rows.h"
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

// `name` is what the file is called in problems. Never throws for what is in the bytes.
FileRows<CutsFileRow> ReadCutsFile(std::string_view bytes, const std::string& name, ReadingOptions how = {});

}  // namespace heatkeep::intake
