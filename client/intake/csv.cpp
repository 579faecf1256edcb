#include "client/intake/csv.h"

#include <algorithm>
#include <array>
#include <optional>

#include "client/intake/csv_encoding.h"
#include "client/intake/file_bytes.h"

namespace heatkeep::intake {
namespace {

constexpr std::array<char, 4> kDelimiters{';', '\t', ',', '|'};
constexpr std::size_t kLookedAt = std::size_t{64} * 1024;
constexpr std::size_t kRowsLookedAt = 100;

struct Fault {
  int line = 0;
  std::string wrong, expected;
};

// Takes one row after another off a text.
class RowTaker {
 public:
  RowTaker(std::string_view text, char delimiter, int line) : text_(text), delimiter_(delimiter), line_(line) {}

  bool AtEnd() const { return at_ >= text_.size(); }

  // The next row, or none and a fault.
  std::optional<TableRow> Take(Fault& fault) {
    TableRow row{line_, {}, {}};
    const std::size_t begin = at_;
    do {
      std::string cell;
      if (!TakeCell(cell, fault)) return std::nullopt;
      row.cells.push_back(std::move(cell));
      if (at_ - begin > kLongestRecord) {
        fault = {row.line, "a row of more than 1 MiB", "rows as a person writes them; perhaps a quote is missing"};
        return std::nullopt;
      }
    } while (TakeIf(delimiter_));
    row.raw = text_.substr(begin, at_ - begin);
    TakeLineEnd();
    return row;
  }

 private:
  bool TakeIf(char c) {
    if (AtEnd() || text_[at_] != c) return false;
    ++at_;
    return true;
  }

  bool AtCellEnd() const { return AtEnd() || text_[at_] == delimiter_ || text_[at_] == '\n' || text_[at_] == '\r'; }

  void TakeLineEnd() {
    const bool cr = TakeIf('\r');
    if (TakeIf('\n') || cr) ++line_;
  }

  bool TakeCell(std::string& cell, Fault& fault) {
    if (!AtEnd() && text_[at_] == '"') return TakeQuoted(cell, fault);
    const std::size_t begin = at_;
    while (!AtCellEnd()) ++at_;
    cell = text_.substr(begin, at_ - begin);
    return true;
  }

  bool TakeQuoted(std::string& cell, Fault& fault) {
    const int opened = line_;
    ++at_;
    while (!AtEnd()) {
      const char c = text_[at_++];
      if (c == '"' && !TakeIf('"')) {
        if (AtCellEnd()) return true;
        fault = {line_, "text behind a closing quote", "the delimiter there, or \"\" for a quote inside a quoted cell"};
        return false;
      }
      if (c == '\n') ++line_;
      cell += c;
    }
    fault = {opened, "a quote that is opened here is never closed", "a closing quote"};
    return false;
  }

  std::string_view text_;
  char delimiter_;
  int line_;
  std::size_t at_ = 0;
};

bool IsEmpty(const TableRow& row) {
  return std::all_of(row.cells.begin(), row.cells.end(),
                     [](const std::string& cell) { return cell.find_first_not_of(" \t") == std::string::npos; });
}

// How many of the first rows have as many cells as the first, in hundredths; 0 when that is one cell.
std::size_t Agreement(std::string_view text, char delimiter) {
  RowTaker taker(text, delimiter, 1);
  Fault fault;
  std::size_t wanted = 0, rows = 0, agreeing = 0;
  while (!taker.AtEnd() && rows < kRowsLookedAt) {
    const auto row = taker.Take(fault);
    if (!row) break;
    if (IsEmpty(*row)) continue;
    if (rows == 0) wanted = row->cells.size();
    ++rows;
    if (row->cells.size() == wanted) ++agreeing;
  }
  return wanted < 2 ? 0 : agreeing * 100 / rows;
}

char FindDelimiter(std::string_view text) {
  std::string_view start = text.substr(0, kLookedAt);
  if (start.size() < text.size()) start = start.substr(0, start.rfind('\n') + 1);
  char best = ',';
  std::size_t most = 0;
  for (char delimiter : kDelimiters) {
    const std::size_t agreement = Agreement(start, delimiter);
    if (agreement > most) {
      most = agreement;
      best = delimiter;
    }
  }
  return best;
}

// "sep=;" as the first line: the delimiter, and `text` behind that line.
std::optional<char> TakeSeparatorLine(std::string_view& text) {
  if (!text.starts_with("sep=") || text.size() < 5) return std::nullopt;
  const char delimiter = text[4];
  const std::string_view behind = text.substr(5);
  const bool allowed = std::find(kDelimiters.begin(), kDelimiters.end(), delimiter) != kDelimiters.end();
  if (!allowed || (!behind.starts_with("\n") && !behind.starts_with("\r\n"))) return std::nullopt;
  text = behind.substr(behind.front() == '\r' ? 2 : 1);
  return delimiter;
}

Table Refused(const std::string& name, int line, std::string wrong, std::string expected) {
  Table table;
  table.problems.push_back({name, line, std::move(wrong), std::move(expected)});
  return table;
}

}  // namespace

Table ReadCsv(std::string_view bytes, const std::string& name) {
  if (bytes.size() > kLargestFile) return Refused(name, 0, "more than 64 MiB", "a smaller file");
  const DecodedText decoded = DecodeText(bytes);
  if (!decoded.wrong.empty()) return Refused(name, decoded.line, decoded.wrong, decoded.expected);
  std::string_view text = decoded.utf8;
  Table table;
  table.facts.encoding = decoded.encoding;
  const auto said = TakeSeparatorLine(text);
  table.facts.delimiter = said ? *said : FindDelimiter(text);
  RowTaker taker(text, table.facts.delimiter, said ? 2 : 1);
  while (!taker.AtEnd()) {
    Fault fault;
    auto row = taker.Take(fault);
    if (!row) return Refused(name, fault.line, fault.wrong, fault.expected);
    if (!IsEmpty(*row)) table.rows.push_back(std::move(*row));
  }
  if (table.rows.empty()) return Refused(name, 0, "nothing is in it", "a header line and rows");
  return table;
}

}  // namespace heatkeep::intake
