// What is on hand, as a list: every piece with its bar to scale, place, heat and papers; the count line at
// the end
// ("312 drops, 418.600 m, 6210 kg"). Rows come in the order given.
#pragma once

#include <string>
#include <vector>

#include "reports/paper.h"
#include "schema/terms/rows.h"

namespace heatkeep {

// "12 drops, 3 bars, 31.250 m, 480 kg"; an empty list: "nothing on hand".
std::string StockCountLine(const std::vector<StockRow>& rows);

// `title` says what was asked for ("Drops of round 80"). Both throw std::runtime_error with the path and the
// reason and leave an older file as it was.
void WriteStockPdf(const std::string& path, const std::string& title, const std::vector<StockRow>& rows,
                   const PrintOptions& options);
void WriteStockXlsx(const std::string& path, const std::string& title, const std::vector<StockRow>& rows,
                    const PrintOptions& options);

}  // namespace heatkeep
