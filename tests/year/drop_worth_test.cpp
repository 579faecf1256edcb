// Expected amounts: worked by hand with the formula of drop_worth.h, rounded to the cent (common practice, no source).
#include "client/year/drop_worth.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/year/invented_past.h"

namespace heatkeep::year {
namespace {

using namespace literals;

TEST(DropWorth, OfTwoHundredAndSixMillimetresOfCrMoPays) {
  const DropWorth w = WorthOf(206_mm, Demand{24, 3, 0.6}, CrMo80());
  EXPECT_DOUBLE_EQ(w.effective_a_year, 6);
  EXPECT_NEAR(w.chance, 0.9999, 0.00005);
  EXPECT_NEAR(w.stay_years, 0.167, 0.0005);
  EXPECT_EQ(Cents(w.gain).cents, 658);
  EXPECT_EQ(Cents(w.cost).cents, 317);
  EXPECT_EQ(Cents(w.net).cents, 341);
  EXPECT_TRUE(w.keep);
  EXPECT_EQ(Cents(w.value).cents, 203 + 341);  // 0.206 m at 9.86 is 2.03
}

TEST(DropWorth, OfOneHundredAndTwentyMillimetresOfCrMoDoesNotPay) {
  const DropWorth w = WorthOf(120_mm, Demand{6, 5, 0.5}, CrMo80());
  EXPECT_DOUBLE_EQ(w.effective_a_year, 1);
  EXPECT_NEAR(w.chance, 0.777, 0.0005);
  EXPECT_NEAR(w.stay_years, 0.777, 0.0005);
  EXPECT_EQ(Cents(w.gain).cents, 248);
  EXPECT_EQ(Cents(w.cost).cents, 500);
  EXPECT_EQ(Cents(w.net).cents, -252);
  EXPECT_FALSE(w.keep);
  EXPECT_EQ(Cents(w.value).cents, 118);  // scrap only
}

TEST(DropWorth, OfTheSamePieceInStainlessPays) {
  WorthRules rules = CrMo80();
  rules.replace_per_metre = CentsFine(19302);  // 40.212 kg/m at 4.80
  rules.scrap_per_metre = CentsFine(4826);     // at 1.20: 144.76 a metre between them
  const DropWorth w = WorthOf(120_mm, Demand{6, 5, 0.5}, rules);
  EXPECT_EQ(Cents(w.gain).cents, 675);
  EXPECT_EQ(Cents(w.net).cents, 175);
  EXPECT_TRUE(w.keep);
}

TEST(DropWorth, OfARackedPieceLeavesTheReturnOut) {
  const DropWorth fresh = WorthOf(206_mm, Demand{24, 3, 0.6}, CrMo80());
  const DropWorth racked = WorthOf(206_mm, Demand{24, 3, 0.6}, CrMo80(), true);
  EXPECT_EQ(fresh.cost.micro - racked.cost.micro, CentsFine(267).micro);
}

TEST(DropWorth, OfADropNobodyWantsIsScrap) {
  const DropWorth w = WorthOf(500_mm, Demand{}, CrMo80());
  EXPECT_EQ(w.gain.micro, 0);
  EXPECT_DOUBLE_EQ(w.stay_years, 1.5);  // it stays the whole horizon
  EXPECT_EQ(w.value, CentsFine(493));
}

TEST(DropWorth, FallsWithEveryDropAheadAndRisesWithDemand) {
  FineMoney last = WorthOf(400_mm, Demand{12, 0, 0.6}, CrMo80()).net;
  for (int ahead = 1; ahead <= 20; ++ahead) {
    const FineMoney net = WorthOf(400_mm, Demand{12, static_cast<double>(ahead), 0.6}, CrMo80()).net;
    EXPECT_LT(net, last) << ahead;
    last = net;
  }
  last = WorthOf(400_mm, Demand{1, 3, 0.6}, CrMo80()).net;
  for (int lines = 2; lines <= 40; ++lines) {
    const FineMoney net = WorthOf(400_mm, Demand{static_cast<double>(lines), 3, 0.6}, CrMo80()).net;
    EXPECT_GT(net, last) << lines;
    last = net;
  }
}

TEST(DropDemand, CountsASteadyLineAtItsRateWhateverTheHalfLife) {
  WorthRules rules = CrMo80();
  for (const int half_life : {60, 360, 100'000}) {
    rules.half_life_days = half_life;
    const Demand d = DemandFor({206_mm, {}, {}}, SteadyPast(50_mm, 10, 1), rules);
    EXPECT_NEAR(d.lines_a_year, 360, 1e-9) << half_life;
    EXPECT_NEAR(d.share_used, 2 * 52.0 / 206, 1e-12);  // (206 - 60) / 52 = 2 pieces
  }
}

TEST(DropDemand, WeighsNewerLinesMore) {
  const auto at = [](int day) {
    Past past = SteadyPast(50_mm, 1, 10'000);
    past.lines = {{day, 50_mm, 1, {}, {}, false}};
    return DemandFor({206_mm, {}, {}}, past, CrMo80()).lines_a_year;
  };
  EXPECT_NEAR(at(999) / at(639), 2, 1e-9);  // a half-life apart
  EXPECT_GT(at(999), at(998));
  EXPECT_EQ(at(1000), 0);  // today is not past
  EXPECT_GT(at(280), 0);
  EXPECT_EQ(at(279), 0);  // older than 24 months
}

TEST(DropDemand, NeedsRoomForThePieceAndTheGrip) {
  const Past past = SteadyPast(144_mm, 5, 30);
  EXPECT_GT(DemandFor({206_mm, {}, {}}, past, CrMo80()).lines_a_year, 0);  // 60 + 144 + 2 = 206
  EXPECT_EQ(DemandFor({{206 * kNmPerMm - 1}, {}, {}}, past, CrMo80()).lines_a_year, 0);
  EXPECT_EQ(DemandFor({60_mm, {}, {}}, past, CrMo80()).lines_a_year, 0);
}

TEST(DropDemand, OfOneHeatLinesNeedsAllOfTheLine) {
  Past past = SteadyPast(50_mm, 3, 30);
  for (PastLine& line : past.lines) line.one_heat = true;
  EXPECT_EQ(DemandFor({206_mm, {}, {}}, past, CrMo80()).lines_a_year, 0);  // gives 2 of 3
  EXPECT_GT(DemandFor({216_mm, {}, {}}, past, CrMo80()).lines_a_year, 0);  // 60 + 3 x 52
}

TEST(DropDemand, AsksForPapersAndOwner) {
  Past past = SteadyPast(50_mm, 3, 30);
  for (PastLine& line : past.lines) line.papers = PaperType::Type31;
  EXPECT_EQ(DemandFor({206_mm, PaperType::Type22, {}}, past, CrMo80()).lines_a_year, 0);
  EXPECT_GT(DemandFor({206_mm, PaperType::Type31, {}}, past, CrMo80()).lines_a_year, 0);
  EXPECT_GT(DemandFor({206_mm, PaperType::Type32, {}}, past, CrMo80()).lines_a_year, 0);
  EXPECT_EQ(DemandFor({206_mm, PaperType::Type31, "Ister Marine"}, past, CrMo80()).lines_a_year, 0);
}

TEST(DropDemand, CountsTheDropsThatGoFirst) {
  Past past = SteadyPast(50_mm, 1, 30);
  past.rack = {{111_mm, {}, {}}, {150_mm, {}, {}}, {112_mm, {}, {}}, {206_mm, {}, {}}, {207_mm, {}, {}}};
  const Demand d = DemandFor({206_mm, {}, {}}, past, CrMo80());
  EXPECT_NEAR(d.ahead, 3, 1e-12);  // 111 is too short for 60 + 52, 207 is longer
  past.rack.push_back({150_mm, {}, "Ister Marine"});
  EXPECT_NEAR(DemandFor({206_mm, {}, {}}, past, CrMo80()).ahead, 3, 1e-12);
}

TEST(DropWorth, RefusesWhatMakesNoSense) {
  WorthRules rules = CrMo80();
  EXPECT_THROW(WorthOf(0_mm, Demand{}, rules), std::invalid_argument);
  rules.shelf_per_year = {-1};
  EXPECT_THROW(WorthOf(100_mm, Demand{}, rules), std::invalid_argument);
  rules = CrMo80();
  rules.half_life_days = 0;
  EXPECT_THROW(WorthOf(100_mm, Demand{}, rules), std::invalid_argument);
  Past past = SteadyPast(50_mm, 1, 30);
  past.first_day = past.today;
  past.lines = {{past.today - 1, 50_mm, 1, {}, {}, false}};
  EXPECT_NO_THROW(DemandFor({206_mm, {}, {}}, past, CrMo80()));  // no line is within the days seen
}

TEST(ExpMinus, AgreesWithTheLibrary) {
  for (double x = 0; x < 50; x += 0.0137) EXPECT_NEAR(ExpMinus(x) / std::exp(-x), 1, 1e-13) << x;
  EXPECT_EQ(ExpMinus(1e9), 0);
}

// One piece of 95 of C45E round 60 (22.195 kg/m, 1.20 new and 0.22 scrap a kg), kerf 2: what each of three sources loses and costs to
// fetch. A 2600 by crane (4.00) leaves 2503, wanted as before; B 172 and C 160 by hand (0.80) leave scrap. Chance times share: A 0.95,
// B 0.40, C 0.37; worked by hand, common practice, no source.
TEST(DropWorth, DoesNotSpendTheLongDropOnOneShortPiece) {
  WorthRules rules;
  rules.replace_per_metre = {2'663'400'000};
  rules.scrap_per_metre = {488'290'000};
  const auto worth = [&](Length drop, double chance_times_share) {
    return WorthOf(drop, Demand{1e9, 0, chance_times_share}, rules, true).value.micro;
  };
  const auto scrap = [&](Length rest) { return WorthOf(rest, Demand{}, rules, true).value.micro; };
  const auto cents = [](std::int64_t micro) { return Cents({micro}).cents; };
  EXPECT_EQ(cents(worth(160_mm, 0.37)), 207);
  EXPECT_EQ(cents(scrap(63_mm)), 31);
  const std::int64_t a = cents(worth(2600_mm, 0.95) - worth(2503_mm, 0.95) + 400'000'000),
                     b = cents(worth(172_mm, 0.40) - scrap(75_mm) + 80'000'000), c = cents(worth(160_mm, 0.37) - scrap(63_mm) + 80'000'000);
  EXPECT_EQ(c, 256);
  EXPECT_EQ(b, 277);
  EXPECT_EQ(a, 648);
  EXPECT_EQ(b - c, 21) << "B is 0.21 dearer";
}

TEST(Cents, RoundsHalvesAway) {
  EXPECT_EQ(Cents({1'499'999}).cents, 1);
  EXPECT_EQ(Cents({1'500'000}).cents, 2);
  EXPECT_EQ(Cents({-1'500'000}).cents, -2);
}

}  // namespace
}  // namespace heatkeep::year
