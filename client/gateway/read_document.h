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
  std::optional<Length> size;                      // as a standard's table means it; none where the section does not say
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

// The newest version of every document of this number (of one issuer, or of all where issuer is empty). Throws DbError.
std::vector<DocumentRecord> ReadDocument(Connection& connection, const std::string& number, const std::string& issuer = {});

// All limits of a grade in the book. Throws DbError.
std::vector<GradeLimit> ReadLimits(Connection& connection, const std::string& grade);

}  // namespace heatkeep
