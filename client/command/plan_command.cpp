#include "client/command/plan_command.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <array>
#include <ostream>
#include <stdexcept>

#include "client/allocator/proof_words.h"
#include "client/command/extras_words.h"
#include "client/command/file_problem.h"
#include "client/command/option_text.h"
#include "client/command/option_values.h"
#include "client/command/plan_json.h"
#include "client/command/rules_file.h"
#include "client/command/search_watch.h"
#include "client/incoming/table_file.h"
#include "client/intake/cuts_file.h"
#include "client/intake/file_bytes.h"
#include "client/intake/stock_file.h"
#include "reports/whole_file.h"

namespace heatkeep::command {
namespace {

using allocator::Aim;
using allocator::Problem;

constexpr double kMostSeconds = 1'000'000;
constexpr int kMostThreads = 256;

constexpr std::array kAims{Aim::DropsFirst, Aim::LeastMoney, Aim::FewestBars, Aim::LeastMetres};

Aim AimOf(const std::string& word) {
  for (const Aim aim : kAims)
    if (AimName(aim) == word) return aim;
  throw BadText("--aim: " + Quoted(word) + " is no aim", OneOfWords(AimWords()));
}

Length LengthOption(const std::string& option, const std::string& text) {
  return ReadOption(option, text, [](const std::string& words) { return ReadLength(words); });
}

// Nothing when the files are not good; `err` has been told then.
std::optional<Problem> ReadAll(const PlanOptions& options, std::ostream& err) {
  if (options.stock.empty()) throw BadText("--stock: no file is named", "a CSV of the pieces there are");
  if (options.cuts.empty()) throw BadText("--cuts: no file is named", "a CSV of what is to be cut");
  FilePlan asked;
  asked.aim = AimOf(options.aim);
  asked.rules = {LengthOption("--kerf", options.kerf), LengthOption("--trim", options.trim), LengthOption("--grip", options.grip),
                 LengthOption("--keep", options.keep)};
  if (!(options.seconds >= 0 && options.seconds <= kMostSeconds)) throw BadText("--seconds: it is out of range", "0 to 1000000");
  if (options.threads < 1 || options.threads > kMostThreads) throw BadText("--threads: it is out of range", "1 to 256");
  asked.limits.seconds = options.seconds;
  asked.limits.threads = options.threads;
  asked.limits.seed = options.seed;
  const incoming::TableFile stock{options.stock, options.stock_sheet}, cuts{options.cuts, options.cuts_sheet};
  asked.stock = {stock.path, intake::FileBytes(stock.path), stock.How()};
  asked.cuts = {cuts.path, intake::FileBytes(cuts.path), cuts.How()};
  if (!options.rules.empty()) asked.rules_file = {options.rules, intake::FileBytes(options.rules), {}};
  return ProblemOfFiles(asked, err);
}

ExtraWishes WishesOf(const PlanOptions& options) {
  ExtraWishes wishes;
  if (!options.buy.empty()) wishes.offers = ReadOffers(options.buy);
  wishes.plain_below = ReadAmount("--plain-below", options.plain_below);
  wishes.price_of_one_heat = options.price_of_one_heat;
  return wishes;
}

void Summary(const Problem& problem, const allocator::Plan& plan, const PlanExtras& extras, std::ostream& out) {
  std::int64_t asked = 0;
  for (const auto& line : problem.lines) asked += line.quantity;
  out << asked - plan.value.unmet_pieces << " of " << asked << " cuts placed on " << plan.value.pieces_pulled
      << (plan.value.pieces_pulled == 1 ? " piece\n" : " pieces\n");
  out << ProofWords(problem, plan) << '\n';
  for (const auto& s : plan.shorts) {
    const auto& line = problem.lines[static_cast<std::size_t>(s.line)];
    out << "short: order " << line.order << " line " << line.line << ", " << s.missing << " missing: " << s.why << '\n';
  }
  SayExtras(problem, plan, extras, out);
  SayEnd(plan, out);
}

// Where nothing has a price, least money is proved of nothing.
void SayUnpriced(const Problem& problem, std::ostream& err) {
  const auto priced = [](const allocator::Piece& piece) { return piece.costs.per_metre.micro > 0; };
  if (problem.aim == Aim::LeastMoney && std::ranges::none_of(problem.pieces, priced))
    err << "--aim least-money: no piece has a price, so metal costs nothing in this plan; expected prices in --rules, or a column price in the stock\n";
}

}  // namespace

int RunPlan(const PlanOptions& options, std::ostream& out, std::ostream& err) {
  try {
    const ExtraWishes wishes = WishesOf(options);
    const std::optional<Problem> problem = ReadAll(options, err);
    if (!problem) return 2;
    SayUnpriced(*problem, err);
    allocator::Plan plan = Searched(*problem, err);
    const PlanExtras extras = ExtrasOf(*problem, plan, wishes);
    if (const std::string text = PlanJson(*problem, plan, &extras); !options.json.empty())
      WriteWholeBytes(options.json, text.data(), text.size());
    Summary(*problem, plan, extras, out);
    return plan.value.unmet_pieces > 0 ? 3 : 0;
  } catch (const std::logic_error& e) {  // bad texts are among them
    err << e.what() << '\n';
  } catch (const std::runtime_error& e) { err << e.what() << '\n'; }
  return 2;
}

// A text of several lines, the first behind `head`, the others below it.
std::string Indented(const std::string& text, const std::string& head) {
  std::string all = head;
  for (const char c : text) all += c == '\n' ? "\n" + std::string(head.size(), ' ') : std::string(1, c);
  return all;
}

// What a header must name, and what it may besides.
std::string HeaderOf(const std::vector<intake::Column>& columns) {
  std::string needed, besides;
  for (const intake::Column& column : columns) {
    std::string& names = column.required ? needed : besides;
    names += (names.empty() ? "" : ",") + std::string(column.name);
  }
  return needed + "\nand " + besides;
}

std::string AimsAndExamples() {
  return std::string(R"(What is best, after as many cuts as can be, highest priority first:
  drops-first   least full bar opened, then least worth of metal lost, pieces pulled, set-ups
  least-money   least metal, sawing, pulls, set-ups and extra heats in money; needs prices (--rules). A long rest is worth
                nearly the price of a bar, so opening one costs little by itself: pull_bar says what fetching a bar costs
  fewest-bars   fewest full bars, then as drops-first
  least-metres  least length of metal pulled, drops and bars alike

)") + Indented(HeaderOf(intake::StockColumns()), "stock.csv  ") +
      "\n" + Indented(HeaderOf(intake::CutsColumns()), "cuts.csv   ") + "\n" + Indented(kRulesFileSample, "rules.json ") + R"(

Examples
  heatkeep plan --stock stock.csv --cuts cuts.csv --json plan.json
  heatkeep plan --stock stock.csv --cuts cuts.csv --aim least-money --rules rules.json --json plan.json
  heatkeep plan --stock stock.csv --cuts cuts.csv --aim fewest-bars --kerf 1.6mm --trim 5mm --grip 80mm --keep 300mm
  heatkeep plan --stock stock.csv --cuts cuts.csv --aim least-metres --seconds 60 --threads 2 --seed 7
  heatkeep plan --stock stock.csv --cuts cuts.csv --buy 6000mm=378.80,12000mm=750 --price-of-one-heat

Exit: 0 every cut placed, 3 some are short (the plan is written), 2 bad input (no plan is written).
On a terminal value and bound are shown while it searches; Ctrl-C takes the best plan so far.)";
}

std::vector<std::string> AimWords() {
  std::vector<std::string> words;
  for (const Aim aim : kAims) words.emplace_back(AimName(aim));
  return words;
}

void AddPlanFileOptions(CLI::App& app, PlanOptions& options) {
  app.footer(AimsAndExamples());
  app.add_option("--stock", options.stock, "the pieces there are: CSV, XLSX or ODS")->type_name(kTableFile);
  app.add_option("--stock-sheet", options.stock_sheet, "which sheet of that spreadsheet");
  app.add_option("--cuts", options.cuts, "what is to be cut: CSV, XLSX or ODS")->type_name(kTableFile);
  app.add_option("--cuts-sheet", options.cuts_sheet, "which sheet of that spreadsheet");
  app.add_option("--aim", options.aim, "what is best, see below")->capture_default_str()->check(OneOf(AimWords()));
  app.add_option("--kerf", options.kerf, "what the blade takes")->capture_default_str();
  app.add_option("--trim", options.trim, "squaring slice at a mill end")->capture_default_str();
  app.add_option("--grip", options.grip, "what the vice must hold")->capture_default_str();
  app.add_option("--keep", options.keep, "shortest rest that is kept")->capture_default_str();
  app.add_option("--seconds", options.seconds, "longest search")->capture_default_str();
  app.add_option("--threads", options.threads, "groups planned side by side")->capture_default_str();
  app.add_option("--seed", options.seed, "same seed, same plan")->capture_default_str();
  app.add_option("--rules", options.rules, "prices, rates, costs, substitutes")->type_name(kJsonFile);
  app.add_option("--json", options.json, "where the plan is written")->type_name(kJsonFile);
  app.add_option("--buy", options.buy, "lengths a supplier sells, for what is short: 6000mm,12000mm or 6000mm=378.80,12000mm=750");
  app.add_option("--plain-below", options.plain_below, "take the plan by hand when the search gains less money than this")
      ->capture_default_str();
  app.add_flag("--price-of-one-heat", options.price_of_one_heat, "what the wishes for one heat cost");
}

}  // namespace heatkeep::command
