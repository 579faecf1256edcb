// Workbooks of ISO/IEC 29500-1 (SpreadsheetML), handmade part by part, and some written by a library.
#include <gtest/gtest.h>
#include <xlsxwriter.h>

#include <cstdio>

#include "client/intake/file_bytes.h"
#include "tests/intake/packed.h"
#include "tests/intake/shown_table.h"

namespace heatkeep::intake {
namespace {

TEST(Xlsx, FindsTheSheetThroughItsRelationsAndReadsEveryKindOfText) {
  EXPECT_EQ(ShownTable(Xlsx("<row r=\"1\"><c r=\"A1\" t=\"s\"><v>0</v></c><c r=\"B1\" t=\"s\"><v>1</v></c></row>"
                            "<row r=\"3\"><c r=\"A3\" t=\"inlineStr\"><is><t>in</t><rPh><t>say</t></rPh><r><t> line</t></r></is></c>"
                            "<c r=\"B3\" t=\"str\"><v>07715</v></c></row>",
                            "<si><t>tag</t></si><si><r><t>he</t></r><r><rPr/><t>at</t></r><rPh sb=\"0\" eb=\"1\"><t>no</t></rPh></si>")),
            "1|tag|heat\n3|in line|07715\n");
}

TEST(Xlsx, PlacesCellsByTheirNamesOrInOrder) {
  EXPECT_EQ(
      ShownTable(Xlsx("<row><c><v>1</v></c><c/><c><v>3</v></c></row><row><c r=\"C2\"><v>5</v></c></row><row/><row><c><v>7</v></c></row>")),
      "1|1#||3#\n2|||5#\n4|7#||\n");
}

TEST(Xlsx, ShowsNumbersAsTheSheetDoes) {
  const auto cell = [](const std::string& style, const std::string& value) {
    return ShownTable(Xlsx("<row><c s=\"" + style + "\"><v>" + value + "</v></c></row>"));
  };
  EXPECT_EQ(cell("0", "6000"), "1|6000#\n");
  EXPECT_EQ(cell("0", "60.299999999999997"), "1|60.3#\n");
  EXPECT_EQ(cell("0", "352.42500000000001"), "1|352.425#\n");
  EXPECT_EQ(cell("0", "1E-4"), "1|0.0001#\n");
  EXPECT_EQ(cell("0", "123456789012345"), "1|123456789012345#\n");
  EXPECT_EQ(cell("0", "1.23E+20"), "1|1.23E+20#\n");
  EXPECT_EQ(cell("9", "6000"), "1|6000#\n");
  EXPECT_EQ(cell("1", "123000"), "1|1.23E+05#\n");
  EXPECT_EQ(cell("2", "715"), "1|07150\n");  // the last 0 says that the first is none of the value
  EXPECT_EQ(cell("2", "7715"), "1|7715#\n");
  EXPECT_EQ(cell("3", "0.0042"), "1|0.42 %#\n");
  EXPECT_EQ(cell("6", "3.5"), "1|3.5 in#\n");
}

// Day 1 is 1900-01-01, 59 is 1900-02-28, 61 is 1900-03-01, and 60 is a day that never was (ISO/IEC 29500-1, 18.17.4.1).
TEST(Xlsx, CountsDaysFrom1900AsSpreadsheetsDo) {
  const auto day = [](const std::string& value) { return ShownTable(Xlsx("<row><c s=\"4\"><v>" + value + "</v></c></row>")); };
  EXPECT_EQ(day("1"), "1|1900-01-01@\n");
  EXPECT_EQ(day("59"), "1|1900-02-28@\n");
  EXPECT_EQ(day("61"), "1|1900-03-01@\n");
  EXPECT_EQ(day("46024"), "1|2026-01-02@\n");
  EXPECT_EQ(day("60"), "f: cell A1: day number 60 is no date; expected a date from 1900 on\n");
  EXPECT_EQ(day("-1"), "f: cell A1: day number -1 is no date; expected a date from 1900 on\n");
  EXPECT_EQ(ShownTable(Xlsx("<row><c s=\"8\"><v>46024.34375</v></c><c s=\"5\"><v>46024</v></c><c t=\"d\"><v>2026-03-04</v></c></row>")),
            "1|2026-01-02T08:15:00@|2026-01-02@|2026-03-04@\n");
  EXPECT_EQ(ShownTable(Xlsx("<row><c s=\"7\"><v>0.5</v></c></row>")), "1|the time of day 0.5@\n");
}

TEST(Xlsx, CountsDaysFrom1904WhenTheWorkbookSaysSo) {
  Parts parts = XlsxParts("<row><c s=\"4\"><v>44562</v></c><c s=\"4\"><v>0</v></c></row>");
  for (auto& [name, content] : parts) {
    if (name == "xl/workbook.xml") content.insert(content.find("<sheets>"), "<workbookPr date1904=\"1\"/>");
  }
  EXPECT_EQ(ShownTable(Packed(parts)), "1|2026-01-02@|1904-01-01@\n");
}

TEST(Xlsx, KnowsBooleansAndErrors) {
  EXPECT_EQ(ShownTable(Xlsx("<row><c t=\"b\"><v>1</v></c><c t=\"b\"><v>0</v></c><c t=\"e\"><v>#N/A</v></c></row>")), "1|yes?|no?|#N/A!\n");
}

TEST(Xlsx, TakesAFormulasLastValueAndSaysSo) {
  EXPECT_EQ(ShownTable(Xlsx(
                "<row><c><f>1+1</f><v>2</v></c><c t=\"str\"><f>A1&amp;\"\"</f><v>x</v></c><c t=\"e\"><f>1/0</f><v>#DIV/0!</v></c></row>")),
            "1|2#|x|#DIV/0!!\nf:Rack: 2 formulas (A1, B1): the values computed when the file was last saved are taken\n");
  EXPECT_EQ(ShownTable(Xlsx("<row><c><f>1+1</f></c></row>")), "1|a formula that was never computed!\n");
}

TEST(Xlsx, WarnsOfMergedCellsAndHiddenRowsAndColumns) {
  Parts parts = XlsxParts("<row><c><v>1</v></c><c><v>2</v></c></row><row hidden=\"1\"><c><v>3</v></c></row><row hidden=\"1\"/>");
  for (auto& [name, content] : parts) {
    if (name != "xl/worksheets/odd.xml") continue;
    content.insert(content.find("<sheetData>"), "<cols><col min=\"2\" max=\"300\" hidden=\"1\"/></cols>");
    content.insert(content.find("</worksheet>"), "<mergeCells><mergeCell ref=\"A1:A2\"/></mergeCells>");
  }
  EXPECT_EQ(ShownTable(Packed(parts)),
            "1|1#|2#\n2|3#|\nf:Rack: merged cells (A1:A2): only the first of them holds the value\n"
            "f:Rack: hidden rows (2) are read like all others\nf:Rack: hidden columns (B) are read like all others\n");
}

TEST(Xlsx, WritesControlCharactersOut) {
  EXPECT_EQ(ShownTable(Xlsx("<row><c t=\"inlineStr\"><is><t>a_x000A_b_x005F_x0041_ _xZZZZ_ _x0000_</t></is></c></row>")),
            "1|a\nb_x0041_ _xZZZZ_ _x0000_\n");
}

// The writing library is libxlsxwriter 1.1.
std::string Written(void (*fill)(lxw_workbook*)) {
  const std::string path = testing::TempDir() + "written.xlsx";
  lxw_workbook* book = workbook_new(path.c_str());
  fill(book);
  EXPECT_EQ(workbook_close(book), LXW_NO_ERROR);
  const std::string bytes = FileBytes(path);
  std::remove(path.c_str());
  return bytes;
}

TEST(Xlsx, ReadsWhatALibraryWrites) {
  const std::string bytes = Written([](lxw_workbook* book) {
    lxw_worksheet* sheet = workbook_add_worksheet(book, "Stock & co");
    lxw_format* date = workbook_add_format(book);
    format_set_num_format(date, "yyyy-mm-dd");
    worksheet_write_string(sheet, 0, 0, "tag", nullptr);
    worksheet_write_string(sheet, 0, 1, "\u00D8 length", nullptr);
    worksheet_write_string(sheet, 0, 2, "due", nullptr);
    worksheet_write_string(sheet, 1, 0, " A<1> ", nullptr);
    worksheet_write_number(sheet, 1, 1, 352.425, nullptr);
    lxw_datetime day = {2026, 3, 4, 0, 0, 0.0};
    worksheet_write_datetime(sheet, 1, 2, &day, date);
    worksheet_write_formula_num(sheet, 2, 1, "=B2*2", nullptr, 704.85);
    worksheet_write_boolean(sheet, 2, 2, 1, nullptr);
  });
  EXPECT_EQ(ShownTable(bytes),
            "1|tag|\u00D8 length|due\n2| A<1> |352.425#|2026-03-04@\n3||704.85#|yes?\n"
            "f:Stock & co: 1 formula (B3): the values computed when the file was last saved are taken\n");
}

TEST(Xlsx, TakesTheFirstShownSheetOrTheNamedOne) {
  const std::string bytes = Written([](lxw_workbook* book) {
    for (const char* name : {"old", "new", "rest"}) worksheet_write_string(workbook_add_worksheet(book, name), 0, 0, name, nullptr);
    worksheet_activate(workbook_get_worksheet_by_name(book, "new"));
    worksheet_hide(workbook_get_worksheet_by_name(book, "old"));
  });
  EXPECT_EQ(ShownTable(bytes), "1|new\nf: only sheet \"new\" is read, the first of 3; --sheet NAME reads another\n");
  EXPECT_EQ(ShownTable(bytes, "rest"), "1|rest\n");
  EXPECT_EQ(ShownTable(bytes, "old"), "1|old\n");
  EXPECT_EQ(ShownTable(bytes, "New"), "f: there is no sheet \"New\"; expected one of: \"old\", \"new\", \"rest\"\n");
}

TEST(Xlsx, ReadsTheStrictForm) {
  Parts parts = XlsxParts("<row><c><v>1</v></c></row>");
  for (auto& [name, content] : parts) {
    const std::string loose = "http://schemas.openxmlformats.org/officeDocument/2006/relationships",
                      strict = "http://purl.oclc.org/ooxml/officeDocument/relationships";
    for (auto at = content.find(loose); at != std::string::npos; at = content.find(loose)) content.replace(at, loose.size(), strict);
  }
  EXPECT_EQ(ShownTable(Packed(parts)), "1|1#\n");
}

}  // namespace
}  // namespace heatkeep::intake
