// Plans in the words and bars of the planning station.
#pragma once

#include <QString>
#include <vector>

#include "client/models/plan_work.h"
#include "client/models/reading_units.h"
#include "client/stations/plan_bars.h"

namespace heatkeep {

// "drops first, then the least new bar".
QString AimWords(const std::string& aim);

// "saw 1: takes 2 drops, opens no full bar; no plan opens less (proved)": a sentence a saw.
QString ProofWords(const PlanProposal& proposal);
// "5 pieces, 2 of them drops; opens 18.3 m; 3 rests kept, 1.2 m; scrap 0.1 m; 4 set-ups".
QString FiguresWords(const planning::DraftFigures& figures, ReadingUnits units);

// What is short and what to buy, a line each; empty: nothing lacks.
QString ShortWords(const PlanProposal& proposal);
QString ShortWords(const Sheet& sheet);

// Why this piece: what is cut from it, papers, heat, lift.
QString WhyWords(const planning::DraftPiece& piece, ReadingUnits units, Mass lift_limit);
QString WhyWords(const SheetBlock& block, ReadingUnits units, Mass lift_limit);
// What else would do: "B3-2, 1900 mm" and "75 mm scrap, 0.21 dearer".
struct NextWords {
  QString where, becomes;
};
std::vector<NextWords> NextBestWords(const planning::DraftPiece& piece, ReadingUnits units);
// The plan by hand, what the worth of rests was learned from.
QString AboutWords(const PlanProposal& proposal);

std::vector<PlanBarGroup> GroupsOf(const PlanProposal& proposal, ReadingUnits units, OrderLetters& letters);
std::vector<PlanBarGroup> GroupsOf(const Sheet& sheet, ReadingUnits units, OrderLetters& letters);
Length LongestOf(const PlanProposal& proposal);
Length LongestOf(const Sheet& sheet);

}  // namespace heatkeep
