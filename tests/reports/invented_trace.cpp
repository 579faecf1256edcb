#include "tests/reports/invented_trace.h"

#include <string>

namespace heatkeep {

using namespace literals;

namespace {

std::string MmWords(Length length) { return std::to_string(length.nm / 1'000'000) + " mm"; }

}  // namespace

HeatBalance InventedBalance() {
  const auto mass = [](Length l) { return Mass{l.nm / 1'000'000 * 39458 / 1000}; };
  HeatBalance b{"Vandrek", "M2208", "42CrMo4", "round 80", "+QT", "3.1 no. 88-1203", {}};
  const auto add = [&](const char* name, bool in, Length l) { b.classes.push_back({name, in, l, mass(l)}); };
  add("received", true, 30'000_mm);
  add("shipped", false, 5740_mm);
  add("on site", false, 3000_mm);
  add("on hand", false, 21'174_mm);
  add("kerf", false, 66_mm);
  add("trim", false, 20_mm);
  add("unexplained", false, 0_mm);
  return b;
}

TraceRecord InventedTrace(int bars) {
  TraceRecord r;
  r.kind = "heat";
  r.subject = "M2208 (Vandrek)";
  r.asked_at = "2026-11-25T09:12:44+01:00";
  r.asked_by = "quality (invented)";
  r.digest = "9f2c41d07be58a6633c0f1be2d9470a1c6e5520b7f81d4a39e0c6b12d85f7a40";
  r.happenings = 4711;
  TraceLine root;
  root.what = "receipt";
  root.name = "R-0093";
  root.count = 1;
  root.length = 6000_mm * bars;
  root.mass = {236'748LL * bars};
  root.mill = "Vandrek";
  root.heat = "M2208";
  root.grade = "42CrMo4";
  root.section = "round 80";
  root.condition = "+QT";
  root.document = "3.1 no. 88-1203";
  root.receipt = "note 40117, Kestholm";
  root.where_now = "booked in";
  root.at = "2026-10-02T10:15:00+01:00";
  root.by = "clerk";
  r.lines.push_back(root);
  const auto add = [&](int depth, const char* what, const std::string& name, const std::string& parent, int count, Length length,
                       const char* where, bool held) {
    TraceLine l = root;
    l.depth = depth;
    l.what = what;
    l.name = name;
    l.parent = parent;
    l.count = count;
    l.length = length;
    l.mass = {length.nm / 1'000'000 * 39458 / 1000 * count};
    l.receipt = "";
    l.where_now = where;
    l.held = held;
    r.lines.push_back(l);
  };
  for (int i = 0; i < bars; ++i) {
    const std::string bar = "1200" + std::to_string(i) + "-7";
    const std::string drop = "1300" + std::to_string(i) + "-4";
    add(1, "bar", bar, "R-0093", 1, 6000_mm, "cut up", false);
    add(2, "cut piece", "W-3301/2", bar, 7, 580_mm, "shipped to Pallant Hydraulics, note 118", false);
    add(2, "drop", drop, bar, 1, 1900_mm, "cut up", false);
    add(3, "cut piece", "W-3310/1", drop, 6, 240_mm, "on site, rack at saw 1, waiting for turning and a second look", i == 1);
    add(3, "drop", "1400" + std::to_string(i) + "-1", drop, 1, 446_mm, "place B3-2", i == 1);
    add(2, "reject", "W-3301/2", bar, 1, 577_mm, "scrap bin 2", false);
  }
  r.balances.push_back(InventedBalance());
  return r;
}

TraceRecord InventedFamily(int bars, int depth) {
  TraceRecord r = InventedTrace(1);
  TraceLine one = r.lines[1];
  r.lines.clear();
  const auto add = [&](int deep, const char* what, const std::string& name, const std::string& parent, int count, Length length,
                       Length kerf, Length now, const std::string& where) {
    TraceLine l = one;
    l.depth = deep;
    l.what = what;
    l.name = name;
    l.parent = parent;
    l.count = count;
    l.length = length;
    l.kerf = kerf;
    l.now = now;
    l.where_now = where;
    l.mass = {length.nm / 1'000'000 * 39458 / 1000 * count};
    r.lines.push_back(l);
  };
  for (int i = 0; i < bars; ++i) {
    const std::string number = std::to_string(1000 + i), bar = "A" + number + "B";
    Length rest = 1335_mm;
    add(0, "bar", bar, "", 1, 6000_mm, {}, depth == 0 ? rest : Length{}, depth == 0 ? "1335 mm at B3-2 (on rack)" : "cut up");
    add(1, "trim", "trim", bar, 1, 10_mm, 2_mm, {}, "trim");
    add(1, "cut piece", "W-3301/2", bar, 7, 580_mm, 14_mm, {}, "shipped to Pallant Hydraulics, note 118");
    add(1, "reject", "short", bar, 1, 577_mm, 2_mm, {}, "reject");
    std::string parent = bar;
    for (int d = 1; d <= depth; ++d) {
      const std::string drop = "A" + number + "D" + std::to_string(d);
      const bool last = d == depth;
      add(d, "drop", drop, parent, 1, rest, {}, last ? rest : Length{},
          last ? MmWords(rest) + " at B3-" + std::to_string(1 + i % 5) + " (on rack)" : "cut up");
      if (!last) add(d + 1, "cut piece", "W-33" + std::to_string(10 + d % 3) + "/1", drop, 1, 20_mm, 2_mm, {}, "on site");
      rest -= 22_mm;
      parent = drop;
    }
  }
  return r;
}

RecallRecord InventedRecall() {
  RecallRecord r;
  r.scope = "heat";
  r.ref = "M2208";
  r.mill = "Vandrek";
  r.asked_at = "2026-11-25T09:12:44+01:00";
  r.asked_by = "quality (invented)";
  r.proof = {"9f2c41d07be58a6633c0f1be2d9470a1c6e5520b7f81d4a39e0c6b12d85f7a40", "", "[]", 4711};
  int number = 100;
  const auto add = [&](const char* whereabouts, const char* what, int count, Length length, const char* place, const char* order,
                       const char* customer, const char* note, const char* words) {
    RecallLine l;
    l.whereabouts = whereabouts;
    l.what = what;
    l.tag = "A000" + std::to_string(number++) + "K";
    l.count = count;
    l.length = length;
    l.mass = {length.nm / 1'000'000 * 39458 / 1000};
    l.mill = "Vandrek";
    l.heat = "M2208";
    l.grade = "42CrMo4";
    l.section = "round 80";
    l.condition = "+QT";
    l.owner = "ours";
    l.site = "main";
    l.place = place;
    l.order = order;
    l.line = *order == 0 ? "" : "10";
    l.customer = customer;
    l.note = note;
    l.gone_at = *note == 0 ? "" : "2026-11-03T08:15:00+01:00";
    l.words = words;
    r.lines.push_back(l);
  };
  add("at saw", "bar", 1, 6000_mm, "SAW-2", "", "", "", "");
  add("on site", "cut piece", 6, 1740_mm, "SAW-1", "W-3301", "Pallant Hydraulics", "", "");
  add("on rack", "bar", 1, 6000_mm, "B1-2", "", "", "", "");
  add("on rack", "drop", 1, 1900_mm, "B3-4", "", "", "", "quarantined: rust at one end");
  add("outside", "drop", 1, 2400_mm, "Hardening works", "", "", "H-41", "heat treatment");
  add("missing", "drop", 1, 640_mm, "B5-1", "", "", "", "");
  for (int i = 0; i < 14; ++i) add("shipped", "cut piece", 7, 2030_mm, "", "W-3290", "Drewe Conveyors", i % 2 == 0 ? "D-117" : "D-121", "");
  for (int i = 0; i < 24; ++i)
    add("shipped", "cut piece", 7 + i, 2030_mm, "", "W-3301", "Pallant Hydraulics", i % 2 == 0 ? "P-118" : "P-131", "");
  add("sold", "bar", 1, 6000_mm, "", "", "Pallant Hydraulics", "P-140", "sold to Pallant Hydraulics, order X-1");
  add("scrap", "drop", 1, 120_mm, "bin 2", "", "", "", "too short");
  add("reject", "reject", 1, 577_mm, "", "W-3301", "Pallant Hydraulics", "", "short");
  add("unexplained", "bar", 1, 3_mm, "", "", "", "", "band slipped, not found");
  return r;
}

}  // namespace heatkeep
