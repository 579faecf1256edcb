// Papers out of the book. FILE endings choose the form: .pdf, .xlsx, .json or .csv. Exit as the other commands on a book. A trace
// and a balance are records: what they stand on is kept (book verify --record).
#pragma once

#include <cstdint>
#include <string>

#include "client/command/paper_files.h"

namespace heatkeep::command {

// heatkeep report sheet PLAN: pick list and saw sheet.
int RunReportSheet(const BookCall& call, std::int64_t plan, const PaperOptions& options);

// heatkeep report trace order|heat|piece NAME [--mill M].
int RunReportTrace(const BookCall& call, const std::string& kind, const std::string& name, const std::string& mill,
                   const PaperOptions& options);

// heatkeep report balance HEAT [--mill M] [--section WORDS] [--condition C]: the metal balance of one lot of it.
struct BalanceOfLot {
  std::string heat, mill, section, condition;  // empty: any; condition "none": that of which none is said
};
int RunReportBalance(const BookCall& call, const BalanceOfLot& asked, const PaperOptions& options);

// heatkeep report measured [--from DAY] [--until DAY] [--heat H]: who measured what otherwise than written. Also .csv.
struct MeasuredQuestion {
  std::string from, to, heat;
};
int RunReportMeasured(const BookCall& call, const MeasuredQuestion& asked, const PaperOptions& options);

// heatkeep book seal: takes the book's digest, to be kept outside it (a line to print, mail or file every day).
int RunSeal(const BookCall& call);

}  // namespace heatkeep::command
