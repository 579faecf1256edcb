// Spreadsheets of OASIS OpenDocument 1.3, handmade as a common office suite writes them (seen in its files).
#include <gtest/gtest.h>

#include "tests/intake/packed.h"
#include "tests/intake/shown_table.h"

namespace heatkeep::intake {
namespace {

std::string Text(const std::string& text) {
  return "<table:table-cell office:value-type=\"string\"><text:p>" + text + "</text:p></table:table-cell>";
}
std::string Number(const std::string& value, const std::string& shown, const std::string& type = "float") {
  return "<table:table-cell office:value-type=\"" + type + "\" office:value=\"" + value + "\" calcext:value-type=\"" + type +
      "\"><text:p>" + shown + "</text:p></table:table-cell>";
}
std::string Row(const std::string& cells, const std::string& how = "") {
  return "<table:table-row" + how + ">" + cells + "</table:table-row>";
}

TEST(Ods, SkipsTheFillersAndTheEmptyRowAtTheEnd) {
  const std::string filler = "<table:table-cell table:number-columns-repeated=\"16382\"/>";
  EXPECT_EQ(ShownTable(Ods("<table:table-column table:number-columns-repeated=\"16384\"/>" + Row(Text("tag") + Text("heat") + filler) +
                           Row(Text("A1") + Text("07715") + filler) +
                           Row("<table:table-cell table:number-columns-repeated=\"16384\"/>", " table:number-rows-repeated=\"1048573\"") +
                           Row("<table:table-cell table:number-columns-repeated=\"16384\"/>"))),
            "1|tag|heat\n2|A1|07715\n");
}

TEST(Ods, RepeatsRowsAndCells) {
  EXPECT_EQ(
      ShownTable(Ods(
          Row(Text("a") + Text("b") + Text("c")) + Row("<table:table-cell table:number-columns-repeated=\"2\"/>" + Number("5", "5")) +
          Row("<table:table-cell office:value-type=\"float\" office:value=\"7\" table:number-columns-repeated=\"3\"><text:p>7</text:p></table:table-cell>",
              " table:number-rows-repeated=\"2\"") +
          Row("", " table:number-rows-repeated=\"4\"") + Row(Text("end")))),
      "1|a|b|c\n2|||5#\n3|7#|7#|7#\n4|7#|7#|7#\n9|end||\n");
}

TEST(Ods, ShowsValuesAsTheSheetDoes) {
  EXPECT_EQ(ShownTable(Ods(Row(Number("60.3", "60,30") + Number("123000", "1.23E+05") + Number("715", "0715") +
                               Number("0.0042", "0.42%", "percentage") + Number("3.5", "3.5 in") + Number("0.98", "0.98 EUR", "currency") +
                               Number("6000", "6 000")))),
            "1|60.3#|1.23E+05#|07150|0.42 %#|3.5 in#|0.98#|6000#\n");
  EXPECT_EQ(
      ShownTable(Ods(Row(
          "<table:table-cell office:value-type=\"date\" office:date-value=\"2026-03-04\"><text:p>04.03.26</text:p></table:table-cell>"
          "<table:table-cell office:value-type=\"date\" office:date-value=\"2026-03-04T08:15:30.000000000\"><text:p>x</text:p></table:table-cell>"
          "<table:table-cell office:value-type=\"boolean\" office:boolean-value=\"true\"><text:p>TRUE</text:p></table:table-cell>"
          "<table:table-cell table:formula=\"of:=1/0\" office:value-type=\"string\" calcext:value-type=\"error\"><text:p>#DIV/0!</text:p></table:table-cell>"
          "<table:table-cell table:formula=\"of:=[.A1]\"/>"))),
      "1|2026-03-04@|2026-03-04T08:15:30@|yes?|#DIV/0!!|a formula that was never computed!\n");
}

TEST(Ods, ReadsTextWithoutNotesAndDrawings) {
  EXPECT_EQ(
      ShownTable(Ods(Row(
          "<table:table-cell office:value-type=\"string\"><office:annotation><text:p>a note</text:p></office:annotation>"
          "<text:p>two<text:s text:c=\"2\"/>blanks<text:line-break/>and <text:span>a <text:a>link</text:a></text:span></text:p><text:p>more</text:p>"
          "</table:table-cell>"))),
      "1|two  blanks\nand a link\nmore\n");
}

TEST(Ods, WarnsOfFormulasMergedCellsAndHiddenRows) {
  EXPECT_EQ(
      ShownTable(Ods(
          Row("<table:table-cell table:number-columns-spanned=\"2\" table:number-rows-spanned=\"1\" office:value-type=\"string\"><text:p>a</text:p></table:table-cell>"
              "<table:covered-table-cell><text:p>under</text:p></table:covered-table-cell>" +
              Text("c")) +
          Row("<table:table-cell table:formula=\"of:=1+1\" office:value-type=\"float\" office:value=\"2\"><text:p>2</text:p></table:table-cell>",
              " table:visibility=\"filter\""))),
      "1|a||c\n2|2#||\nf:Rack: 1 formula (A2): the values computed when the file was last saved are taken\n"
      "f:Rack: merged cells (from A1): only the first of them holds the value\nf:Rack: hidden rows (2) are read like all others\n");
}

TEST(Ods, TakesTheFirstShownTableOrTheNamedOne) {
  const std::string bytes = Ods(Row(Text("one")) + "</table:table><table:table table:name=\"Yard\">" + Row(Text("two")));
  EXPECT_EQ(ShownTable(bytes), "1|one\nf: only sheet \"Rack\" is read, the first of 2; --sheet NAME reads another\n");
  EXPECT_EQ(ShownTable(bytes, "Yard"), "1|two\n");
  EXPECT_EQ(ShownTable(bytes, "Shed"), "f: there is no sheet \"Shed\"; expected one of: \"Rack\", \"Yard\"\n");
}

}  // namespace
}  // namespace heatkeep::intake
