#include "client/year/year.h"

#include <gtest/gtest.h>

#include <set>

namespace heatkeep::year {
namespace {

const ShopSize kSmall{5, 60, 40, 120};

const Shop& SmallShop() {
  static const Shop shop = MakeShop(5, kSmall);
  return shop;
}

YearSettings Settings(int threads = 2) {
  YearSettings settings;
  settings.iterations = 2;
  settings.threads = threads;
  return settings;
}

const YearStart& Start() {
  static const YearStart start(SmallShop(), Settings());
  return start;
}

const YearResult& Lived(Policy policy) {
  static const std::vector<YearResult> all = [] {
    std::vector<YearResult> results;
    for (const Policy p : AllPolicies()) results.push_back(Start().Live(p));
    return results;
  }();
  return all.at(static_cast<std::size_t>(policy));
}

TEST(Shop, AsksForWhatItIsToldTo) {
  int in_year = 0, shortest = 1'000'000, longest = 0, most = 0;
  std::set<std::int64_t> lengths;
  const Shop shop = MakeShop(3, ShopSize{});
  for (const DayLine& line : shop.lines) {
    in_year += line.day >= 0 ? 1 : 0;
    EXPECT_EQ(line.cut.nm % 100'000, 0);
    shortest = std::min(shortest, static_cast<int>(line.cut.nm / kNmPerMm));
    longest = std::max(longest, static_cast<int>(line.cut.nm / kNmPerMm));
    most = std::max(most, line.quantity);
    EXPECT_GE(line.quantity, 1);
    lengths.insert(line.cut.nm);
  }
  EXPECT_EQ(in_year, 2500);
  EXPECT_EQ(shop.lines.size(), 7500U);
  EXPECT_GE(shortest, 20);
  EXPECT_LE(longest, 2500);
  EXPECT_EQ(most, 60);
  EXPECT_LT(lengths.size(), 4000U);  // lengths repeat
  std::set<std::pair<std::string, std::string>> groups;
  for (const Group& g : shop.groups) groups.insert({g.grade, g.section});
  EXPECT_EQ(groups.size(), 60U);
  EXPECT_THROW(MakeShop(1, ShopSize{0, 1, 1, 1}), std::invalid_argument);
}

TEST(Shop, HasTheMassOfItsMetal) {
  // 42CrMo4 round 50: 15.413 kg/m at 7.85 (EN 10060, from memory).
  for (const Group& g : MakeShop(1, kSmall).groups)
    if (g.section == "round 50") { EXPECT_EQ(MassOf(g, {1000 * kNmPerMm}).g, 15'413) << g.grade; }
}

TEST(Year, ClosesItsAccountToTheNanometre) {
  for (const Group& group : SmallShop().groups) {
    GroupRack rack(group);
    const auto of = [&](const DayLine& l) { return &SmallShop().groups[static_cast<std::size_t>(l.group)] == &group; };
    Length asked;
    for (const DayLine& line : SmallShop().lines) {
      if (!of(line)) continue;
      std::vector<int> need(group.bars.size());
      need.back() = 20;
      rack.Receive(need);
      const allocator::Problem problem = rack.ProblemFor({line}, group.rules);
      const allocator::Plan plan = PlanOf(Policy::Plain, problem, 1);
      rack.Apply(problem, plan);
      asked += line.cut * line.quantity;
      const Account& a = rack.account();
      ASSERT_EQ(rack.Start() + a.received, a.delivered + a.kerf + a.trim + a.scrap + rack.BarLength() + rack.DropLength());
      ASSERT_EQ(rack.Unexplained().nm, 0);
    }
    EXPECT_EQ(rack.account().delivered, asked);
    if (!rack.drops().empty()) rack.Clear(0);
    EXPECT_EQ(rack.Unexplained().nm, 0);
  }
}

TEST(Year, DeliversTheSameUnderEveryPolicy) {
  Length asked;
  for (const DayLine& line : SmallShop().lines)
    if (line.day >= 0) asked += line.cut * line.quantity;
  for (const Policy policy : AllPolicies()) {
    const YearResult& year = Lived(policy);
    EXPECT_EQ(year.total.delivered, asked) << NameOf(policy);
    EXPECT_EQ(year.by_clock, 0);
    EXPECT_GT(year.lists, 20);
    ASSERT_EQ(year.days.size(), 40U);
    // Opened bars + drops at the start = delivered + kerf + trim + scrap + drops at the end.
    EXPECT_EQ(year.start.drop_length + year.total.opened,
              year.total.delivered + year.total.kerf + year.total.trim + year.total.scrap + year.days.back().drop_length);
    EXPECT_EQ(year.start.drops + year.total.drops_made - year.total.drops_used - year.total.drops_cleared, year.days.back().drops);
    EXPECT_EQ(year.days.back().bought, year.bought);
  }
}

TEST(Year, BuysMostWithANewBarEveryTime) {
  for (const Policy policy : AllPolicies()) {
    if (policy == Policy::NewBar) continue;
    EXPECT_LT(Lived(policy).bought, Lived(Policy::NewBar).bought) << NameOf(policy);
    EXPECT_LT(Lived(policy).days.back().drops, Lived(Policy::NewBar).days.back().drops) << NameOf(policy);
  }
  EXPECT_EQ(Lived(Policy::NewBar).total.drops_used, 0);
}

TEST(Year, ScrapsLessWhenItLearnsWhatDropsAreWorth) { EXPECT_LT(Lived(Policy::LeastMoney).scrap, Lived(Policy::Plain).scrap); }

TEST(Year, RepeatsOnAnyNumberOfThreads) {
  const YearStart one(SmallShop(), Settings(1));
  for (const Policy policy : {Policy::Plain, Policy::DropsFirst, Policy::LeastMoney}) {
    const YearResult again = one.Live(policy);
    EXPECT_EQ(again.bought, Lived(policy).bought) << NameOf(policy);
    for (std::size_t d = 0; d < again.days.size(); ++d) {
      ASSERT_EQ(again.days[d].drops, Lived(policy).days[d].drops) << NameOf(policy) << " day " << d;
      ASSERT_EQ(again.days[d].drop_length, Lived(policy).days[d].drop_length);
    }
  }
}

TEST(Year, DiffersWithTheSeed) {
  const Shop other = MakeShop(6, kSmall);
  EXPECT_NE(YearStart(other, Settings()).Live(Policy::Plain).bought, Lived(Policy::Plain).bought);
}

TEST(Policy, HasANameThatReadsBack) {
  for (const Policy policy : AllPolicies()) EXPECT_EQ(PolicyNamed(NameOf(policy)), policy);
  EXPECT_THROW(PolicyNamed("best"), std::invalid_argument);
}

}  // namespace
}  // namespace heatkeep::year
