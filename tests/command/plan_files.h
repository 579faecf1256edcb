// `heatkeep plan` on files written for the test, in a folder of its own.
#pragma once

#include <gtest/gtest.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>
#include <string>

#include "client/command/plan_command.h"

namespace heatkeep::command {

using Json = nlohmann::json;

class PlanCommand : public testing::Test {
 protected:
  void SetUp() override {
    folder_ = std::filesystem::temp_directory_path() / ("heatkeep-plan-" + std::to_string(::getpid()));
    std::filesystem::create_directories(folder_);
  }
  void TearDown() override { std::filesystem::remove_all(folder_); }

  std::string Put(const std::string& name, const std::string& text) {
    std::ofstream(folder_ / name, std::ios::binary) << text;
    return (folder_ / name).string();
  }
  int Plan(const std::string& stock, const std::string& cuts, PlanOptions options = {}) {
    options.stock = Put("stock.csv", stock);
    options.cuts = Put("cuts.csv", cuts);
    options.json = (folder_ / "plan.json").string();
    std::ostringstream out, err;
    const int code = RunPlan(options, out, err);
    out_ = out.str();
    err_ = err.str();
    return code;
  }
  bool Written() const { return std::filesystem::exists(folder_ / "plan.json"); }
  Json Read() const {
    std::ifstream in(folder_ / "plan.json");
    return Json::parse(in);
  }

  std::filesystem::path folder_;
  std::string out_, err_;
};

inline constexpr char kStockHeader[] = "tag,kind,section,grade,heat,length,count,ends\n";
inline constexpr char kCutsHeader[] = "order,line,section,grade,length,quantity\n";

}  // namespace heatkeep::command
