// One block of the pick list, and the parts of the sheet around the blocks.
#pragma once

#include "reports/paper.h"
#include "reports/piece_bar.h"
#include "schema/terms/rows.h"

namespace heatkeep {

struct BlockLook {
  double x = kMargin, width = 0;
  Length full;  // the sheet's longest piece
  double symbol_width = 0;
  Mass lift_limit;
  Units units = Units::Metric;
};

// Height of the block; paints it when `pen` is given. `letters` must know the sheet's orders already.
double DrawBlock(Pen* pen, double y, const SheetBlock& block, const BlockLook& look, OrderLetters& letters);

// Height of the sheet's head; paints it when `pen` is given. The first page's has the facts and the caution.
double DrawSheetHead(Pen* pen, const Sheet& sheet, double width, int page, int pages);

}  // namespace heatkeep
