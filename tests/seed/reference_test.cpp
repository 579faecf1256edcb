#include <gtest/gtest.h>

#include <set>

#include "tests/seed/rows_of.h"

namespace heatkeep::seed_test {
namespace {

TEST(Grades, EveryRowSaysWhereItComesFrom) {
  const File grades = rows_of("reference/grades.csv");
  EXPECT_EQ(grades.header, "designation,number,uns,family,standard,density_kg_m3,density_source,source,evidence");
  EXPECT_GE(grades.rows.size(), 50U);
  for (const Row& g : grades.rows) {
    for (const char* field : {"designation", "family", "standard", "density_source", "source", "evidence"}) {
      EXPECT_FALSE(g.at(field).empty()) << g.at("designation") << ": " << field;
    }
    const int density = std::stoi(g.at("density_kg_m3"));
    EXPECT_TRUE(density > 2500 && density < 9000) << g.at("designation");
  }
}

TEST(Grades, ADesignationAndANumberNameOneGradeOnly) {
  std::set<std::string> designations, numbers;
  for (const Row& g : rows_of("reference/grades.csv").rows) {
    EXPECT_TRUE(designations.insert(g.at("designation")).second) << g.at("designation");
    if (!g.at("number").empty()) { EXPECT_TRUE(numbers.insert(g.at("number")).second) << g.at("number"); }
  }
  for (const std::string& n : numbers) EXPECT_FALSE(designations.contains(n)) << n;
}

// Numbers: EN 10027-2 as printed with the names in EN ISO 683-1/-2, EN 10025-2 and EN 10088-1, from memory.
// Densities: EN 10088-1 Annex (physical properties) for the stainless ones; 7.85 kg/dm3 in EN 10058 to 10061.
TEST(Grades, TheBestKnownPairsAreThere) {
  struct Known {
    const char *designation, *number, *density;
  };
  const std::vector<Known> known{{"42CrMo4", "1.7225", "7850"},         {"C45E", "1.1191", "7850"},
                                 {"S355J2", "1.0577", "7850"},          {"X5CrNi18-10", "1.4301", "7900"},
                                 {"X2CrNiMo17-12-2", "1.4404", "8000"}, {"X2CrNiMoN22-5-3", "1.4462", "7800"}};
  const File grades = rows_of("reference/grades.csv");
  for (const Known& k : known) {
    int found = 0;
    for (const Row& g : grades.rows) {
      if (g.at("designation") != k.designation) continue;
      ++found;
      EXPECT_EQ(g.at("number"), k.number);
      EXPECT_EQ(g.at("density_kg_m3"), k.density);
    }
    EXPECT_EQ(found, 1) << k.designation;
  }
}

// Their Mn and Cr ranges differ: ASTM A29/A29M Table 2 against EN 10083-3.
TEST(Grades, NearGradesAreTwoGrades) {
  for (const Row& g : rows_of("reference/grades.csv").rows) {
    if (g.at("designation") == "4140") { EXPECT_EQ(g.at("number"), ""); }
    if (g.at("designation") == "42CrMo4") { EXPECT_EQ(g.at("uns"), ""); }
  }
}

TEST(GradeLimits, AreRangesOfKnownGradesWithASource) {
  const File limits = rows_of("reference/grade_limits.csv");
  EXPECT_EQ(limits.header, "grade,over_mm,upto_mm,element,min_pct,max_pct,kind,source,edition_or_note,evidence");
  std::set<std::string> known;
  for (const Row& g : rows_of("reference/grades.csv").rows) known.insert(g.at("designation"));
  std::set<std::string> rows;
  for (const Row& l : limits.rows) {
    const std::string name = l.at("grade") + " over " + l.at("over_mm") + " " + l.at("element");
    EXPECT_TRUE(known.contains(l.at("grade"))) << name;
    EXPECT_TRUE(rows.insert(name).second) << name << " stands twice";
    EXPECT_FALSE(l.at("min_pct").empty() && l.at("max_pct").empty()) << name;
    if (!l.at("min_pct").empty() && !l.at("max_pct").empty()) { EXPECT_LT(std::stod(l.at("min_pct")), std::stod(l.at("max_pct"))) << name; }
    EXPECT_FALSE(l.at("source").empty() || l.at("evidence").empty()) << name;
  }
}

}  // namespace
}  // namespace heatkeep::seed_test
