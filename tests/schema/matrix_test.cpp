// Who may do what, found out by doing it: every function of schema api is called as every role and by a login that has
// none (let into the database for this), with nothing in its arguments. Allowed is whatever is answered but 42501.
// The golden file tests/golden/called.txt says it; when a change is meant: HEATKEEP_WRITE_GOLDEN=1 test_schema
// --gtest_filter=Matrix.*
#include <cstdlib>
#include <fstream>
#include <sstream>

#include "tests/schema/small_shop.h"

namespace heatkeep {
namespace {

TEST(Matrix, EveryDeedCalledByEveryRoleIsAllowedOrRefusedAsTheGoldenFileSays) {
  SmallShop shop;
  shop.admin.ExecuteScript("grant connect on database " + shop.admin.QuoteName(shop.book.database()) + " to test_stranger");
  const std::vector<std::string> roles{"clerk", "planner", "saw", "quality", "owner", "stranger"};
  std::vector<Connection> people;
  for (const std::string& role : roles) people.push_back(shop.book.As(role));
  std::string matrix;
  int allowed = 0, refused = 0;
  for (
      const Row f : shop.admin.Execute(
          "select p.proname::text as name, coalesce((select string_agg('null::' || t::regtype, ', ' order by n) from unnest(proargtypes) with ordinality a (t, n)), '') as nulls"
          " from pg_proc p where pronamespace = 'api'::regnamespace order by proname::text collate \"C\"")) {
    matrix += f.Text("name") + ":";
    for (std::size_t i = 0; i < roles.size(); ++i) {
      const std::string code = Code([&] { people[i].Execute("select count(*) from api." + f.Text("name") + "(" + f.Text("nulls") + ")"); });
      (code == "42501" ? refused : allowed) += 1;
      if (code != "42501") {
        matrix += " " + roles[i];
        EXPECT_TRUE(code.empty() || code.starts_with("HK")) << f.Text("name") << " by " << roles[i] << ": " << code;
      }
    }
    matrix += '\n';
  }
  EXPECT_GT(allowed, 100);
  EXPECT_GT(refused, 300);
  if (std::getenv("HEATKEEP_WRITE_GOLDEN")) std::ofstream(HEATKEEP_GOLDEN "/called.txt") << matrix;
  std::ifstream file(HEATKEEP_GOLDEN "/called.txt");
  std::ostringstream golden;
  golden << file.rdbuf();
  EXPECT_EQ(matrix, golden.str());
}

TEST(Matrix, ALoginWithoutARoleIsNotEvenLetIn_42501) {
  TestBook book;
  EXPECT_THROW(book.As("stranger"), DbError);
}

}  // namespace
}  // namespace heatkeep
