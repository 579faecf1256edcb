// Which book is meant by what was said and what the environment says.
#include "client/book/book_location.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <cstdlib>

#include "client/book/book_error.h"
#include "client/book/book_home.h"
#include "client/book/idle_watcher.h"
#include "client/gateway/conninfo.h"

namespace heatkeep {
namespace {

struct Location : testing::Test {
  Location() {
    for (const char* name : {"PGHOST", "PGHOSTADDR", "PGSERVICE", "PGDATABASE", "HEATKEEP_HOME", "XDG_DATA_HOME", "HEATKEEP_IDLE_SECONDS"})
      unsetenv(name);
  }
  ~Location() override {
    for (const char* name : {"PGHOST", "PGSERVICE", "PGDATABASE", "HEATKEEP_HOME", "XDG_DATA_HOME", "HEATKEEP_IDLE_SECONDS"})
      unsetenv(name);
  }
};

TEST_F(Location, NothingSaidIsABookOfOnesOwnUnderTheAccountsName) {
  const BookLocation found = FindBook({});
  EXPECT_TRUE(found.own);
  EXPECT_EQ(found.home, HomeFolder());
  EXPECT_EQ(found.person, OwnAccount().name);
}

TEST_F(Location, HomeFollowsTheEnvironment) {
  if (geteuid() == 0) EXPECT_EQ(HomeFolder(), "/var/lib/heatkeep");
  else {
    setenv("XDG_DATA_HOME", "/data", 1);
    EXPECT_EQ(HomeFolder(), "/data/heatkeep");
  }
  setenv("HEATKEEP_HOME", "/elsewhere", 1);
  EXPECT_EQ(HomeFolder(), "/elsewhere");
  setenv("HEATKEEP_HOME", "not/absolute", 1);
  EXPECT_THROW(HomeFolder(), BookError);
}

TEST_F(Location, AnyOfLibpqsVariablesMeansAServer) {
  for (const char* name : {"PGHOST", "PGSERVICE", "PGDATABASE"}) {
    setenv(name, "somewhere", 1);
    EXPECT_FALSE(FindBook({}).own) << name;
    EXPECT_TRUE(FindBook({"", "", "/my/home"}).own) << "a home that was named comes before " << name;
    unsetenv(name);
  }
  setenv("PGHOST", "", 1);
  EXPECT_TRUE(FindBook({}).own) << "empty is not set";
}

TEST_F(Location, BookIsAStringAnAddressOrAService) {
  EXPECT_EQ(FindBook({"host=db dbname=b", "", ""}).conninfo, "dbname='b' host='db' ");
  EXPECT_EQ(FindBook({"shop", "", ""}).conninfo, "service='shop' ");
  EXPECT_EQ(FindBook({"postgresql://me@db/b", "anna", ""}).conninfo, "dbname='b' host='db' user='anna' ");
  EXPECT_THROW(FindBook({"host=db", "", "/home"}), BookError);
}

TEST_F(Location, AStringThatCannotBeReadIsRefusedWithoutRepeatingIt) {
  try {
    FindBook({"host=db password='geheim", "", ""});
    ADD_FAILURE() << "it was read";
  } catch (const BookError& error) { EXPECT_EQ(std::string(error.what()).find("geheim"), std::string::npos); }
}

TEST_F(Location, ValuesCannotBreakOutOfTheirPlace) {
  EXPECT_EQ(ConninfoPair("user", "x' host='evil\\"), "user='x\\' host=\\'evil\\\\'");
  EXPECT_EQ(ConninfoFor("host=db", "x' host='evil"), "host='db' user='x\\' host=\\'evil' ");
}

TEST_F(Location, IdleLimitIsAWholeNumberOfSeconds) {
  EXPECT_EQ(IdleLimit(), std::chrono::seconds(600));
  setenv("HEATKEEP_IDLE_SECONDS", "2", 1);
  EXPECT_EQ(IdleLimit(), std::chrono::seconds(2));
  for (const char* wrong : {"0", "-1", "2s", "1e3", "99999999999"}) {
    setenv("HEATKEEP_IDLE_SECONDS", wrong, 1);
    EXPECT_THROW(IdleLimit(), BookError) << wrong;
  }
}

}  // namespace
}  // namespace heatkeep
