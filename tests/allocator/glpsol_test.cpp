// The number of bars against a general MIP solver (GLPK's glpsol, as a process): an assignment model with one row a
// bar, nothing to do with patterns. The test fails where glpsol is missing.
#include <gtest/gtest.h>

#include <unistd.h>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <random>
#include <sstream>

#include "tests/allocator/problem_maker.h"

namespace heatkeep::allocator::test {
namespace {

// Least number of bars of `stock` for the cuts, each with its kerf, `most` bars being enough.
int BarsByGlpsol(int stock, int kerf, const std::vector<std::pair<int, int>>& demand, int most) {
  const std::filesystem::path folder = std::filesystem::temp_directory_path() / ("heatkeep-glpsol-" + std::to_string(::getpid()));
  std::filesystem::create_directories(folder);
  const std::string model = (folder / "m.lp").string(), answer = (folder / "m.sol").string();
  {
    std::ofstream lp(model);
    lp << "Minimize\n obj:";
    for (int b = 0; b < most; ++b) lp << (b > 0 ? " + " : " ") << "y" << b;
    lp << "\nSubject To\n";
    for (std::size_t i = 0; i < demand.size(); ++i) {
      lp << " d" << i << ":";
      for (int b = 0; b < most; ++b) lp << (b > 0 ? " + " : " ") << "x" << i << "_" << b;
      lp << " >= " << demand[i].second << "\n";
    }
    for (int b = 0; b < most; ++b) {  // the last kerf may run off the end
      lp << " c" << b << ":";
      for (std::size_t i = 0; i < demand.size(); ++i) lp << (i > 0 ? " + " : " ") << demand[i].first + kerf << " x" << i << "_" << b;
      lp << " - " << stock + kerf << " y" << b << " <= 0\n";
      if (b > 0) lp << " s" << b << ": y" << b - 1 << " - y" << b << " >= 0\n";
    }
    lp << "General\n";
    for (std::size_t i = 0; i < demand.size(); ++i)
      for (int b = 0; b < most; ++b) lp << " x" << i << "_" << b << "\n";
    lp << "Binary\n";
    for (int b = 0; b < most; ++b) lp << " y" << b << "\n";
    lp << "End\n";
  }
  const std::string command = "glpsol --lp " + model + " --tmlim 20 -o " + answer + " >/dev/null 2>&1";
  int bars = -1;
  if (std::system(command.c_str()) == 0) {
    std::ifstream in(answer);
    bool optimal = false;
    for (std::string line; std::getline(in, line);) {
      if (line.rfind("Status:", 0) == 0) optimal = line.find("INTEGER OPTIMAL") != std::string::npos;
      if (optimal && line.rfind("Objective:", 0) == 0) {
        std::istringstream words(line.substr(line.find('=') + 1));
        words >> bars;
      }
    }
  }
  std::filesystem::remove_all(folder);
  return bars;
}

TEST(Glpsol, AgreesOnTheNumberOfBars) {
  std::mt19937_64 engine(11);
  const auto between = [&](int a, int b) { return a + static_cast<int>(engine() % static_cast<std::uint64_t>(b - a + 1)); };
  for (int n = 0; n < 12; ++n) {
    const int stock = 3000, kerf = n % 2 == 0 ? 0 : 3;
    std::vector<std::pair<int, int>> demand;
    Problem problem = Textbook(stock, {});
    problem.rules = Rules(kerf, 0, 0, 0);
    for (int i = 0; i < 4; ++i) {
      demand.push_back({between(500, 1700), between(1, 4)});
      problem.lines.push_back(Cuts(std::to_string(i), demand.back().first, demand.back().second));
    }
    const Plan plan = Allocate(problem);
    ASSERT_TRUE(plan.proved);
    const int bars = BarsByGlpsol(stock, kerf, demand, plan.value.bars_opened + 1);
    ASSERT_GE(bars, 0) << "glpsol (package glpk-utils) gave no answer";
    EXPECT_EQ(plan.value.bars_opened, bars) << "case " << n;
  }
}

}  // namespace
}  // namespace heatkeep::allocator::test
