// Records that are printed (schema/api/records.sql): what they stand on, kept, and asked about again. And the recall list.
#pragma once

#include <nlohmann/json.hpp>
#include <optional>
#include <string>

#include "client/gateway/connection.h"
#include "schema/terms/recall.h"

namespace heatkeep {

// What is asked about: kind "order", "heat", "piece" or "recall heat", "recall lot", ...; mill may be empty.
struct RecordSubject {
  std::string kind, name, mill;
};

// To be called in the Snapshot the record was read in. `content`: SHA-256, hex, of what it says.
RecordProof ProveRecord(Connection& connection, const RecordSubject& subject, const std::string& content);

// Keeps it, so that its digest can be asked about; the same record again is harmless. Not in a Snapshot.
void KeepRecord(Connection& connection, const RecordSubject& subject, const RecordProof& proof);

// The answer of api.check_record. `content` and `ends` (JSON) where there is the record's file.
nlohmann::json CheckRecord(Connection& connection, const std::string& digest, const std::optional<std::string>& content = {},
                           const std::optional<std::string>& ends = {});

// The lines of a recall, nearest first; asked_at and asked_by are filled in. Throws DbError where the book knows no such thing.
RecallRecord ReadRecall(Connection& connection, const std::string& scope, const std::string& ref, const std::string& mill = {});

// The answer of api.preview_hold; changes nothing.
nlohmann::json PreviewHold(Connection& connection, const std::string& scope, const std::string& ref, const std::string& mill = {});

// A word that may be empty, which the book takes for null.
inline Param ParamOrNull(const std::string& text) { return text.empty() ? Param(std::nullopt) : Param(text); }

// When and by whom a record is asked for: fills asked_at, the server's time, and asked_by.
template <typename Record>
void StampAsked(Connection& connection, Record& record) {
  const Result asked = connection.Execute("select to_char(now(), 'YYYY-MM-DD\"T\"HH24:MI:SSOF') as at, api.whoami() as by");
  record.asked_at = asked.Only().Text("at");
  record.asked_by = asked.Only().Text("by");
}

struct BookDigest {
  std::string digest;
  std::int64_t happenings = 0;
};
BookDigest ReadBookDigest(Connection& connection);

}  // namespace heatkeep
