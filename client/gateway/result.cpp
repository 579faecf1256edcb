#include "client/gateway/result.h"

#include <charconv>

#include "client/gateway/db_error.h"

namespace heatkeep {
namespace {

DbError Misread(std::string what) { return {DbError::Kind::Bug, "", std::move(what)}; }

template <typename Number>
Number Parsed(std::string_view text, std::string_view column, const char* type) {
  Number value{};
  const auto [end, code] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (code != std::errc{} || end != text.data() + text.size())
    throw Misread("column " + std::string(column) + " holds '" + std::string(text) + "', expected " + type);
  return value;
}

bool ParsedBool(std::string_view text, std::string_view column) {
  if (text == "t") return true;
  if (text == "f") return false;
  throw Misread("column " + std::string(column) + " holds '" + std::string(text) + "', expected true or false");
}

int Column(const PGresult* rows, std::string_view name) {
  const int columns = PQnfields(rows);
  for (int at = 0; at < columns; ++at)
    if (name == PQfname(rows, at)) return at;
  throw Misread("the answer has no column " + std::string(name));
}

}  // namespace

std::optional<std::string_view> Row::Raw(std::string_view column) const {
  const PGresult* rows = result_.get();
  const int at = Column(rows, column);
  if (PQgetisnull(rows, index_, at)) return std::nullopt;
  return std::string_view(PQgetvalue(rows, index_, at), static_cast<std::size_t>(PQgetlength(rows, index_, at)));
}

std::string_view Row::Wanted(std::string_view column) const {
  if (const auto raw = Raw(column)) return *raw;
  throw Misread("column " + std::string(column) + " is null, expected a value");
}

bool Row::IsNull(std::string_view column) const { return !Raw(column); }
std::int64_t Row::Int(std::string_view column) const { return Parsed<std::int64_t>(Wanted(column), column, "a whole number"); }
bool Row::Bool(std::string_view column) const { return ParsedBool(Wanted(column), column); }
std::string Row::Text(std::string_view column) const { return std::string(Wanted(column)); }

std::optional<std::int64_t> Row::OptionalInt(std::string_view column) const {
  return IsNull(column) ? std::nullopt : std::optional(Int(column));
}
std::optional<std::string> Row::OptionalText(std::string_view column) const {
  return IsNull(column) ? std::nullopt : std::optional(Text(column));
}

std::string Row::TextOrNone(std::string_view column) const { return std::string(Raw(column).value_or("")); }

Row Result::operator[](int index) const {
  if (index < 0 || index >= size()) throw Misread("row " + std::to_string(index) + " asked for, the answer has " + std::to_string(size()));
  return {result_, index};
}

Row Result::Only() const {
  if (size() != 1) throw Misread("one row expected, the answer has " + std::to_string(size()));
  return {result_, 0};
}

std::int64_t Result::Affected() const {
  const std::string_view text = PQcmdTuples(result_.get());
  return text.empty() ? 0 : Parsed<std::int64_t>(text, "rows affected", "a whole number");
}

}  // namespace heatkeep
