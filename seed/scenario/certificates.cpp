// certificates.csv: what the mills' inspection documents say. Every value is drawn, none was measured; the
// chemistry keeps inside seed/reference/grade_limits.csv, one analysis a heat, whatever sections it was
// rolled to.
#include <algorithm>
#include <cmath>
#include <set>

#include "seed/scenario/csv.h"
#include "seed/scenario/draw.h"
#include "seed/scenario/groups.h"
#include "seed/scenario/stock.h"

namespace heatkeep::scenario {

namespace {

const std::vector<std::string> kElements{"C", "Si", "Mn", "P", "S", "Cr", "Mo", "Ni", "Cu", "N", "Al", "Fe", "Mg", "Zn", "Ti", "Pb", "Sn"};

// MPa, MPa, per cent.
struct Strength {
  std::int64_t rm_least, rm_most, re_least, a_least;
};

// Plausible for the grade and condition; for the hardened grades by size. From memory, not a limit of any
// standard.
Strength strength(const Group& g) {
  const std::int64_t mm = g.width_um / 1000;
  if (g.grade == "42CrMo4" || g.grade == "4140") {
    if (mm <= 40) return {1010, 1150, 770, 12};
    if (mm <= 100) return {910, 1060, 660, 13};
    if (mm <= 160) return {810, 930, 560, 14};
    return {705, 830, 470, 16};
  }
  if (g.grade == "34CrNiMo6") {
    if (mm <= 100) return {1010, 1160, 810, 12};
    if (mm <= 160) return {910, 1060, 710, 13};
    return {810, 940, 610, 14};
  }
  if (g.grade == "C45E") return g.condition == "+C" ? Strength{660, 780, 480, 9} : Strength{590, 690, 310, 17};
  if (g.grade == "S355J2") return {490, 600, 350, 23};
  if (g.grade == "16MnCr5") return {500, 620, 310, 22};
  if (g.grade == "11SMnPb30") return {430, 620, 310, 9};
  if (g.grade == "100Cr6") return {620, 720, 390, 20};
  if (g.grade == "X2CrNiMoN22-5-3") return {690, 810, 480, 28};
  if (g.grade == "EN AW-6082") return {305, 350, 255, 9};
  if (g.grade == "CuZn39Pb3") return {430, 490, 230, 12};
  return {520, 660, 225, 47};  // the austenitic ones
}

// Well inside: a sixth of the span off each end of a range, 30 to 80 % of a mere maximum.
std::string percent(const Limit& l, Draw& draw) {
  const std::int64_t span = l.most - l.least;
  const std::int64_t low = l.least > 0 ? l.least + span / 6 : span * 3 / 10;
  const std::int64_t high = l.least > 0 ? l.most - span / 6 : span * 8 / 10;
  const std::int64_t step = l.decimals == 3 ? 10 : 100;
  const std::int64_t rounded = (draw.from(low, high) + step / 2) / step * step;
  return decimal(std::clamp(rounded, l.least, l.most), 4, l.decimals);
}

// Cr + Mo + Ni of C45E is at most 0.63 % (seed/reference/grade_sums.csv): nickel gives way.
void keep_sum(std::map<std::string, std::string>& analysis) {
  const auto hundredths = [&](const char* element) { return std::lround(std::stod(analysis.at(element)) * 100); };
  const long most = 60 - hundredths("Cr") - hundredths("Mo");
  if (hundredths("Ni") > most) analysis["Ni"] = decimal(most * 100, 4, 2);
}

// The lots of which there was metal when the book was opened, or that a lorry brought since.
std::set<std::size_t> lots_here(const Stock& stock) {
  std::set<std::size_t> here;
  for (const OpeningLine& line : stock.opening) here.insert(line.lot);
  for (const DeliveryLine& line : stock.deliveries) here.insert(line.lot);
  return here;
}

}  // namespace

std::string certificates_file(const Stock& stock, const std::map<std::string, Grade>& grades) {
  Draw draw("certificates");
  Fields header{"number", "type", "issuer", "issued", "heat", "section", "condition", "grade"};
  header.insert(header.end(), kElements.begin(), kElements.end());
  header.insert(header.end(), {"Rm", "Re", "A"});
  std::string text = csv_line(header);

  const std::set<std::size_t> here = lots_here(stock);
  std::map<std::size_t, std::map<std::string, std::string>> analysis;
  int number = 0;
  for (const Lot& lot : stock.lots) {
    const Heat& heat = stock.heats[lot.heat];
    const Group& g = groups()[lot.group];
    if (!analysis.contains(lot.heat)) {
      for (const Limit& l : grades.at(heat.grade).limits) analysis[lot.heat][l.element] = percent(l, draw);
      if (heat.grade == "C45E") keep_sum(analysis[lot.heat]);
    }
    const Strength s = strength(g);
    const std::int64_t rm = draw.from(s.rm_least, s.rm_most);
    const std::int64_t re = draw.from(s.re_least, s.re_least + (s.rm_least - s.re_least) / 3);
    const std::int64_t a = draw.from(s.a_least, s.a_least + 5);
    ++number;
    if (lot.papers.empty() || !here.contains(static_cast<std::size_t>(&lot - stock.lots.data()))) continue;
    const std::string name = heat.mill == "Vandrek" ? "VZ" + std::to_string(61'000 + 17 * number)
        : heat.mill == "Mirrowby"                   ? "M" + heat.made.substr(2, 2) + "/" + std::to_string(2200 + number)
                                                    : std::to_string(880'100 + 3 * number);
    Fields row{name, lot.papers, heat.mill, heat.made, heat.number, g.section, g.condition, g.grade};
    for (const std::string& e : kElements) {
      const auto& known = analysis[lot.heat];
      row.push_back(known.contains(e) ? known.at(e) : "");
    }
    row.insert(row.end(), {std::to_string(rm), std::to_string(re), std::to_string(a)});
    text += csv_line(row);
  }
  return text;
}

}  // namespace heatkeep::scenario
