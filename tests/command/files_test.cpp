// The other files people bring: opening balance, certificates, cut lists, grades, the shop.
#include "tests/command/works.h"

namespace heatkeep::command {
namespace {

using Files = Works;

// An old list with every trap an old list has: 4 lines are good, 15 500 mm; 4 are not (common practice, no source).
TEST_F(Files, OpeningTakesTheGoodLinesAndNamesTheBadWhenAsked) {
  const std::string known = File("d.csv",
                                 "note,supplier,mill,heat,read_from,grade,section,length,count\n"
                                 "N1,Vandrek,Vandrek,07715,metal,C45E,round 60,1000,1\n");
  ASSERT_EQ(As("clerk", {"receive", known}).code, 0);
  const std::string list = File("old.csv",
                                "old_tag;kind;mill;grade;section;length;heat\n"
                                "I1;bar;Vandrek;42CrMo4;round 80;6000;K3317\n"
                                "I2;bar;Vandrek;42CrMo4;round 3 1/8in;6000;K3402\n"
                                "I3;drop;;4140;round 80;1100;\n"
                                "I4;drop;Vandrek;42CrMo4;round 80;1,100;K3317\n"
                                "I1;drop;Vandrek;42CrMo4;round 80;640;K3317\n"
                                "I6;drop;Vandrek;C45E;round 60;2400;O7715\n"
                                "I7;drop;Vandrek;C45E;round 60;0;07715\n"
                                "I8;drop;Vandrek;C45E;round 60;900;1.23E+05\n");
  const std::string before = Digest();
  const Ran refused = As("clerk", {"opening", list});
  EXPECT_EQ(refused.code, 2) << refused;
  EXPECT_EQ(Digest(), before);
  const Ran ran = As("clerk", {"opening", list, "--leave-out-bad"});
  EXPECT_EQ(ran.code, 0) << ran;
  for (const char* line : {":5: length: \"1,100\" can be read two ways", ":6: old_tag \"I1\" stands in line 2 already", ":8: length: \"0\"",
                           ":9: heat: \"1.23E+05\"", ":4: no heat: not for certificated orders"})
    EXPECT_TRUE(Has(ran.err, list + line)) << line << '\n' << ran;
  EXPECT_TRUE(Has(ran.out, "opening balance, line 7: looks like heat 07715\n")) << ran;
  EXPECT_TRUE(Has(ran.out, "4 pieces taken in")) << ran;
  EXPECT_EQ(Number("select sum(length_nm)::bigint as n from book.piece where old_tag is not null"), 15'500 * kMm);
  EXPECT_EQ(Word("select identity::text as w from book.piece join book.lot using (lot_id) where old_tag = 'I3'"), "grade only");
  EXPECT_EQ(
      Word(
          "select g.designation as w from book.piece join book.lot using (lot_id) join book.grade g using (grade_id) where old_tag = 'I3'"),
      "4140");
  EXPECT_EQ(Number("select count(*) as n from book.section where dim1_nm = 79375000"), 1);
  const std::string after = Digest();
  const Ran again = As("clerk", {"opening", list, "--leave-out-bad"});
  EXPECT_EQ(again.code, 0) << again;
  EXPECT_TRUE(Has(again.out, "nothing was added")) << again;
  EXPECT_EQ(Digest(), after);
}

TEST_F(Files, ACutListNamesNobodyOrTheCustomerAsOwner) {
  const std::string list = File("list.csv",
                                "order,line,customer,section,grade,length,quantity,owner\n"
                                "O1,1,Pallant,round 80,42CrMo4,150,1,Drewe\n"
                                "O1,2,,round 80,42CrMo4,150,1,Drewe\n"
                                "O1,3,Drewe,round 80,42CrMo4,150,1,Drewe\n"
                                "O1,4,Pallant,round 80,42CrMo4,150,1,\n");
  const std::string why =
      ": owner: metal of \"Drewe\" is cut for nobody else; expected nobody (our metal) or the customer himself; metal of another is bought over "
      "first (heatkeep piece buy-over)\n";
  const Ran refused = As("planner", {"cutlist", "add", list});
  EXPECT_EQ(refused.code, 2) << refused;
  EXPECT_EQ(refused.err, list + ":2" + why + list + ":3" + why + "nothing was changed\n");
}

TEST_F(Files, OpeningLeavesOutWhatTheBookDoesNotKnowToo) {
  const std::string list = File("old.csv",
                                "old_tag,kind,mill,grade,section,length,heat,place,owner\n"
                                "1,bar,Vandrek,42CrMo5,round 80,6000,K1,,\n"
                                "2,bar,Vandrek,42CrMo4,round 80,6000,K1,Z9,\n"
                                "3,bar,,42CrMo4,round 80,6000,K1,,\n"
                                "4,bar,Vandrek,42CrMo4,round 80,6000,K1,B1-1,\n"
                                "5,bar,Vandrek,42CrMo4,round 80,6000,K1,B1-1,Somebody\n");
  const std::string words = list + ":2: grade \"42CrMo5\" is not in the book; expected a designation or number of the grade list\n" + list +
      ":3: place \"Z9\" is not in the book; expected a place of the shop\n" + list +
      ":4: heat \"K1\" has no mill; expected who made it, since two mills can use the same number\n" + list +
      ":6: owner \"Somebody\" is not in the book; expected a name that the owner has entered\n";
  const Ran refused = As("clerk", {"opening", list});
  EXPECT_EQ(refused.code, 2) << refused;
  EXPECT_EQ(refused.err, words + "nothing was changed\n");
  EXPECT_EQ(Number("select count(*) as n from book.piece"), 0);
  const Ran ran = As("clerk", {"opening", list, "--leave-out-bad"});
  EXPECT_EQ(ran.code, 0) << ran;
  EXPECT_EQ(ran.err, words);
  EXPECT_EQ(Word("select string_agg(old_tag, ' ') as w from book.piece"), "4");
}

TEST_F(Files, AnotherListWithAPieceThatIsThereIsRefused) {
  TakeIn("T1,bar,Vandrek,K1,42CrMo4,round 80,6000,0,none,,\n");
  const Ran ran =
      As("clerk",
         {"opening", File("x.csv", "old_tag,kind,grade,section,length\nT1,bar,42CrMo4,round 80,6000\nT2,bar,42CrMo4,round 80,6000\n")});
  EXPECT_EQ(ran.code, 1) << ran;
  EXPECT_TRUE(Has(ran.err, "already in the book: T1")) << ran;
  EXPECT_EQ(Number("select count(*) as n from book.piece"), 1);
}

constexpr const char* kPapersHead = "number,type,issuer,issued,heat,section,grade,C,Mn,Rm\n";

TEST_F(Files, CertificateFreesItsLotsAndIsFiledOnce) {
  TakeIn("T1,bar,Vandrek,K1,42CrMo4,round 80,6000,0,3.1,,\nT2,bar,Vandrek,K2,42CrMo4,round 80,6000,0,3.1,,\n");
  EXPECT_EQ(Number("select count(*) as n from api.candidates"), 0);
  const std::string file = File("c.csv",
                                std::string(kPapersHead) +
                                    "C1,3.1,Vandrek,2026-01-05,K1,round 80,42CrMo4,0.41,0.75,1050\n"
                                    "C1,3.1,Vandrek,2026-01-05,K2,round 80,1.7225,0.43,0.7,\n");
  const Ran ran = As("quality", {"certificate", "add", file});
  EXPECT_EQ(ran.code, 0) << ran;
  EXPECT_EQ(ran.out, "1 document filed for 2 lots\n");
  EXPECT_EQ(Number("select count(*) as n from api.candidates"), 2);
  EXPECT_EQ(Number("select ppm_x100 as n from book.analysis join book.document_lot using (document_lot_id) join book.lot using (lot_id)"
                   " where heat = 'K1' and element = 'C'"),
            410'000);
  const Ran again = As("quality", {"certificate", "add", file});
  EXPECT_EQ(again.code, 0) << again;
  EXPECT_EQ(again.out, "1 document filed before from this file: nothing was added\n");
  EXPECT_EQ(Number("select count(*) as n from book.document"), 1);
  EXPECT_EQ(
      As("clerk", {"certificate", "add", File("c2.csv", std::string(kPapersHead) + "C9,3.1,Vandrek,2026-01-05,K1,round 80,42CrMo4,,,\n")})
          .code,
      1);
}

TEST_F(Files, CertificateOfAnUnknownHeatFilesNothing) {
  TakeIn("T1,bar,Vandrek,K1,42CrMo4,round 80,6000,0,3.1,,\n");
  const std::string before = Digest();
  const Ran ran = As("quality",
                     {"certificate", "add",
                      File("c.csv",
                           std::string(kPapersHead) +
                               "C1,3.1,Vandrek,2026-01-05,K1,round 80,42CrMo4,,,\nC2,3.1,Vandrek,2026-01-05,K7,round 80,42CrMo4,,,\n")});
  EXPECT_EQ(ran.code, 1) << ran;
  EXPECT_TRUE(Has(ran.err, "document C2 names heat K7 in round 80")) << ran;
  EXPECT_EQ(Digest(), before);
  EXPECT_EQ(Number("select count(*) as n from book.document"), 0);
  const Ran other =
      As("quality", {"certificate", "add", File("d.csv", std::string(kPapersHead) + "C1,3.1,Vandrek,2026-01-05,K1,round 80,C45E,,,\n")});
  EXPECT_EQ(other.code, 1) << other;
  EXPECT_TRUE(Has(other.err, "the metal was received as 42CrMo4")) << other;
  const std::string undated = File("u.csv", std::string(kPapersHead) + "C1,3.1,Vandrek,,K1,round 80,42CrMo4,,,\n");
  const Ran when = As("quality", {"certificate", "add", undated});
  EXPECT_EQ(when.code, 2) << when;
  EXPECT_TRUE(Has(when.err, undated + ":2: issued is empty; expected the date on the document")) << when;
  const std::string bad =
      File("e.csv", std::string(kPapersHead) + "C1,4.1,Vandrek,2026-01-05,K1,round 80,42CrMo4,,,\nC1,3.1,Nobody,,K1,round 80,42,,,\n");
  const Ran unread = As("quality", {"certificate", "add", bad});
  EXPECT_EQ(unread.code, 2) << unread;
  EXPECT_TRUE(Has(unread.err, bad + ":2: type: ")) << unread;
}

constexpr const char* kCutsHead = "order,line,customer,section,grade,length,quantity\n";

TEST_F(Files, CutListComesInOnceAndIsListed) {
  EXPECT_EQ(As("planner", {"cutlist", "list"}).out, "no cut lists yet; `heatkeep cutlist add FILE` brings one in\n");
  const std::string file =
      File("monday.csv", std::string(kCutsHead) + "O1,10,Pallant,round 80,42CrMo4,240,7\nO1,20,Pallant,round 2in,C45E,4in,3\n");
  const Ran ran = As("planner", {"cutlist", "add", file});
  EXPECT_EQ(ran.code, 0) << ran;
  EXPECT_EQ(ran.out, "cut list monday: 2 lines\n");
  const std::string before = Digest();
  EXPECT_EQ(As("planner", {"cutlist", "add", file}).out, "cut list monday: in the book already, nothing was added\n");
  EXPECT_EQ(Digest(), before);
  EXPECT_EQ(Asked("planner", {"cutlist", "list"}),
            Json::parse(R"([{"name":"monday","lines":2,"pieces":10,"cut":0,"planned":0,"open":10,"due":""}])"));
  EXPECT_EQ(Number("select length_nm as n from book.cut_line where line_no = '20'"), 101'600'000);
}

TEST_F(Files, CutListWithALineOfAnotherIsRefused) {
  Want("A", "O1,10,Pallant,round 80,42CrMo4,240,7,,,,\n");
  const Ran ran =
      As("planner",
         {"cutlist", "add",
          File("B.csv", std::string(kCutsHead) + "O2,10,Pallant,round 80,42CrMo4,240,7\nO1,10,Pallant,round 80,42CrMo4,240,7\n")});
  EXPECT_EQ(ran.code, 1) << ran;
  EXPECT_TRUE(Has(ran.err, "already in the book: order O1 line 10 (in A)")) << ran;
  const Ran name =
      As("planner", {"cutlist", "add", File("x.csv", std::string(kCutsHead) + "O3,10,Pallant,round 80,42CrMo4,240,7\n"), "--name", "A"});
  EXPECT_EQ(name.code, 1) << name;
  EXPECT_TRUE(Has(name.err, "a cut list named \"A\" is already in the book")) << name;
  EXPECT_EQ(Number("select count(*) as n from book.cut_line"), 1);
  EXPECT_EQ(As("saw", {"cutlist", "add", PathOf("x.csv")}).code, 1);
}

TEST_F(Files, CutListNamesEveryBadLine) {
  const std::string file =
      File("A.csv", std::string(kCutsHead) + "O1,10,Pallant,round 80,42CrMo4,240,0\nO1,10,Pallant,round 80,42CrMo4,1,1\n");
  const Ran ran = As("planner", {"cutlist", "add", file});
  EXPECT_EQ(ran.code, 2) << ran;
  EXPECT_TRUE(Has(ran.err, file + ":2: quantity: ")) << ran;
  const std::string words =
      File("B.csv", std::string(kCutsHead) + "O1,10,Palant,round 80,42CrMo4,240,1\nO1,20,Pallant,round 80,43CrMo4,240,1\n");
  const Ran unknown = As("planner", {"cutlist", "add", words});
  EXPECT_EQ(unknown.code, 2) << unknown;
  EXPECT_TRUE(Has(unknown.err, words + ":2: customer \"Palant\" is not in the book")) << unknown;
  EXPECT_TRUE(Has(unknown.err, words + ":3: grade \"43CrMo4\" is not in the book")) << unknown;
  EXPECT_EQ(Number("select count(*) as n from book.cut_list"), 0);
}

TEST_F(Files, GradesAreAddedOnceAndABadListAddsNone) {
  const Ran again = As("owner", {"grades", "add", HEATKEEP_SEED "/reference/grades.csv"});
  EXPECT_EQ(again.out, "0 grades added\n") << again;
  const std::string bad = File("g.csv", "designation,number\nNew1,\n");
  const Ran ran = As("owner", {"grades", "add", bad});
  EXPECT_EQ(ran.code, 2) << ran;
  EXPECT_TRUE(Has(ran.err, bad + ":")) << ran;
  EXPECT_EQ(As("clerk", {"grades", "add", HEATKEEP_SEED "/reference/grades.csv"}).code, 1);
}

}  // namespace
}  // namespace heatkeep::command
