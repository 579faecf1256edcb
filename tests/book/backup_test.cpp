// A book backed up while people work, and given back into a fresh cluster: the same digest, in order, and ready for the next deed.
#include "client/book/backup.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <atomic>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>
#include <thread>

#include "client/book/book_error.h"
#include "client/book/restore.h"
#include "client/command/command_line.h"
#include "client/gateway/records.h"
#include "tests/schema/every_stock_deed.h"

namespace heatkeep {
namespace {

namespace fs = std::filesystem;

const RestoreProgress kQuiet = [](const std::string&, std::int64_t, std::int64_t) {};

struct Backup : testing::Test {
  Backup() {
    std::string made = (fs::temp_directory_path() / "heatkeep-backup-XXXXXX").string();
    folder = mkdtemp(made.data());
    if (geteuid() == 0) fs::permissions(folder, fs::perms(0755));
  }
  ~Backup() override { fs::remove_all(folder); }
  BackupFacts Make(const std::string& name, Connection keeper) {
    return MakeBackup(keeper, "test", folder / name, [](std::int64_t) {});
  }
  int Heatkeep(const std::vector<std::string>& words) {
    std::vector<const char*> argv{"heatkeep"};
    for (const std::string& word : words) argv.push_back(word.c_str());
    std::istringstream in;
    out.str("");
    err.str("");
    return command::RunCommandLine(static_cast<int>(argv.size()), argv.data(), in, out, err);
  }
  // The file again with another manifest.
  fs::path WithFacts(const std::string& name, const fs::path& from, BackupFacts facts) {
    BackupReader reader(from);
    BackupWriter writer(folder / name);
    for (std::string_view bytes; !(bytes = reader.Next()).empty();) writer.Append(bytes);
    writer.Finish(std::move(facts));
    return folder / name;
  }
  fs::path folder;
  std::ostringstream out, err;
};

TEST_F(Backup, ComesBackInAFreshClusterAsItWasAndGoesOn) {
  SmallShop shop;
  DoEveryStockDeed(shop);
  const auto tags = shop.ReceiveCertified({.heat = "B1", .count = 2});
  const BackupFacts facts = Make("b.tar", shop.book.Admin());
  const BookDigest before = ReadBookDigest(shop.admin);
  EXPECT_EQ(facts.digest, before.digest);
  EXPECT_EQ(facts.happenings, before.happenings);
  const std::string home = (folder / "home").string();
  ASSERT_EQ(Heatkeep({"--home", home, "book", "restore", (folder / "b.tar").string(), "--json"}), 0) << err.str() << out.str();
  const auto said = nlohmann::json::parse(out.str());
  EXPECT_EQ(said["digest"], before.digest);
  EXPECT_EQ(said["in_order"], true);
  EXPECT_FALSE(fs::exists(home + ".restoring"));
  for (const char* inner : {"cluster", "log"})
    for (const auto& entry : fs::recursive_directory_iterator(fs::path(home) / inner))
      EXPECT_EQ(static_cast<unsigned>(entry.status().permissions()) & 077U, 0U) << entry.path() << " is nobody else's";
  const BookLocation where = FindBook({"", "test_clerk", home});
  {
    Connection clerk = OpenBook(where);
    EXPECT_EQ(ReadBookDigest(clerk).digest, before.digest);
    Do(clerk, "put_away", {tags.at(0), "B1-1"});
    EXPECT_EQ(Code([&] { clerk.Execute("select * from api.verify_book()"); }), "42501") << "a clerk is a clerk there too";
    EXPECT_EQ(Code([&] { clerk.Execute("select * from book.piece"); }), "42501");
  }
  EXPECT_EQ(Heatkeep({"--home", home, "--person", "test_quality", "book", "verify"}), 0) << out.str() << err.str();
  EXPECT_EQ(Heatkeep({"--home", home, "--person", "test_quality", "book", "person", "list"}), 0);
  EXPECT_NE(out.str().find("test_all: clerk planner saw quality owner\n"), std::string::npos) << out.str();
  EXPECT_EQ(Heatkeep({"--home", home, "book", "restore", (folder / "b.tar").string()}), 2) << "never over a book";
  EXPECT_NE(err.str().find("never given back over one"), std::string::npos) << err.str();
  // and round again: what came back can be backed up, and is the same but for the one deed
  EXPECT_EQ(Heatkeep({"--home", home, "book", "backup", (folder / "again.tar").string()}), 0) << err.str();
  EXPECT_EQ(BackupReader(folder / "again.tar").facts().happenings, facts.happenings + 1);
  EXPECT_EQ(Heatkeep({"--home", home, "book", "stop"}), 0);
}

TEST_F(Backup, WhilePeopleWorkIsOfOneMoment) {
  SmallShop shop;
  const auto tags = shop.Receive({.count = 2});
  std::atomic<bool> enough{false};
  std::atomic<int> moved{0};
  std::thread clerk([&] {
    Connection person = shop.book.As("clerk");
    for (; !enough; ++moved) Do(person, "put_away", {tags.at(0), moved % 2 == 0 ? "GATE" : "B1-1"});
  });
  while (moved < 5) std::this_thread::yield();
  const BackupFacts facts = Make("b.tar", shop.book.Admin());
  enough = true;
  clerk.join();
  EXPECT_GT(ReadBookDigest(shop.admin).happenings, facts.happenings) << "they did work on";
  TestBook empty(TestBook::Start::Empty);
  Connection keeper = empty.Admin();
  BackupReader backup(folder / "b.tar");
  const RestoreReport report = RestoreOnServer(keeper, backup, kQuiet);
  EXPECT_EQ(ReadBookDigest(keeper).digest, facts.digest);
  for (const CheckRow& check : report.checks)
    EXPECT_TRUE(check.ok || check.check == "the server keeps what it says") << check.check << check.detail;
  Connection there = empty.As("clerk");
  EXPECT_EQ(Code([&] { Do(there, "put_away", {tags.at(0), "B1-1"}); }), "");
}

TEST_F(Backup, ThatDoesNotFitOrIsNotWholeLeavesNothingBehind) {
  SmallShop shop;
  shop.Receive({});
  const BackupFacts facts = Make("b.tar", shop.book.Admin());
  const auto into_own = [&](const fs::path& file) {
    const int code = Heatkeep({"--home", (folder / "home").string(), "book", "restore", file.string()});
    EXPECT_FALSE(fs::exists(folder / "home"));
    EXPECT_FALSE(fs::exists(folder / "home.restoring"));
    return code;
  };
  BackupFacts other = facts;
  other.schema = 9999;
  EXPECT_EQ(into_own(WithFacts("newer", folder / "b.tar", other)), 3) << err.str();
  EXPECT_NE(err.str().find("only knows up to"), std::string::npos);
  other = facts;
  other.server = 990000;
  EXPECT_EQ(into_own(WithFacts("server", folder / "b.tar", other)), 2) << err.str();
  EXPECT_NE(err.str().find("PostgreSQL 99"), std::string::npos);
  EXPECT_EQ(facts.dumped_by, facts.server / 10000);
  other = facts;
  other.dumped_by = 98;
  EXPECT_EQ(into_own(WithFacts("dumped", folder / "b.tar", other)), 2) << err.str();
  EXPECT_NE(err.str().find("pg_dump 98"), std::string::npos) << err.str();
  other = facts;
  other.digest = std::string(64, '0');
  {
    TestBook empty(TestBook::Start::Empty);
    Connection keeper = empty.Admin();
    BackupReader wrong(WithFacts("digest", folder / "b.tar", other));
    EXPECT_THROW(RestoreOnServer(keeper, wrong, kQuiet), BookError);
    EXPECT_EQ(keeper.Execute("select count(*) as n from pg_namespace where nspname in ('book', 'guard', 'api')").Only().Int("n"), 0)
        << "what came back was taken away again";
  }
  {
    BackupWriter writer(folder / "rubbish");
    writer.Append("PGDMP and then nothing");
    writer.Finish(facts);
  }
  EXPECT_EQ(into_own(folder / "rubbish"), 4) << err.str();
  fs::copy_file(folder / "b.tar", folder / "cut");
  fs::resize_file(folder / "cut", fs::file_size(folder / "cut") - 3000);
  EXPECT_EQ(into_own(folder / "cut"), 2);
  EXPECT_EQ(Heatkeep({"book", "restore", "--check", (folder / "cut").string()}), 2);
  EXPECT_EQ(Heatkeep({"book", "restore", "--check", "--json", (folder / "b.tar").string()}), 0);
  EXPECT_EQ(nlohmann::json::parse(out.str())["digest"], facts.digest);
}

TEST_F(Backup, OnAServerThatHoldsAnythingIsRefused) {
  SmallShop shop;
  shop.Receive({});
  Make("b.tar", shop.book.Admin());
  TestBook there(TestBook::Start::Empty);
  Connection keeper = there.Admin();
  keeper.Execute("create table mine (a int)");
  BackupReader backup(folder / "b.tar");
  EXPECT_THROW(RestoreOnServer(keeper, backup, kQuiet), BookError);
  EXPECT_EQ(keeper.Execute("select count(*) as n from pg_namespace where nspname = 'book'").Only().Int("n"), 0);
}

TEST_F(Backup, ThatIsStoppedIsNotThere) {
  SmallShop shop;
  shop.Receive({});
  Connection keeper = shop.book.Admin();
  EXPECT_THROW(MakeBackup(keeper, "test", folder / "b.tar", [](std::int64_t) { throw std::runtime_error("stopped"); }), std::runtime_error);
  EXPECT_TRUE(fs::is_empty(folder));
  EXPECT_EQ(ReadBookDigest(keeper).digest, ReadBookDigest(shop.admin).digest) << "the session is as it was";
}

}  // namespace
}  // namespace heatkeep
