#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "reports/pick_list.h"
#include "reports/quantity_text.h"
#include "reports/sheet_words.h"
#include "schema/terms/length_text.h"
#include "tests/reports/invented_sheet.h"
#include "tests/reports/read_back.h"

namespace heatkeep {
namespace {

using namespace literals;

const PrintOptions kA4{PaperSize::A4, "2026-11-25T07:40:12", "Ostrel Shaftworks"};
const PrintOptions kLetter{PaperSize::Letter, "2026-11-25T07:40:12", "Ostrel Shaftworks"};

// Tag (first line of a block) and "pulled and cut" (its last line) must alternate on every page.
void ExpectNoSplitBlock(const Sheet& sheet, const std::string& pdf) {
  const std::vector<PdfWord> words = WordsOf(pdf);
  std::set<std::string> tags;
  for (const SheetBlock& block : sheet.blocks) tags.insert(block.tag);
  struct Edge {
    int page;
    double y;
    bool first;
  };
  std::vector<Edge> edges;
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (tags.contains(words[i].text)) edges.push_back({words[i].page, words[i].top, true});
    if (words[i].text == "pulled" && i + 2 < words.size() && words[i + 1].text == "and" && words[i + 2].text == "cut")
      edges.push_back({words[i].page, words[i].top, false});
  }
  ASSERT_EQ(edges.size(), 2 * sheet.blocks.size());
  std::stable_sort(edges.begin(), edges.end(), [](const Edge& a, const Edge& b) { return a.page != b.page ? a.page < b.page : a.y < b.y; });
  for (std::size_t i = 0; i < edges.size(); i += 2) {
    EXPECT_TRUE(edges[i].first) << "edge " << i;
    EXPECT_FALSE(edges[i + 1].first) << "edge " << i;
    EXPECT_EQ(edges[i].page, edges[i + 1].page) << "block " << i / 2 + 1 << " is split";
  }
}

void ExpectEveryField(const Sheet& sheet, const std::string& text) {
  const auto find = [&](const std::string& wanted) { EXPECT_NE(text.find(wanted), std::string::npos) << wanted; };
  for (const SheetBlock& b : sheet.blocks) {
    find(b.tag);
    find(b.place);
    find(b.heat);                // as read: to be written on each piece
    find(HeatInGroups(b.heat));  // in groups: to be read
    find(BothUnits(b.length));
    find(b.section);
    find(b.grade);
    find(MarkWords(b));
    for (const SheetCut& cut : b.cuts) find("STOP " + StopWords(cut));
    find(WhatIsLeft(b));
    if (IsOthersMetal(b)) find("OWNER: " + b.owner);
  }
  for (const SheetShort& s : sheet.shorts) find(s.order + "/" + s.line);
  find("no plan opens less (proved)");
  find("page 1 of ");
}

TEST(PickList, EveryTagPlaceHeatAndLengthIsOnThePaper) {
  OwnFolder folder;
  const Sheet sheet = InventedSheet(12);
  WritePickListPdf(folder / "list.pdf", sheet, kA4);
  ExpectEveryField(sheet, TextOf(folder / "list.pdf"));
}

TEST(PickList, ASawThatReadsInchesGetsStopsAndRestsInInches) {
  OwnFolder folder;
  const Sheet sheet = InventedSheet(3);
  WritePickListPdf(folder / "list.pdf", sheet, kLetter, Units::Inch);
  const std::string text = TextOf(folder / "list.pdf");
  EXPECT_NE(text.find("STOP 9.449 in (240.0 mm)"), std::string::npos);  // 240 / 25.4 = 9.4488
  EXPECT_NE(text.find("LEFT \u2248 8 1/16 in: KEEP"),
            std::string::npos);  // 206 mm = 8.110 in, down to the sixteenth
}

TEST(PickList, NoBlockIsSplitOnA4OrLetter) {
  OwnFolder folder;
  const Sheet sheet = InventedSheet(31);
  WritePickListPdf(folder / "a4.pdf", sheet, kA4);
  WritePickListPdf(folder / "letter.pdf", sheet, kLetter, Units::Inch);
  ExpectNoSplitBlock(sheet, folder / "a4.pdf");
  ExpectNoSplitBlock(sheet, folder / "letter.pdf");
}

TEST(PickList, OnePieceIsNotSaidAsMany) {
  OwnFolder folder;
  WritePickListPdf(folder / "one.pdf", InventedSheet(1), kA4);
  WritePickListPdf(folder / "two.pdf", InventedSheet(2), kA4);
  const std::string one = TextOf(folder / "one.pdf"), two = TextOf(folder / "two.pdf");
  EXPECT_NE(one.find("1 piece"), std::string::npos) << one;
  EXPECT_EQ(one.find(" 1 pieces"), std::string::npos) << one;
  EXPECT_NE(two.find(" 2 pieces"), std::string::npos) << two;
}

TEST(PickList, SaysWhatIsAskedForAsItWasAsked) {
  SheetCut cut;
  EXPECT_EQ(ToleranceWords(cut), "no tolerance") << "the line says none; none is not nothing";
  cut.tolerance_plus = 1_mm;
  EXPECT_EQ(ToleranceWords(cut), "+1/\u22120 mm");
  cut.tolerance_minus = 1_mm;
  EXPECT_EQ(ToleranceWords(cut), "\u00B11 mm");
  EXPECT_EQ(WantedText(250_mm), "250 mm (9.843 in)") << "what is asked for is not rounded down, as metal at hand is";
  EXPECT_EQ(BothUnits(250_mm), "250 mm (9 13/16 in)");
}

TEST(PickList, NoWordLiesOnAnotherOrInTheMargin) {
  OwnFolder folder;
  const Sheet sheet = InventedSheet(31);
  WritePickListPdf(folder / "a4.pdf", sheet, kA4);
  WritePickListPdf(folder / "letter.pdf", sheet, kLetter, Units::Inch);
  EXPECT_EQ(CrowdingOf(folder / "a4.pdf", 210, 297), "");
  EXPECT_EQ(CrowdingOf(folder / "letter.pdf", 215.9, 279.4), "");
}

TEST(PickList, SixtyBlocksTakeAboutThreeToAPage) {
  OwnFolder folder;
  const Sheet sheet = InventedSheet(60);
  WritePickListPdf(folder / "list.pdf", sheet, kA4);
  const int pages = PagesOf(folder / "list.pdf");
  EXPECT_GE(pages, 19);
  EXPECT_LE(pages, 23);
  ExpectNoSplitBlock(sheet, folder / "list.pdf");
}

TEST(PickList, OneAndTwoHundredBlocksArePrinted) {
  OwnFolder folder;
  WritePickListPdf(folder / "one.pdf", InventedSheet(1), kA4);
  EXPECT_EQ(PagesOf(folder / "one.pdf"), 1);
  EXPECT_NE(TextOf(folder / "one.pdf").find("ONE HEAT"), std::string::npos);
  const Sheet sheet = InventedSheet(200);
  WritePickListPdf(folder / "many.pdf", sheet, kA4);
  EXPECT_LE(PagesOf(folder / "many.pdf"), 75);
  ExpectNoSplitBlock(sheet, folder / "many.pdf");
}

TEST(PickList, TheCautionStandsOnceAndOnTheFirstPage) {
  OwnFolder folder;
  WritePickListPdf(folder / "list.pdf", InventedSheet(9), kA4);
  int times = 0;
  for (const PdfWord& word : WordsOf(folder / "list.pdf"))
    if (word.text == "interlocks") {
      ++times;
      EXPECT_EQ(word.page, 1);
    }
  EXPECT_EQ(times, 1);
}

TEST(PickList, PlaceTagAndHeatAreEightMillimetresHigh) {
  OwnFolder folder;
  const Sheet sheet = InventedSheet(3);
  WritePickListPdf(folder / "list.pdf", sheet, kA4);
  // poppler's box of a word is ascent to descent, 1.164 em of DejaVu Sans; capitals are 0.729 em (measured
  // from the font's OS/2 table): 8 mm capitals need a box of at least 12.7 mm, taken with 1 % tolerance.
  for (const PdfWord& word : WordsOf(folder / "list.pdf"))
    if (word.text == sheet.blocks[0].tag || word.text == sheet.blocks[0].place) {
      EXPECT_GE((word.bottom - word.top) / 72 * 25.4, 12.7 * 0.99) << word.text;
    }
}

TEST(PickList, LongNamesAreShrunkWrappedOrEndedWithAnEllipsis) {
  OwnFolder folder;
  WritePickListPdf(folder / "list.pdf", HardSheet(), kA4);
  EXPECT_EQ(CrowdingOf(folder / "list.pdf", 210, 297), "");
  const std::string text = TextOf(folder / "list.pdf");
  EXPECT_NE(text.find("\u2026"), std::string::npos);
  EXPECT_NE(text.find("drawing 4711-88"), std::string::npos) << "a grade is never shortened";
  EXPECT_NE(text.find("department of spare parts"), std::string::npos) << "nor is an owner";
}

TEST(PickList, FortyKindsOfCutStayInOneBlockWithEveryStop) {
  OwnFolder folder;
  const Sheet sheet = HardSheet();
  WritePickListPdf(folder / "list.pdf", sheet, kA4);
  ExpectNoSplitBlock(sheet, folder / "list.pdf");
  const std::string text = TextOf(folder / "list.pdf");
  for (const SheetCut& cut : sheet.blocks[0].cuts) EXPECT_NE(text.find("STOP " + StopWords(cut)), std::string::npos) << cut.order;
}

TEST(PickList, ABlockWhoseLengthsDoNotAddUpIsRefusedAndTheOldFileStays) {
  OwnFolder folder;
  WritePickListPdf(folder / "list.pdf", InventedSheet(1), kA4);
  const std::string before = WholeFile(folder / "list.pdf");
  Sheet wrong = InventedSheet(1);
  wrong.blocks[0].left += 1_nm;
  EXPECT_THROW(WritePickListPdf(folder / "list.pdf", wrong, kA4), std::invalid_argument);
  EXPECT_EQ(WholeFile(folder / "list.pdf"), before);
  EXPECT_EQ(std::distance(std::filesystem::directory_iterator(folder.path()), {}), 1);
}

TEST(PickList, TheSameSheetPrintedTwiceIsTheSameBytes) {
  OwnFolder folder;
  WritePickListPdf(folder / "a.pdf", InventedSheet(4), kA4);
  WritePickListPdf(folder / "b.pdf", InventedSheet(4), kA4);
  EXPECT_EQ(WholeFile(folder / "a.pdf"), WholeFile(folder / "b.pdf"));
  EXPECT_NE(WholeFile(folder / "a.pdf").find("/CreationDate (D:20261125074012"), std::string::npos);
}

}  // namespace
}  // namespace heatkeep
