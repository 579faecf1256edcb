// Records with their proof: read and proved in one Snapshot, and kept, so that their digest can be asked about.
#pragma once

#include <optional>
#include <string>

#include "client/gateway/records.h"
#include "schema/terms/rows.h"

namespace heatkeep {

// The proof of a record that says `says` (reports/record_says.h), read in the present Snapshot.
RecordProof ProofOf(Connection& connection, const RecordSubject& subject, const std::string& says);

// The trace of an order, a heat or a piece. Nothing where the book knows no such thing.
std::optional<TraceRecord> ReadProvedTrace(Connection& connection, const RecordSubject& subject);

}  // namespace heatkeep
