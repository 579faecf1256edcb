// Every row of tests/reference/heat_analysis_cases.csv: constructed, with limits from the standards named in
// seed/reference/grade_limits.csv. The table's judge looks at the reported elements only; ours answers "incomplete" where a
// limited element is not reported, and adds the carbon equivalent of EN 10025-2:2019 Table 5.
#include <gtest/gtest.h>

#include <algorithm>

#include "client/papers/analysis_text.h"
#include "tests/papers/reference_rows.h"

namespace heatkeep::papers {
namespace {

// The program's name of the table's grade, and the size its words say.
Question Asked(const Row& row, Method method) {
  Question q;
  q.grade = row.at("grade");
  if (q.grade == "S355J2 (thickness <= 30 mm)") q.size = Length{25 * kNmPerMm};
  q.grade = q.grade.substr(0, q.grade.find(" ("));
  if (q.grade == "6061") q.grade = "EN AW-6061";
  if (q.grade == "C360 brass") q.grade = "C36000";
  q.analysis = ReadAnalysis(row.at("analysis_pct"));
  q.method = method;
  return q;
}

std::string Words(const Answer& answer) {
  std::string text;
  const auto add = [&](const Line& l, const char* words) { text += (text.empty() ? "violates: " : "; ") + l.what + words; };
  for (const Line& l : answer.elements) {
    if (l.verdict == Verdict::High) add(l, " above max");
    if (l.verdict == Verdict::Low) add(l, " below min");
  }
  return text.empty() ? "conforms" : text;
}

std::string Sorted(std::string words) {  // the order of the parts is the table's
  std::vector<std::string> parts;
  for (std::size_t at = 0; at != std::string::npos;) {
    const std::size_t end = words.find("; ", at);
    std::string part = words.substr(at, end == std::string::npos ? end : end - at);
    if (part.starts_with("violates: ")) part.erase(0, 10);
    parts.push_back(part);
    at = end == std::string::npos ? end : end + 2;
  }
  std::sort(parts.begin(), parts.end());
  std::string all;
  for (const std::string& p : parts) all += p + "|";
  return all;
}

TEST(HeatCases, EveryRowOfTheTableByBothMethods) {
  const Known known = ProgramLimits();
  const std::vector<Row> rows = RowsOf("heat_analysis_cases.csv");
  ASSERT_GE(rows.size(), 18u);
  for (const Row& row : rows) {
    const Answer absolute = CheckHeat(Asked(row, Method::Absolute), known), rounded = CheckHeat(Asked(row, Method::HalfEven), known);
    EXPECT_EQ(Sorted(Words(absolute)), Sorted(row.at("verdict_absolute_method"))) << row.at("case");
    EXPECT_EQ(Sorted(Words(rounded)), Sorted(row.at("verdict_rounding_method_half_even"))) << row.at("case");
    const bool conforms = row.at("verdict_absolute_method") == "conforms";
    const Overall want = !conforms ? Overall::Violates : row.at("case") == "H18" ? Overall::Incomplete : Overall::Conforms;
    EXPECT_EQ(absolute.composition, want) << row.at("case");
    EXPECT_EQ(absolute.overall, row.at("case") == "H11" ? Overall::Violates : want) << row.at("case");
  }
}

TEST(HeatCases, AMissingElementIsNeverZero) {
  const Answer answer = CheckHeat({"1018", ReadAnalysis("C=0.17 Mn=0.74 P=0.009"), false, {}, Method::Absolute}, ProgramLimits());
  EXPECT_EQ(answer.elements.at(3).what, "S");
  EXPECT_EQ(answer.elements.at(3).verdict, Verdict::Missing);
  EXPECT_FALSE(answer.elements.at(3).value);
  EXPECT_EQ(answer.overall, Overall::Incomplete);
}

TEST(HeatCases, WhatTheGradeDoesNotLimitIsNotLimited) {
  const Answer answer =
      CheckHeat({"1018", ReadAnalysis("C=0.17 Mn=0.74 P=0.009 S=0.01 Cu=0.9"), false, {}, Method::Absolute}, ProgramLimits());
  EXPECT_EQ(answer.elements.back().what, "Cu");
  EXPECT_EQ(answer.elements.back().verdict, Verdict::NotLimited);
  EXPECT_EQ(answer.overall, Overall::Conforms);
}

// H06 of the table: lean but conforming, dual marking with 316 is possible; H07: over 316L, still 316.
TEST(HeatCases, DualCertifiedGradesAreFound) {
  const Known known = ProgramLimits();
  const auto met = [&](const char* analysis) { return GradesMet({"", ReadAnalysis(analysis), false, {}, Method::Absolute}, known); };
  const auto lean = met("C=0.019 Mn=1.42 P=0.031 S=0.024 Si=0.41 Cr=16.62 Ni=10.08 Mo=2.04 N=0.051");
  EXPECT_EQ(lean, (std::vector<std::string>{"316", "316L", "X2CrNiMo17-12-2"}));
  EXPECT_EQ(met("C=0.031 Mn=1.42 P=0.031 S=0.024 Si=0.41 Cr=16.62 Ni=10.08 Mo=2.04 N=0.051"), (std::vector<std::string>{"316"}));
}

// 1045 limits C, Mn, P and S only; 0.98 % Cr makes another steel of it (EN 10020:2000 Table 1, from memory: from 0.30 %).
TEST(HeatCases, AnAlloySteelIsNotTheCarbonSteelOfTheSameCarbon) {
  const auto met =
      GradesMet({"", ReadAnalysis("C=0.43 Mn=0.86 P=0.011 S=0.022 Si=0.26 Cr=0.98 Mo=0.19"), false, {}, Method::Absolute}, ProgramLimits());
  EXPECT_EQ(met, (std::vector<std::string>{"4140", "42CrMo4"}));
}

// EN 10025-2:2019 Table 1 note i (seen): C 0.20 to 30 mm, 0.22 above.
TEST(Sizes, AValueThatIsRightAtSomeSizesOnlyWaitsForTheSize) {
  const Known known = ProgramLimits();
  Question q{
      "S355J2", ReadAnalysis("C=0.21 Si=0.31 Mn=1.2 P=0.018 S=0.012 Cu=0.22 Cr=0.08 Ni=0.07 Mo=0.02 V=0.00"), false, {}, Method::Absolute};
  const auto carbon = [&](std::optional<Length> size) {
    q.size = size;
    return CheckHeat(q, known).elements.at(0).verdict;
  };
  EXPECT_EQ(carbon(Length{30 * kNmPerMm}), Verdict::High);
  EXPECT_EQ(carbon(Length{30 * kNmPerMm + 1}), Verdict::Ok);
  EXPECT_EQ(carbon({}), Verdict::Missing);
  EXPECT_EQ(CheckHeat(q, known).overall, Overall::Incomplete);
  q.analysis[0].millionths = 230'000;  // too much at every size
  EXPECT_EQ(carbon({}), Verdict::High);
}

TEST(Sizes, OutsideTheTableNothingConforms) {
  Question q{"S235JR", ReadAnalysis("C=0.10 Mn=0.9 P=0.01 S=0.01 N=0.005 Cu=0.1 Cr=0.1 Mo=0.01 V=0 Ni=0.1"), false, Length{60 * kNmPerMm},
             Method::Absolute};
  const Known known = ProgramLimits();
  EXPECT_EQ(CheckHeat(q, known).open, "no limits of S235JR for this size are known");
  EXPECT_EQ(CheckHeat(q, known).overall, Overall::Incomplete);
  q.size = Length{40 * kNmPerMm};
  EXPECT_EQ(CheckHeat(q, known).overall, Overall::Conforms);
}

// EN 573-3 (seen): 6061, others each 0.05 %, together 0.15 %, aluminium the remainder.
TEST(Others, EachAndTogether) {
  const Known known = ProgramLimits();
  const std::string rest = "Si=0.62 Fe=0.31 Cu=0.27 Mn=0.09 Mg=0.95 Cr=0.11 Zn=0.06 Ti=0.02 Al=97.4 ";
  const auto sums = [&](const std::string& more) {
    return CheckHeat({"EN AW-6061", ReadAnalysis(rest + more), false, {}, Method::Absolute}, known).sums;
  };
  EXPECT_EQ(sums("Ni=0.05 Pb=0.05 Bi=0.05")[0].verdict, Verdict::Ok);
  EXPECT_EQ(sums("Ni=0.05 Pb=0.05 Bi=0.05")[1].verdict, Verdict::Ok);
  EXPECT_EQ(sums("Ni=0.06")[0].verdict, Verdict::High);
  EXPECT_EQ(sums("Ni=0.04 Pb=0.04 Bi=0.04 Sn=0.04")[1].verdict, Verdict::High);
}

}  // namespace
}  // namespace heatkeep::papers
