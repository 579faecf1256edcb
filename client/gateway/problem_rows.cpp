#include "client/gateway/problem_rows.h"

#include <algorithm>
#include <set>
#include <stdexcept>

#include "schema/terms/wide.h"

namespace heatkeep {
namespace {

using allocator::FineMoney;
using allocator::PaperType;

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

void ReadStandins(Connection& connection, allocator::Problem& problem) {
  const Result grades = connection.Execute("select asked, offered from api.grade_standins order by asked, offered");
  for (const Row row : grades) problem.grades.push_back({row.Text("asked"), row.Text("offered"), "", {}});
  const Result sections = connection.Execute("select asked, offered from api.section_standins order by asked, offered");
  for (const Row row : sections) problem.sections.push_back({row.Text("asked"), row.Text("offered"), "", {}});
}

// What is asked for, and what may stand in for it.
template <class Standins>
std::set<std::string> Offered(const Standins& standins, const std::string& asked) {
  std::set<std::string> offered{asked};
  for (const auto& s : standins)
    if (s.asked == asked) offered.insert(s.given);
  return offered;
}

// The groups that can serve the lines.
std::string GroupsWanted(const allocator::Problem& problem) {
  std::set<std::pair<std::string, std::string>> groups;
  for (const allocator::Line& line : problem.lines)
    for (const std::string& grade : Offered(problem.grades, line.grade))
      for (const std::string& section : Offered(problem.sections, line.section)) groups.emplace(grade, section);
  Json wanted = Json::array();
  for (const auto& [grade, section] : groups) wanted.push_back({{"grade", grade}, {"section", section}});
  return wanted.dump();
}

// Metal of the lines' own that lies here and waits for somebody's word: long enough for one piece, and not known to have too weak papers.
void AddWaitingMetal(Connection& connection, allocator::Problem& problem) {
  const Result pieces = connection.Execute(
      "select s.* from api.stock_on_hand s join jsonb_to_recordset($1::jsonb) w (grade text, section text)"
      " on w.grade = s.grade and w.section = s.section where s.waits is not null and s.state = 'on rack'",
      {GroupsWanted(problem)});
  for (const Row row : pieces)
    for (allocator::Line& line : problem.lines)
      if (row.Text("section") == line.section && row.Text("grade") == line.grade && OwnerOf(row.Text("owner")) == line.owner &&
          (line.condition.empty() || row.Text("condition") == line.condition) && row.Int("length_nm") >= line.CutLength().nm &&
          (row.Text("document") == "papers awaited" || PaperOf(row.Text("papers")) >= line.papers))
        ++line.waits[row.Text("waits")];
}

}  // namespace

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
  line.tolerance_plus = {row.Int("tolerance_plus_nm")};
  line.quantity = static_cast<int>(row.Int("open"));
  line.priority = static_cast<int>(row.Int("priority"));
  line.due = row.TextOrNone("due");
  if (const auto wish = row.OptionalText("one_heat")) line.one_heat = OneHeatName(row.Text("cut_list"), *wish);
  line.max_heats = static_cast<int>(row.OptionalInt("max_heats").value_or(0));
  line.papers = PaperOf(row.Text("papers"));
  return line;
}

allocator::Piece PieceOf(const Row& row, const ShopRules& shop) {
  allocator::Piece piece;
  piece.tag = row.Text("tag");
  piece.kind = row.Text("kind") == "bar" ? allocator::PieceKind::Bar : allocator::PieceKind::Drop;
  piece.section = row.Text("section");
  piece.grade = row.Text("grade");
  piece.condition = row.Text("condition");
  if (!row.IsNull("heat")) piece.heat = HeatName(row.Text("heat"), row.Text("mill"));
  piece.owner = OwnerOf(row.Text("owner"));
  piece.place = row.TextOrNone("place");
  piece.length = {row.Int("length_nm")};
  piece.doubt = {row.Int("doubt_nm")};
  piece.square_ends = static_cast<int>(row.Int("ends"));
  piece.papers = PaperOf(row.Text("cut_for"));
  piece.risk = row.TextOrNone("risk");
  const std::int64_t area = row.Int("area_um2"), density = row.Int("density_kg_m3");
  piece.mass = {area * density};
  piece.costs.per_metre = PerMetre(area, density, row.OptionalInt("cents_per_tonne").value_or(0));
  piece.costs.scrap_per_metre = PerMetre(area, density, row.OptionalInt("scrap_cents_per_tonne").value_or(0));
  if (const auto rate = row.OptionalInt("mm2_per_min")) piece.costs.per_cut = PerCut(area, *rate, shop.cents_per_min);
  piece.costs.per_pull = shop.per_pull;
  return piece;
}

std::string HeatName(const std::string& heat, const std::string& mill) { return heat + " of " + mill; }

std::string OneHeatName(const std::string& cut_list, const std::string& wish) { return cut_list + ": " + wish; }

ShopRules ReadShopRules(Connection& connection, const std::string& saw_name, bool bundled) {
  const Result saws = connection.Execute("select * from api.saws where saw = $1", {saw_name});
  if (saws.empty()) throw std::invalid_argument("no saw is called \"" + saw_name + "\"");
  const Row saw = saws.Only();
  ShopRules shop;
  shop.saw = saw_name;
  shop.bundled = bundled;
  shop.kerf = {saw.Int("kerf_nm")};
  shop.trim = {saw.Int("trim_nm")};
  shop.grip = {saw.Int(bundled ? "grip_bundled_nm" : "grip_nm")};
  shop.widest = {saw.Int("max_section_nm")};
  shop.bars_at_a_time = static_cast<int>(saw.OptionalInt("bundle_bars").value_or(0));
  const Result too_large = connection.Execute("select section from api.sections_too_large where saw = $1", {saw_name});
  for (const Row row : too_large) shop.too_large.insert(row.Text("section"));
  shop.cents_per_min = SettingOr(connection, "saw_cents_per_minute", 80);
  shop.per_pull = {SettingOr(connection, "cents_per_pull", 150) * 1'000'000};
  shop.per_setup = {SettingOr(connection, "cents_per_setup", 200) * 1'000'000};
  shop.per_extra_heat = {SettingOr(connection, "cents_per_extra_heat", 800) * 1'000'000};
  shop.plain_below = {SettingOr(connection, "cents_plain_choice", 200) * 1'000'000};
  return shop;
}

void AddShopRules(const ShopRules& shop, BookProblem& asked) {
  asked.bundled = shop.bundled;
  asked.kerf = shop.kerf;
  asked.trim = shop.trim;
  asked.grip = shop.grip;
  asked.widest = shop.widest;
  asked.bars_at_a_time = shop.bars_at_a_time;
  asked.plain_below = shop.plain_below;
  asked.problem.rules = {shop.kerf, shop.trim, shop.grip, {300 * kNmPerMm}};
  asked.problem.per_setup = shop.per_setup;
  asked.problem.per_extra_heat = shop.per_extra_heat;
}

int AddPiece(const Row& row, const ShopRules& shop, BookProblem& asked) {
  allocator::Problem& problem = asked.problem;
  problem.pieces.push_back(PieceOf(row, shop));
  allocator::Piece& piece = problem.pieces.back();
  asked.versions[piece.tag] = row.Int("version");
  if (shop.too_large.contains(piece.section)) piece.held = "too large for saw " + shop.saw;
  const auto ruled = [&](const allocator::GroupException& e) { return e.section == piece.section && e.grade == piece.grade; };
  if (std::none_of(problem.exceptions.begin(), problem.exceptions.end(), ruled))
    problem.exceptions.push_back({piece.section, piece.grade, {shop.kerf, shop.trim, shop.grip, {row.Int("keep_nm")}}});
  return static_cast<int>(problem.pieces.size()) - 1;
}

void AddFreeMetal(Connection& connection, const ShopRules& shop, BookProblem& asked) {
  ReadStandins(connection, asked.problem);
  const Result pieces = connection.Execute(
      "select c.* from api.candidates c join jsonb_to_recordset($1::jsonb) w (grade text, section text)"
      " on w.grade = c.grade and w.section = c.section order by c.length_nm, c.tag",
      {GroupsWanted(asked.problem)});
  for (const Row row : pieces) AddPiece(row, shop, asked);
  AddWaitingMetal(connection, asked.problem);
}

void KeepToSettledHeats(Connection& connection, const HeatsElsewhere& elsewhere, allocator::Problem& problem) {
  std::map<std::string, std::set<std::string>> settled;  // wish -> heats
  const auto of_line = [](const std::string& order, const std::string& line) { return "line " + order + "\n" + line; };
  const Result rows =
      connection.Execute("select distinct cut_list, order_no, line_no, one_heat, mill, heat, plan_id, layout_no from api.line_heats");
  for (const Row row : rows) {
    if (!elsewhere(row.OptionalInt("plan_id"), row.OptionalInt("layout_no")) || row.IsNull("heat")) continue;
    const std::string heat = HeatName(row.Text("heat"), row.Text("mill"));
    settled[of_line(row.Text("order_no"), row.Text("line_no"))].insert(heat);
    if (const auto wish = row.OptionalText("one_heat")) settled[OneHeatName(row.Text("cut_list"), *wish)].insert(heat);
  }
  if (settled.empty()) return;
  std::set<std::string> heats;
  for (const allocator::Piece& piece : problem.pieces) heats.insert(piece.heat);
  const auto only = [&](allocator::Line& line, const std::set<std::string>& good) {
    for (const std::string& heat : heats)
      if (!good.contains(heat)) line.refused_heats.push_back(heat);
  };
  for (allocator::Line& line : problem.lines) {
    const auto wish = settled.find(line.one_heat), own = settled.find(of_line(line.order, line.line));
    if (!line.one_heat.empty() && wish != settled.end()) only(line, wish->second);
    if (line.max_heats == 0 || own == settled.end()) continue;
    const int more = line.max_heats - static_cast<int>(own->second.size());
    if (more > 0) line.max_heats = more;
    else only(line, own->second);
  }
}

PaperType PaperOf(const std::string& word) {
  if (word == "2.1") return PaperType::Type21;
  if (word == "2.2") return PaperType::Type22;
  if (word == "3.1") return PaperType::Type31;
  return word == "3.2" ? PaperType::Type32 : PaperType::None;
}

PastDemand ReadPastDemand(Connection& connection) {
  PastDemand past;
  const Result rows = connection.Execute("select * from api.past_lines order by day, order_no, line_no");
  for (const Row row : rows) {
    if (past.by_group.empty()) past.first_day = static_cast<int>(row.Int("day"));
    past.today = static_cast<int>(row.Int("today"));
    past.by_group[{row.Text("section"), row.Text("grade")}].push_back({row.Text("order_no"),
                                                                       row.Text("line_no"),
                                                                       static_cast<int>(row.Int("day")),
                                                                       {row.Int("cut_nm")},
                                                                       static_cast<int>(row.Int("quantity")),
                                                                       PaperOf(row.Text("papers")),
                                                                       OwnerOf(row.Text("owner")),
                                                                       row.Bool("one_heat")});
  }
  past.cents_return = SettingOr(connection, "cents_per_return", 267);
  past.cents_shelf_year = SettingOr(connection, "cents_per_shelf_year", 300);
  return past;
}

}  // namespace heatkeep
