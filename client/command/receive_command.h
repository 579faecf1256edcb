// Bringing metal and papers in from files. A bad file names every bad line and changes nothing; the same file again adds
// nothing. Exit: 0 done, 1 the book refused, 2 bad input, 4 no book.
#pragma once

#include <string>
#include <vector>

#include "client/command/with_book.h"
#include "client/incoming/table_file.h"

namespace heatkeep::command {

using incoming::TableFile;

// heatkeep receive FILE: every delivery note in the file, all or none. Says what does not agree and what is quarantined.
int RunReceive(const BookCall& call, const TableFile& file, bool json);

// heatkeep opening FILE: the opening balance. With `leave_out` the good lines are taken without the bad.
int RunOpening(const BookCall& call, const TableFile& file, bool leave_out, bool json);

enum class CertificateDeed { FileAndAccept, File, Replace };

struct CertificateFiling {
  TableFile file;
  CertificateDeed deed = CertificateDeed::FileAndAccept;
  std::string reason;              // for Replace
  std::vector<std::string> scans;  // NUMBER=FILE: the paper itself, or FILE where the table has one document
  std::string validated_by;        // as papers.h has it; of a table with one document
};

// heatkeep certificate add|file|replace FILE: inspection documents, typed, and their files.
int RunCertificates(const BookCall& call, const CertificateFiling& filing);

// heatkeep grades add FILE: the grade list; known ones stay as they are.
int RunGradesAdd(const BookCall& call, const TableFile& file);

// heatkeep grades limits: the limits and deviations that come with the program, into the book.
int RunGradesLimits(const BookCall& call);

// Both of those that come with the program: what a new book begins with.
int RunGradesThatCome(const BookCall& call);

}  // namespace heatkeep::command
