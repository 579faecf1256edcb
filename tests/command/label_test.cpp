// Labels from the queue to the printer, and what comes back from the scanner.
#include <filesystem>

#include "schema/terms/scan.h"
#include "tests/command/works.h"

namespace heatkeep::command {
namespace {

struct Label : Works {
  void SetUp() override {
    TakeIn("T1,bar,Vandrek,K1,42CrMo4,round 80,6000,0,3.1,,\nT2,drop,Vandrek,K1,42CrMo4,round 80,457.073,0,3.1,Ister,\n");
    Certify("C1/7,3.1,Vandrek,K1,round 80,42CrMo4\n");
  }
  std::string pdf = PathOf("labels.pdf");
};

TEST_F(Label, ThatWaitAreWrittenAndStayInTheQueueUntilTheyAreConfirmed) {
  const std::string before = Digest();
  const Ran ran = As("clerk", {"label", "print", "--to", pdf});
  EXPECT_EQ(ran.out,
            "wrote " + pdf + ": 2 labels on 2 pages of 100x50\nwhen they are out and legible: heatkeep label printed 1 2 --printer NAME\n")
      << ran;
  EXPECT_EQ(Digest(), before) << "printing says nothing about what came out";
  const Json said = Asked("clerk", {"label", "print", "--to", pdf, "--paper", "a4", "--start", "10"});
  EXPECT_EQ(said["pages"], 2);
  EXPECT_EQ(said["next_start"], 2);
  EXPECT_EQ(said["jobs"], Json({1, 2}));
  EXPECT_EQ(said["labels"][1]["owner"], "OWNED BY ISTER");
  EXPECT_EQ(said["labels"][0]["heat"], "K1");
  ASSERT_EQ(As("clerk", {"label", "printed", "1", "2", "--printer", "gate"}).code, 0);
  const Ran none = As("clerk", {"label", "print", "--to", PathOf("none.pdf")});
  EXPECT_EQ(none.code, 2);
  EXPECT_TRUE(Has(none.err, "no label waits")) << none;
  EXPECT_FALSE(std::filesystem::exists(PathOf("none.pdf")));
}

TEST_F(Label, AHeatOnTwoLinesIsTakenNeitherFromAFileNorByTheBook) {
  const std::string file =
      File("two.csv",
           "note,supplier,mill,heat,read_from,grade,section,length,count\nL1,Mirrowby,Vandrek,\"D1\n2\",metal,42CrMo4,round 80,6000,1\n");
  const Ran ran = As("clerk", {"receive", file});
  EXPECT_EQ(ran.code, 2) << ran;
  EXPECT_TRUE(Has(ran.err, "two.csv:2: heat: character U+000A in \"D1?2\"")) << ran;
  const Ran held = As("quality", {"hold", "heat", "K1", "--reason", "doubt\nor not"});
  EXPECT_EQ(held.code, 1) << held;
  EXPECT_TRUE(Has(held.err, "character U+000A")) << held;
}

TEST_F(Label, OfOnePieceIsPrintedAgainOnlyWhereItWasAskedForAtThePiece) {
  const std::string tag = TagOf("T1");
  ASSERT_EQ(As("clerk", {"label", "printed", "1", "--printer", "gate"}).code, 0);
  const Ran refused = As("clerk", {"label", "print", "--to", pdf, "--tags", tag});
  EXPECT_EQ(refused.code, 2);
  EXPECT_TRUE(Has(refused.err, "no label of " + tag + " waits") && Has(refused.err, "heatkeep piece relabel")) << refused;
  const std::string scan = WriteEnvelope({{"S", tag}, {"1T", "K1"}});
  ASSERT_EQ(As("clerk", {"piece", "relabel", tag, "--why", "torn", "--old-destroyed", "--scanned", scan}).code, 0);
  EXPECT_EQ(Asked("clerk", {"label", "print", "--to", pdf, "--tags", tag})["labels"][0]["reprint"], 1);
}

TEST_F(Label, OfPlacesAndOfCutPiecesArePrintedToo) {
  EXPECT_EQ(Asked("clerk", {"label", "print", "--to", pdf, "--place", "B1-1,GATE"})["labels"],
            Json({{{"place", "GATE"}}, {{"place", "B1-1"}}}))
      << "in walking order";
  EXPECT_EQ(As("clerk", {"label", "print", "--to", pdf, "--place", "B9-9"}).code, 2);
  EXPECT_EQ(As("clerk", {"label", "print", "--to", pdf, "--order", "O1"}).code, 2);
  Want("A", "O1,10,Pallant,round 80,42CrMo4,290,14,3.1,,,\n");
  ASSERT_EQ(Plan("A"), 1);
  ASSERT_EQ(As("saw", {"cut", "record", "--plan", "1"}).code, 0);
  const Json said = Asked("saw", {"label", "print", "--to", pdf, "--order", "O1"});
  EXPECT_EQ(said["labels"], Json({{{"order", "O1"}, {"line", "10"}, {"heat", "K1"}, {"count", 14}, {"blocked", ""}}}));
  EXPECT_EQ(said["jobs"], Json::array()) << "a batch is no job of the queue";
  EXPECT_EQ(As("saw", {"label", "print", "--to", pdf, "--order", "O1", "--place", "GATE"}).code, 2);
}

TEST_F(Label, TakesItsPaperFromTheShopsSettings) {
  const auto set = [&](const std::string& value) {
    return As("owner", {"shop", "set", File("s.json", "{\"settings\": {\"label_paper\": \"" + value + "\", \"label_code\": \"qr\"}}")});
  };
  EXPECT_EQ(set("62x29").code, 0);
  EXPECT_EQ(Asked("clerk", {"label", "print", "--to", pdf})["paper"], "62x29");
  const Ran wrong = set("63x29");
  EXPECT_EQ(wrong.code, 2);
  EXPECT_TRUE(Has(wrong.err, "settings.label_paper: \"63x29\" is neither; expected 100x50 or 62x29 or a4 or letter")) << wrong;
}

TEST_F(Label, AScanIsTakenWhereverATagOrPlaceIs) {
  const std::string tag = TagOf("T1");
  const std::string scan = WriteEnvelope({{"S", tag}, {"1T", "K1"}, {"7Q", "6000MM"}});
  EXPECT_EQ(As("clerk", {"putaway", scan, WriteEnvelope({{"L", "B1-2"}})}).code, 0);
  EXPECT_EQ(Word("select place as w from api.stock_on_hand where tag = $1", {tag}), "B1-2");
  Want("A", "O1,10,Pallant,round 80,42CrMo4,290,14,3.1,,,\n");
  ASSERT_EQ(Plan("A"), 1);
  const Ran pull = As("saw", {"pull", "[)>06S" + tag + "1TK17Q6000MM", "--saw", "1", "--plan", "1"});
  EXPECT_EQ(pull.out, tag + " is at saw 1, for plan 1\n") << pull;
  const Ran place = As("saw", {"pull", WriteEnvelope({{"L", "B1-2"}}), "--saw", "1", "--plan", "1"});
  EXPECT_EQ(place.code, 2);
  EXPECT_TRUE(Has(place.err, "no tag is in the scan")) << place;
}

TEST(LabelScan, IsSaidFieldByField) {
  const Ran said = Heatkeep({"tag", "check", WriteEnvelope({{"S", "A000001D"}, {"1T", "K 1\"7"}, {"7Q", "457MM"}})});
  EXPECT_EQ(said.code, 0);
  EXPECT_EQ(said.out, "tag A000001D\nheat K 1\"7\nlength 457MM\n");
  const Ran bare = Heatkeep({"tag", "check", "[)>06SA000001D1TK3317Q457MM", "--json"});
  const Json json = Json::parse(bare.out);
  EXPECT_EQ(json["tag"], "A000001D");
  EXPECT_FALSE(json["whole"].get<bool>());
  EXPECT_EQ(json["scan"], Json({{"tag", "A000001D"}}));
  for (const char* hostile : {"[)>05", "[)>06SA000001E",
                              "[)>\x1E"
                              "06\x1D\xFF\x1E\x04"})
    EXPECT_EQ(Heatkeep({"tag", "check", hostile}).code, 2) << hostile;
}

}  // namespace
}  // namespace heatkeep::command
