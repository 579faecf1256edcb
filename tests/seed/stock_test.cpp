#include <gtest/gtest.h>

#include <cstdlib>
#include <set>

#include "schema/terms/mass_text.h"
#include "tests/seed/rows_of.h"

namespace heatkeep::seed_test {
namespace {

int pieces(const std::vector<Row>& rows) {
  int n = 0;
  for (const Row& r : rows) n += std::stoi(r.at("count"));
  return n;
}

TEST(Stock, HasTheHeadersThatItsReadersAskFor) {
  EXPECT_EQ(rows_of("scenario/opening.csv").header,
            "old_tag,kind,mill,heat,read_from,grade,section,condition,length,count,place,papers,owner,ends,"
            "doubt,price");
  EXPECT_EQ(rows_of("scenario/deliveries.csv").header,
            "note,supplier,order,received,line,mill,heat,read_from,grade,section,condition,length,count,slip_count,"
            "weighed,place,papers,price,owner,ends,mark,doubt");
}

TEST(Stock, IsThatOfASmallJobShop) {
  const std::vector<Row> all = all_metal();
  EXPECT_GE(pieces(all), 850);
  EXPECT_LE(pieces(all), 950);
  std::set<std::string> grades;
  std::set<GroupKey> groups;
  for (const Row& r : all) {
    grades.insert(r.at("grade"));
    groups.insert(group_of(r));
  }
  EXPECT_EQ(grades.size(), 14U);
  EXPECT_GE(groups.size(), 55U);
  EXPECT_LE(groups.size(), 65U);
}

TEST(Stock, IsMostlyDropsAndEveryLineHasItsOwnOldTag) {
  std::set<std::string> tags;
  int drops = 0, owned = 0, unread = 0;
  for (const Row& r : rows_of("scenario/opening.csv").rows) {
    EXPECT_TRUE(tags.insert(r.at("old_tag")).second) << r.at("old_tag");
    if (r.at("kind") == "bar") continue;
    ASSERT_EQ(r.at("kind"), "drop");
    ++drops;
    EXPECT_EQ(r.at("count"), "1");
    EXPECT_EQ(r.at("doubt"), "1 mm");
    const Length length = ReadLength(r.at("length"));
    EXPECT_TRUE(length.nm >= 150 * kNmPerMm && length.nm <= 3500 * kNmPerMm) << r.at("old_tag");
    EXPECT_EQ(length.nm % kNmPerMm, 0) << r.at("old_tag");
    owned += r.at("owner").empty() ? 0 : 1;
    unread += r.at("heat").empty() ? 1 : 0;
  }
  EXPECT_GE(drops, 580);
  EXPECT_LE(drops, 620);
  EXPECT_GE(owned, 3);
  EXPECT_GE(unread, 3);
}

TEST(Stock, AHeatIsOfOneMillAndOneGrade) {
  std::map<std::string, std::pair<std::string, std::string>> heats;
  std::map<std::string, std::set<GroupKey>> sections;
  for (const Row& r : all_metal()) {
    const std::string& heat = r.at("heat");
    if (heat.empty()) {
      EXPECT_EQ(r.at("read_from"), "none");
      EXPECT_EQ(r.at("mill") + r.at("papers"), "") << "an unread heat has neither mill nor papers";
      continue;
    }
    EXPECT_FALSE(r.at("mill").empty() || r.at("read_from").empty()) << heat;
    const std::pair<std::string, std::string> here{r.at("mill"), r.at("grade")};
    EXPECT_EQ(heats.try_emplace(heat, here).first->second, here) << heat;
    sections[heat].insert(group_of(r));
  }
  int in_two = 0;
  for (const auto& [heat, s] : sections) in_two += s.size() == 2 ? 1 : 0;
  EXPECT_GE(in_two, 5) << "some heats come in two sections";
}

TEST(Stock, AGroupHasOneConditionAndALotOneKindOfPapers) {
  std::map<GroupKey, std::string> conditions;
  std::map<std::pair<std::string, GroupKey>, std::string> papers;
  for (const Row& r : all_metal()) {
    EXPECT_FALSE(r.at("condition").empty());
    EXPECT_EQ(conditions.try_emplace(group_of(r), r.at("condition")).first->second, r.at("condition"));
  }
  for (const Row& r : rows_of("scenario/opening.csv").rows) {
    if (r.at("heat").empty()) continue;
    EXPECT_EQ(papers.try_emplace({r.at("heat"), group_of(r)}, r.at("papers")).first->second, r.at("papers"));
  }
}

TEST(Deliveries, AreEightNotesWithOneLineShortAndOneOffTheScale) {
  std::set<std::string> notes;
  std::set<std::string> short_on, off_on;
  for (const Row& r : rows_of("scenario/deliveries.csv").rows) {
    notes.insert(r.at("note"));
    EXPECT_EQ(r.at("papers"), "awaited");
    const int missing = std::stoi(r.at("slip_count")) - std::stoi(r.at("count"));
    if (missing != 0) {
      EXPECT_EQ(missing, 1);
      EXPECT_TRUE(short_on.insert(r.at("note")).second);
    }
    const std::int64_t theory = theory_of(r).g;
    const std::int64_t off = std::llabs(ReadMass(r.at("weighed")).g - theory) * 1000 / theory;
    if (off > 50) {
      EXPECT_TRUE(off_on.insert(r.at("note")).second);
    } else {
      EXPECT_LE(off, 15) << r.at("note") << " line " << r.at("line") << ": per mille off theory";
    }
    EXPECT_LT(r.at("received"), "2026-11-25");
  }
  EXPECT_EQ(notes.size(), 8U);
  EXPECT_EQ(short_on.size(), 1U);
  EXPECT_EQ(off_on, short_on);
}

}  // namespace
}  // namespace heatkeep::seed_test
