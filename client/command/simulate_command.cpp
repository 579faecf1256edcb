#include "client/command/simulate_command.h"

#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <nlohmann/json.hpp>
#include <ostream>
#include <stdexcept>

#include "client/year/year.h"
#include "reports/curves.h"
#include "reports/whole_file.h"

namespace heatkeep::command {
namespace {

using year::YearResult;

double Tonnes(Mass mass) { return static_cast<double>(mass.g) / 1e6; }
double Metres(Length length) { return static_cast<double>(length.nm) / 1e9; }
// Kilograms a tonne delivered.
double PerTonne(Mass mass, const YearResult& r) { return 1000 * static_cast<double>(mass.g) / static_cast<double>(r.delivered.g); }
// Used up: what was bought, less what the rack of drops has grown by.
Mass Used(const YearResult& r) { return r.bought - (r.days.back().drop_mass - r.start.drop_mass); }

const year::DayFigures& Quarter(const YearResult& r, int quarter) {
  return r.days[std::max<std::size_t>(1, r.days.size() * static_cast<std::size_t>(quarter) / 4) - 1];
}

// A figure flush right in its column, a name flush left.
std::string Cell(double value, int decimals, int width) {
  char text[64];
  std::snprintf(text, sizeof text, "%*.*f", width, decimals, value);
  return text;
}
std::string Cell(int value, int width) { return Cell(static_cast<double>(value), 0, width); }
std::string NameCell(const YearResult& r) {
  std::string name = NameOf(r.policy);
  name.resize(14, ' ');
  return name;
}

std::string Table(const SimulateOptions& o, const std::vector<YearResult>& all) {
  const YearResult& first = all.front();
  std::string t = "A year in the rack: seed " + std::to_string(o.seed) + ", " + std::to_string(o.lines) + " lines in " +
      std::to_string(o.groups) + " groups over " + std::to_string(o.days) + " days, " + Cell(Tonnes(first.delivered), 1, 0) +
      " t delivered\nAt the start: " + std::to_string(first.start.drops) + " drops, " + Cell(Metres(first.start.drop_length), 1, 0) +
      " m, " + Cell(Tonnes(first.start.drop_mass), 2, 0) + " t\n\nkg a tonne delivered\n";
  t += "               bought  used up    kerf    trim   scrap  yield %    bars   pulls  drops back\n";
  for (const YearResult& r : all)
    t += NameCell(r) + Cell(PerTonne(r.bought, r), 1, 7) + Cell(PerTonne(Used(r), r), 1, 9) + Cell(PerTonne(r.kerf, r), 1, 8) +
        Cell(PerTonne(r.trim, r), 1, 8) + Cell(PerTonne(r.scrap, r), 1, 8) +
        Cell(100 * static_cast<double>(r.delivered.g) / static_cast<double>(Used(r).g), 2, 9) + Cell(r.total.bars_opened, 8) +
        Cell(r.total.bars_opened + r.total.drops_used, 8) + Cell(r.total.drops_made, 12) + "\n";
  t += "\nDrops on the rack at the end of each quarter: count, metres; tonnes at the end\n";
  for (const YearResult& r : all) {
    t += NameCell(r);
    for (int q = 1; q <= 4; ++q) t += Cell(Quarter(r, q).drops, 7) + Cell(Metres(Quarter(r, q).drop_length), 1, 8) + " m";
    t += Cell(Tonnes(r.days.back().drop_mass), 2, 9) + " t\n";
  }
  t += "\nbought: full bars opened. used up: bought less what the rack of drops has grown by.\n";
  for (const YearResult& r : all)
    if (r.by_clock > 0) t += NameOf(r.policy) + ": the clock ended " + std::to_string(r.by_clock) + " searches; the run may not repeat\n";
  return t;
}

nlohmann::ordered_json Figures(const year::DayFigures& f) {
  return {{"drops", f.drops}, {"drop_length_nm", f.drop_length.nm}, {"drop_mass_g", f.drop_mass.g}, {"bought_g", f.bought.g}};
}

std::string Json(const SimulateOptions& o, const std::vector<YearResult>& all) {
  nlohmann::ordered_json j{{"seed", o.seed}, {"lines", o.lines}, {"groups", o.groups}, {"days", o.days}};
  j["start"] = Figures(all.front().start);
  j["policies"] = nlohmann::ordered_json::array();
  for (const YearResult& r : all) {
    nlohmann::ordered_json p{{"policy", NameOf(r.policy)},
                             {"delivered_g", r.delivered.g},
                             {"bought_g", r.bought.g},
                             {"used_g", Used(r).g},
                             {"received_g", r.received.g},
                             {"kerf_g", r.kerf.g},
                             {"trim_g", r.trim.g},
                             {"scrap_g", r.scrap.g},
                             {"cleared_g", r.cleared.g},
                             {"bars_opened", r.total.bars_opened},
                             {"drops_used", r.total.drops_used},
                             {"drops_made", r.total.drops_made},
                             {"drops_cleared", r.total.drops_cleared},
                             {"plans", r.lists},
                             {"ended_by_clock", r.by_clock}};
    p["opened_length_nm"] = r.total.opened.nm;
    p["delivered_length_nm"] = r.total.delivered.nm;
    p["kerf_length_nm"] = r.total.kerf.nm;
    p["trim_length_nm"] = r.total.trim.nm;
    p["scrap_length_nm"] = r.total.scrap.nm;
    p["days"] = nlohmann::ordered_json::array();
    for (const year::DayFigures& day : r.days) p["days"].push_back(Figures(day));
    j["policies"].push_back(std::move(p));
  }
  return j.dump(1) + "\n";
}

template <class Value>
Chart ChartOf(const std::vector<YearResult>& all, std::string title, std::string subtitle, std::string unit, int decimals,
              const Value& value) {
  Chart chart{std::move(title), std::move(subtitle), std::move(unit), "working day", decimals, {}, true};
  for (const YearResult& r : all) {
    Curve curve{NameOf(r.policy), {}, r.policy == year::Policy::DropsFirst, static_cast<int>(r.policy)};
    for (const year::DayFigures& day : r.days) curve.values.push_back(value(r, day));
    chart.curves.push_back(std::move(curve));
  }
  return chart;
}

void Draw(const SimulateOptions& o, const std::vector<YearResult>& all) {
  std::filesystem::create_directories(o.out);
  const std::string what = "The same " + std::to_string(o.lines) + " lines cut under each policy, seed " + std::to_string(o.seed);
  const auto write = [&](const std::string& name, const Chart& chart) {
    const std::string svg = ChartSvg(chart);
    WriteWholeBytes(o.out + "/" + name + ".svg", svg.data(), svg.size());
    WriteChartPng(o.out + "/" + name + ".png", chart);
  };
  write("drops", ChartOf(all, "Drops on the rack", what, "drops", 0, [](const YearResult&, const year::DayFigures& d) {
          return static_cast<double>(d.drops);
        }));
  write("bought",
        ChartOf(all, "Metal bought since the year began", what + "; full bars opened", "t", 1,
                [](const YearResult&, const year::DayFigures& d) { return Tonnes(d.bought); }));
  std::vector<YearResult> used;  // a new bar every time would hide all others
  for (const YearResult& r : all)
    if (r.policy != year::Policy::NewBar) used.push_back(r);
  if (used.empty()) return;
  const auto plain = std::find_if(all.begin(), all.end(), [](const YearResult& r) { return r.policy == year::Policy::Plain; });
  if (plain != all.end())
    write("against_plain",
          ChartOf(used, "Metal bought, more or less than by the plain choice", what + "; below 0 is less", "t", 2,
                  [&](const YearResult& r, const year::DayFigures& d) {
                    const auto day = static_cast<std::size_t>(&d - r.days.data());
                    return Tonnes(d.bought) - Tonnes(plain->days[day].bought);
                  }));
  write("rack_mass", ChartOf(used, "Metal in the drops on the rack", what, "t", 1, [](const YearResult&, const year::DayFigures& d) {
          return Tonnes(d.drop_mass);
        }));
}

}  // namespace

int RunSimulate(const SimulateOptions& o, std::ostream& out, std::ostream& err) {
  try {
    std::vector<year::Policy> policies;
    for (const std::string& name : o.policies) policies.push_back(year::PolicyNamed(name));
    if (policies.empty()) policies = year::AllPolicies();
    if (o.threads < 1 || o.threads > 64) throw std::invalid_argument("--threads: expected 1 to 64");
    if (o.iterations < 1) throw std::invalid_argument("--iterations: expected 1 or more");
    const year::Shop shop = year::MakeShop(o.seed, {o.groups, o.lines, o.days, 2 * o.days});
    const year::YearStart start(shop, {o.iterations, o.threads});
    std::vector<YearResult> all;
    for (const year::Policy policy : policies) all.push_back(start.Live(policy));
    if (!o.out.empty()) Draw(o, all);
    out << (o.json ? Json(o, all) : Table(o, all));
    return 0;
  } catch (const std::exception& e) {
    err << e.what() << '\n';
    return 2;
  }
}

}  // namespace heatkeep::command
