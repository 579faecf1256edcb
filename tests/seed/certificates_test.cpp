#include <gtest/gtest.h>

#include <set>

#include "tests/seed/rows_of.h"

namespace heatkeep::seed_test {
namespace {

const std::set<std::string> kElements{"C", "Si", "Mn", "P", "S", "Cr", "Mo", "Ni", "Cu", "N", "Al", "Fe", "Mg", "Zn", "Ti", "Pb", "Sn"};

bool thickness_fits(const Row& limit, const Section& section) {
  // A round or hexagon counts by its diameter, a flat by its thickness (EN 10025-2, from memory).
  const Length t = section.second.nm > 0 ? section.second : section.first;
  return (limit.at("over_mm").empty() || t > ReadLength(limit.at("over_mm"))) &&
      (limit.at("upto_mm").empty() || t <= ReadLength(limit.at("upto_mm")));
}

TEST(Certificates, KeepInsideTheLimitsOfTheirGrade) {
  std::map<std::string, std::vector<Row>> limits;
  for (const Row& l : rows_of("reference/grade_limits.csv").rows) limits[l.at("grade")].push_back(l);
  int compared = 0;
  for (const Row& c : rows_of("scenario/certificates.csv").rows) {
    for (const Row& l : limits[c.at("grade")]) {
      if (!thickness_fits(l, ReadSection(c.at("section")))) continue;
      const std::string name = c.at("number") + " " + l.at("element");
      ASSERT_TRUE(kElements.contains(l.at("element"))) << name << " has no column";
      ASSERT_FALSE(c.at(l.at("element")).empty()) << name << " has a limit and no value";
      const double value = std::stod(c.at(l.at("element")));
      if (!l.at("min_pct").empty()) { EXPECT_GE(value, std::stod(l.at("min_pct"))) << name; }
      if (!l.at("max_pct").empty()) { EXPECT_LE(value, std::stod(l.at("max_pct"))) << name; }
      ++compared;
    }
  }
  EXPECT_GE(compared, 1000);
}

TEST(Certificates, AreThoseThatTheStockClaimsAndNoOthers) {
  std::map<std::string, std::string> claimed, certified;  // heat, section and condition -> type
  const auto lot = [](const Row& r) {
    return r.at("heat") + " " + SectionKey(ReadSection(r.at("section"))) + " " + r.at("condition") + " " + r.at("grade");
  };
  std::set<std::string> delivered, without;
  std::map<std::string, std::string> mills;
  for (const Row& r : all_metal()) {
    if (r.at("heat").empty()) continue;
    mills[r.at("heat")] = r.at("mill");
    if (r.at("papers") == "awaited") {
      delivered.insert(lot(r));
    } else if (r.at("papers").empty()) {
      without.insert(lot(r));
    } else {
      claimed[lot(r)] = r.at("papers");
    }
  }
  std::map<std::string, int> types;
  std::set<std::string> numbers;
  for (const Row& c : rows_of("scenario/certificates.csv").rows) {
    EXPECT_TRUE(numbers.insert(c.at("number")).second) << c.at("number");
    EXPECT_TRUE(certified.emplace(lot(c), c.at("type")).second) << c.at("number") << ": a second one for its lot";
    if (mills.contains(c.at("heat"))) { EXPECT_EQ(c.at("issuer"), mills[c.at("heat")]) << c.at("number"); }
    ++types[c.at("type")];
  }
  for (const auto& [name, type] : claimed) { EXPECT_TRUE(certified.contains(name) && certified.at(name) == type) << name; }
  for (const std::string& name : without) EXPECT_FALSE(certified.contains(name)) << name;
  for (const std::string& name : delivered) {
    if (!certified.contains(name)) without.insert(name);
  }
  EXPECT_GE(without.size(), 5U) << "a few papers are still awaited";
  EXPECT_LE(without.size(), 30U);
  EXPECT_GT(types["3.1"], 3 * types["2.2"]);
  EXPECT_GT(types["2.2"], 0);
}

TEST(Certificates, OfOneHeatGiveOneAnalysis) {
  std::map<std::string, std::string> analyses;
  int again = 0;
  for (const Row& c : rows_of("scenario/certificates.csv").rows) {
    std::string analysis;
    for (const std::string& e : kElements) analysis += e + c.at(e) + " ";
    const auto [known, first] = analyses.try_emplace(c.at("heat"), analysis);
    EXPECT_EQ(known->second, analysis) << c.at("heat");
    again += first ? 0 : 1;
  }
  EXPECT_GT(again, 0);
}

TEST(Certificates, GiveAYieldBelowTheStrength) {
  for (const Row& c : rows_of("scenario/certificates.csv").rows) {
    EXPECT_LT(std::stoi(c.at("Re")), std::stoi(c.at("Rm"))) << c.at("number");
    EXPECT_GT(std::stoi(c.at("A")), 5) << c.at("number");
  }
}

}  // namespace
}  // namespace heatkeep::seed_test
