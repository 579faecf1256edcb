#include "client/intake/xlsx.h"

#include <algorithm>
#include <charconv>
#include <map>

#include "client/intake/xml_part.h"
#include "schema/terms/bad_text.h"

namespace heatkeep::intake {
namespace {

constexpr std::size_t kMostStrings = 2'000'000;
constexpr std::size_t kMostFormats = 65'536;
constexpr const char* kWhole = "a whole spreadsheet, saved again";

struct Relation {
  std::string id, type, part;  // type: the last word of its address, "worksheet"
};

// `target` as seen from the folder of `from`: a whole part name without a leading slash. Throws BadText when it climbs out.
std::string Resolved(const std::string& from, const std::string& target) {
  std::string path = target.starts_with('/') ? target : from.substr(0, from.rfind('/') + 1) + target;
  std::vector<std::string> parts;
  for (std::size_t at = 0; at <= path.size();) {
    const std::size_t end = std::min(path.find('/', at), path.size());
    const std::string part = path.substr(at, end - at);
    at = end + 1;
    if (part.empty() || part == ".") continue;
    if (part != "..") {
      parts.push_back(part);
    } else if (parts.empty()) {
      throw BadText("the workbook points outside of itself, to " + Quoted(target), kWhole);
    } else {
      parts.pop_back();
    }
  }
  std::string name;
  for (const std::string& part : parts) name += (name.empty() ? "" : "/") + part;
  return name;
}

// The relations of a part ("" is the whole file); those that point outside the file are left out.
std::vector<Relation> RelationsOf(ZipParts& zip, const std::string& part) {
  const std::size_t folder = part.rfind('/') + 1;
  const std::string rels = part.substr(0, folder) + "_rels/" + part.substr(folder) + ".rels";
  std::vector<Relation> relations;
  if (!zip.Has(rels)) return relations;
  XmlPart xml(zip.Read(rels), rels);
  for (XmlStep step = xml.Next(); step != XmlStep::Done; step = xml.Next()) {
    if (step != XmlStep::Start || !xml.Is("Relationship") || xml.Attribute("TargetMode") == "External") continue;
    const std::string type = xml.Attribute("Type");
    relations.push_back({xml.Attribute("Id"), type.substr(type.rfind('/') + 1), Resolved(part, xml.Attribute("Target"))});
  }
  return relations;
}

std::string PartOfType(const std::vector<Relation>& relations, const std::string& type) {
  const auto at = std::find_if(relations.begin(), relations.end(), [&](const Relation& r) { return r.type == type; });
  return at == relations.end() ? "" : at->part;
}

std::vector<std::string> SharedStrings(ZipParts& zip, const std::string& part) {
  std::vector<std::string> strings;
  if (part.empty()) return strings;
  XmlPart xml(zip.Read(part), part);
  bool in_text = false;
  for (XmlStep step = xml.Next(); step != XmlStep::Done; step = xml.Next()) {
    if (step == XmlStep::Start && xml.Is("rPh")) {  // how to pronounce it
      xml.Skip();
    } else if (step == XmlStep::Start && xml.Is("si")) {
      if (strings.size() == kMostStrings) throw BadText("more than 2 000 000 shared strings", "a spreadsheet of ordinary size");
      strings.emplace_back();
    } else if (step == XmlStep::End && xml.Is("si")) {
      strings.back() = UnescapedXlsx(strings.back());
    } else if (xml.Is("t")) {
      in_text = step == XmlStep::Start;
    } else if (step == XmlStep::Text && in_text && !strings.empty()) {
      strings.back() += xml.Text();
    }
  }
  return strings;
}

int WholeOr(const std::string& text, int otherwise) {
  int n = otherwise;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), n);
  return error == std::errc() && end == text.data() + text.size() ? n : otherwise;
}

// The formats of cellXfs, in order.
std::vector<NumberFormat> Formats(ZipParts& zip, const std::string& part) {
  std::vector<NumberFormat> formats;
  if (part.empty()) return formats;
  std::map<int, NumberFormat> own;
  bool in_cells = false;
  XmlPart xml(zip.Read(part), part);
  for (XmlStep step = xml.Next(); step != XmlStep::Done; step = xml.Next()) {
    if (xml.Is("cellXfs") && step != XmlStep::Text) in_cells = step == XmlStep::Start;
    if (step != XmlStep::Start) continue;
    if (xml.Is("numFmt")) own[WholeOr(xml.Attribute("numFmtId"), -1)] = ReadFormatCode(xml.Attribute("formatCode"));
    if (!in_cells || !xml.Is("xf")) continue;
    if (formats.size() == kMostFormats) throw BadText("more than 65 536 cell formats", kWhole);
    const int id = WholeOr(xml.Attribute("numFmtId"), 0);
    const auto at = own.find(id);
    formats.push_back(at == own.end() ? BuiltInFormat(id) : at->second);
  }
  return formats;
}

struct Sheets {
  std::vector<std::string> names, parts;
  std::vector<bool> hidden;
  bool from_1904 = false;
};

Sheets SheetsOf(ZipParts& zip, const std::string& workbook_part, const std::vector<Relation>& relations) {
  Sheets sheets;
  XmlPart xml(zip.Read(workbook_part), workbook_part);
  for (XmlStep step = xml.Next(); step != XmlStep::Done; step = xml.Next()) {
    if (step != XmlStep::Start) continue;
    if (xml.Is("workbookPr")) sheets.from_1904 = IsOn(xml.Attribute("date1904"));
    if (!xml.Is("sheet")) continue;
    const std::string id = xml.Attribute("id", "relationships");
    const auto at = std::find_if(relations.begin(), relations.end(), [&](const Relation& r) { return r.id == id; });
    if (at == relations.end()) throw BadText("sheet " + Quoted(xml.Attribute("name")) + " has no part in the file", kWhole);
    if (at->type != "worksheet") continue;  // a sheet that is one chart
    const std::string state = xml.Attribute("state");
    sheets.names.push_back(xml.Attribute("name"));
    sheets.parts.push_back(at->part);
    sheets.hidden.push_back(state == "hidden" || state == "veryHidden");
  }
  return sheets;
}

int HexDigit(char c) {
  return c >= '0' && c <= '9' ? c - '0' : c >= 'A' && c <= 'F' ? c - 'A' + 10 : c >= 'a' && c <= 'f' ? c - 'a' + 10 : -1;
}

}  // namespace

std::string UnescapedXlsx(const std::string& text) {
  std::string out;
  for (std::size_t i = 0; i < text.size(); ++i) {
    int code = text[i] == '_' && i + 6 < text.size() && text[i + 1] == 'x' && text[i + 6] == '_' ? 0 : -1;
    for (std::size_t k = i + 2; k < i + 6 && code >= 0; ++k) code = HexDigit(text[k]) < 0 ? -1 : code * 16 + HexDigit(text[k]);
    if (code < 1 || code > 0x7F) {
      out += text[i];
      continue;
    }
    out += static_cast<char>(code);
    i += 6;
  }
  return out;
}

std::size_t ChosenSheet(const std::vector<std::string>& names, const std::vector<bool>& hidden, const std::string& wanted) {
  if (names.empty()) throw BadText("there is no sheet of cells in it", "a spreadsheet with a table");
  if (!wanted.empty()) {
    const auto at = std::find(names.begin(), names.end(), wanted);
    if (at != names.end()) return static_cast<std::size_t>(at - names.begin());
    std::string listed;
    for (const std::string& name : names) listed += (listed.empty() ? "" : ", ") + Quoted(name);
    throw BadText("there is no sheet " + Quoted(wanted), "one of: " + listed);
  }
  const auto shown = std::find(hidden.begin(), hidden.end(), false);
  return shown == hidden.end() ? 0 : static_cast<std::size_t>(shown - hidden.begin());
}

std::string XlsxWorkbookPart(ZipParts& zip) {
  std::string part = PartOfType(RelationsOf(zip, ""), "officeDocument");
  if (part.ends_with(".bin")) throw BadText("this is a binary spreadsheet (.xlsb)", "XLSX, ODS or CSV");
  if (part.empty() || part.ends_with("workbook.xml") || !zip.Has("[Content_Types].xml")) return part;
  const std::string types = zip.Read("[Content_Types].xml");
  return types.find("spreadsheetml") == std::string::npos ? "" : part;
}

void ReadXlsx(ZipParts& zip, const std::string& workbook_part, const std::string& name, const std::string& sheet, Table& table) {
  const std::vector<Relation> relations = RelationsOf(zip, workbook_part);
  const Sheets sheets = SheetsOf(zip, workbook_part, relations);
  const std::size_t chosen = ChosenSheet(sheets.names, sheets.hidden, sheet);
  table.facts.format = "XLSX";
  table.facts.sheets = sheets.names;
  SheetRows rows(name, sheets.names[chosen]);
  const XlsxLook look{SharedStrings(zip, PartOfType(relations, "sharedStrings")), Formats(zip, PartOfType(relations, "styles")),
                      sheets.from_1904};
  ReadXlsxSheet(zip.Read(sheets.parts[chosen]), sheets.parts[chosen], look, rows);
  rows.GiveTo(table);
}

}  // namespace heatkeep::intake
