#include "client/intake/checked_rows.h"

#include <algorithm>

#include "schema/terms/plain_text.h"

namespace heatkeep::intake {
namespace {

// "Slip count" and "slip_count" are one name.
std::string NameForm(std::string_view cell) {
  std::string form;
  for (char c : LowerCase(PlainText(cell))) {
    if (c != ' ' && c != '_' && c != '-') form += c;
  }
  return form;
}

// EN 10168:2004 gives chemistry the fields C71 to C92 and no element a field of its own: "C71 Si" is "Si".
std::string WithoutChemistryField(std::string form) {
  if (form.size() < 4 || form[0] != 'c') return form;
  const std::string number = form.substr(1, 2);
  return number >= "71" && number <= "92" && number[1] >= '0' && number[1] <= '9' ? form.substr(3) : form;
}

std::string Listed(const std::vector<Column>& columns) {
  std::string text;
  for (const Column& c : columns) text += (text.empty() ? "" : ",") + std::string(c.name);
  return text;
}

// Blanks and no-break blanks off both ends; nothing else is touched.
std::string_view Trimmed(std::string_view text) {
  const std::string_view hard = "\u00A0";
  for (bool more = true; more;) {
    more = true;
    if (!text.empty() && (text.front() == ' ' || text.front() == '\t')) {
      text.remove_prefix(1);
    } else if (!text.empty() && (text.back() == ' ' || text.back() == '\t')) {
      text.remove_suffix(1);
    } else if (text.starts_with(hard)) {
      text.remove_prefix(hard.size());
    } else if (text.ends_with(hard)) {
      text.remove_suffix(hard.size());
    } else {
      more = false;
    }
  }
  return text;
}

bool IsDigit(char c) { return c >= '0' && c <= '9'; }

bool IsMark(char c) { return c == ',' || c == '.'; }

// What the numbers of cells say about the file's decimal mark. "6.012" says nothing, nor does "1,100": the mark may set thousands apart.
struct MarkCount {
  int commas = 0, points = 0;  // numbers that can only be read with this one as the decimal mark
  bool doubtful_point = false;

  void Count(std::string_view cell) {
    for (std::size_t i = 0; i < cell.size();) {
      std::size_t end = i;
      while (end < cell.size() && (IsDigit(cell[end]) || (IsMark(cell[end]) && end + 1 < cell.size() && IsDigit(cell[end + 1])))) ++end;
      const bool group = i >= 2 && cell[i - 1] == ' ' && IsDigit(cell[i - 2]);  // "6 000.125" has its thousands set apart
      if (end > i) Number(cell.substr(i, end - i), group);
      i = std::max(end, i + 1);
    }
  }

 private:
  void Number(std::string_view number, bool group) {
    const std::size_t first = number.find_first_of(",."), last = number.find_last_of(",.");
    if (first == std::string_view::npos) return;
    char decimal = number[last];
    if (first != last && number[first] == decimal) decimal = decimal == ',' ? '.' : ',';  // "1.234.567": thousands
    const bool zero = number.substr(0, first) == "0";
    if (first == last && number.size() - last == 4 && first >= 1 && first <= 3 && !zero && !group) {
      doubtful_point |= decimal == '.';
    } else {
      ++(decimal == ',' ? commas : points);
    }
  }
};

}  // namespace

CheckedRows::CheckedRows(std::string_view bytes, const std::string& name, const std::vector<Column>& columns, ReadingOptions how)
    : name_(name), how_(std::move(how)), table_(ReadTable(bytes, name, how_.sheet)) {
  problems_ = table_.problems;
  warnings_ = table_.warnings;
  refused_ = !problems_.empty();
  if (!refused_) MatchHeader(columns);
  if (!refused_) FindDecimalMark();
  if (!refused_) NoteColumns(columns);
}

void CheckedRows::MatchHeader(const std::vector<Column>& columns) {
  const std::vector<std::string>& header = table_.rows.front().cells;
  for (std::size_t i = 0; i < header.size(); ++i) {
    const std::string form = WithoutChemistryField(NameForm(header[i]));
    const auto known = std::find_if(columns.begin(), columns.end(), [&form](const Column& c) {
      return NameForm(c.name) == form || (!c.code.empty() && NameForm(c.code) == form);
    });
    if (known == columns.end()) {
      const std::string shown = form.empty() ? "a column without a name" : "unknown column " + Quoted(header[i]);
      Problem(shown, "only these columns: " + Listed(columns));
    } else if (!places_.emplace(known->name, i).second) {
      Problem("column " + Quoted(header[i]) + " stands twice", "each column once");
    }
  }
  for (const Column& c : columns) {
    if (c.numbers) numbers_.insert(c.name);
    if (c.required && !Has(c.name)) Problem("column " + Quoted(c.name) + " is missing", "a header with it");
  }
  refused_ = !problems_.empty();
}

void CheckedRows::FindDecimalMark() {
  if (how_.decimal_mark != 0) {
    mark_ = how_.decimal_mark;
    return;
  }
  if (table_.facts.delimiter == ',') return;
  MarkCount count;
  for (const std::string_view column : numbers_) {
    const auto place = places_.find(column);
    if (place == places_.end()) continue;
    for (std::size_t r = 1; r < table_.rows.size(); ++r) {
      const TableRow& row = table_.rows[r];
      if (place->second >= row.cells.size() || (!row.kinds.empty() && row.kinds[place->second] != CellKind::Text)) continue;
      count.Count(PlainText(row.cells[place->second]));
    }
  }
  if (count.commas > 0 && count.points == 0) mark_ = ',';
  unsure_ = (count.commas > 0) == (count.points > 0);
}

void CheckedRows::NoteColumns(const std::vector<Column>& columns) {
  TableFacts& facts = table_.facts;
  facts.lines = table_.rows.size() - 1;
  for (const Column& c : columns) {
    const auto place = places_.find(c.name);
    if (place == places_.end()) {
      facts.absent.emplace_back(c.name);
      continue;
    }
    const bool length = c.unit == kLengthUnit;
    facts.columns.push_back({table_.rows.front().cells[place->second], std::string(c.name),
                             length ? (how_.bare == LengthUnit::Mm ? "mm" : "in") : std::string(c.unit), place->second});
  }
  std::sort(facts.columns.begin(), facts.columns.end(), [](const MatchedColumn& a, const MatchedColumn& b) { return a.place < b.place; });
}

char CheckedRows::MarkFor(std::string_view column, std::string_view cell) const {
  if (!unsure_ || !numbers_.contains(column) || Kind(column) == CellKind::Number) return mark_;
  MarkCount count;
  count.Count(PlainText(cell));
  return count.doubtful_point ? ',' : mark_;
}

bool CheckedRows::FitsHeader() {
  const TableRow& row = table_.rows[row_];
  const std::size_t wanted = table_.rows.front().cells.size(), have = row.cells.size();
  if (have != wanted) {
    Problem(std::to_string(have) + (have == 1 ? " cell" : " cells"), std::to_string(wanted) + " as in the header");
    return false;
  }
  for (const auto& [name, place] : places_) {
    if (!row.kinds.empty() && row.kinds[place] == CellKind::Error) Problem(name + " holds the error " + row.cells[place], "a value", name);
    const std::string_view cell = Trimmed(row.cells[place]);
    if (const std::string unread = UnreadableCharacter(cell); !unread.empty())
      Problem(name + ": character " + unread + " in " + Quoted(cell), "one line of characters that can be seen", name);
  }
  return good_;
}

bool CheckedRows::Next() {
  if (refused_) return false;
  while (++row_ < table_.rows.size()) {
    good_ = true;
    if (FitsHeader()) return true;
  }
  return false;
}

CellKind CheckedRows::Kind(std::string_view column) const {
  const auto place = places_.find(column);
  const auto& kinds = table_.rows[row_].kinds;
  return place == places_.end() || kinds.empty() ? CellKind::Text : kinds[place->second];
}

std::string CheckedRows::Text(std::string_view column) const {
  const auto place = places_.find(column);
  if (place == places_.end()) return {};
  std::string text(Trimmed(table_.rows[row_].cells[place->second]));
  if (mark_ == ',' && Kind(column) == CellKind::Number) std::replace(text.begin(), text.end(), '.', ',');
  return text;
}

std::string CheckedRows::Typed() const {
  const TableRow& row = table_.rows[row_];
  if (!row.raw.empty()) return row.raw;
  std::string text;
  for (std::size_t i = 0; i < row.cells.size(); ++i) text += (i == 0 ? "" : "\t") + row.cells[i];
  return text;
}

std::string CheckedRows::CellOf(std::string_view column) const {
  const std::string& sheet = table_.facts.sheet;
  if (sheet.empty()) return {};
  const auto place = places_.find(column);
  return sheet + "!" + (place == places_.end() ? "" : ColumnLetters(place->second)) + std::to_string(Line());
}

std::string CheckedRows::Needed(std::string_view column, std::string_view expected) {
  std::string cell = Text(column);
  if (cell.empty()) Problem(std::string(column) + " is empty", std::string(expected), column);
  return cell;
}

std::string CheckedRows::Word(std::string_view column, const std::vector<std::string_view>& words) {
  return Value(column, std::string(words.front()), [&words](const std::string& cell) {
    std::string word = LowerCase(PlainText(cell));
    if (std::find(words.begin(), words.end(), word) != words.end()) return word;
    std::string expected;
    for (std::size_t i = 0; i < words.size(); ++i) {
      expected += (i == 0 ? "" : i + 1 == words.size() ? " or " : ", ") + std::string(words[i]);
    }
    throw BadText(Quoted(cell) + " is not known", expected);
  });
}

void CheckedRows::Once(const std::string& what, const std::string& key) {
  const auto [at, fresh] = seen_.emplace(what + '\n' + key, Line());
  if (!fresh) {
    Problem(what + " " + Quoted(key) + " stands in line " + std::to_string(at->second) + " already", "each " + what + " once");
  }
}

void CheckedRows::Problem(std::string wrong, std::string expected, std::string_view column) {
  good_ = false;
  problems_.push_back({name_, Line(), std::move(wrong), std::move(expected), CellOf(column)});
}

void CheckedRows::Warn(std::string wrong, std::string_view column) {
  warnings_.push_back({name_, Line(), std::move(wrong), "", CellOf(column)});
}

bool ReadYesNo(std::string_view text) {
  const std::string word = LowerCase(PlainText(text));
  if (word == "yes") return true;
  if (word == "no") return false;
  throw BadText(Quoted(text) + " is not known", "yes or no");
}

}  // namespace heatkeep::intake
