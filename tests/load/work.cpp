#include "tests/load/hands.h"
#include "tests/schema/small_shop.h"

// The pool is kept small, so that all want the same pieces: bars of 3 000 mm and what is cut from them, for lines of 290 mm.
namespace heatkeep {
namespace {

constexpr int kFew = 12;  // pieces that are free; fewer: another lorry comes
constexpr std::int64_t kTrim = Mm(10), kKerf = Mm(2), kGrip = Mm(60), kKeep = Mm(150), kPiece = Mm(290);

using Rows = std::map<std::string, std::int64_t>;

std::string AnyTag(Hands& hands, const std::string& from) {
  const Result rows = hands.See("select tag from " + from + " order by random() limit 1");
  return rows.empty() ? "" : rows.Only().Text("tag");
}

// A layout of some pieces from this one; null where it is too short.
Json LayoutOf(Hands& hands, const Row& piece) {
  const std::int64_t length = piece.Int("length_nm"), trim = piece.Int("ends") == 0 ? kTrim : 0;
  const std::int64_t count = hands.Dice(1, 3), kerf = count * kKerf + (trim > 0 ? kKerf : 0), left = length - trim - kerf - count * kPiece;
  if (left < kGrip) return nullptr;
  return {{"tag", piece.Text("tag")},
          {"version", piece.Int("version")},
          {"length_nm", length},
          {"trim_nm", trim},
          {"kerf_nm", kerf},
          {"left_nm", left},
          {"left", left >= kKeep ? "drop" : "scrap"},
          {"cuts", {{{"order", "O1"}, {"line", std::to_string(hands.Dice(1, 6) * 10)}, {"count", count}, {"length_nm", kPiece}}}}};
}

}  // namespace

void WorkAtTheDoor(Hands& hands) {
  if (hands.See("select count(*) as n from (select from api.stock_on_hand where state = 'on rack' and length_nm > 700000000 limit 40) x")
          .Only()
          .Int("n") < kFew) {
    Json body{{"note", hands.Word("N")}, {"supplier", "Vandrek"}, {"lines", Json::array()}};
    for (int line = 1; line <= 3; ++line)
      body["lines"].push_back(LineJson({.heat = "L" + std::to_string(hands.Dice(1, 9)), .length = 3000, .count = 2, .papers_state = "none"},
                                       std::to_string(line)));
    hands.DoBody("receive_delivery", body, [](const Json&) { return Rows{{"receipt_line", 3}, {"piece", 6}, {"receipt", 1}}; });
    return;
  }
  const std::string tag = AnyTag(hands, "(select tag from api.stock_on_hand where state = 'on rack') x");
  if (!tag.empty()) hands.Do("put_away", {tag, hands.Dice(0, 1) ? "B1-1" : "GATE"});
}

void WorkAtThePlan(Hands& hands) {
  const int what = hands.Dice(1, 10);
  if (what == 1) {
    const Result plans = hands.See("select plan_id from api.plans where state = 'live' order by random() limit 1");
    if (!plans.empty()) hands.Do("cancel_plan", {plans.Only().Int("plan_id"), "changed"});
  } else if (what == 2) {
    const std::string tag = AnyTag(hands, "api.promises where state = 'live'");
    if (!tag.empty()) hands.Do("unreserve", {tag, "needed elsewhere"});
  } else if (what == 3) {
    const std::string tag = AnyTag(hands, "api.candidates");
    if (!tag.empty())
      hands.DoBody("reserve", {{"tag", tag}, {"order", "O1"}, {"line", "10"}, {"count", 1}}, [](const Json&) {
        return Rows{{"promise", 1}};
      });
  } else {
    Json plan{{"aim", "drops-first"},    {"saw", "1"},
              {"bundled", false},        {"kerf_nm", kKerf},
              {"trim_nm", kTrim},        {"grip_nm", kGrip},
              {"status", "proved"},      {"ended_by", "proof"},
              {"proof", "by hand"},      {"value", Json::object()},
              {"bound", Json::object()}, {"layouts", Json::array()},
              {"shorts", Json::array()}};
    // the shortest are everybody's choice; in any order
    for (
        const Row row : hands.See(
            "select * from (select tag, version, length_nm, ends from api.candidates order by length_nm limit 6) x order by random() limit 3"))
      if (Json layout = LayoutOf(hands, row); !layout.is_null()) plan["layouts"].push_back(std::move(layout));
    const auto layouts = static_cast<std::int64_t>(plan["layouts"].size());
    if (layouts > 0)
      hands.DoBody("commit_plan", plan, [layouts](const Json&) { return Rows{{"plan", 1}, {"layout", layouts}, {"promise", layouts}}; });
  }
}

void WorkAtTheSaw(Hands& hands) {
  const Result found = hands.See(
      "select f.tag, f.plan_id, f.ends, f.left_nm, c.order_no, c.line_no, c.count from api.plan_layouts f join api.plan_cuts c using (plan_id, layout_no) where f.state = 'promised'"
      " order by random() limit 1");
  if (found.empty()) return;
  const Row row = found.Only();
  const std::string tag = row.Text("tag");
  if (hands.Dice(1, 25) == 1) {
    hands.Do("report_missing", {tag, "not in its place"});
    return;
  }
  const Json pulled = hands.Do("pull", {tag, "1", row.Int("plan_id")});
  if (pulled.is_null()) return;
  const int how = hands.Dice(1, 12);
  std::int64_t count = row.Int("count"), rejects = 0;
  Json strokes = Json::array();
  if (row.Int("ends") == 0) strokes.push_back(Trim());
  if (how == 1) {
    hands.DoBody(
        "record_cut",
        {{"tag", tag}, {"saw", "1"}, {"strokes", Json::array()}, {"finish", true}, {"reason", "put back"}, {"left", SamePiece("B1-1")}});
    return;
  }
  if (how <= 3) {
    --count;
    rejects = 1;
    strokes.push_back({{"class", "reject"},
                       {"order", "O1"},
                       {"line", row.Text("line_no")},
                       {"count", 1},
                       {"length_nm", kPiece},
                       {"kerf_nm", kKerf},
                       {"fault", "out of square"}});
  }
  if (count > 0) strokes.push_back(Good(static_cast<int>(count), 290, row.Text("line_no"), "O1"));
  const std::int64_t left = row.Int("left_nm");
  const std::int64_t made = count + rejects + (row.Int("ends") == 0 ? 1 : 0), drops = left >= kKeep ? 1 : 0;
  hands.DoBody("record_cut",
               {{"tag", tag},
                {"saw", "1"},
                {"strokes", strokes},
                {"finish", true},
                {"reason", "as it came"},
                {"left", drops ? Json{{"fate", "drop"}, {"place", "B1-1"}} : Json{{"fate", "scrap"}}}},
               [made, drops](const Json&) {
                 return Rows{{"stroke", made}, {"piece", drops}, {"cut", 1}};
               });
}

void WorkOfQuality(Hands& hands) {
  const std::string tag = AnyTag(hands, "(select tag from api.stock_on_hand where state in ('on rack', 'at saw')) x");
  if (tag.empty()) return;
  switch (hands.Dice(1, 4)) {
    case 1:
      if (!hands.Do("quarantine", {tag, "looked at"}).is_null()) hands.Do("release", {tag, "nothing found"});
      break;
    case 2: {
      const Result open = hands.See("select conflict_id from api.conflicts where closed_by is null order by random() limit 1");
      if (!open.empty()) hands.Do("close_conflict", {open.Only().Int("conflict_id"), "looked at", true});
      break;
    }
    default: {
      const bool of_heat = hands.Dice(1, 3) == 1;
      const Json held = hands.Do("place_hold",
                                 {of_heat                ? "heat"
                                      : hands.Dice(0, 1) ? "piece"
                                                         : "lot",
                                  of_heat ? "L" + std::to_string(hands.Dice(1, 9)) : tag, std::nullopt, "letter of the mill"},
                                 [](const Json&) {
                                   return Rows{{"hold", 1}};
                                 });
      if (!held.is_null()) hands.Do("lift_hold", {held["hold_id"].get<std::int64_t>(), "nothing found"});
    }
  }
}

void WorkAtTheCount(Hands& hands) {
  if (hands.DoBody("freeze_place", {{"place", "GATE"}}).is_null()) {
    const Result lost = hands.See("select tag, length_nm from api.stock_on_hand where state = 'missing' order by random() limit 1");
    if (!lost.empty())
      hands.DoBody("found_again",
                   {{"tag", lost.Only().Text("tag")},
                    {"read", lost.Only().Text("tag")},
                    {"place", "B1-1"},
                    {"length_nm", lost.Only().Int("length_nm")}});
    return;
  }
  Json seen = Json::array();
  for (const Row row : hands.See("select tag from api.stock_on_hand where place = 'GATE'")) seen.push_back({{"tag", row.Text("tag")}});
  hands.DoBody("count_seen", {{"place", "GATE"}, {"seen", seen}, {"done", true}});
  hands.DoBody("unfreeze_place", {{"place", "GATE"}, {"reason", "counted again tomorrow"}});
}

void WorkAtTheRamp(Hands& hands) {
  const int what = hands.Dice(1, 8);
  if (what == 1) {
    const std::string tag = AnyTag(hands, "api.candidates");
    if (!tag.empty())
      hands.DoBody("sell", {{"tags", {tag}}, {"order", "S1"}, {"customer", "Pallant"}, {"note", hands.Word("V")}}, [](const Json&) {
        return Rows{{"metal_out", 1}, {"shipment", 1}};
      });
    return;
  }
  Json lines = Json::array();
  for (const int line : {hands.Dice(1, 3), hands.Dice(4, 6)}) {
    Json heats = Json::array();
    for (int n = 1; n <= 9; ++n) heats.push_back("L" + std::to_string(n));
    lines.push_back({{"order", "O1"}, {"line", std::to_string(line * 10)}, {"count", hands.Dice(1, 2)}, {"heats", heats}});
  }
  hands.DoBody("ship", {{"note", hands.Word("S")}, {"customer", "Pallant"}, {"lines", lines}}, [](const Json&) {
    return Rows{{"shipment", 1}, {"shipment_line", 2}};
  });
}

}  // namespace heatkeep
