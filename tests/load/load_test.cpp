// Many at once on the same few drops, without a pause: nothing is promised twice, nothing that was acknowledged is lost, no deadlock
// reaches a person, every balance is exact. HEATKEEP_LOAD_CONNECTIONS and HEATKEEP_LOAD_SECONDS make it longer (`ninja load_long`).
#include <algorithm>
#include <array>
#include <cstdlib>
#include <iostream>
#include <thread>

#include "tests/load/hands.h"
#include "tests/schema/lock_watch.h"
#include "tests/walk/whole.h"

namespace heatkeep {
namespace {

int FromEnvironment(const char* name, int otherwise) {
  const char* text = std::getenv(name);
  return text ? std::atoi(text) : otherwise;
}

struct Role {
  const char* who;
  void (*work)(Hands&);
};
// Dealt out in turn: of eight connections three plan, two cut, and one each receives, holds and ships; one in sixteen counts.
constexpr std::array<Role, 16> kRoles{{{"planner", WorkAtThePlan},
                                       {"saw", WorkAtTheSaw},
                                       {"clerk", WorkAtTheDoor},
                                       {"quality", WorkOfQuality},
                                       {"planner", WorkAtThePlan},
                                       {"saw", WorkAtTheSaw},
                                       {"planner", WorkAtTheRamp},
                                       {"all", WorkAtTheCount},
                                       {"planner", WorkAtThePlan},
                                       {"saw", WorkAtTheSaw},
                                       {"planner", WorkAtThePlan},
                                       {"saw", WorkAtTheSaw},
                                       {"planner", WorkAtThePlan},
                                       {"clerk", WorkAtTheDoor},
                                       {"quality", WorkOfQuality},
                                       {"saw", WorkAtTheSaw}}};

double Part(std::vector<double>& sorted, double part) {
  return sorted.empty() ? 0 : sorted[static_cast<std::size_t>(part * static_cast<double>(sorted.size() - 1))];
}

void Report(std::vector<Journal>& journals, int seconds) {
  std::map<std::string, int> done;
  std::map<std::string, std::int64_t> refused;
  std::vector<double> times;
  std::int64_t total = 0, repeated = 0;
  for (Journal& journal : journals) {
    for (const Acknowledged& one : journal.done) ++done[one.deed];
    for (const auto& [code, n] : journal.refused) refused[code] += n;
    times.insert(times.end(), journal.milliseconds.begin(), journal.milliseconds.end());
    total += static_cast<std::int64_t>(journal.done.size());
    repeated += journal.repeated;
  }
  std::sort(times.begin(), times.end());
  std::cout << journals.size() << " connections, " << seconds << " s: " << times.size() << " deeds asked ("
            << static_cast<std::int64_t>(times.size()) / seconds << " a second), " << total << " acknowledged, " << repeated
            << " asked again under their number; a deed took " << Part(times, 0.5) << " ms in the middle, " << Part(times, 0.99)
            << " at 99 of 100, " << Part(times, 1) << " at most\n  acknowledged:";
  for (const auto& [deed, n] : done) std::cout << ' ' << deed << ' ' << n;
  std::cout << "\n  refused:";
  for (const auto& [code, n] : refused) std::cout << ' ' << code << ' ' << n;
  std::cout << '\n';
}

TEST(Load, NothingIsPromisedTwiceOrLostAndNobodyWaitsForGood) {
  const int connections = FromEnvironment("HEATKEEP_LOAD_CONNECTIONS", 8), seconds = FromEnvironment("HEATKEEP_LOAD_SECONDS", 8);
  SmallShop shop;
  std::vector<Wanted> lines;
  for (int line = 1; line <= 6; ++line) lines.push_back({.line = std::to_string(line * 10), .quantity = 100'000, .papers = "none"});
  shop.AddLines(lines);
  WatchWrites(shop.admin);
  std::vector<Journal> journals(static_cast<std::size_t>(connections));
  const auto until = std::chrono::steady_clock::now() + std::chrono::seconds(seconds);
  std::vector<std::thread> threads;
  for (int n = 0; n < connections; ++n)
    threads.emplace_back([&, n] {
      const Role& role = kRoles[static_cast<std::size_t>(n) % kRoles.size()];
      Hands hands(shop.book, role.who, n);
      try {
        while (std::chrono::steady_clock::now() < until && hands.journal.wrong.size() < 5) role.work(hands);
      } catch (const std::exception& error) { hands.journal.wrong.push_back(std::string(role.who) + " looking: " + error.what()); }
      journals[static_cast<std::size_t>(n)] = std::move(hands.journal);
    });
  for (std::thread& thread : threads) thread.join();
  Report(journals, seconds);
  for (const Journal& journal : journals)
    for (const std::string& wrong : journal.wrong) ADD_FAILURE() << wrong;
  EXPECT_EQ(DeadlocksIn(shop.admin), 0);
  EXPECT_EQ(NotInTheBook(shop.admin, journals), std::vector<std::string>());
  EXPECT_EQ(PromisedTwice(shop.admin), std::vector<std::string>());
  const Wholeness whole = LookWhetherWhole(shop);
  EXPECT_EQ(whole.broken, std::vector<std::string>());
  std::cout << shop.Number("select count(*) as n from book.happening") << " happenings verified in " << whole.verify_ms << " ms; "
            << whole.heats << " heats add up\n";
  // it was work on the same pieces, not side by side
  std::map<std::string, int> done;
  std::int64_t collided = 0;
  for (const Journal& journal : journals) {
    for (const Acknowledged& one : journal.done) ++done[one.deed];
    for (const auto& [code, n] : journal.refused) collided += n;
  }
  EXPECT_GT(collided, 0);
  for (const char* deed : {"receive_delivery", "commit_plan", "pull", "record_cut", "place_hold", "ship", "freeze_place"})
    EXPECT_GT(done[deed], 0) << deed;
}

}  // namespace
}  // namespace heatkeep
