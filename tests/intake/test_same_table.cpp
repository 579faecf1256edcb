// One table as CSV, XLSX and ODS: the same rows, the same problems, the same warnings; only the places read otherwise.
#include <gtest/gtest.h>

#include "client/intake/look.h"
#include "tests/intake/packed.h"

namespace heatkeep::intake {
namespace {

using Cells = std::vector<std::vector<std::string>>;

// A cell that begins with '#' is a number.
std::string AsCsv(const Cells& rows) {
  std::string csv;
  for (const auto& row : rows) {
    for (std::size_t i = 0; i < row.size(); ++i) csv += (i == 0 ? "" : ";") + (row[i].starts_with('#') ? row[i].substr(1) : row[i]);
    csv += "\n";
  }
  return csv;
}

std::string AsXlsx(const Cells& rows) {
  std::string xml;
  for (const auto& row : rows) {
    xml += "<row>";
    for (const std::string& cell : row) {
      xml += cell.empty()         ? "<c/>"
          : cell.starts_with('#') ? "<c><v>" + cell.substr(1) + "</v></c>"
                                  : "<c t=\"inlineStr\"><is><t>" + cell + "</t></is></c>";
    }
    xml += "</row>";
  }
  return Xlsx(xml);
}

std::string AsOds(const Cells& rows) {
  std::string xml;
  for (const auto& row : rows) {
    xml += "<table:table-row>";
    for (const std::string& cell : row) {
      xml += cell.empty()         ? "<table:table-cell/>"
          : cell.starts_with('#') ? "<table:table-cell office:value-type=\"float\" office:value=\"" + cell.substr(1) + "\"><text:p>" +
              cell.substr(1) + "</text:p></table:table-cell>"
                                  : "<table:table-cell office:value-type=\"string\"><text:p>" + cell + "</text:p></table:table-cell>";
    }
    xml += "<table:table-cell table:number-columns-repeated=\"16300\"/></table:table-row>";
  }
  return Ods(
      xml +
      "<table:table-row table:number-rows-repeated=\"1048000\"><table:table-cell table:number-columns-repeated=\"16384\"/></table:table-row>");
}

std::string Told(const std::vector<FileProblem>& problems) {
  std::string text;
  for (const FileProblem& p : problems) text += std::to_string(p.line) + ": " + p.wrong + "; " + p.expected + "\n";
  return text;
}

void ExpectTheSame(TableKind kind, const Cells& cells) {
  const Look csv = LookAt(kind, AsCsv(cells), "f", {}, 100);
  for (const std::string& bytes : {AsXlsx(cells), AsOds(cells)}) {
    const Look sheet = LookAt(kind, bytes, "f", {}, 100);
    EXPECT_EQ(Told(sheet.problems), Told(csv.problems));
    EXPECT_EQ(Told(sheet.warnings), Told(csv.warnings));
    EXPECT_EQ(sheet.decimal_mark, csv.decimal_mark);
    ASSERT_EQ(sheet.rows.size(), csv.rows.size());
    for (std::size_t i = 0; i < csv.rows.size(); ++i) {
      EXPECT_EQ(sheet.rows[i].line, csv.rows[i].line);
      EXPECT_EQ(sheet.rows[i].values, csv.rows[i].values);
    }
    for (const FileProblem& p : sheet.problems) EXPECT_TRUE(p.cell.starts_with("Rack!")) << p.Text();
  }
}

TEST(SameTable, OpeningWithEveryTrapOfAnOldList) {
  ExpectTheSame(TableKind::Opening,
                {{"old_tag", "kind", "grade", "section", "length", "heat"},
                 {"I1", "bar", "42CrMo4", "round 80", "#6000", "K3317"},
                 {"I2", "bar", "42CrMo4", "round 3 1/8in", "#6000", "K3402"},
                 {"I3", "drop", "4140", "round 80", "#1100", ""},
                 {"I4", "drop", "42CrMo4", "round 80", "1,100", "K3317"},
                 {"I1", "drop", "42CrMo4", "round 80", "#640", "K3317"},
                 {"", "", "", "", "", ""},
                 {"I6", "drop", "C45E", "round 60", "#2400", "O7715"},
                 {"I7", "drop", "C45E", "round 60", "#0", "07715"},
                 {"I8", "drop", "C45E", "round 60", "#900", "1.23E+05"}});
}

TEST(SameTable, CutsWithNumbersDatesAndADecimalPoint) {
  ExpectTheSame(TableKind::Cuts,
                {{"Order", "Line", "Section", "Grade", "Length", "Quantity", "Tolerance", "Due", "Priority"},
                 {"4711", "#10", "round 50", "C45E", "#352.425", "#14", "-0/+1", "2026-03-04", "#1"},
                 {"4711", "#20", "tube 60.3x4", "S355J2", "13 7/8 in", "#3", "", "", ""},
                 {"4711", "#20", "round 50", "C45E", "#100", "#1.5", "", "4.3.26", ""}});
}

TEST(SameTable, HeadersThatAreWrong) {
  ExpectTheSame(TableKind::Grades, {{"designation", "colour", "family"}, {"C45E", "red", "carbon steel"}});
}

TEST(Spreadsheet, ProblemsNameTheCell) {
  const Look look =
      LookAt(TableKind::Opening,
             AsXlsx({{"old_tag", "kind", "grade", "section", "length", "heat"}, {"1", "bar", "C45E", "round 50", "six", "K1"}}), "old.xlsx",
             {}, 10);
  ASSERT_EQ(look.problems.size(), 1U);
  EXPECT_TRUE(look.problems[0].Text().starts_with("old.xlsx:Rack!E2: length: ")) << look.problems[0].Text();
}

const char* const kHead =
    "<row><c t=\"str\"><v>old_tag</v></c><c t=\"str\"><v>kind</v></c><c t=\"str\"><v>grade</v></c><c t=\"str\"><v>section</v></c>"
    "<c t=\"str\"><v>length</v></c><c t=\"str\"><v>heat</v></c></row>";

std::string Told(const std::string& length, const std::string& heat) {
  const Look look =
      LookAt(TableKind::Opening,
             Xlsx(std::string(kHead) +
                  "<row><c><v>1</v></c><c t=\"str\"><v>bar</v></c><c t=\"str\"><v>C45E</v></c><c t=\"str\"><v>round 50</v></c>" + length +
                  heat + "</row>"),
             "f", {}, 10);
  return ProblemsText(look.problems) + ProblemsText(look.warnings);
}

TEST(Spreadsheet, AHeatThatIsANumberIsWarnedOfOrRefused) {
  const std::string length = "<c><v>6000</v></c>";
  EXPECT_EQ(Told(length, "<c t=\"str\"><v>07715</v></c>"), "");
  EXPECT_EQ(
      Told(length, "<c><v>7715</v></c>"),
      "f:Rack!F2: heat \"7715\" is a number in the sheet: zeros in front of it would be lost; look at the metal, and format the column as text\n");
  EXPECT_EQ(
      Told(length, "<c s=\"1\"><v>123000</v></c>"),
      "f:Rack!F2: heat: \"1.23E+05\" is a number a spreadsheet made of a heat like 123E3; expected the heat as marked on the metal, in a column formatted as text\n");
  EXPECT_EQ(
      Told(length, "<c s=\"2\"><v>715</v></c>"),
      "f:Rack!F2: heat: \"0715\" is a number that only its format shows with zeros in front; expected the heat as marked on the metal, in a column formatted as text\n");
}

TEST(Spreadsheet, ALengthThatBecameADateOrAnErrorIsRefused) {
  const std::string heat = "<c t=\"str\"><v>K1</v></c>";
  EXPECT_TRUE(Told("<c s=\"4\"><v>46090</v></c>", heat).find("(the sheet holds a date)") != std::string::npos)
      << Told("<c s=\"4\"><v>46090</v></c>", heat);
  EXPECT_EQ(Told("<c t=\"e\"><v>#N/A</v></c>", heat), "f:Rack!E2: length holds the error #N/A; expected a value\n");
}

TEST(Spreadsheet, AUnitInTheFormatIsNotLost) {
  const Look look =
      LookAt(TableKind::Opening,
             Xlsx(std::string(kHead) +
                  "<row><c><v>1</v></c><c t=\"str\"><v>bar</v></c><c t=\"str\"><v>C45E</v></c><c t=\"str\"><v>round 50</v></c>"
                  "<c s=\"6\"><v>240</v></c><c t=\"str\"><v>K1</v></c></row>"),
             "f", {}, 10);
  ASSERT_EQ(look.rows.size(), 1U) << ProblemsText(look.problems);
  EXPECT_EQ(look.rows[0].values[4], (ReadValue{"length", "6096 mm"}));
}

TEST(Spreadsheet, NumbersFollowTheDecimalMarkOfTheTexts) {
  const Look look =
      LookAt(TableKind::Opening,
             AsXlsx({{"old_tag", "kind", "grade", "section", "length", "heat"}, {"1", "bar", "C45E", "tube 60,3x4", "#352.425", "K1"}}),
             "f", {}, 10);
  EXPECT_EQ(ProblemsText(look.problems), "");
  EXPECT_EQ(look.decimal_mark, ',');
  EXPECT_EQ(look.rows.at(0).values[4], (ReadValue{"length", "352.425 mm"}));
}

TEST(Look, SaysHowColumnsWereMatchedAndWhatIsAbsent) {
  const Look look =
      LookAt(TableKind::Opening, "Old Tag;kind;grade;section;Length\n1;bar;C45E;round 2in;20 ft\n2;bar;C45E;round;6000\n", "f", {}, 1);
  EXPECT_EQ(look.facts.format, "CSV");
  EXPECT_EQ(look.facts.delimiter, ';');
  EXPECT_EQ(look.facts.lines, 2U);
  EXPECT_EQ(look.good, 1U);
  ASSERT_EQ(look.facts.columns.size(), 5U);
  EXPECT_EQ(look.facts.columns[0].header, "Old Tag");
  EXPECT_EQ(look.facts.columns[0].name, "old_tag");
  EXPECT_EQ(look.facts.columns[4].unit, "mm");
  EXPECT_EQ(look.facts.absent.front(), "mill");
  EXPECT_EQ(
      look.rows.at(0).values,
      (std::vector<ReadValue>{{"old_tag", "1"}, {"kind", "bar"}, {"grade", "C45E"}, {"section", "round 2 in"}, {"length", "6096 mm"}}));
  EXPECT_EQ(look.problems.size(), 1U);
}

}  // namespace
}  // namespace heatkeep::intake
