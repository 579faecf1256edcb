// Worked roundings as the standards print them: ISO 80000-1:2009 Annex B (from memory), ASTM E29 section 6 (seen) and its
// table (from memory), ASME A112.18.1 Annex A (seen): tests/reference/formulae.csv F17 to F22.
#include <gtest/gtest.h>

#include "client/papers/rounding.h"
#include "client/papers/verdict.h"
#include "schema/terms/bad_text.h"

namespace heatkeep::papers {
namespace {

std::string Rounded(const char* value, int places, Tie tie) {
  return BoundText({RoundToPlaces({ReadBound(value).millionths, 1}, places, tie), places});
}
// To a multiple of ten.
std::int64_t ToTens(const char* value, Tie tie) { return RoundTo({ReadBound(value).millionths, 1}, 10'000'000, tie) / 1'000'000; }

TEST(Rounding, RuleAOfIso80000GoesToTheEvenMultipleInOneStep) {
  const std::vector<std::pair<const char*, const char*>> tenths{
      {"12.223", "12.2"}, {"12.251", "12.3"}, {"12.275", "12.3"}, {"12.25", "12.2"}, {"12.35", "12.4"}};
  for (const auto& [value, want] : tenths) EXPECT_EQ(Rounded(value, 1, Tie::HalfEven), want) << value;
  const std::vector<std::pair<const char*, int>> tens{
      {"1222.3", 1220}, {"1225.1", 1230}, {"1227.5", 1230}, {"1225.0", 1220}, {"1235.0", 1240}};
  for (const auto& [value, want] : tens) EXPECT_EQ(ToTens(value, Tie::HalfEven), want) << value;
}

TEST(Rounding, RuleBOfIso80000GoesToTheLargerMagnitude) {
  EXPECT_EQ(Rounded("12.25", 1, Tie::HalfAway), "12.3");
  EXPECT_EQ(Rounded("12.35", 1, Tie::HalfAway), "12.4");
  EXPECT_EQ(ToTens("1225.0", Tie::HalfAway), 1230);
  EXPECT_EQ(ToTens("1235.0", Tie::HalfAway), 1240);
  EXPECT_EQ(RoundTo({-1225, 1}, 10, Tie::HalfAway), -1230);
  EXPECT_EQ(RoundTo({-1225, 1}, 10, Tie::HalfEven), -1220);
}

TEST(Rounding, AstmE29RoundsToTheLimitsLastPlace) {
  for (const char* value : {"45.71", "45.72", "45.73", "45.74"}) EXPECT_EQ(Rounded(value, 1, Tie::HalfEven), "45.7") << value;
  for (const char* value : {"45.76", "45.77", "45.78", "45.79", "45.7500"}) EXPECT_EQ(Rounded(value, 1, Tie::HalfEven), "45.8") << value;
  EXPECT_EQ(Rounded("45.4500", 1, Tie::HalfEven), "45.4");
  EXPECT_EQ(Rounded("45.45001", 1, Tie::HalfEven), "45.5");
  EXPECT_EQ(Rounded("45.45105", 1, Tie::HalfEven), "45.5");
}

TEST(Rounding, ThreeFiguresGoToTheEvenOneOnATie) {
  EXPECT_EQ(Rounded("1.655000", 2, Tie::HalfEven), "1.66");
  EXPECT_EQ(Rounded("1.625000", 2, Tie::HalfEven), "1.62");
}

TEST(Rounding, AFractionIsRoundedOnceFromItsExactValue) {
  EXPECT_EQ(RoundTo({1, 3}, 1, Tie::HalfAway), 0);
  EXPECT_EQ(RoundTo({2, 3}, 1, Tie::HalfEven), 1);
  EXPECT_EQ(RoundTo({3, 2}, 1, Tie::HalfEven), 2);
  EXPECT_EQ(RoundTo({5, 2}, 1, Tie::HalfEven), 2);
}

Verdict Against(const char* value, std::optional<Bound> least, std::optional<Bound> most, Method method) {
  Line line;
  line.value = Fraction{ReadBound(value).millionths, 1};
  line.least = least;
  line.most = most;
  Judge(line, method);
  return line.verdict;
}

// ASTM E29: C max 0.43 (section 5 and 6, seen); nickel 57 % min and bicarbonate 0.5 % max (its table, from memory).
TEST(Judging, AsE29PrintsIt) {
  const Bound carbon = ReadBound("0.43"), nickel = ReadBound("57"), bicarbonate = ReadBound("0.5");
  EXPECT_EQ(Against("0.434", {}, carbon, Method::HalfEven), Verdict::Ok);
  EXPECT_EQ(Against("0.434", {}, carbon, Method::Absolute), Verdict::High);
  EXPECT_EQ(Against("56.4", nickel, {}, Method::HalfEven), Verdict::Low);
  EXPECT_EQ(Against("56.5", nickel, {}, Method::HalfEven), Verdict::Low);
  EXPECT_EQ(Against("56.6", nickel, {}, Method::HalfEven), Verdict::Ok);
  EXPECT_EQ(Against("0.54", {}, bicarbonate, Method::HalfEven), Verdict::Ok);
  EXPECT_EQ(Against("0.55", {}, bicarbonate, Method::HalfEven), Verdict::High);
  EXPECT_EQ(Against("0.56", {}, bicarbonate, Method::HalfEven), Verdict::High);
  EXPECT_EQ(Against("56.5", nickel, {}, Method::HalfAway), Verdict::Ok);
}

TEST(Bounds, KeepTheFiguresTheyArePrintedWith) {
  for (const char* text : {"0.030", "0.8", "57", "0", "1.00", "0.0005"}) EXPECT_EQ(BoundText(ReadBound(text)), text);
  EXPECT_EQ(ReadBound("0.030"), (Bound{30'000, 3}));
  EXPECT_THROW(ReadBound("-1"), BadText);
  EXPECT_THROW(ReadBound("nan"), BadText);
}

}  // namespace
}  // namespace heatkeep::papers
