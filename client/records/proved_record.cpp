#include "client/records/proved_record.h"

#include "client/gateway/readings.h"
#include "client/gateway/snapshot.h"
#include "reports/trace_report.h"
#include "schema/terms/sha256.h"

namespace heatkeep {

RecordProof ProofOf(Connection& connection, const RecordSubject& subject, const std::string& says) {
  return ProveRecord(connection, subject, Sha256Hex(says));
}

std::optional<TraceRecord> ReadProvedTrace(Connection& connection, const RecordSubject& subject) {
  Snapshot snapshot(connection);
  std::optional<TraceRecord> record = ReadTrace(connection, subject.kind, subject.name, subject.mill);
  if (!record) return record;
  record->proof = ProofOf(connection, subject, TraceSays(*record));
  snapshot.End();
  KeepRecord(connection, subject, record->proof);
  return record;
}

}  // namespace heatkeep
