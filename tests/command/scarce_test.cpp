// Metal that stands in, and who gets it where there is too little.
#include "tests/command/works.h"

namespace heatkeep::command {
namespace {

using Scarce = Works;

TEST_F(Scarce, AGradeStandsInOnlyWhereItIsSignedAndOnlyOneWay) {
  TakeIn("T,drop,Vandrek,K1,C45E,round 80,900,2,none,,\n");
  Want("A", "O1,10,Pallant,round 80,C45,240,2,,,,\n");
  const Ran without = As("planner", {"allocate", "A", "--dry"});
  EXPECT_EQ(without.code, 3) << without;
  ASSERT_EQ(
      As("quality", {"shop", "sign", File("s.json", R"({"standins": [{"asked": "C45", "offered": "C45E", "reason": "cleaner"}]})")}).code,
      0);
  ASSERT_EQ(
      As("owner",
         {"shop", "set", File("p.json", R"({"prices": [{"grade": "C45E", "per_kg": "1.60", "scrap_per_kg": "0.25", "from": "2020-01-01"},
      {"grade": "C45", "per_kg": "1.40", "scrap_per_kg": "0.25", "from": "2020-01-01"}]})")})
          .code,
      0);
  TakeIn("U,drop,Vandrek,K2,C45,round 80,300,2,none,,\n");  // too short: 242 + 60 = 302
  const Json told = Asked("planner", {"allocate", "A", "--dry"});
  ASSERT_EQ(told[0]["layouts"].size(), 1U) << told;
  ASSERT_EQ(told[0]["layouts"][0]["tag"], TagOf("T"));
  const Json& in = told[0]["layouts"][0]["stands_in"][0];
  EXPECT_EQ(in["count"], 2);
  // 2 x 0.24 m x 39.458 kg/m x 0.20 = 3.79; the mass of round 80 in steel (trade tables, from memory)
  EXPECT_NEAR(in["money"].get<double>(), 3.79, 0.011);
  EXPECT_EQ(in["words"], "C45E for C45, order O1 line 10: 2 x 240 mm, 3.79 dearer");
  EXPECT_TRUE(Has(As("planner", {"allocate", "A", "--dry"}).out,
                  "stands in: C45E for C45, order O1 line 10: 2 x 240 mm, 3.79 dearer (" + TagOf("T") + ")"))
      << "in words too";
  Want("B", "O2,10,Pallant,round 80,C45E,600,2,,,,\n");
  EXPECT_EQ(As("planner", {"allocate", "B", "--dry"}).code, 3) << "not the other way";
}

TEST_F(Scarce, ALargerSectionStandsInOnlyWhereItIsSigned) {
  TakeIn("T,drop,Vandrek,K1,C45E,round 85,900,2,none,,\n");
  Want("A", "O1,10,Pallant,round 80,C45E,240,2,,,,\n");
  EXPECT_EQ(As("planner", {"allocate", "A", "--dry"}).code, 3);
  const auto sign = [&](const std::string& asked, const std::string& offered) {
    return As("quality",
              {"shop", "sign",
               File("s.json",
                    R"({"section_standins": [{"asked": ")" + asked + R"(", "offered": ")" + offered + R"(", "reason": "turned down"}]})")});
  };
  EXPECT_EQ(sign("round 85", "round 80").code, 1) << "a smaller one never";
  EXPECT_EQ(sign("round 80", "square 85").code, 1) << "nor another shape";
  EXPECT_EQ(sign("round 80", "blob").code, 2);
  ASSERT_EQ(sign("round 80", "round 85").code, 0);
  const Ran ran = As("planner", {"allocate", "A"});
  EXPECT_EQ(ran.code, 0) << ran;
  EXPECT_TRUE(Has(ran.out, "stands in: round 85 C45E for round 80 C45E, order O1 line 10: 2 x 240 mm (" + TagOf("T") + ")")) << ran;
  EXPECT_EQ(Broken(), "");
}

// (800 - 60) / 242 = 3 of 240: first the line of priority 1, then the one that is due first.
TEST_F(Scarce, PriorityThenDueDateSayWhoGetsTheMetal) {
  TakeIn("T,drop,Vandrek,K1,C45E,round 80,800,2,none,,\n");
  ASSERT_EQ(
      As("planner",
         {"cutlist", "add",
          File("A.csv",
               "order,line,section,grade,length,quantity,due,priority\n"
               "O1,10,round 80,C45E,240,2,2027-03-01,5\nO2,10,round 80,C45E,240,1,2027-04-01,1\nO3,10,round 80,C45E,240,2,2027-02-01,5\n")})
          .code,
      0);
  const Ran ran = As("planner", {"allocate", "A"});
  EXPECT_EQ(ran.code, 3) << ran;
  const Json sheet = Sheet(1);
  ASSERT_EQ(sheet["short"].size(), 1U) << sheet;
  EXPECT_EQ(sheet["short"][0]["order"], "O1");
  EXPECT_EQ(sheet["short"][0]["missing"], 2);
  // 10 + 2 + 2 x 242 + 60 = 556
  EXPECT_TRUE(Has(ran.out, "the shortest bar to buy for 2 is 556 mm")) << ran;
  const Json told = Asked("planner", {"plan", "show", "1"});
  EXPECT_TRUE(Has(told["short"][0]["why"].get<std::string>(), "556 mm")) << told;
}

TEST_F(Scarce, TheCheapestPurchaseIsFromTheLengthsAndPricesThatAreSold) {
  Want("A", "O1,10,Pallant,round 80,C45E,240,2,,,,\n");
  const Ran ran = As("planner", {"allocate", "A", "--dry", "--buy", "3000mm=80,600mm=30"});
  EXPECT_EQ(ran.code, 3);
  EXPECT_TRUE(Has(ran.out, "buy 1 x 600 mm round 80 C45E: 0.60 m, 30.00; left over 104 mm scrap; none costs less (proved)")) << ran;
  const Ran json = As("planner", {"allocate", "A", "--dry", "--buy", "3000mm=80,600mm=30", "--json"});
  const Json told = Json::parse(json.out)[0];
  EXPECT_EQ(told["buy"]["price"], 30.0);
  EXPECT_EQ(told["buy"]["bars"][0]["length_nm"], 600 * kMm);
  EXPECT_EQ(told["short"], 2);
  EXPECT_EQ(told["shorts"][0]["missing"], 2);
  EXPECT_TRUE(Has(told["shorts"][0]["why"].get<std::string>(), "556 mm")) << told;
}

}  // namespace
}  // namespace heatkeep::command
