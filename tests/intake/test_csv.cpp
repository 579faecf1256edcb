#include <gtest/gtest.h>

#include "client/intake/csv.h"
#include "client/intake/csv_encoding.h"
#include "client/intake/file_bytes.h"

namespace heatkeep::intake {
namespace {

using namespace std::string_literals;

// "line|cell|cell" a row; or the problems.
std::string Shown(std::string_view bytes) {
  const Table table = ReadCsv(bytes, "f.csv");
  if (!table.problems.empty()) return ProblemsText(table.problems);
  std::string text;
  for (const TableRow& row : table.rows) {
    text += std::to_string(row.line);
    for (const std::string& cell : row.cells) text += "|" + cell;
    text += "\n";
  }
  return text;
}

TEST(ReadCsv, FindsTheDelimiter) {
  EXPECT_EQ(Shown("a,b\n1,2\n"), "1|a|b\n2|1|2\n");
  EXPECT_EQ(Shown("a;b\n1,5;2\n"), "1|a|b\n2|1,5|2\n");
  EXPECT_EQ(Shown("a\tb\n1,5\t2\n"), "1|a|b\n2|1,5|2\n");
  EXPECT_EQ(Shown("a|b\n1,5|2;3\n"), "1|a|b\n2|1,5|2;3\n");
  EXPECT_EQ(Shown("sep=;\r\na,1;b\r\nx;y\r\n"), "2|a,1|b\n3|x|y\n");
  EXPECT_EQ(Shown("a\n1\n"), "1|a\n2|1\n");
}

// RFC 4180: quotes around a cell, doubled inside, line ends kept; the row counts from where it begins.
TEST(ReadCsv, FollowsTheRulesOfQuoting) {
  EXPECT_EQ(Shown("a,b\n\"x,y\",\"say \"\"no\"\"\"\n"), "1|a|b\n2|x,y|say \"no\"\n");
  EXPECT_EQ(Shown("a,b\n\"two\r\nlines\",1\nz,2\n"), "1|a|b\n2|two\r\nlines|1\n4|z|2\n");
  EXPECT_EQ(Shown("a,b\n\"\",1"), "1|a|b\n2||1\n");
}

TEST(ReadCsv, LeavesAQuoteInsideABareCellAlone) {
  EXPECT_EQ(Shown("tag,length\nA,19' 11-3/8\"\n"), "1|tag|length\n2|A|19' 11-3/8\"\n");
  EXPECT_EQ(Shown("tag,length\nA,\"19' 11-3/8\"\"\"\n"), "1|tag|length\n2|A|19' 11-3/8\"\n");
}

TEST(ReadCsv, TakesEveryLineEndAndLeavesEmptyLinesOut) {
  EXPECT_EQ(Shown("a,b\r\n1,2\r\n\r\n,\r\n3,4"), "1|a|b\n2|1|2\n5|3|4\n");
  EXPECT_EQ(Shown("a,b\r1,2\r3,4\r"), "1|a|b\n2|1|2\n3|3|4\n");
}

TEST(ReadCsv, ReadsWhatSpreadsheetsSave) {
  EXPECT_EQ(Shown("\xEF\xBB\xBF"
                  "a,\xC3\xA4\n1,2\n"),
            "1|a|\xC3\xA4\n2|1|2\n");
  EXPECT_EQ(Shown("a,\xE4\x80\x9F\n1,2\n"), "1|a|\xE4\x80\x9F\n2|1|2\n");                // UTF-8 of another script
  EXPECT_EQ(Shown("a,\xE4\x80\n1,\xD8\n"), "1|a|\xC3\xA4\xE2\x82\xAC\n2|1|\xC3\x98\n");  // Windows-1252
  EXPECT_EQ(Shown("\xFF\xFE"
                  "a\0;\0\xE4\0\n\0"
                  "1\0;\0"
                  "2\0"s),
            "1|a|\xC3\xA4\n2|1|2\n");
  EXPECT_EQ(Shown("\xFE\xFF\0a\0,\xD8\x3D\xDE\x00\0\n\0"
                  "1\0,\0"
                  "2"s),
            "1|a|\xF0\x9F\x98\x80\n2|1|2\n");
  EXPECT_EQ(ReadCsv("a,\xE4\n", "f").facts.encoding, "Windows-1252");
}

TEST(ReadCsv, SaysWhatIsWrong) {
  EXPECT_EQ(Shown(""), "f.csv: nothing is in it; expected a header line and rows\n");
  EXPECT_EQ(Shown("\n \n"), "f.csv: nothing is in it; expected a header line and rows\n");
  EXPECT_EQ(Shown("a,b\n1,2\n\"x,2\n3,4\n"), "f.csv:3: a quote that is opened here is never closed; expected a closing quote\n");
  EXPECT_EQ(Shown("a,b\n\"x\"y,2\n"),
            "f.csv:2: text behind a closing quote; expected the delimiter there, or \"\" for a quote inside a quoted cell\n");
  EXPECT_EQ(Shown("PK\x03\x04..."), "f.csv: this is a spreadsheet or zip file; expected text: save it as CSV\n");
  EXPECT_EQ(Shown("a,b\n1,\0"s), "f.csv:2: a zero byte; expected a text file\n");
  EXPECT_EQ(Shown("\xEF\xBB\xBF"
                  "a,b\n\xE4,2\n"),
            "f.csv:2: bytes that are not UTF-8 though the file says it is; expected a file saved as UTF-8\n");
  EXPECT_EQ(Shown("a,\x81\n"),
            "f.csv:1: a byte that is a character neither in UTF-8 nor in Windows-1252; expected a file saved as UTF-8\n");
  EXPECT_EQ(Shown("\xFF\xFE"
                  "a"s),
            "f.csv: half a UTF-16 character at the end; expected a whole text file\n");
  EXPECT_EQ(Shown("\xFF\xFE\0\xD8"
                  "a\0"s),
            "f.csv:1: half a UTF-16 character; expected a whole text file\n");
}

TEST(ReadCsv, RefusesWhatIsTooLarge) {
  const std::string long_row = "a,b\n1," + std::string(kLongestRecord + 1, 'x') + "\n";
  EXPECT_EQ(Shown(long_row), "f.csv:2: a row of more than 1 MiB; expected rows as a person writes them; perhaps a quote is missing\n");
  EXPECT_EQ(Shown(std::string(kLargestFile + 1, 'x')), "f.csv: more than 64 MiB; expected a smaller file\n");
}

// Well-formed byte sequences: Unicode, table 3-7 (from memory).
TEST(IsUtf8, IsStrict) {
  for (const char* good : {"", "abc", "\xC2\x80", "\xE0\xA0\x80", "\xED\x9F\xBF", "\xF0\x90\x80\x80", "\xF4\x8F\xBF\xBF"}) {
    EXPECT_TRUE(IsUtf8(good));
  }
  for (const char* bad : {"\x80", "\xC0\xAF", "\xC1\xBF", "\xE0\x9F\xBF", "\xED\xA0\x80", "\xF0\x8F\xBF\xBF", "\xF4\x90\x80\x80",
                          "\xF5\x80\x80\x80", "\xC3", "\xE2\x82", "\xE2\x28\xA1"}) {
    EXPECT_FALSE(IsUtf8(bad));
  }
}

// The 27 characters that Windows-1252 has where Latin-1 has controls: first, last, and a few that trip people.
TEST(DecodeText, KnowsWindows1252) {
  EXPECT_EQ(DecodeText("\x80 \x8A \x8E \x92 \x96 \x99 \x9F \xA0 \xFF").utf8,
            "\u20AC \u0160 \u017D \u2019 \u2013 \u2122 \u0178 \u00A0 \u00FF");
}

TEST(FileBytes, SaysWhyItCannotRead) {
  const auto refusal = [](const std::string& path) -> std::string {
    try {
      FileBytes(path);
    } catch (const std::runtime_error& e) { return e.what(); }
    return "";
  };
  EXPECT_EQ(refusal("no/such/file.csv"), "no/such/file.csv: there is no such file; expected the path of a file");
  EXPECT_EQ(refusal("."), ".: this is a folder; expected the path of a file");
}

}  // namespace
}  // namespace heatkeep::intake
