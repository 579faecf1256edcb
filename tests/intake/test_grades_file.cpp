#include <gtest/gtest.h>

#include "client/intake/file_bytes.h"
#include "client/intake/grades_file.h"

namespace heatkeep::intake {
namespace {

constexpr std::string_view kGrades =
    "designation,number,uns,family,standard,density_kg_m3,density_source,source,evidence\n"
    "42CrMo4,1.7225,,alloy steel,EN ISO 683-2,7850,EN 10060,a list,from memory\n"
    "4140,,G41400,alloy steel,ASTM A29/A29M,7850,EN 10060,a list,from memory\n"
    "X2CrNiMo17-12-2,1.4404,,austenitic stainless,EN 10088-3,8000,EN 10088-1,a list,from memory\n";

std::vector<Grade> Grades() { return ReadGradesFile(kGrades, "grades.csv").rows; }

TEST(FindGrade, TakesDesignationNumberOrUns) {
  const auto grades = Grades();
  ASSERT_EQ(grades.size(), 3U);
  EXPECT_EQ(FindGrade(grades, "42crmo4"), &grades[0]);
  EXPECT_EQ(FindGrade(grades, " 1.7225"), &grades[0]);
  EXPECT_EQ(FindGrade(grades, "g41400"), &grades[1]);
  EXPECT_EQ(FindGrade(grades, "1.4404")->density, Density{8000});
  EXPECT_EQ(FindGrade(grades, "4104"), nullptr);
  EXPECT_EQ(FindGrade(grades, ""), nullptr);
}

TEST(NearGrades, NamesTheNearestFirst) {
  const auto grades = Grades();
  EXPECT_EQ(NearGrades(grades, "42CrMo"), (std::vector<std::string>{"42CrMo4"}));
  EXPECT_EQ(NearGrades(grades, "4130"), (std::vector<std::string>{"4140"}));
  EXPECT_EQ(NearGrades(grades, "1.4044").front(), "X2CrNiMo17-12-2");
  EXPECT_TRUE(NearGrades(grades, "wood").empty());
}

TEST(GradesFile, RefusesADensityNobodyCanBelieve) {
  EXPECT_EQ(ProblemsText(ReadGradesFile("designation,number,uns,family,standard,density_kg_m3,density_source,source,evidence\n"
                                        "A,,,steel,,7.85,x,,\nA,,,steel,,,x,,\n",
                                        "grades.csv")
                             .problems),
            "grades.csv:2: density_kg_m3: \"7.85\" has 2 decimals; expected a whole number from 500 to 25000\n"
            "grades.csv:3: designation \"A\" stands in line 2 already; expected each designation once\n"
            "grades.csv:3: density_kg_m3 is empty; expected whole kg/m3\n");
}

// The list that comes with the program. Densities: EN 10088-1 prints 7.9 for 1.4301 and 8.0 for 1.4404 (seen); the
// section tables EN 10058 to 10061 are computed at 7.85 (seen).
TEST(GradesFile, ReadsTheShippedList) {
  const auto file = ReadGradesFile(FileBytes(HEATKEEP_SEED_REFERENCE "/grades.csv"), "grades.csv");
  ASSERT_TRUE(file.Good()) << ProblemsText(file.problems);
  EXPECT_EQ(FindGrade(file.rows, "1.4301")->density, Density{7900});
  EXPECT_EQ(FindGrade(file.rows, "1.4404")->density, Density{8000});
  EXPECT_EQ(FindGrade(file.rows, "42CrMo4")->density, Density{7850});
  EXPECT_EQ(FindGrade(file.rows, "C45E")->density, Density{7850});
}

}  // namespace
}  // namespace heatkeep::intake
