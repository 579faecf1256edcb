// The textbook problem: every bound and every reduction against all ways to pack a few cuts.
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <random>

#include "client/allocator/bins_bound.h"
#include "client/allocator/bins_branch.h"
#include "client/allocator/bins_layout.h"
#include "client/allocator/bins_relaxation.h"
#include "client/allocator/bins_search.h"

namespace heatkeep::allocator::test {
namespace {

class Dice {
 public:
  explicit Dice(std::uint64_t seed) : engine_(seed) {}
  int Between(int a, int b) { return a + static_cast<int>(engine_() % static_cast<std::uint64_t>(b - a + 1)); }

 private:
  std::mt19937_64 engine_;
};

Bins Made(std::int64_t capacity, const std::vector<int>& cuts) {
  std::map<int, int, std::greater<>> demand;
  for (int cut : cuts) ++demand[cut];
  Bins bins;
  bins.capacity = capacity;
  for (const auto& [size, count] : demand) {
    bins.size.push_back(size);
    bins.demand.push_back(count);
  }
  return bins;
}

// Up to 11 cuts; every other time full bins cut up, so that there is no room to spare.
Bins Small(std::uint64_t seed) {
  Dice dice(seed);
  const int capacity = dice.Between(8, 60);
  std::vector<int> cuts;
  if (seed % 2 == 0) {
    const int least = dice.Between(1, capacity / 3), most = dice.Between(capacity / 3, capacity);
    for (int n = dice.Between(1, 11); n > 0; --n) cuts.push_back(dice.Between(least, most));
  } else {
    for (int bin = 0; bin < 3; ++bin) {
      int left = capacity;
      for (int n = 0; n < 2 && left > 1; ++n) {
        cuts.push_back(dice.Between(1, left - 1));
        left -= cuts.back();
      }
      cuts.push_back(left);
    }
  }
  return Made(capacity, cuts);
}

// The same in a unit so small that there is no table over the capacity, every third time.
Bins Finer(std::uint64_t seed) {
  Bins bins = Small(seed);
  if (seed % 3 != 0) return bins;
  bins.capacity *= 1'000'000;
  for (std::int64_t& size : bins.size) size *= 1'000'000;
  return bins;
}

// The fewest bins by looking at every set of cuts: least[set] = fewest bins, then the least filled last one.
std::int64_t Fewest(const Bins& bins) {
  std::vector<std::int64_t> cuts;
  for (std::size_t i = 0; i < bins.size.size(); ++i)
    for (int n = 0; n < bins.demand[i]; ++n) cuts.push_back(bins.size[i]);
  std::vector<std::pair<std::int64_t, std::int64_t>> least(std::size_t{1} << cuts.size(), {1'000'000, 0});
  least[0] = {0, bins.capacity};
  for (std::size_t set = 1; set < least.size(); ++set)
    for (std::size_t i = 0; i < cuts.size(); ++i) {
      if ((set >> i & 1) == 0) continue;
      auto [count, filled] = least[set ^ (std::size_t{1} << i)];
      if (filled + cuts[i] > bins.capacity) ++count, filled = 0;
      least[set] = std::min(least[set], {count, filled + cuts[i]});
    }
  return least.back().first;
}

void ExpectPacked(const Bins& bins, const Packing& packing, std::uint64_t seed) {
  std::vector<int> left = bins.demand;
  for (const auto& [fill, times] : packing) {
    std::int64_t size = 0;
    for (const auto& [item, count] : fill) {
      const auto i = static_cast<std::size_t>(item);
      size += bins.size[i] * count;
      left[i] -= count * times;
    }
    ASSERT_LE(size, bins.capacity) << "seed " << seed;
  }
  ASSERT_TRUE(std::all_of(left.begin(), left.end(), [](int n) { return n <= 0; })) << "seed " << seed;
}

TEST(Bins, QuickBoundsAreNeverAboveTheFewest) {
  int met = 0;
  for (std::uint64_t seed = 1; seed <= 4000; ++seed) {
    const Bins bins = Small(seed);
    const std::int64_t bound = LeastBins(bins), fewest = Fewest(bins);
    ASSERT_LE(bound, fewest) << "seed " << seed;
    met += bound == fewest ? 1 : 0;
  }
  EXPECT_GT(met, 3500);
}

TEST(Bins, WhatIsTakenAsSureCostsNoBin) {
  int taken = 0;
  for (std::uint64_t seed = 1; seed <= 4000; ++seed) {
    Bins bins = Small(seed);
    const std::int64_t fewest = Fewest(bins);
    const Packing sure = TakeSure(bins);
    ASSERT_EQ(Fewest(bins) + BinsIn(sure), fewest) << "seed " << seed;
    taken += sure.empty() ? 0 : 1;
  }
  EXPECT_GT(taken, 1000);
}

TEST(Bins, TheRelaxationIsNeverAboveTheFewest) {
  for (std::uint64_t seed = 1; seed <= 2000; ++seed) {
    const Bins bins = Finer(seed);
    const BinsControl control;
    BinsRelaxation relaxation(bins, {}, control);
    ASSERT_LE(relaxation.Solve(bins.demand, 1000, 1000), Fewest(bins)) << "seed " << seed;
    std::vector<int> rest = bins.demand;  // and of a part of the demand
    rest.front() = 0;
    rest.back() /= 2;
    ASSERT_LE(relaxation.Solve(rest, 1000, 1000), Fewest({bins.capacity, bins.size, rest})) << "seed " << seed;
  }
}

TEST(Bins, TryingAllThereIsAnswersRightBothWays) {
  for (std::uint64_t seed = 1; seed <= 2000; ++seed) {
    const Bins bins = Finer(seed);
    const std::int64_t fewest = Fewest(bins);
    const BinsControl control;
    BinsRelaxation relaxation(bins, {}, control);
    Packing found;
    BinsBranch enough(bins, relaxation, control, 100'000);
    ASSERT_EQ(enough.Within(fewest, found), BinsBranch::Answer::Yes) << "seed " << seed;
    ExpectPacked(bins, found, seed);
    ASSERT_LE(BinsIn(found), fewest) << "seed " << seed;
    BinsBranch too_few(bins, relaxation, control, 100'000);
    ASSERT_EQ(too_few.Within(fewest - 1, found), BinsBranch::Answer::No) << "seed " << seed;
  }
}

TEST(Bins, TheSearchFindsAndProvesTheFewest) {
  for (std::uint64_t seed = 1; seed <= 3000; ++seed) {
    const Bins bins = Finer(seed);
    const BinsAnswer answer = FewestBins(bins, seed, 1000, {});
    ExpectPacked(bins, answer.packing, seed);
    ASSERT_EQ(BinsIn(answer.packing), Fewest(bins)) << "seed " << seed;
    ASSERT_EQ(answer.bound, BinsIn(answer.packing)) << "seed " << seed;
  }
}

// Full bins cut up at random: their number is the fewest, with nothing to spare. A bound above it would be wrong.
TEST(Bins, FullBinsCutUpAreFoundAgain) {
  for (std::uint64_t seed = 1; seed <= 30; ++seed) {
    Dice dice(seed);
    const int capacity = seed % 3 == 0 ? 10'000 : 1000;
    std::vector<int> cuts;
    for (int bin = 0; bin < 12; ++bin) {
      const int a = dice.Between(capacity / 3, capacity * 6 / 10), b = dice.Between((capacity - a) / 5, (capacity - a) / 2);
      cuts.insert(cuts.end(), {a, b, capacity - a - b});
    }
    const Bins bins = Made(capacity, cuts);
    const BinsAnswer answer = FewestBins(bins, seed, 1000, {});
    ASSERT_EQ(BinsIn(answer.packing), 12) << "seed " << seed;
    ASSERT_EQ(answer.bound, 12) << "seed " << seed;
  }
}

// 259 of 132 are filled by 2 of 44, 3 of 33 and 6 of 12: 1.96 bins by the relaxation, yet no two bins hold them all
// (an instance without the rounding property, from memory of the literature on it).
TEST(Bins, OneAboveTheRoundedRelaxationIsProved) {
  const BinsAnswer answer = FewestBins({132, {44, 33, 12}, {2, 3, 6}}, 1, 1000, {});
  EXPECT_EQ(BinsIn(answer.packing), 3);
  EXPECT_EQ(answer.bound, 3);
}

TEST(Bins, TheDearestFillIsTheSameByTableAndByList) {
  for (std::uint64_t seed = 1; seed <= 1000; ++seed) {
    Dice dice(seed);
    Bins few = Small(seed), many = few;
    many.capacity *= 1000;  // a table no more
    for (std::int64_t& size : many.size) size *= 1000;
    std::vector<std::int64_t> price;
    for (std::int64_t size : few.size) price.push_back(size * dice.Between(90, 110));
    std::vector<Fill> by_table, by_list;
    const std::int64_t above = dice.Between(0, 100) * few.capacity;
    ASSERT_EQ(DearestFill(few).Find(price, few.demand, above, 5, by_table), DearestFill(many).Find(price, many.demand, above, 5, by_list))
        << "seed " << seed;
    const auto worth = [&](const Fill& fill) {
      std::int64_t sum = 0;
      for (const auto& [item, count] : fill) sum += price[static_cast<std::size_t>(item)] * count;
      return sum;
    };
    ASSERT_EQ(by_table.empty(), by_list.empty()) << "seed " << seed;
    if (!by_table.empty()) { ASSERT_EQ(worth(by_table.front()), worth(by_list.front())) << "seed " << seed; }
  }
}

}  // namespace
}  // namespace heatkeep::allocator::test
