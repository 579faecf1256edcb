// Papers of a recall: the list of where everything is now, with the places to visit in walking order; a letter a customer; in a
// drill the stopwatch, and DRILL on every page.
//
// JSON (keys stay): "record": "recall", "scope", "ref", "mill", "drill" (bool), "asked_at", "asked_by", "laps": [{ "what",
// "milliseconds" }], "digest_before", "digest_after" (of the book, in a drill), "sums": [{ "whereabouts", "pieces", "length_nm",
// "mass_g" }], "lines": [{ "whereabouts", "what", "tag", "count", "length_nm" and "mass_g" of all, "mill", "heat", "grade", "section",
// "condition", "owner", "site", "place", "walk", "order", "line", "customer", "note", "gone_at", "words", "held" }], "proof"
// (record_says.h).
#pragma once

#include <string>
#include <vector>

#include "reports/paper.h"
#include "reports/workbook.h"
#include "schema/terms/recall.h"

namespace heatkeep {

struct RecallSum {
  std::string whereabouts;
  int pieces = 0;
  Length length;
  Mass mass;
};
// One a whereabouts, in the order of the lines.
std::vector<RecallSum> RecallSums(const RecallRecord& record);

// Does somebody have to go there, to set it apart? On rack, at door, at a saw, on site.
bool IsToVisit(const RecallLine& line);
// Did a customer get it?
bool IsWithCustomer(const RecallLine& line);

// "12 pieces: on rack 3 (1.2 m, 40 kg), ..." , one line a whereabouts.
std::string RecallText(const RecallRecord& record);

// All throw std::runtime_error with the path and the reason and leave an older file as it was.
void WriteRecallPdf(const std::string& path, const RecallRecord& record, const PrintOptions& options);
void WriteRecallXlsx(const std::string& path, const RecallRecord& record, const PrintOptions& options);
void WriteRecallJson(const std::string& path, const RecallRecord& record);
void WriteRecallCsv(const std::string& path, const RecallRecord& record);
std::string RecallJson(const RecallRecord& record);
std::string RecallSays(const RecallRecord& record);  // record_says.h

// The customers that got something, in alphabetical order.
std::vector<std::string> RecallCustomers(const RecallRecord& record);

enum class Language { English, German };
struct LetterWords {
  std::string from;    // who writes; empty: a line to fill in
  std::string reason;  // why, in the writer's words; empty: not said
  Language language = Language::English;
};
// To one customer, of that customer's pieces only.
void WriteRecallLetter(const std::string& path, const RecallRecord& record, const std::string& customer, const LetterWords& words,
                       const PrintOptions& options);

// A file's name for a customer's letter: "letter_2_pallant_hydraulics.pdf"; letters and figures only, whatever the name.
std::string LetterFileName(int number, const std::string& customer);

}  // namespace heatkeep
