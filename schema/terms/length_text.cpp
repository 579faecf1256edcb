#include "schema/terms/length_text.h"

#include <array>
#include <numeric>

#include "schema/terms/number_text.h"
#include "schema/terms/plain_text.h"
#include "schema/terms/wide.h"

namespace heatkeep {
namespace {

constexpr const char* kExpected = "a length like 6000, 6000mm, 20 ft, 13 7/8 in or 19' 11-3/8\"";
constexpr std::int64_t kNmPerFoot = 12 * kNmPerInch;

struct Unit {
  std::string_view name;
  std::int64_t nm;
  LengthUnit system;
};

constexpr std::array<Unit, 12> kUnits{{
    {"um", 1'000, LengthUnit::Mm},
    {"mm", kNmPerMm, LengthUnit::Mm},
    {"cm", 10 * kNmPerMm, LengthUnit::Mm},
    {"m", 1000 * kNmPerMm, LengthUnit::Mm},
    {"in", kNmPerInch, LengthUnit::Inch},
    {"inch", kNmPerInch, LengthUnit::Inch},
    {"inches", kNmPerInch, LengthUnit::Inch},
    {"\"", kNmPerInch, LengthUnit::Inch},
    {"ft", kNmPerFoot, LengthUnit::Inch},
    {"foot", kNmPerFoot, LengthUnit::Inch},
    {"feet", kNmPerFoot, LengthUnit::Inch},
    {"'", kNmPerFoot, LengthUnit::Inch},
}};

struct Quantity {
  Wide over = 0, under = 1;
  bool fraction = false;
};

bool IsDigit(char c) { return c >= '0' && c <= '9'; }
bool IsLetter(char c) { return c >= 'a' && c <= 'z'; }

void SkipBlanks(std::string_view& rest) {
  while (!rest.empty() && rest.front() == ' ') rest.remove_prefix(1);
}

// Up to 9 digits, or 0 when there is none.
std::int64_t TakeDigits(std::string_view& rest) {
  std::int64_t value = 0;
  for (int n = 0; n < 9 && !rest.empty() && IsDigit(rest.front()); ++n, rest.remove_prefix(1)) {
    value = value * 10 + (rest.front() - '0');
  }
  return value;
}

// "/8" behind a whole number: the denominator.
std::int64_t TakeDenominator(std::string_view& rest, std::string_view text) {
  rest.remove_prefix(1);
  const std::int64_t under = TakeDigits(rest);
  if (under == 0) throw BadText("no number below the fraction bar in " + Quoted(text), kExpected);
  return under;
}

// " 7/8" or "-7/8" behind a whole number?
bool FractionFollows(std::string_view rest) {
  if (rest.empty() || (rest.front() != ' ' && rest.front() != '-')) return false;
  while (!rest.empty() && (rest.front() == ' ' || rest.front() == '-')) rest.remove_prefix(1);
  std::size_t n = 0;
  while (n < rest.size() && IsDigit(rest[n])) ++n;
  return n > 0 && n < rest.size() && rest[n] == '/';
}

Quantity TakeQuantity(std::string_view& rest, std::string_view text, char mark) {
  if (rest.empty() || (!IsDigit(rest.front()) && rest.front() != mark)) {
    throw BadText("no number where one should be in " + Quoted(text), kExpected);
  }
  const Decimal value = TakeDecimal(rest, mark);
  Quantity q{value.digits, 1, false};
  for (int i = 0; i < value.places; ++i) q.under *= 10;
  const bool mixed = FractionFollows(rest);
  if (!mixed && (rest.empty() || rest.front() != '/')) return q;
  if (value.places != 0) throw BadText("a decimal mark and a fraction together in " + Quoted(text), kExpected);
  q.fraction = true;
  if (!mixed) {
    q.under = TakeDenominator(rest, text);
    return q;
  }
  while (!IsDigit(rest.front())) rest.remove_prefix(1);
  const std::int64_t over = TakeDigits(rest);
  if (rest.empty() || rest.front() != '/') throw BadText("a fraction too long in " + Quoted(text), kExpected);
  q.under = TakeDenominator(rest, text);
  if (over >= q.under) throw BadText("a fraction of one or more behind a whole number in " + Quoted(text), kExpected);
  q.over = q.over * q.under + over;
  return q;
}

// The unit at the front, or null when there is none.
const Unit* TakeUnit(std::string_view& rest, std::string_view text) {
  SkipBlanks(rest);
  if (rest.empty()) return nullptr;
  std::size_t n = 0;
  while (n < rest.size() && IsLetter(rest[n])) ++n;
  if (n == 0 && (rest.front() == '\'' || rest.front() == '"')) n = 1;
  if (n == 0) return nullptr;
  const std::string_view name = rest.substr(0, n);
  for (const Unit& unit : kUnits) {
    if (unit.name == name) {
      rest.remove_prefix(n);
      return &unit;
    }
  }
  throw BadText("unknown unit " + Quoted(name) + " in " + Quoted(text), "mm, cm, m, in or ft");
}

Length Times(Quantity q, std::int64_t unit_nm, std::string_view text) {
  if (q.over / q.under > kLongestLength.nm / unit_nm) { throw BadText(Quoted(text) + " is too long", "at most 1 000 m"); }
  const Wide nm = q.over * unit_nm;
  if (nm % q.under != 0) {
    throw BadText(Quoted(text) + " is not a whole number of nanometres",
                  "a length that is: for inches a fraction down to 1/64 or up to 5 decimals");
  }
  const Length length{static_cast<std::int64_t>(nm / q.under)};
  if (length > kLongestLength) throw BadText(Quoted(text) + " is too long", "at most 1 000 m");
  return length;
}

// Behind feet: [-] inches ["].
Length TakeInches(std::string_view& rest, std::string_view text, char mark) {
  SkipBlanks(rest);
  if (!rest.empty() && rest.front() == '-') rest.remove_prefix(1);
  SkipBlanks(rest);
  const Quantity q = TakeQuantity(rest, text, mark);
  const Unit* unit = TakeUnit(rest, text);
  if (unit != nullptr && unit->nm != kNmPerInch) { throw BadText("only inches can follow feet in " + Quoted(text), kExpected); }
  if (q.over >= 12 * q.under) throw BadText("12 inches or more behind the feet in " + Quoted(text), kExpected);
  return Times(q, kNmPerInch, text);
}

WrittenLength Read(std::string_view text, LengthReading how) {
  if (text.empty()) throw BadText("no length is written", kExpected);
  if (text.front() == '-') throw BadText(Quoted(text) + " is negative", kExpected);
  std::string_view rest = text;
  const Quantity q = TakeQuantity(rest, text, how.decimal_mark);
  const Unit* unit = TakeUnit(rest, text);
  const bool named = unit != nullptr || q.fraction;
  const LengthUnit system = unit != nullptr ? unit->system : q.fraction ? LengthUnit::Inch : how.bare;
  const std::int64_t nm = unit != nullptr ? unit->nm : system == LengthUnit::Inch ? kNmPerInch : kNmPerMm;
  Length length = Times(q, nm, text);
  if (nm == kNmPerFoot && !rest.empty()) {
    if (q.under != 1) throw BadText("feet that are not whole before inches in " + Quoted(text), kExpected);
    length += TakeInches(rest, text, how.decimal_mark);
  }
  SkipBlanks(rest);
  if (!rest.empty()) throw BadText(Quoted(rest) + " is left over in " + Quoted(text), kExpected);
  return {length, system, named};
}

// The unit a doubtful number would have: its letters, or the default's.
std::string UnitAtEnd(std::string_view text, LengthUnit bare) {
  std::size_t begin = text.size();
  while (begin > 0 && (IsLetter(text[begin - 1]) || text[begin - 1] == '"' || text[begin - 1] == '\'')) --begin;
  if (begin < text.size()) return " " + std::string(text.substr(begin));
  return bare == LengthUnit::Mm ? " mm" : " in";
}

std::int64_t Round(Wide n, Wide d, Rounding rounding) {
  return static_cast<std::int64_t>(rounding == Rounding::Down ? DivideDown(n, d) : DivideHalfAway(n, d));
}

}  // namespace

WrittenLength ReadWrittenLength(std::string_view text, LengthReading how) {
  const std::string plain = LowerCase(PlainText(text));
  try {
    return Read(plain, how);
  } catch (const TwoReadings& e) { throw TwoReadings(plain, e.AsDecimal(), e.AsThousands(), UnitAtEnd(plain, how.bare)); }
}

Length ReadLength(std::string_view text, LengthReading how) { return ReadWrittenLength(text, how).length; }

std::string WriteMm(Length length, Rounding rounding, bool grouped) { return WriteScaled(Round(length.nm, 1000, rounding), 3, grouped); }

std::string WriteMmExact(Length length) { return WriteScaled(length.nm, 6); }

std::string WriteInchFraction(Length length, int denominator, Rounding rounding) {
  std::int64_t parts = Round(Wide{length.nm} * denominator, kNmPerInch, rounding);
  const std::string sign = parts < 0 ? "-" : "";
  if (parts < 0) parts = -parts;
  const std::int64_t whole = parts / denominator, over = parts % denominator;
  if (over == 0) return sign + std::to_string(whole);
  const std::int64_t common = std::gcd(over, std::int64_t{denominator});
  const std::string fraction = std::to_string(over / common) + "/" + std::to_string(denominator / common);
  return sign + (whole == 0 ? fraction : std::to_string(whole) + " " + fraction);
}

std::string WriteInchDecimal(Length length, int decimals, Rounding rounding) {
  Wide scale = 1;
  for (int i = 0; i < decimals; ++i) scale *= 10;
  return WriteScaled(Round(length.nm * scale, kNmPerInch, rounding), decimals);
}

}  // namespace heatkeep
