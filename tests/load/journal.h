// What one connection was told is done: kept apart from the book, and compared with it at the end.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "client/gateway/deeds.h"

namespace heatkeep {

struct Acknowledged {
  std::string who, deed;
  RequestNumber request;
  Json answer;
  std::map<std::string, std::int64_t> rows;  // table -> how many rows of it the deed must have made
};

struct Journal {
  std::vector<Acknowledged> done;
  std::map<std::string, std::int64_t> refused;  // by code: a rule of the book said no
  std::vector<std::string> wrong;               // anything else that a person would have seen
  std::int64_t repeated = 0;                    // asked again under the same number, as after a lost answer
  std::vector<double> milliseconds;             // of every deed, refused ones too
};

// Every deed of the journal is in the book once: its answer, and in the ledger exactly the rows that it told of. One sentence for each
// that is not.
std::vector<std::string> NotInTheBook(Connection& admin, const std::vector<Journal>& journals);

// No piece was ever promised twice at the same time, replayed from the ledger alone.
std::vector<std::string> PromisedTwice(Connection& admin);

}  // namespace heatkeep
