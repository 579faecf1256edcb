#include <gtest/gtest.h>

#include <set>

#include "tests/seed/rows_of.h"

namespace heatkeep::seed_test {
namespace {

const std::string kHeader =
    "order,line,customer,section,grade,length,quantity,tolerance,due,priority,one_heat,max_heats,face,papers,"
    "owner,"
    "condition";

File list(char name) { return rows_of(std::string("scenario/cutlist_") + name + ".csv", name == 'b'); }

Length length_of(const Row& r, char list_name) { return ReadLength(r.at("length"), {LengthUnit::Mm, list_name == 'b' ? ',' : '.'}); }

// What the shop cuts when this grade is asked for: shop.json's stand-ins.
std::string served_by(const std::string& asked) {
  if (asked == "X5CrNiMo17-12-2") return "X2CrNiMo17-12-2";
  return asked == "C45" ? "C45E" : asked;
}

TEST(CutLists, AreOfThreeSizes) {
  EXPECT_EQ(list('a').header, kHeader);
  EXPECT_EQ(list('c').header, kHeader);
  std::string semicolons = kHeader;
  for (char& c : semicolons) c = c == ',' ? ';' : c;
  EXPECT_EQ(list('b').header, semicolons);
  const auto between = [](std::size_t n, std::size_t least, std::size_t most) { return n >= least && n <= most; };
  EXPECT_TRUE(between(list('a').rows.size(), 15, 25));
  EXPECT_TRUE(between(list('b').rows.size(), 50, 70));
  EXPECT_TRUE(between(list('c').rows.size(), 130, 170));
}

TEST(CutLists, TheSecondIsAWesternSpreadsheets) {
  const std::string bytes = bytes_of("scenario/cutlist_b.csv");
  EXPECT_NE(bytes.find("\xD8 40"), std::string::npos) << "the diameter sign of Windows-1252";
  EXPECT_NE(bytes.find(",5 mm"), std::string::npos) << "decimal commas";
  EXPECT_NE(bytes.find("\r\n"), std::string::npos);
}

TEST(CutLists, NameALineOnceAndAOneHeatOnALineOfItsOwn) {
  std::set<std::string> lines, names;
  for (const char name : {'a', 'b', 'c'}) {
    for (const Row& r : list(name).rows) {
      EXPECT_TRUE(lines.insert(r.at("order") + "/" + r.at("line")).second) << r.at("order") << "/" << r.at("line");
      EXPECT_EQ(r.at("max_heats"), "");
      if (r.at("one_heat").empty()) continue;
      EXPECT_TRUE(names.insert(r.at("one_heat")).second) << r.at("one_heat");
      EXPECT_GT(std::stoi(r.at("quantity")), 1) << r.at("one_heat");
    }
  }
  EXPECT_GE(names.size(), 8U);
}

TEST(CutLists, AskForLengthsAndQuantitiesOfTheTrade) {
  int inches = 0;
  for (const char name : {'a', 'b', 'c'}) {
    for (const Row& r : list(name).rows) {
      if (r.at("priority") == "5") continue;
      const Length length = length_of(r, name);
      EXPECT_TRUE(length.nm >= 40 * kNmPerMm && length.nm <= 2500 * kNmPerMm) << r.at("order") << "/" << r.at("line");
      EXPECT_TRUE(std::stoi(r.at("quantity")) >= 1 && std::stoi(r.at("quantity")) <= 40);
      inches += r.at("length").ends_with('"') ? 1 : 0;
    }
  }
  EXPECT_GE(inches, 10);
}

// By metres only: that pieces are long enough too is the generator's own promise.
TEST(CutLists, TakeAtMostSixTenthsOfAnyGroupButForTheLinesThatMustBeShort) {
  std::map<GroupKey, Length> stock, asked;
  for (const Row& r : all_metal()) {
    if (r.at("owner").empty()) stock[group_of(r)] += ReadLength(r.at("length")) * std::stoll(r.at("count"));
  }
  int must_be_short = 0, of_the_customer = 0;
  for (const char name : {'a', 'b', 'c'}) {
    for (const Row& r : list(name).rows) {
      must_be_short += r.at("priority") == "5" ? 1 : 0;
      of_the_customer += r.at("owner").empty() ? 0 : 1;
      if (r.at("priority") == "5" || !r.at("owner").empty()) continue;
      const GroupKey group{served_by(r.at("grade")), group_of(r).second};
      asked[group] += length_of(r, name) * std::stoll(r.at("quantity"));
    }
  }
  for (const auto& [group, length] : asked) {
    EXPECT_LE(length.nm / 1000 * 100, stock[group].nm / 1000 * 60) << group.first << " " << group.second;
  }
  EXPECT_EQ(must_be_short, 5);
  EXPECT_EQ(of_the_customer, 1);
  EXPECT_GE(asked.size(), 50U);
}

TEST(CutLists, TheFirstIsOfOneOrTwoGradesWithCertificates) {
  std::set<std::string> grades;
  for (const Row& r : list('a').rows) {
    grades.insert(r.at("grade"));
    EXPECT_EQ(r.at("papers"), "3.1");
  }
  EXPECT_LE(grades.size(), 2U);
}

}  // namespace
}  // namespace heatkeep::seed_test
