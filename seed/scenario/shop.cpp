#include "seed/scenario/shop.h"

#include <string>
#include <vector>

#include "seed/scenario/csv.h"
#include "seed/scenario/shelves.h"
#include "seed/scenario/stock.h"

namespace heatkeep::scenario {

const std::map<std::string, Price>& prices() {
  static const std::map<std::string, Price> all{{"42CrMo4", {160, 25}},
                                                {"C45E", {118, 20}},
                                                {"C45", {112, 20}},
                                                {"S355J2", {104, 20}},
                                                {"16MnCr5", {142, 22}},
                                                {"34CrNiMo6", {235, 38}},
                                                {"4140", {168, 25}},
                                                {"11SMnPb30", {139, 18}},
                                                {"100Cr6", {172, 24}},
                                                {"X5CrNi18-10", {365, 95}},
                                                {"X2CrNi18-9", {372, 96}},
                                                {"X5CrNiMo17-12-2", {474, 120}},
                                                {"X2CrNiMo17-12-2", {480, 120}},
                                                {"X2CrNiMoN22-5-3", {560, 130}},
                                                {"EN AW-6082", {410, 130}},
                                                {"CuZn39Pb3", {690, 410}}};
  return all;
}

namespace {

// Names and texts here hold neither quotes nor backslashes.
std::string quoted(const std::string& s) { return "\"" + s + "\""; }

std::string list(const std::string& name, const std::vector<std::string>& items, bool last = false) {
  std::string text = "  " + quoted(name) + ": [\n";
  for (std::size_t i = 0; i < items.size(); ++i) text += "    " + items[i] + (i + 1 < items.size() ? ",\n" : "\n");
  return text + (last ? "  ]\n" : "  ],\n");
}

std::vector<std::string> place_items() {
  std::vector<std::string> items;
  for (const Place& p : places()) {
    std::string s = "{\"place\": " + quoted(p.name) + ", \"site\": \"main\", \"kind\": " + quoted(p.kind);
    if (p.bay > 0) s += ", \"bay\": " + std::to_string(p.bay) + ", \"level\": " + std::to_string(p.level);
    s += ", \"walk\": " + std::to_string(p.walk);
    if (p.max_length_mm > 0) s += ", \"max_length\": " + quoted(decimal(p.max_length_mm, 3, 1) + " m");
    if (p.max_mass_kg > 0) s += ", \"max_mass\": " + quoted(std::to_string(p.max_mass_kg) + " kg");
    items.push_back(s + "}");
  }
  return items;
}

// cm2 a minute with a bi-metal band: the middle of what common practice (no source) gives for the family.
std::vector<std::string> rate_items() {
  const std::vector<std::pair<std::string, int>> rates{{"carbon steel", 55},           {"free-cutting steel", 108}, {"alloy steel", 45},
                                                       {"case-hardening steel", 51},   {"bearing steel", 29},       {"stainless steel", 30},
                                                       {"duplex stainless steel", 20}, {"aluminium", 300},          {"brass", 180}};
  std::vector<std::string> items;
  for (const auto& [family, rate] : rates) {
    items.push_back("{\"family\": " + quoted(family) + ", \"cm2_per_min\": " + std::to_string(rate) + "}");
  }
  return items;
}

std::vector<std::string> price_items() {
  std::vector<std::string> items;
  const auto item = [](const std::string& grade, const std::string& section, std::int64_t paid, std::int64_t scrap) {
    return "{\"grade\": " + quoted(grade) + ", \"section\": " + (section.empty() ? "null" : quoted(section)) +
        ", \"per_kg\": " + quoted(decimal(paid, 2, 2)) + ", \"scrap_per_kg\": " + quoted(decimal(scrap, 2, 2)) +
        ", \"from\": \"2026-01-01\"}";
  };
  for (const auto& [grade, p] : prices()) items.push_back(item(grade, "", p.cents_per_kg, p.scrap_cents_per_kg));
  items.push_back(item("42CrMo4", "round 280", 189, 25));
  return items;
}

std::vector<std::string> keep_items() {
  const auto item = [](const std::string& grade, const std::string& section, int mm) {
    return "{\"grade\": " + (grade.empty() ? "null" : quoted(grade)) + ", \"section\": " + (section.empty() ? "null" : quoted(section)) +
        ", \"keep\": \"" + std::to_string(mm) + " mm\", \"from\": \"2026-01-01\"}";
  };
  return {item("", "", 300),
          item("S355J2", "", 400),
          item("X5CrNi18-10", "", 200),
          item("X2CrNi18-9", "", 200),
          item("X2CrNiMo17-12-2", "", 180),
          item("X2CrNiMoN22-5-3", "", 180),
          item("42CrMo4", "round 80", 210),
          item("42CrMo4", "round 280", 150)};
}

std::vector<std::string> stand_in_items() {
  const auto item = [](const std::string& asked, const std::string& offered, const std::string& reason) {
    return "{\"asked\": " + quoted(asked) + ", \"offered\": " + quoted(offered) +
        ", \"signed_by\": \"ines\", \"reason\": " + quoted(reason) + "}";
  };
  return {
      item("X5CrNi18-10", "X2CrNi18-9", "1.4307 keeps inside every limit of 1.4301 and our heats are certified to both; not the other way"),
      item("X5CrNiMo17-12-2", "X2CrNiMo17-12-2",
           "1.4404 is 1.4401 with less carbon and our heats are certified to both; not the other way"),
      item("C45", "C45E", "C45E is C45 with less phosphorus and sulphur; not the other way")};
}

}  // namespace

std::string shop_file() {
  const auto party = [](const std::string& name, bool sells) {
    const std::string yes = sells ? "true" : "false";
    return "{\"name\": " + quoted(name) + ", \"mill\": " + yes + ", \"supplier\": " + yes +
        ", \"customer\": " + (sells ? "false" : "true") + "}";
  };
  std::string text =
      "{\n  \"currency\": \"EUR\",\n  \"settings\": {\"lift_limit_g\": 25000, \"mass_mismatch_percent\": 3, "
      "\"promise_hours\": 24},\n";
  text += list("sites", {"{\"site\": \"main\", \"letter\": \"A\", \"offline_letter\": \"B\"}"});
  text += list("parties",
               {party("Vandrek", true), party("Mirrowby", true), party("Kestholm", true), party("Pallant Hydraulics", false),
                party("Drewe Conveyors", false), party("Ister Marine", false)});
  text += list("places", place_items());
  text += list("saws",
               {"{\"saw\": \"1\", \"name\": \"Saw 1\", \"place\": \"SAW-1\", \"max_section\": \"260 mm\", \"band\": "
                "\"34 x 1.1\", \"kerf\": \"1.8 mm\", \"trim\": \"5 mm\", \"grip\": \"80 mm\", \"grip_bundle\": "
                "\"120 mm\"}",
                "{\"saw\": \"2\", \"name\": \"Saw 2\", \"place\": \"SAW-2\", \"max_section\": \"500 mm\", \"band\": "
                "\"54 x 1.6\", \"kerf\": \"2.6 mm\", \"trim\": \"8 mm\", \"grip\": \"110 mm\", \"grip_bundle\": "
                "\"160 mm\"}"});
  text += list("rates", rate_items());
  text += list("prices", price_items());
  text += list("keep", keep_items());
  text += list("standins", stand_in_items(), true);
  return text + "}\n";
}

std::string people_file() { return "name,roles\nmara,clerk\njonas,planner\npiet,saw\nlena,saw\nines,quality\nosk,owner\n"; }

}  // namespace heatkeep::scenario
