#include "tests/reports/invented_trace.h"

#include <string>

namespace heatkeep {

using namespace literals;

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
  const auto add = [&](int depth, const char* what, const std::string& name, const std::string& parent,
                       int count, Length length, const char* where, bool held) {
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
    add(3, "cut piece", "W-3310/1", drop, 6, 240_mm,
        "on site, rack at saw 1, waiting for turning and a second look", i == 1);
    add(3, "drop", "1400" + std::to_string(i) + "-1", drop, 1, 446_mm, "place B3-2", i == 1);
    add(2, "reject", "W-3301/2", bar, 1, 577_mm, "scrap bin 2", false);
  }
  r.balances.push_back(InventedBalance());
  return r;
}

}  // namespace heatkeep
