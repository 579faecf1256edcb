// What quality looks at: what a word could be, holds, documents of a heat, what waits for papers. Each throws DbError.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "client/gateway/connection.h"
#include "schema/terms/rows.h"

namespace heatkeep {

// What a word that was scanned or typed could be, the likeliest first; empty: the book knows nothing by that name.
struct Found {
  std::string kind;  // "piece", "heat", "order", "place", "document", "cut list", "note"
  std::string name, mill, words;
};
std::vector<Found> LookUp(Connection& connection, const std::string& text);

// A trace as ReadTrace (readings.h) reads it, for the screen: without the digest of the book, which takes as long as the book is old,
// and without who asked.
std::optional<TraceRecord> ReadFamily(Connection& connection, const std::string& kind, const std::string& name,
                                      const std::string& mill = {});

struct HoldRow {
  std::int64_t hold = 0;
  std::string scope, ref, mill, reason, held_by;
};
std::vector<HoldRow> ReadLiveHolds(Connection& connection);

// One row a document and lot.
struct HeatDocument {
  std::string issuer, number, type, issued_on, accepted_by, grade, section, condition, file_sha256;
  std::int64_t version = 0;
  bool replaced = false;
};
std::vector<HeatDocument> ReadDocumentsOf(Connection& connection, const std::string& heat);

struct AwaitedRow {
  std::string chase_on, mill, heat, grade, section, receipts, words;
  std::int64_t days_late = 0, pieces = 0;
};
std::vector<AwaitedRow> ReadPapersAwaited(Connection& connection);

// One happening of a piece as people read it, the latest first.
struct HistoryRow {
  std::string at, who, deed, reason, entered;
};
std::vector<HistoryRow> ReadHistory(Connection& connection, const std::string& tag);

}  // namespace heatkeep
