#include <CbcModel.hpp>
#include <CoinPackedMatrix.hpp>
#include <CoinPackedVector.hpp>
#include <OsiClpSolverInterface.hpp>
#include <chrono>
#include <cmath>

#include "tests/bench/constructions.h"

namespace heatkeep::bench {

Peer CompactModel(const allocator::Problem& problem, int enough_bars, double seconds) {
  const auto begin = std::chrono::steady_clock::now();
  const int items = static_cast<int>(problem.lines.size()), bars = enough_bars;
  const auto capacity = static_cast<double>(problem.pieces.at(0).length.nm / kNmPerMm);
  CoinPackedMatrix matrix(true, 0, 0);
  matrix.setDimensions(items + bars, 0);
  std::vector<double> cost, upper;
  for (int b = 0; b < bars; ++b) {
    CoinPackedVector column;
    column.insert(items + b, -capacity);
    matrix.appendCol(column);
    cost.push_back(1);
    upper.push_back(1);
  }
  for (int i = 0; i < items; ++i) {
    const auto length = static_cast<double>(problem.lines[static_cast<std::size_t>(i)].nominal.nm / kNmPerMm);
    for (int b = 0; b < bars; ++b) {
      CoinPackedVector column;
      column.insert(i, 1.0);
      column.insert(items + b, length);
      matrix.appendCol(column);
      cost.push_back(0);
      upper.push_back(std::floor(capacity / length));
    }
  }
  std::vector<double> lower(cost.size(), 0), row_lower, row_upper;
  for (int i = 0; i < items; ++i) {
    row_lower.push_back(problem.lines[static_cast<std::size_t>(i)].quantity);
    row_upper.push_back(COIN_DBL_MAX);
  }
  row_lower.insert(row_lower.end(), static_cast<std::size_t>(bars), -COIN_DBL_MAX);
  row_upper.insert(row_upper.end(), static_cast<std::size_t>(bars), 0.0);
  OsiClpSolverInterface solver;
  solver.messageHandler()->setLogLevel(0);
  solver.loadProblem(matrix, lower.data(), upper.data(), cost.data(), row_lower.data(), row_upper.data());
  for (int j = 0; j < static_cast<int>(cost.size()); ++j) solver.setInteger(j);
  CbcModel given(solver);
  given.setLogLevel(0);
  CbcMain0(given);
  given.setLogLevel(0);
  const std::string limit = std::to_string(seconds);
  const char* arguments[] = {"peer", "-log", "0", "-seconds", limit.c_str(), "-solve", "-quit"};
  CbcMain1(7, arguments, given);
  Peer peer;
  peer.proved = given.isProvenOptimal();
  if (given.bestSolution() != nullptr) peer.bars = static_cast<int>(std::lround(given.getObjValue()));
  peer.seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
  return peer;
}

}  // namespace heatkeep::bench
