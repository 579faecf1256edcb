// Which book is meant: one's own on this machine, or a shop's on a server.
#pragma once

#include <filesystem>
#include <string>

#include "client/book/private_cluster.h"
#include "client/gateway/connection.h"

namespace heatkeep {

// What was said on the command line or in the settings; empty = not said.
struct BookChoice {
  std::string book;    // a libpq connection string (keywords or postgresql://) or the name of a service
  std::string person;  // the login
  std::string home;    // the folder of a book of one's own
};

// The first of these that holds: `book` given: a server. `home` given: one's own, there. Any of PGHOST,
// PGHOSTADDR, PGSERVICE, PGDATABASE set: a server, as libpq reads its environment. Otherwise: one's own, in
// HomeFolder().
struct BookLocation {
  bool own = true;
  std::filesystem::path home;  // when own
  std::string person;          // when own: never empty (the account's name by default); else may be empty
  std::string conninfo;        // when not own; complete but for what libpq takes from its environment
};

// Throws BookError(BadInput) when both `book` and `home` are given, or one of them cannot be read.
BookLocation FindBook(const BookChoice& choice);

// The cluster of a book of one's own, with the watcher of this program.
PrivateCluster OwnCluster(const BookLocation& location);

// A session as the person; starts a book of one's own when it is not running.
Connection OpenBook(const BookLocation& location);

// The session that may change the book itself: the superuser of a book of one's own, the login given on a server.
Connection OpenAsKeeper(const BookLocation& location);

}  // namespace heatkeep
