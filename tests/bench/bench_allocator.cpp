// Figures, not a test: how long the allocator takes on published constructions and on seeded stockrooms, and how near
// its bound it comes. Usage: bench_allocator [name part]
//   uniform  items of 20..100 in 150 (construction of Falkenauer 1996, from memory)
//   triplet  three items a bin of 1000 that fill it exactly, 250..500 (the same source, from memory)
//   hard     nearly all different items of 1..800 in 1000 (construction of Schwerin, Waescher; Scholl, from memory)
//   wide     50..500 items of 1..n/2 in 100..150, 1000, 100 000 (from memory)
//   stock    one group: drops of 300..2500 mm, lines at 0.1 mm, four bar lengths (our own)
#include <chrono>
#include <cstdio>
#include <map>
#include <random>
#include <string>

#include "client/allocator/allocate.h"

namespace {

using namespace heatkeep;
using namespace heatkeep::allocator;

class Dice {
 public:
  explicit Dice(std::uint64_t seed) : engine_(seed) {}
  int Between(int a, int b) { return a + static_cast<int>(engine_() % static_cast<std::uint64_t>(b - a + 1)); }

 private:
  std::mt19937_64 engine_;
};

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

Problem Stockroom(std::uint64_t seed, int drops, int lines, bool bars) {
  Dice dice(seed);
  Problem problem;
  problem.rules = {{1'600'000}, {5'000'000}, {80'000'000}, {300'000'000}};
  for (int i = 0; i < drops; ++i) {
    Piece p;
    p.tag = "D" + std::to_string(i);
    p.kind = PieceKind::Drop;
    p.square_ends = 1;
    p.length = {dice.Between(300, 2500) * kNmPerMm};
    problem.pieces.push_back(p);
  }
  for (const int mm : {3000, 4000, 6000, 6100}) {
    if (!bars && mm != 6000) continue;
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
    line.nominal = {dice.Between(400, 14000) * 100'000LL};
    line.quantity = dice.Between(1, 20);
    problem.lines.push_back(line);
  }
  return problem;
}

Problem ManyGroups(std::uint64_t seed, int groups, int lines) {
  Problem all;
  for (int g = 0; g < groups; ++g) {
    Problem one = Stockroom(seed + static_cast<std::uint64_t>(g), 10, lines / groups, true);
    all.rules = one.rules;
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

void Run(const std::string& name, const std::string& filter, Problem problem, double seconds) {
  if (name.find(filter) == std::string::npos) return;
  problem.limits.seconds = seconds;
  problem.limits.threads = 2;
  const Plan plan = Allocate(problem);
  std::printf("%-26s %7.2f s  unmet %d  bars %d  pulled %d", name.c_str(), plan.seconds, plan.value.unmet_pieces,
              plan.value.bars_opened, plan.value.pieces_pulled);
  for (const Key key : KeysOf(problem.aim)) {
    if (key == Key::Unmet || key == Key::Layouts || key == Key::PiecesPulled) continue;
    const auto value = static_cast<double>(FigureOf(plan.value, key));
    const auto bound = plan.bound.figures.find(key);
    std::printf("  %s %.6g", NameOf(key).c_str(), key == Key::BarsOpened ? value : value / 1e9);
    if (bound == plan.bound.figures.end()) continue;
    const double gap = value > 0 ? 100 * (value - static_cast<double>(bound->second)) / value : 0;
    std::printf(" (gap %.4f %%)", gap);
  }
  std::printf("  proved %zu keys\n", plan.proved_keys.size());
  std::fflush(stdout);
}

}  // namespace

int main(int argc, char** argv) {
  const std::string filter = argc > 1 ? argv[1] : "";
  for (std::uint64_t seed = 1; seed <= 3; ++seed) {
    const std::string s = " #" + std::to_string(seed);
    for (const int n : {120, 250, 500, 1000}) Run("uniform " + std::to_string(n) + s, filter, Uniform(seed, n, 150, 20, 100), 10);
    for (const int bins : {20, 40, 83, 167}) Run("triplet " + std::to_string(3 * bins) + s, filter, Triplets(seed, bins), 10);
    Run("hard 200" + s, filter, Uniform(seed, 200, 1000, 1, 800), 10);
    Run("wide 500 in 120" + s, filter, Uniform(seed, 500, 120, 1, 60), 10);
    Run("wide 500 in 1000" + s, filter, Uniform(seed, 500, 1000, 1, 500), 10);
    Run("wide 200 in 100000" + s, filter, Uniform(seed, 200, 100000, 1000, 70000), 10);
    Run("stock 50 x 20" + s, filter, Stockroom(seed, 50, 20, true), 2);
    Run("stock 300 x 60" + s, filter, Stockroom(seed, 300, 60, true), 10);
  }
  Run("stock 2000 x 200", filter, Stockroom(7, 2000, 200, true), 30);
  Run("stock 10000 x 500", filter, Stockroom(8, 10000, 500, true), 60);
  Run("groups 60 x 25", filter, ManyGroups(9, 60, 1500), 60);
  return 0;
}
