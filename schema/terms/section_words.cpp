#include <algorithm>
#include <array>
#include <string>
#include <utility>
#include <vector>

#include "schema/terms/plain_text.h"
#include "schema/terms/section.h"

namespace heatkeep {
namespace {

constexpr const char* kExpected =
    "one of: round 50, square 50, hex 50, flat 100x20, tube 60.3x4, angle 100x75x8, box 100x60x5 cold, channel UPN 100, "
    "beam IPE 100 (or in inches: round 3 1/8 in)";
constexpr Length kLargest{2'000 * kNmPerMm};

struct Word {
  std::string_view word;
  Shape shape;
};
constexpr std::array<Word, 12> kWords{{{"round", Shape::Round},
                                       {"square", Shape::Square},
                                       {"hexagon", Shape::Hex},
                                       {"hex", Shape::Hex},
                                       {"flat", Shape::Flat},
                                       {"tube", Shape::Tube},
                                       {"angle", Shape::Angle},
                                       {"box", Shape::Box},
                                       {"channel", Shape::Channel},
                                       {"beam", Shape::Beam},
                                       {"\u00F8", Shape::Round},
                                       {"\u2300", Shape::Round}}};

std::size_t DimensionsOf(Shape shape) {
  if (shape == Shape::Angle || shape == Shape::Box) return 3;
  return shape == Shape::Flat || shape == Shape::Tube ? 2 : 1;
}

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
  } catch (const BadText& e) { throw BadText("section " + Quoted(text) + ": " + e.Wrong(), kExpected); }
  if (d.length.nm == 0) throw BadText("a dimension of zero in section " + Quoted(text), kExpected);
  if (d.length > kLargest) throw BadText("section " + Quoted(text) + " is larger than 2 m", kExpected);
  return d;
}

// A unit behind the last dimension holds for the bare ones before it; the other way round nobody can tell.
std::vector<WrittenLength> ReadDimensions(const std::vector<std::string>& parts, std::string_view text, LengthReading how) {
  std::vector<WrittenLength> read(parts.size());
  read.back() = ReadDimension(parts.back(), text, how);
  LengthReading same = how;
  if (read.back().named) same.bare = read.back().unit;
  for (std::size_t i = 0; i + 1 < parts.size(); ++i) {
    read[i] = ReadDimension(parts[i], text, same);
    if (read[i].named && !read.back().named && read[i].unit != read.back().unit) {
      throw BadText("the last dimension of " + Quoted(text) + " has no unit", "a unit behind the last dimension");
    }
  }
  return read;
}

// Takes the word and what is behind it off the end of `rest`; nothing when the word is not there.
std::string TakeBehind(std::string_view& rest, std::string_view word) {
  const auto at = rest.find(word);
  if (at == std::string_view::npos) return {};
  std::string behind(rest.substr(at + word.size()));
  rest = rest.substr(0, at);
  return behind.empty() ? " " : behind;
}

Length Radius(const std::string& words, std::string_view text, LengthReading how) {
  try {
    return ReadLength(words, how);
  } catch (const BadText& e) { throw BadText("section " + Quoted(text) + ": " + e.Wrong(), kExpected); }
}

// Legs or sides, the larger first, and the thickness behind them; all in one unit.
void TakeThree(const std::vector<WrittenLength>& d, std::string_view text, Section& s) {
  for (const WrittenLength& one : d) {
    if (one.unit != d.back().unit) throw BadText("millimetres and inches in " + Quoted(text), "one unit for all its dimensions");
  }
  s.first = std::max(d[0].length, d[1].length);
  s.second = std::min(d[0].length, d[1].length);
  s.third = d[2].length;
  s.first_unit = s.second_unit = d.back().unit;
  if (2 * s.third >= s.second) throw BadText(Quoted(text) + " is thicker than half of its smaller side", "a thickness under half of it");
}

void TakeRadii(const std::string& root, const std::string& toe, std::string_view text, LengthReading how, Section& s) {
  how.bare = s.first_unit;
  const auto standard = RootRadiusOfAngle(s.first, s.second, s.third);
  if (root.empty() && !standard) {
    throw BadText(Quoted(text) + " is no size of EN 10056-1", "its root radius too, like angle 130x65x8 root 11");
  }
  s.r1 = root.empty() ? *standard : Radius(root, text, how);
  s.r2 = toe.empty() ? Length{s.r1.nm / 2} : Radius(toe, text, how);
  if (s.r2 > s.third || s.r1 + s.r2 + s.third > s.second) {
    throw BadText("the radii of " + Quoted(text) + " leave no leg", "radii that fit between root and toe");
  }
}

void TakeCorners(bool hot, std::string_view text, Section& s) {
  s.r1 = hot ? OuterRadiusOfHotBox(s.third) : OuterRadiusOfColdBox(s.third);
  s.r2 = hot ? s.third : s.r1 - s.third;
  if (2 * s.r1 > s.second)
    throw BadText("the wall of " + Quoted(text) + " is too thick for its corners", "corner radii that fit its smaller side");
}

Section NamedOne(Shape shape, std::string_view rest, std::string_view text) {
  const NamedSection* named = FindNamedSection(rest);
  if (named == nullptr || named->channel != (shape == Shape::Channel)) {
    throw BadText("the " + std::string(ShapeText(shape)) + " of " + Quoted(text) + " is not in the table",
                  shape == Shape::Channel ? "a name like UPN 100, UPE 100 or C4x5.4" : "a name like IPE 100, HE 100 A, HE 100 B or W8x31");
  }
  Section s;
  s.shape = shape;
  s.first = named->height;
  s.second = named->width;
  s.named = named;
  if (named->name.find('x') != std::string_view::npos) s.first_unit = s.second_unit = LengthUnit::Inch;
  return s;
}

// What a box is called behind its dimensions: hot or cold.
bool TakeHot(std::string_view& rest, std::string_view text) {
  for (const auto& [word, hot] : {std::pair{"hot", true}, std::pair{"cold", false}}) {
    const std::string behind = TakeBehind(rest, word);
    if (behind.empty()) continue;
    const std::string more = PlainText(behind);
    if (more.empty() || more == (hot ? "finished" : "formed")) return hot;
    break;
  }
  throw BadText("section " + Quoted(text) + " does not say how it was made", "hot or cold behind it: their corners differ");
}

}  // namespace

Section ReadSection(std::string_view words, LengthReading how) {
  std::string text = LowerCase(PlainText(words));
  if (const auto at = text.find("\u00D8"); at != std::string::npos) text.replace(at, 2, "\u00F8");
  if (text.empty()) throw BadText("no section is written", kExpected);
  std::string_view rest = text;
  Section s;
  s.shape = TakeShape(rest, text);
  if (s.shape == Shape::Channel || s.shape == Shape::Beam) return NamedOne(s.shape, rest, text);
  const bool hot = s.shape == Shape::Box && TakeHot(rest, text);
  const std::string toe = s.shape == Shape::Angle ? TakeBehind(rest, "toe") : "";
  const std::string root = s.shape == Shape::Angle ? TakeBehind(rest, "root") : "";
  std::vector<std::string> parts = SplitAtX(rest);
  if (s.shape == Shape::Box && parts.size() == 2) parts.insert(parts.begin(), parts.front());
  const std::size_t wanted = DimensionsOf(s.shape);
  const std::size_t have = PlainText(rest).empty() ? 0 : parts.size();
  if (have != wanted) {
    throw BadText("section " + Quoted(text) + " has " + std::to_string(have) + (have == 1 ? " dimension, " : " dimensions, ") +
                      (s.shape == Shape::Angle ? "an " : "a ") + std::string(ShapeText(s.shape)) + " has " + std::to_string(wanted),
                  kExpected);
  }
  const std::vector<WrittenLength> d = ReadDimensions(parts, text, how);
  if (wanted == 3) {
    TakeThree(d, text, s);
    if (s.shape == Shape::Angle) TakeRadii(root, toe, text, how, s);
    else TakeCorners(hot, text, s);
    return s;
  }
  s.first = d[0].length;
  s.first_unit = s.second_unit = d[0].unit;
  if (wanted == 2) {
    s.second = d[1].length;
    s.second_unit = d[1].unit;
  }
  if (s.shape == Shape::Flat && s.first == s.second) {
    throw BadText(Quoted(text) + " is as thick as it is wide", "\"square\" and one dimension");
  }
  if (s.shape == Shape::Flat && s.first < s.second) {
    std::swap(s.first, s.second);
    std::swap(s.first_unit, s.second_unit);
  }
  if (s.shape == Shape::Tube && 2 * s.second >= s.first) {
    throw BadText("the wall of " + Quoted(text) + " leaves no bore", "a wall under half the outside diameter");
  }
  return s;
}

}  // namespace heatkeep
