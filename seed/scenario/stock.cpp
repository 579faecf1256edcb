#include "seed/scenario/stock.h"

#include <algorithm>
#include <array>
#include <set>

#include "seed/scenario/draw.h"
#include "seed/scenario/groups.h"
#include "seed/scenario/shelves.h"

namespace heatkeep::scenario {

namespace {

constexpr int kDrops = 600;
constexpr int kOpeningBars = 100;
constexpr int kNotes = 8;
constexpr int kLinesANote = 7;
const std::vector<std::string> kMills{"Vandrek", "Mirrowby", "Kestholm"};
const std::string kOwningCustomer = "Ister Marine";

std::string padded(std::int64_t n, std::size_t digits) {
  std::string s = std::to_string(n);
  return s.size() >= digits ? s : std::string(digits - s.size(), '0') + s;
}

class Maker {
 public:
  explicit Maker(const std::map<std::string, Grade>& grades) : grades_(grades) {}

  Stock make() {
    old_lots();
    owned_metal();
    drops();
    bars();
    deliveries();
    return std::move(stock_);
  }

 private:
  const Grade& grade_of(std::size_t group) const { return grades_.at(groups()[group].grade); }

  // As each mill's stencil has it: a letter and four figures, year and number, or five figures with leading
  // zeros.
  std::size_t new_heat(const std::string& mill, const std::string& grade, const std::string& made) {
    std::string number;
    do {
      if (mill == "Vandrek") {
        number = std::string(1, "BEKMT"[heat_draw_.from(0, 4)]);
        number += padded(heat_draw_.from(1001, 9899), 4);
      } else if (mill == "Mirrowby") {
        number = std::to_string(heat_draw_.from(46, 48)) + "-";
        number += padded(heat_draw_.from(104, 3990), 4);
      } else {
        number = padded(heat_draw_.from(4100, 9930), 5);
      }
    } while (!numbers_.insert(number).second);
    stock_.heats.push_back({mill, number, grade, false, made});
    return stock_.heats.size() - 1;
  }

  std::string papers_for(const Heat& h) {
    const bool simple = h.grade == "11SMnPb30" || h.grade == "CuZn39Pb3" || h.grade == "S355J2";
    const std::int64_t r = heat_draw_.from(1, 100);
    if (r <= 5) return "";
    return r <= (simple ? 40 : 12) ? "2.2" : "3.1";
  }

  std::size_t new_lot(std::size_t heat, std::size_t group) {
    stock_.lots.push_back({heat, group, papers_for(stock_.heats[heat])});
    return stock_.lots.size() - 1;
  }

  std::string some_day(int first_month_2025, int last_month_2025) {
    const std::int64_t m = heat_draw_.from(first_month_2025, last_month_2025);
    return std::to_string(2025 + (m - 1) / 12) + "-" + padded((m - 1) % 12 + 1, 2) + "-" + padded(heat_draw_.from(1, 28), 2);
  }

  // Two to four older lots a group; now and then the heat of another section of the same grade.
  void old_lots() {
    by_group_.resize(groups().size());
    for (std::size_t g = 0; g < groups().size(); ++g) {
      const int lots = 2 + groups()[g].demand / 2;
      for (int i = 0; i < lots; ++i) {
        std::size_t heat = kNoLot;
        if (heat_draw_.chance(20)) {
          for (std::size_t h = 0; h < stock_.heats.size(); ++h) {
            const bool here =
                std::any_of(by_group_[g].begin(), by_group_[g].end(), [&](std::size_t l) { return stock_.lots[l].heat == h; });
            if (stock_.heats[h].grade == groups()[g].grade && !stock_.heats[h].carried_on && !here) heat = h;
          }
        }
        if (heat == kNoLot) {
          const std::string& mill = heat_draw_.one_of(kMills);
          heat = new_heat(mill, groups()[g].grade, some_day(2, 18));
        } else {
          stock_.heats[heat].carried_on = true;
        }
        by_group_[g].push_back(new_lot(heat, g));
      }
    }
  }

  void add_drop(std::size_t group, std::size_t lot, std::int64_t mm, const std::string& owner) {
    const std::int64_t g = grams(groups()[group], grade_of(group), mm);
    stock_.opening.push_back(
        {"R-" + padded(++last_drop_, 4), true, group, lot, mm, 1, shelves_.put(true, group, mm, g), owner, drop_draw_.chance(22) ? 2 : 1});
  }

  // The customer's own bars and what is left of others, of lots that are nobody else's.
  void owned_metal() {
    for (std::size_t g = 0; g < groups().size(); ++g) {
      const bool flange = groups()[g].grade == "X2CrNiMo17-12-2" && groups()[g].section == "round 60";
      const bool shaft = groups()[g].grade == "X2CrNiMoN22-5-3" && groups()[g].section == "round 50";
      if (!flange && !shaft) continue;
      const std::size_t lot = new_lot(new_heat("Mirrowby", groups()[g].grade, some_day(14, 18)), g);
      stock_.lots[lot].papers = "3.1";
      for (int i = 0; i < (flange ? 6 : 3); ++i) add_drop(g, lot, drop_length(), kOwningCustomer);
      if (flange) add_bars(g, lot, 3, kOwningCustomer);
    }
  }

  // Skewed to the short: the longer a rest, the sooner somebody took it.
  std::int64_t drop_length() {
    const std::int64_t r = drop_draw_.from(1, 100);
    if (r <= 45) return drop_draw_.from(150, 600);
    if (r <= 75) return drop_draw_.from(500, 1200);
    if (r <= 92) return drop_draw_.from(1000, 2200);
    return drop_draw_.from(2000, 3500);
  }

  std::size_t busy_group(Draw& draw) {
    int all = 0;
    for (const Group& g : groups()) all += g.demand + 1;
    std::int64_t r = draw.from(1, all);
    std::size_t g = 0;
    while ((r -= groups()[g].demand + 1) > 0) ++g;
    return g;
  }

  void drops() {
    int here = static_cast<int>(std::count_if(stock_.opening.begin(), stock_.opening.end(), [](const OpeningLine& l) { return l.drop; }));
    for (; here < kDrops; ++here) {
      const std::size_t g = here % 5 == 0 ? static_cast<std::size_t>(here / 5) % groups().size() : busy_group(drop_draw_);
      const std::int64_t longest = groups()[g].bar_mm - 500;
      const std::size_t lot = drop_draw_.from(1, 1000) <= 20 ? kNoLot : drop_draw_.one_of(by_group_[g]);
      add_drop(g, lot, std::min(drop_length(), longest), "");
    }
  }

  void add_bars(std::size_t group, std::size_t lot, int count, const std::string& owner) {
    const std::int64_t mm = groups()[group].bar_mm + (groups()[group].inch() ? 0 : bar_draw_.from(0, 60));
    const std::int64_t g = grams(groups()[group], grade_of(group), mm) * count;
    stock_.opening.push_back({"L-" + padded(++last_bars_, 3), false, group, lot, mm, count, shelves_.put(false, group, mm, g), owner, 0});
  }

  void bars() {
    int here = 3;  // the customer's
    while (here < kOpeningBars) {
      const std::size_t g = busy_group(bar_draw_);
      const bool heavy = grams(groups()[g], grade_of(g), groups()[g].bar_mm) > 600'000;
      const int count = std::min(kOpeningBars - here, heavy ? 1 : static_cast<int>(bar_draw_.from(1, 4)));
      add_bars(g, bar_draw_.one_of(by_group_[g]), count, "");
      here += count;
    }
  }

  void deliveries() {
    const std::array<std::string, kNotes> days{"2026-10-05", "2026-10-13", "2026-10-22", "2026-10-29",
                                               "2026-11-05", "2026-11-12", "2026-11-18", "2026-11-23"};
    std::size_t quiet = 0;  // each third line is of the next group in the table, so that none goes without
    for (int n = 0; n < kNotes; ++n) {
      const std::string& supplier = kMills[static_cast<std::size_t>(n) % kMills.size()];
      const std::string note = supplier == "Vandrek" ? "V " + std::to_string(20'418 + 37 * n)
          : supplier == "Mirrowby"                   ? "MB-" + std::to_string(7'731 + 11 * n)
                                                     : std::to_string(1189 + 23 * n) + "/26";
      for (int line = 1; line <= kLinesANote; ++line) {
        const std::size_t g = line % 2 == 0 ? (quiet += 2) % groups().size() : busy_group(delivery_draw_);
        delivery_line(n, line, g, supplier, note, days[static_cast<std::size_t>(n)]);
      }
    }
  }

  void delivery_line(int n, int line, std::size_t g, const std::string& supplier, const std::string& note, const std::string& day) {
    const Group& group = groups()[g];
    // Kestholm also sells what others rolled.
    const std::string mill = supplier == "Kestholm" && delivery_draw_.chance(40) ? "Vandrek" : supplier;
    DeliveryLine d;
    d.note = note;
    d.supplier = supplier;
    d.order = "P-" + std::to_string(2641 + 3 * n);
    d.received = day;
    d.line = line;
    d.group = g;
    d.lot = new_lot(new_heat(mill, group.grade, some_day(19, 21)), g);
    d.length_mm = group.bar_mm + (group.inch() ? 0 : delivery_draw_.from(0, 60));
    d.length = group.inch() ? (group.bar_mm == 6096 ? "20 ft" : "12 ft") : std::to_string(d.length_mm) + " mm";
    if (group.inch() && group.bar_mm != 6096) d.length_mm = 3657;
    const std::int64_t each = grams(group, grade_of(g), d.length_mm);
    d.count = each > 600'000 ? 1 : static_cast<int>(delivery_draw_.from(2, 6));
    d.slip_count = d.count;
    d.theory_g = each * d.count;
    // Rolled bar lies a little under or over its nominal section; the big scale shows half kilograms.
    const std::int64_t step = d.theory_g > 200'000 ? 500 : 100;
    d.weighed_g = (d.theory_g * (1000 + delivery_draw_.from(-7, 7)) / 1000 + step / 2) / step * step;
    if (n == 4 && line == 3) {
      d.slip_count = d.count + 1;
      d.odd = true;
    }
    if (n == 4 && line == 5) {
      d.weighed_g = (d.theory_g * 931 / 1000 + 250) / 500 * 500;
      d.odd = true;
    }
    d.mark = delivery_draw_.chance(80) ? "last" : delivery_draw_.chance(50) ? "both" : "unknown";
    d.place = shelves_.put(false, g, d.length_mm, d.theory_g);
    stock_.deliveries.push_back(std::move(d));
  }

  const std::map<std::string, Grade>& grades_;
  Stock stock_;
  Shelves shelves_;
  std::set<std::string> numbers_;
  std::vector<std::vector<std::size_t>> by_group_;
  int last_drop_ = 0, last_bars_ = 0;
  Draw heat_draw_{"heats"}, drop_draw_{"drops"}, bar_draw_{"bars"}, delivery_draw_{"deliveries"};
};

}  // namespace

Stock make_stock(const std::map<std::string, Grade>& grades) { return Maker(grades).make(); }

}  // namespace heatkeep::scenario
