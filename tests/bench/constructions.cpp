#include "tests/bench/constructions.h"

#include <algorithm>
#include <map>
#include <random>

namespace heatkeep::bench {

using namespace heatkeep::allocator;

namespace {

class Dice {
 public:
  explicit Dice(std::uint64_t seed) : engine_(seed) {}
  int Between(int a, int b) { return a + static_cast<int>(engine_() % static_cast<std::uint64_t>(b - a + 1)); }

 private:
  std::mt19937_64 engine_;
};

class Lehmer {
 public:
  explicit Lehmer(std::int64_t seed) : state_(seed) {}
  double Unit() {
    state_ = 16807 * state_ % 2147483647;
    return static_cast<double>(state_) / 2147483647.0;
  }

 private:
  std::int64_t state_;
};

}  // namespace

Problem SingleLength(int capacity, const std::vector<int>& items) {
  Problem problem;
  problem.aim = Aim::FewestBars;
  Piece bar;
  bar.tag = "S";
  bar.length = {capacity * kNmPerMm};
  bar.count = std::nullopt;
  problem.pieces.push_back(bar);
  std::map<int, int> demand;
  for (int item : items) ++demand[item];
  for (const auto& [length, quantity] : demand) {
    Line line;
    line.order = "O";
    line.line = std::to_string(length);
    line.nominal = {length * kNmPerMm};
    line.quantity = quantity;
    problem.lines.push_back(line);
  }
  return problem;
}

Problem Uniform(std::uint64_t seed, int n, int capacity, int least, int most) {
  Dice dice(seed);
  std::vector<int> items;
  for (int i = 0; i < n; ++i) items.push_back(dice.Between(least, most));
  return SingleLength(capacity, items);
}

Problem Triplets(std::uint64_t seed, int bins) {
  Dice dice(seed);
  std::vector<int> items;
  for (int i = 0; i < bins; ++i) {
    const int a = dice.Between(380, 490), b = dice.Between(250, (1000 - a) / 2);
    items.insert(items.end(), {a, b, 1000 - a - b});
  }
  return SingleLength(1000, items);
}

Problem AroundMean(std::uint64_t seed, int n, int capacity, int share, int percent) {
  const int mean = capacity / share, delta = mean * percent / 100;
  return Uniform(seed, n, capacity, mean - delta, mean + delta);
}

Problem FullBins(std::uint64_t seed, int bins, int capacity) {
  Dice dice(seed);
  std::vector<int> items;
  for (int i = 0; i < bins; ++i) {
    const int a = dice.Between(capacity / 3, capacity / 2), b = dice.Between((capacity - a) * 2 / 5, (capacity - a) / 2);
    items.insert(items.end(), {a, b, capacity - a - b});
  }
  return SingleLength(capacity, items);
}

Problem CutGen1(std::int64_t seed, int kinds, int capacity, double v1, double v2, int average_demand) {
  Lehmer random(seed);
  std::vector<int> lengths;
  for (int i = 0; i < kinds; ++i) lengths.push_back(static_cast<int>((v1 + (v2 - v1) * random.Unit()) * capacity + random.Unit()));
  std::vector<double> shares;
  double sum = 0;
  for (int i = 0; i < kinds; ++i) {
    shares.push_back(random.Unit());
    sum += shares.back();
  }
  int left = kinds * average_demand;
  std::vector<int> items;
  for (int i = 0; i < kinds; ++i) {
    const int share = static_cast<int>(shares[static_cast<std::size_t>(i)] / sum * kinds * average_demand + 0.5);
    const int n = i + 1 < kinds ? std::max(1, share) : std::max(1, left);
    left -= n;
    items.insert(items.end(), static_cast<std::size_t>(n), std::clamp(lengths[static_cast<std::size_t>(i)], 1, capacity));
  }
  return SingleLength(capacity, items);
}

Problem Stockroom(std::uint64_t seed, int drops, int lines, const Rack& rack) {
  Dice dice(seed);
  Problem problem;
  const Length kerf{dice.Between(15, 30) * 100'000LL}, grip{dice.Between(60, 120) * kNmPerMm};
  problem.rules = {kerf, {5 * kNmPerMm}, grip, {300 * kNmPerMm}};
  for (int i = 0; i < drops; ++i) {
    Piece p;
    p.tag = "D" + std::to_string(i);
    p.kind = PieceKind::Drop;
    p.square_ends = 1;
    p.length = {dice.Between(3000, rack.longest_drop_mm * 10) * 100'000LL};
    problem.pieces.push_back(p);
  }
  for (const int mm : rack.bars_mm) {
    Piece p;
    p.tag = "B" + std::to_string(mm);
    p.length = {mm * kNmPerMm};
    p.count = std::nullopt;
    problem.pieces.push_back(p);
  }
  for (int i = 0; i < lines; ++i) {
    Line line;
    line.order = "O" + std::to_string(i / 5);
    line.line = std::to_string(i);
    line.nominal = {dice.Between(200, 25000) * 100'000LL};
    line.quantity = dice.Between(1, 60);
    problem.lines.push_back(line);
  }
  return problem;
}

Problem ManyGroups(std::uint64_t seed, int groups, int lines) {
  Problem all;
  for (int g = 0; g < groups; ++g) {
    Problem one = Stockroom(seed + static_cast<std::uint64_t>(g), 10, lines / groups, {});
    all.exceptions.push_back({"S" + std::to_string(g), "", one.rules});
    for (Piece& p : one.pieces) {
      p.section = "S" + std::to_string(g);
      all.pieces.push_back(p);
    }
    for (Line& l : one.lines) {
      l.section = "S" + std::to_string(g);
      all.lines.push_back(l);
    }
  }
  return all;
}

}  // namespace heatkeep::bench
