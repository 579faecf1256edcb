// The stock side by the command line: deeds answer in words, lists as JSON, every help has an example.
#include <fstream>
#include <set>

#include "tests/command/works.h"

namespace heatkeep::command {
namespace {

struct StockSide : Works {
  void SetUp() override {
    TakeIn("T1,drop,Vandrek,K3317,42CrMo4,round 80,640,1,3.1,,\nT2,drop,Vandrek,K3317,42CrMo4,round 80,600,1,3.1,,\n");
    Certify("C1/7,3.1,Vandrek,K3317,round 80,42CrMo4\n");
    for (const char* old : {"T1", "T2"}) ASSERT_EQ(As("clerk", {"putaway", TagOf(old), "B1-1"}).code, 0);
  }
  std::string Said(const std::string& who, const Words& words) {
    const Ran ran = As(who, words);
    EXPECT_EQ(ran.code, 0) << ran;
    return ran.out;
  }
};

TEST_F(StockSide, APlaceIsCountedAndWhatIsMissingComesBackAsWhatItIs) {
  const std::string one = TagOf("T1"), two = TagOf("T2");
  EXPECT_EQ(Said("planner", {"count", "freeze", "B1-1"}), "B1-1 is frozen: nothing is taken from or put in it\n");
  EXPECT_EQ(Said("clerk", {"count", "seen", "B1-1", two + "=599 mm", "--unmarked", "round 80=638 mm=...3317", "--done"}),
            "2 pieces counted in B1-1\n");
  const Json differences = Asked("planner", {"count", "differences"});
  ASSERT_EQ(differences.size(), 3u);
  EXPECT_EQ(As("clerk", {"count", "approve", "B1-1", "--words", "looked"}).code, 1);
  EXPECT_TRUE(Has(Said("planner", {"count", "approve", "B1-1", "--words", "looked"}), "B1-1: missing " + one + "; found without a tag "));
  const std::string found = Word("select tag as w from api.stock_on_hand where heat is null");
  EXPECT_EQ(Said("quality", {"piece", "identity", found, "--method", "mark", "--result", "half a stencil", "--as-tag", one}),
            found + " is " + one + " now, by test_quality\n");
  EXPECT_EQ(Balance("K3317", "unexplained"), 3 * kMm);  // 2 of one, 1 of the other
  EXPECT_TRUE(Has(Said("clerk", {"piece", "history", one}), "reestablish_identity"));
  EXPECT_EQ(Broken(), "");
}

TEST_F(StockSide, ListsSayWhatIsPromisedLiftedReversedAndCutEarly) {
  const std::string two = TagOf("T2");
  Want("A", "O1,10,Pallant,round 80,42CrMo4,290,1,3.1,,,\n");
  ASSERT_EQ(Plan("A"), 1);
  const std::string stock = Said("saw", {"stock"});
  EXPECT_TRUE(Has(stock, "on rack, promised to plan 1\n")) << stock;
  EXPECT_EQ(stock.find("promised"), stock.rfind("promised")) << "only one of the two is";
  Said("quality", {"hold", "piece", two, "--reason", "crack seen"});
  Said("quality", {"hold", "lift", "1", "--evidence", "no crack"});
  EXPECT_TRUE(Has(Said("quality", {"hold", "list"}), "crack seen  held by test_quality  LIFTED by test_quality:  no crack\n"));
  const std::string file =
      File("n.csv", "note,supplier,mill,heat,read_from,grade,section,length,count\nV1,Vandrek,Vandrek,K9,metal,42CrMo4,round 80,6000,1\n");
  Said("clerk", {"receive", file});
  EXPECT_FALSE(Has(Said("clerk", {"receipt", "list"}), "REVERSED"));
  Said("quality", {"receipt", "reverse", "V1", "--supplier", "Vandrek", "--reason", "wrong note"});
  EXPECT_TRUE(Has(Said("clerk", {"receipt", "list"}), "REVERSED by test_quality:  wrong note\n")) << Said("clerk", {"receipt", "list"});
  EXPECT_TRUE(Has(Said("quality", {"papers", "list"}), "accepted by test_quality"));
  EXPECT_FALSE(Has(Said("quality", {"papers", "list"}), "  0")) << Said("quality", {"papers", "list"});
}

TEST_F(StockSide, ADeedEnteredLateSaysSoInTheHistory) {
  const std::string one = TagOf("T1");
  Said("saw",
       {"piece", "damage", one, "--kind", "bent", "--words", "3 mm", "--usable", "--true-at", "2026-01-02T03:04", "--device", "scanner 4"});
  const Json history = Asked("clerk", {"piece", "history", one});
  EXPECT_TRUE(Has(history.back()["entered"], "days later by test_saw")) << history.back();
  EXPECT_EQ(history.back()["device"], "scanner 4");
}

TEST_F(StockSide, APictureIsKeptAndComesBackByItsSha256) {
  const std::string one = TagOf("T1");
  const std::string png("\x89PNG\r\n\x1a\n\0\0\0\rIHDR", 16);
  std::ofstream(PathOf("mark.png"), std::ios::binary) << png;
  EXPECT_TRUE(Has(Said("clerk", {"piece", "photo", one, PathOf("mark.png"), "--kind", "mark"}), "photo 1 of " + one + ", SHA-256 "));
  EXPECT_EQ(Word("select encode(bytes, 'base64') as w from book.document_file"), "iVBORw0KGgoAAAANSUhEUg==");
  const Ran text = As("clerk", {"piece", "photo", one, File("mark.txt", "no picture"), "--kind", "mark"});
  EXPECT_EQ(text.code, 1);
  EXPECT_TRUE(Has(text.err, "JPEG or PNG")) << text;
}

TEST_F(StockSide, WordsThatCannotBeReadAreRefusedBeforeTheBookIsAsked) {
  const std::string digest = Digest();
  for (const auto& [words, wrong] : std::vector<std::pair<Words, std::string>>{
           {{"piece", "found", "--section", "octagon 5", "--length", "5 mm", "--marks", "none", "--place", "B1-1"}, "--section: "},
           {{"piece", "found", "--section", "round 80", "--length", "1,100", "--marks", "none", "--place", "B1-1"}, "--length: "},
           {{"papers", "chase", "Vandrek", "K3317", "--on", "tomorrow", "--words", "w"}, "--on: "},
           {{"count", "seen", "B1-1", "--unmarked", "round 80"}, "SECTION=LENGTH=MARKS"},
           {{"expected", "promise", "P1", "1", "--for", "O1", "--bars", "1"}, "ORDER/LINE"}}) {
    const Ran ran = As("all", words);
    EXPECT_EQ(ran.code, 2) << ran;
    EXPECT_TRUE(Has(ran.err, wrong)) << wrong << '\n' << ran;
  }
  EXPECT_EQ(Digest(), digest);
}

TEST_F(StockSide, AReleaseLimitsTheUseAndAQuarantineHasItsPlaceEachWithItsTimeAndDevice) {
  const std::string one = TagOf("T1");
  EXPECT_EQ(
      Said("saw", {"quarantine", one, "--reason", "a seam", "--place", "QUAR", "--true-at", "2026-01-02T03:04", "--device", "scanner 4"}),
      one + " is in quarantine, in QUAR\n");
  EXPECT_TRUE(Has(Said("quality", {"release", one, "--evidence", "seam ground out", "--not-for", "3.1", "--device", "desk 1"}),
                  one + " is released, not above 2.2: seam ground out"));
  Said("clerk", {"putaway", one, "B1-2", "--device", "scanner 4"});
  EXPECT_EQ(Word("select papers as w from api.stock_on_hand where tag = $1", {one}), "2.2");
  EXPECT_EQ(
      Word("select string_agg(distinct deed || ' on ' || device, ', ') as w from api.piece_history where tag = $1 and device is not null",
           {one}),
      "put_away on scanner 4, quarantine on scanner 4, release on desk 1");
  EXPECT_TRUE(Has(Said("quality", {"hold", "heat", "K3317", "--reason", "letter", "--device", "desk 1"}), "hold 1: 2 pieces stopped\n"));
  EXPECT_EQ(Said("quality", {"hold", "lift", "1", "--evidence", "second letter", "--true-at", "2026-01-02T03:04"}), "hold 1 is lifted\n");
}

TEST_F(StockSide, LengthAndReceiptArePutRightByCommand) {
  const std::string one = TagOf("T1"), two = TagOf("T2");
  EXPECT_TRUE(
      Has(Said("clerk", {"correct", "length", one, "--length", "638 mm", "--cause", "measured again"}), one + ": difference -2 mm"));
  EXPECT_EQ(As("clerk",
               {"correct", "receipt", two, "--mill", "Vandrek", "--heat", "K3371", "--read-from", "metal", "--grade", "42CrMo4",
                "--section", "round 80", "--reason", "misread"})
                .code,
            1);
  EXPECT_EQ(Said("quality",
                 {"correct", "receipt", two, "--mill", "Vandrek", "--heat", "K3371", "--read-from", "metal", "--grade", "42CrMo4",
                  "--section", "round 80", "--reason", "misread"}),
            two + " is put right, with 0 other pieces of the same metal\n");
  EXPECT_EQ(Said("quality", {"papers", "at-risk", "Vandrek", "K3371", "--reason", "promised for Friday"}),
            "1 lot may be cut at risk; nothing of them ships\n");
  const std::string head = "number,type,issuer,heat,section,grade,issued\n";
  EXPECT_EQ(Said("clerk", {"certificate", "file", File("f.csv", head + "C2,3.1,Vandrek,K3371,round 80,42CrMo4,2026-01-05\n")}),
            "1 document filed for 1 lot; they wait until quality accepts them\n");
  Said("quality", {"papers", "accept", "Vandrek", "C2"});
  EXPECT_EQ(As("quality", {"certificate", "replace", PathOf("f.csv")}).code, 2) << "no reason";
  EXPECT_EQ(Said("quality", {"certificate", "replace", PathOf("f.csv"), "--reason", "misprint"}),
            "Vandrek C2, version 2: went with 1 piece, 0 shipments\n1 document filed for 1 lot\n");
  EXPECT_EQ(Broken(), "");
}

TEST_F(StockSide, EveryHelpHasAnExample) {
  int seen = 0;
  for (const auto& [noun, verbs] :
       std::vector<std::pair<std::string, Words>>{{"expected", {"add", "promise", "list"}},
                                                  {"receipt", {"reverse", "decide-over", "sign-opening", "list", "claims"}},
                                                  {"papers", {"at-risk", "chase", "accept", "limit", "awaited", "waiting", "list"}},
                                                  {"bundle", {"make", "open", "move", "list"}},
                                                  {"transfer", {"send", "receive", "list"}},
                                                  {"count", {"freeze", "give-up", "seen", "approve", "list", "differences"}},
                                                  {"device", {"add", "calibrate", "list"}},
                                                  {"label", {"print", "printed", "failed", "list"}},
                                                  {"piece",
                                                   {"damage", "found", "found-again", "identity", "downgrade", "photo", "relabel",
                                                    "write-off", "sell", "buy-over", "history", "photos", "notes"}},
                                                  {"return", {"supplier", "owner", "customer", "list"}},
                                                  {"outside", {"send", "back", "list"}},
                                                  {"hold", {"heat", "lot", "piece", "certificate", "receipt", "lift", "condemn", "list"}},
                                                  {"correct", {"length", "receipt"}},
                                                  {"rules", {"list"}},
                                                  {"heats", {"look-alikes"}},
                                                  {"value", {"list"}},
                                                  {"property", {"list"}}}) {
    for (const std::string& verb : verbs) {
      const Ran help = Heatkeep({noun, verb, "--help"});
      EXPECT_EQ(help.code, 0) << help;
      EXPECT_TRUE(Has(help.out, "example: heatkeep " + noun + " " + verb)) << help;
      EXPECT_TRUE(Has(help.out, "--json")) << help;
      static const std::set<std::string> lists{"list", "claims", "awaited", "waiting", "photos", "notes", "look-alikes"};
      if (lists.contains(verb)) { EXPECT_TRUE(Asked("owner", {noun, verb}).is_array()) << noun << ' ' << verb; }
      ++seen;
    }
  }
  EXPECT_EQ(seen, 69);
}

}  // namespace
}  // namespace heatkeep::command
