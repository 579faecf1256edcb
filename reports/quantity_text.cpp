#include "reports/quantity_text.h"

#include "schema/terms/length_text.h"
#include "schema/terms/mass_text.h"
#include "schema/terms/number_text.h"

namespace heatkeep {

std::string MmNumber(Length length) { return WriteMm(length); }

std::string StopNumber(Length length) {
  const std::string text = WriteMm(length);
  return text.find('.') == std::string::npos ? text + ".0" : text;
}

std::string MmText(Length length) { return WriteMm(length) + " mm"; }

std::string InchText(Length length) { return WriteInchFraction(length, 16, Rounding::Down) + " in"; }

std::string BothUnits(Length length) { return WriteMm(length, Rounding::Down) + " mm (" + InchText(length) + ")"; }

std::string WantedText(Length length) { return MmText(length) + " (" + WriteInchDecimal(length) + " in)"; }

std::string MmFull(Length length) {
  const bool negative = length.nm < 0;
  const std::uint64_t nm = negative ? ~static_cast<std::uint64_t>(length.nm) + 1U : static_cast<std::uint64_t>(length.nm);
  const auto per_mm = static_cast<std::uint64_t>(kNmPerMm);
  const std::string rest = std::to_string(nm % per_mm);
  return (negative ? "-" : "") + WriteWhole(static_cast<std::int64_t>(nm / per_mm), true) + "." + std::string(6 - rest.size(), '0') + rest;
}

std::string MetreText(Length length) {
  const bool negative = length.nm < 0;
  const std::int64_t mm =
      (negative ? -length.nm : length.nm) / kNmPerMm + ((negative ? -length.nm : length.nm) % kNmPerMm >= kNmPerMm / 2 ? 1 : 0);
  std::string digits = std::to_string(mm);
  if (digits.size() < 4) digits.insert(0, 4 - digits.size(), '0');
  digits.insert(digits.size() - 3, ".");
  return (negative && mm > 0 ? "-" : "") + digits + " m";
}

std::string KgText(Mass mass) {
  const bool fine = mass.g > -100'000 && mass.g < 100'000;
  return WriteKg(mass, fine ? 1 : 0) + " kg";
}

std::string KgNumber(Mass mass) {
  const bool negative = mass.g < 0;
  const std::int64_t g = negative ? -mass.g : mass.g;
  const std::string rest = std::to_string(g % 1000);
  return (negative ? "-" : "") + WriteWhole(g / 1000, true) + "." + std::string(3 - rest.size(), '0') + rest;
}

}  // namespace heatkeep
