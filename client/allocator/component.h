// The search's own picture of one independent part of a problem: lines and pieces that can touch each other.
// Equal cuts are one item, equal pieces one source; the picture holds no strings but heats.
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <utility>
#include <vector>

#include "client/allocator/cut_arithmetic.h"
#include "client/allocator/plan.h"
#include "client/allocator/problem.h"

namespace heatkeep::allocator {

struct Item {
  Length length;
  int demand = 0;
  int rank = 0;                            // index into Component::priorities, 0 is served first
  int unit = -1;                           // index into Component::units, or no rule on heats
  std::vector<std::pair<int, int>> lines;  // (line, quantity), earliest due first
};

// Lines that must share heats: at most `most` of `heats`, those that are `sure` among them.
struct HeatUnit {
  std::vector<int> items;
  std::vector<std::string> heats;  // such as could give at least one of the cuts
  std::vector<char> sure;          // by heat: already chosen
  int most = 1;
};

// Which items a source may serve: sources with equal views are priced together.
struct View {
  Length kerf;
  std::vector<int> items;           // longest first
  std::vector<char> may;            // by item
  std::vector<std::int64_t> extra;  // by item: money of one cut (sawing and substitute), in millionths of a cent
};

struct Source {
  int view = 0;
  Room room;
  Length length, keep;
  bool bar = false, own = true;
  std::int64_t count = 0;                            // unlimited is as many as there are cuts
  std::vector<std::pair<int, std::int64_t>> pieces;  // (piece, how many), in the order they are to be taken
  std::string heat;
  Length worth;
  const LearnedWorth* rests = nullptr;  // the problem's
  PieceCosts costs;
};

inline constexpr std::size_t kMostKeys = 4;
using Costs = std::array<std::int64_t, kMostKeys>;  // by Component::keys

// One piece of a source with these cuts.
struct Pattern {
  int source = 0;
  std::vector<std::pair<int, int>> cuts;  // (item, count), ascending by item
  Length taken, longest, left;
  int count = 0;
  Costs cost{};
};

struct Component {
  const Problem* problem = nullptr;
  std::vector<Key> keys;        // the aim's keys that add up over pieces: after unmet, without layouts
  std::vector<int> priorities;  // present among the items, highest first
  std::vector<Item> items;      // longest first
  std::vector<View> views;
  std::vector<Source> sources;
  std::vector<HeatUnit> units;
  bool setups_cost = false, heats_cost = false;
  int Pieces() const;
};

struct Solution {
  std::vector<std::pair<Pattern, std::int64_t>> patterns;  // with how often
  std::vector<int> unmet;                                  // by item
  std::vector<std::int64_t> score;                         // unmet by rank, then the keys, then layouts; compared in this order
};

// Splits a problem into its components. Lines that no piece may serve at all appear in none.
std::vector<Component> ComponentsOf(const Problem& problem);

// Sets taken, longest, left and cost from source and cuts; false if they do not fit.
bool Complete(const Component& component, Pattern& pattern);

// Sets the score from patterns; sets unmet from them.
void Score(const Component& component, Solution& solution);

// By unit and heat: 0 ruled out, 1 open, 2 sure.
using HeatState = std::vector<std::vector<char>>;

// The component with less freedom of heats. Units for which nothing is left to choose are units no more.
Component Narrowed(const Component& component, const HeatState& state);

// The layouts of a solution, in pieces and lines.
std::vector<Layout> LayoutsOf(const Component& component, const Solution& solution);

}  // namespace heatkeep::allocator
