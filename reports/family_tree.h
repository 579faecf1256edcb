// The family tree of a trace: every piece as a bar to scale, all of one scale, under the piece it came from; in the bar what was
// cut off it, in words below which order that was for and where it is now. Pages as long as it needs: each piece stands whole
// and says what it came from.
#pragma once

#include <vector>

#include "reports/paper.h"
#include "reports/piece_bar.h"
#include "schema/terms/rows.h"

namespace heatkeep {

// One piece of the tree with what left it otherwise than as a piece with a tag.
struct TreePiece {
  TraceLine piece;
  std::vector<TraceLine> parts;     // cut pieces, rejects, scrap, ...
  std::vector<TraceLine> children;  // drops, and the same metal under another tag
};

// The pieces of a trace in tree order; depths begin at 0. Parts whose piece is not among them are left out.
std::vector<TreePiece> TreePieces(const std::vector<TraceLine>& lines);

// Its bar: trim, cuts with their orders' letters, drops, what left it otherwise by a word, what is left. A trace of an order
// leaves out what was cut for others: that is one stretch "other". As long as all of that where it measured more than was written. A plain
// bar where the lines do not add up.
PieceBar TreeBar(const TreePiece& piece, OrderLetters& letters);

// "A  O1/10: 14 x 290 mm, shipped to Pallant, note 118"; one line a kind and place.
std::vector<std::string> TreeWords(const TreePiece& piece, OrderLetters& letters);

// The tree as items of a flow, with its head and scale.
void AddFamilyTree(Flow& flow, const std::vector<TraceLine>& lines, double width);

}  // namespace heatkeep
