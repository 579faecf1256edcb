// heatkeep receive: what a lorry brings, from a file.

#include "tests/command/works.h"

namespace heatkeep::command {
namespace {

struct Receive : Works {
  Ran Take(const std::string& text, const std::string& who = "clerk", const std::string& name = "d.csv") {
    path = File(name, text);
    return As(who, {"receive", path});
  }
  std::int64_t Pieces() { return Number("select count(*) as n from book.piece"); }
  std::string path;
};

constexpr const char* kHead = "note,supplier,mill,heat,read_from,grade,section,length,count,slip_count,weighed,place,received,papers\n";
std::string Bars(const std::string& note = "N1", const std::string& heat = "K3317") {
  return note + ",Vandrek,Vandrek," + heat + ",metal,42CrMo4,round 80,6000 mm,2,2,473 kg,B1-1,2026-03-02,none\n";
}

// Round 80 at 7850 kg/m3 is 39.458 kg/m: 2 x 6 m are 473.5 kg.
TEST_F(Receive, TakesInWhatWasCountedAndSaysItsMass) {
  const Ran ran = Take(kHead + Bars());
  EXPECT_EQ(ran.code, 0) << ran;
  EXPECT_EQ(ran.out, "2 pieces taken in, 474 kg by theory\n");
  EXPECT_EQ(ran.err, "");
  EXPECT_EQ(Number("select sum(length_nm)::bigint as n from book.piece"), 12000 * kMm);
}

TEST_F(Receive, WhatTheBookRefusesNamesTheRowOfTheFile) {
  const std::string place = File("p.json", R"({"places": [{"place": "F2-1", "site": "main", "kind": "rack", "max_length": "3000 mm"}]})");
  ASSERT_EQ(As("owner", {"shop", "set", place}).code, 0);
  const Ran ran = Take(kHead + Bars() + "N2,Vandrek,Vandrek,K1,metal,42CrMo4,round 80,2000,1,,,F2-1,,none\n" +
                       "N2,Vandrek,Vandrek,K1,metal,42CrMo4,round 80,6000,1,,,F2-1,,none\n");
  EXPECT_EQ(ran.code, 1) << ran;
  EXPECT_TRUE(Has(ran.err, "heatkeep: " + path + ":4: F2-1 takes lengths up to 3000 mm; this piece is 6000 mm\n")) << ran;
  const std::string opening = File("o.csv",
                                   "old_tag,kind,mill,heat,grade,section,length,place\nA,bar,Vandrek,K1,42CrMo4,round 80,2000,F2-1\n"
                                   "B,bar,Vandrek,K1,42CrMo4,round 80,6000,F2-1\n");
  const Ran opened = As("clerk", {"opening", opening});
  EXPECT_EQ(opened.code, 1) << opened;
  EXPECT_TRUE(Has(opened.err, opening + ":3: F2-1 takes lengths up to 3000 mm")) << opened;
  EXPECT_EQ(Pieces(), 0) << "all or nothing";
}

TEST_F(Receive, KeepsTheTimeItReallyCame) {
  ASSERT_EQ(Take(kHead + Bars()).code, 0);
  EXPECT_EQ(Word("select min(true_at)::date::text as w from book.happening where tbl = 'piece'"), "2026-03-02");
  EXPECT_EQ(Word("select (min(at)::date = now()::date)::text as w from book.happening where tbl = 'piece'"), "true");
  EXPECT_EQ(Word("select received_at::date::text as w from book.receipt"), "2026-03-02");
}

TEST_F(Receive, RefusesADateToCome) {
  const Ran ran = Take(kHead + std::string("N1,Vandrek,Vandrek,K1,metal,42CrMo4,round 80,6000,1,,,,2198-01-01,none\n"));
  EXPECT_EQ(ran.code, 1) << ran;
  EXPECT_TRUE(Has(ran.err, "in the future")) << ran;
  EXPECT_EQ(Pieces(), 0);
}

TEST_F(Receive, TheSameFileTwiceAddsNothing) {
  ASSERT_EQ(Take(kHead + Bars()).code, 0);
  const std::string before = Digest();
  const Ran again = As("clerk", {"receive", path});
  EXPECT_EQ(again.code, 0) << again;
  EXPECT_EQ(again.out, "this file was taken in before: nothing was added\n");
  EXPECT_EQ(Digest(), before);
}

TEST_F(Receive, TheSameNoteWithOtherLinesIsRefused) {
  ASSERT_EQ(Take(kHead + Bars()).code, 0);
  const Ran ran = Take(kHead + Bars() + Bars("N2"), "clerk", "other.csv");
  EXPECT_EQ(ran.code, 1) << ran;
  EXPECT_TRUE(Has(ran.err, "delivery note N1 of Vandrek was received before, with other lines")) << ran;
  EXPECT_EQ(Pieces(), 2) << "nor is the other note of the file taken";
}

TEST_F(Receive, OfTwoNotesTheFirstIsNotTakenWhenTheBookRefusesTheSecond) {
  ASSERT_EQ(Take(kHead + Bars("N2")).code, 0);
  const std::string before = Digest();
  const Ran ran = Take(kHead + Bars("N1") + Bars("N2"), "clerk", "two.csv");
  EXPECT_EQ(ran.code, 1) << ran;
  EXPECT_FALSE(Has(ran.out, "taken in")) << ran;
  EXPECT_EQ(Digest(), before);
}

TEST_F(Receive, NamesEveryBadLineAndAppliesNothing) {
  const Ran unread = Take(kHead + Bars() + "N1,Vandrek,Vandrek,K1,metal,42CrMo4,blob 80,6000,1,,,,,none\n" +
                          "N1,Vandrek,Vandrek,K1,metal,42CrMo4,round 80,-5,0,,,,,none\n");
  EXPECT_EQ(unread.code, 2) << unread;
  EXPECT_TRUE(Has(unread.err, path + ":3: section: ")) << unread;
  EXPECT_TRUE(Has(unread.err, path + ":4: length: ")) << unread;
  EXPECT_TRUE(Has(unread.err, path + ":4: count: ")) << unread;
  EXPECT_TRUE(unread.err.ends_with("nothing was changed\n")) << unread;
  EXPECT_EQ(unread.out, "");
  EXPECT_EQ(Pieces(), 0);
}

TEST_F(Receive, NamesEveryWordTheBookDoesNotKnowByItsLine) {
  const Ran ran = Take(kHead + Bars() + "N1,Vandrek,Vandrek,K1,metal,42CrMo5,round 80,6000,1,,,,,none\n" +
                       "N1,Nobody,Vandreck,K1,metal,42CrMo4,round 80,6000,1,,,Z9,,none\n");
  EXPECT_EQ(ran.code, 2) << ran;
  EXPECT_EQ(ran.err,
            path + ":3: grade \"42CrMo5\" is not in the book; expected a designation or number of the grade list\n" + path +
                ":4: supplier \"Nobody\" is not in the book; expected a name that the owner has entered\n" + path +
                ":4: mill \"Vandreck\" is not in the book; expected a name that the owner has entered\n" + path +
                ":4: place \"Z9\" is not in the book; expected a place of the shop\nnothing was changed\n");
  EXPECT_EQ(Pieces(), 0);
}

TEST_F(Receive, SaysWhatDoesNotAgreeAndQuarantinesIt) {
  const Ran ran = Take(std::string(kHead) + "N1,Vandrek,Vandrek,K3317,metal,42CrMo4,round 80,6000,10,11,,,,awaited\n" +
                       "N1,Vandrek,Vandrek,K3371,slip,42CrMo4,round 80,6000,1,1,,,,none\n" +
                       "N1,Vandrek,Vandrek,,none,42CrMo4,round 80,6000,1,1,,,,none\n" +
                       "N1,Vandrek,Vandrek,O7715,metal,42CrMo4,round 80,1000,1,1,45 kg,,,none\n" +
                       "N1,Vandrek,Vandrek,07715,metal,42CrMo4,round 80,1000,1,1,,,,none\n");
  EXPECT_EQ(ran.code, 0) << ran;
  EXPECT_EQ(ran.out,
            "note N1, line 2: counted 10, the slip says 11\n"
            "note N1, line 3: the heat was read from the slip, not from the metal - QUARANTINED\n"
            "note N1, line 4: its heat could not be read - QUARANTINED\n"
            "note N1, line 5: weighed 45.0 kg, theory says 39.5 kg - QUARANTINED\n"
            "note N1, line 6: looks like heat O7715\n"
            "14 pieces taken in, 2 920 kg by theory, 3 of them quarantined\n");
  EXPECT_EQ(Number("select count(*) as n from book.piece where quarantine is not null"), 3);
}

TEST_F(Receive, IsTheClerksAndSaysSoInPlainWords) {
  const std::string before = Digest();
  const Ran ran = Take(kHead + Bars(), "saw");
  EXPECT_EQ(ran.code, 1) << ran;
  EXPECT_TRUE(Has(ran.err, "you may not do this")) << ran;
  EXPECT_TRUE(Has(ran.err, "receive_delivery")) << ran;
  EXPECT_EQ(ran.out, "");
  EXPECT_EQ(Digest(), before);
  const Ran stranger = Take(kHead + Bars(), "stranger");
  EXPECT_EQ(stranger.code, 4) << "no door to the book" << stranger;
}

// Windows-1252, semicolons, a decimal comma, the section with the diameter sign: as a spreadsheet saves it here.
TEST_F(Receive, ReadsWhatAEuropeanSpreadsheetSaves) {
  const std::string rows =
      "note;supplier;mill;heat;read_from;grade;section;length;count;weighed\r\n"
      "N1;Vandrek;Vandrek;K1;metal;42CrMo4;\xD8 80;1523,5 mm;1;60,1 kg\r\n";
  const Ran ran = Take(rows);
  EXPECT_EQ(ran.code, 0) << ran;
  EXPECT_EQ(Number("select length_nm as n from book.piece"), 1'523'500'000);
  EXPECT_EQ(Word("select dim1_nm::text as w from book.section"), "80000000");
  const Ran marked = Take(
      "\xEF\xBB\xBF"
      "note;supplier;mill;heat;read_from;grade;section;length;count\n"
      "N2;Vandrek;Vandrek;K1;metal;42CrMo4;\xC3\x98 80;1000,25;1\n",
      "clerk", "marked.csv");
  EXPECT_EQ(marked.code, 0) << marked;
  EXPECT_EQ(Number("select min(length_nm) as n from book.piece"), 1'000'250'000);
  EXPECT_EQ(Number("select count(*) as n from book.section"), 1) << "the same section";
}

TEST_F(Receive, AFileThatIsNotThereIsBadInput) {
  const Ran ran = As("clerk", {"receive", PathOf("none.csv")});
  EXPECT_EQ(ran.code, 2) << ran;
  EXPECT_TRUE(Has(ran.err, "none.csv: there is no such file")) << ran;
  EXPECT_EQ(As("clerk", {"receive", PathOf("")}).code, 2) << "a folder";
  EXPECT_EQ(Take("").code, 2) << "an empty file";
  EXPECT_EQ(Take("note,supplier,mill,heat,read_from,grade,section,length\n").code, 2) << "no column count";
}

TEST_F(Receive, AnswersWithEveryTagAsJson) {
  Take(kHead + Bars());
  const std::string file = File("j.csv", kHead + Bars("N7", "K9"));
  const Json answers = Asked("clerk", {"receive", file});
  ASSERT_EQ(answers.size(), 1U);
  EXPECT_EQ(answers[0]["note"], "N7");
  EXPECT_EQ(answers[0]["lines"][0]["tags"].size(), 2U);
  EXPECT_EQ(answers[0]["lines"][0]["theoretical_g"], 473'501);
  EXPECT_TRUE(Asked("clerk", {"receive", file})[0].contains("again"));
  EXPECT_EQ(Broken(), "");
}

// Slip: 12 x round 80 x 6 000, heat K3317, 2 841.0 kg. On the lorry 11; one is stencilled K3371. The certificate names K3317 only.
// Common practice of the trade, no source; figures by hand: 39.458 kg/m x 6 m = 236.75 kg a bar.
TEST_F(Receive, AShortDeliveryWithOneBarOfAnotherHeatIsTakenInClaimedAndCertifiedByFiles) {
  const Ran ran = Take(
      "note,supplier,slip_line,mill,heat,read_from,slip_heat,grade,section,condition,length,count,slip_count,place\n"
      "S-77,Vandrek,1,Vandrek,K3317,metal,K3317,42CrMo4,round 80,+QT,6000,10,12,B1-1\n"
      "S-77,Vandrek,1,Vandrek,K3371,metal,K3317,42CrMo4,round 80,+QT,6000,1,,QUAR\n");
  EXPECT_EQ(ran.code, 0) << ran;
  EXPECT_EQ(ran.out,
            "note S-77, line 2: counted 10, the slip says 12\n"
            "note S-77, line 3: the heats disagree: metal K3371, slip K3317 - QUARANTINED\n"
            "11 pieces taken in, 2 604 kg by theory, 1 of them quarantined\n");
  const Ran papers = As("quality",
                        {"certificate", "add",
                         File("c.csv",
                              "number,type,issuer,heat,section,grade,condition,issued\n"
                              "C/1,3.1,Vandrek,K3317,round 80,42CrMo4,+QT,2026-01-05\n")});
  EXPECT_EQ(papers.code, 0) << papers;
  EXPECT_EQ(Number("select sum(length_nm)::bigint as n from api.candidates"), 60000 * kMm);
  EXPECT_EQ(Number("select sum(theoretical_mass_g)::bigint as n from book.receipt_line where stopped is null"), 2'367'504);
  EXPECT_EQ(Number("select sum(mass_g)::bigint as n from api.stock_on_hand where blocked like 'quarantine%'"), 236'750);
  EXPECT_EQ(
      As("clerk", {"receipt", "claims", "S-77"}).out,
      "Vandrek  S-77  1  short 1: the slip says 12 bars round 80 42CrMo4 of 6000 mm, 11 came (236.75 kg by theory)\n"
      "Vandrek  S-77  3  1 bars round 80 42CrMo4 of 6000 mm not as ordered: the heats disagree: metal K3371, slip K3317 (236.75 kg by theory)\n");
}

TEST_F(Receive, TheDeviceTellsTheDoubtAndAStrapIsABundle) {
  ASSERT_EQ(As("quality", {"device", "add", "tape 7", "--kind", "tape", "--site", "main"}).code, 0);
  ASSERT_EQ(As("quality",
               {"device", "calibrate", "tape 7", "--on", "2026-01-02", "--due", "2099-01-01", "--doubt", "2 mm", "--certificate", "K 7"})
                .code,
            0);
  const Ran ran = Take(
      "note,supplier,mill,heat,read_from,grade,section,length,count,place,bundle,measured_with,owner,owner_ref,rests\n"
      "S-78,Ister,Vandrek,K1,tag,42CrMo4,round 80,6000,3,B1-1,S-12,tape 7,Ister,IS-9,return\n");
  EXPECT_EQ(ran.code, 0) << ran;
  EXPECT_EQ(Number("select min(doubt_nm) as n from book.piece"), 2 * kMm);
  EXPECT_EQ(Word("select bundle || ' ' || bars as w from api.bundles where strapped"), "S-12 3");
  EXPECT_EQ(Word("select distinct owner || ' ' || owner_ref || ' ' || rests_rule as w from api.customer_property"), "Ister IS-9 return");
}

TEST_F(Receive, TheOpeningBalanceKeepsEachRowAsItWasTyped) {
  const Ran ran = As("clerk", {"opening", File("o.csv", "old_tag;kind;grade;section;length;heat\nI3;drop;42CrMo4; round 80 ;\"1100\";\n")});
  EXPECT_EQ(ran.code, 0) << ran;
  EXPECT_EQ(Word("select raw_text as w from api.receipts"), "I3;drop;42CrMo4; round 80 ;\"1100\";");
}

}  // namespace
}  // namespace heatkeep::command
