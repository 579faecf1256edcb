#include <gtest/gtest.h>

#include "schema/terms/condition_text.h"
#include "schema/terms/date_text.h"
#include "schema/terms/heat_text.h"
#include "schema/terms/papers.h"
#include "schema/terms/plain_text.h"
#include "tests/terms/refusal_text.h"

namespace heatkeep {
namespace {

// Types of EN 10204:2004, from memory of the standard.
TEST(Papers, GoFromWeakToStrong) {
  const std::vector<Papers> all{Papers::None, Papers::P21, Papers::P22, Papers::P31, Papers::P32};
  for (const Papers papers : all) EXPECT_EQ(ReadPapers(PapersText(papers)), papers);
  EXPECT_TRUE(std::is_sorted(all.begin(), all.end()));
}

// What the book refuses in a text, guard.unreadable; each is a code point of Unicode 15, from memory.
TEST(UnreadableCharacter, IsTheFirstThatIsNotSeenOrBreaksTheLine) {
  EXPECT_EQ(UnreadableCharacter("Ø 80, Müller \u4e2d\U0001F529 \"x\""), "");
  EXPECT_EQ(UnreadableCharacter("D1\n2"), "U+000A");
  EXPECT_EQ(UnreadableCharacter("D1\t2"), "U+0009");
  EXPECT_EQ(UnreadableCharacter("\u0085"), "U+0085");
  EXPECT_EQ(UnreadableCharacter("A7\u200b321\ufeff"), "U+200B");
  EXPECT_EQ(UnreadableCharacter("A73\u202e12"), "U+202E");
}

TEST(ReadPapers, TakesTheStandardsNameInFront) {
  EXPECT_EQ(ReadPapers(" EN 10204 3.1 "), Papers::P31);
  EXPECT_EQ(ReadPapers(""), Papers::None);
  EXPECT_EQ(RefusalText([] { ReadPapers("3.1B"); }), "unknown papers \"3.1B\"; expected 2.1, 2.2, 3.1, 3.2 (EN 10204) or none");
  for (const char* text : {"3,1", "3", "2.3", "yes"}) EXPECT_NE(RefusalText([&] { ReadPapers(text); }), "") << text;
}

TEST(ReadValidators, TakesNamePositionAndForWhom) {
  const std::vector<Validator> two{{"A. Lund", "head of the laboratory", "independent"}, {"B. Roe", "inspector", "purchaser"}};
  EXPECT_EQ(ReadValidators(" A. Lund ,head of the laboratory, Independent; B. Roe, inspector, purchaser;"), two);
  EXPECT_EQ(ReadValidators(ValidatorsText(two)), two);
  EXPECT_EQ(ReadValidators(""), std::vector<Validator>());
  for (const char* text : {"A. Lund", "A. Lund, independent", "A. Lund, lab, mill", ", lab, independent", "A, B, C, independent"})
    EXPECT_NE(RefusalText([&] { ReadValidators(text); }), "") << text;
}

TEST(NormalCondition, MakesOneForm) {
  EXPECT_EQ(NormalCondition(" +  qt "), "+QT");
  EXPECT_EQ(NormalCondition("as  Rolled"), "AS ROLLED");
  EXPECT_EQ(NormalCondition("S355 +N"), "S355+N");
  EXPECT_EQ(NormalCondition("+A + C"), "+A+C");
  EXPECT_EQ(NormalCondition(""), "");
}

TEST(FoldedHeat, BringsTogetherWhatAnEyeConfuses) {
  EXPECT_TRUE(LookAlike("O7715", "07715"));
  EXPECT_TRUE(LookAlike("B5-I2", "8s 12"));
  EXPECT_TRUE(LookAlike("K3317", "k 33-17"));
  EXPECT_FALSE(LookAlike("K3317", "K3317"));
  EXPECT_FALSE(LookAlike("K3317", "K3371"));
  EXPECT_FALSE(LookAlike("7715", "07715"));
  EXPECT_EQ(FoldedHeat("SBIO z-2"), "5810Z2");
}

TEST(SpreadsheetAte, KnowsANumberThatWasAHeat) {
  for (const char* heat : {"1.23E+05", "1,23E+05", "7.7E3", "1E+05", "1.2e-07"}) EXPECT_TRUE(SpreadsheetAte(heat)) << heat;
  for (const char* heat : {"K3317", "1E23", "123E3", "07715", "", "E+05", "1.23", "12.3E+05", "1.23E+05X"}) {
    EXPECT_FALSE(SpreadsheetAte(heat)) << heat;
  }
}

// The Gregorian rule of ISO 8601: leap in 2000 and 2024, not in 1900 and 2100.
TEST(IsIsoDate, KnowsTheCalendar) {
  for (const char* day : {"2026-03-04", "2024-02-29", "2000-02-29", "2026-12-31"}) EXPECT_TRUE(IsIsoDate(day)) << day;
  for (const char* day :
       {"2026-02-29", "1900-02-29", "2100-02-29", "2026-04-31", "2026-13-01", "2026-00-10", "2026-01-00", "26-03-04", "2026-3-4",
        "04.03.2026", "2026/03/04", "20260304", "2026-03-04 ", "", "46024", "2026-03-04T08:15", "1899-01-01"}) {
    EXPECT_FALSE(IsIsoDate(day)) << day;
  }
}

TEST(IsIsoDateOrTime, TakesATimeAndAZone) {
  for (const char* t : {"2026-03-04", "2026-03-04T08:15", "2026-03-04 08:15:30", "2026-03-04T08:15Z", "2026-03-04T08:15:30+01:00"}) {
    EXPECT_TRUE(IsIsoDateOrTime(t)) << t;
  }
  for (const char* t : {"2026-03-04T24:00", "2026-03-04T08", "2026-03-04T08:60", "2026-03-04T08:15+1", "2026-03-04T", "2026-03-04T08:15Zx",
                        "2026-03-04T08:15+15:00", "08:15"}) {
    EXPECT_FALSE(IsIsoDateOrTime(t)) << t;
  }
  EXPECT_EQ(ReadIsoDate(" 2026-03-04 "), "2026-03-04");
  EXPECT_EQ(RefusalText([] { ReadIsoDate("4.3.2026"); }), "\"4.3.2026\" is not a date; expected year-month-day, like 2026-03-04");
}

TEST(PlainText, TakesTypographyBack) {
  EXPECT_EQ(PlainText(" 6\u00A0000\t mm\r\n"), "6 000 mm");
  EXPECT_EQ(PlainText("19\u2032 11\u00BD\u2033"), "19' 11 1/2\"");
  EXPECT_EQ(PlainText("13\u2019\u2019"), "13\"");
  EXPECT_EQ(PlainText("\u00BD"), "1/2");
  EXPECT_EQ(PlainText("100 \u00D7 20"), "100 x 20");
  EXPECT_EQ(PlainText("\u00D850 \u00B5"), "\u00D850 \u00B5");
}

TEST(Quoted, IsShortAndHarmless) {
  EXPECT_EQ(Quoted("a\x1B[31m"), "\"a?[31m\"");
  EXPECT_EQ(Quoted(std::string(50, 'x')), "\"" + std::string(40, 'x') + "...\"");
  EXPECT_EQ(Quoted(std::string(39, 'x') + "\u00E4\u00E4"), "\"" + std::string(39, 'x') + "...\"");
}

}  // namespace
}  // namespace heatkeep
