// The fixture itself: its logins are real, its books are apart, and it keeps the rights of the template.
#include "tests/fixture/test_book.h"

#include <gtest/gtest.h>

#include "client/book/persons.h"
#include "tests/fixture/test_cluster.h"

namespace heatkeep {
namespace {

TEST(TestBook, LogsInForRealWithOneRoleEach) {
  TestBook book;
  for (const std::string& role : RoleNames()) {
    Connection person = book.As(role);
    EXPECT_EQ(person.Execute("select session_user::text as u").Only().Text("u"), "test_" + role);
    for (const std::string& other : RoleNames())
      EXPECT_EQ(person.Execute("select pg_has_role('heatkeep_' || $1, 'member') as m", {other}).Only().Bool("m"), role == other);
  }
  for (const std::string& role : RoleNames())
    EXPECT_TRUE(book.As("all").Execute("select pg_has_role('heatkeep_' || $1, 'member') as m", {role}).Only().Bool("m"));
}

TEST(TestBook, RightsOnTheDatabaseAreThoseOfTheTemplate) {
  TestBook book;
  const char* rights =
      "select coalesce(string_agg(grantee::regrole || ' ' || privilege_type, ',' order by "
      "grantee::regrole::text, privilege_type), '') as r"
      " from pg_database d, aclexplode(coalesce(d.datacl, acldefault('d', d.datdba))) where datname = $1";
  Connection admin = book.Admin();
  const std::string expected = admin.Execute(rights, {kBookDatabase}).Only().Text("r");
  EXPECT_FALSE(expected.empty());
  EXPECT_EQ(admin.Execute(rights, {book.database()}).Only().Text("r"), expected);
}

TEST(TestBook, TwoBooksAreApart) {
  TestBook one, other;
  one.Admin().ExecuteScript("create table public.mark (i int)");
  EXPECT_FALSE(other.Admin().Execute("select to_regclass('public.mark') is not null as t").Only().Bool("t"));
}

TEST(TestBook, IsAtTheVersionOfTheFiles) {
  TestBook book;
  EXPECT_GE(book.Admin().Execute("select max(version) as v from book.migration").Only().Int("v"), 1);
}

}  // namespace
}  // namespace heatkeep
