#include <gtest/gtest.h>

#include "client/intake/cuts_file.h"

namespace heatkeep::intake {
namespace {

using namespace literals;

FileRows<CutsFileRow> Read(std::string_view bytes) { return ReadCutsFile(bytes, "cuts.csv"); }

TEST(CutsFile, ReadsTheShortHeader) {
  const auto file = Read("order,line,section,grade,length,quantity\nX,1,round 80,42CrMo4,240,7\nX,2,round 80,42CrMo4,13 7/8 in,9\n");
  ASSERT_TRUE(file.Good()) << ProblemsText(file.problems);
  ASSERT_EQ(file.rows.size(), 2U);
  EXPECT_EQ(file.rows[0].length, 240_mm);
  EXPECT_EQ(file.rows[0].quantity, 7);
  EXPECT_EQ(file.rows[0].priority, 5);
  EXPECT_EQ(file.rows[0].max_heats, 0);
  EXPECT_EQ(file.rows[0].tolerance, std::nullopt);
  EXPECT_EQ(file.rows[0].face.nm, 0);
  EXPECT_EQ(file.rows[1].length.nm, 352'425'000);
}

TEST(CutsFile, ReadsEveryOptionalColumn) {
  const auto file = Read(
      "order,line,section,grade,length,quantity,tolerance,due,priority,one_heat,max_heats,face,papers,owner,condition,customer\n"
      "X,1,round 80,42CrMo4,240,7,-0/+1,2026-03-04,1,X,2,1.5,3.1,Osmund,+qt,Pallant Hydraulics\n");
  ASSERT_TRUE(file.Good()) << ProblemsText(file.problems);
  const CutsFileRow& row = file.rows.at(0);
  EXPECT_EQ(row.tolerance, (Tolerance{0_mm, 1_mm}));
  EXPECT_EQ(row.due, "2026-03-04");
  EXPECT_EQ(row.priority, 1);
  EXPECT_EQ(row.one_heat, "X");
  EXPECT_EQ(row.max_heats, 2);
  EXPECT_EQ(row.face, 1'500_um);
  EXPECT_EQ(row.papers, Papers::P31);
  EXPECT_EQ(row.owner, "Osmund");
  EXPECT_EQ(row.condition, "+QT");
  EXPECT_EQ(row.customer, "Pallant Hydraulics");
}

TEST(CutsFile, SaysWhatIsWrongInEveryLine) {
  const auto file = Read(
      "order,line,section,grade,length,quantity,tolerance,due,priority\n"
      "X,1,round 80,42CrMo4,240,7,,,\n"
      "X,1,round 80,42CrMo4,250,7,,,\n"
      "X,2,round 80,42CrMo4,,0,+1,4.3.2026,0\n"
      ",,round 80,42CrMo4,5,1.5,-5/+0,2026-02-29,\n");
  EXPECT_EQ(ProblemsText(file.problems),
            "cuts.csv:3: order and line \"X 1\" stands in line 2 already; expected each order and line once\n"
            "cuts.csv:4: length is empty; expected a length over zero\n"
            "cuts.csv:4: quantity: \"0\" is out of range; expected a whole number from 1 to 1000000\n"
            "cuts.csv:4: tolerance: \"+1\" does not say one lower and one upper limit; expected a tolerance like -0/+1 or +-0.5\n"
            "cuts.csv:4: due: \"4.3.2026\" is not a date; expected year-month-day, like 2026-03-04\n"
            "cuts.csv:4: priority: \"0\" is out of range; expected a whole number from 1 to 1000\n"
            "cuts.csv:5: order is empty; expected an order number\n"
            "cuts.csv:5: line is empty; expected a line number of the order\n"
            "cuts.csv:5: quantity: \"1.5\" has 1 decimal; expected a whole number from 1 to 1000000\n"
            "cuts.csv:5: tolerance: the lower limit takes away the whole length; expected a tolerance smaller than the length\n"
            "cuts.csv:5: due: \"2026-02-29\" is not a date; expected year-month-day, like 2026-03-04\n");
  EXPECT_TRUE(file.rows.empty());
}

TEST(CutsFile, RefusesAColumnItDoesNotKnow) {
  EXPECT_EQ(ProblemsText(Read("order,line,section,grade,length,quantity,colour\n").problems),
            "cuts.csv:1: unknown column \"colour\"; expected only these columns: order,line,section,grade,length,quantity,"
            "tolerance,due,priority,one_heat,max_heats,face,papers,owner,condition,customer\n");
}

}  // namespace
}  // namespace heatkeep::intake
