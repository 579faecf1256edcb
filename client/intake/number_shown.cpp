#include "client/intake/number_shown.h"

#include <array>
#include <charconv>
#include <chrono>
#include <cmath>
#include <cstdio>

#include "schema/terms/bad_text.h"
#include "schema/terms/plain_text.h"

namespace heatkeep::intake {
namespace {

bool IsLetter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }

// Walks the first section of a format code and gathers what it is made of.
struct CodeParts {
  std::string beside;
  int zeros = 0;
  bool point = false, year_or_day = false, month = false, clock = false, percent = false, exponent = false;

  void Take(std::string_view code) {
    for (std::size_t i = 0; i < code.size() && code[i] != ';'; ++i) {
      const char c = code[i];
      if (c == '"') {
        for (++i; i < code.size() && code[i] != '"'; ++i) beside += code[i];
      } else if (c == '\\') {
        if (++i < code.size()) beside += code[i];
      } else if (c == '_' || c == '*') {
        ++i;
      } else if (c == '[') {
        const char first = i + 1 < code.size() ? code[i + 1] : ']';
        if (first == 'h' || first == 'm' || first == 's') clock = true;
        while (i < code.size() && code[i] != ']') ++i;
      } else {
        TakeSign(c, i + 1 < code.size() ? code[i + 1] : ' ');
      }
    }
  }

  void TakeSign(char c, char next) {
    if (c == 'y' || c == 'd') year_or_day = true;
    if (c == 'm') month = true;
    if (c == 'h' || c == 's') clock = true;
    if (c == '%') percent = true;
    if (c == 'E' && (next == '+' || next == '-')) exponent = true;
    if (c == '.') point = true;
    if (c == '0' && !point) ++zeros;
  }
};

double ReadStored(std::string_view stored) {
  double value = 0;
  const auto [end, error] = std::from_chars(stored.data(), stored.data() + stored.size(), value);
  if (error != std::errc() || end != stored.data() + stored.size() || !std::isfinite(value)) {
    throw BadText("the sheet stores " + Quoted(stored) + " as a number", "a number");
  }
  return value;
}

// Day 60 of the 1900 epoch is 1900-02-29, which never was; days before it count from one day later.
std::string IsoDate(double serial, bool from_1904) {
  using namespace std::chrono;
  const auto no_day = [&] { return BadText("day number " + PlainNumber(serial) + " is no date", "a date from 1900 on"); };
  if (serial < 0 || serial >= 2'958'466) throw no_day();
  const auto seconds_in_all = static_cast<std::int64_t>(std::llround(serial * 86'400));
  const std::int64_t day = seconds_in_all / 86'400, clock = seconds_in_all % 86'400;
  if (!from_1904 && (day == 0 || day == 60)) throw no_day();
  const sys_days first = from_1904 ? sys_days(1904y / January / 1) : sys_days(1899y / December / (day < 60 ? 31 : 30));
  const year_month_day date{first + days(day)};
  std::array<char, 48> text{};
  const int n = std::snprintf(text.data(), text.size(), "%04d-%02u-%02u", static_cast<int>(date.year()),
                              static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
  std::string out(text.data(), static_cast<std::size_t>(n));
  if (clock == 0) return out;
  std::snprintf(text.data(), text.size(), "T%02d:%02d:%02d", static_cast<int>(clock / 3600), static_cast<int>(clock / 60 % 60),
                static_cast<int>(clock % 60));
  return out + text.data();
}

std::string Padded(std::string number, int zeros) {
  const std::size_t sign = number.starts_with('-') ? 1 : 0;
  const std::size_t digits = std::min(number.find('.'), number.size()) - sign;
  if (digits < static_cast<std::size_t>(zeros)) number.insert(sign, static_cast<std::size_t>(zeros) - digits, '0');
  return number;
}

std::string Scientific(double value) {
  std::array<char, 64> text{};
  const auto end = std::to_chars(text.data(), text.data() + text.size(), value, std::chars_format::scientific).ptr;
  return UpperCase(std::string_view(text.data(), static_cast<std::size_t>(end - text.data())));
}

}  // namespace

NumberFormat ReadFormatCode(std::string_view code) {
  NumberFormat format;
  if (LowerCase(code).starts_with("general") || code.empty()) return format;
  CodeParts parts;
  parts.Take(code);
  using Kind = NumberFormat::Kind;
  if (parts.year_or_day || (parts.month && !parts.clock)) {
    format.kind = Kind::Date;
  } else if (parts.clock) {
    format.kind = Kind::Time;
  } else {
    for (char c : parts.beside) {
      if (IsLetter(c) || c == '"' || c == '\'') format.words = PlainText(parts.beside);
    }
    format.zeros = parts.zeros;
    format.kind = parts.exponent ? Kind::Scientific : parts.percent ? Kind::Percent : parts.zeros > 1 ? Kind::Padded : Kind::Plain;
  }
  return format;
}

NumberFormat BuiltInFormat(int id) {
  using Kind = NumberFormat::Kind;
  NumberFormat format;
  if (id == 9 || id == 10) format.kind = Kind::Percent;
  if (id == 11 || id == 48) format.kind = Kind::Scientific;
  if ((id >= 14 && id <= 17) || id == 22 || (id >= 27 && id <= 31) || id == 36 || (id >= 50 && id <= 54) || id == 57 || id == 58)
    format.kind = Kind::Date;
  if ((id >= 18 && id <= 21) || (id >= 32 && id <= 35) || (id >= 45 && id <= 47) || id == 55 || id == 56) format.kind = Kind::Time;
  return format;
}

std::string PlainNumber(double value) {
  std::array<char, 400> text{};
  auto end = std::to_chars(text.data(), text.data() + text.size(), value, std::chars_format::general, 15).ptr;
  std::string shown(text.data(), static_cast<std::size_t>(end - text.data()));
  if (shown.find('e') == std::string::npos || std::abs(value) >= 1) return UpperCase(shown);
  double rounded = 0;
  std::from_chars(shown.data(), shown.data() + shown.size(), rounded);
  end = std::to_chars(text.data(), text.data() + text.size(), rounded, std::chars_format::fixed).ptr;
  return {text.data(), static_cast<std::size_t>(end - text.data())};
}

ShownCell ShowNumber(std::string_view stored, const NumberFormat& format, bool from_1904) {
  using Kind = NumberFormat::Kind;
  const double value = ReadStored(stored);
  const std::string beside = format.words.empty() ? "" : " " + format.words;
  switch (format.kind) {
    case Kind::Date: return {IsoDate(value, from_1904), CellKind::Date};
    case Kind::Time: return {value < 1 ? "the time of day " + PlainNumber(value) : IsoDate(value, from_1904), CellKind::Date};
    case Kind::Scientific: return {Scientific(value), CellKind::Number};
    case Kind::Percent: return {PlainNumber(value * 100) + " %", CellKind::Number};
    case Kind::Padded: {
      const std::string plain = PlainNumber(value), padded = Padded(plain, format.zeros);
      return {padded + beside, padded == plain ? CellKind::Number : CellKind::PaddedNumber};
    }
    case Kind::Plain: break;
  }
  return {PlainNumber(value) + beside, CellKind::Number};
}

}  // namespace heatkeep::intake
