#include "client/intake/ods.h"

#include <algorithm>
#include <charconv>
#include <set>
#include <vector>

#include "client/intake/number_shown.h"
#include "client/intake/sheet_rows.h"
#include "client/intake/xlsx.h"
#include "client/intake/xml_part.h"
#include "schema/terms/bad_text.h"
#include "schema/terms/heat_text.h"
#include "schema/terms/plain_text.h"

namespace heatkeep::intake {
namespace {

constexpr const char* kContent = "content.xml";
constexpr const char* kWhole = "a whole spreadsheet, saved again";
constexpr const char* kOffice = ":office:1.0";
constexpr const char* kTable = ":table:1.0";
constexpr int kMostRepeats = 1'048'576;

int Repeats(const XmlPart& xml, const char* attribute) {
  const std::string text = xml.Attribute(attribute);
  if (text.empty()) return 1;
  int n = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), n);
  if (error != std::errc() || end != text.data() + text.size() || n < 1 || n > kMostRepeats) {
    throw BadText(Quoted(text) + " repetitions of a row or cell", kWhole);
  }
  return n;
}

struct Sheets {
  std::vector<std::string> names;
  std::vector<bool> hidden;
};

Sheets SheetsOf(const std::string& content) {
  Sheets sheets;
  std::set<std::string> hiding;  // styles of sheets that are not shown
  std::string style;
  XmlPart xml(content, kContent);
  for (XmlStep step = xml.Next(); step != XmlStep::Done; step = xml.Next()) {
    if (step != XmlStep::Start) continue;
    if (xml.Is("style")) style = xml.Attribute("name");
    if (xml.Is("table-properties") && xml.Attribute("display") == "false") hiding.insert(style);
    if (!xml.Is("table")) continue;
    sheets.names.push_back(xml.Attribute("name", kTable));
    sheets.hidden.push_back(hiding.contains(xml.Attribute("style-name", kTable)));
    xml.Skip();
  }
  return sheets;
}

// The format behind a number, from how the file shows it.
NumberFormat FormatOf(const std::string& shown, bool with_words) {
  NumberFormat format;
  const std::string plain = PlainText(shown);
  if (SpreadsheetAte(plain)) {
    format.kind = NumberFormat::Kind::Scientific;
    return format;
  }
  const std::size_t first = std::min(plain.find_first_of("0123456789"), plain.size());
  const std::size_t end = std::min(plain.find_first_not_of("0123456789", first), plain.size());
  if (end - first > 1 && plain[first] == '0') {
    format.kind = NumberFormat::Kind::Padded;
    format.zeros = static_cast<int>(end - first);
  }
  const bool letters = std::any_of(plain.begin(), plain.end(),
                                   [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '"' || c == '\''; });
  if (!letters || !with_words) return format;
  for (char c : plain) {
    if ((c < '0' || c > '9') && c != '.' && c != ',' && c != '-') format.words += c;
  }
  format.words = PlainText(format.words);
  return format;
}

struct OdsCell {
  std::string type, value, date, boolean, string, text;
  bool formula = false, error = false;
};

ShownCell Shown(const OdsCell& cell) {
  if (cell.error || (cell.formula && (cell.text.starts_with("#") || cell.text.starts_with("Err:"))))
    return {cell.text.empty() ? "#ERROR" : cell.text, CellKind::Error};
  if (cell.type == "float" || cell.type == "currency") return ShowNumber(cell.value, FormatOf(cell.text, cell.type == "float"), false);
  if (cell.type == "percentage") return ShowNumber(cell.value, {NumberFormat::Kind::Percent, 0, ""}, false);
  if (cell.type == "date") return {cell.date.substr(0, cell.date.find('.')), CellKind::Date};
  if (cell.type == "time") return {"the time of day " + cell.text, CellKind::Date};
  if (cell.type == "boolean") return {cell.boolean == "true" ? "yes" : "no", CellKind::Boolean};
  if (cell.formula && cell.type.empty() && cell.text.empty()) return {"a formula that was never computed", CellKind::Error};
  return {cell.string.empty() ? cell.text : cell.string, CellKind::Text};
}

class OdsReader {
 public:
  OdsReader(const std::string& content, SheetRows& rows) : xml_(content, kContent), rows_(rows) {}

  void Read(std::size_t chosen) {
    std::size_t table = 0;
    for (XmlStep step = xml_.Next(); step != XmlStep::Done; step = xml_.Next()) {
      if (step != XmlStep::Start || !xml_.Is("table")) continue;
      if (table++ != chosen) {
        xml_.Skip();
        continue;
      }
      ReadTable();
      return;
    }
  }

 private:
  struct Placed {
    std::size_t column = 0;
    int times = 1;
    ShownCell shown;
    bool formula = false;
  };

  void ReadTable() {
    const int outside = xml_.Depth() - 1;
    std::size_t column = 0;
    while (xml_.Depth() > outside) {
      if (xml_.Next() != XmlStep::Start) continue;
      if (xml_.Is("table-row")) {
        ReadRow();
      } else if (xml_.Is("table-column")) {
        const int n = Repeats(xml_, "number-columns-repeated");
        const bool hidden = xml_.Attribute("visibility", kTable) == "collapse";
        for (int i = 0; i < n && hidden && column + static_cast<std::size_t>(i) < static_cast<std::size_t>(kMostColumns); ++i) {
          rows_.HideColumn(column + static_cast<std::size_t>(i));
        }
        column += static_cast<std::size_t>(n);
      } else if (xml_.Is("shapes") || xml_.Is("table-source") || xml_.Is("scenario")) {
        xml_.Skip();
      }
    }
  }

  void ReadRow() {
    const int times = Repeats(xml_, "number-rows-repeated"), first = row_ + 1;
    const std::string visible = xml_.Attribute("visibility", kTable);
    const bool hidden = visible == "collapse" || visible == "filter";
    row_ += times;
    std::vector<Placed> cells;
    std::size_t column = 0;
    const int outside = xml_.Depth() - 1;
    while (xml_.Depth() > outside) {
      if (xml_.Next() != XmlStep::Start) continue;
      const bool covered = xml_.Is("covered-table-cell");
      if (!covered && !xml_.Is("table-cell")) continue;
      const int wide = Repeats(xml_, "number-columns-repeated");
      if (covered) xml_.Skip();
      else TakeCell(first, column, wide, cells);
      column += static_cast<std::size_t>(wide);
    }
    if (cells.empty()) return;
    if (row_ > kMostRepeats) throw BadText("more rows than a sheet has", kWhole);
    for (int row = first; row < first + times; ++row) PutRow(row, hidden, cells);
  }

  void PutRow(int row, bool hidden, const std::vector<Placed>& cells) {
    if (hidden) rows_.HideRow(row);
    for (const Placed& cell : cells) {
      for (int i = 0; i < cell.times; ++i) {
        const std::size_t column = cell.column + static_cast<std::size_t>(i);
        rows_.Put(row, column, cell.shown.text, cell.shown.kind);
        if (cell.formula) rows_.NoteFormula(row, column);
      }
    }
  }

  void TakeCell(int row, std::size_t column, int times, std::vector<Placed>& cells) {
    if (Repeats(xml_, "number-columns-spanned") > 1 || Repeats(xml_, "number-rows-spanned") > 1) {
      rows_.NoteMerged("from " + ColumnLetters(column) + std::to_string(row));
    }
    OdsCell cell;
    cell.type = xml_.Attribute("value-type", kOffice);
    cell.value = xml_.Attribute("value", kOffice);
    cell.date = xml_.Attribute("date-value", kOffice);
    cell.boolean = xml_.Attribute("boolean-value", kOffice);
    cell.string = xml_.Attribute("string-value", kOffice);
    cell.formula = !xml_.Attribute("formula", kTable).empty();
    cell.error = xml_.Attribute("value-type", "calcext") == "error";
    cell.text = TakeText();
    try {
      ShownCell shown = Shown(cell);
      const bool computed = cell.formula && shown.kind != CellKind::Error;
      if (!shown.text.empty()) cells.push_back({column, times, std::move(shown), computed});
    } catch (const BadText& e) { throw BadText("cell " + ColumnLetters(column) + std::to_string(row) + ": " + e.Wrong(), e.Expected()); }
  }

  // The paragraphs of a cell, a line each; notes and drawings in it are no part of its text.
  std::string TakeText() {
    std::string text;
    int paragraphs = 0;
    const int outside = xml_.Depth() - 1;
    while (xml_.Depth() > outside) {
      const XmlStep step = xml_.Next();
      if (step == XmlStep::Text && paragraphs > 0 && xml_.Depth() > outside + 1) text += xml_.Text();
      if (step != XmlStep::Start) continue;
      if (xml_.Is("p") && xml_.Depth() == outside + 2) {
        if (paragraphs++ > 0) text += '\n';
      } else if (xml_.Is("s")) {
        text.append(static_cast<std::size_t>(Repeats(xml_, "c")), ' ');
      } else if (xml_.Is("tab")) {
        text += '\t';
      } else if (xml_.Is("line-break")) {
        text += '\n';
      } else if (!xml_.Is("span") && !xml_.Is("a")) {
        xml_.Skip();
      }
      if (text.size() > kMostText) throw BadText("more than 64 MiB of text in one cell", "a spreadsheet of ordinary size");
    }
    return text;
  }

  XmlPart xml_;
  SheetRows& rows_;
  int row_ = 0;
};

}  // namespace

bool IsOds(ZipParts& zip) {
  if (!zip.Has("mimetype")) return false;
  const std::string_view family = "application/vnd.oasis.opendocument.";
  const std::string type = zip.Read("mimetype");
  if (!type.starts_with(family)) return false;
  const std::string kind = type.substr(family.size());
  if (!kind.starts_with("spreadsheet")) throw BadText("this is an OpenDocument " + Quoted(kind) + ", no spreadsheet", "XLSX, ODS or CSV");
  const std::string manifest = "META-INF/manifest.xml";
  if (zip.Has("encrypted-package") || (zip.Has(manifest) && zip.Read(manifest).find("encryption-data") != std::string::npos)) {
    throw BadText("the file is locked with a password", "one without a password");
  }
  return true;
}

void ReadOds(ZipParts& zip, const std::string& name, const std::string& sheet, Table& table) {
  const std::string content = zip.Read(kContent);
  const Sheets sheets = SheetsOf(content);
  const std::size_t chosen = ChosenSheet(sheets.names, sheets.hidden, sheet);
  table.facts.format = "ODS";
  table.facts.sheets = sheets.names;
  SheetRows rows(name, sheets.names[chosen]);
  OdsReader(content, rows).Read(chosen);
  rows.GiveTo(table);
}

}  // namespace heatkeep::intake
