#include <algorithm>
#include <set>
#include <stdexcept>

#include "client/gateway/plan_door.h"
#include "schema/terms/wide.h"

namespace heatkeep {
namespace {

using allocator::FineMoney;
using allocator::PaperType;

PaperType PaperOf(const std::string& word) {
  if (word == "2.1") return PaperType::Type21;
  if (word == "2.2") return PaperType::Type22;
  if (word == "3.1") return PaperType::Type31;
  return word == "3.2" ? PaperType::Type32 : PaperType::None;
}

std::string OwnerOf(const std::string& word) { return word == "ours" ? "" : word; }

// cents a tonne x kg/m: um2 * kg/m3 * cents/t = 1e-12 * 1e-3 cents/m, in millionths of a cent.
FineMoney PerMetre(std::int64_t area_um2, std::int64_t density, std::int64_t cents_per_tonne) {
  const Wide wide = Wide{area_um2} * density * cents_per_tonne;
  return {static_cast<std::int64_t>((wide + 500'000'000) / 1'000'000'000)};
}

// area / rate x cents a minute.
FineMoney PerCut(std::int64_t area_um2, std::int64_t mm2_per_min, std::int64_t cents_per_min) {
  return {area_um2 / mm2_per_min * cents_per_min};
}

std::int64_t SettingOr(Connection& connection, const char* name, std::int64_t otherwise) {
  const Result value = connection.Execute("select value from api.settings_now where name = $1", {name});
  return value.empty() ? otherwise : value.Only().Int("value");
}

allocator::Line LineOf(const Row& row) {
  allocator::Line line;
  line.order = row.Text("order_no");
  line.line = row.Text("line_no");
  line.section = row.Text("section");
  line.grade = row.Text("grade");
  line.condition = row.Text("condition");
  line.owner = OwnerOf(row.Text("owner"));
  line.nominal = {row.Int("length_nm")};
  line.face = {row.Int("face_nm")};
  line.aim = {row.Int("aim_nm")};
  line.quantity = static_cast<int>(row.Int("open"));
  line.priority = static_cast<int>(row.Int("priority"));
  line.due = row.OptionalText("due").value_or("");
  line.one_heat = row.OptionalText("one_heat").value_or("");
  line.max_heats = static_cast<int>(row.OptionalInt("max_heats").value_or(0));
  line.papers = PaperOf(row.Text("papers"));
  return line;
}

allocator::Piece PieceOf(const Row& row, std::int64_t cents_per_min, FineMoney per_pull) {
  allocator::Piece piece;
  piece.tag = row.Text("tag");
  piece.kind = row.Text("kind") == "bar" ? allocator::PieceKind::Bar : allocator::PieceKind::Drop;
  piece.section = row.Text("section");
  piece.grade = row.Text("grade");
  piece.condition = row.Text("condition");
  if (!row.IsNull("heat")) piece.heat = row.Text("heat") + " of " + row.Text("mill");
  piece.owner = OwnerOf(row.Text("owner"));
  piece.place = row.OptionalText("place").value_or("");
  piece.length = {row.Int("length_nm")};
  piece.doubt = {row.Int("doubt_nm")};
  piece.square_ends = static_cast<int>(row.Int("ends"));
  piece.papers = PaperOf(row.Text("papers"));
  const std::int64_t area = row.Int("area_um2"), density = row.Int("density_kg_m3");
  piece.mass = {area * density};
  piece.costs.per_metre = PerMetre(area, density, row.OptionalInt("cents_per_tonne").value_or(0));
  piece.costs.scrap_per_metre = PerMetre(area, density, row.OptionalInt("scrap_cents_per_tonne").value_or(0));
  if (const auto rate = row.OptionalInt("mm2_per_min")) piece.costs.per_cut = PerCut(area, *rate, cents_per_min);
  piece.costs.per_pull = per_pull;
  return piece;
}

void ReadLines(Connection& connection, const PlanQuestion& question, BookProblem& asked) {
  for (const std::string& name : question.cut_lists) {
    const Result lines = connection.Execute("select * from api.cut_lines where cut_list = $1 order by order_no, line_no", {name});
    if (lines.empty()) throw std::invalid_argument("no cut list is called \"" + name + "\"; `heatkeep cutlist list` names them");
    for (const Row row : lines) {
      if (row.Int("open") == 0) continue;
      const Length wide{std::max(row.Int("dim1_nm"), row.Int("dim2_nm"))};
      if (wide <= question.wider_than) continue;
      if (wide > asked.widest)
        asked.too_large.push_back(row.Text("order_no") + "/" + row.Text("line_no") + " (" + row.Text("section") + ")");
      else
        asked.problem.lines.push_back(LineOf(row));
    }
  }
}

void ReadStandins(Connection& connection, allocator::Problem& problem) {
  const Result standins = connection.Execute("select asked, offered from api.grade_standins order by asked, offered");
  for (const Row row : standins) problem.grades.push_back({row.Text("asked"), row.Text("offered"), "", {}});
}

// The groups that can serve the lines: as asked, and what may stand in.
std::string GroupsWanted(const allocator::Problem& problem) {
  std::set<std::pair<std::string, std::string>> groups;
  for (const allocator::Line& line : problem.lines) {
    groups.emplace(line.grade, line.section);
    for (const auto& standin : problem.grades) {
      if (standin.asked == line.grade) groups.emplace(standin.given, line.section);
    }
  }
  Json wanted = Json::array();
  for (const auto& [grade, section] : groups) wanted.push_back({{"grade", grade}, {"section", section}});
  return wanted.dump();
}

}  // namespace

BookProblem ReadProblem(Connection& connection, const PlanQuestion& question) {
  BookProblem asked;
  allocator::Problem& problem = asked.problem;
  problem.aim = question.aim;
  problem.limits = question.limits;
  Transaction snapshot(connection);
  connection.Execute("set transaction isolation level repeatable read, read only");
  const Result saws = connection.Execute("select * from api.saws where saw = $1", {question.saw});
  if (saws.empty()) throw std::invalid_argument("no saw is called \"" + question.saw + "\"");
  const Row saw = saws.Only();
  asked.kerf = {saw.Int("kerf_nm")};
  asked.trim = {saw.Int("trim_nm")};
  asked.grip = {saw.Int(question.bundled ? "grip_bundled_nm" : "grip_nm")};
  asked.widest = {saw.Int("max_section_nm")};
  problem.rules = {asked.kerf, asked.trim, asked.grip, {300 * kNmPerMm}};
  problem.per_setup = {SettingOr(connection, "cents_per_setup", 200) * 1'000'000};
  problem.per_extra_heat = {SettingOr(connection, "cents_per_extra_heat", 800) * 1'000'000};
  asked.plain_below = {SettingOr(connection, "cents_plain_choice", 200) * 1'000'000};
  const std::int64_t cents_per_min = SettingOr(connection, "saw_cents_per_minute", 80);
  const FineMoney per_pull{SettingOr(connection, "cents_per_pull", 150) * 1'000'000};
  ReadLines(connection, question, asked);
  ReadStandins(connection, problem);

  std::set<std::string> too_large;
  for (const Row row : connection.Execute("select section from api.sections_too_large where saw = $1", {question.saw})) too_large.insert(row.Text("section"));
  std::set<std::pair<std::string, std::string>> ruled;
  const Result pieces = connection.Execute(
      "select c.* from api.candidates c join jsonb_to_recordset($1::jsonb) w (grade text, section text)"
      " on w.grade = c.grade and w.section = c.section order by c.length_nm, c.tag",
      {GroupsWanted(problem)});
  for (const Row row : pieces) {
    problem.pieces.push_back(PieceOf(row, cents_per_min, per_pull));
    allocator::Piece& piece = problem.pieces.back();
    asked.versions[piece.tag] = row.Int("version");
    if (too_large.contains(row.Text("section"))) piece.held = "too large for saw " + question.saw;
    if (ruled.emplace(piece.section, piece.grade).second) {
      problem.exceptions.push_back({piece.section, piece.grade, {asked.kerf, asked.trim, asked.grip, {row.Int("keep_nm")}}});
    }
  }
  snapshot.Commit();
  return asked;
}

std::string AimWord(allocator::Aim aim) {
  switch (aim) {
    case allocator::Aim::LeastMoney: return "least-money";
    case allocator::Aim::FewestBars: return "fewest-bars";
    case allocator::Aim::LeastMetres: return "least-metres";
    case allocator::Aim::DropsFirst: break;
  }
  return "drops-first";
}

}  // namespace heatkeep
