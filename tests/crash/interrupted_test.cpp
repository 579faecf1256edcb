// kill -9 while a book is made, and while it is brought up to date: begun again it is whole, and what was in it is there.
#include <signal.h>

#include <fstream>
#include <iostream>

#include "client/book/account.h"
#include "client/book/schema_files.h"
#include "client/book/schema_fingerprint.h"
#include "client/book/server_processes.h"
#include "tests/crash/sawing_works.h"

namespace heatkeep {
namespace {

namespace fs = std::filesystem;

int FaultRounds(int rounds) {
  const char* given = std::getenv("HEATKEEP_FAULT_ROUNDS");
  return given ? std::stoi(given) : rounds;
}

struct Interrupted : SawingWorks {
  // Runs it and kills it, every other time with the server, at some moment of the first `longest` microseconds. True when it had not ended.
  bool RunAndKill(const std::vector<std::string>& words, const fs::path& home_of, int longest, bool server_too) {
    std::vector<std::string> all{"--home", home_of};
    all.insert(all.end(), words.begin(), words.end());
    HeatkeepProcess process(all);
    Sleep(Random(0, longest));
    process.Kill();
    if (server_too)
      for (const pid_t pid : ServerProcesses(home_of / "cluster", ServerAccount())) kill(pid, SIGKILL);
    return process.Finish() == 128 + SIGKILL;
  }
  std::vector<std::string> ShapeOf(PrivateCluster& of) {
    Connection admin = of.Admin();
    return SchemaFingerprint(admin);
  }
};

TEST_F(Interrupted, AMakingThatWasKilledIsTakenUpAgain) {
  const std::vector<std::string> right = ShapeOf(cluster);
  int killed = 0;
  for (int round = 0; round < FaultRounds(2) && !HasFailure(); ++round) {
    const fs::path other = folder / ("other" + std::to_string(round));
    killed += RunAndKill({"book", "init"}, other, 2'500'000, round % 2 == 1);
    PrivateCluster made({other, {}, {}});
    HeatkeepProcess again({"--home", other, "book", "init"});
    EXPECT_EQ(again.Finish(), 0) << again.text();
    HeatkeepProcess verify({"--home", other, "book", "verify"});
    EXPECT_EQ(verify.Finish(), 0) << verify.text();
    EXPECT_EQ(ShapeOf(made), right);
    HeatkeepProcess({"--home", other, "book", "stop"}).Finish();
  }
  std::cout << killed << " makings were killed\n";
}

// The schema files as they are, and then with one migration more, of a table and of one that is there.
TEST_F(Interrupted, AMigrationThatWasKilledHasDoneNothingOrAll) {
  const fs::path newer = folder / "newer" / "schema", references = fs::path("seed") / "reference";
  fs::create_directories(folder / "newer" / "seed");
  fs::copy(SchemaFolder(), newer, fs::copy_options::recursive);
  fs::copy(fs::weakly_canonical(SchemaFolder()).parent_path() / references, folder / "newer" / references, fs::copy_options::recursive);
  const int version = 9999;
  std::ofstream(newer / "migrations" / (std::to_string(version) + "_one_more.sql"))
      << "create table book.one_more (one_more_id bigint generated always as identity primary key, words text not null);\n"
         "insert into book.one_more (words) select repeat('w', 100) from generate_series(1, 20000);\n"
         "create index one_more_words on book.one_more (words, one_more_id);\n"
         "alter table book.shipment add column one_more_id bigint references book.one_more;\n";
  const auto with_newer = [&](const std::vector<std::string>& words, const fs::path& home_of) {
    setenv("HEATKEEP_SCHEMA", newer.c_str(), 1);
    std::vector<std::string> all{"--home", home_of};
    all.insert(all.end(), words.begin(), words.end());
    HeatkeepProcess process(all);
    EXPECT_EQ(process.Finish(), 0) << process.text();
    unsetenv("HEATKEEP_SCHEMA");
  };
  const fs::path whole = folder / "whole";
  with_newer({"book", "init"}, whole);
  PrivateCluster never_killed({whole, {}, {}});
  const std::vector<std::string> right = ShapeOf(never_killed);
  int killed = 0, undone = 0;
  for (int round = 0; round < FaultRounds(2) && !HasFailure(); ++round) {
    const fs::path other = folder / ("book" + std::to_string(round));
    HeatkeepProcess made({"--home", other, "book", "init"});
    EXPECT_EQ(made.Finish(), 0) << made.text();
    HeatkeepProcess shop({"--home", other, "shop", "set", folder / "shop.json"});
    EXPECT_EQ(shop.Finish(), 0) << shop.text();
    PrivateCluster book({other, {}, {}});
    const std::int64_t happenings = book.Admin().Execute("select count(*) as n from book.happening").Only().Int("n");
    EXPECT_GT(happenings, 0);
    setenv("HEATKEEP_SCHEMA", newer.c_str(), 1);
    killed += RunAndKill({"book", "migrate"}, other, 500'000, round % 2 == 1);
    unsetenv("HEATKEEP_SCHEMA");
    {
      Connection admin = book.Admin();
      const std::int64_t run = admin.Execute("select count(*) as n from book.migration where version = $1", {version}).Only().Int("n");
      undone += run == 0;
      EXPECT_EQ(admin.Execute("select count(*) as n from pg_namespace where nspname in ('api', 'guard')").Only().Int("n"), 2);
    }
    with_newer({"book", "migrate"}, other);
    with_newer({"book", "verify"}, other);
    EXPECT_EQ(ShapeOf(book), right);
    EXPECT_EQ(book.Admin().Execute("select count(*) as n from book.happening").Only().Int("n"), happenings);
    HeatkeepProcess({"--home", other, "book", "stop"}).Finish();
  }
  HeatkeepProcess({"--home", whole, "book", "stop"}).Finish();
  std::cout << killed << " migrations were killed, " << undone << " of them had done nothing\n";
}

}  // namespace
}  // namespace heatkeep
