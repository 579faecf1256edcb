// Where everything of a piece bar goes: pure arithmetic, no painting. The unit is the caller's (mm or px).
//
// From the end that is cut first: trim, kerf, cut, kerf, cut, ..., what is left; the grip lies inside what is
// left, at the far end. Part i covers the half-open stretch [from_i, to_i) of the piece, in whole nanometres;
// from_0 = 0, to_i = from_(i+1), to_last = length: the parts tile the piece exactly.
// Scale: x(l) = x0 + width * l / full, where `full` is the longest piece of the view, the same for all its
// bars.
//
// Labels. A cut wide enough holds its letter and length. A run of equal cuts that is too narrow gets one
// label below the bar ("A 12 x 40") and a leader line to the run's bracket. Leader labels keep the order of
// their runs, so leaders never cross; label i starts at t_i in row r_i, and its stem passes rows 0..r_i-1 at
// t_i. With R rows, r = R-1, ..., 1, 0, R-1, ... from left to right. Labels and stems keep apart if for all i
// < j
//   t_j >= t_i + (width_i + gap, if r_j >= r_i; gap otherwise),
// a system of differences solved by one pass to the right and one pass back; the smallest R that fits wins.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "schema/terms/length.h"
#include "schema/terms/rows.h"

namespace heatkeep {

// Cuts of one kind, one after the other.
struct BarRun {
  Length length;  // of one
  int count = 1;
  int order = 0;       // tone of its order, from 0
  std::string letter;  // letter of its order
};

struct PieceBar {
  Length length, trim, kerf_each, kerf_all, grip, left;
  std::vector<BarRun> runs;  // in cutting order; empty: a piece nobody cuts yet, all of it is `left`
  LeftFate fate = LeftFate::None;
  std::string section;                             // drawn as a small symbol with this size text
  bool sawn_first = false, sawn_last = false;      // slanted saw mark at that end
  bool marked_first = false, marked_last = false;  // notch at that end
};

enum class PartKind { Trim, Kerf, Cut, Left };

struct BarPart {
  PartKind kind = PartKind::Left;
  Length from, to;
  int run = -1;  // which run a cut belongs to
};

// The parts of the bar. Requires trim + kerf_all + sum of cuts + left = length, nothing negative; else throws
// std::invalid_argument naming the sums. A trim has a kerf; every cut has one until kerf_all is used up (the
// last cut may need none or part of one).
std::vector<BarPart> BarParts(const PieceBar& bar);

struct BarBox {
  double x = 0, y = 0, width = 0;  // where the longest piece of the view would lie
  double height = 0;               // of the bar
  double text = 0;                 // height of a text line
  double label_limit = 0;          // leader labels end here; 0: at x + width
  int leader_rows = 6;             // at most so many rows of leader labels; 0: none (table cells, tags)
  Length full;                     // the longest piece of the view
  std::string keep_word = "keep", scrap_word = "scrap";
};

struct BarRect {
  double x = 0, y = 0, width = 0, height = 0;
};

struct PlacedPart {
  BarPart part;
  BarRect rect;              // to scale
  BarRect text;              // where a text may stand: clear of slanted ends, notches and the grip
  std::string upper, lower;  // text inside: letter over length, or one line in `upper`
};

struct Leader {
  int run = -1;             // -1: what is left
  double from = 0, to = 0;  // bracket under the bar
  int row = 0;
  BarRect label;
  std::string text;
};

struct BarLayout {
  PieceBar bar;
  BarBox box;
  BarRect outline;
  std::vector<PlacedPart> parts;
  BarRect grip;  // width 0: none
  std::vector<Leader> leaders;
  int rows = 0;              // rows of leader labels used
  double bottom = 0;         // lowest y used
  bool all_labelled = true;  // false: a run found no room for its text; the list beside the bar must name it
};

// Width of a text in the caller's unit at the box's text height.
using TextWidth = std::function<double(const std::string&)>;
// Text of a length without its unit, in the reader's units (the ruler names the unit).
using LengthText = std::function<std::string(Length)>;

// `rest_of` writes what is left (rounded down); without it `text_of` does.
BarLayout LayOutBar(const PieceBar& bar, const BarBox& box, const TextWidth& width_of, const LengthText& text_of,
                    const LengthText& rest_of = {});

}  // namespace heatkeep
