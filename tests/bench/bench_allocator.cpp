// Figures, not a test: how long the allocator takes and how near its bound it comes, by class (constructions.h).
// Usage: bench_allocator [name part [seeds]]; a class whose name contains the part is run.
// One thread, except the sixty groups (two). Proved: the aim's leading key after unmet. CPU is of the whole process.
#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <functional>
#include <string>
#include <vector>

#include "client/allocator/allocate.h"
#include "tests/bench/constructions.h"

namespace {

using namespace heatkeep;
using namespace heatkeep::allocator;
using namespace heatkeep::bench;

struct Class {
  std::string name;
  double seconds;
  int count, threads;
  std::function<Problem(int)> make;
  bool peer = false;
};

double GapPercent(const Plan& plan, Key key) {
  const auto bound = plan.bound.figures.find(key);
  const auto value = static_cast<double>(FigureOf(plan.value, key));
  if (bound == plan.bound.figures.end()) return 100;
  return value > 0 ? 100 * (value - static_cast<double>(bound->second)) / value : 0;
}

double Processor() { return static_cast<double>(std::clock()) / CLOCKS_PER_SEC; }

void Run(const Class& c) {
  std::vector<double> wall, first;
  double cpu = 0, gap = 0, worst = 0, late = 0;
  int proved = 0, peer_proved = 0, peer_worse = 0;
  double peer_seconds = 0;
  for (int seed = 1; seed <= c.count; ++seed) {
    Problem problem = c.make(seed);
    problem.limits.seconds = c.seconds;
    problem.limits.threads = c.threads;
    const double begin = Processor();
    timespec from{}, now{};
    clock_gettime(CLOCK_MONOTONIC, &from);
    double first_plan = -1;
    const Plan plan = Allocate(problem, {}, [&](const Value& value, const Bound&) {
      if (first_plan >= 0 || value.pieces_pulled == 0) return;
      clock_gettime(CLOCK_MONOTONIC, &now);
      first_plan = static_cast<double>(now.tv_sec - from.tv_sec) + static_cast<double>(now.tv_nsec - from.tv_nsec) / 1e9;
    });
    cpu += Processor() - begin;
    wall.push_back(plan.seconds);
    first.push_back(first_plan);
    proved += plan.proved ? 1 : 0;
    const std::vector<Key> keys = KeysOf(problem.aim);
    const double g = GapPercent(plan, keys[1]);
    gap += g / c.count;
    worst = std::max(worst, g);
    if (plan.proved) late = std::max(late, GapPercent(plan, Key::LostWorth));
    if (c.peer) {
      const Peer peer = CompactModel(problem, plan.value.bars_opened, c.seconds);
      peer_proved += peer.proved ? 1 : 0;
      peer_worse += peer.bars < 0 || peer.bars > plan.value.bars_opened ? 1 : 0;
      peer_seconds += peer.seconds / c.count;
    }
  }
  std::sort(wall.begin(), wall.end());
  double mean = 0;
  for (double s : wall) mean += s / c.count;
  std::printf("| %-24s | %4d | %4d | %7.3f | %7.3f | %7.3f | %7.3f | %7.4f | %7.4f | %7.4f | %5.3f |", c.name.c_str(), c.count, proved,
              mean, wall[wall.size() / 2], wall.back(), cpu / c.count, gap, worst, late, *std::max_element(first.begin(), first.end()));
  if (c.peer) std::printf(" %d proved, %d without a plan as good, mean %.2f s |", peer_proved, peer_worse, peer_seconds);
  std::printf("\n");
  std::fflush(stdout);
}

std::vector<Class> Classes() {
  const auto seed = [](int n) { return static_cast<std::uint64_t>(n); };
  std::vector<Class> classes;
  for (const int n : {120, 250, 500, 1000})
    classes.push_back({"uniform " + std::to_string(n), 10, 20, 1, [=](int s) { return Uniform(seed(s), n, 150, 20, 100); }});
  for (const int bins : {20, 40, 83, 167})
    classes.push_back({"triplet " + std::to_string(3 * bins), 10, 20, 1, [=](int s) { return Triplets(seed(s), bins); }});
  for (const int n : {50, 200, 500})
    for (const int capacity : {100, 150, 1000})
      classes.push_back({"wide " + std::to_string(n) + " in " + std::to_string(capacity), 10, 10, 1,
                         [=](int s) { return Uniform(seed(s), n, capacity, 1, capacity * (s % 2 == 0 ? 5 : 7) / 10); }});
  for (const int n : {50, 200, 500})
    classes.push_back({"wide " + std::to_string(n) + " in 100000", 10, 10, 1,
                       [=](int s) { return Uniform(seed(s), n, 100000, 1000, s % 2 == 0 ? 50000 : 70000); }});
  for (const int n : {160, 180, 200})
    classes.push_back({"hard " + std::to_string(n), 10, 10, 1, [=](int s) { return Uniform(seed(s), n, 1000, 1, 800); }});
  // Seeds met among the first 6000 of which quick ways leave a bin too many.
  static const int hard_seeds[] = {64, 853, 1750, 2311, 2635, 3884, 4227, 4914, 5098};
  classes.push_back({"chosen hard 180", 10, 9, 1, [=](int s) { return Uniform(seed(hard_seeds[s - 1]), 180, 1000, 1, 800); }});
  for (const int n : {50, 100, 200, 500})
    classes.push_back({"set 1 of " + std::to_string(n), 10, 90, 1, [=](int s) {
                         const int capacities[] = {100, 120, 150}, least[] = {1, 20, 30};
                         return Uniform(seed(s), n, capacities[s % 3], least[s / 3 % 3], 100);
                       }});
  for (const int n : {50, 100, 200, 500})
    classes.push_back({"set 2 of " + std::to_string(n), 10, 120, 1, [=](int s) {
                         const int shares[] = {3, 5, 7, 9}, percents[] = {20, 50, 90};
                         return AroundMean(seed(s), n, 1000, shares[s % 4], percents[s / 4 % 3]);
                       }});
  classes.push_back({"set 3", 10, 10, 1, [=](int s) { return Uniform(seed(s), 200, 100000, 20000, 35000); }});
  for (const int n : {100, 120})
    classes.push_back({"narrow " + std::to_string(n), 10, 20, 1, [=](int s) { return Uniform(seed(s), n, 1000, 150, 200); }});
  for (const int n : {60, 120, 240})
    classes.push_back({"gau " + std::to_string(n) + " in 10000", 10, 10, 1, [=](int s) { return Uniform(seed(s), n, 10000, 2, 7300); }});
  classes.push_back({"full 201 in 2500", 10, 5, 1, [=](int s) { return FullBins(seed(s), 67, 2500); }});
  classes.push_back({"full 402 in 10000", 10, 3, 1, [=](int s) { return FullBins(seed(s), 134, 10000); }});
  for (const int kinds : {10, 20, 50})
    for (const double v2 : {0.25, 0.5, 1.0})
      classes.push_back({"cutgen " + std::to_string(kinds) + " to " + std::to_string(v2).substr(0, 4), 10, 10, 1,
                         [=](int s) { return CutGen1(1994 + s, kinds, 1000, 0.01, v2, 10); }});
  classes.push_back({"small 25 with peer", 5, 5, 1, [=](int s) { return Uniform(seed(s), 25, 150, 20, 100); }, true});
  classes.push_back({"stock 50 x 20", 2, 10, 1, [=](int s) { return Stockroom(seed(s), 50, 20, {}); }});
  classes.push_back({"stock 300 x 60", 10, 5, 1, [=](int s) { return Stockroom(seed(s), 300, 60, {}); }});
  classes.push_back({"stock 2000 x 200", 30, 2, 1, [=](int s) { return Stockroom(seed(s), 2000, 200, {}); }});
  // Drops enough for everything: about 31 km of them for 19 km of cuts.
  classes.push_back({"stock 10000 x 500", 60, 1, 1, [=](int s) { return Stockroom(seed(s), 10000, 500, {6000}); }});
  classes.push_back({"groups 60 x 25", 60, 1, 2, [=](int s) { return ManyGroups(seed(s), 60, 1500); }});
  return classes;
}

}  // namespace

int main(int argc, char** argv) {
  const std::string filter = argc > 1 ? argv[1] : "";
  const int seeds = argc > 2 ? std::atoi(argv[2]) : 0;
  std::printf(
      "| class | count | proved | mean s | median s | max s | CPU s | mean gap %% | max gap %% | lost worth gap %% | first plan s | CBC on the compact model |\n");
  std::printf("|---|---|---|---|---|---|---|---|---|---|---|---|\n");
  for (Class& c : Classes()) {
    if (c.name.find(filter) == std::string::npos) continue;
    if (seeds > 0) c.count = std::min(c.count, seeds);
    Run(c);
  }
  return 0;
}
