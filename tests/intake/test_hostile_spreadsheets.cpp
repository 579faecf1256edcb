// Files that would grow, lie, climb out or stay locked: each is refused in words and quickly.
#include <gtest/gtest.h>

#include "tests/intake/packed.h"
#include "tests/intake/shown_table.h"

namespace heatkeep::intake {
namespace {

const std::string kOneCell = "<row><c><v>1</v></c></row>";

bool Has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

// Sets the 4 bytes at `offset` of every directory entry (signature `sign`) of the part called `name` to n.
std::string Patched(std::string zip, const std::string& sign, std::size_t name_at, const std::string& name, std::size_t offset,
                    std::uint32_t n) {
  for (auto at = zip.find(sign); at != std::string::npos; at = zip.find(sign, at + 4)) {
    if (zip.compare(at + name_at, name.size(), name) != 0) continue;
    for (std::size_t i = 0; i < 4; ++i) zip[at + offset + i] = static_cast<char>(static_cast<unsigned char>(n >> (8 * i)));
  }
  return zip;
}

// Says in both headers that `name` unpacks to n bytes (APPNOTE.TXT 6.3: sizes at 22 and 24, names at 30 and 46).
std::string Lying(const std::string& zip, const std::string& name, std::uint32_t n) {
  return Patched(Patched(zip, "PK\x03\x04", 30, name, 22, n), "PK\x01\x02", 46, name, 24, n);
}

const std::string kSheet = "xl/worksheets/odd.xml";

TEST(Hostile, ABombIsRefusedByItsSize) {
  const std::string bomb = Packed(With(XlsxParts(kOneCell), kSheet, std::string(std::size_t{300} * 1024 * 1024, ' ')));
  EXPECT_LT(bomb.size(), 1'000'000U);
  EXPECT_EQ(ShownTable(bomb), "f: part \"xl/worksheets/odd.xml\" unpacks to more than 128 MiB; expected a spreadsheet of ordinary size\n");
}

TEST(Hostile, ABombThatSaysItIsSmallIsRefusedWhileItUnpacks) {
  const std::string bomb = Packed(With(XlsxParts(kOneCell), kSheet, std::string(std::size_t{200} * 1024 * 1024, ' ')));
  const std::string answer = ShownTable(Lying(bomb, kSheet, 1000));
  EXPECT_TRUE(Has(answer, "f: part \"xl/worksheets/odd.xml\" is damaged or is not as large as it says") ||
              Has(answer, "unpacks to more than 128 MiB"))
      << answer;
}

TEST(Hostile, ManyPartsBelowTheLimitAreStillBounded) {
  const std::string big(std::size_t{120} * 1024 * 1024, ' ');
  Parts parts =
      With(With(With(XlsxParts(kOneCell), kSheet, big), "xl/words.xml", "<sst>" + big + "</sst>"), "xl/styles.xml", "<s>" + big + "</s>");
  EXPECT_TRUE(Has(ShownTable(Packed(parts)), "unpacks to more than")) << "the sum is bounded too";
}

TEST(Hostile, SizesThatLieAreRefused) {
  const std::string zip = Xlsx(kOneCell);
  EXPECT_EQ(ShownTable(zip), "1|1#\n");
  EXPECT_TRUE(Has(ShownTable(Lying(zip, kSheet, 1)), "not as large as it says"));
  EXPECT_TRUE(Has(ShownTable(Lying(zip, kSheet, 100'000)), "not as large as it says"));
}

TEST(Hostile, ADamagedPartIsRefused) {
  std::string zip = Xlsx(kOneCell);
  EXPECT_TRUE(Has(ShownTable(Patched(zip, "PK\x01\x02", 46, kSheet, 16, 12345)), "damaged"));  // its check sum
  EXPECT_TRUE(Has(ShownTable(zip.substr(0, zip.size() / 2)), "the zip file is damaged"));
  EXPECT_TRUE(Has(ShownTable(zip.substr(0, zip.size() - 1)), "the zip file is damaged"));
}

TEST(Hostile, TooManyPartsAreRefused) {
  Parts parts = XlsxParts(kOneCell);
  for (int i = 0; i < 10'100; ++i) parts.emplace_back("p" + std::to_string(i), "");
  EXPECT_EQ(ShownTable(Packed(parts)), "f: more than 10000 parts are packed in it; expected a spreadsheet of ordinary size\n");
}

TEST(Hostile, ASpreadsheetInASpreadsheetIsNotUnpacked) {
  EXPECT_EQ(ShownTable(Packed({{"inner.xlsx", Xlsx(kOneCell)}})), "f: this is a zip file but no spreadsheet; expected XLSX, ODS or CSV\n");
}

TEST(Hostile, DocumentTypesAndWithThemEntitiesAreRefused) {
  const std::string laughs = "<?xml version=\"1.0\"?><!DOCTYPE l [<!ENTITY a \"ha\"><!ENTITY b \"&a;&a;&a;&a;\">]><worksheet><sheetData>" +
      kOneCell + "</sheetData></worksheet>";
  EXPECT_EQ(
      ShownTable(Packed(With(XlsxParts(kOneCell), kSheet, laughs))),
      "f: part \"xl/worksheets/odd.xml\" has a document type, which no spreadsheet needs; expected a whole spreadsheet, saved again\n");
  const std::string outside =
      "<?xml version=\"1.0\"?><!DOCTYPE l [<!ENTITY x SYSTEM \"file:///etc/passwd\">]><sst><si><t>&x;</t></si></sst>";
  EXPECT_TRUE(Has(ShownTable(Packed(With(XlsxParts(kOneCell), "xl/words.xml", outside))), "has a document type"));
  Parts ods = OdsParts("");
  EXPECT_TRUE(Has(ShownTable(Packed(With(ods, "content.xml", outside))), "has a document type"));
  EXPECT_TRUE(Has(ShownTable(Packed(With(XlsxParts(kOneCell), kSheet, "<worksheet>&x;</worksheet>"))), "not well-formed XML"));
}

TEST(Hostile, DeepAndBrokenXmlIsRefused) {
  std::string deep;
  for (int i = 0; i < 100'000; ++i) deep += "<a>";
  EXPECT_TRUE(Has(ShownTable(Packed(With(XlsxParts(kOneCell), kSheet, deep))), "is nested too deeply"));
  EXPECT_TRUE(Has(ShownTable(Packed(With(XlsxParts(kOneCell), kSheet, "<worksheet><sheetData>"))), "is not well-formed XML in line 1"));
  EXPECT_TRUE(Has(ShownTable(Packed(With(XlsxParts(kOneCell), kSheet, std::string("\0\0", 2)))), "is not well-formed XML"));
}

TEST(Hostile, PathsThatClimbOutAreRefused) {
  const std::string rels = "<Relationships><Relationship Id=\"a\" Type=\"x/worksheet\" Target=\"../../../etc/passwd\"/></Relationships>";
  EXPECT_TRUE(Has(ShownTable(Packed(With(XlsxParts(kOneCell), "xl/_rels/workbook.xml.rels", rels))), "points outside of itself"));
  const std::string outside =
      "<Relationships><Relationship Id=\"a\" Type=\"x/worksheet\" TargetMode=\"External\" Target=\"http://127.0.0.1/s.xml\"/></Relationships>";
  EXPECT_TRUE(
      Has(ShownTable(Packed(With(XlsxParts(kOneCell), "xl/_rels/workbook.xml.rels", outside))), "sheet \"Rack\" has no part in the file"));
  EXPECT_EQ(ShownTable(Packed(With(XlsxParts(kOneCell), "../../evil", "x"))), "1|1#\n") << "a part that nobody asks for is never unpacked";
}

TEST(Hostile, PartsThatAreThereTwiceAreRefused) {
  Parts parts = XlsxParts(kOneCell);
  parts.emplace_back("XL/Worksheets/odd.xml", "<worksheet/>");
  EXPECT_TRUE(Has(ShownTable(Packed(parts)), "is there twice"));
}

TEST(Hostile, LockedFilesAreRefused) {
  EXPECT_EQ(ShownTable(Packed(XlsxParts(kOneCell), "secret")), "f: the file is locked with a password; expected one without a password\n");
  EXPECT_EQ(ShownTable(Packed(With(OdsParts(""), "META-INF/manifest.xml", "<m><encryption-data/></m>"))),
            "f: the file is locked with a password; expected one without a password\n");
}

TEST(Hostile, CellsWhereNoneCanBeAreRefused) {
  const auto refused = [](const std::string& rows, const std::string& why) {
    const std::string answer = ShownTable(Xlsx(rows));
    EXPECT_TRUE(Has(answer, why)) << answer;
  };
  refused("<row r=\"2\"><c r=\"A1\"><v>1</v></c></row>", "cell \"A1\" stands in row 2");
  refused("<row r=\"2\"><c r=\"A2\"><v>1</v></c></row><row r=\"1\"><c r=\"A1\"><v>1</v></c></row>", "out of order");
  refused("<row r=\"1\"><c r=\"B1\"><v>1</v></c><c r=\"B1\"><v>2</v></c></row>", "cell B1 is there twice");
  refused("<row r=\"1\"><c r=\"XFE1\"><v>1</v></c></row>", "\"XFE1\" is no cell");
  refused("<row r=\"1\"><c r=\"XFD1\"><v>1</v></c></row>", "expected at most 256 columns");
  refused("<row r=\"99999999999\"><c><v>1</v></c></row>", "where the sheet counts");
  refused("<row r=\"1048576\"/><row><c><v>1</v></c></row>", "more rows than a sheet has");
  refused("<row><c t=\"s\"><v>7</v></c></row>", "shared string 7, which is not there");
  refused("<row><c><v>1e999</v></c></row>", "as a number");
  refused("<row><c><v>nan</v></c></row>", "as a number");
  refused("<row><c t=\"new\"><v>1</v></c></row>", "unknown type \"new\"");
  refused("", "nothing is in sheet \"Rack\"");
}

TEST(Hostile, RepetitionsAreBounded) {
  const std::string cell =
      "<table:table-cell office:value-type=\"string\" table:number-columns-repeated=\"200\"><text:p>x</text:p></table:table-cell>";
  EXPECT_TRUE(Has(ShownTable(Ods("<table:table-row table:number-rows-repeated=\"1000000\">" + cell + "</table:table-row>")),
                  "more than 4 000 000 cells"));
  EXPECT_TRUE(Has(ShownTable(Ods("<table:table-row table:number-rows-repeated=\"99999999999\">" + cell + "</table:table-row>")),
                  "repetitions of a row or cell"));
  EXPECT_TRUE(Has(
      ShownTable(Ods(
          "<table:table-row><table:table-cell office:value-type=\"string\" table:number-columns-repeated=\"16384\"><text:p>x</text:p></table:table-cell></table:table-row>")),
      "at most 256 columns"));
  const std::string blanks =
      "<table:table-row><table:table-cell office:value-type=\"string\"><text:p>x<text:s text:c=\"1000000\"/>x</text:p></table:table-cell></table:table-row>";
  std::string many;
  for (int i = 0; i < 70; ++i) many += blanks;
  EXPECT_TRUE(Has(ShownTable(Ods(many)), "more than 64 MiB of text"));
}

TEST(Hostile, ALongSharedStringIsNotMultiplied) {
  std::string rows;
  for (int i = 0; i < 3000; ++i) rows += "<row><c t=\"s\"><v>0</v></c></row>";
  EXPECT_TRUE(Has(ShownTable(Xlsx(rows, "<si><t>" + std::string(32'000, 'x') + "</t></si>")), "more than 64 MiB of text"));
}

}  // namespace
}  // namespace heatkeep::intake
