// A draft as people look at it: its pieces with their cuts, why each, and what it amounts to. No problem and no layouts.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "client/planning/make_plan.h"
#include "schema/terms/money.h"
#include "schema/terms/rows.h"

namespace heatkeep::planning {

// What else would hold exactly a piece's cuts.
struct NextBest {
  std::string tag, place;
  Length length, left;
  LeftFate fate = LeftFate::None;  // of what it would leave
  bool opens_bar = false;          // a full bar, where the chosen piece is none
  std::optional<Money> dearer;     // than the chosen piece; below 0: cheaper; nothing where prices are not known
};

struct DraftPiece {
  SheetBlock block;                // state "draft"; no mark, mass 0 where it is not known
  std::vector<NextBest> next;      // at most three, best first
  std::vector<std::string> notes;  // what its end offers and warns of, what it stands in for
};

// By section, grade, longest first.
std::vector<DraftPiece> PiecesOf(const Draft& draft);

struct DraftShort {
  std::string order, line, section, grade, why;  // `why` names the shortest bar to buy
  int missing = 0;
  std::vector<std::string> ways_out;
};
std::vector<DraftShort> ShortsOf(const Draft& draft);

struct DraftFigures {
  int pieces = 0, drops = 0, bars = 0, missing = 0, set_ups = 0;
  int kept = 0;  // rests that go back to the rack
  Length kept_length, scrap, new_length;
};
DraftFigures FiguresOf(const Draft& draft, const std::vector<DraftPiece>& pieces);  // pieces: PiecesOf(draft)

// "1.80 m less full bar, 71.0 kg, 1 fewer bar opened, 12.40 cheaper": the first less the other, drafts of the same saws together.
// Both answer the same cut lists.
std::string DifferenceWords(const std::vector<Draft>& drafts, const std::vector<Draft>& others);

}  // namespace heatkeep::planning
