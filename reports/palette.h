// The one table of colours, for screens (light, dark) and paper (black on white). Colour never carries
// meaning alone: every use has a word, a letter, a hatch or a sign beside it.
#pragma once

#include <string_view>
#include <vector>

namespace heatkeep {

struct Tone {
  int red = 0, green = 0, blue = 0;
  bool operator==(const Tone&) const = default;
};

enum class Scheme { Light, Dark, Paper };

enum class Use {
  Ground,
  Text,
  Quiet,
  Hairline,  // quiet: second text; hairline: lines that only order the page
  Metal,
  Outline,  // the bar
  Cut1,
  Cut2,
  Cut3,
  Cut4,
  Cut5,
  Cut6,     // one tone an order, with the order's letter
  CutText,  // text on a cut
  Drop,
  Scrap,
  Grip,
  LeftText,  // what is left (hatch + word); grip, trim, kerf; text on what is left
  Refusal,
  Warning,
  Done  // with octagon, triangle, tick and words
};

Tone ToneOf(Use use, Scheme scheme);

// Tone of the n-th order of a view, from 0; repeats after six (the letter tells them apart).
Use CutUse(int order);

// Contrast of two tones, 1..21: (L1 + 0.05) / (L2 + 0.05) with relative luminance L as defined in WCAG 2.2.
double Contrast(Tone a, Tone b);

// The pairs that meet, and the least contrast each needs: 4.5 for text, 3 for shapes that carry meaning
// (WCAG 2.2, success criteria 1.4.3 and 1.4.11).
struct TonePair {
  Use above, below;
  double least;
  std::string_view why;
};
const std::vector<TonePair>& TonePairs();

}  // namespace heatkeep
