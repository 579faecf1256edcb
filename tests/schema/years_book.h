// A hundredth of the ten-year book (seed/ten_years), loaded into a test's own book: 10 000 pieces, 100 000 happenings. The planner is told
// that its big tables are a hundred times as large, so that it chooses as it does on the whole one.
#pragma once

#include <map>
#include <string>

#include "tests/fixture/test_book.h"

namespace heatkeep {

struct YearsBook {
  YearsBook();  // takes some seconds

  TestBook book;
  // A word that people would type, by what it is: tag (on hand), bar (cut up), heat, mill, order, order_line, list, customer (cut pieces
  // that wait to be shipped), plan, plan_bar, plan_saw (live), place, document, note, grade, section, saw, line_order, line_no, line_nm (an
  // open line), line_bar, line_place.
  std::map<std::string, std::string> words;
};

// The tables that have more than 30 000 rows after ten years, as a list for SQL: 'piece', 'happening', ...
const std::string& TablesOfYears();

}  // namespace heatkeep
