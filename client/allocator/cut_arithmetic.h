// How a piece of metal is cut: the one place where a layout's lengths are worked out.
//
//   | trim | k | cut 1 | k | cut 2 | k | ... | cut n | k | what is left |
//
// S the piece, k kerf, t trim, g grip, d doubt, e square ends, l_i the cuts.
// - The first end is squared when e = 0 and t > 0: that costs t and one kerf. A = S - t - k then, else A = S.
// - The far end is good when e = 2 or t = 0.
// - Let r = A - sum(l_i + k). Ordinary ending: r is left, one full kerf a cut; it needs r - d >= g, and with
//   g = 0 and a far end that is not good r - d >= t. (The room a doubtful piece surely has: t (+k) + sum(l+k) + g
//   <= S - d; sums still use the full length.)
// - With a good far end and no doubt the metal may be used up:
//   run-off  (g = 0, -k < r <= 0): the last cut's kerf is k + r, nothing is left;
//   no cut   (r = -k): the last piece IS the remainder, no kerf for it; some cut of the layout is >= g.
//   With a bad far end or doubt neither is ever planned.
// So the layouts of a piece are: sum(l_i + k) <= room, or sum(l_i + k) = exact (with its longest cut >= g).
#pragma once

#include <cstdint>
#include <optional>

#include "client/allocator/plan.h"
#include "client/allocator/problem.h"

namespace heatkeep::allocator {

struct Room {
  Length after_trim;            // A
  Length trim, trim_kerf;       // 0, or t and k
  Length kerf;                  // k
  Length grip;                  // g
  Length room;                  // sum(l + k) may be at most this; may be negative (then nothing fits)
  std::optional<Length> exact;  // or exactly this, when the longest cut is at least the grip
};

Room RoomOf(const Piece& piece, const GroupRules& rules);

// May cuts whose lengths + one kerf each sum to `taken`, the longest being `longest`, come from it?
bool Fits(const Room& room, Length taken, Length longest);

struct Ending {
  Length kerf;  // all kerf, that of the trim included
  Length left;  // >= 0
  bool last_uncut = false;
};
// Requires Fits, and count >= 1.
Ending EndingOf(const Room& room, Length taken, int count);

LeftKind LeftKindOf(Length left, Length keep);

// The shortest mill bar (no square end) that gives `count` cuts of `length`.
Length ShortestBar(const GroupRules& rules, Length length, int count, Length doubt);

}  // namespace heatkeep::allocator
