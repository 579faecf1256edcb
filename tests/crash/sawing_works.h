// A book of one's own, durable as people run it (fsync on), with a plan of many layouts to be cut: bars of 1 000 mm with
// square ends, each to be cut to 2 x 400 mm with kerfs of 2, which leaves a drop of 196.
#pragma once

#include <gtest/gtest.h>

#include <filesystem>
#include <nlohmann/json.hpp>
#include <random>
#include <set>
#include <string>
#include <vector>

#include "client/book/private_cluster.h"
#include "client/gateway/connection.h"
#include "tests/crash/heatkeep_process.h"

namespace heatkeep {

// HEATKEEP_CRASH_ROUNDS, or `rounds`.
int Rounds(int rounds);

class SawingWorks : public testing::Test {
 protected:
  SawingWorks();
  ~SawingWorks() override;

  std::vector<std::string> Words(std::vector<std::string> words) const;  // with --home in front
  void Run(const std::vector<std::string>& words);                       // must answer 0
  std::string RunFile(const std::string& name, const std::string& text) const;

  // Sees to it that the plan has at least `least` layouts still to be cut; another lorry and another plan if need be.
  void Refill(int least);
  // Waits until no session works on the book any more and the server has recovered.
  void WaitUntilQuiet();
  // Nothing half-cut, every cut that was said is booked, every sum is even, the ledger gives the tables.
  void ExpectWhole();
  // What a `cut record` said it has booked.
  void Remember(const HeatkeepProcess& process);
  int ToCut();
  std::string Order() const { return "O" + std::to_string(lorries_); }  // of the plan

  std::int64_t Number(const std::string& sql, const std::vector<Param>& params = {});
  int Random(int least, int most) { return std::uniform_int_distribution<int>(least, most)(random); }
  void Sleep(int microseconds) const;

  std::filesystem::path folder;
  std::string home;
  PrivateCluster cluster;
  std::string plan;                                    // the number of the plan being cut
  std::set<std::pair<std::string, std::string>> said;  // bar and drop
  std::mt19937 random;

 private:
  int lorries_ = 0;
};

}  // namespace heatkeep
