#include "tests/fuzz/file_door.h"

#include <sstream>
#include <stdexcept>
#include <string>

#include "client/allocator/allocate.h"
#include "client/allocator/check_plan.h"
#include "client/allocator/plain_choice.h"
#include "client/command/file_problem.h"
#include "client/intake/cuts_file.h"
#include "client/intake/stock_file.h"
#include "schema/terms/bad_text.h"
#include "schema/terms/scan.h"
#include "tests/fuzz/promise.h"
#include "tests/fuzz/up_to.h"

namespace heatkeep::fuzz {
namespace {

template <class Row>
void RequireHonest(const intake::FileRows<Row>& file, const std::string& name) {
  Require(file.Good() == file.problems.empty(), "good means no problems");
  Require(file.Good() || file.rows.empty(), "a bad file gives no rows");
  for (const intake::FileProblem& p : file.problems)
    Require(p.file == name && p.line >= 0 && !p.wrong.empty() && !p.expected.empty(), "a problem says where, what and what is expected");
}

bool IsSmall(const allocator::Problem& problem) {
  std::int64_t cuts = 0;
  for (const allocator::Line& line : problem.lines) cuts += line.quantity;
  return problem.lines.size() <= 8 && problem.pieces.size() <= 12 && cuts <= 40;
}

}  // namespace

void StockDoor(std::string_view bytes) {
  const auto file = intake::ReadStockFile(bytes, "stock.csv");
  RequireHonest(file, "stock.csv");
  for (const auto& row : file.rows) {
    Require(row.line > 0 && !row.tag.empty() && !row.grade.empty(), "a row has a line, a tag and a grade");
    Require(row.length.nm > 0 && row.doubt.nm >= 0 && row.doubt < row.length, "lengths are in range");
    Require(!row.count || *row.count >= 1, "a count is one or more");
    Require(row.ends >= 0 && row.ends <= 2, "ends are 0, 1 or 2");
  }
}

void CutsDoor(std::string_view bytes) {
  const auto file = intake::ReadCutsFile(bytes, "cuts.csv");
  RequireHonest(file, "cuts.csv");
  for (const auto& row : file.rows) {
    Require(row.line_in_file > 0 && !row.order.empty() && !row.line.empty() && !row.grade.empty(), "a row has its names");
    Require(row.length.nm > 0 && row.face.nm >= 0 && row.quantity >= 1 && row.priority >= 1 && row.max_heats >= 0, "amounts are in range");
  }
}

void ScanDoor(std::string_view bytes) {
  try {
    const Scan scan = ReadScan(bytes);
    Require(!scan.fields.empty(), "a scan that was read says something");
    for (const auto& [identifier, data] : scan.fields) Require(!identifier.empty() && !data.empty(), "a field has an identifier and data");
    Require(ReadScan(WriteEnvelope(scan.fields)).fields == scan.fields, "a scan is written and read again as the same");
  } catch (const BadText& e) { Require(!e.Wrong().empty() && !e.Expected().empty(), "a refusal says what is wrong and what is expected"); }
}

void PlanDoor(std::string_view bytes) {
  std::string_view rest = bytes;
  command::FilePlan asked;
  asked.stock = {"stock.csv", std::string(UpTo(rest, "\n=== cuts\n")), {}};
  asked.cuts = {"cuts.csv", std::string(UpTo(rest, "\n=== rules\n")), {}};
  if (!rest.empty()) asked.rules_file = command::NamedText{"rules.json", std::string(rest), {}};
  asked.rules = {{2 * kNmPerMm}, {10 * kNmPerMm}, {60 * kNmPerMm}, {150 * kNmPerMm}};
  // What the last byte says, so that every aim has its turn.
  asked.aim = static_cast<allocator::Aim>(bytes.empty() ? 0 : static_cast<unsigned char>(bytes.back()) % 4);
  asked.limits.seconds = 2;
  asked.limits.iterations = 3;
  std::ostringstream told;
  try {
    const auto problem = command::ProblemOfFiles(asked, told);
    Require(problem || !told.str().empty(), "a refusal says why");
    if (!problem || !IsSmall(*problem)) return;
    const allocator::Plan plan = allocator::Allocate(*problem);
    Require(allocator::CheckPlan(*problem, plan).empty(), "a plan passes the check");
    Require(allocator::CheckPlan(*problem, allocator::PlanByHand(*problem)).empty(), "a plan by hand passes the check");
  } catch (const BadText&) {
  } catch (const std::invalid_argument&) {}
}

}  // namespace heatkeep::fuzz
