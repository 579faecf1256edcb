#include <gtest/gtest.h>

#include "reports/family_tree.h"
#include "reports/paint_session.h"
#include "reports/recall_report.h"
#include "reports/table_csv.h"
#include "reports/trace_report.h"
#include "tests/reports/invented_trace.h"
#include "tests/reports/read_back.h"

namespace heatkeep {
namespace {

using namespace literals;

const PrintOptions kTold{PaperSize::A4, "2026-11-25T07:40:12", "Ostrel Shaftworks"};

TEST(FamilyTree, ABarIsMadeUpOfWhatLeftItAndWhatIsLeft) {
  const std::vector<TreePiece> pieces = TreePieces(InventedFamily(1, 1).lines);
  ASSERT_EQ(pieces.size(), 2U);
  EXPECT_EQ(pieces[0].piece.depth, 0);
  EXPECT_EQ(pieces[0].parts.size(), 3U);
  EXPECT_EQ(pieces[0].children.size(), 1U);
  PaintSession();
  OrderLetters letters;
  const PieceBar bar = TreeBar(pieces[0], letters);
  EXPECT_EQ(bar.trim, 10_mm);
  EXPECT_EQ(bar.kerf_all, 18_mm);
  EXPECT_EQ(bar.left, 0_mm);
  ASSERT_EQ(bar.runs.size(), 3U);
  EXPECT_EQ(bar.runs[0].letter, "A");
  EXPECT_EQ(bar.runs[1].letter, "reject");
  EXPECT_EQ(bar.runs[2].letter, "drop");
  const BarLayout layout = PieceBarLayout(bar, PaperView(0, 0, 180, 6000_mm, 1));
  EXPECT_EQ(layout.parts.back().part.to, 6000_mm);
}

TEST(FamilyTree, WhatWasCutForOthersIsOneStretchAndWhatDoesNotAddUpIsAPlainBar) {
  std::vector<TraceLine> lines = InventedFamily(1, 0).lines;
  std::erase_if(lines, [](const TraceLine& l) { return l.what == "reject"; });
  OrderLetters letters;
  const PieceBar less = TreeBar(TreePieces(lines)[0], letters);
  EXPECT_EQ(less.runs.back().letter, "other");
  lines[1].length += 6000_mm;
  const PieceBar plain = TreeBar(TreePieces(lines)[0], letters);
  EXPECT_TRUE(plain.runs.empty());
  EXPECT_EQ(plain.left, plain.length);
}

TEST(FamilyTree, ARestThatMeasuredMoreThanTheArithmeticIsDrawnWithItsCuts) {
  std::vector<TraceLine> lines = InventedFamily(1, 1).lines;
  OrderLetters letters;
  const PieceBar exact = TreeBar(TreePieces(lines)[0], letters);
  TraceLine more = lines[2];
  more.what = more.where_now = "unexplained";
  more.name = "rest measured against arithmetic";
  more.kerf = {};
  more.count = 1;
  more.length = {-2'000'000};
  for (TraceLine& line : lines)
    if (line.what == "drop") line.length += 2_mm;
  lines.push_back(more);
  const PieceBar bar = TreeBar(TreePieces(lines)[0], letters);
  EXPECT_EQ(bar.length, exact.length + 2_mm);
  ASSERT_EQ(bar.runs.size(), exact.runs.size());
  EXPECT_EQ(bar.runs.back().length, exact.runs.back().length + 2_mm);
  EXPECT_EQ(TreeWords(TreePieces(lines)[0], letters).back(), "unexplained: -2 mm, rest measured against arithmetic");

  // written off and found again, or sold and come back: as if it had not been
  std::vector<TraceLine> back = InventedFamily(1, 1).lines;
  more.length = 400_mm;
  back.push_back(more);
  more.length = {-400'000'000};
  back.push_back(more);
  EXPECT_EQ(TreeBar(TreePieces(back)[0], letters).length, exact.length);
  EXPECT_EQ(TreeBar(TreePieces(back)[0], letters).runs.size(), exact.runs.size());
  std::swap(back[back.size() - 1], back[back.size() - 2]);
  EXPECT_EQ(TreeBar(TreePieces(back)[0], letters).runs.size(), exact.runs.size());
}

TEST(FamilyTree, AScrapEndIsDrawnBehindTheCutsWhereItWas) {
  std::vector<TraceLine> lines = InventedFamily(1, 0).lines;
  for (TraceLine& line : lines)
    if (line.what == "reject") line.what = "scrap";
  std::swap(lines[1], lines[3]);  // as the book sorts them: what left otherwise before the cuts
  OrderLetters letters;
  const PieceBar bar = TreeBar(TreePieces(lines)[0], letters);
  ASSERT_EQ(bar.runs.size(), 2U);
  EXPECT_EQ(bar.runs[0].letter, "A");
  EXPECT_EQ(bar.runs[1].letter, "scrap");
}

TEST(FamilyTree, HundredsOfPiecesStayReadableOnTheirPages) {
  OwnFolder folder;
  const TraceRecord trace = InventedFamily(60, 4);
  WriteTracePdf(folder / "t.pdf", trace, kTold);
  const std::string text = TextOf(folder / "t.pdf");
  for (const TraceLine& line : trace.lines) EXPECT_NE(text.find(line.name), std::string::npos) << line.name;
  EXPECT_NE(text.find("from " + trace.lines[0].name), std::string::npos);
  EXPECT_GT(PagesOf(folder / "t.pdf"), 20);
  EXPECT_EQ(CrowdingOf(folder / "t.pdf", 210, 297), "");
}

TEST(FamilyTree, ALabelUnderAShortPieceHasRoomOfItsOwn) {
  OwnFolder folder;
  TraceRecord trace = InventedFamily(1, 0);
  const TraceLine bar = trace.lines[0], cut = trace.lines[2];
  for (int mm = 260; mm <= 760; mm += 20) {
    TraceLine drop = bar, piece = cut, scrap = cut;
    drop.what = "drop";
    drop.name = piece.parent = scrap.parent = "D" + std::to_string(mm);
    drop.length = {mm * kNmPerMm};
    drop.now = piece.kerf = scrap.kerf = {};
    piece.count = scrap.count = 1;
    piece.length = {(mm / 2 + 18) * kNmPerMm + kNmPerMm / 2};
    scrap.what = scrap.name = scrap.where_now = "scrap";
    scrap.length = drop.length - piece.length;
    for (const TraceLine& line : {drop, piece, scrap}) trace.lines.push_back(line);
  }
  WriteTracePdf(folder / "t.pdf", trace, kTold);
  EXPECT_NE(TextOf(folder / "t.pdf").find("D500"), std::string::npos);
  EXPECT_EQ(CrowdingOf(folder / "t.pdf", 210, 297), "");
}

TEST(FamilyTree, ChainsDeeperThanThePageIsWideSayWhatTheyCameFrom) {
  OwnFolder folder;
  const TraceRecord trace = InventedFamily(1, 30);
  WriteTracePdf(folder / "t.pdf", trace, kTold);
  EXPECT_NE(TextOf(folder / "t.pdf").find("from " + TreePieces(trace.lines)[29].piece.name), std::string::npos);
  EXPECT_EQ(CrowdingOf(folder / "t.pdf", 210, 297), "");
}

TEST(FamilyTree, AnOrdersHeatsAreStatedOnThePaperWithWhatWasLookedAt) {
  OwnFolder folder;
  TraceRecord trace = InventedFamily(1, 1);
  trace.heats = OrderHeats{true,
                           "All 7 pieces cut for order W-3301 are of heat M2208 of Vandrek; no other heat went into this order.",
                           "Looked at: 7 strokes.",
                           {},
                           {},
                           {}};
  trace.proof = {std::string(64, 'c'), std::string(64, 'a'), "[[\"piece\",1,2,\"00\"]]", 2};
  WriteTracePdf(folder / "t.pdf", trace, kTold);
  const std::string text = TextOf(folder / "t.pdf");
  EXPECT_NE(text.find("no other heat went into this order"), std::string::npos);
  EXPECT_NE(text.find("Looked at: 7 strokes."), std::string::npos);
  EXPECT_NE(text.find(std::string(64, 'c')), std::string::npos);
  EXPECT_TRUE(WholeFile(folder / "t.pdf").ends_with("%record " + std::string(64, 'c') + "\n"));
  EXPECT_EQ(CrowdingOf(folder / "t.pdf", 210, 297), "");
}

TEST(RecallPaper, EveryLineIsOnTheListAndOnlyTheCustomersOnTheLetter) {
  OwnFolder folder;
  const RecallRecord recall = InventedRecall();
  WriteRecallPdf(folder / "r.pdf", recall, kTold);
  const std::string list = TextOf(folder / "r.pdf");
  for (const RecallLine& line : recall.lines) EXPECT_NE(list.find(line.tag), std::string::npos) << line.tag;
  EXPECT_EQ(CrowdingOf(folder / "r.pdf", 210, 297), "");
  EXPECT_EQ(RecallCustomers(recall), (std::vector<std::string>{"Drewe Conveyors", "Pallant Hydraulics"}));
  for (const Language language : {Language::English, Language::German}) {
    WriteRecallLetter(folder / "l.pdf", recall, "Pallant Hydraulics", {"Ostrel Shaftworks", "a second analysis", language}, kTold);
    const std::string letter = TextOf(folder / "l.pdf");
    EXPECT_EQ(CrowdingOf(folder / "l.pdf", 210, 297), "");
    for (const RecallLine& line : recall.lines)
      if (line.customer == "Drewe Conveyors") {
        for (const std::string& word : {line.customer, line.note, line.order}) EXPECT_EQ(letter.find(word), std::string::npos) << word;
      } else if (line.customer == "Pallant Hydraulics" && IsWithCustomer(line)) {
        EXPECT_NE(letter.find(line.note), std::string::npos) << line.note;
      }
  }
  EXPECT_THROW(WriteRecallLetter(folder / "n.pdf", recall, "Ister Marine", {}, kTold), std::runtime_error);
}

// Millimetres and thousandths, DIN 1333 (from memory): in German a comma, and a point would set thousands apart.
TEST(RecallPaper, TheGermanLetterWritesGermanNumbers) {
  OwnFolder folder;
  RecallRecord recall = InventedRecall();
  for (RecallLine& line : recall.lines)
    if (line.customer == "Pallant Hydraulics") line.length = Length{3'171'825'000};
  for (const auto& [language, length] : {std::pair{Language::English, "3171.825"}, std::pair{Language::German, "3171,825"}}) {
    WriteRecallLetter(folder / "l.pdf", recall, "Pallant Hydraulics", {"Ostrel Shaftworks", "", language}, kTold);
    EXPECT_NE(TextOf(folder / "l.pdf").find(length), std::string::npos) << TextOf(folder / "l.pdf");
  }
}

TEST(TableCsv, ANegativeNumberIsANumberAndNoFormula) {
  const Table table{"T",
                    {{"a"}, {"b", 8, 3}},
                    {{std::string("-2315000"), -0.5},
                     {std::string("-0.5"), 0.0},
                     {std::string("-1+1"), 0.0},
                     {std::string("-.5"), 0.0},
                     {std::string("-1.2.3"), 0.0}}};
  EXPECT_EQ(TableCsv(table), "a,b\r\n-2315000,-0.500\r\n-0.5,0.000\r\n\"'-1+1\",0.000\r\n\"'-.5\",0.000\r\n\"'-1.2.3\",0.000\r\n");
}

TEST(TableCsv, FormulasAndQuotesAreTexts) {
  const Table table{"T",
                    {{"a"}, {"b", 8, 3}, {"c"}},
                    {{std::string("=1+1"), 12.5, std::int64_t{3}},
                     {std::string(" @x \"y\", z"), 0.0, std::int64_t{0}},
                     {std::string("O'Hara"), 1.0, std::int64_t{1}}}};
  EXPECT_EQ(TableCsv(table), "a,b,c\r\n\"'=1+1\",12.500,3\r\n\"' @x \"\"y\"\", z\",0.000,0\r\n\"O'Hara\",1.000,1\r\n");
}

TEST(Letters, AFilesNameIsPlainWhateverTheCustomerIsCalled) {
  EXPECT_EQ(LetterFileName(2, "Pallant Hydraulics"), "letter_2_pallant_hydraulics.pdf");
  EXPECT_EQ(LetterFileName(1, "../../etc/passwd"), "letter_1_etc_passwd.pdf");
  EXPECT_EQ(LetterFileName(3, "\u00DC"), "letter_3.pdf");
}

}  // namespace
}  // namespace heatkeep
