#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <set>

#include "schema/terms/mass_text.h"
#include "tests/seed/rows_of.h"

namespace heatkeep::seed_test {
namespace {

const nlohmann::json& shop() {
  static const nlohmann::json all = nlohmann::json::parse(bytes_of("scenario/shop.json"));
  return all;
}

TEST(Shop, HasEightBaysOfFiveLevelsAndAYard) {
  std::map<std::string, int> kinds;
  std::set<int> walks;
  for (const auto& p : shop().at("places")) {
    ++kinds[p.at("kind")];
    EXPECT_TRUE(walks.insert(p.at("walk").get<int>()).second) << p.at("place");
  }
  EXPECT_EQ(kinds["rack"], 40);
  for (const char* kind : {"yard", "saw", "quarantine", "scrap", "gate"}) EXPECT_GE(kinds[kind], 1) << kind;
}

TEST(Shop, ItsPlacesCarryTheMetalThatLiesThere) {
  struct Place {
    Length longest;
    Mass most, load;
  };
  std::map<std::string, Place> places;
  for (const auto& p : shop().at("places")) {
    if (p.at("kind") != "rack" && p.at("kind") != "yard") continue;
    places[p.at("place")] = {ReadLength(p.at("max_length").get<std::string>()), ReadMass(p.at("max_mass").get<std::string>()), {}};
  }
  for (const Row& r : all_metal()) {
    ASSERT_TRUE(places.contains(r.at("place"))) << r.at("place");
    Place& p = places[r.at("place")];
    EXPECT_LE(ReadLength(r.at("length")), p.longest) << r.at("place");
    p.load.g += theory_of(r).g;
  }
  for (const auto& [name, p] : places) EXPECT_LE(p.load.g, p.most.g) << name;
}

TEST(Shop, HasAPriceAndACuttingRateForEveryGradeItStocks) {
  std::map<std::string, std::string> families;
  for (const Row& g : rows_of("reference/grades.csv").rows) families[g.at("designation")] = g.at("family");
  std::set<std::string> priced, rated;
  for (const auto& p : shop().at("prices")) {
    EXPECT_TRUE(families.contains(p.at("grade"))) << p.at("grade");
    if (p.at("section").is_null()) priced.insert(p.at("grade"));
    EXPECT_LT(std::stod(p.at("scrap_per_kg").get<std::string>()), std::stod(p.at("per_kg").get<std::string>()));
  }
  for (const auto& r : shop().at("rates")) {
    EXPECT_GT(r.at("cm2_per_min").get<int>(), 0);
    rated.insert(r.at("family"));
  }
  EXPECT_EQ(rated.size(), 9U);
  for (const Row& r : all_metal()) {
    EXPECT_TRUE(priced.contains(r.at("grade"))) << r.at("grade");
    EXPECT_TRUE(rated.contains(families[r.at("grade")])) << r.at("grade");
  }
}

// A stand-in keeps inside every limit that it shares with the grade it stands in for, where both have limits.
TEST(Shop, ItsStandInsKeepInsideTheGradeThatWasAskedFor) {
  std::map<std::string, std::map<std::string, std::pair<double, double>>> limits;
  std::set<std::string> known;
  for (const Row& g : rows_of("reference/grades.csv").rows) known.insert(g.at("designation"));
  for (const Row& l : rows_of("reference/grade_limits.csv").rows) {
    limits[l.at("grade")][l.at("element")] = {l.at("min_pct").empty() ? 0.0 : std::stod(l.at("min_pct")),
                                              l.at("max_pct").empty() ? 100.0 : std::stod(l.at("max_pct"))};
  }
  int compared = 0;
  for (const auto& s : shop().at("standins")) {
    const std::string asked = s.at("asked"), offered = s.at("offered");
    EXPECT_TRUE(known.contains(asked) && known.contains(offered)) << asked << " " << offered;
    EXPECT_NE(asked, offered);
    for (const auto& [element, range] : limits[asked]) {
      if (!limits[offered].contains(element)) continue;
      EXPECT_GE(limits[offered][element].first, range.first) << offered << " " << element;
      EXPECT_LE(limits[offered][element].second, range.second) << offered << " " << element;
      ++compared;
    }
  }
  EXPECT_GE(compared, 8) << "1.4307 against 1.4301 at least";
}

TEST(Shop, HasTwoSawsThatStandSomewhereAndCarryTheStock) {
  std::set<std::string> places;
  for (const auto& p : shop().at("places")) places.insert(p.at("place"));
  Length largest;
  EXPECT_EQ(shop().at("saws").size(), 2U);
  for (const auto& s : shop().at("saws")) {
    EXPECT_TRUE(places.contains(s.at("place")));
    for (const char* l : {"kerf", "trim", "grip", "grip_bundle"}) { EXPECT_GT(ReadLength(s.at(l).get<std::string>()).nm, 0) << l; }
    largest = std::max(largest, ReadLength(s.at("max_section").get<std::string>()));
  }
  for (const Row& r : all_metal()) EXPECT_LE(ReadSection(r.at("section")).first, largest);
}

TEST(Shop, KnowsTheMillsSuppliersAndCustomersOfItsFiles) {
  std::set<std::string> mills, suppliers, customers;
  for (const auto& p : shop().at("parties")) {
    if (p.at("mill").get<bool>()) mills.insert(p.at("name"));
    if (p.at("supplier").get<bool>()) suppliers.insert(p.at("name"));
    if (p.at("customer").get<bool>()) customers.insert(p.at("name"));
  }
  for (const Row& r : all_metal()) {
    if (!r.at("mill").empty()) { EXPECT_TRUE(mills.contains(r.at("mill"))); }
    if (!r.at("owner").empty()) { EXPECT_TRUE(customers.contains(r.at("owner"))); }
  }
  for (const Row& r : rows_of("scenario/deliveries.csv").rows) EXPECT_TRUE(suppliers.contains(r.at("supplier")));
  for (const Row& r : rows_of("scenario/cutlist_c.csv").rows) EXPECT_TRUE(customers.contains(r.at("customer")));
}

TEST(Shop, HasItsPeopleInTheirRoles) {
  const File people = rows_of("scenario/people.csv");
  EXPECT_EQ(people.header, "name,roles");
  std::map<std::string, std::string> roles;
  for (const Row& r : people.rows) roles[r.at("name")] = r.at("roles");
  const std::map<std::string, std::string> expected{{"mara", "clerk"}, {"jonas", "planner"}, {"piet", "saw"},
                                                    {"lena", "saw"},   {"ines", "quality"},  {"osk", "owner"}};
  EXPECT_EQ(roles, expected);
}

}  // namespace
}  // namespace heatkeep::seed_test
