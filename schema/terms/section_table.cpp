#include "schema/terms/section_table.h"

#include <algorithm>
#include <array>
#include <string>

#include "schema/terms/plain_text.h"

namespace heatkeep {
namespace {

// Legs in millimetres, thickness and root radius in tenths of one.
struct Angle {
  int leg, other_leg, thickness, root;
};

constexpr std::array<Angle, 89> kAngles{{
    {20, 20, 30, 35},     {25, 25, 30, 35},     {25, 25, 40, 35},     {30, 30, 30, 50},     {30, 30, 40, 50},     {35, 35, 40, 50},
    {40, 40, 40, 60},     {40, 40, 50, 60},     {45, 45, 45, 70},     {50, 50, 40, 70},     {50, 50, 50, 70},     {50, 50, 60, 70},
    {60, 60, 50, 80},     {60, 60, 60, 80},     {60, 60, 80, 80},     {65, 65, 70, 90},     {70, 70, 60, 90},     {70, 70, 70, 90},
    {75, 75, 60, 90},     {75, 75, 80, 90},     {80, 80, 80, 100},    {80, 80, 100, 100},   {90, 90, 70, 110},    {90, 90, 80, 110},
    {90, 90, 90, 110},    {90, 90, 100, 110},   {100, 100, 80, 120},  {100, 100, 100, 120}, {100, 100, 120, 120}, {120, 120, 100, 130},
    {120, 120, 120, 130}, {130, 130, 120, 140}, {150, 150, 100, 160}, {150, 150, 120, 160}, {150, 150, 150, 160}, {160, 160, 150, 170},
    {180, 180, 160, 180}, {180, 180, 180, 180}, {200, 200, 160, 180}, {200, 200, 180, 180}, {200, 200, 200, 180}, {200, 200, 240, 180},
    {30, 20, 30, 40},     {30, 20, 40, 40},     {40, 20, 40, 40},     {40, 25, 40, 40},     {45, 30, 40, 45},     {50, 30, 50, 50},
    {60, 30, 50, 50},     {60, 40, 50, 60},     {60, 40, 60, 60},     {65, 50, 50, 60},     {70, 50, 60, 70},     {75, 50, 60, 70},
    {75, 50, 80, 70},     {80, 40, 60, 70},     {80, 40, 80, 70},     {80, 60, 70, 80},     {100, 50, 60, 80},    {100, 50, 80, 80},
    {100, 65, 70, 100},   {100, 65, 80, 100},   {100, 65, 100, 100},  {100, 75, 80, 100},   {100, 75, 100, 100},  {100, 75, 120, 100},
    {120, 80, 80, 110},   {120, 80, 100, 110},  {120, 80, 120, 110},  {125, 75, 80, 110},   {125, 75, 100, 110},  {125, 75, 120, 110},
    {135, 65, 80, 110},   {135, 65, 100, 110},  {150, 75, 90, 120},   {150, 75, 100, 120},  {150, 75, 120, 120},  {150, 75, 150, 120},
    {150, 90, 100, 120},  {150, 90, 120, 120},  {150, 90, 150, 120},  {150, 100, 100, 120}, {150, 100, 120, 120}, {200, 100, 100, 150},
    {200, 100, 120, 150}, {200, 100, 150, 150}, {200, 150, 120, 150}, {200, 150, 150, 150}, {200, 150, 180, 150},
}};

constexpr NamedSection Mm(std::string_view name, bool channel, int height, int width, int grams_per_metre) {
  return {name, channel, {height * kNmPerMm}, {width * kNmPerMm}, grams_per_metre};
}

// Height and width in hundredths of an inch, tenths of a pound a foot: 45359237 / 304800 grams a metre.
constexpr NamedSection Inch(std::string_view name, bool channel, int height, int width, int tenths) {
  return {name,
          channel,
          {height * (kNmPerInch / 100)},
          {width * (kNmPerInch / 100)},
          (std::int64_t{tenths} * 45'359'237 * 2 + 304'800) / 609'600};
}

constexpr std::array<NamedSection, 102> kNamed{{
    Mm("UPE 80", true, 80, 50, 7900),        Mm("UPE 100", true, 100, 55, 9820),      Mm("UPE 120", true, 120, 60, 12100),
    Mm("UPE 140", true, 140, 65, 14500),     Mm("UPE 160", true, 160, 70, 17000),     Mm("UPE 180", true, 180, 75, 19700),
    Mm("UPE 200", true, 200, 80, 22800),     Mm("UPE 220", true, 220, 85, 26600),     Mm("UPE 240", true, 240, 90, 30200),
    Mm("UPE 270", true, 270, 95, 35200),     Mm("UPE 300", true, 300, 100, 44400),    Mm("UPE 330", true, 330, 105, 53200),
    Mm("UPE 360", true, 360, 110, 61200),    Mm("UPE 400", true, 400, 115, 72200),    Mm("UPN 80", true, 80, 45, 8640),
    Mm("UPN 100", true, 100, 50, 10600),     Mm("UPN 120", true, 120, 55, 13400),     Mm("UPN 140", true, 140, 60, 16000),
    Mm("UPN 160", true, 160, 65, 18800),     Mm("UPN 180", true, 180, 70, 22000),     Mm("UPN 200", true, 200, 75, 25300),
    Mm("UPN 220", true, 220, 80, 29400),     Mm("UPN 240", true, 240, 85, 33200),     Mm("UPN 260", true, 260, 90, 37900),
    Mm("UPN 280", true, 280, 95, 41800),     Mm("UPN 300", true, 300, 100, 46200),    Inch("C3x4.1", true, 300, 141, 41),
    Inch("C4x5.4", true, 400, 158, 54),      Inch("C5x6.7", true, 500, 175, 67),      Inch("C6x8.2", true, 600, 192, 82),
    Inch("C8x11.5", true, 800, 226, 115),    Inch("C10x15.3", true, 1000, 260, 153),  Inch("C12x20.7", true, 1200, 294, 207),
    Inch("C15x33.9", true, 1500, 340, 339),  Mm("IPE 80", false, 80, 46, 6000),       Mm("IPE 100", false, 100, 55, 8100),
    Mm("IPE 120", false, 120, 64, 10400),    Mm("IPE 140", false, 140, 73, 12900),    Mm("IPE 160", false, 160, 82, 15800),
    Mm("IPE 180", false, 180, 91, 18800),    Mm("IPE 200", false, 200, 100, 22400),   Mm("IPE 220", false, 220, 110, 26200),
    Mm("IPE 240", false, 240, 120, 30700),   Mm("IPE 270", false, 270, 135, 36100),   Mm("IPE 300", false, 300, 150, 42200),
    Mm("IPE 330", false, 330, 160, 49100),   Mm("IPE 360", false, 360, 170, 57100),   Mm("IPE 400", false, 400, 180, 66300),
    Mm("IPE 450", false, 450, 190, 77600),   Mm("IPE 500", false, 500, 200, 90700),   Mm("IPE 550", false, 550, 210, 106000),
    Mm("IPE 600", false, 600, 220, 122000),  Mm("HE 100 A", false, 96, 100, 16700),   Mm("HE 120 A", false, 114, 120, 19900),
    Mm("HE 140 A", false, 133, 140, 24700),  Mm("HE 160 A", false, 152, 160, 30400),  Mm("HE 180 A", false, 171, 180, 35500),
    Mm("HE 200 A", false, 190, 200, 42300),  Mm("HE 220 A", false, 210, 220, 50500),  Mm("HE 240 A", false, 230, 240, 60300),
    Mm("HE 260 A", false, 250, 260, 68200),  Mm("HE 280 A", false, 270, 280, 76400),  Mm("HE 300 A", false, 290, 300, 88300),
    Mm("HE 320 A", false, 310, 300, 97600),  Mm("HE 340 A", false, 330, 300, 105000), Mm("HE 360 A", false, 350, 300, 112000),
    Mm("HE 400 A", false, 390, 300, 125000), Mm("HE 450 A", false, 440, 300, 140000), Mm("HE 500 A", false, 490, 300, 155000),
    Mm("HE 550 A", false, 540, 300, 166000), Mm("HE 600 A", false, 590, 300, 178000), Mm("HE 100 B", false, 100, 100, 20400),
    Mm("HE 120 B", false, 120, 120, 26700),  Mm("HE 140 B", false, 140, 140, 33700),  Mm("HE 160 B", false, 160, 160, 42600),
    Mm("HE 180 B", false, 180, 180, 51200),  Mm("HE 200 B", false, 200, 200, 61300),  Mm("HE 220 B", false, 220, 220, 71500),
    Mm("HE 240 B", false, 240, 240, 83200),  Mm("HE 260 B", false, 260, 260, 93000),  Mm("HE 280 B", false, 280, 280, 103000),
    Mm("HE 300 B", false, 300, 300, 117000), Mm("HE 320 B", false, 320, 300, 127000), Mm("HE 340 B", false, 340, 300, 134000),
    Mm("HE 360 B", false, 360, 300, 142000), Mm("HE 400 B", false, 400, 300, 155000), Mm("HE 450 B", false, 450, 300, 171000),
    Mm("HE 500 B", false, 500, 300, 187000), Mm("HE 550 B", false, 550, 300, 199000), Mm("HE 600 B", false, 600, 300, 212000),
    Inch("W4x13", false, 416, 406, 130),     Inch("W5x19", false, 515, 503, 190),     Inch("W6x15", false, 599, 599, 150),
    Inch("W6x20", false, 620, 602, 200),     Inch("W6x25", false, 638, 608, 250),     Inch("W8x18", false, 814, 525, 180),
    Inch("W8x24", false, 793, 650, 240),     Inch("W8x31", false, 800, 800, 310),     Inch("W10x22", false, 1020, 575, 220),
    Inch("W10x33", false, 973, 796, 330),    Inch("W12x26", false, 1220, 649, 260),   Inch("W12x40", false, 1190, 801, 400),
}};

// "HEA 100", "he 100 a" and "HE100A" are one name.
std::string NameForm(std::string_view name) {
  std::string form;
  for (char c : UpperCase(PlainText(name))) {
    if (c != ' ') form += c;
  }
  if (form.size() > 3 && form.starts_with("HE") && form[2] >= 'A' && form[2] <= 'Z') form = "HE" + form.substr(3) + form[2];
  return form;
}

}  // namespace

std::optional<Length> RootRadiusOfAngle(Length leg, Length other_leg, Length thickness) {
  const auto [shorter, longer] = std::minmax(leg, other_leg);
  for (const Angle& a : kAngles) {
    if (longer.nm == a.leg * kNmPerMm && shorter.nm == a.other_leg * kNmPerMm && thickness.nm == a.thickness * (kNmPerMm / 10)) {
      return Length{a.root * (kNmPerMm / 10)};
    }
  }
  return std::nullopt;
}

const NamedSection* FindNamedSection(std::string_view name) {
  const std::string form = NameForm(name);
  const auto at = std::find_if(kNamed.begin(), kNamed.end(), [&form](const NamedSection& s) { return NameForm(s.name) == form; });
  return at == kNamed.end() ? nullptr : &*at;
}

}  // namespace heatkeep
