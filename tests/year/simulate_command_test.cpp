#include "client/command/simulate_command.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <nlohmann/json.hpp>
#include <sstream>

namespace heatkeep::command {
namespace {

namespace fs = std::filesystem;

SimulateOptions Small() {
  SimulateOptions options;
  options.seed = 9;
  options.lines = 60;
  options.groups = 4;
  options.days = 30;
  options.iterations = 2;
  return options;
}

TEST(Simulate, PrintsATableThatRepeats) {
  std::ostringstream once, twice, err;
  SimulateOptions options = Small();
  EXPECT_EQ(RunSimulate(options, once, err), 0);
  options.threads = 1;
  EXPECT_EQ(RunSimulate(options, twice, err), 0);
  EXPECT_EQ(once.str(), twice.str());
  EXPECT_EQ(err.str(), "");
  for (const char* text : {"seed 9, 60 lines in 4 groups over 30 days", "new-bar", "from-memory", "plain", "drops-first", "least-money"})
    EXPECT_NE(once.str().find(text), std::string::npos) << text;
}

TEST(Simulate, TellsEveryDayAsJsonAndItsAccountCloses) {
  std::ostringstream out, err;
  SimulateOptions options = Small();
  options.policies = {"plain", "new-bar"};
  options.json = true;
  ASSERT_EQ(RunSimulate(options, out, err), 0) << err.str();
  const auto j = nlohmann::json::parse(out.str());
  ASSERT_EQ(j["policies"].size(), 2U);
  EXPECT_EQ(j["policies"][0]["policy"], "plain");  // in the order asked for
  for (const auto& p : j["policies"]) {
    const auto nm = [&](const char* name) { return p[name].get<std::int64_t>(); };
    ASSERT_EQ(p["days"].size(), 30U);
    EXPECT_EQ(j["start"]["drop_length_nm"].get<std::int64_t>() + nm("opened_length_nm"),
              nm("delivered_length_nm") + nm("kerf_length_nm") + nm("trim_length_nm") + nm("scrap_length_nm") +
                  p["days"].back()["drop_length_nm"].get<std::int64_t>());
    EXPECT_EQ(p["days"].back()["bought_g"], p["bought_g"]);
  }
  EXPECT_LT(j["policies"][0]["bought_g"].get<std::int64_t>(), j["policies"][1]["bought_g"].get<std::int64_t>());
}

TEST(Simulate, DrawsPictures) {
  const fs::path folder = fs::temp_directory_path() / "heatkeep_simulate_test";
  fs::remove_all(folder);
  std::ostringstream out, err;
  SimulateOptions options = Small();
  options.policies = {"plain", "drops-first"};
  options.out = (folder / "new").string();
  ASSERT_EQ(RunSimulate(options, out, err), 0) << err.str();
  for (const char* name : {"drops", "bought", "rack_mass", "against_plain"})
    for (const char* ending : {".svg", ".png"}) EXPECT_GT(fs::file_size(folder / "new" / (std::string(name) + ending)), 1000U) << name;
  fs::remove_all(folder);
}

TEST(Simulate, RefusesWhatMakesNoSense) {
  const auto refused = [](auto change) {
    SimulateOptions options = Small();
    change(options);
    std::ostringstream out, err;
    EXPECT_EQ(RunSimulate(options, out, err), 2);
    EXPECT_EQ(out.str(), "");
    return err.str();
  };
  EXPECT_EQ(refused([](SimulateOptions& o) { o.policies = {"best"}; }),
            "\"best\" is no policy; expected new-bar, from-memory, plain, drops-first or least-money\n");
  EXPECT_EQ(refused([](SimulateOptions& o) { o.groups = 0; }), "groups: expected 1 to 200\n");
  EXPECT_EQ(refused([](SimulateOptions& o) { o.days = 0; }), "days: expected 1 to 5000\n");
  EXPECT_EQ(refused([](SimulateOptions& o) { o.threads = 0; }), "--threads: expected 1 to 64\n");
  EXPECT_EQ(refused([](SimulateOptions& o) { o.iterations = 0; }), "--iterations: expected 1 or more\n");
  EXPECT_NE(refused([](SimulateOptions& o) { o.days = 3000; }), "");  // two such spans before do not fit
}

}  // namespace
}  // namespace heatkeep::command
