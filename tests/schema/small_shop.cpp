#include "tests/schema/small_shop.h"

namespace heatkeep {

Json Round(std::int64_t mm) { return {{"shape", "round"}, {"dim1_nm", Mm(mm)}, {"label", "round " + std::to_string(mm)}}; }

Json LineJson(const Bars& b, const std::string& line) {
  Json n{{"line", line},
         {"mill", b.mill},
         {"heat", b.heat},
         {"read_from", b.read_from},
         {"grade", b.grade},
         {"section", Round(b.round)},
         {"condition", b.condition},
         {"length_nm", Mm(b.length)},
         {"count", b.count},
         {"place", b.place},
         {"papers_state", b.papers_state},
         {"owner", b.owner},
         {"ends", b.ends},
         {"doubt_nm", Mm(b.doubt)},
         {"kind", b.kind},
         {"mark", "last"},
         {"old_tag", b.old_tag}};
  if (b.slip_count) n["slip_count"] = *b.slip_count;
  if (b.weighed_g) n["weighed_g"] = *b.weighed_g;
  return n;
}

Json Good(int count, std::int64_t length, const std::string& line, const std::string& order, std::int64_t kerf) {
  return {{"class", "good"}, {"order", order}, {"line", line}, {"count", count}, {"length_nm", Mm(length)}, {"kerf_nm", Mm(kerf)}};
}
Json Trim() { return {{"class", "trim"}, {"length_nm", Mm(10)}, {"kerf_nm", Mm(2)}}; }
Json Fault(const std::string& word, std::int64_t length, const std::string& fault, int count, std::int64_t kerf) {
  return {{"class", word}, {"length_nm", Mm(length)}, {"kerf_nm", Mm(kerf)}, {"fault", fault}, {"count", count}};
}
Json DropLeft(std::int64_t length, const std::string& place) { return {{"fate", "drop"}, {"length_nm", Mm(length)}, {"place", place}}; }
Json ScrapLeft() { return {{"fate", "scrap"}, {"bin", "bin 2"}}; }
Json SamePiece(const std::string& place) { return {{"fate", "same piece"}, {"place", place}}; }

Json Answer(Connection& who, const std::string& sql, const std::vector<Param>& params) {
  return Json::parse(who.Execute("select (" + sql + ")::text as answer", params).Only().Text("answer"));
}

Json Do(Connection& who, const std::string& deed, const std::vector<Param>& params) {
  std::vector<Param> all{NewRequest().text};
  std::string marks = "$1";
  for (const Param& p : params) {
    all.push_back(p);
    marks += ", $" + std::to_string(all.size());
  }
  const Json answer = Answer(who, "api." + deed + "(" + marks + ")", all);
  who.TellOfDeed();  // as the gateway does: a desk that listens hears of it at once
  return answer;
}

namespace {

Json SawJson(const std::string& name, std::int64_t most, std::int64_t trim, std::int64_t grip) {
  return {{"saw", name},      {"place", "SAW-" + name}, {"max_section_nm", Mm(most)}, {"band", "34 x 1.1"},
          {"kerf_nm", Mm(2)}, {"trim_nm", Mm(trim)},    {"grip_nm", Mm(grip)},        {"grip_bundle_nm", Mm(grip == 0 ? 0 : 120)}};
}

Json PlaceJson(const std::string& name, const std::string& kind) { return {{"place", name}, {"site", "main"}, {"kind", kind}}; }

Json GradeJson(const std::string& name, const std::string& number, int density) {
  return {{"designation", name},          {"number", number},     {"family", "steel"}, {"standard", "EN"}, {"density_kg_m3", density},
          {"density_source", "invented"}, {"source", "invented"}, {"evidence", "none"}};
}

Json TheShop() {
  Json high = PlaceJson("B1-1", "rack"), low = PlaceJson("B1-2", "rack"), light = PlaceJson("B1-3", "rack");
  high["max_length_nm"] = Mm(6500);
  low["max_length_nm"] = Mm(1000);
  light["max_mass_g"] = 100'000;
  const auto customer = [](const char* name) { return Json{{"name", name}, {"customer", true}}; };
  const auto mill = [](const char* name) { return Json{{"name", name}, {"mill", true}, {"supplier", true}}; };
  return {{"parties", {mill("Vandrek"), mill("Kestholm"), customer("Pallant"), customer("Drewe"), customer("Ister")}},
          {"sites", Json::array({{{"site", "main"}, {"letter", "A"}, {"offline_letter", "Q"}}})},
          {"places",
           {high, low, light, PlaceJson("GATE", "gate"), PlaceJson("SAW-1", "saw"), PlaceJson("SAW-2", "saw"), PlaceJson("SAW-3", "saw"),
            PlaceJson("QUAR", "quarantine")}},
          {"saws", {SawJson("1", 260, 10, 60), SawJson("2", 500, 10, 60), SawJson("3", 260, 0, 0)}}};
}

}  // namespace

SmallShop::SmallShop()
    : clerk(book.As("clerk")), planner(book.As("planner")), saw(book.As("saw")), quality(book.As("quality")), owner(book.As("owner")),
      admin(book.Admin()) {
  const Json grades{GradeJson("42CrMo4", "1.7225", 7850), GradeJson("C45E", "1.1191", 7850), GradeJson("X2CrNiMo17-12-2", "1.4404", 8000)};
  Do(owner, "define_grade", {grades.dump()});
  Do(owner, "define_shop", {TheShop().dump()});
  const Json rules{{"keep", Json::array({{{"keep_nm", Mm(150)}}})}, {"settings", {{"tape_doubt_nm", "0"}, {"heat_read_back", "no"}}}};
  Do(owner, "set_rules", {rules.dump()});
}

Json SmallShop::Deliver(const std::string& note, const std::vector<Bars>& lines) {
  Json body{{"note", note}, {"supplier", "Vandrek"}, {"lines", Json::array()}};
  for (const Bars& line : lines) body["lines"].push_back(LineJson(line, std::to_string(body["lines"].size() + 1)));
  return Do(clerk, "receive_delivery", {body.dump()});
}

std::vector<std::string> SmallShop::Receive(const Bars& bars) {
  const std::string note = "N" + std::to_string(Number("select count(*) + 1 as n from book.receipt"));
  return Deliver(note, {bars})["lines"][0]["tags"].get<std::vector<std::string>>();
}

Json SmallShop::Certify(const std::string& heat, const Bars& as, const std::string& type) {
  const std::string number = "C" + std::to_string(Number("select count(*) + 1 as n from book.document"));
  const Json body{{"issuer", as.mill},
                  {"number", number},
                  {"type", type},
                  {"issued_on", "2026-01-02"},
                  {"lots",
                   Json::array({{{"heat", heat},
                                 {"section", Round(as.round)},
                                 {"condition", as.condition},
                                 {"grade", as.grade},
                                 {"heat_analysis", {{"C", "410000"}}}}})}};
  return Do(quality, "file_document", {body.dump()});
}

std::vector<std::string> SmallShop::ReceiveCertified(const Bars& bars) {
  const std::vector<std::string> tags = Receive(bars);
  if (Word("select papers_state::text as w from book.lot where heat = $1 order by lot_id desc limit 1", {bars.heat}) != "here")
    Certify(bars.heat, bars);
  return tags;
}

Json SmallShop::Expect(const std::vector<int>& bars) {
  Json lines = Json::array();
  for (const int quantity : bars)
    lines.push_back({{"line", std::to_string(10 * (lines.size() + 1))},
                     {"section", Round(80)},
                     {"grade", "42CrMo4"},
                     {"condition", "+QT"},
                     {"length_nm", Mm(6000)},
                     {"quantity", quantity},
                     {"due", "2031-03-04"},
                     {"papers", "3.1"}});
  return Do(planner, "expect_delivery", {Json{{"purchase_order", "PO-17"}, {"supplier", "Vandrek"}, {"lines", lines}}.dump()});
}

Json SmallShop::AddLine(const Wanted& wanted) { return AddLines({wanted}); }

Json SmallShop::AddLines(const std::vector<Wanted>& wanted) {
  const std::string name = "L" + std::to_string(Number("select count(*) + 1 as n from book.cut_list"));
  Json body{{"name", name}, {"lines", Json::array()}};
  for (const Wanted& w : wanted) {
    Json n{{"order", w.order},
           {"line", w.line},
           {"customer", w.customer},
           {"section", Round(w.round)},
           {"grade", w.grade},
           {"condition", w.condition},
           {"length_nm", Mm(w.length)},
           {"quantity", w.quantity},
           {"papers", w.papers},
           {"owner", w.owner},
           {"one_heat", w.one_heat},
           {"tolerance_minus_nm", Mm(w.minus)},
           {"tolerance_plus_nm", Mm(w.plus)}};
    if (w.max_heats) n["max_heats"] = *w.max_heats;
    body["lines"].push_back(n);
  }
  return Do(planner, "add_cut_list", {body.dump()});
}

Json SmallShop::PlanFor(const std::string& tag, const std::vector<Cuts>& cuts, const std::string& saw_name) {
  const Row piece = admin.Execute("select length_nm, ends, version, owner_id from book.piece where tag = $1", {tag}).Only();
  const Row on = admin.Execute("select kerf_nm, trim_nm, grip_nm from api.saws where saw = $1", {saw_name}).Only();
  const bool rough = piece.Int("ends") == 0 && on.Int("trim_nm") > 0;
  const std::int64_t trim = rough ? on.Int("trim_nm") : 0;
  std::int64_t kerf = rough ? on.Int("kerf_nm") : 0, left = piece.Int("length_nm") - trim - kerf;
  Json list = Json::array();
  for (const Cuts& c : cuts) {
    kerf += c.count * on.Int("kerf_nm");
    left -= c.count * (Mm(c.length) + on.Int("kerf_nm"));
    list.push_back({{"order", c.order}, {"line", c.line}, {"count", c.count}, {"length_nm", Mm(c.length)}});
  }
  const char* fate = left == 0 ? "none" : left >= Mm(150) || piece.Int("owner_id") != 0 ? "drop" : "scrap";
  const Json layout{{"tag", tag},
                    {"version", piece.Int("version")},
                    {"length_nm", piece.Int("length_nm")},
                    {"trim_nm", trim},
                    {"kerf_nm", kerf},
                    {"left_nm", left},
                    {"left", fate},
                    {"cuts", list}};
  return {{"aim", "drops-first"},
          {"saw", saw_name},
          {"bundled", false},
          {"kerf_nm", on.Int("kerf_nm")},
          {"trim_nm", on.Int("trim_nm")},
          {"grip_nm", on.Int("grip_nm")},
          {"status", "proved"},
          {"ended_by", "proof"},
          {"proof", "by hand"},
          {"value", Json::object()},
          {"bound", Json::object()},
          {"layouts", Json::array({layout})},
          {"shorts", Json::array()}};
}

Json SmallShop::Promise(const std::string& tag, const std::vector<Cuts>& cuts, const std::string& saw_name) {
  return Do(planner, "commit_plan", {PlanFor(tag, cuts, saw_name).dump()});
}

Json SmallShop::Pull(const std::string& tag, const std::string& saw_name) { return Do(saw, "pull", {tag, saw_name}); }

void SmallShop::Fetch(const std::string& tag, const std::vector<Cuts>& cuts) {
  ASSERT_TRUE(Promise(tag, cuts).contains("plan"));
  ASSERT_EQ(Pull(tag).value("tag", ""), tag);
}

Json SmallShop::Record(const std::string& tag, const Json& strokes, const Json& left, const Json& more) {
  Json body{{"tag", tag}, {"saw", "1"}, {"strokes", strokes.is_object() ? Json::array({strokes}) : strokes}, {"finish", !left.is_null()}};
  if (!left.is_null()) body["left"] = left;
  body.update(more);
  return Do(saw, "record_cut", {body.dump()});
}

Json SmallShop::Hold(const std::string& heat) { return Do(quality, "place_hold", {"heat", heat, std::nullopt, "letter of the mill"}); }

Json SmallShop::Ship(const std::string& note, int count, const std::string& line, const std::string& order) {
  const Json body{{"note", note}, {"customer", "Pallant"}, {"lines", Json::array({{{"order", order}, {"line", line}, {"count", count}}})}};
  return Do(planner, "ship", {body.dump()});
}

std::int64_t SmallShop::Number(const std::string& sql, const std::vector<Param>& params) {
  return admin.Execute(sql, params).Only().Int("n");
}
std::string SmallShop::Word(const std::string& sql, const std::vector<Param>& params) {
  return admin.Execute(sql, params).Only().OptionalText("w").value_or("");
}
std::int64_t SmallShop::LengthOf(const std::string& tag) { return Number("select length_nm as n from book.piece where tag = $1", {tag}); }
std::int64_t SmallShop::Balance(const std::string& heat, const std::string& word) {
  const Result rows =
      quality.Execute("select sum(length_nm)::bigint as n from api.metal_balance('heat', $1) where class = $2", {heat, word});
  return rows.Only().OptionalInt("n").value_or(0);
}

std::string SmallShop::Raw(const std::string& script, const std::string& deed) {
  const auto run = [&](const std::string& before) {
    Connection fresh = book.Admin();
    return Code([&] {
      Transaction all(fresh);
      fresh.ExecuteScript(before + "select set_config('heatkeep.deed', " + fresh.QuoteText(deed) + ", true); " + script);
      all.Commit();
    });
  };
  const std::string as_book = run("set local role heatkeep_book; "), as_superuser = run("");
  return as_book == as_superuser ? as_book : as_superuser + "/" + as_book;
}

std::vector<std::string> SmallShop::Broken() {
  std::vector<std::string> words;
  for (const Row row : quality.Execute("select * from api.verify_book() where not ok"))
    if (row.Text("check") != "the server keeps what it says") words.push_back(row.Text("check") + ": " + row.Text("detail"));
  return words;
}

int ShopTest::Happenings(const std::string& tag, const std::string& deed) {
  return static_cast<int>(shop.Number("select count(*) as n from api.piece_history where tag = $1 and deed = $2", {tag, deed}));
}

void ShopTest::Behind(const std::string& sql) {
  spoilt = true;
  shop.book.Admin().ExecuteScript("set session_replication_role = replica; " + sql);
}

std::vector<std::string> ShopTest::Failing(const std::string& verify) {
  std::vector<std::string> names;
  for (const Row row : shop.quality.Execute("select * from api." + verify + "() where not ok"))
    if (row.Text("check") != "the server keeps what it says") names.push_back(row.Text("check"));
  return names;
}

void ShopTest::ExpectBalance(const std::string& heat, const std::vector<std::pair<std::string, std::int64_t>>& classes) {
  for (const auto& [word, mm] : classes) EXPECT_EQ(shop.Balance(heat, word), Mm(mm)) << word;
}

void ShopTest::TearDown() {
  if (spoilt) return;
  EXPECT_EQ(shop.Broken(), std::vector<std::string>());
}

}  // namespace heatkeep
