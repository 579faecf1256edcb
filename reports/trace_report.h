// The trace record of an order, a heat or a piece: the tree of pieces, the balances, and what the book says
// of itself (digest, happenings). It compares what the book holds and states only our own work.
//
// JSON (keys stay): "record": "trace", "kind", "subject", "asked_at", "asked_by", "digest", "happenings"
// (integer), "statement"; "lines": array in tree order of { "depth", "what", "name", "parent", "count",
// "length_nm" (of one), "mass_g" (of all), "mill", "heat", "grade", "section", "condition", "document",
// "receipt", "where_now", "at", "by", "held" (bool), "now_nm" (left of a piece), "kerf_nm" (of the line's cuts) }; "balances": array as in
// balance_record.h; of an order "heats": { "one_heat" (bool), "statement", "looked_at", "heats", "before", "wrong" }; "proof" as in
// record_says.h. Lengths are whole nanometres, masses whole grams.
#pragma once

#include <string>
#include <vector>

#include "reports/paper.h"
#include "schema/terms/rows.h"

namespace heatkeep {

// All throw std::runtime_error with the path and the reason and leave an older file as it was.
void WriteTracePdf(const std::string& path, const TraceRecord& record, const PrintOptions& options);
void WriteTraceXlsx(const std::string& path, const TraceRecord& record, const PrintOptions& options);
void WriteTraceJson(const std::string& path, const TraceRecord& record);
void WriteTraceCsv(const std::string& path, const TraceRecord& record);  // the lines only
std::string TraceJson(const TraceRecord& record);
std::string TraceSays(const TraceRecord& record);  // record_says.h

// For each line and each depth 1..depth: does a later line of the same parent follow? These are the tree's
// strokes.
std::vector<std::vector<bool>> TreeStrokes(const std::vector<TraceLine>& lines);

}  // namespace heatkeep
