// The pick list and saw sheet of one plan, on A4 or Letter, 12 mm margins, black on white.
// One block a piece in walking order, never split over pages; place, tag and heat in letters of 8 mm (smaller
// only where a long name must fit); the piece bar of every block on one scale; sums, shorts and signatures at
// the end; the caution once. Paper of up to a few hundred blocks; a block of more kinds of cut than a page
// holds (about 80) is refused with its number.
#pragma once

#include <string>

#include "reports/bar_ruler.h"
#include "reports/paper.h"
#include "schema/terms/rows.h"

namespace heatkeep {

// `units` are those of the saw's readout: the bar's labels and ruler; texts carry both.
Flow PickListFlow(const Sheet& sheet, const PrintOptions& options, Units units = Units::Metric);

// Throws std::runtime_error with the path and the reason; std::invalid_argument for a block whose lengths do
// not add up. An older file at `path` stays as it was then.
void WritePickListPdf(const std::string& path, const Sheet& sheet, const PrintOptions& options, Units units = Units::Metric);

// The same sheet as a workbook: "Pieces" (a row a block), "Cuts" (a row a cut), "Short", "About". Numbers are
// numbers with the unit in the head; texts are texts (never formulas); head frozen, filter on.
void WritePickListXlsx(const std::string& path, const Sheet& sheet, const PrintOptions& options);

}  // namespace heatkeep
