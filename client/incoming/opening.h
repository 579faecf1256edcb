// The opening balance out of a file, looked at before it is booked: every row with what is wrong with it, and the names the book does not
// know yet. Nothing is changed by looking.
#pragma once

#include <string>
#include <vector>

#include "client/gateway/deeds.h"
#include "client/incoming/table_file.h"
#include "client/intake/opening_file.h"

namespace heatkeep::incoming {

struct OpeningLook {
  TableFile file;
  std::string bytes;
  std::vector<intake::OpeningFileRow> good;                    // the rows that can be booked, in the file's order
  std::vector<intake::FileProblem> problems;                   // of the others, by line; line 0: of the file as a whole
  std::vector<intake::FileProblem> warnings;                   // keep nothing out
  std::vector<std::string> new_places, new_mills, new_owners;  // named in the file, not in the book; each once
  Json lines = Json::array();                                  // of `good`, as open_balance takes them
};

// Throws std::runtime_error where the file cannot be read; DbError.
OpeningLook LookAtOpening(Connection& connection, const TableFile& file);

// Books the good rows; the answer of the deed. The same file again adds nothing. Throws DbError.
Json BookOpening(Connection& connection, const OpeningLook& look);

// Enters the new places, as racks of the first site (made where there is none), and the new names. Throws DbError.
void EnterNames(Connection& connection, const RequestNumber& request, const OpeningLook& look);

}  // namespace heatkeep::incoming
