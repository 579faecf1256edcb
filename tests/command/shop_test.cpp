// heatkeep shop set, stock and what stops a piece.
#include "tests/command/works.h"

namespace heatkeep::command {
namespace {

using Shop = Works;

TEST_F(Shop, NamesAWrongValueByItsPathAndChangesNothing) {
  const std::string before = Digest();
  const auto refused = [&](const std::string& text, const std::string& words) {
    const std::string file = File("s.json", text);
    const Ran ran = As("owner", {"shop", "set", file});
    EXPECT_EQ(ran.code, 2) << text << '\n' << ran;
    EXPECT_TRUE(Has(ran.err, file + ": " + words)) << text << '\n' << ran;
  };
  const std::string place =
      R"({"sites":[{"site":"north","letter":"N","offline_letter":"M"}],"places":[{"place":"P1","site":"north","kind":"rack"}],)";
  refused(place + R"("saws":[{"saw":"3","place":"SAW-1","max_section":"200","band":"b","kerf":"2 furlongs","trim":"5","grip":"60"}]})",
          "saws[0].kerf: ");
  refused(place + R"("saws":[{"saw":"3","place":"SAW-1"}]})", "saws[0].max_section is missing");
  refused(
      place +
          R"("prices":[{"grade":"42CrMo4","per_kg":"1.60","scrap_per_kg":"0.2"},{"grade":"42CrMo4","per_kg":"dear","scrap_per_kg":"0.2"}]})",
      "prices[1].per_kg: ");
  refused(place + R"("prices":[{"grade":"42CrMo5","per_kg":"1.60","scrap_per_kg":"0.2"}]})",
          "prices[0].grade: \"42CrMo5\" is not in the book");
  refused(place + R"("keep":[{"keep":"150 mm","from":"soon"}]})", "keep[0].from: ");
  refused(place + R"("keep":[{"section":"blob 5","keep":"150 mm"}]})", "keep[0].section: ");
  refused(place + R"("rates":[{"family":"alloy steel","cm2_per_min":"fast"}]})", "rates[0].cm2_per_min: ");
  refused(R"({"places":[{"place":"P1","site":"main","kind":"hole"}]})", "places[0].kind: \"hole\"");
  refused(R"({"places":[{"place":"P1","site":"main","kind":"rack","level":"low"}]})", "places[0].level: ");
  refused(R"({"places":[{"place":"P1","site":"south","kind":"rack"}]})", "places[0].site: \"south\"");
  refused(R"({"places":{"place":"P1"}})", "places is no list");
  refused(R"({"settings":[1]})", "settings is no object");
  refused(R"({"places":[{"place":"P1","site":"main","kind":"rack","max_lenght":"6 m"}]})", "places[0].max_lenght is not known");
  refused(R"({"settings":{"lift_limit_g":"heavy"}})", "settings.lift_limit_g: ");
  refused(R"({"settings":{"two_person_release":"maybe"}})", "settings.two_person_release: ");
  refused(R"({"plaices":[]})", "plaices is not known");
  refused("[]", "the file is no JSON object");
  const std::string broken = File("s.json", "{");
  const Ran ran = As("owner", {"shop", "set", broken});
  EXPECT_EQ(ran.code, 2) << ran;
  EXPECT_TRUE(Has(ran.err, broken + ":1: this is not JSON")) << ran;
  EXPECT_EQ(Digest(), before);
  EXPECT_EQ(As("clerk", {"shop", "set", PathOf("shop.json")}).code, 1) << "the owner's alone";
}

TEST_F(Shop, TheSameFileTwiceChangesNothingAndAChangedOneOnlyWhatChanged) {
  const std::string before = Digest();
  EXPECT_EQ(As("owner", {"shop", "set", PathOf("shop.json")}).code, 0);
  EXPECT_EQ(Digest(), before);
  const auto priced = [](const std::string& money) {
    return R"({"prices":[{"grade":"42CrMo4","per_kg":")" + money + R"(","scrap_per_kg":"0.20","from":"2026-01-01"}]})";
  };
  EXPECT_EQ(As("owner", {"shop", "set", File("p.json", priced("1.60"))}).code, 0);
  const Ran dearer = As("owner", {"shop", "set", File("p.json", priced("1.70"))});
  EXPECT_EQ(dearer.code, 1) << "the past is not rewritten" << dearer;
  EXPECT_TRUE(Has(dearer.err, "price")) << dearer;
  EXPECT_EQ(Number("select value as n from api.rules where rule = 'price'"), 160'000);
}

TEST_F(Shop, TheWholeScenarioGoesIn) {
  const Ran set = As("owner", {"shop", "set", HEATKEEP_SEED "/scenario/shop.json"});
  EXPECT_EQ(set.code, 0) << set;
  const Ran sign = As("quality", {"shop", "sign", HEATKEEP_SEED "/scenario/shop.json"});
  EXPECT_EQ(sign.code, 0) << sign;
  EXPECT_EQ(sign.out, "3 stand-ins signed by test_quality\n");
  EXPECT_EQ(As("owner", {"shop", "sign", HEATKEEP_SEED "/scenario/shop.json"}).code, 1) << "quality signs";
  const Ran bad = As("quality", {"shop", "sign", File("s.json", R"({"standins":[{"asked":"C45","offered":"C45E","reason":5}]})")});
  EXPECT_EQ(bad.code, 2) << bad;
  EXPECT_TRUE(Has(bad.err, "standins[0].reason")) << bad;

  EXPECT_EQ(Asked("saw", {"grades", "standins"}).size(), 3U);
  EXPECT_EQ(Asked("saw", {"grades", "list", "42CrMo4"})[0]["density_kg_m3"], 7850);
  EXPECT_TRUE(Has(As("saw", {"shop", "parties", "Vandrek"}).out, "Vandrek  yes  ")) << "a mill";
  const Ran zone = As("owner", {"shop", "set", File("zone.json", R"({"settings": {"time_zone": "Europe/Nowhere"}})")});
  EXPECT_EQ(zone.code, 1) << zone;
  EXPECT_TRUE(Has(zone.err, "time_zone") && Has(zone.err, "Europe/Nowhere")) << zone;
  EXPECT_EQ(
      As("owner", {"shop", "set", File("zone.json", R"({"settings": {"time_zone": "Europe/Berlin", "saw_cents_per_minute": 95}})")}).code,
      0);
  EXPECT_EQ(As("owner", {"shop", "set", File("zone.json", R"({"settings": {"time_zone": 5}})")}).code, 2);
  EXPECT_EQ(As("owner", {"shop", "set", File("two.json", R"({"settings": {"two_person_release": true}})")}).code, 0);
  EXPECT_TRUE(Has(As("saw", {"shop", "settings", "two_person_release"}).out, "two_person_release  yes  ")) << "as JSON says yes";
  EXPECT_TRUE(Has(As("saw", {"shop", "settings", "lift_limit_g"}).out, "lift_limit_g  25000  ")) << "in force";
}

TEST_F(Shop, StockIsFoundByWhatItIsNotByHowItIsWritten) {
  EXPECT_TRUE(Has(As("saw", {"stock"}).out, "nothing here yet"));
  TakeIn("T1,bar,Vandrek,K1,42CrMo4,round 2in,6000,0,none,,\nT2,drop,Vandrek,K2,C45E,round 60,512.6,1,none,Ister,\n");
  EXPECT_EQ(Asked("saw", {"stock"}).size(), 2U);
  const Json inch = Asked("saw", {"stock", "--section", "round 50.8 mm"});
  ASSERT_EQ(inch.size(), 1U);
  EXPECT_EQ(inch[0]["tag"], TagOf("T1"));
  EXPECT_EQ(inch[0]["length_nm"], 6000 * kMm);
  EXPECT_EQ(Asked("saw", {"stock", "--grade", "C45E"})[0]["owner"], "Ister");
  EXPECT_EQ(Asked("saw", {"stock", "--grade", "1.1191"}).size(), 1U) << "the number of the same grade";
  EXPECT_EQ(Asked("saw", {"stock", "--grade", "1.1191", "--section", "round 50"}), Json::array());
  EXPECT_EQ(As("saw", {"stock", "--section", "round 50"}).out, "nothing like that is here\n");
  EXPECT_EQ(As("saw", {"stock", "--section", "blob"}).code, 2);
  // 6 000 of round 50.8 at 7.85 is 95.5 kg, 512.6 of round 60 is 11.4 kg
  EXPECT_TRUE(Has(As("saw", {"stock"}).out, "2 pieces, 6.513 m, 107 kg\n")) << As("saw", {"stock"});
}

TEST_F(Shop, HoldsQuarantinesAndPuttingAway) {
  TakeIn("T1,bar,Vandrek,K1,42CrMo4,round 80,6000,0,none,,\nT2,bar,Kestholm,K1,42CrMo4,round 80,6000,0,none,,\n");
  const std::string tag = TagOf("T1");
  EXPECT_EQ(As("clerk", {"putaway", tag, "B1-2"}).out, tag + " is in B1-2\n");
  EXPECT_EQ(As("clerk", {"putaway", tag, "Z9"}).code, 1);
  EXPECT_EQ(As("clerk", {"putaway", "A999999X", "B1-1"}).code, 1);
  EXPECT_EQ(As("clerk", {"hold", "heat", "K1", "--reason", "x"}).code, 1) << "quality's alone";
  EXPECT_EQ(As("quality", {"hold", "heat", "K1", "--mill", "Vandrek", "--reason", "letter"}).out, "hold 1: 1 piece stopped\n");
  EXPECT_EQ(As("quality", {"hold", "heat", "K9", "--reason", "letter"}).code, 1);
  EXPECT_EQ(As("quality", {"hold", "piece", TagOf("T2"), "--reason", "bent"}).out, "hold 2: 1 piece stopped\n");
  EXPECT_TRUE(Has(Asked("saw", {"stock"})[0]["state"].get<std::string>(), "held"));
  EXPECT_EQ(As("quality", {"hold", "lift", "1", "--evidence", ""}).code, 1);
  EXPECT_EQ(As("quality", {"hold", "lift", "1", "--evidence", "tested"}).out, "hold 1 is lifted\n");
  EXPECT_EQ(As("quality", {"hold", "lift", "1", "--evidence", "tested"}).code, 1);
  EXPECT_EQ(As("saw", {"quarantine", tag, "--reason", "crack"}).out, tag + " is in quarantine\n");
  EXPECT_EQ(As("saw", {"release", tag, "--evidence", "fine"}).code, 1);
  EXPECT_EQ(As("quality", {"release", tag, "--evidence", "fine"}).out, tag + " is released\n");
  EXPECT_EQ(Broken(), "");
}

}  // namespace
}  // namespace heatkeep::command
