#include "schema/terms/mass_text.h"

#include "schema/terms/number_text.h"
#include "schema/terms/plain_text.h"
#include "schema/terms/wide.h"

namespace heatkeep {
namespace {

constexpr const char* kExpected = "a mass like 2841, 2841.5 kg, 6263 lb or 2.8 t";
constexpr std::int64_t kLargestGrams = 100'000'000'000;
constexpr std::int64_t kUgPerPound = 453'592'370;

// Micrograms of one unit, so that the pound is whole.
std::int64_t UgPerUnit(std::string_view unit, std::string_view text) {
  if (unit.empty() || unit == "kg") return 1'000'000'000;
  if (unit == "g") return 1'000'000;
  if (unit == "t") return 1'000'000'000'000;
  if (unit == "lb" || unit == "lbs") return kUgPerPound;
  throw BadText("unknown unit " + Quoted(unit) + " in " + Quoted(text), kExpected);
}

std::string Write(Wide n, Wide d, int decimals, bool grouped) {
  for (int i = 0; i < decimals; ++i) n *= 10;
  return WriteScaled(static_cast<std::int64_t>(DivideHalfAway(n, d)), decimals, grouped);
}

}  // namespace

Mass ReadMass(std::string_view text, char decimal_mark) {
  const std::string plain = LowerCase(PlainText(text));
  if (plain.empty()) throw BadText("no mass is written", kExpected);
  if (plain.front() == '-') throw BadText(Quoted(plain) + " is negative", kExpected);
  if ((plain.front() < '0' || plain.front() > '9') && plain.front() != decimal_mark) {
    throw BadText("no number in " + Quoted(plain), kExpected);
  }
  std::string_view rest = plain;
  const Decimal value = TakeDecimal(rest, decimal_mark);
  if (!rest.empty() && rest.front() == ' ') rest.remove_prefix(1);
  const std::int64_t ug = UgPerUnit(rest, plain);
  Wide ten = 1;
  for (int i = 0; i < value.places; ++i) ten *= 10;
  const Wide grams = DivideHalfAway(Wide{value.digits} * ug, ten * 1'000'000);
  if (grams > kLargestGrams) throw BadText(Quoted(plain) + " is too heavy", "at most 100 000 t");
  return {static_cast<std::int64_t>(grams)};
}

std::string WriteKg(Mass mass, int decimals, bool grouped) { return Write(mass.g, 1000, decimals, grouped); }

std::string WriteLb(Mass mass, int decimals, bool grouped) { return Write(Wide{mass.g} * 1'000'000, kUgPerPound, decimals, grouped); }

}  // namespace heatkeep
