// Figures, not a test: how long it takes to mend a plan after one piece went wrong, to make the plan by hand, to say why
// each piece was taken, and to find what to buy. Seeded stockrooms of our own: drops of 300..2500 mm in three heats,
// lines at 0.1 mm, a quarter of them of one heat, bars of 3 and 6 m.
// Usage: bench_replan [lines] [drops]
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <random>
#include <string>

#include "client/allocator/allocate.h"
#include "client/allocator/explain.h"
#include "client/allocator/fewer_layouts.h"
#include "client/allocator/plain_choice.h"
#include "client/allocator/purchase.h"
#include "client/allocator/replan.h"

namespace {

using namespace heatkeep;
using namespace heatkeep::allocator;

Problem Stockroom(std::uint64_t seed, int lines, int drops) {
  std::mt19937_64 engine(seed);
  const auto between = [&](int a, int b) { return a + static_cast<int>(engine() % static_cast<std::uint64_t>(b - a + 1)); };
  Problem problem;
  problem.rules = {{2 * kNmPerMm}, {10 * kNmPerMm}, {60 * kNmPerMm}, {300 * kNmPerMm}};
  const auto piece = [&](const std::string& tag, PieceKind kind, std::int64_t mm, int count) {
    Piece p;
    p.tag = tag;
    p.kind = kind;
    p.section = "round 80";
    p.grade = "42CrMo4";
    p.heat = "H" + std::to_string(between(1, 3));
    p.length = {mm * kNmPerMm};
    p.square_ends = kind == PieceKind::Drop ? 1 : 0;
    p.count = count;
    p.costs.per_metre = {6'313'000'000};
    p.costs.scrap_per_metre = {986'000'000};
    problem.pieces.push_back(p);
  };
  for (int i = 0; i < drops; ++i) piece("D" + std::to_string(i + 1), PieceKind::Drop, between(300, 2500), 1);
  for (int i = 0; i < 6; ++i) piece("B" + std::to_string(i + 1), PieceKind::Bar, i % 2 == 0 ? 3000 : 6000, 20);
  for (int i = 0; i < lines; ++i) {
    Line line;
    line.order = "O" + std::to_string(i / 3 + 1);
    line.line = std::to_string(i + 1);
    line.section = "round 80";
    line.grade = "42CrMo4";
    line.nominal = {between(800, 12'000) * (kNmPerMm / 10)};
    line.quantity = between(1, 6);
    if (i % 4 == 0) line.one_heat = line.line;
    problem.lines.push_back(line);
  }
  return problem;
}

template <class Work>
double Seconds(const Work& work) {
  const auto begin = std::chrono::steady_clock::now();
  work();
  return std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
}

}  // namespace

int main(int argc, char** argv) {
  const int lines = argc > 1 ? std::atoi(argv[1]) : 50, drops = argc > 2 ? std::atoi(argv[2]) : 80;
  std::printf(
      "%d lines, %d drops\nseed  plan s  by hand s  fewer set-ups s (layouts)  why s  replan s: missing  shorter  rejected (kept of)  buy s\n",
      lines, drops);
  for (std::uint64_t seed = 1; seed <= 5; ++seed) {
    Problem problem = Stockroom(seed, lines, drops);
    problem.limits.seconds = 5;
    Plan plan;
    const double planning = Seconds([&] { plan = Allocate(problem); });
    const double by_hand = Seconds([&] { PlanByHand(problem); });
    const int before = plan.value.layouts;
    const double fewer = Seconds([&] { plan = WithFewerLayouts(problem, plan); });
    const double why = Seconds([&] {
      Explanation explanation(problem, plan);
      for (std::size_t i = 0; i < plan.layouts.size(); ++i) explanation.Why(i);
    });
    std::vector<bool> fixed(plan.layouts.size(), false);
    for (std::size_t i = 0; i < 3 && i < fixed.size(); ++i) fixed[i] = true;
    const Layout& hit = plan.layouts[plan.layouts.size() / 2];
    Change missing, shorter, rejected;
    missing.piece = shorter.piece = hit.piece;
    shorter.what = Mishap::Shorter;
    shorter.measured = {problem.pieces[static_cast<std::size_t>(hit.piece)].length.nm - 100 * kNmPerMm};
    rejected.what = Mishap::Rejected;
    rejected.line = hit.cuts.front().line;
    problem.limits.seconds = 1;
    double mending[3];
    int kept = 0, pieces = 0;
    const Change all[] = {missing, shorter, rejected};
    for (int i = 0; i < 3; ++i)
      mending[i] = Seconds([&] {
        const Replanned r = Replan(problem, plan, fixed, {all[i]});
        kept = r.kept;
        pieces = r.plan.value.pieces_pulled;
      });
    Problem empty = problem;
    empty.pieces.clear();
    const Plan all_short = Allocate(empty);
    const double buying = Seconds([&] { WhatToBuy(empty, all_short, MillLengths()); });
    std::printf("%4d  %6.2f  %9.4f  %6.3f (%d -> %d)  %12.4f  %8.3f  %8.3f  %8.3f (%d of %d)  %5.2f\n", static_cast<int>(seed), planning,
                by_hand, fewer, before, plan.value.layouts, why, mending[0], mending[1], mending[2], kept, pieces, buying);
  }
}
