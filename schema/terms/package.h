// What a certificate package says: api.package_of of the book, one struct a part. Times are ISO 8601 in UTC.
#pragma once

#include <string>
#include <vector>

#include "schema/terms/length.h"
#include "schema/terms/mass.h"

namespace heatkeep {

// Pieces of one line, heat, length and delivery note; order empty: whole pieces that were sold.
struct PackageLine {
  std::string order, line, grade, section, condition, mill, heat, note;  // note empty: not delivered yet
  std::vector<std::string> tags;                                         // cut from these pieces, or sold as these
  Length length;                                                         // of one
  Mass mass;                                                             // of all
  int count = 0, ordered = 0;                                            // ordered of the whole line
  struct Paper {
    std::string issuer, number, type;
  };
  std::vector<Paper> papers;  // empty: none of this metal
};

struct PackageDocument {
  std::string issuer, number, type, issued_on, file_sha256, media;  // the last two empty: typed values only
  int version = 1;
  std::vector<std::string> heats;
  struct Passed {
    std::string note, rule, additional, words;
  };
  std::vector<Passed> passed;  // one a delivery note that metal of the document left with
};

struct Package {
  std::string shop, order, note, customer,
      as_of;  // order or note may be empty; as_of: when the last of it happened
  bool without_files = false;
  std::vector<std::string> against;  // why it is not made; empty: it may be
  std::vector<PackageLine> lines;
  std::vector<PackageDocument> documents;
  std::string heats_statement;  // which heats went into the order, where the book can say so
  std::string said;             // the book's answer, as it was
};

// "3.1 no. C1 of Vandrek".
std::string DocumentName(const PackageDocument& document);

}  // namespace heatkeep
