// The commands on a book, and its people; against a cluster in a home of the test's own, with the real schema
// files.
#include "client/command/book_command.h"

#include <gtest/gtest.h>
#include <sys/stat.h>
#include <unistd.h>

#include <filesystem>
#include <nlohmann/json.hpp>
#include <sstream>

#include "client/book/account.h"
#include "client/book/own_book.h"
#include "client/book/persons.h"
#include "client/book/private_cluster.h"
#include "tests/fixture/test_book.h"
#include "tests/fixture/test_cluster.h"

namespace heatkeep {
namespace {

struct Commanded : testing::Test {
  static void SetUpTestSuite() {
    std::string made = (std::filesystem::temp_directory_path() / "heatkeep-home-XXXXXX").string();
    ASSERT_NE(mkdtemp(made.data()), nullptr);
    if (geteuid() == 0) {  // the server runs as another account then
      ASSERT_EQ(chmod(made.c_str(), 0755), 0);
    }
    home = made + "/home";
    folder = made;
    PrivateCluster({home, {}, {"fsync = off"}}).Init();  // spares the disk; the deeds find it half made and go on
  }
  static void TearDownTestSuite() {
    PrivateCluster({home, {}, {}}).Stop();
    std::filesystem::remove_all(folder);
  }
  int Run(BookDeed deed, BookCommand command = {}, const std::string& typed = "") {
    if (command.where.book.empty() && command.where.home.empty()) command.where.home = home;
    std::istringstream in(typed);
    out.str("");
    err.str("");
    return RunBook(deed, command, in, out, err);
  }
  static inline std::string home, folder;
  std::ostringstream out, err;
};

TEST_F(Commanded, DeedsOnABookNotMadeYetSaySo) {
  BookCommand other;
  other.where.home = folder + "/other";
  EXPECT_EQ(Run(BookDeed::Start, other), 4);
  EXPECT_NE(err.str().find("heatkeep book init"), std::string::npos) << err.str();
  EXPECT_EQ(Run(BookDeed::Status, other), 0);
  EXPECT_NE(out.str().find("made      no"), std::string::npos) << out.str();
}

TEST_F(Commanded, InitMakesABookInOrderInWhichTheMakerMayDoEverything) {
  BookCommand fresh;
  fresh.where.home = folder + "/fresh";
  ASSERT_EQ(Run(BookDeed::Init, fresh), 0) << err.str();
  EXPECT_NE(out.str().find("ran 0001_"), std::string::npos) << out.str();
  ASSERT_EQ(Run(BookDeed::Init, fresh), 0) << err.str();
  EXPECT_NE(out.str().find("nothing new"), std::string::npos) << out.str();
  ASSERT_EQ(Run(BookDeed::PersonList, fresh), 0) << err.str();
  EXPECT_EQ(out.str(), OwnAccount().name + ": clerk planner saw quality owner\n");
  EXPECT_EQ(Run(BookDeed::Verify, fresh), 0) << out.str() << err.str();
  EXPECT_EQ(Run(BookDeed::Stop, fresh), 0) << err.str();
}

TEST_F(Commanded, VerifyOfABookThatCouldLoseWhatItAcknowledgedIsOne) {
  ASSERT_EQ(Run(BookDeed::Init), 0) << err.str();  // this home's server runs without fsync
  BookCommand json;
  json.json = true;
  EXPECT_EQ(Run(BookDeed::Verify, json), 1);
  const auto said = nlohmann::json::parse(out.str());
  EXPECT_EQ(said["ok"], false);
  EXPECT_GT(said["checks"].size(), 1U);
}

TEST_F(Commanded, BookNobodyMadeIsMadeWhenItIsOpenedAndAMakingCutShortIsTakenUpAgain) {
  BookChoice choice;
  choice.home = folder + "/unmade";
  PrivateCluster({choice.home, {}, {"fsync = off"}}).Init();  // and no further
  const BookLocation where = FindBook(choice);
  EXPECT_GE(OpenOrMakeBook(where).Execute("select api.schema_version() as v").Only().Int("v"), 1);
  EXPECT_EQ(OpenOrMakeBook(where).User(), OwnAccount().name);
  PrivateCluster({choice.home, {}, {}}).Stop();
}

TEST_F(Commanded, StatusTellsInJsonAndStopAndStartWork) {
  ASSERT_EQ(Run(BookDeed::Init), 0) << err.str();
  BookCommand json;
  json.json = true;
  ASSERT_EQ(Run(BookDeed::Status, json), 0);
  const auto status = nlohmann::json::parse(out.str());
  EXPECT_EQ(status["running"], true);
  EXPECT_GE(status["version"], 1);
  ASSERT_EQ(Run(BookDeed::Stop), 0);
  EXPECT_EQ(out.str(), "the book is stopped\n");
  ASSERT_EQ(Run(BookDeed::Stop), 0);
  EXPECT_EQ(out.str(), "the book was not running\n");
  ASSERT_EQ(Run(BookDeed::Start), 0);
  EXPECT_EQ(out.str(), "the book is running\n");
}

TEST_F(Commanded, PersonsAreAddedAndAddedToButNeverTwice) {
  ASSERT_EQ(Run(BookDeed::Init), 0) << err.str();
  BookCommand anna;
  anna.name = "anna.b-1_x";
  anna.roles = {"clerk"};
  ASSERT_EQ(Run(BookDeed::PersonAdd, anna), 0) << err.str();
  anna.roles = {"planner", "clerk"};
  ASSERT_EQ(Run(BookDeed::PersonAdd, anna), 0) << err.str();
  ASSERT_EQ(Run(BookDeed::PersonList), 0);
  EXPECT_NE(out.str().find("anna.b-1_x: clerk planner\n"), std::string::npos) << out.str();
  BookCommand as_anna;
  as_anna.where.person = "anna.b-1_x";
  as_anna.json = true;
  ASSERT_EQ(Run(BookDeed::Status, as_anna), 0);
  EXPECT_EQ(nlohmann::json::parse(out.str())["person"], "anna.b-1_x");
}

TEST_F(Commanded, WrongNamesRolesAndPasswordsAreBadInput) {
  ASSERT_EQ(Run(BookDeed::Init), 0) << err.str();
  BookCommand wrong;
  wrong.roles = {"clerk"};
  for (const char* name :
       {"", "Anna", "-x", "a b", "a\"b", "a'b", "heatkeep_admin", "pg_x", "public", "äß", "a1234567890123456789012345678901234567890"}) {
    wrong.name = name;
    EXPECT_EQ(Run(BookDeed::PersonAdd, wrong), 2) << name;
    EXPECT_NE(err.str().find("expected"), std::string::npos) << err.str();
  }
  wrong.name = "bert";
  wrong.roles = {"boss"};
  EXPECT_EQ(Run(BookDeed::PersonAdd, wrong), 2);
  wrong.roles = {"clerk"};
  wrong.password_stdin = true;
  EXPECT_EQ(Run(BookDeed::PersonAdd, wrong, "secret\n"), 2) << "a book of one's own has no passwords";
  EXPECT_EQ(Run(BookDeed::PersonList), 0);
  EXPECT_EQ(out.str().find("bert"), std::string::npos);
}

TEST_F(Commanded, OnAServerAPasswordIsKeptAsScramOnlyAndTheServerIsNotStopped) {
  TestBook shop;
  BookCommand cleo;
  cleo.where.book = shop.Conninfo("admin");
  cleo.name = "cleo";
  cleo.roles = {"saw"};
  cleo.password_stdin = true;
  ASSERT_EQ(Run(BookDeed::PersonAdd, cleo, "a secret\n"), 0) << err.str();
  EXPECT_EQ((out.str() + err.str()).find("secret"), std::string::npos);
  const Result rows = shop.Admin().Execute("select rolpassword as p from pg_authid where rolname = 'cleo'");
  EXPECT_TRUE(rows.Only().Text("p").starts_with("SCRAM-SHA-256$"));
  EXPECT_EQ(Run(BookDeed::PersonAdd, cleo, ""), 2) << "an empty password";
  EXPECT_EQ(Run(BookDeed::Stop, cleo), 2);
}

TEST_F(Commanded, UnreachableServerIsFour) {
  BookCommand nowhere;
  nowhere.where.book = "host=/nowhere dbname=heatkeep";
  EXPECT_EQ(Run(BookDeed::Verify, nowhere), 4);
  EXPECT_EQ(Run(BookDeed::Status, nowhere), 4);
  nowhere.where.book = "postgresql://[bad";
  EXPECT_EQ(Run(BookDeed::Verify, nowhere), 2);
}

}  // namespace
}  // namespace heatkeep
