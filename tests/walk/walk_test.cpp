// A random walk of deeds by all roles: whatever is done and refused in whatever order, the book stays whole. One person
// after another first, so that a seed gives the same walk again, then several at once. HEATKEEP_WALK_STEPS and
// HEATKEEP_WALK_SEED make it longer (`ninja walk_long`) or another.
#include <chrono>
#include <cstdlib>
#include <iostream>
#include <thread>

#include "client/models/phrase_book.h"
#include "tests/schema/every_stock_deed.h"
#include "tests/schema/lock_watch.h"
#include "tests/walk/walker.h"
#include "tests/walk/whole.h"

namespace heatkeep {
namespace {

int Wanted(const char* name, int otherwise) {
  const char* text = std::getenv(name);
  return text ? std::atoi(text) : otherwise;
}

int Total(const Tally& tally, bool done) {
  int total = 0;
  for (const auto& [deed, codes] : tally)
    for (const auto& [code, n] : codes) total += (code.empty() == done) ? n : 0;
  return total;
}

void PrepareShop(SmallShop& shop) {
  AddVanAndRack(shop);
  Do(shop.owner, "define_bins",
     {R"({"groups": [{"family": "steel", "group": "steel"}], "bins": [{"bin": "bin 2", "group": "steel"}, {"bin": "bin 3", "group": "other"}]})"});
  for (const char* device : {"scanner 1", "scanner 2"}) Do(shop.saw, "take_tag_block", {device, "main", 10});
  WatchWrites(shop.admin);
  DoBody(shop.quality, "add_device", {{"device", "tape 1"}, {"kind", "tape"}, {"site", "main"}});
}

TEST(Walk, HasAMoveForEveryDeed) {
  SmallShop shop;
  EXPECT_EQ(Walker(shop.book, 1).Unmatched(), std::vector<std::string>());
}

TEST(Walk, TheBookStaysWholeWhateverIsDone) {
  const int steps = Wanted("HEATKEEP_WALK_STEPS", 2400);
  const auto seed = static_cast<std::uint64_t>(Wanted("HEATKEEP_WALK_SEED", 4711));
  SmallShop shop;
  PrepareShop(shop);
  const auto start = std::chrono::steady_clock::now();
  Walker alone(shop.book, seed), first(shop.book, seed + 1), second(shop.book, seed + 2);
  alone.Walk(steps / 2);
  std::thread other([&] { first.Walk(steps / 4); });
  second.Walk(steps / 4);
  other.join();
  const auto walked = std::chrono::duration_cast<std::chrono::milliseconds>(std::chrono::steady_clock::now() - start).count();
  Tally tally;
  std::set<std::string> told;
  for (const Walker* walker : {&alone, &first, &second}) {
    Add(tally, walker->tally());
    for (const std::string& failure : walker->failures()) ADD_FAILURE() << failure;
    told.insert(walker->told().begin(), walker->told().end());
  }
  // what a desk's reader is told in their own language: client/models/phrase_book.h
  const PhraseBook phrases(BookPhrases());
  for (const std::string& words : told)
    EXPECT_TRUE(words.empty() || words.ends_with(' ') ||  // an empty name stood at its end
                phrases.Knows(QString::fromStdString(words)))
        << "no phrase of the sources says: " << words;
  const Wholeness whole = LookWhetherWhole(shop);
  EXPECT_EQ(DeadlocksIn(shop.admin), 0);
  std::cout << "seed " << seed << ": " << Total(tally, true) << " deeds done, " << Total(tally, false) << " refused, in " << walked
            << " ms; verify took " << whole.verify_ms << " ms over " << shop.Number("select count(*) as n from book.happening")
            << " happenings; " << whole.heats << " heats add up\n";
  Print(std::cout, tally);
  EXPECT_EQ(whole.broken, std::vector<std::string>());
  EXPECT_GT(whole.heats, 5);
  EXPECT_GT(Total(tally, true), steps / 5);
  EXPECT_GT(Total(tally, false), steps / 5);
  EXPECT_GT(tally["record_cut"][""], steps / 60);  // metal is really cut
  if (steps >= 2000) {
    for (const char* deed : {"receive_delivery", "commit_plan", "pull", "record_cut", "ship", "put_away"})
      EXPECT_GT(tally[deed][""], 0) << deed << " was never done";
  }
  if (steps >= 50'000) {
    for (const auto& [deed, codes] : tally) EXPECT_TRUE(codes.contains("")) << deed << " was never done";
  }
}

}  // namespace
}  // namespace heatkeep
