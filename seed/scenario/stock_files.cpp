// opening.csv and deliveries.csv: the metal as a clerk would have typed it. The lorry comes before its
// certificates, so a delivery's papers are awaited until certificates.csv is filed.
#include "seed/scenario/csv.h"
#include "seed/scenario/draw.h"
#include "seed/scenario/groups.h"
#include "seed/scenario/stock.h"

namespace heatkeep::scenario {

namespace {

std::string paid(const std::string& grade, const std::string& owner) {
  return owner.empty() ? decimal(prices().at(grade).cents_per_kg, 2, 2) : "";
}

// A heat of certificated metal is read from the metal or from its tag, never copied from the slip.
std::string read_where(Draw& draw) { return draw.chance(75) ? "metal" : "tag"; }

}  // namespace

std::string opening_file(const Stock& stock) {
  Draw draw("opening file");
  std::string text = csv_line({"old_tag", "kind", "mill", "heat", "read_from", "grade", "section", "condition", "length", "count", "place",
                               "papers", "owner", "ends", "doubt", "price"});
  for (const OpeningLine& l : stock.opening) {
    const Group& g = groups()[l.group];
    const bool known = l.lot != kNoLot;
    const Heat* heat = known ? &stock.heats[stock.lots[l.lot].heat] : nullptr;
    text += csv_line({l.old_tag, l.drop ? "drop" : "bar", known ? heat->mill : "", known ? heat->number : "",
                      known ? read_where(draw) : "none", g.grade, g.section, g.condition,
                      g.inch() && !l.drop ? (l.length_mm == 6096 ? "20 ft" : "12 ft") : std::to_string(l.length_mm) + " mm",
                      std::to_string(l.count), l.place, known ? stock.lots[l.lot].papers : "", l.owner, std::to_string(l.ends),
                      l.drop ? "1 mm" : "2 mm", paid(g.grade, l.owner)});
  }
  return text;
}

std::string deliveries_file(const Stock& stock) {
  Draw draw("deliveries file");
  std::string text =
      csv_line({"note",   "supplier", "order",      "received", "line",  "mill",   "heat",  "read_from", "grade", "section", "condition",
                "length", "count",    "slip_count", "weighed",  "place", "papers", "price", "owner",     "ends",  "mark",    "doubt"});
  for (const DeliveryLine& l : stock.deliveries) {
    const Group& g = groups()[l.group];
    const Heat& heat = stock.heats[stock.lots[l.lot].heat];
    text += csv_line({l.note,
                      l.supplier,
                      l.order,
                      l.received,
                      std::to_string(l.line),
                      heat.mill,
                      heat.number,
                      read_where(draw),
                      g.grade,
                      g.section,
                      g.condition,
                      l.length,
                      std::to_string(l.count),
                      std::to_string(l.slip_count),
                      decimal(l.weighed_g, 3, 1) + " kg",
                      l.place,
                      "awaited",
                      paid(g.grade, l.owner),
                      l.owner,
                      "0",
                      l.mark,
                      "2 mm"});
  }
  return text;
}

}  // namespace heatkeep::scenario
