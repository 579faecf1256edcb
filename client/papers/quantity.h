// What a limit is about: the content of one element, or what is reckoned from several contents, exactly.
//
//   Mn                 one element
//   Cr+Mo+Ni, Ti-5C    a sum of elements, each with a whole number in front or none (Ti >= 5 x C is Ti-5C of at least 0)
//   CEV    C + Mn/6 + (Cr+Mo+V)/5 + (Ni+Cu)/15           EN 10025-2:2019 7.2.3; EN 1011-2; heat analysis
//   CET    C + (Mn+Mo)/10 + (Cr+Cu)/20 + Ni/40           EN 1011-2 Annex C method B (from memory)
//   Pcm    C + Si/30 + (Mn+Cu+Cr)/20 + Ni/60 + Mo/15 + V/10 + 5 B   API 5L, EN ISO 3183 (from memory)
//   PREN   Cr + 3.3 Mo + 16 N                             from memory; no limit of EN 10088-3
//   PREW   Cr + 3.3 (Mo + 0.5 W) + 16 N                   ISO 15156-3 (from memory)
//   each other but Al       the largest content that the grade has no row for (and is none of those behind "but")
//   sum of others but Al    all of them together
//
// An element that is not reported is missing, never zero: the value is not known then, and `known` of it is a sum that it
// cannot be below when nothing is taken away (no minus).
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "client/papers/rounding.h"
#include "schema/terms/element.h"

namespace heatkeep::papers {

using Analysis = std::vector<ElementContent>;

// The element's millionths of a percent; nothing when it is not reported.
std::optional<std::int64_t> ContentOf(const Analysis& analysis, std::string_view element);

struct Reckoned {
  Fraction known;                    // millionths of a percent, of the elements that are reported
  std::vector<std::string> missing;  // elements it needs that are not; empty: `known` is the value
  bool grows = true;                 // a missing element could only add to it
};

// `named`: the elements the grade has rows for. Throws BadText when `what` is none of these.
Reckoned Reckon(std::string_view what, const Analysis& analysis, const std::vector<std::string>& named);

// Throws BadText as Reckon does.
void CheckWhat(std::string_view what);

}  // namespace heatkeep::papers
