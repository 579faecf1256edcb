// What a record says, apart from when it was asked, by whom and what proves it: the same facts give the same text, whenever
// they are printed. Its SHA-256 goes into the record's digest (schema/api/records.sql).
#pragma once

#include <nlohmann/json_fwd.hpp>
#include <string>

#include "schema/terms/rows.h"

namespace heatkeep {

// The record's JSON in one line without its passing keys. Of the file as of the record: reading one back gives the same.
std::string RecordSays(const nlohmann::ordered_json& record);

// The "proof" of a record's JSON: { "digest", "content", "happenings", "ends": [[chain, id, seq, hash], ...] }; null where
// the record was not kept.
nlohmann::ordered_json ProofJson(const RecordProof& proof);

// "7c1e..., 4711 happenings in the chains it stands on", or that it was not kept.
std::string ProofWords(const RecordProof& proof);

}  // namespace heatkeep
