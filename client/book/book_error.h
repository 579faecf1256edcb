// What can stand between a person and the private book, before any database is there to answer.
#pragma once

#include <stdexcept>
#include <string>

namespace heatkeep {

struct BookError : std::runtime_error {
  enum class Kind {
    BadInput,     // a name or a setting that cannot be
    NoServer,     // the PostgreSQL server package is not installed, or not in the version the book was made with
    NoBook,       // nothing has been made in this home yet
    NotYours,     // the home belongs to another account of this machine
    CannotStart,  // the server does not come up; the message ends with what it wrote in its log
    Busy,         // another program holds the home for too long, or old server processes do not end
    Broken        // another program did not do its part; the message ends with what it said
  };
  BookError(Kind kind_, const std::string& message) : std::runtime_error(message), kind(kind_) {}
  Kind kind;
};

}  // namespace heatkeep
