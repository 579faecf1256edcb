// What a layout offers at its end and never takes by itself: further pieces out of what is left, the last piece left
// uncut, and a warning where the last cut parts off next to nothing. One arithmetic for plan, sheet and saw.
//
//   R = last + kerf + left is what the last piece lies in before its cut.
// - further pieces: each takes its length and one kerf; what stays behind the blade, doubt allowed for, is at least `stays`.
// - uncut: R itself is the piece, when it is inside the tolerance and its far end is a good face; then nothing is left
//   and the last kerf is not lost.
// - thin: a cut was made and less than kThinSlice (or nothing at all) is behind it: the blade wanders (3 to 5 mm,
//   common practice, no source).
#pragma once

#include <optional>

#include "schema/terms/length.h"

namespace heatkeep {

inline constexpr Length kThinSlice{3 * kNmPerMm};

struct LastPiece {
  Length last;                // the piece that is cut last, as set
  Length kerf;                // what its cut takes: less than a full one where the blade runs off the end, 0 where it is uncut
  Length left;                // >= 0
  Length doubt;               // the whole may be this much shorter than written
  Length longest;             // the longest that is still in the last piece's tolerance
  bool good_far_end = false;  // sawn, or taken as it is
};

// How many pieces more of `length` what is left would give; 0 for a length of nothing.
int FurtherPieces(Length left, Length length, Length kerf, Length doubt, Length stays);

// The length the last piece has when it is left uncut; nothing where that may not be.
std::optional<Length> LastUncut(const LastPiece& end);

// Does the last cut part off less than kThinSlice?
bool IsThin(const LastPiece& end);

}  // namespace heatkeep
