#include "client/book/book_location.h"

#include <stdexcept>

#include <cstdlib>

#include "client/book/book_error.h"
#include "client/book/book_home.h"
#include "client/gateway/conninfo.h"

namespace heatkeep {
namespace {

bool ServerInEnvironment() {
  for (const char* name : {"PGHOST", "PGHOSTADDR", "PGSERVICE", "PGDATABASE"})
    if (const char* value = std::getenv(name); value && *value) return true;
  return false;
}

bool IsConnectionString(const std::string& text) { return text.find('=') != std::string::npos || text.find("://") != std::string::npos; }

}  // namespace

BookLocation FindBook(const BookChoice& choice) {
  if (!choice.book.empty() && !choice.home.empty())
    throw BookError(BookError::Kind::BadInput, "both a server's book and a home folder are given; expected one of the two");
  BookLocation location;
  location.person = choice.person;
  if (!choice.book.empty() || (choice.home.empty() && ServerInEnvironment())) {
    location.own = false;
    const bool service = !choice.book.empty() && !IsConnectionString(choice.book);
    try {
      location.conninfo = ConninfoFor(service ? ConninfoPair("service", choice.book) : choice.book, choice.person);
    } catch (const std::invalid_argument& unreadable) { throw BookError(BookError::Kind::BadInput, unreadable.what()); }
    return location;
  }
  location.home = choice.home.empty() ? HomeFolder() : std::filesystem::absolute(choice.home).lexically_normal();
  if (location.person.empty()) location.person = OwnAccount().name;
  return location;
}

PrivateCluster OwnCluster(const BookLocation& location) { return PrivateCluster({location.home, WatcherCommand(), {}}); }

Connection OpenBook(const BookLocation& location) {
  return location.own ? OwnCluster(location).Connect(location.person) : Connection::Open(location.conninfo);
}

Connection OpenAsKeeper(const BookLocation& location) {
  return location.own ? OwnCluster(location).Admin() : Connection::Open(location.conninfo);
}

}  // namespace heatkeep
