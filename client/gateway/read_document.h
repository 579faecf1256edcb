// An inspection document with all it says of its lots, and the limits its values are judged by.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "client/gateway/connection.h"
#include "schema/terms/element.h"
#include "schema/terms/grade_limit.h"

namespace heatkeep {

struct DocumentLot {
  std::string heat, grade, section, condition;
  std::optional<Length> size;  // as a standard's table means it; none where the section does not say
  std::vector<ElementContent> heat_analysis, product_analysis;
  struct Test {
    std::string property, unit;
    std::int64_t value_milli = 0;
  };
  std::vector<Test> tests;
};

struct DocumentRecord {
  std::string issuer, number, type, accepted_by, file_sha256, validated_by;  // the last as JSON; empty where there is none
  std::int64_t version = 0;
  std::vector<DocumentLot> lots;
};

// The newest version (or the one named) of every document of this number, of one issuer, or of all where issuer is empty.
// Throws DbError.
std::vector<DocumentRecord> ReadDocument(Connection& connection, const std::string& number, const std::string& issuer = {},
                                         std::int64_t version = 0);

struct DocumentVersion {
  std::string type, issued_on, filed_by, accepted_by, reason, file_sha256, media;  // empty where there is none
  std::int64_t version = 0, bytes = 0, replaced_by = 0;                            // replaced_by: 0 where it stands
};

// Every version of a document, the first first. Throws DbError.
std::vector<DocumentVersion> ReadVersions(Connection& connection, const std::string& number, const std::string& issuer);

// The bytes of a document's file; empty where the book has none of this SHA-256. Throws DbError.
std::string ReadFileBytes(Connection& connection, const std::string& sha256);

// What a grade is judged by in the book now, and every deviation of product analyses. Throw DbError.
std::vector<GradeLimit> ReadLimits(Connection& connection, const std::string& grade);
std::vector<MechanicalLimit> ReadMechanicalLimits(Connection& connection, const std::string& grade);
std::vector<ProductDeviation> ReadDeviations(Connection& connection);

}  // namespace heatkeep
