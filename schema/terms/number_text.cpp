#include "schema/terms/number_text.h"

#include "schema/terms/plain_text.h"
#include "schema/terms/wide.h"

namespace heatkeep {
namespace {

constexpr std::size_t kMostDigits = 18;

bool IsDigit(char c) { return c >= '0' && c <= '9'; }

std::size_t DigitsAt(std::string_view text) {
  std::size_t n = 0;
  while (n < text.size() && IsDigit(text[n])) ++n;
  return n;
}

// " 000" and then neither a digit nor the '/' of a fraction.
bool GroupAt(std::string_view rest) {
  return rest.size() >= 4 && rest[0] == ' ' && DigitsAt(rest.substr(1)) == 3 && (rest.size() == 4 || rest[4] != '/');
}

std::int64_t Value(std::string_view digits, std::string_view whole_text) {
  std::int64_t value = 0;
  std::size_t significant = 0;
  for (char c : digits) {
    if (value != 0 || c != '0') ++significant;
    if (significant > kMostDigits) throw BadText(Quoted(whole_text) + " is too large", "at most 18 digits");
    value = value * 10 + (c - '0');
  }
  return value;
}

std::string Grouped(std::string digits) {
  for (std::size_t i = digits.size(); i > 3;) {
    i -= 3;
    digits.insert(i, 1, ' ');
  }
  return digits;
}

std::string WithoutTrailingZeros(std::string_view digits) {
  while (!digits.empty() && digits.back() == '0') digits.remove_suffix(1);
  return std::string(digits);
}

// `rest` begins with the sign that is not the decimal mark, a digit behind it.
[[noreturn]] void RefuseOtherMark(std::string_view whole, std::string_view rest, std::string_view text) {
  const char other = rest.front();
  const std::size_t behind = DigitsAt(rest.substr(1));
  const bool more = rest.size() > 1 + behind && (rest[1 + behind] == '.' || rest[1 + behind] == ',');
  if (behind == 3 && whole.size() <= 3 && !more) {
    const std::string fraction = WithoutTrailingZeros(rest.substr(1, 3));
    const std::string first = whole.empty() ? "0" : std::string(whole);
    throw TwoReadings(text, fraction.empty() ? first : first + "." + fraction, Grouped(first + std::string(rest.substr(1, 3))));
  }
  if (more) throw BadText("more than one mark in " + Quoted(text), "one decimal mark; thousands set apart by a blank");
  throw BadText(std::string("'") + other + "' inside the number " + Quoted(text),
                std::string("'") + (other == ',' ? '.' : ',') + "' as the decimal mark");
}

}  // namespace

TwoReadings::TwoReadings(std::string_view text, std::string as_decimal, std::string as_thousands, std::string_view unit)
    : BadText(Quoted(text) + " can be read two ways, " + as_decimal + std::string(unit) + " or " + as_thousands + std::string(unit),
              "a number without that mark, or thousands set apart by a blank"),
      as_decimal_(std::move(as_decimal)), as_thousands_(std::move(as_thousands)) {}

Decimal TakeDecimal(std::string_view& rest, char mark) {
  const std::string_view text = rest;
  const char other = mark == '.' ? ',' : '.';
  std::size_t n = DigitsAt(rest);
  std::string digits(rest.substr(0, n));
  rest.remove_prefix(n);
  if (n >= 1 && n <= 3) {
    while (GroupAt(rest)) {
      digits += rest.substr(1, 3);
      rest.remove_prefix(4);
    }
  }
  if (rest.size() > 1 && rest[0] == other && IsDigit(rest[1])) RefuseOtherMark(digits, rest, text);
  std::string fraction;
  if (!rest.empty() && rest[0] == mark) {
    n = DigitsAt(rest.substr(1));
    if (n == 0) throw BadText("no digit after the decimal mark in " + Quoted(text), "for example 6000 or 0.5");
    fraction = WithoutTrailingZeros(rest.substr(1, n));
    if (fraction.size() > kMostDigits) throw BadText(Quoted(text) + " has too many decimals", "at most 18 digits");
    rest.remove_prefix(1 + n);
    if (!rest.empty() && (rest[0] == '.' || rest[0] == ',')) {
      throw BadText("more than one mark in " + Quoted(text), "one decimal mark; thousands set apart by a blank");
    }
  } else if (digits.empty()) {
    throw BadText("no number in " + Quoted(text), "a number");
  }
  return {Value(digits + fraction, text), static_cast<int>(fraction.size())};
}

Decimal ReadDecimal(std::string_view text, char mark) {
  const std::string plain = PlainText(text);
  if (plain.empty()) throw BadText("nothing is written", "a number");
  if (plain.front() == '-') throw BadText(Quoted(plain) + " is negative", "a number of zero or more");
  std::string_view rest = plain;
  const Decimal value = TakeDecimal(rest, mark);
  if (!rest.empty()) throw BadText(Quoted(plain) + " is not a number", "digits and at most one decimal mark");
  return value;
}

std::int64_t ReadScaled(std::string_view text, int places, char mark) {
  const Decimal value = ReadDecimal(text, mark);
  if (value.places > places) {
    throw BadText(Quoted(PlainText(text)) + " has " + std::to_string(value.places) + (value.places == 1 ? " decimal" : " decimals"),
                  places == 0 ? "a whole number" : "at most " + std::to_string(places) + " decimals");
  }
  Wide scaled = value.digits;
  for (int i = value.places; i < places; ++i) scaled *= 10;
  if (scaled > INT64_MAX) throw BadText(Quoted(PlainText(text)) + " is too large", "a smaller number");
  return static_cast<std::int64_t>(scaled);
}

std::int64_t ReadWhole(std::string_view text, std::int64_t least, std::int64_t most) {
  const std::string expected = "a whole number from " + WriteWhole(least) + " to " + WriteWhole(most);
  const std::string plain = PlainText(text);
  if (plain.empty()) throw BadText("nothing is written", expected);
  std::int64_t value = 0;
  try {
    value = ReadScaled(plain, 0);
  } catch (const TwoReadings&) { throw; } catch (const BadText& e) {
    throw BadText(e.Wrong(), expected);
  }
  if (value < least || value > most) throw BadText(Quoted(plain) + " is out of range", expected);
  return value;
}

std::string WriteWhole(std::int64_t n, bool grouped) {
  if (!grouped) return std::to_string(n);
  const std::string text = std::to_string(n);
  return n < 0 ? "-" + Grouped(text.substr(1)) : Grouped(text);
}

std::string WriteScaled(std::int64_t n, int places, bool grouped) {
  std::string digits = std::to_string(n);
  const bool negative = digits.front() == '-';
  if (negative) digits.erase(0, 1);
  const auto behind = static_cast<std::size_t>(places);
  if (digits.size() <= behind) digits.insert(0, behind + 1 - digits.size(), '0');
  const std::string fraction = WithoutTrailingZeros(std::string_view(digits).substr(digits.size() - behind));
  digits.erase(digits.size() - behind);
  std::string out = negative ? "-" : "";
  out += grouped ? Grouped(digits) : digits;
  return fraction.empty() ? out : out + "." + fraction;
}

}  // namespace heatkeep
