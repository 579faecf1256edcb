// The cross-section of bar: its words, its identity, its area, and the mass of a length of it.
//
//   shape    words                               area
//   round    round 50      round 3 1/8 in        pi d^2 / 4
//   square   square 50     square 2in            a^2
//   hex      hex 50        hex 1-1/4"            (sqrt 3 / 2) s^2, s across flats
//   flat     flat 100x20   flat 4in x 3/4in      b t (the wider first)
//   tube     tube 60.3x4   tube 2 3/8in x ..     pi t (D - t), D outside, t the wall, 2 t < D
//   angle    angle 100x75x8                      t (a + b - t) + (1 - pi/4) (r1^2 - 2 r2^2), r1 at the root, r2 at the toes
//   box      box 100x60x5 cold   box 80x5 hot    2 t (b + h - 2 t) - (4 - pi) (ro^2 - ri^2)
//   channel  channel UPN 100     channel C4x5.4  the tabulated mass over 7850 kg/m3
//   beam     beam HE 100 A       beam W8x31      the same
//
// An angle of EN 10056-1 has the root radius of its table; another one says it: angle 130x65x8 root 11 (toe 5.5); a toe
// radius not said is half of it. A box has the corner radii that EN 10210-2 (hot finished: ro = 1.5 T, ri = T) and
// EN 10219-2 (cold formed: ro = 2 T to 6 mm, 2.5 T to 10 mm, 3 T above, ri = ro - T) take for calculation. Other
// standards, ASTM A500 among them, have others. Channels and beams are those of section_table.h.
//
// Area is rounded once, to the nearest square micrometre (1e-6 mm2), halves away from zero; the mass per metre and
// the mass come from that area exactly, the mass rounded once to the nearest gram, halves away from zero.
// Bar of these shapes is made to EN 10060, 10059, 10061, 10058; tube to EN 10210-2, 10219-2 and ASME B36.10M.
#pragma once

#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

#include "schema/terms/density.h"
#include "schema/terms/length_text.h"
#include "schema/terms/mass.h"
#include "schema/terms/section_table.h"

namespace heatkeep {

enum class Shape { Round, Square, Hex, Flat, Tube, Angle, Box, Channel, Beam };

// Whole square micrometres: 1 mm2 = 1 000 000.
struct Area {
  std::int64_t um2 = 0;
  constexpr auto operator<=>(const Area&) const = default;
};

// Whole nanograms a metre, which is area x density exactly: 1 kg/m = 10^12.
struct MassPerMetre {
  std::int64_t ng = 0;
  constexpr auto operator<=>(const MassPerMetre&) const = default;
};

// Two sections are the same when shape and dimensions are, in whatever unit they were written:
// round 2in == round 50.8.
struct Section {
  Shape shape = Shape::Round;
  Length first;   // diameter, side, width across flats, width, outside diameter, longer leg or side, height
  Length second;  // thickness or wall; shorter leg or side; width of a channel or beam; zero for round, square and hex
  LengthUnit first_unit = LengthUnit::Mm, second_unit = LengthUnit::Mm;  // as written, for showing only
  Length third = {};                                                     // thickness of an angle, wall of a box
  Length r1 = {}, r2 = {};                                               // angle: root and toe radius; box: outer and inner corner radius
  const NamedSection* named = nullptr;                                   // channel and beam

  bool operator==(const Section& o) const { return Compare(o) == 0; }
  std::strong_ordering operator<=>(const Section& o) const { return Compare(o); }

 private:
  std::strong_ordering Compare(const Section& o) const;
};

// Reads section words: any case, blanks free; a unit behind the last dimension holds for all of them. Throws
// BadText: other shapes, a missing or zero dimension, a wall too thick, anything over 2 m, an angle of no standard size
// without its root radius, a box that is neither hot nor cold, a channel or beam the table does not have.
Section ReadSection(std::string_view words, LengthReading how = {});

// The canonical words, in the unit each dimension was written in: "round 50", "round 3 1/8 in",
// "flat 4 in x 3/4 in", "angle 100x75x8". ReadSection gives the same section back.
std::string SectionText(const Section& section);

// "round", "square", "hex", "flat", "tube", "angle", "box", "channel", "beam".
std::string_view ShapeText(Shape shape);

// The same text for equal sections, whatever unit they were written in: "round 50800000", "flat 100000000 20000000"
// (nanometres), "beam HE 100 A". A key, not for people.
std::string SectionKey(const Section& section);

// The outer corner radii of a box of this wall.
Length OuterRadiusOfHotBox(Length wall);
Length OuterRadiusOfColdBox(Length wall);

// The larger of what it measures across: what a saw must take.
Length WidestOf(const Section& section);

Area AreaOf(const Section& section);
MassPerMetre MassPerMetreOf(const Section& section, Density density);
Mass MassOf(const Section& section, Density density, Length length);

}  // namespace heatkeep
