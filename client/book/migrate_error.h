// Why a book could not be brought up to date. Nothing has been changed then.
#pragma once

#include <stdexcept>
#include <string>

namespace heatkeep {

struct MigrateError : std::runtime_error {
  enum class Kind {
    BadFiles,    // the SQL files cannot be used as they are
    Edited,      // a file that has run in this book was changed afterwards
    Missing,     // a file that has run in this book is not there any more
    TooNew,      // the book was brought further by a newer program
    Hanging,     // something the tables keep hangs on guard or api and would be lost with them
    NotAllowed,  // this login may not bring the book up to date
    Failed       // a file could not be carried out
  };
  MigrateError(Kind kind_, const std::string& message) : std::runtime_error(message), kind(kind_) {}
  Kind kind;
};

}  // namespace heatkeep
