#include "client/command/file_problem.h"

#include <map>
#include <ostream>

#include "client/command/rules_file.h"
#include "client/intake/cuts_file.h"
#include "client/intake/stock_file.h"

namespace heatkeep::command {
namespace {

constexpr Length kLongest{1'000'000 * kNmPerMm};
constexpr std::int64_t kMostCuts = 1'000'000;

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
  const std::string& Of(const Section& section) { return words_.try_emplace(SectionKey(section), SectionText(section)).first->second; }

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
  if (row.tolerance) line.tolerance_plus = row.tolerance->plus;
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
  piece.costs = rules.CostsOf(row.section, row.grade, row.price_per_kg, piece.kind);
  if (densities) piece.mass = MassPerMetreOf(row.section, rules.DensityOf(row.section, row.grade));
  return piece;
}

void AddRules(allocator::Problem& problem, const RulesFile& rules, SectionWords& words) {
  for (const auto& s : rules.grades) problem.grades.push_back({s.asked, s.given, s.order, s.extra_per_metre});
  for (const auto& s : rules.sections)
    problem.sections.push_back({words.Of(s.asked_section), words.Of(s.given_section), s.order, s.extra_per_metre});
  for (const auto& g : rules.groups) problem.exceptions.push_back({g.section ? words.Of(*g.section) : std::string(), g.grade, g.rules});
  problem.per_setup = rules.setup;
  problem.per_extra_heat = rules.extra_heat;
}

// What every row may be on its own and yet not go with the others, or with a plan.
std::vector<intake::FileProblem> Contradictions(const std::string& name, const std::vector<intake::CutsFileRow>& rows) {
  std::vector<intake::FileProblem> wrong;
  std::int64_t cuts = 0;
  for (const auto& row : rows) {
    if (row.length + row.face > kLongest)
      wrong.push_back({name, row.line_in_file, "length: with its face it is over 1 km", "a length of up to 1 km"});
    if (!row.one_heat.empty() && row.max_heats > 1)
      wrong.push_back({name, row.line_in_file, "max_heats: " + std::to_string(row.max_heats) + " heats and one_heat contradict each other",
                       "1 or nothing beside one_heat"});
    if (cuts <= kMostCuts && (cuts += row.quantity) > kMostCuts)
      wrong.push_back(
          {name, row.line_in_file, "quantity: with this line more than 1000000 cuts are asked for", "up to 1000000 in one plan"});
  }
  return wrong;
}

std::vector<intake::FileProblem> Contradictions(const std::string& name, const std::vector<intake::StockFileRow>& rows) {
  std::vector<intake::FileProblem> wrong;
  for (const auto& row : rows)
    if (row.length > kLongest) wrong.push_back({name, row.line, "length: it is over 1 km", "a length of up to 1 km"});
  return wrong;
}

}  // namespace

std::optional<allocator::Problem> ProblemOfFiles(const FilePlan& asked, std::ostream& err) {
  allocator::Problem problem;
  problem.aim = asked.aim;
  problem.rules = asked.rules;
  problem.limits = asked.limits;
  RulesFile rules;
  if (asked.rules_file) rules = ReadRulesFile(asked.rules_file->bytes, asked.rules_file->name, problem.rules);
  const auto cuts = intake::ReadCutsFile(asked.cuts.bytes, asked.cuts.name, asked.cuts.how);
  const auto stock = intake::ReadStockFile(asked.stock.bytes, asked.stock.name, asked.stock.how);
  const auto of_stock = Contradictions(asked.stock.name, stock.rows), of_cuts = Contradictions(asked.cuts.name, cuts.rows);
  err << intake::ProblemsText(stock.problems) << intake::ProblemsText(of_stock) << intake::ProblemsText(cuts.problems)
      << intake::ProblemsText(of_cuts);
  if (!stock.Good() || !cuts.Good() || !of_stock.empty() || !of_cuts.empty()) return std::nullopt;
  err << intake::ProblemsText(stock.warnings) << intake::ProblemsText(cuts.warnings);
  SectionWords words;
  for (const auto& row : cuts.rows) problem.lines.push_back(LineOf(row, words));
  for (const auto& row : stock.rows) problem.pieces.push_back(PieceOf(row, rules, asked.rules_file.has_value(), words));
  AddRules(problem, rules, words);
  return problem;
}

}  // namespace heatkeep::command
