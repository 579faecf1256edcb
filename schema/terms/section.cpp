#include "schema/terms/section.h"

#include <array>
#include <cmath>
#include <numbers>
#include <vector>

#include "schema/terms/plain_text.h"
#include "schema/terms/wide.h"

namespace heatkeep {
namespace {

constexpr const char* kExpected =
    "one of: round 50, square 50, hex 50, flat 100x20, tube 60.3x4 (or in inches: round 3 1/8 in)";
constexpr Length kLargest{2'000 * kNmPerMm};

struct Word {
  std::string_view word;
  Shape shape;
};
constexpr std::array<Word, 8> kWords{{{"round", Shape::Round},
                                      {"square", Shape::Square},
                                      {"hexagon", Shape::Hex},
                                      {"hex", Shape::Hex},
                                      {"flat", Shape::Flat},
                                      {"tube", Shape::Tube},
                                      {"\u00F8", Shape::Round},
                                      {"\u2300", Shape::Round}}};

bool TakesTwo(Shape shape) { return shape == Shape::Flat || shape == Shape::Tube; }

Shape TakeShape(std::string_view& rest, std::string_view text) {
  for (const Word& w : kWords) {
    if (!rest.starts_with(w.word)) continue;
    const std::string_view behind = rest.substr(w.word.size());
    if (!behind.empty() && behind.front() >= 'a' && behind.front() <= 'z') continue;
    rest = behind;
    return w.shape;
  }
  std::size_t n = 0;
  while (n < rest.size() && rest[n] >= 'a' && rest[n] <= 'z') ++n;
  if (n == 0) throw BadText("no shape in section " + Quoted(text), kExpected);
  throw BadText("unknown shape " + Quoted(rest.substr(0, n)) + " in section " + Quoted(text), kExpected);
}

std::vector<std::string> SplitAtX(std::string_view rest) {
  std::vector<std::string> parts(1);
  for (char c : rest) {
    if (c == 'x' || c == '*') {
      parts.emplace_back();
    } else {
      parts.back() += c;
    }
  }
  return parts;
}

WrittenLength ReadDimension(const std::string& part, std::string_view text, LengthReading how) {
  WrittenLength d;
  try {
    d = ReadWrittenLength(part, how);
  } catch (const BadText& e) {
    throw BadText("section " + Quoted(text) + ": " + e.Wrong(), kExpected);
  }
  if (d.length.nm == 0) throw BadText("a dimension of zero in section " + Quoted(text), kExpected);
  if (d.length > kLargest) throw BadText("section " + Quoted(text) + " is larger than 2 m", kExpected);
  return d;
}

// A unit behind the last dimension holds for the bare ones before it; the other way round nobody can tell.
void ReadTwo(const std::vector<std::string>& parts, std::string_view text, LengthReading how, WrittenLength& first,
             WrittenLength& second) {
  second = ReadDimension(parts[1], text, how);
  LengthReading same = how;
  if (second.named) same.bare = second.unit;
  first = ReadDimension(parts[0], text, same);
  if (first.named && !second.named && first.unit != second.unit) {
    throw BadText("the last dimension of " + Quoted(text) + " has no unit", "a unit behind the last dimension");
  }
}

std::int64_t RoundedUm2(long double um2) { return static_cast<std::int64_t>(std::roundl(um2)); }

std::string DimensionText(Length length, LengthUnit unit) {
  if (unit == LengthUnit::Inch) {
    if (length.nm % (kNmPerInch / 64) == 0) return WriteInchFraction(length, 64) + " in";
    const std::string decimals = WriteInchDecimal(length, 6) + " in";
    if (Wide{length.nm} * 1'000'000 % kNmPerInch == 0) return decimals;
  }
  return WriteMmExact(length);
}

}  // namespace

std::strong_ordering Section::Compare(const Section& o) const {
  if (const auto c = shape <=> o.shape; c != 0) return c;
  if (const auto c = first <=> o.first; c != 0) return c;
  return second <=> o.second;
}

Section ReadSection(std::string_view words, LengthReading how) {
  std::string text = LowerCase(PlainText(words));
  if (const auto at = text.find("\u00D8"); at != std::string::npos) text.replace(at, 2, "\u00F8");
  if (text.empty()) throw BadText("no section is written", kExpected);
  std::string_view rest = text;
  Section s;
  s.shape = TakeShape(rest, text);
  const std::vector<std::string> parts = SplitAtX(rest);
  const std::size_t wanted = TakesTwo(s.shape) ? 2 : 1;
  const std::size_t have = PlainText(rest).empty() ? 0 : parts.size();
  if (have != wanted) {
    throw BadText("section " + Quoted(text) + " has " + std::to_string(have) +
                      (have == 1 ? " dimension, a " : " dimensions, a ") + std::string(ShapeText(s.shape)) + " has " +
                      std::to_string(wanted),
                  kExpected);
  }
  WrittenLength first, second;
  if (wanted == 1) {
    first = ReadDimension(parts[0], text, how);
  } else {
    ReadTwo(parts, text, how, first, second);
  }
  if (s.shape == Shape::Flat && first.length < second.length) std::swap(first, second);
  if (s.shape == Shape::Flat && first.length == second.length) {
    throw BadText(Quoted(text) + " is as thick as it is wide", "\"square\" and one dimension");
  }
  if (s.shape == Shape::Tube && 2 * second.length >= first.length) {
    throw BadText("the wall of " + Quoted(text) + " leaves no bore", "a wall under half the outside diameter");
  }
  s.first = first.length;
  s.second = second.length;
  s.first_unit = first.unit;
  s.second_unit = wanted == 2 ? second.unit : first.unit;
  return s;
}

std::string_view ShapeText(Shape shape) {
  switch (shape) {
    case Shape::Round: return "round";
    case Shape::Square: return "square";
    case Shape::Hex: return "hex";
    case Shape::Flat: return "flat";
    case Shape::Tube: return "tube";
  }
  return "round";
}

std::string SectionText(const Section& s) {
  std::string text = std::string(ShapeText(s.shape)) + " ";
  if (!TakesTwo(s.shape)) return text + DimensionText(s.first, s.first_unit);
  std::string first = DimensionText(s.first, s.first_unit);
  std::string second = DimensionText(s.second, s.second_unit);
  if (first.ends_with("in") == second.ends_with("in")) {
    return text + first + (first.ends_with("in") ? " x " : "x") + second;
  }
  return text + first + (first.ends_with("in") ? "" : " mm") + " x " + second + (second.ends_with("in") ? "" : " mm");
}

std::string SectionKey(const Section& s) {
  std::string key = std::string(ShapeText(s.shape)) + " " + std::to_string(s.first.nm);
  return TakesTwo(s.shape) ? key + " " + std::to_string(s.second.nm) : key;
}

Area AreaOf(const Section& s) {
  const Wide um2_in_nm2 = 1'000'000;
  const long double a = static_cast<long double>(s.first.nm) / 1000, b = static_cast<long double>(s.second.nm) / 1000;
  switch (s.shape) {
    case Shape::Round: return {RoundedUm2(std::numbers::pi_v<long double> * a * a / 4)};
    case Shape::Hex: return {RoundedUm2(std::numbers::sqrt3_v<long double> * a * a / 2)};
    case Shape::Tube: return {RoundedUm2(std::numbers::pi_v<long double> * b * (a - b))};
    case Shape::Square:
      return {static_cast<std::int64_t>(DivideHalfAway(Wide{s.first.nm} * s.first.nm, um2_in_nm2))};
    case Shape::Flat:
      return {static_cast<std::int64_t>(DivideHalfAway(Wide{s.first.nm} * s.second.nm, um2_in_nm2))};
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
  return {static_cast<std::int64_t>(
      DivideHalfAway(Wide{MassPerMetreOf(section, density).ng} * length.nm, kPerGram))};
}

}  // namespace heatkeep
