// The moves of the walk: every function of schema api, how often it is tried, and an SQL text that looks at the book
// and draws its arguments after the request number, as a person would: one row, a column an argument. What is left
// out is null (a late true time now and then). No row: there is nothing sensible to do, and the move is tried blind.
#pragma once

#include <vector>

namespace heatkeep {

struct Move {
  const char* deed;
  int weight;
  const char* pick;
};

std::vector<Move> DoorMoves();     // what comes in, papers, expected
std::vector<Move> RackMoves();     // places, bundles, counts, leaving
std::vector<Move> PlanMoves();     // cut lists, plans, promises, shipping
std::vector<Move> SawMoves();      // pulled, cut, handed over
std::vector<Move> QualityMoves();  // holds, releases, identity
std::vector<Move> ShopMoves();     // the shop itself, and what is only looked at

// What the picks draw with: temporary functions and the tables w_piece and w_line, once a session. LookSql fills them anew.
const char* WordsSql();
const char* LookSql();

}  // namespace heatkeep
