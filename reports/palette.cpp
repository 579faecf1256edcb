#include "reports/palette.h"

#include <array>
#include <cmath>
#include <cstdint>
#include <utility>

namespace heatkeep {
namespace {

struct Row {
  Use use;
  std::uint32_t light, dark, paper;
};

constexpr std::array kTable{Row{Use::Ground, 0xFAFAF7, 0x15191C, 0xFFFFFF},   Row{Use::Text, 0x1D2327, 0xE8E6E1, 0x000000},
                            Row{Use::Quiet, 0x5A6067, 0xA4A7A8, 0x404040},    Row{Use::Hairline, 0xD3D3CE, 0x343A3F, 0x9A9A9A},
                            Row{Use::Metal, 0x7F8C98, 0x6F7C88, 0xFFFFFF},    Row{Use::Outline, 0x1D2327, 0xE8E6E1, 0x000000},
                            Row{Use::Cut1, 0x3F5268, 0x8FA3BC, 0xFFFFFF},     Row{Use::Cut2, 0x2C6E73, 0x7FBEC0, 0xEDEDED},
                            Row{Use::Cut3, 0x566473, 0xA9B4C0, 0xFFFFFF},     Row{Use::Cut4, 0x1F5A66, 0x67A7B5, 0xE2E2E2},
                            Row{Use::Cut5, 0x47707C, 0x9CC5CD, 0xFFFFFF},     Row{Use::Cut6, 0x2B4654, 0x7B97A8, 0xEDEDED},
                            Row{Use::CutText, 0xFFFFFF, 0x15191C, 0x000000},  Row{Use::Drop, 0x2F6F5E, 0x58A08B, 0x000000},
                            Row{Use::Scrap, 0x8B867C, 0x7A756C, 0x000000},    Row{Use::Grip, 0x4A4A4A, 0xC9C9C9, 0x000000},
                            Row{Use::LeftText, 0x1D2327, 0xE8E6E1, 0x000000}, Row{Use::Refusal, 0xA33B20, 0xE0795B, 0x000000},
                            Row{Use::Warning, 0x8A5E0C, 0xE2B65C, 0x000000},  Row{Use::Done, 0x2F6F5E, 0x58A08B, 0x000000}};

double Linear(int channel) {
  const double s = channel / 255.0;
  return s <= 0.04045 ? s / 12.92 : std::pow((s + 0.055) / 1.055, 2.4);
}

double Luminance(Tone t) { return 0.2126 * Linear(t.red) + 0.7152 * Linear(t.green) + 0.0722 * Linear(t.blue); }

}  // namespace

Tone ToneOf(Use use, Scheme scheme) {
  for (const Row& row : kTable) {
    if (row.use != use) continue;
    const std::uint32_t rgb = scheme == Scheme::Light ? row.light : scheme == Scheme::Dark ? row.dark : row.paper;
    return {static_cast<int>(rgb >> 16U), static_cast<int>((rgb >> 8U) & 0xFFU), static_cast<int>(rgb & 0xFFU)};
  }
  return {};
}

Use CutUse(int order) {
  constexpr std::array uses{Use::Cut1, Use::Cut2, Use::Cut3, Use::Cut4, Use::Cut5, Use::Cut6};
  const int index = ((order % 6) + 6) % 6;
  return uses[static_cast<std::size_t>(index)];
}

double Contrast(Tone a, Tone b) {
  double high = Luminance(a);
  double low = Luminance(b);
  if (high < low) std::swap(high, low);
  return (high + 0.05) / (low + 0.05);
}

const std::vector<TonePair>& TonePairs() {
  static const std::vector<TonePair> pairs = [] {
    std::vector<TonePair> all{{Use::Text, Use::Ground, 4.5, "text"},
                              {Use::Quiet, Use::Ground, 4.5, "second text"},
                              {Use::Refusal, Use::Ground, 4.5, "refusal in words"},
                              {Use::Warning, Use::Ground, 4.5, "warning in words"},
                              {Use::Done, Use::Ground, 4.5, "done in words"},
                              {Use::LeftText, Use::Ground, 4.5, "word on what is left"},
                              {Use::Outline, Use::Ground, 3.0, "outline of the bar"},
                              {Use::Drop, Use::Ground, 3.0, "hatch of a drop"},
                              {Use::Scrap, Use::Ground, 3.0, "hatch of scrap"},
                              {Use::Grip, Use::Ground, 3.0, "grip, trim, kerf"}};
    for (int i = 0; i < 6; ++i) all.push_back({Use::CutText, CutUse(i), 4.5, "text on a cut"});
    return all;
  }();
  return pairs;
}

}  // namespace heatkeep
