#include "client/command/plan_command.h"

#include <CLI/CLI.hpp>
#include <map>
#include <ostream>
#include <stdexcept>

#include "client/allocator/allocate.h"
#include "client/allocator/proof_words.h"
#include "client/command/plan_extras.h"
#include "client/command/plan_json.h"
#include "client/command/rules_file.h"
#include "client/command/table_file.h"
#include "client/intake/cuts_file.h"
#include "client/intake/file_bytes.h"
#include "client/intake/stock_file.h"

namespace heatkeep::command {
namespace {

using allocator::Aim;
using allocator::Problem;

Aim AimOf(const std::string& word) {
  for (const Aim aim : {Aim::DropsFirst, Aim::LeastMoney, Aim::FewestBars, Aim::LeastMetres})
    if (AimName(aim) == word) return aim;
  throw BadText("--aim: " + Quoted(word) + " is no aim", "drops-first, least-money, fewest-bars or least-metres");
}

Length LengthOption(const std::string& option, const std::string& text) {
  try {
    return ReadLength(text);
  } catch (const BadText& e) {
    throw BadText(option + ": " + e.Wrong(), e.Expected());
  }
}

allocator::PaperType PapersOf(Papers papers) {
  switch (papers) {
    case Papers::None: return allocator::PaperType::None;
    case Papers::P21: return allocator::PaperType::Type21;
    case Papers::P22: return allocator::PaperType::Type22;
    case Papers::P31: return allocator::PaperType::Type31;
    case Papers::P32: return allocator::PaperType::Type32;
  }
  return allocator::PaperType::None;
}

// Equal sections get equal words, those they were first written in.
class SectionWords {
 public:
  const std::string& Of(const Section& section) {
    return words_.try_emplace(SectionKey(section), SectionText(section)).first->second;
  }

 private:
  std::map<std::string, std::string> words_;
};

allocator::Line LineOf(const intake::CutsFileRow& row, SectionWords& words) {
  allocator::Line line;
  line.order = row.order;
  line.line = row.line;
  line.section = words.Of(row.section);
  line.grade = row.grade;
  line.condition = row.condition;
  line.owner = row.owner;
  line.nominal = row.length;
  line.face = row.face;
  line.quantity = row.quantity;
  line.priority = row.priority;
  line.due = row.due;
  line.one_heat = row.one_heat;
  line.max_heats = row.max_heats;
  line.papers = PapersOf(row.papers);
  return line;
}

allocator::Piece PieceOf(const intake::StockFileRow& row, const RulesFile& rules, bool densities, SectionWords& words) {
  allocator::Piece piece;
  piece.tag = row.tag;
  piece.kind = row.kind == intake::PieceKind::Bar ? allocator::PieceKind::Bar : allocator::PieceKind::Drop;
  piece.section = words.Of(row.section);
  piece.grade = row.grade;
  piece.condition = row.condition;
  piece.heat = row.heat;
  piece.owner = row.owner;
  piece.place = row.place;
  if (row.held) piece.held = "it is held";
  piece.length = row.length;
  piece.doubt = row.doubt;
  piece.square_ends = row.ends;
  piece.count = row.count;
  piece.papers = PapersOf(row.papers);
  piece.costs = rules.CostsOf(row.section, row.grade, row.price_per_kg);
  if (densities) piece.mass = MassPerMetreOf(row.section, rules.DensityOf(row.section, row.grade));
  return piece;
}

void AddRules(Problem& problem, const RulesFile& rules, SectionWords& words) {
  for (const auto& s : rules.grades) problem.grades.push_back({s.asked, s.given, s.order, s.extra_per_metre});
  for (const auto& s : rules.sections)
    problem.sections.push_back({words.Of(s.asked_section), words.Of(s.given_section), s.order, s.extra_per_metre});
  for (const auto& g : rules.groups)
    problem.exceptions.push_back({g.section ? words.Of(*g.section) : std::string(), g.grade, g.rules});
  problem.per_setup = rules.setup;
  problem.per_extra_heat = rules.extra_heat;
}

// Nothing when the files are not good; `err` has been told then.
std::optional<Problem> ReadAll(const PlanOptions& options, std::ostream& err) {
  if (options.stock.empty()) throw BadText("--stock: no file is named", "a CSV of the pieces there are");
  if (options.cuts.empty()) throw BadText("--cuts: no file is named", "a CSV of what is to be cut");
  Problem problem;
  problem.aim = AimOf(options.aim);
  problem.rules = {LengthOption("--kerf", options.kerf), LengthOption("--trim", options.trim),
                   LengthOption("--grip", options.grip), LengthOption("--keep", options.keep)};
  if (!(options.seconds >= 0)) throw BadText("--seconds: it is below 0", "0 or more");
  if (options.threads < 1) throw BadText("--threads: it is below 1", "1 or more");
  problem.limits.seconds = options.seconds;
  problem.limits.threads = options.threads;
  problem.limits.seed = options.seed;
  RulesFile rules;
  if (!options.rules.empty()) rules = ReadRulesFile(intake::FileBytes(options.rules), options.rules, problem.rules);
  const TableFile cuts_file{options.cuts, options.cuts_sheet}, stock_file{options.stock, options.stock_sheet};
  const auto cuts = intake::ReadCutsFile(intake::FileBytes(cuts_file.path), cuts_file.path, cuts_file.How());
  const auto stock = intake::ReadStockFile(intake::FileBytes(stock_file.path), stock_file.path, stock_file.How());
  err << intake::ProblemsText(stock.problems) << intake::ProblemsText(cuts.problems);
  if (!stock.Good() || !cuts.Good()) return std::nullopt;
  err << intake::ProblemsText(stock.warnings) << intake::ProblemsText(cuts.warnings);
  SectionWords words;
  for (const auto& row : cuts.rows) problem.lines.push_back(LineOf(row, words));
  for (const auto& row : stock.rows) problem.pieces.push_back(PieceOf(row, rules, !options.rules.empty(), words));
  AddRules(problem, rules, words);
  return problem;
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
  SayExtras(extras, out);
  if (plan.ended_by == allocator::EndedBy::Clock) out << "the search ended by the clock; more seconds may give a better plan\n";
}

}  // namespace

int RunPlan(const PlanOptions& options, std::ostream& out, std::ostream& err) {
  try {
    const ExtraWishes wishes = WishesOf(options);
    const std::optional<Problem> problem = ReadAll(options, err);
    if (!problem) return 2;
    allocator::Plan plan = allocator::Allocate(*problem);
    const PlanExtras extras = ExtrasOf(*problem, plan, wishes);
    if (!options.json.empty()) WriteWhole(options.json, PlanJson(*problem, plan, &extras));
    Summary(*problem, plan, extras, out);
    return plan.value.unmet_pieces > 0 ? 3 : 0;
  } catch (const std::logic_error& e) {  // bad texts are among them
    err << e.what() << '\n';
  } catch (const std::runtime_error& e) {
    err << e.what() << '\n';
  }
  return 2;
}

void AddPlanFileOptions(CLI::App& app, PlanOptions& options) {
  app.add_option("--stock", options.stock, "the pieces there are: CSV, XLSX or ODS");
  app.add_option("--stock-sheet", options.stock_sheet, "which sheet of that spreadsheet");
  app.add_option("--cuts", options.cuts, "what is to be cut: CSV, XLSX or ODS");
  app.add_option("--cuts-sheet", options.cuts_sheet, "which sheet of that spreadsheet");
  app.add_option("--aim", options.aim, "drops-first, least-money, fewest-bars or least-metres")->capture_default_str();
  app.add_option("--kerf", options.kerf, "what the blade takes")->capture_default_str();
  app.add_option("--trim", options.trim, "squaring slice at a mill end")->capture_default_str();
  app.add_option("--grip", options.grip, "what the vice must hold")->capture_default_str();
  app.add_option("--keep", options.keep, "shortest rest that is kept")->capture_default_str();
  app.add_option("--seconds", options.seconds, "longest search")->capture_default_str();
  app.add_option("--threads", options.threads, "groups planned side by side")->capture_default_str();
  app.add_option("--seed", options.seed, "same seed, same plan")->capture_default_str();
  app.add_option("--rules", options.rules, "JSON of prices, rates, costs, substitutes");
  app.add_option("--json", options.json, "where the plan is written");
  app.add_option("--buy", options.buy, "lengths a supplier sells, for what is short: 6000mm,12000mm or 6000mm=378.80,12000mm=750");
  app.add_option("--plain-below", options.plain_below, "take the plan by hand when the search gains less money than this")
      ->capture_default_str();
  app.add_flag("--price-of-one-heat", options.price_of_one_heat, "what the wishes for one heat cost");
}

}  // namespace heatkeep::command
