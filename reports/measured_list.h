// Who measured what: lengths that were measured otherwise than the book said, by date, with the sum of each person and device
// at the end. A difference below 0 is metal that is shorter than written. Rows come in the order given.
#pragma once

#include <nlohmann/json_fwd.hpp>
#include <string>
#include <vector>

#include "reports/paper.h"
#include "schema/terms/rows.h"

namespace heatkeep {

// "3 lengths, 84 mm shorter than written and 1 mm longer"; none: "nothing was measured otherwise than written".
std::string MeasuredCountLine(const std::vector<MeasuredRow>& rows);

nlohmann::ordered_json MeasuredJson(const std::vector<MeasuredRow>& rows);

// `title` says what was asked for. All throw std::runtime_error with the path and the reason and leave an older file as it was.
void WriteMeasuredPdf(const std::string& path, const std::string& title, const std::vector<MeasuredRow>& rows, const PrintOptions& options);
void WriteMeasuredXlsx(const std::string& path, const std::string& title, const std::vector<MeasuredRow>& rows,
                       const PrintOptions& options);
void WriteMeasuredCsv(const std::string& path, const std::vector<MeasuredRow>& rows);

}  // namespace heatkeep
