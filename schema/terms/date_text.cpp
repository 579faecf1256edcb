#include "schema/terms/date_text.h"

#include <optional>

#include "schema/terms/plain_text.h"

namespace heatkeep {
namespace {

// `n` digits at the front as a number.
std::optional<int> TakeNumber(std::string_view& rest, std::size_t n) {
  if (rest.size() < n) return std::nullopt;
  int value = 0;
  for (std::size_t i = 0; i < n; ++i) {
    if (rest[i] < '0' || rest[i] > '9') return std::nullopt;
    value = value * 10 + (rest[i] - '0');
  }
  rest.remove_prefix(n);
  return value;
}

bool Take(std::string_view& rest, char c) {
  if (rest.empty() || rest.front() != c) return false;
  rest.remove_prefix(1);
  return true;
}

bool TakeUpTo(std::string_view& rest, int most) {
  const auto value = TakeNumber(rest, 2);
  return value && *value <= most;
}

int DaysIn(int year, int month) {
  constexpr int kDays[] = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  const bool leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
  return month == 2 && leap ? 29 : kDays[month - 1];
}

bool TakeDate(std::string_view& rest) {
  const auto year = TakeNumber(rest, 4);
  if (!year || *year < 1900 || *year > 2199 || !Take(rest, '-')) return false;
  const auto month = TakeNumber(rest, 2);
  if (!month || *month < 1 || *month > 12 || !Take(rest, '-')) return false;
  const auto day = TakeNumber(rest, 2);
  return day && *day >= 1 && *day <= DaysIn(*year, *month);
}

bool TakeTime(std::string_view& rest) {
  if (!TakeUpTo(rest, 23) || !Take(rest, ':') || !TakeUpTo(rest, 59)) return false;
  if (Take(rest, ':') && !TakeUpTo(rest, 59)) return false;
  if (rest.empty() || Take(rest, 'Z')) return true;
  if (!Take(rest, '+') && !Take(rest, '-')) return false;
  return TakeUpTo(rest, 14) && Take(rest, ':') && TakeUpTo(rest, 59);
}

}  // namespace

bool IsIsoDate(std::string_view text) { return TakeDate(text) && text.empty(); }

bool IsIsoDateOrTime(std::string_view text) {
  if (!TakeDate(text)) return false;
  if (text.empty()) return true;
  return (Take(text, 'T') || Take(text, ' ')) && TakeTime(text) && text.empty();
}

std::string ReadIsoDate(std::string_view text) {
  std::string plain = PlainText(text);
  if (!IsIsoDate(plain)) throw BadText(Quoted(plain) + " is not a date", "year-month-day, like 2026-03-04");
  return plain;
}

std::string ReadIsoDateOrTime(std::string_view text) {
  std::string plain = PlainText(text);
  if (!IsIsoDateOrTime(plain)) { throw BadText(Quoted(plain) + " is not a date or time", "2026-03-04 or 2026-03-04T08:15"); }
  return plain;
}

}  // namespace heatkeep
