// Running a command on a book: opens it, and turns whatever goes wrong into one message and an exit status.
#pragma once

#include <functional>
#include <iosfwd>
#include <string>

#include "client/book/book_location.h"
#include "client/incoming/file_request.h"
#include "client/intake/file_rows.h"

namespace heatkeep::command {

using incoming::RequestOfFile;

// What every command on a book is told and where it speaks.
struct BookCall {
  BookChoice where;
  std::ostream& out;
  std::ostream& err;
};

// 0..4 as `work` says or as ExplainBookFailure does; 2 for text that could not be read (BadText, invalid_argument);
// 130 where a person stopped it (Stopped), as shells say it.
int WithBook(const BookCall& call, const std::function<int(Connection&)>& work);

// Prints problems (a line each) and answers 2.
int RefuseFile(std::ostream& err, const std::vector<intake::FileProblem>& problems);

}  // namespace heatkeep::command
