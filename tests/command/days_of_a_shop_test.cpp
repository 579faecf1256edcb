// Days of an invented shop, worked through the program alone: a heat held during a cut, papers after cutting, a drop that is shorter than
// written, papers too weak. Lengths by hand arithmetic in millimetres.
#include <fstream>
#include <iterator>
#include <map>

#include "tests/command/works.h"

namespace heatkeep::command {
namespace {

struct DaysOfAShop : Works {
  void TearDown() override { EXPECT_EQ(Broken(), ""); }
  std::string Drop(const std::string& parent) {
    return Word("select tag as w from book.piece where parent_id = (select piece_id from book.piece where tag = $1)", {parent});
  }
  std::string Bytes(const std::string& name) const {
    std::ifstream in(PathOf(name), std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
  }
  void Done(const std::string& who, const Words& words) {
    const Ran ran = As(who, words);
    ASSERT_EQ(ran.code, 0) << ran;
  }
  std::int64_t Waiting(const std::string& heat) {
    std::int64_t sum = 0;
    for (const Json& row : Asked("quality", {"papers", "waiting", heat})) sum += row["count"].get<std::int64_t>();
    return sum;
  }
};

// Five bars of M2208. Bar 1 gives 14 x 290 for Pallant and the drop of 1 900, that gives 7 x 240 for Drewe and the drop of 206. Bar 2 is
// at saw 2 for 15 x 300: nine are confirmed when the heat is held, the tenth is in the blade.
TEST_F(DaysOfAShop, AHeatHeldDuringACutStopsTheSawAfterThatCutAndEverythingOfItIsFound) {
  TakeIn("B1,bar,Vandrek,M2208,42CrMo4,round 80,6000,0,3.1,,\n");
  Certify("C1,3.1,Vandrek,M2208,round 80,42CrMo4\n");
  Want("A", "P,10,Pallant,round 80,42CrMo4,290,14,3.1,,,\n");
  ASSERT_EQ(Plan("A"), 1);
  Done("saw", {"cut", "record", "--plan", "1", "--place", "B1-1"});
  const std::string d102 = Drop(TagOf("B1"));
  Want("B", "D,10,Drewe,round 80,42CrMo4,240,7,3.1,,,\n");
  ASSERT_EQ(Plan("B"), 2);
  Done("saw", {"cut", "record", "--plan", "2", "--place", "B1-1"});
  const std::string d103 = Drop(d102);
  Done("planner", {"ship", "P/10=14", "--note", "N1", "--customer", "Pallant"});
  Done("planner", {"ship", "D/10=7", "--note", "N2", "--customer", "Drewe"});
  TakeIn("B2,bar,Vandrek,M2208,42CrMo4,round 80,6000,0,3.1,,\n");
  Want("C", "I,10,Ister,round 80,42CrMo4,300,15,3.1,,,\n");
  ASSERT_EQ(Plan("C", {"--saw", "2"}), 3);
  TakeIn(
      "B3,bar,Vandrek,M2208,42CrMo4,round 80,6000,0,3.1,,\nB4,bar,Vandrek,M2208,42CrMo4,round 80,6000,0,3.1,,\nB5,bar,Vandrek,M2208,42CrMo4,round 80,6000,0,3.1,,\n");
  const std::string bar2 = TagOf("B2");
  Done("saw", {"pull", bar2, "--saw", "2", "--plan", "3"});
  Done("saw", {"saw", "cut", bar2, "--saw", "2", "--kerf", "2", "--stroke", "trim 10", "--stroke", "good 9x300 I/10"});
  EXPECT_FALSE(Sheet(3)["blocks"][0].contains("stop"));

  Done("quality", {"hold", "heat", "M2208", "--reason", "letter of the mill"});
  const std::string stop = "STOP AFTER THIS CUT: held by test_quality: letter of the mill";
  EXPECT_EQ(Sheet(3)["blocks"][0]["stop"], stop);
  EXPECT_TRUE(Has(As("saw", {"plan", "show", "3"}).out, stop));
  const Ran tenth = As("saw", {"saw", "cut", bar2, "--saw", "2", "--kerf", "2", "--stroke", "good 1x300 I/10"});
  EXPECT_EQ(tenth.code, 0) << tenth;
  EXPECT_TRUE(Has(tenth.out, stop)) << tenth;
  EXPECT_EQ(Number("select count(*) as n from book.stroke where held"), 1) << "the tenth exists: recorded as held";
  const Ran eleventh = As("saw", {"saw", "cut", bar2, "--saw", "2", "--kerf", "2", "--stroke", "good 1x300 I/10"});
  EXPECT_EQ(eleventh.code, 1) << eleventh;
  EXPECT_TRUE(Has(eleventh.err, "STOP: no more is cut from " + bar2)) << eleventh;

  // pieces 4 060 + 1 680 + 3 000 = 8 740; kerf 30 + 14 + 22 = 66; trim 20; on hand 206 + 2 968 + 18 000 = 21 174; sum 30 000
  EXPECT_EQ(Balance("M2208", "received"), 30000 * kMm);
  EXPECT_EQ(Balance("M2208", "shipped"), 5740 * kMm);
  EXPECT_EQ(Balance("M2208", "on site"), 3000 * kMm);
  EXPECT_EQ(Balance("M2208", "kerf"), 66 * kMm);
  EXPECT_EQ(Balance("M2208", "trim"), 20 * kMm);
  EXPECT_EQ(Balance("M2208", "on hand") + Balance("M2208", "at saw"), 21174 * kMm);
  EXPECT_EQ(Balance("M2208", "unexplained"), 0);

  std::map<std::string, std::int64_t> pieces;
  std::map<std::string, std::string> metal;
  const Ran trace = As("quality", {"report", "trace", "heat", "M2208"});
  const Json record = Json::parse(trace.out);
  for (const Json& l : record["lines"]) {
    if (l["what"] == "cut piece") pieces[l["where_now"]] += l["count"].get<std::int64_t>();
    if (l["what"] == "bar" || l["what"] == "drop") metal[l["name"]] = l["where_now"];
  }
  EXPECT_EQ(pieces["shipped to Pallant, note N1"], 14);
  EXPECT_EQ(pieces["shipped to Drewe, note N2"], 7);
  EXPECT_EQ(pieces["on site"], 10);
  EXPECT_EQ(metal[d103], "206 mm at B1-1 (on rack)");
  EXPECT_EQ(metal[bar2], "2968 mm at SAW-2 (at saw)");
  for (const char* bar : {"B3", "B4", "B5"}) EXPECT_EQ(metal[TagOf(bar)], "6000 mm at GATE (on rack)");

  // what stands against shipments and packages, found in one place: for pieces here and gone
  EXPECT_EQ(As("planner", {"ship", "I/10=10", "--note", "N3", "--customer", "Ister"}).code, 1);
  const Json against = Asked("planner", {"shipment", "against", "I"});
  ASSERT_EQ(against.size(), 2U) << against;
  std::int64_t stands = 0;
  for (const Json& row : against) {
    EXPECT_EQ(row["words"], "held by test_quality: letter of the mill");
    EXPECT_EQ(row["shipped"], false);
    stands += row["pieces"].get<std::int64_t>();
  }
  EXPECT_EQ(stands, 10);
  EXPECT_EQ(Asked("planner", {"shipment", "against", "P"})[0]["shipped"], true);
}

// 6 x round 50 x 4 000, heat R5512, no certificate; cut at risk: 10 x 250 leave 4 000 - 12 - 2 520 = 1 468. 17 items wait: 10 + 1 + 5 and
// the open order line. (C of 1.4404 at most 0.030 %: EN 10088-3, from memory.)
TEST_F(DaysOfAShop, PapersAfterCuttingReleaseEverythingInOneActOrNothing) {
  Done("owner", {"grades", "limits"});
  Done("clerk",
       {"receive",
        File("d.csv",
             "note,supplier,mill,heat,read_from,grade,section,length,count,place,papers\n"
             "V1,Vandrek,Vandrek,R5512,metal,X2CrNiMo17-12-2,round 50,4000,6,B1-1,awaited\n")});
  Want("A", "O1,10,Pallant,round 50,X2CrNiMo17-12-2,250,10,none,,,\n");
  EXPECT_EQ(Plan("A"), 0) << "nothing is promised while papers are awaited";
  Done("quality", {"papers", "at-risk", "Vandrek", "R5512", "--reason", "cut at risk, do not ship"});
  ASSERT_EQ(Plan("A"), 1);
  Done("saw", {"cut", "record", "--plan", "1", "--place", "B1-1"});
  const std::string rest = Word("select tag as w from book.piece where parent_id is not null");
  EXPECT_EQ(Number("select length_nm as n from api.stock_on_hand where tag = $1", {rest}), 1468 * kMm);
  EXPECT_EQ(Word("select document as w from api.stock_on_hand where tag = $1", {rest}), "papers awaited");
  const Ran ship = As("planner", {"ship", "O1/10=10", "--note", "N1", "--customer", "Pallant"});
  EXPECT_EQ(ship.code, 1) << ship;
  EXPECT_EQ(Asked("planner", {"shipment", "against", "O1"})[0]["words"], "its papers are awaited");
  EXPECT_EQ(Waiting("R5512"), 17);

  const auto certificate = [&](const std::string& heat, const std::string& carbon) {
    return As("quality",
              {"certificate", "add",
               File("c.csv",
                    "number,type,issuer,heat,section,grade,issued,C\nC1,3.1,Vandrek," + heat + ",round 50,X2CrNiMo17-12-2,2026-01-05," +
                        carbon + "\n")});
  };
  EXPECT_NE(certificate("R5521", "0.020").code, 0);
  EXPECT_EQ(Waiting("R5512"), 17) << "another heat's paper";
  const Ran high = certificate("R5512", "0.034");
  EXPECT_NE(high.code, 0);
  EXPECT_TRUE(Has(high.out + high.err, "C 0.034 %")) << high;
  EXPECT_EQ(Waiting("R5512"), 17) << "too much carbon";
  const Ran good = certificate("R5512", "0.020");
  ASSERT_EQ(good.code, 0) << good;
  EXPECT_EQ(Waiting("R5512"), 0);
  EXPECT_EQ(Number("select count(*) as n from api.candidates where heat = 'R5512'"), 6) << "the rest and five bars";
  EXPECT_EQ(Asked("planner", {"shipment", "against", "O1"}), Json::array());
  EXPECT_EQ(As("planner", {"shipment", "against", "O1"}).out, "nothing stands against what was cut for O1\n");
  const Ran mistyped = As("planner", {"shipment", "against", "01"});
  EXPECT_EQ(mistyped.code, 2) << mistyped;
  EXPECT_TRUE(Has(mistyped.err, "\"01\" is not in the book; expected an order of a cut list")) << mistyped;
  const Json document = Asked("quality", {"papers", "list", "C1"})[0];
  EXPECT_EQ(document["accepted_by"], "test_quality");
  EXPECT_EQ(document["cut_before_accepted"], 10) << "the trail shows cutting before the review";
  Done("planner", {"ship", "O1/10=10", "--note", "N1", "--customer", "Pallant"});
}

// Four of 240 from D-0101 (1 100, K3317, one heat). Measured 1 018: (1 018 - 60) / 242 = 3, rest 1 018 - 726 = 292; one from D-0107, rest
// 420 - 242 = 178. 720 + 6 + 292 + 82 = 1 100: the 82 are the heat's unexplained, and stand in the report of who measured.
TEST_F(DaysOfAShop, ADropThatIsShorterThanWrittenIsMendedAndItsMissingLengthStandsInTheReportOfWhoMeasured) {
  Done("quality", {"device", "add", "tape 7", "--kind", "tape", "--site", "main"});
  TakeIn("D-0101,drop,Vandrek,K3317,42CrMo4,round 80,1100,2,3.1,,\n");
  Certify("C1,3.1,Vandrek,K3317,round 80,42CrMo4\n");
  Want("A", "O1,10,Pallant,round 80,42CrMo4,240,4,3.1,H1,,\n");
  ASSERT_EQ(Plan("A"), 1);
  EXPECT_EQ(Sheet(1)["blocks"][0]["left_nm"], 132 * kMm);
  TakeIn("D-0107,drop,Vandrek,K3317,42CrMo4,round 80,420,2,3.1,,\n");
  const std::string tag = TagOf("D-0101");
  Done("saw", {"pull", tag, "--saw", "1", "--plan", "1"});
  Done("saw", {"replan", "1", "--measured", tag + "=1018mm", "--measured-with", "tape 7"});
  Done("saw", {"cut", "record", "--plan", "1", "--place", "B1-1"});
  EXPECT_EQ(Number("select count(*) as n from book.stroke where class = 'good'"), 4);
  EXPECT_EQ(Word("select string_agg((length_nm / 1000000)::text, ' ' order by length_nm) as w from book.piece where length_nm > 0"),
            "178 292");
  EXPECT_EQ(Balance("K3317", "unexplained"), 82 * kMm);

  const Ran asked = As("owner", {"report", "measured"});
  ASSERT_EQ(asked.code, 0) << asked;
  const Json rows = Json::parse(asked.out);
  ASSERT_EQ(rows.size(), 1U) << asked;
  EXPECT_EQ(rows[0]["who"], "test_saw");
  EXPECT_EQ(rows[0]["measured_with"], "tape 7");
  EXPECT_EQ(rows[0]["tag"], tag);
  EXPECT_EQ(rows[0]["heat"], "K3317");
  EXPECT_EQ(rows[0]["book_nm"], 1100 * kMm);
  EXPECT_EQ(rows[0]["measured_nm"], 1018 * kMm);
  EXPECT_EQ(rows[0]["difference_nm"], -82 * kMm);
  EXPECT_EQ(rows[0]["why"], "measured at the saw");
  Done("owner",
       {"report", "measured", "--to", PathOf("m.pdf"), "--to", PathOf("m.xlsx"), "--to", PathOf("m.csv"), "--to", PathOf("m.json")});
  EXPECT_TRUE(Has(Bytes("m.csv"), "1100.000,1018.000,-82.000,measured at the saw")) << Bytes("m.csv");
  EXPECT_TRUE(Bytes("m.pdf").starts_with("%PDF-"));
  EXPECT_TRUE(Bytes("m.xlsx").starts_with("PK"));
  EXPECT_EQ(Json::parse(Bytes("m.json")), rows);
  EXPECT_EQ(As("owner", {"report", "measured", "--until", "2020-01-01"}).out, "[]\n");
  EXPECT_EQ(As("owner", {"report", "measured", "--heat", "M2208"}).out, "[]\n");
  EXPECT_EQ(As("owner", {"report", "measured", "--from", "yesterday"}).code, 2);
}

// A drop measured against the arithmetic of its cut stands in it too: 6 000 - 12 - 14 x 292 = 1 900 by arithmetic, 1 899 by the tape.
TEST_F(DaysOfAShop, ARestMeasuredAgainstTheArithmeticStandsInTheReportUnderItsOwnTag) {
  TakeIn("T1,bar,Vandrek,K1,42CrMo4,round 80,6000,0,none,,\n");
  Want("A", "O1,10,Pallant,round 80,42CrMo4,290,14,,,,\n");
  ASSERT_EQ(Plan("A"), 1);
  Done("saw", {"cut", "record", "--plan", "1", "--tag", TagOf("T1"), "--rest", "1899", "--place", "B1-1"});
  const Json rows = Json::parse(As("owner", {"report", "measured"}).out);
  ASSERT_EQ(rows.size(), 1U) << rows;
  EXPECT_EQ(rows[0]["tag"], Drop(TagOf("T1")));
  EXPECT_EQ(rows[0]["book_nm"], 1900 * kMm);
  EXPECT_EQ(rows[0]["measured_nm"], 1899 * kMm);
  EXPECT_EQ(rows[0]["difference_nm"], -1 * kMm);
}

// 25 x 280 with 3.1: the bar of 3.1 gives 21, that of 2.2 none. (12 + 4 x 282 + 60 = 1 200 and the tape's doubt of 1.)
TEST_F(DaysOfAShop, PapersThatAreTooWeakLeaveThreeWaysOut) {
  TakeIn("P,bar,Vandrek,T901,S355J2,round 100,6000,0,3.1,,1\nQ,bar,Vandrek,T902,S355J2,round 100,6000,0,2.2,,1\n");
  Certify("C1,3.1,Vandrek,T901,round 100,S355J2\nC2,2.2,Vandrek,T902,round 100,S355J2\n");
  Want("A", "O1,10,Pallant,round 100,S355J2,280,25,3.1,,,\n");
  const Ran ran = As("planner", {"allocate", "A", "--dry"});
  EXPECT_EQ(ran.code, 3) << ran;
  EXPECT_TRUE(Has(ran.out, "the shortest bar to buy for 4 is 1201 mm")) << ran;
  EXPECT_TRUE(Has(ran.out, "way out, part ship: 21 of 25 can be cut and shipped now")) << ran;
  EXPECT_TRUE(Has(ran.out, "way out, wait: until metal for the other 4 is here")) << ran;
  EXPECT_TRUE(Has(ran.out, "way out, weaker papers: 4 from metal with 2.2, once the customer accepts that in writing for 4")) << ran;
  const Ran json = As("planner", {"allocate", "A", "--json"});
  const Json ways = Json::parse(json.out)[0]["ways_out"];
  ASSERT_EQ(ways.size(), 3U) << json;
  EXPECT_EQ(ways[2]["count"], 4);
  const Json sheet = Sheet(1);
  EXPECT_EQ(sheet["blocks"].size(), 1U) << "nothing of the 2.2 bar";
  EXPECT_EQ(sheet["blocks"][0]["cuts"][0]["count"], 21);
  EXPECT_EQ(sheet["blocks"][0]["left_nm"], 66 * kMm);
  EXPECT_EQ(sheet["blocks"][0]["left"], "scrap");
}

}  // namespace
}  // namespace heatkeep::command
