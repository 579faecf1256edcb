#include "tests/intake/packed.h"

#include <zip.h>

#include <algorithm>
#include <stdexcept>

namespace heatkeep::intake {
namespace {

const std::string kHead = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>";
const std::string kMain = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const std::string kRel = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const std::string kPackage = "http://schemas.openxmlformats.org/package/2006/relationships";

std::string Relation(const std::string& id, const std::string& type, const std::string& target) {
  return "<Relationship Id=\"" + id + "\" Type=\"" + kRel + "/" + type + "\" Target=\"" + target + "\"/>";
}

}  // namespace

std::string Packed(const Parts& parts, const std::string& password) {
  zip_error_t error;
  zip_error_init(&error);
  zip_source_t* source = zip_source_buffer_create(nullptr, 0, 0, &error);
  zip_source_keep(source);
  zip_t* zip = zip_open_from_source(source, ZIP_TRUNCATE, &error);
  for (const auto& [name, content] : parts) {
    const zip_int64_t at = zip_file_add(zip, name.c_str(), zip_source_buffer(zip, content.data(), content.size(), 0), 0);
    if (at < 0) throw std::runtime_error("cannot pack " + name);
    if (!password.empty()) zip_file_set_encryption(zip, static_cast<zip_uint64_t>(at), ZIP_EM_AES_256, password.c_str());
  }
  if (zip_close(zip) != 0) throw std::runtime_error("cannot pack");
  zip_stat_t stat;
  zip_source_stat(source, &stat);
  std::string bytes(stat.size, '\0');
  zip_source_open(source);
  zip_source_read(source, bytes.data(), bytes.size());
  zip_source_close(source);
  zip_source_free(source);
  return bytes;
}

Parts XlsxParts(const std::string& rows, const std::string& strings) {
  return {
      {"[Content_Types].xml", kHead + "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\"/>"},
      {"_rels/.rels",
       kHead + "<Relationships xmlns=\"" + kPackage + "\">" + Relation("r1", "officeDocument", "xl/workbook.xml") + "</Relationships>"},
      {"xl/workbook.xml",
       kHead + "<workbook xmlns=\"" + kMain + "\" xmlns:r=\"" + kRel +
           "\"><sheets><sheet name=\"Rack\" sheetId=\"1\" r:id=\"a\"/></sheets></workbook>"},
      {"xl/_rels/workbook.xml.rels",
       kHead + "<Relationships xmlns=\"" + kPackage + "\">" + Relation("a", "worksheet", "worksheets/odd.xml") +
           Relation("b", "sharedStrings", "/xl/words.xml") + Relation("c", "styles", "styles.xml") + "</Relationships>"},
      {"xl/worksheets/odd.xml", kHead + "<worksheet xmlns=\"" + kMain + "\"><sheetData>" + rows + "</sheetData></worksheet>"},
      {"xl/words.xml", kHead + "<sst xmlns=\"" + kMain + "\">" + strings + "</sst>"},
      {"xl/styles.xml",
       kHead + "<styleSheet xmlns=\"" + kMain +
           "\"><numFmts><numFmt numFmtId=\"164\" formatCode=\"0.00E+00\"/><numFmt numFmtId=\"165\" formatCode=\"0000\"/>"
           "<numFmt numFmtId=\"166\" formatCode=\"dd/mm/yyyy\"/><numFmt numFmtId=\"167\" formatCode=\"0.0&quot; in&quot;\"/></numFmts>"
           "<cellStyleXfs><xf numFmtId=\"14\"/></cellStyleXfs><cellXfs><xf numFmtId=\"0\"/><xf numFmtId=\"164\"/><xf numFmtId=\"165\"/>"
           "<xf numFmtId=\"10\"/><xf numFmtId=\"166\"/><xf numFmtId=\"14\"/><xf numFmtId=\"167\"/><xf numFmtId=\"20\"/><xf numFmtId=\"22\"/>"
           "<xf numFmtId=\"4\"/></cellXfs></styleSheet>"}};
}

std::string Xlsx(const std::string& rows, const std::string& strings) { return Packed(XlsxParts(rows, strings)); }

Parts OdsParts(const std::string& rows) {
  return {{"mimetype", "application/vnd.oasis.opendocument.spreadsheet"},
          {"META-INF/manifest.xml", kHead + "<manifest/>"},
          {"content.xml",
           kHead +
               "<office:document-content xmlns:office=\"urn:oasis:names:tc:opendocument:xmlns:office:1.0\" "
               "xmlns:table=\"urn:oasis:names:tc:opendocument:xmlns:table:1.0\" "
               "xmlns:text=\"urn:oasis:names:tc:opendocument:xmlns:text:1.0\" "
               "xmlns:calcext=\"urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0\">"
               "<office:body><office:spreadsheet><table:table table:name=\"Rack\">" +
               rows + "</table:table></office:spreadsheet></office:body></office:document-content>"}};
}

std::string Ods(const std::string& rows) { return Packed(OdsParts(rows)); }

Parts With(Parts parts, const std::string& name, const std::string& content) {
  const auto at = std::find_if(parts.begin(), parts.end(), [&](const auto& part) { return part.first == name; });
  if (at == parts.end()) parts.emplace_back(name, content);
  else at->second = content;
  return parts;
}

}  // namespace heatkeep::intake
