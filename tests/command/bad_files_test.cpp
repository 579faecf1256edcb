// What is wrong with the files of a plan is said by file and line, with what is expected; no plan is written then.
#include <limits>

#include "tests/command/plan_files.h"

namespace heatkeep::command {
namespace {

const std::string kStock = std::string(kStockHeader) + "B1,bar,round 80,42CrMo4,K3317,6000,1,\n";
const std::string kCuts = std::string(kCutsHeader) + "A1,1,round 80,42CrMo4,240,2\n";

class BadFiles : public PlanCommand {
 protected:
  // Exit 2, each text in the message, nothing written.
  void Refuses(const std::string& stock, const std::string& cuts, const std::vector<std::string>& said, const std::string& rules = {}) {
    PlanOptions options;
    if (!rules.empty()) options.rules = Put("rules.json", rules);
    EXPECT_EQ(Plan(stock, cuts, options), 2) << err_;
    for (const std::string& text : said) EXPECT_NE(err_.find(text), std::string::npos) << "not said: " << text << "\nsaid:\n" << err_;
    EXPECT_NE(err_.find("; expected "), std::string::npos) << err_;
    EXPECT_EQ(out_, "");
    EXPECT_FALSE(Written());
  }
  std::string Bar(const std::string& length, const std::string& count = "1") {
    return std::string(kStockHeader) + "B1,bar,round 80,42CrMo4,K3317," + length + "," + count + ",\n";
  }
  std::string Cut(const std::string& length, const std::string& quantity = "1") {
    return std::string(kCutsHeader) + "A1,1,round 80,42CrMo4," + length + "," + quantity + "\n";
  }
};

TEST_F(BadFiles, LengthsThatAreNoneAreNamedByLine) {
  for (const char* length : {"0", "-5", "nan", "NaN", "inf", "-inf", "1e309", "0x10", "1e5", "10 furlongs", "6000 kg", "6 m m", "--6",
                             "6..0", "99999999999999999999", "9223372036854775808", "2km", "1000001mm", ""}) {
    Refuses(Bar(length), kCuts, {"stock.csv:2: length"});
    Refuses(kStock, Cut(length), {"cuts.csv:2: length"});
  }
}

TEST_F(BadFiles, CountsBeyondAllSenseAreNamedByLine) {
  for (const char* count : {"10000000", "0", "-1", "1.5", "many", "99999999999999999999"}) {
    Refuses(Bar("6000", count), kCuts, {"stock.csv:2: count"});
    Refuses(kStock, Cut("240", count), {"cuts.csv:2: quantity"});
  }
  Refuses(kStock, std::string(kCutsHeader) + "A1,1,round 80,42CrMo4,240,600000\nA1,2,round 80,42CrMo4,240,600000\n",
          {"cuts.csv:3: quantity: with this line more than 1000000 cuts are asked for"});
}

TEST_F(BadFiles, ACutLongerThanAnyBarIsShortWithItsReason) {
  EXPECT_EQ(Plan(kStock, Cut("6001")), 3) << err_;
  const Json plan = Read();
  EXPECT_EQ(plan["status"], "short");
  EXPECT_EQ(plan["short"][0]["missing"], 1);
  EXPECT_NE(plan["short"][0]["why"].get<std::string>().find("the shortest bar to buy"), std::string::npos) << plan["short"];
  EXPECT_EQ(plan["layouts"], Json::array());
}

TEST_F(BadFiles, WhatStandsTwiceOrContradictsIsNamed) {
  Refuses(kStock + "B1,drop,round 80,42CrMo4,K1,900,1,\n", kCuts, {"stock.csv:3: tag \"B1\" stands in line 2 already"});
  Refuses(kStock, kCuts + "A1,1,round 80,42CrMo4,300,1\n", {"cuts.csv:3: order and line"});
  Refuses(kStock, "order,line,section,grade,length,quantity,one_heat,max_heats\nA1,1,round 80,42CrMo4,240,2,H1,3\n",
          {"cuts.csv:2: max_heats: 3 heats and one_heat contradict each other"});
  Refuses(kStock, "order,line,section,grade,length,quantity,tolerance\nA1,1,round 80,42CrMo4,240,2,-240/+0\n", {"cuts.csv:2: tolerance"});
  Refuses("tag,kind,section,grade,heat,length,count,ends,doubt\nB1,bar,round 80,42CrMo4,K1,600,1,,600\n", kCuts, {"stock.csv:2: doubt"});
}

TEST_F(BadFiles, ColumnsAreKnownOrRefused) {
  Refuses("tag,kind,section,grade,heat,length,count,ends,colour\nB1,bar,round 80,C45,K1,600,1,,red\n", kCuts,
          {"stock.csv:1: unknown column \"colour\""});
  Refuses("tag,kind,section,grade,heat,length,length,count,ends\n", kCuts, {"stock.csv:1: column \"length\" stands twice"});
  Refuses(kStock, "order,line,section,grade,length\nA1,1,round 80,C45,1\n", {"cuts.csv:1: column \"quantity\" is missing"});
  Refuses(kStock, kCuts + "A1,2,round 80\n", {"cuts.csv:3: 3 cells"});
  Refuses("", kCuts, {"stock.csv"});
}

TEST_F(BadFiles, BrokenBytesAreNamed) {
  Refuses(kStock + "\"B2,bar,round 80,C45,K1,600,1,\n", kCuts, {"stock.csv:3: "});
  Refuses(kStock, kCuts + std::string("A\0B,2,round 80,C45,240,1\n", 24), {"cuts.csv:3: "});
  Refuses("PK\x03\x04 a spreadsheet", kCuts, {"stock.csv"});
}

// A cell of 2 MiB, and a file of more than may be read: refused without taking the memory for it.
TEST_F(BadFiles, GiantsAreRefused) {
  Refuses(kStock, std::string(kCutsHeader) + "A1,1,round 80," + std::string(std::size_t{2} << 20, 'x') + ",240,1\n", {"cuts.csv:2: "});
  const std::string giant = (folder_ / "giant.csv").string();
  std::ofstream(giant, std::ios::binary) << kCutsHeader;
  std::filesystem::resize_file(giant, std::uintmax_t{300} << 20);  // a hole: takes no room on the disk
  PlanOptions options;
  options.stock = Put("stock.csv", kStock);
  options.cuts = giant;
  options.json = (folder_ / "plan.json").string();
  std::ostringstream out, err;
  EXPECT_EQ(RunPlan(options, out, err), 2);
  EXPECT_NE(err.str().find("giant.csv: more than 64 MiB"), std::string::npos) << err.str();
  EXPECT_FALSE(Written());
}

TEST_F(BadFiles, RulesThatMakeNoSenseAreNamedByTheirPath) {
  Refuses(kStock, kCuts, {"rules.json:2: this is not JSON"}, "{\n\"costs\": }");
  Refuses(kStock, kCuts, {"rules.json: colours: unknown key"}, R"({"colours": []})");
  Refuses(kStock, kCuts, {"rules.json: groups[0].keep: it is out of range"}, R"({"groups": [{"keep": -1}]})");
  Refuses(kStock, kCuts, {"rules.json: groups[0].kerf: "}, R"({"groups": [{"kerf": "-2mm"}]})");
  Refuses(kStock, kCuts, {"rules.json: prices[0].per_kg: "}, R"({"prices": [{"per_kg": "much"}]})");
  Refuses(kStock, kCuts, {"rules.json: prices[0]: it must say one kind of price"}, R"({"prices": [{"per_kg": 1, "per_metre": 2}]})");
  Refuses(kStock, kCuts, {"rules.json: key \"pull\" stands twice"}, R"({"costs": {"pull": 1, "pull": 2}})");
  Refuses(kStock, kCuts, {"rules.json: a number in it is beyond all range"}, R"({"costs": {"setup": 1e400}})");
  Refuses(kStock, kCuts, {"rules.json: costs.setup: it is out of range"}, R"({"costs": {"setup": 1e300}})");
  Refuses(kStock, kCuts, {"rules.json: "}, "[]");
}

TEST_F(BadFiles, OptionsThatMakeNoSenseAreNamed) {
  const auto refused = [&](const auto& set, const std::string& said) {
    PlanOptions options;
    set(options);
    EXPECT_EQ(Plan(kStock, kCuts, options), 2);
    EXPECT_NE(err_.find(said), std::string::npos) << err_;
    EXPECT_FALSE(Written());
  };
  refused([](PlanOptions& o) { o.keep = "-5"; }, "--keep: ");
  refused([](PlanOptions& o) { o.kerf = "2km"; }, "--kerf: ");
  refused([](PlanOptions& o) { o.grip = "nan"; }, "--grip: ");
  refused([](PlanOptions& o) { o.seconds = -1; }, "--seconds: ");
  refused([](PlanOptions& o) { o.seconds = std::numeric_limits<double>::quiet_NaN(); }, "--seconds: ");
  refused([](PlanOptions& o) { o.threads = 0; }, "--threads: ");
  refused([](PlanOptions& o) { o.buy = "6000mm=1,12m"; }, "--buy: ");
  refused([](PlanOptions& o) { o.plain_below = "-2"; }, "--plain-below: ");
}

}  // namespace
}  // namespace heatkeep::command
