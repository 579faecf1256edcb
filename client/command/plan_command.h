// heatkeep plan --stock S.csv --cuts C.csv ... --json plan.json: a plan from two files, without a book.
// Exit 0 when every cut is placed, 3 when some are short (the plan is written all the same), 2 on bad input: then
// `err` says "file:line: what is wrong; what is expected" and no plan is written. The plan file (plan_json.h) is
// written under a temporary name beside its own and renamed when it is whole.
#pragma once

#include <cstdint>
#include <iosfwd>
#include <string>
#include <vector>

namespace CLI {
class App;
}

namespace heatkeep::command {

struct PlanOptions {
  std::string stock, cuts;                                                  // the files, see client/intake/stock_file.h and cuts_file.h
  std::string stock_sheet, cuts_sheet;                                      // of spreadsheets; empty: the first that is shown
  std::string aim = "drops-first";                                          // or least-money, fewest-bars, least-metres
  std::string kerf = "1.6mm", trim = "5mm", grip = "80mm", keep = "300mm";  // with unit, or millimetres
  double seconds = 10;
  int threads = 2;
  std::uint64_t seed = 1;
  std::string rules;               // rules_file.h, or empty
  std::string json;                // where the plan goes, or empty: only the summary
  std::string buy;                 // lengths a supplier sells (extras_words.h); empty: the usual mill lengths
  std::string plain_below = "0";   // take the plan by hand when the search gains less money than this
  bool price_of_one_heat = false;  // plan without the wishes for few heats too, and say the difference
};

// A short summary with the proof on `out`.
int RunPlan(const PlanOptions& options, std::ostream& out, std::ostream& err);

// "drops-first", "least-money", ...: what --aim takes.
std::vector<std::string> AimWords();

// Adds the options above to a command.
void AddPlanFileOptions(CLI::App& app, PlanOptions& options);

}  // namespace heatkeep::command
