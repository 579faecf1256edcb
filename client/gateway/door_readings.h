// What people at the gate look at: what is ordered and not here yet, what stands there and has no place, the heats that came before,
// the papers a supplier owes. Throws DbError.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "client/gateway/connection.h"
#include "schema/terms/density.h"
#include "schema/terms/length.h"
#include "schema/terms/mass.h"

namespace heatkeep {

struct ExpectedRow {
  std::string order, line, supplier, section, grade, condition, due, papers;  // papers: "3.1", "none"; due: ISO date
  std::string promised;                                                       // for whom already, in words; empty: nobody
  Length length;
  std::int64_t ordered = 0, delivered = 0;
};
// Lines of which bars are still awaited, earliest due first.
std::vector<ExpectedRow> ReadExpected(Connection& connection);

struct AtGateRow {
  std::string tag, grade, section, condition, mill, heat, owner, place;  // owner empty: ours
  std::string bundle;                                                    // empty: not strapped
  std::string blocked;                                                   // why it may not be used; empty: it may
  Length length;
  Mass mass;
};
// Pieces at places of kind gate, oldest tag first.
std::vector<AtGateRow> ReadAtGate(Connection& connection);

struct KnownHeatRow {
  std::string mill, heat, grade, section, condition, supplier, note,
      received_on;  // the latest note of that supplier; supplier empty: opening balance
  std::int64_t bars = 0;
};
// Heats received before from each supplier (receipts not reversed), latest first.
std::vector<KnownHeatRow> ReadKnownHeats(Connection& connection);

struct OwedPapersRow {
  std::string mill, heat, grade, section, chase_on;
  std::int64_t pieces = 0, days_late = 0;  // days_late below 0: not due yet
};
// Papers awaited for metal that this supplier delivered, latest due first.
std::vector<OwedPapersRow> ReadOwedPapers(Connection& connection, const std::string& supplier);

struct GradeDensityRow {
  std::string designation, number;
  Density density;
};
std::vector<GradeDensityRow> ReadGradeDensities(Connection& connection);

}  // namespace heatkeep
