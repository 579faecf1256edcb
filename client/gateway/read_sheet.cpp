#include <algorithm>
#include <map>
#include <set>

#include "client/gateway/readings.h"

namespace heatkeep {
namespace {

LeftFate FateOf(const std::string& word) {
  if (word == "drop") return LeftFate::Drop;
  return word == "scrap" ? LeftFate::Scrap : LeftFate::None;
}

SheetBlock BlockOf(const Row& row, Length kerf, Length grip) {
  SheetBlock b;
  b.place = row.TextOrNone("place");
  b.tag = row.Text("tag");
  b.kind = row.Text("kind");
  b.section = row.Text("section");
  b.grade = row.TextOrNone("grade");
  b.condition = row.Text("condition");
  b.mill = row.TextOrNone("mill");
  b.heat = row.TextOrNone("heat");
  b.papers = row.Text("papers");
  if (row.Text("owner") != "ours") b.owner = row.Text("owner");
  b.mark_end = row.Text("mark_end");
  b.otherwise = row.TextOrNone("otherwise");
  b.state = row.Text("state");
  b.stop = row.TextOrNone("stop");
  b.risk = row.TextOrNone("risk");
  b.length = {row.Int("length_nm")};
  b.doubt = {row.Int("doubt_nm")};
  b.mass = {row.Int("mass_g")};
  b.trim = {row.Int("trim_nm")};
  b.kerf_each = kerf;
  b.kerf_all = {row.Int("kerf_nm")};
  b.grip = grip;
  b.left = {row.Int("left_nm")};
  b.fate = FateOf(row.Text("left_fate"));
  b.left_mass = {row.Int("left_mass_g")};
  b.bundle = static_cast<int>(row.Int("bars"));
  b.bundle_no = static_cast<int>(row.OptionalInt("bundle_no").value_or(0));
  b.made_up = row.Bool("made_up");
  b.area = {row.Int("area_um2")};
  if (const auto begun = row.OptionalInt("begun_nm")) b.begun = Length{*begun};
  if (const auto rate = row.OptionalInt("mm2_per_min")) b.rate = CuttingRate{*rate};
  return b;
}

SheetCut CutOf(const Row& row) {
  SheetCut c;
  c.order = row.Text("order_no");
  c.line = row.Text("line_no");
  c.customer = row.TextOrNone("customer");
  c.count = static_cast<int>(row.Int("count"));
  c.set = {row.Int("set_nm")};
  c.nominal = {row.Int("nominal_nm")};
  c.face = {row.Int("face_nm")};
  c.tolerance_minus = {row.Int("tolerance_minus_nm")};
  c.tolerance_plus = {row.Int("tolerance_plus_nm")};
  c.one_heat = !row.IsNull("one_heat");
  c.max_heats = static_cast<int>(row.OptionalInt("max_heats").value_or(0));
  return c;
}

}  // namespace

std::optional<Sheet> ReadSheet(Connection& connection, std::int64_t plan) {
  const Result head = connection.Execute("select * from api.plans where plan_id = $1", {plan});
  if (head.empty()) return std::nullopt;
  const Row p = head.Only();
  Sheet sheet;
  sheet.number = std::to_string(plan);
  sheet.saw = p.Text("saw");
  sheet.due = p.TextOrNone("due");
  sheet.made_at = p.TextOrNone("made_at");
  sheet.made_by = p.Text("made_by");
  sheet.proof = p.Text("proof");
  sheet.bundled = p.Bool("bundled");
  sheet.kerf = {p.Int("kerf_nm")};
  sheet.trim = {p.Int("trim_nm")};
  sheet.grip = {p.Int("grip_nm")};
  sheet.lift_limit = {std::stoll(ReadSetting(connection, "lift_limit_g", "25000"))};

  std::map<std::int64_t, std::size_t> by_layout;
  const Result blocks =
      connection.Execute("select * from api.plan_layouts where plan_id = $1 and state <> 'dropped' order by walk, place, tag", {plan});
  for (const Row row : blocks) {
    by_layout[row.Int("layout_no")] = sheet.blocks.size();
    sheet.blocks.push_back(BlockOf(row, sheet.kerf, sheet.grip));
    sheet.blocks.back().stays = sheet.grip.nm > 0 ? sheet.grip : sheet.trim;
    sheet.blocks.back().block = static_cast<int>(sheet.blocks.size());
  }
  std::set<std::string> one_heat;
  std::map<std::string, int> counted;  // done of a piece's line, over its runs
  const Result cuts = connection.Execute("select * from api.plan_cuts where plan_id = $1 order by layout_no, seq", {plan});
  for (const Row row : cuts) {
    const auto at = by_layout.find(row.Int("layout_no"));
    if (at == by_layout.end()) continue;
    SheetCut& cut = sheet.blocks[at->second].cuts.emplace_back(CutOf(row));
    int& before = counted[sheet.blocks[at->second].tag + ' ' + cut.order + '/' + cut.line];
    cut.done = std::clamp(static_cast<int>(row.Int("done")) - before, 0, cut.count);
    before += cut.done;
    if (!row.IsNull("one_heat")) one_heat.insert(row.Text("order_no") + "/" + row.Text("line_no"));
  }
  if (!one_heat.empty())
    sheet.one_heat = one_heat.size() == 1 ? "ONE HEAT: " + *one_heat.begin() : "ONE HEAT in " + std::to_string(one_heat.size()) + " lines";
  const Result shorts = connection.Execute("select * from api.plan_shorts where plan_id = $1 order by order_no, line_no", {plan});
  for (const Row row : shorts) {
    sheet.shorts.push_back({row.Text("order_no"),
                            row.Text("line_no"),
                            row.Text("section"),
                            row.Text("grade"),
                            static_cast<int>(row.Int("missing")),
                            {row.Int("length_nm")},
                            row.Text("why")});
  }
  return sheet;
}

std::vector<std::string> ReadDropped(Connection& connection, std::int64_t plan) {
  std::vector<std::string> tags;
  const Result rows = connection.Execute(
      "select tag from api.plan_layouts f where plan_id = $1 and state = 'dropped' and not exists"
      " (select from api.plan_layouts o where o.plan_id = f.plan_id and o.tag = f.tag and o.state <> 'dropped') order by walk, place, tag",
      {plan});
  for (const Row row : rows) tags.push_back(row.Text("tag"));
  return tags;
}

}  // namespace heatkeep
