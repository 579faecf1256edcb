// The plan from two files: exit codes, the plan file's every field, and refusals that write nothing.
// Lengths by hand arithmetic (common practice, no source).
#include "tests/command/plan_files.h"

#include "client/command/rules_file.h"
#include "schema/terms/bad_text.h"

namespace heatkeep::command {
namespace {

TEST_F(PlanCommand, DropIsTakenBeforeABarAndAllFieldsAreThere) {
  ASSERT_EQ(Plan(std::string(kStockHeader) + "B1,bar,round 80,42CrMo4,K3317,6000mm,,\nD1,drop,round 80,42CrMo4,M2208,1900,1,\n",
                 std::string(kCutsHeader) + "A1,1,round 80,42CrMo4,240,7\n"),
            0)
      << err_;
  const Json plan = Read();
  EXPECT_EQ(plan["aim"], "drops-first");
  EXPECT_EQ(plan["status"], "proved");
  EXPECT_EQ(plan["proved"], true);
  EXPECT_EQ(plan["ended_by"], "proof");
  EXPECT_TRUE(plan["seconds"].is_number());
  ASSERT_EQ(plan["layouts"].size(), 1u);
  const Json& layout = plan["layouts"][0];
  EXPECT_EQ(layout["tag"], "D1");
  EXPECT_EQ(layout["kind"], "drop");
  EXPECT_EQ(layout["heat"], "M2208");
  EXPECT_EQ(layout["repeat"], 1);
  EXPECT_EQ(layout["length_nm"], 1'900'000'000);
  EXPECT_EQ(layout["trim_nm"], 0);
  EXPECT_EQ(layout["kerf_nm"], 11'200'000);   // 7 x 1.6
  EXPECT_EQ(layout["left_nm"], 208'800'000);  // 1900 - 1680 - 11.2
  EXPECT_EQ(layout["left"], "scrap");         // below 300
  ASSERT_EQ(layout["cuts"].size(), 1u);
  EXPECT_EQ(layout["cuts"][0]["order"], "A1");
  EXPECT_EQ(layout["cuts"][0]["line"], "1");
  EXPECT_EQ(layout["cuts"][0]["count"], 7);
  EXPECT_EQ(layout["cuts"][0]["length_nm"], 240'000'000);
  const Json& value = plan["value"];
  EXPECT_EQ(value["unmet_pieces"], 0);
  EXPECT_EQ(value["unmet_by_priority"], Json::object());
  EXPECT_EQ(value["bars_opened"], 0);
  EXPECT_EQ(value["new_length_nm"], 0);
  EXPECT_EQ(value["consumed_length_nm"], 1'900'000'000);
  EXPECT_EQ(value["scrap_length_nm"], 208'800'000);
  EXPECT_EQ(value["lost_worth_nm"], 1'615'820'000);  // 1900 x (1 - e^-1.9) = 1615.8196 mm
  EXPECT_EQ(value["pieces_pulled"], 1);
  EXPECT_EQ(value["layouts"], 1);
  EXPECT_FALSE(value.contains("money"));
  EXPECT_EQ(plan["bound"]["new_length_nm"], 0);
  EXPECT_EQ(plan["proved_keys"][0], "unmet_pieces");
  EXPECT_EQ(plan["proved_keys"][1], "new_length");
  EXPECT_EQ(plan["short"], Json::array());
  EXPECT_NE(out_.find("(proved)"), std::string::npos) << out_;
}

TEST_F(PlanCommand, WhatIsShortIsNamedAndThePlanStillWritten) {
  EXPECT_EQ(Plan(std::string(kStockHeader) + "D1,drop,round 80,42CrMo4,K3317,500,1,\n",
                 std::string(kCutsHeader) + "A1,1,round 80,42CrMo4,200,3\n"),
            3);
  const Json plan = Read();
  EXPECT_EQ(plan["status"], "short");
  ASSERT_EQ(plan["short"].size(), 1u);
  EXPECT_EQ(plan["short"][0]["order"], "A1");
  EXPECT_EQ(plan["short"][0]["line"], "1");
  EXPECT_EQ(plan["short"][0]["missing"], 1);  // 2 x 201.6 + 80 <= 500, the third does not fit
  EXPECT_NE(plan["short"][0]["why"].get<std::string>().find("288.2 mm"), std::string::npos);  // 5 + 1.6 + 201.6 + 80
}

TEST_F(PlanCommand, SectionsInInchAndMillimetreAreTheSame) {
  EXPECT_EQ(Plan(std::string(kStockHeader) + "B1,bar,round 2in,C45E,H1,20ft,1,\n",
                 std::string(kCutsHeader) + "A1,1,round 50.8,C45E,13-7/8in,2\n"),
            0)
      << err_;
  EXPECT_EQ(Read()["layouts"][0]["cuts"][0]["length_nm"], 352'425'000);
  EXPECT_EQ(Read()["layouts"][0]["length_nm"], 6'096'000'000);
}

TEST_F(PlanCommand, BadLinesAreAllNamedAndNothingIsWritten) {
  EXPECT_EQ(Plan(std::string(kStockHeader) + "D1,plank,round 80,42CrMo4,K3317,500,1,\nD2,drop,round 80,42CrMo4,K3317,0,1,\n",
                 std::string(kCutsHeader) + "A1,1,round 80,42CrMo4,1;100,3\n"),
            2);
  EXPECT_NE(err_.find("stock.csv:2: "), std::string::npos) << err_;
  EXPECT_NE(err_.find("stock.csv:3: "), std::string::npos) << err_;
  EXPECT_NE(err_.find("cuts.csv:2: "), std::string::npos) << err_;
  EXPECT_NE(err_.find("; expected "), std::string::npos) << err_;
  EXPECT_FALSE(Written());
  EXPECT_FALSE(std::filesystem::exists(folder_ / "plan.json.part"));
}

TEST_F(PlanCommand, AWrongOptionIsNamed) {
  PlanOptions options;
  options.aim = "cheapest";
  EXPECT_EQ(Plan(kStockHeader, kCutsHeader, options), 2);
  EXPECT_NE(err_.find("--aim"), std::string::npos);
  options = {};
  options.kerf = "thin";
  EXPECT_EQ(Plan(kStockHeader, kCutsHeader, options), 2);
  EXPECT_NE(err_.find("--kerf"), std::string::npos);
  EXPECT_FALSE(Written());
}

TEST_F(PlanCommand, LeastMoneyPaysForMetalSawingAndPulls) {
  PlanOptions options;
  options.aim = "least-money";
  options.kerf = "2";
  options.trim = "0";
  options.grip = "0";
  options.rules = Put("rules.json", R"({"prices": [{"per_metre": 40.0}], "costs": {"pull": 1.5, "setup": 2},
    "sawing": {"money_per_minute": 0.6, "rates": [{"cm2_per_minute": 30}]}})");
  EXPECT_EQ(Plan(std::string(kStockHeader) + "B1,bar,square 100,S355J2,H1,1000,1,0\n",
                 std::string(kCutsHeader) + "A1,1,square 100,S355J2,498,2\n", options),
            0)
      << err_;
  // 1 m of bar lost whole: 40.00; two cuts of 100 cm2 at 30 cm2/min and 0.60/min: 4.00; pull 1.50; set-up 2.00
  EXPECT_DOUBLE_EQ(Read()["value"]["money"].get<double>(), 47.5);
  EXPECT_EQ(Read()["proved"], true);
}

TEST_F(PlanCommand, LeastMoneyWithoutAPriceSaysThatMetalCostsNothing) {
  PlanOptions options;
  options.aim = "least-money";
  const std::string stock = std::string(kStockHeader) + "B1,bar,square 100,S355J2,H1,1000,1,0\n";
  const std::string cuts = std::string(kCutsHeader) + "A1,1,square 100,S355J2,400,2\n";
  EXPECT_EQ(Plan(stock, cuts, options), 0) << err_;
  EXPECT_NE(err_.find("no piece has a price"), std::string::npos) << err_;
  options.aim = "drops-first";
  EXPECT_EQ(Plan(stock, cuts, options), 0) << err_;
  EXPECT_EQ(err_, "");
}

TEST_F(PlanCommand, GroupsOfTheRulesFileAndSubstitutesHold) {
  PlanOptions options;
  options.rules = Put("rules.json", R"({"groups": [{"section": "round 80", "grip": 0, "trim": 0, "kerf": "2mm"}],
    "grade_substitutes": [{"asked": "C45E", "given": "42CrMo4"}]})");
  EXPECT_EQ(Plan(std::string(kStockHeader) + "D1,drop,round 80,42CrMo4,H1,502,1,2\n",
                 std::string(kCutsHeader) + "A1,1,round 80,C45E,250,2\n", options),
            0)
      << err_;
  EXPECT_EQ(Read()["layouts"][0]["left"], "none");
  EXPECT_EQ(Read()["layouts"][0]["kerf_nm"], 2'000'000);
}

TEST_F(PlanCommand, TheNextBoxUpStandsInWhereTheRulesSaySo) {
  PlanOptions options;
  options.grip = options.trim = "0";
  options.rules =
      Put("rules.json", R"({"section_substitutes": [{"asked": "box 100x60x5 cold", "given": "box 60x100x6 cold", "extra_per_metre": 1}]})");
  const std::string stock =
      std::string(kStockHeader) + "D1,drop,box 100x60x6 cold,S355J2,H1,502,1,2\nD2,drop,box 100x60x6 hot,S355J2,H1,502,1,2\n";
  EXPECT_EQ(Plan(stock, std::string(kCutsHeader) + "A1,1,box 60x100x5 cold,S355J2,250,2\n", options), 0) << err_;
  EXPECT_EQ(Read()["layouts"][0]["tag"], "D1") << Read().dump(1);
  EXPECT_EQ(Plan(stock, std::string(kCutsHeader) + "A1,1,angle 100x75x8,S355J2,250,2\n", options), 3);
}

std::string RulesRefusal(const std::string& text) {
  try {
    ReadRulesFile(text, "rules.json", {});
  } catch (const BadText& e) { return e.what(); }
  return "accepted";
}

TEST(RulesFile, RefusesWhatIsNotJsonUnknownOrWrongNamingThePlace) {
  EXPECT_EQ(RulesRefusal("{\n\"prices\": [\n}").rfind("rules.json:3: ", 0), 0u) << RulesRefusal("{\n\"prices\": [\n}");
  EXPECT_EQ(RulesRefusal(R"({"prise": 1})").rfind("rules.json: prise: unknown key; expected one of prices", 0), 0u);
  EXPECT_EQ(RulesRefusal(R"({"prices": [{"per_kg": -1}]})").rfind("rules.json: prices[0].per_kg: ", 0), 0u);
  EXPECT_EQ(RulesRefusal(R"({"prices": [{"grade": "C45E"}]})").rfind("rules.json: prices[0]: ", 0), 0u);
  EXPECT_EQ(RulesRefusal(R"({"groups": [{"section": "blob 7"}]})").rfind("rules.json: groups[0].section: ", 0), 0u);
  EXPECT_EQ(RulesRefusal(R"({"grade_substitutes": [{"asked": "A"}]})").rfind("rules.json: grade_substitutes[0].given: ", 0), 0u);
}

TEST(RulesFile, PricesByMassUseTheSectionsOwnMass) {
  // 42CrMo4 round 80 at 7850 kg/m3 is 39.458 kg/m; at 1.60 a kg that is 63.13 a metre (common practice, no source).
  const RulesFile rules = ReadRulesFile(R"({"prices": [{"per_kg": 1.6, "scrap_per_kg": 0.25}]})", "rules.json", {});
  const auto costs = rules.CostsOf(ReadSection("round 80"), "42CrMo4", std::nullopt, allocator::PieceKind::Bar);
  EXPECT_NEAR(static_cast<double>(costs.per_metre.micro) / 1e8, 63.13, 0.005);
  EXPECT_NEAR(static_cast<double>(costs.scrap_per_metre.micro) / 1e8, 9.86, 0.005);
}

// C 160 leaves 160 - 95 - 1.6 = 63.4 scrap; B 172 leaves 75.4; A, a drop, is the dearest in worth.
TEST_F(PlanCommand, SaysWhyAPieceIsTakenAndNotAnother) {
  ASSERT_EQ(
      Plan(std::string(kStockHeader) + "A,drop,round 60,C45E,K1,2600,1,\nB,drop,round 60,C45E,K1,172,1,\nC,drop,round 60,C45E,K1,160,1,\n",
           std::string(kCutsHeader) + "O1,1,round 60,C45E,95,1\n",
           [] {
             PlanOptions o;
             o.grip = "60mm";
             o.keep = "150mm";
             return o;
           }()),
      0)
      << err_;
  const Json plan = Read();
  ASSERT_EQ(plan["layouts"].size(), 1u);
  EXPECT_EQ(plan["layouts"][0]["tag"], "C");
  EXPECT_FALSE(plan["layouts"][0].contains("bundle"));
  const Json& why = plan["layouts"][0]["why"];
  ASSERT_EQ(why.size(), 2u);
  EXPECT_EQ(why[0]["tag"], "B");
  EXPECT_EQ(why[0]["left_nm"], 75'400'000);
  EXPECT_EQ(why[0]["left"], "scrap");
  EXPECT_FALSE(why[0].contains("dearer")) << "no price is known";
  EXPECT_EQ(why[0]["words"].get<std::string>().substr(0, 26), "leaves 75.4 mm scrap, lose");
  EXPECT_EQ(why[1]["tag"], "A");
  EXPECT_EQ(plan["by_hand"]["taken"], false);
  EXPECT_EQ(plan["by_hand"]["value"], plan["value"]);
  EXPECT_EQ(plan["by_hand"]["words"], "a plan by hand takes the same metal");
  EXPECT_FALSE(plan.contains("buy"));
  EXPECT_FALSE(plan.contains("one_heat_costs"));
}

TEST_F(PlanCommand, SaysWhatToBuyForWhatIsShort) {
  const std::string stock = std::string(kStockHeader) + "D1,drop,round 80,42CrMo4,K3317,500,1,\n";
  const std::string cuts = std::string(kCutsHeader) + "A1,1,round 80,42CrMo4,200,3\n";
  EXPECT_EQ(Plan(stock, cuts), 3);
  Json plan = Read();
  ASSERT_EQ(plan["buy"]["bars"].size(), 1u);
  EXPECT_EQ(plan["buy"]["bars"][0]["length_nm"], 3'000'000'000);
  EXPECT_EQ(plan["buy"]["bars"][0]["count"], 1);
  EXPECT_EQ(plan["buy"]["left"][0]["length_nm"], 2'791'800'000);  // 3000 - 5 - 1.6 - 201.6
  EXPECT_EQ(plan["buy"]["proved"], true);
  EXPECT_NE(out_.find("buy 1 x 3000 mm round 80 42CrMo4"), std::string::npos) << out_;
  PlanOptions options;
  options.buy = "6000mm=378.80,12000mm=300";
  EXPECT_EQ(Plan(stock, cuts, options), 3);
  plan = Read();
  EXPECT_EQ(plan["buy"]["bars"][0]["length_nm"], 12'000'000'000);
  EXPECT_EQ(plan["buy"]["price"], 300.0);
  for (const char* wrong : {"6000mm=1,12000mm", "thin", "0mm", "6000mm,", "6000mm=x"}) {
    options.buy = wrong;
    EXPECT_EQ(Plan(stock, cuts, options), 2) << wrong;
    EXPECT_NE(err_.find("--buy: "), std::string::npos) << err_;
  }
}

TEST_F(PlanCommand, SaysWhatOneHeatCosts) {
  PlanOptions options;
  options.price_of_one_heat = true;
  options.grip = "60mm";
  ASSERT_EQ(Plan(std::string(kStockHeader) +
                     "D1,drop,round 80,42CrMo4,K1,600,1,\nD2,drop,round 80,42CrMo4,M2,600,1,\nB,bar,round 80,42CrMo4,K1,1800,1,\n",
                 "order,line,section,grade,length,quantity,one_heat\nA1,1,round 80,42CrMo4,240,4,H\n", options),
            0)
      << err_;
  const Json costs = Read()["one_heat_costs"];
  EXPECT_EQ(costs["difference"]["new_length_nm"], 1'800'000'000);
  EXPECT_EQ(costs["heats"], 2);
  EXPECT_NE(out_.find("one heat costs more than 2 heats: 1.80 m more full bar"), std::string::npos) << out_;
}

TEST_F(PlanCommand, BarsCutAlikeAreABundle) {
  ASSERT_EQ(Plan(std::string(kStockHeader) + "B1,bar,round 30,C45E,K1,6000,1,\nB2,bar,round 30,C45E,K1,6000,1,\n",
                 std::string(kCutsHeader) + "A1,1,round 30,C45E,300,38\n"),
            0)
      << err_;
  const Json plan = Read();
  ASSERT_EQ(plan["layouts"].size(), 2u);
  EXPECT_EQ(plan["layouts"][0]["bundle"], 1);
  EXPECT_EQ(plan["layouts"][1]["bundle"], 1);
}

}  // namespace
}  // namespace heatkeep::command
