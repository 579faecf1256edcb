// The grade list that comes with the program, and putting a list into a book.
#pragma once

#include <stdexcept>
#include <string>
#include <vector>

#include "client/gateway/connection.h"
#include "client/incoming/table_file.h"
#include "client/intake/file_rows.h"

namespace heatkeep::command {

using incoming::TableFile;

// Beside the installed SQL files, or in the sources.
std::string GradeListFile();

// The file is wrong: nothing was added.
struct BadGradeList : std::runtime_error {
  explicit BadGradeList(std::vector<intake::FileProblem> problems_)
      : std::runtime_error("the grade list is wrong"), problems(std::move(problems_)) {}
  std::vector<intake::FileProblem> problems;
};

// Adds the grades that the book does not know; answers how many. Throws BadGradeList, DbError.
int AddGrades(Connection& connection, const TableFile& file);

// Adds the limits and deviations that come with the program, of the grades that do; those the book has stay. Throws DbError.
int AddLimits(Connection& connection);

}  // namespace heatkeep::command
