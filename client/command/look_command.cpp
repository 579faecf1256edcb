#include "client/command/look_command.h"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <ostream>

#include "client/intake/file_bytes.h"
#include "client/intake/look.h"
#include "client/intake/table.h"
#include "schema/terms/bad_text.h"

namespace heatkeep::command {
namespace {

using Json = nlohmann::ordered_json;
using intake::Look;

std::string DelimiterWord(char delimiter) { return delimiter == '\t' ? "tab" : std::string(1, delimiter); }

const char* PartedBy(char delimiter) {
  switch (delimiter) {
    case ',': return "commas";
    case ';': return "semicolons";
    case '\t': return "tabs";
    default: return "upright strokes";
  }
}

Json ProblemsJson(const std::vector<intake::FileProblem>& problems) {
  Json list = Json::array();
  for (const intake::FileProblem& p : problems) {
    Json one = {{"line", p.line}};
    if (!p.cell.empty()) one["cell"] = p.cell;
    one["wrong"] = p.wrong;
    if (!p.expected.empty()) one["expected"] = p.expected;
    list.push_back(std::move(one));
  }
  return list;
}

Json LookJson(const LookOptions& options, const Look& look) {
  const intake::TableFacts& facts = look.facts;
  Json j = {{"file", options.file.path}, {"as", options.as}, {"format", facts.format}};
  if (!facts.encoding.empty()) j["encoding"] = facts.encoding;
  if (facts.delimiter != 0) j["delimiter"] = DelimiterWord(facts.delimiter);
  if (!facts.sheet.empty()) j["sheet"] = facts.sheet;
  if (!facts.sheets.empty()) j["sheets"] = facts.sheets;
  j["decimal_mark"] = std::string(1, look.decimal_mark);
  j["columns"] = Json::array();
  for (const intake::MatchedColumn& c : facts.columns) {
    Json column = {{"place", intake::ColumnLetters(c.place)}, {"header", c.header}, {"is", c.name}};
    if (!c.unit.empty()) column["unit"] = c.unit;
    j["columns"].push_back(std::move(column));
  }
  j["absent"] = facts.absent;
  j["lines"] = facts.lines;
  j["good_lines"] = look.good;
  j["rows"] = Json::array();
  for (const intake::LookedRow& row : look.rows) {
    Json values = Json::object();
    for (const intake::ReadValue& value : row.values) values[value.column] = value.text;
    j["rows"].push_back({{"line", row.line}, {"values", std::move(values)}});
  }
  j["problems"] = ProblemsJson(look.problems);
  j["warnings"] = ProblemsJson(look.warnings);
  return j;
}

void SayHow(const Look& look, std::ostream& out) {
  const intake::TableFacts& facts = look.facts;
  out << "format    " << facts.format;
  if (!facts.encoding.empty()) out << ", " << facts.encoding << ", cells parted by " << PartedBy(facts.delimiter);
  if (!facts.sheet.empty()) out << ", sheet " << Quoted(facts.sheet) << " of " << facts.sheets.size();
  out << (look.decimal_mark == ',' ? ", decimal comma\n" : ", decimal point\n");
  for (const intake::MatchedColumn& c : facts.columns) {
    out << "column    " << intake::ColumnLetters(c.place) << "  " << Quoted(c.header) << " is " << c.name
        << (c.unit.empty() ? "" : ", " + c.unit + " where no unit is written") << '\n';
  }
  if (facts.absent.empty()) return;
  out << "not there ";
  for (std::size_t i = 0; i < std::min<std::size_t>(facts.absent.size(), 20); ++i) out << (i == 0 ? "" : ", ") << facts.absent[i];
  out << (facts.absent.size() > 20 ? " ..." : "") << '\n';
}

void SayLook(const Look& look, std::ostream& out) {
  if (!look.facts.columns.empty()) SayHow(look, out);
  out << "lines     " << look.facts.lines << ", good " << look.good << '\n';
  for (const intake::LookedRow& row : look.rows) {
    out << "line " << row.line << '\n';
    for (const intake::ReadValue& value : row.values) {
      if (!value.text.empty())
        out << "  " << value.column << std::string(value.column.size() < 14 ? 14 - value.column.size() : 1, ' ') << value.text << '\n';
    }
  }
  out << intake::ProblemsText(look.problems) << intake::ProblemsText(look.warnings) << "nothing was changed\n";
}

}  // namespace

int RunLook(const LookOptions& options, std::ostream& out, std::ostream& err) {
  try {
    const auto& words = intake::TableKindWords();
    const auto kind = static_cast<intake::TableKind>(std::find(words.begin(), words.end(), options.as) - words.begin());
    const Look look = intake::LookAt(kind, intake::FileBytes(options.file.path), options.file.path, options.file.How(), options.rows);
    if (options.json) out << LookJson(options, look).dump(2) << '\n';
    else SayLook(look, out);
    return look.problems.empty() ? 0 : 2;
  } catch (const std::runtime_error& e) {
    err << e.what() << '\n';
    return 2;
  }
}

}  // namespace heatkeep::command
