#include "schema/terms/section.h"

#include <cmath>
#include <numbers>

#include "schema/terms/wide.h"

namespace heatkeep {
namespace {

std::int64_t RoundedUm2(long double um2) { return static_cast<std::int64_t>(std::roundl(um2)); }

std::string DimensionText(Length length, LengthUnit unit) {
  if (unit == LengthUnit::Inch) {
    if (length.nm % (kNmPerInch / 64) == 0) return WriteInchFraction(length, 64) + " in";
    if (Wide{length.nm} * 1'000'000 % kNmPerInch == 0) return WriteInchDecimal(length, 6) + " in";
  }
  return WriteMmExact(length);
}

// All in one unit: "100x75x8", "4 in x 4 in x 1/2 in".
std::string ThreeText(const Section& s) {
  const std::string between = s.first_unit == LengthUnit::Inch ? " x " : "x";
  return DimensionText(s.first, s.first_unit) + between + DimensionText(s.second, s.first_unit) + between +
      DimensionText(s.third, s.first_unit);
}

std::string AngleText(const Section& s) {
  const auto standard = RootRadiusOfAngle(s.first, s.second, s.third);
  if (standard && *standard == s.r1 && s.r2.nm == s.r1.nm / 2) return ThreeText(s);
  return ThreeText(s) + " root " + DimensionText(s.r1, s.first_unit) + " toe " + DimensionText(s.r2, s.first_unit);
}

}  // namespace

std::strong_ordering Section::Compare(const Section& o) const {
  if (const auto c = shape <=> o.shape; c != 0) return c;
  if (const auto c = first <=> o.first; c != 0) return c;
  if (const auto c = second <=> o.second; c != 0) return c;
  if (const auto c = third <=> o.third; c != 0) return c;
  if (const auto c = r1 <=> o.r1; c != 0) return c;
  if (const auto c = r2 <=> o.r2; c != 0) return c;
  const auto name = [](const Section& s) { return s.named == nullptr ? std::string_view() : s.named->name; };
  return name(*this) <=> name(o);
}

std::string_view ShapeText(Shape shape) {
  switch (shape) {
    case Shape::Round: return "round";
    case Shape::Square: return "square";
    case Shape::Hex: return "hex";
    case Shape::Flat: return "flat";
    case Shape::Tube: return "tube";
    case Shape::Angle: return "angle";
    case Shape::Box: return "box";
    case Shape::Channel: return "channel";
    case Shape::Beam: return "beam";
  }
  return "round";
}

std::string SectionText(const Section& s) {
  std::string text = std::string(ShapeText(s.shape)) + " ";
  if (s.named != nullptr) return text + std::string(s.named->name);
  if (s.shape == Shape::Angle) return text + AngleText(s);
  if (s.shape == Shape::Box) return text + ThreeText(s) + (s.r1 == OuterRadiusOfHotBox(s.third) ? " hot" : " cold");
  if (s.second.nm == 0) return text + DimensionText(s.first, s.first_unit);
  std::string first = DimensionText(s.first, s.first_unit);
  std::string second = DimensionText(s.second, s.second_unit);
  if (first.ends_with("in") == second.ends_with("in")) { return text + first + (first.ends_with("in") ? " x " : "x") + second; }
  return text + first + (first.ends_with("in") ? "" : " mm") + " x " + second + (second.ends_with("in") ? "" : " mm");
}

std::string SectionKey(const Section& s) {
  std::string key(ShapeText(s.shape));
  if (s.named != nullptr) return key + " " + std::string(s.named->name);
  const bool three = s.shape == Shape::Angle || s.shape == Shape::Box;
  for (Length dimension : {s.first, s.second}) {
    if (dimension.nm > 0) key += " " + std::to_string(dimension.nm);
  }
  for (Length dimension : {s.third, s.r1, s.r2}) {
    if (three) key += " " + std::to_string(dimension.nm);
  }
  return key;
}

Length OuterRadiusOfHotBox(Length wall) { return {wall.nm * 3 / 2}; }

Length OuterRadiusOfColdBox(Length wall) {
  return {wall.nm <= 6 * kNmPerMm ? wall.nm * 2 : wall.nm <= 10 * kNmPerMm ? wall.nm * 5 / 2 : wall.nm * 3};
}

Length WidestOf(const Section& s) { return s.shape == Shape::Tube || s.second < s.first ? s.first : s.second; }

Area AreaOf(const Section& s) {
  const Wide um2_in_nm2 = 1'000'000;
  const auto um = [](Length length) { return static_cast<long double>(length.nm) / 1000; };
  const long double pi = std::numbers::pi_v<long double>;
  const long double a = um(s.first), b = um(s.second), t = um(s.third), r1 = um(s.r1), r2 = um(s.r2);
  switch (s.shape) {
    case Shape::Round: return {RoundedUm2(pi * a * a / 4)};
    case Shape::Hex: return {RoundedUm2(std::numbers::sqrt3_v<long double> * a * a / 2)};
    case Shape::Tube: return {RoundedUm2(pi * b * (a - b))};
    case Shape::Square: return {static_cast<std::int64_t>(DivideHalfAway(Wide{s.first.nm} * s.first.nm, um2_in_nm2))};
    case Shape::Flat: return {static_cast<std::int64_t>(DivideHalfAway(Wide{s.first.nm} * s.second.nm, um2_in_nm2))};
    case Shape::Angle: return {RoundedUm2(t * (a + b - t) + (1 - pi / 4) * (r1 * r1 - 2 * r2 * r2))};
    case Shape::Box: return {RoundedUm2(2 * t * (a + b - 2 * t) - (4 - pi) * (r1 * r1 - r2 * r2))};
    case Shape::Channel:
    case Shape::Beam:
      // 1 g/m over 7850 kg/m3 is 1e9 / 7850 um2
      return {s.named == nullptr ? 0
                                 : static_cast<std::int64_t>(DivideHalfAway(Wide{s.named->grams_per_metre} * 1'000'000'000, kSteel.kg_m3))};
  }
  return {};
}

MassPerMetre MassPerMetreOf(const Section& section, Density density) {
  // um2 x kg/m3 = 1e-12 kg/m
  return {AreaOf(section).um2 * density.kg_m3};
}

Mass MassOf(const Section& section, Density density, Length length) {
  // ng/m x nm = 1e-18 g
  constexpr Wide kPerGram = Wide{1'000'000'000} * 1'000'000'000;
  return {static_cast<std::int64_t>(DivideHalfAway(Wide{MassPerMetreOf(section, density).ng} * length.nm, kPerGram))};
}

}  // namespace heatkeep
