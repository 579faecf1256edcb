#include <gtest/gtest.h>

#include <algorithm>

#include "client/intake/checked_rows.h"
#include "schema/terms/length_text.h"

namespace heatkeep::intake {
namespace {

FileRows<Length> Lengths(std::string_view bytes, ReadingOptions how = {}) {
  return ReadCheckedRows<Length>(bytes, "f.csv", {{"slip_count"}, {"length", true, {}, true}}, how, [](CheckedRows& file) {
    return file.NeededValue<Length>("length", "a length", [&file](const std::string& cell) { return ReadLength(cell, file.Lengths()); });
  });
}

std::string Problems(std::string_view bytes) { return ProblemsText(Lengths(bytes).problems); }

TEST(Header, IsMatchedWithoutCaseAndBlanks) {
  EXPECT_TRUE(Lengths("Length,Slip Count\n5,1\n").Good());
  EXPECT_TRUE(Lengths(" LENGTH ;slip-count\n5;1\n").Good());
  EXPECT_EQ(Lengths("length\n5\n6\n").rows.size(), 2U);
  EXPECT_EQ(Lengths("length\n").rows.size(), 0U);
}

TEST(Header, RefusesUnknownDoubledAndMissingColumns) {
  EXPECT_EQ(Problems("length,lenght\n5,5\n"), "f.csv:1: unknown column \"lenght\"; expected only these columns: slip_count,length\n");
  EXPECT_EQ(Problems("length,Length\n5,5\n"), "f.csv:1: column \"Length\" stands twice; expected each column once\n");
  EXPECT_EQ(Problems("slip_count\n5\n"), "f.csv:1: column \"length\" is missing; expected a header with it\n");
  EXPECT_EQ(Problems("length,\n5,\n"), "f.csv:1: a column without a name; expected only these columns: slip_count,length\n");
}

TEST(Rows, EveryBadLineIsNamedAndTheFileRefused) {
  const auto file = Lengths("length,slip_count\n5,1\nx,1\n6,1,1\n7\n,1\n");
  EXPECT_TRUE(file.rows.empty());
  EXPECT_EQ(ProblemsText(file.problems),
            "f.csv:3: length: no number where one should be in \"x\"; expected a length like 6000, 6000mm, 20 ft, "
            "13 7/8 in or 19' 11-3/8\"\n"
            "f.csv:4: 3 cells; expected 2 as in the header\n"
            "f.csv:5: 1 cell; expected 2 as in the header\n"
            "f.csv:6: length is empty; expected a length\n");
}

TEST(Rows, AFloodOfProblemsIsCutShort) {
  std::string bytes = "length\n";
  for (int i = 0; i < 1000; ++i) bytes += "x\n";
  const auto file = Lengths(bytes);
  EXPECT_EQ(file.problems.size(), 1000U);
  const std::string text = ProblemsText(file.problems);
  EXPECT_EQ(std::count(text.begin(), text.end(), '\n'), 201);
  EXPECT_TRUE(text.ends_with("f.csv: 800 more\n"));
}

TEST(Rows, GoodLinesMayComeWithoutTheBad) {
  const auto file = Lengths("length,slip_count\n5,1\nx,1\n7,1\n", {BadLines::LeaveOut});
  EXPECT_EQ(file.rows.size(), 2U);
  EXPECT_EQ(file.problems.size(), 1U);
  EXPECT_TRUE(Lengths("length,lenght\n5,5\n", {BadLines::LeaveOut}).rows.empty());
}

std::vector<std::int64_t> Micrometres(const FileRows<Length>& file) {
  std::vector<std::int64_t> um;
  for (Length length : file.rows) um.push_back(length.nm / 1000);
  return um;
}

TEST(DecimalMark, IsACommaWhenEveryFractionOfTheFileHasOne) {
  const auto file = Lengths("slip_count;length\n1;6000\n1;352,4\n1;1,100\n");
  EXPECT_EQ(file.decimal_mark, ',');
  EXPECT_EQ(Micrometres(file), (std::vector<std::int64_t>{6'000'000, 352'400, 1'100}));
  EXPECT_EQ(Lengths("slip_count;length\n1;0,125\n").decimal_mark, ',');
  EXPECT_EQ(Lengths("slip_count;length\n1;1234,567\n").decimal_mark, ',');
}

TEST(DecimalMark, IsNotGuessedFromADoubtfulNumber) {
  EXPECT_EQ(Problems("slip_count;length\n1;6000\n1;1,100\n"),
            "f.csv:3: length: \"1,100\" can be read two ways, 1.1 mm or 1 100 mm; expected a number without that mark, or "
            "thousands set apart by a blank\n");
  EXPECT_NE(Problems("slip_count;length\n1;352,4\n1;352.4\n"), "");
  EXPECT_NE(Problems("slip_count,length\n1,\"352,4\"\n"), "");
}

TEST(DecimalMark, IsNotGuessedFromAPointEither) {
  const std::string two =
      "can be read two ways, 6.012 mm or 6 012 mm; expected a number without that mark, or thousands set apart by a blank\n";
  EXPECT_EQ(Problems("slip_count;length\n1;6000\n1;6.012\n"), "f.csv:3: length: \"6.012\" " + two);
  EXPECT_EQ(Problems("slip_count\tlength\n1\t6.012\n"), "f.csv:2: length: \"6.012\" " + two);
  EXPECT_EQ(Micrometres(Lengths("slip_count;length\n1;6.012\n1;352.4\n")), (std::vector<std::int64_t>{6'012, 352'400}))
      << "another point tells";
  EXPECT_EQ(Micrometres(Lengths("slip_count,length\n1,6.012\n")), (std::vector<std::int64_t>{6'012})) << "so do commas between cells";
  EXPECT_EQ(Micrometres(Lengths("slip_count;length\n1;6.012\n1;6 000.125\n")), (std::vector<std::int64_t>{6'012, 6'000'125}));
  EXPECT_EQ(Micrometres(Lengths("slip_count;length\n1;6.012\n", {BadLines::RefuseFile, '.'})), (std::vector<std::int64_t>{6'012}));
}

TEST(DecimalMark, IsTheLastOfTwoInOneNumber) {
  const auto file = Lengths("slip_count;length\n1;2,20\n1;1.234,5\n1;6.012\n");
  EXPECT_EQ(file.decimal_mark, ',');
  EXPECT_EQ(ProblemsText(file.problems),
            "f.csv:3: length: more than one mark in \"1.234,5\"; expected one decimal mark; thousands set apart by a blank\n"
            "f.csv:4: length: \"6.012\" can be read two ways, 6.012 mm or 6 012 mm; expected a number without that mark, or "
            "thousands set apart by a blank\n");
  EXPECT_EQ(Lengths("slip_count;length\n1;1.234.567\n").decimal_mark, ',');
  EXPECT_EQ(Lengths("slip_count;length\n1;1,234.5\n1;2.20\n").decimal_mark, '.');
}

TEST(DecimalMark, IsWhatTheCallerSays) {
  EXPECT_EQ(Micrometres(Lengths("length\n\"1,100\"\n", {BadLines::RefuseFile, ','})), (std::vector<std::int64_t>{1'100}));
  EXPECT_FALSE(Lengths("slip_count;length\n1;352,4\n", {BadLines::RefuseFile, '.'}).Good());
}

TEST(BareLengths, AreInTheUnitTheCallerSays) {
  EXPECT_EQ(Micrometres(Lengths("length\n1\n", {BadLines::RefuseFile, 0, LengthUnit::Inch})), (std::vector<std::int64_t>{25'400}));
}

}  // namespace
}  // namespace heatkeep::intake
