// What is asked of the allocator, from the texts of a stock file, a cuts file and perhaps a rules file (client/intake,
// rules_file.h). Reads no file itself.
#pragma once

#include <iosfwd>
#include <optional>
#include <string>

#include "client/allocator/problem.h"
#include "client/intake/file_rows.h"

namespace heatkeep::command {

struct NamedText {
  std::string name;  // what the file is called in problems
  std::string bytes;
  intake::ReadingOptions how = {};  // of a table
};

struct FilePlan {
  NamedText stock, cuts;
  std::optional<NamedText> rules_file;
  allocator::GroupRules rules;  // where the rules file says no other
  allocator::Aim aim = allocator::Aim::DropsFirst;
  allocator::Limits limits;
};

// Nothing when the stock or the cuts are not good: every problem has been told to `err` then, a line each. Warnings are told
// too. Throws BadText for rules that are not good. What comes back may still be refused by Allocate (std::invalid_argument).
std::optional<allocator::Problem> ProblemOfFiles(const FilePlan& asked, std::ostream& err);

}  // namespace heatkeep::command
