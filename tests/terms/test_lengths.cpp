#include <gtest/gtest.h>

#include "client/intake/csv.h"
#include "client/intake/file_bytes.h"
#include "schema/terms/length_text.h"
#include "tests/terms/refusal_text.h"

namespace heatkeep {
namespace {

using namespace literals;

std::string Refusal(const std::string& text, LengthReading how = {}) {
  return RefusalText([&] { ReadLength(text, how); });
}

constexpr const char* kExpected = "; expected a length like 6000, 6000mm, 20 ft, 13 7/8 in or 19' 11-3/8\"";

// The rows carry their source and how far they are trusted: the inch of 1959 and what follows from it.
TEST(ReadLength, FollowsTheDefinitionsOfInchAndFoot) {
  const auto table = intake::ReadCsv(intake::FileBytes(HEATKEEP_REFERENCE "/length_definitions.csv"), "definitions");
  ASSERT_EQ(table.rows.size(), 14U);
  for (std::size_t i = 1; i < table.rows.size(); ++i) {
    const auto& cells = table.rows[i].cells;
    EXPECT_EQ(ReadLength(cells[0]).nm, std::stoll(cells[1])) << cells[0];
  }
}

TEST(ReadLength, TakesABareNumberInTheUnitTheCallerNames) {
  EXPECT_EQ(ReadLength("6000"), 6000_mm);
  EXPECT_EQ(ReadLength("144", {LengthUnit::Inch, '.'}).nm, 144 * kNmPerInch);
  EXPECT_EQ(ReadLength("144 mm", {LengthUnit::Inch, '.'}), 144_mm);
}

TEST(ReadLength, TakesEveryMetricUnit) {
  for (const char* text : {"6000mm", "6000 mm", "6 m", "6m", "600 cm", "6 000", "6 000 mm", "6000000 um", "6000.000 mm"}) {
    EXPECT_EQ(ReadLength(text), 6000_mm) << text;
  }
}

// 13 7/8 in = 352.425 mm; common practice on shop floors writes it in all of these ways.
TEST(ReadLength, TakesEveryWayToWriteInches) {
  for (const char* text :
       {"13 7/8 in", "13-7/8\"", "13 7/8", "13.875\"", "13.875 inches", "1' 1 7/8\"", "1'1 7/8", "1 ft 1 7/8 in", "111/8 in", "13\u215E in",
        "1\u2032 1\u215E\u2033", "13\u00A07/8\u00A0in", "13 7\u20448 \u201D", "13 7/8''", "1'-1 7/8\"", "352.425"}) {
    EXPECT_EQ(ReadLength(text).nm, 352'425'000) << text;
  }
}

TEST(ReadLength, TakesFeetAndInches) {
  EXPECT_EQ(ReadLength("19' 11-3/8\"").nm, 239 * kNmPerInch + 3 * kNmPerInch / 8);
  EXPECT_EQ(ReadLength("20'-0\""), ReadLength("20ft"));
  EXPECT_EQ(ReadLength("1.5 ft"), ReadLength("18 in"));
  EXPECT_EQ(ReadLength("1/3 ft"), ReadLength("4 in"));
}

TEST(ReadLength, KeepsEveryNanometre) {
  EXPECT_EQ(ReadLength("0.000001").nm, 1);
  EXPECT_EQ(ReadLength("0.063 in").nm, 1'600'200);
  EXPECT_EQ(ReadLength("999999.999999").nm, 999'999'999'999);
  EXPECT_EQ(ReadLength("0").nm, 0);
}

TEST(ReadLength, RefusesWhatIsNotAWholeNanometre) {
  EXPECT_EQ(Refusal("1/3 in"),
            "\"1/3 in\" is not a whole number of nanometres; expected a length that is: for inches a fraction down "
            "to 1/64 or up to 5 decimals");
  EXPECT_NE(Refusal("1/128 in"), "");
  EXPECT_NE(Refusal("0.0000001"), "");
}

TEST(ReadLength, RefusesACommaThatCouldBeEither) {
  EXPECT_EQ(Refusal("1,100"),
            "\"1,100\" can be read two ways, 1.1 mm or 1 100 mm; expected a number without that mark, or thousands "
            "set apart by a blank");
  EXPECT_NE(Refusal("13,875 in").find("13.875 in or 13 875 in"), std::string::npos);
  EXPECT_NE(Refusal("1.100", {LengthUnit::Mm, ','}).find("1.1 mm or 1 100 mm"), std::string::npos);
}

TEST(ReadLength, TakesADecimalCommaOnlyWhenTold) {
  EXPECT_EQ(ReadLength("352,425", {LengthUnit::Mm, ','}).nm, 352'425'000);
  EXPECT_EQ(ReadLength("1,100", {LengthUnit::Mm, ','}).nm, 1'100'000);
  EXPECT_EQ(Refusal("13,5"), "',' inside the number \"13,5\"; expected '.' as the decimal mark");
  EXPECT_NE(Refusal("1,234.5"), "");
  EXPECT_NE(Refusal("1.234,5"), "");
}

TEST(ReadLength, SaysWhatIsWrong) {
  EXPECT_EQ(Refusal(""), std::string("no length is written") + kExpected);
  EXPECT_EQ(Refusal("-3"), std::string("\"-3\" is negative") + kExpected);
  EXPECT_EQ(Refusal("\u22123"), std::string("\"-3\" is negative") + kExpected);
  EXPECT_EQ(Refusal("long"), std::string("no number where one should be in \"long\"") + kExpected);
  EXPECT_EQ(Refusal("12 foo"), "unknown unit \"foo\" in \"12 foo\"; expected mm, cm, m, in or ft");
  EXPECT_EQ(Refusal("6000 mm x"), std::string("\"x\" is left over in \"6000 mm x\"") + kExpected);
  EXPECT_EQ(Refusal("7/ in"), std::string("no number below the fraction bar in \"7/ in\"") + kExpected);
  EXPECT_EQ(Refusal("1' 13\""), std::string("12 inches or more behind the feet in \"1' 13\"\"") + kExpected);
  EXPECT_EQ(Refusal("6000."), "no digit after the decimal mark in \"6000.\"; expected for example 6000 or 0.5");
  EXPECT_EQ(Refusal("1001 m"), "\"1001 m\" is too long; expected at most 1 000 m");
  EXPECT_EQ(Refusal("0.0000000000000000000001 m"), "\"0.0000000000000000000001 m\" has too many decimals; expected at most 18 digits");
  EXPECT_EQ(Refusal("99999999999999999999"), "\"99999999999999999999\" is too large; expected at most 18 digits");
}

TEST(ReadLength, HoldsAsManyDecimalsAsItTakes) {
  EXPECT_EQ(ReadLength("0.000000000000000000 mm").nm, 0);
  EXPECT_EQ(ReadLength("1.50000000000000000000000000000000000000000 mm").nm, 1'500'000) << "trailing zeros say nothing";
  EXPECT_THROW(ReadLength("0.000000000000000028"), BadText) << "not a whole nanometre";
  EXPECT_THROW(ReadLength("0." + std::string(37, '0') + "28"), BadText);
}

TEST(ReadLength, RefusesRubbish) {
  for (const char* text : {"1e3",       "nan",      "inf",     "0x10",      "+5",   "6 00",      "60 0", "1/0 in", "1.5/2 in", "3 9/8 in",
                           "1 ft 6 mm", "1.5' 3\"", "6000mmm", "6,000,000", "\xFF", "6000 \"\"", "12 3", "'",      "1/2/3 in", "5 mm 5"}) {
    EXPECT_NE(Refusal(text), "") << text;
  }
}

TEST(ReadWrittenLength, RemembersTheUnitItWasWrittenIn) {
  EXPECT_EQ(ReadWrittenLength("2 in").unit, LengthUnit::Inch);
  EXPECT_TRUE(ReadWrittenLength("2 in").named);
  EXPECT_EQ(ReadWrittenLength("50").unit, LengthUnit::Mm);
  EXPECT_FALSE(ReadWrittenLength("50").named);
}

TEST(WriteMm, RoundsAsAsked) {
  EXPECT_EQ(WriteMm(ReadLength("352.425")), "352.425");
  EXPECT_EQ(WriteMm(6000_mm), "6000");
  EXPECT_EQ(WriteMm(6000_mm, Rounding::Nearest, true), "6 000");
  EXPECT_EQ(WriteMm({1'234'567'890'500}, Rounding::Nearest, true), "1 234 567.891");
  EXPECT_EQ(WriteMm({1'500}), "0.002");
  EXPECT_EQ(WriteMm({1'999}, Rounding::Down), "0.001");
  EXPECT_EQ(WriteMm({-1'500}), "-0.002");
  EXPECT_EQ(WriteMmExact({1'600'200}), "1.6002");
}

// 1 900 mm = 74.803 in, 206 mm = 8.110 in: rests are shown rounded down to 1/16. Common practice, no source.
TEST(WriteInchFraction, ShowsRestsRoundedDown) {
  EXPECT_EQ(WriteInchFraction(1900_mm, 16, Rounding::Down), "74 3/4");
  EXPECT_EQ(WriteInchFraction(206_mm, 16, Rounding::Down), "8 1/16");
  EXPECT_EQ(WriteInchFraction(206_mm, 64), "8 7/64");
  EXPECT_EQ(WriteInchFraction(ReadLength("13 7/8 in")), "13 7/8");
  EXPECT_EQ(WriteInchFraction(ReadLength("5/8 in")), "5/8");
  EXPECT_EQ(WriteInchFraction(ReadLength("20 ft")), "240");
  EXPECT_EQ(WriteInchFraction({}), "0");
  EXPECT_EQ(WriteInchDecimal(1900_mm), "74.803");
  EXPECT_EQ(WriteInchDecimal(206_mm, 3, Rounding::Down), "8.11");
}

// Bar of 12 ft; trim 0.5 in and kerf 0.063 in; nine pieces of 13 7/8 in, each with a kerf.
TEST(Length, AddsUpInchesToTheNanometre) {
  const Length kerf = ReadLength("0.063 in");
  const Length rest = ReadLength("12 ft") - ReadLength("0.5 in") - kerf - 9 * (ReadLength("13 7/8 in") + kerf);
  EXPECT_EQ(rest.nm, 457'073'000);
  EXPECT_EQ(WriteInchDecimal(rest), "17.995");
  EXPECT_EQ(WriteInchFraction(rest, 16, Rounding::Down), "17 15/16");
  EXPECT_EQ(rest, ReadLength("3657.6") - ReadLength("12.7") - kerf - 9 * (ReadLength("352.425") + kerf));
}

TEST(Length, ReadsBackWhatWasWritten) {
  for (std::int64_t nm :
       {std::int64_t{1}, std::int64_t{396'875}, std::int64_t{25'399'999}, std::int64_t{6'080'125'000}, std::int64_t{999'999'999'999}}) {
    EXPECT_EQ(ReadLength(WriteMmExact({nm})).nm, nm);
  }
  for (std::int64_t n = 0; n < 64 * 40; n += 7) {
    const Length length{n * kNmPerInch / 64};
    EXPECT_EQ(ReadLength(WriteInchFraction(length, 64) + " in"), length);
    EXPECT_EQ(ReadLength(WriteInchDecimal(length, 6) + " in"), length);
  }
}

}  // namespace
}  // namespace heatkeep
