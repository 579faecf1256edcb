#include <gtest/gtest.h>

#include "tests/intake/packed.h"
#include "tests/intake/shown_table.h"

namespace heatkeep::intake {
namespace {

using namespace std::string_literals;

std::string Wide(const std::string& text) {
  std::string wide;
  for (char c : text) wide += {c, '\0'};
  return wide;
}

TEST(FileFormat, IsRecognisedByContentAndOthersAreRefusedInWords) {
  const std::string compound = "\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1"s + std::string(500, '\0');
  const auto refused = [](const std::string& bytes, const std::string& what) {
    EXPECT_EQ(ShownTable(bytes), "f: this is " + what + "; expected XLSX, ODS or CSV\n");
  };
  refused(compound + Wide("Workbook"), "an old binary spreadsheet (.xls)");
  refused(compound + Wide("EncryptedPackage"), "a spreadsheet locked with a password");
  refused(compound, "an old binary office file");
  refused("%PDF-1.7\n", "a PDF");
  refused("\x1F\x8B\x08", "a gzip file");
  refused("\x89PNG\r\n\x1A\n", "a picture");
  refused("{\\rtf1", "a text document (RTF)");
  refused("ID;PWXL;N;E\n", "a SYLK file");
  refused("\xEF\xBB\xBF <!DOCTYPE HTML><table>", "a web page (HTML)");
  refused("<?xml version=\"1.0\"?><Workbook xmlns=\"urn:schemas-microsoft-com:office:spreadsheet\">", "an XML spreadsheet of 2003");
  refused("<?xml version=\"1.0\"?><office:document>", "a flat OpenDocument file");
  refused(Packed({{"mimetype", "application/vnd.oasis.opendocument.text"}}), "an OpenDocument \"text\", no spreadsheet");
  refused(Packed({{"a.txt", "hello"}}), "a zip file but no spreadsheet");
  Parts binary = XlsxParts("");
  for (auto& [name, content] : binary) {
    if (name == "_rels/.rels") content.replace(content.find("workbook.xml"), 12, "workbook.bin");
  }
  refused(Packed(binary), "a binary spreadsheet (.xlsb)");
  Parts document =
      With(XlsxParts(""), "[Content_Types].xml",
           "<Types><Override ContentType=\"application/vnd.openxmlformats-officedocument.wordprocessingml.document.main+xml\"/></Types>");
  for (auto& [name, content] : document) {
    if (name == "_rels/.rels") content.replace(content.find("xl/workbook.xml"), 15, "word/document.xml");
  }
  refused(Packed(document), "a zip file but no spreadsheet");
}

TEST(FileFormat, ATextFileHasNoSheets) {
  EXPECT_EQ(ShownTable("a,b\n1,2\n", "Rack"), "f: a text file has no sheets; expected no --sheet, or a spreadsheet\n");
  EXPECT_EQ(ShownTable("a,b\n1,2\n"), "1|a|b\n2|1|2\n");
}

}  // namespace
}  // namespace heatkeep::intake
