// api.recall_list: where everything of a heat (or lot, piece, certificate, receipt) is now, and what a recall took.
#pragma once

#include <string>
#include <vector>

#include "schema/terms/rows.h"

namespace heatkeep {

// What lies, or went, together. whereabouts: "on rack", "at door", "at saw", "outside", "in transit", "missing", "on site",
// "shipped", "sold", "returned", "scrap", "reject", "crop", "trim", "test slice", "unexplained".
struct RecallLine {
  std::string whereabouts;
  std::string what, tag;  // "bar", "drop", "cut piece", ...; the piece it is or was cut from
  int count = 1;
  Length length;  // of all of the line
  Mass mass;
  std::string mill, heat, grade, section, condition, owner;
  std::string site, place;  // where to go; for what is outside, who has it
  int walk = 0;             // the place's number on the walk
  std::string order, line, customer, note, gone_at, words;
  bool held = false;
};

struct RecallRecord {
  std::string scope, ref, mill;  // as holds are asked for: "heat", "M2208", "Vandrek" or empty
  std::string asked_at, asked_by;
  bool drill = false;
  struct Lap {
    std::string what;
    std::int64_t milliseconds = 0;  // since the question was asked
  };
  std::vector<Lap> laps;
  std::string digest_before, digest_after;  // of the book, in a drill
  std::vector<RecallLine> lines;
  RecordProof proof;
};

}  // namespace heatkeep
