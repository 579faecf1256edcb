// What a plan offers a person and never takes by itself.
//
// At the end of a layout (schema/terms/last_piece.h): further pieces of its lines, beyond what they ask for, that what is
// left would give; the last piece left uncut where that is inside its tolerance; and a warning of a slice too thin to cut.
// For a line that is short: what can be done about it - ship what is there, wait for more metal, or take metal with
// weaker papers with the customer's agreement in writing. Never metal of another owner, held, or refused for the line.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "client/allocator/plan.h"
#include "client/allocator/problem.h"

namespace heatkeep::allocator {

struct Further {
  int line = 0;   // index into Problem::lines; one of the layout's
  int count = 0;  // as many as what is left would give
  Length length;  // of one
  Length left;    // what would be left then
};

struct EndOffers {
  std::vector<Further> further;      // the layout's lines in its order, each as if alone
  std::optional<Length> last_uncut;  // what the last piece measures when it is left uncut
  Length chips_saved;                // by that
  bool thin = false;                 // the last cut parts off less than kThinSlice
  bool whole = false;                // the piece is issued as it is: no cut at all
  bool last_is_rest = false;         // the last of several pieces is what remains: no cut for it
  std::vector<std::string> words;    // a sentence each, of one repeat
};
EndOffers OffersOf(const Problem& problem, const Layout& layout);

enum class WayOutKind { PartShip, Wait, WeakerPapers };
struct WayOut {
  WayOutKind kind = WayOutKind::Wait;
  int count = 0;      // pieces it is about
  std::string words;  // "part ship: 21 of 25 pieces can be cut now"
};
// plan.shorts[index]; at least one, in the order of the kinds.
std::vector<WayOut> WaysOut(const Problem& problem, const Plan& plan, std::size_t index);

}  // namespace heatkeep::allocator
