// verify_new looks at what was written since the last seal and at that seal, and finds there what verify_book finds.
#include "tests/schema/small_shop.h"

namespace heatkeep {
namespace {

using Checks = std::vector<std::string>;

struct VerifyNew : ShopTest {
  void SetUp() override {
    old_bar = shop.ReceiveCertified({}).at(0);
    shop.AddLine({});
    Do(shop.quality, "seal_book", {});
    new_bar = shop.ReceiveCertified({.heat = "K9"}).at(0);
    drop = shop.Record(old_bar, {Trim(), Good(14, 290)}, DropLeft(1900)).at("drop_tag");
    ASSERT_EQ(Failing(), Checks());
    spoilt = true;
  }
  Checks Failing() { return ShopTest::Failing("verify_new"); }
  std::string old_bar, new_bar, drop;
};

TEST_F(VerifyNew, SaysHowMuchItLookedAt) {
  std::string chains;
  for (const Row row : shop.quality.Execute("select * from api.verify_new() where \"check\" = 'chains of happenings'"))
    chains = row.Text("detail");
  const std::int64_t since =
      shop.Number("select max(happening_id) - (select max(last_happening_id) from book.seal) as n from book.happening");
  EXPECT_EQ(chains, std::to_string(since) + " happenings since, 0 broken links");
}

TEST_F(VerifyNew, FindsARowThatIsOtherwiseThanItsHappenings) {
  Behind("update book.piece set place_id = place_id + 1 where tag = '" + drop + "'");
  EXPECT_EQ(Failing(), Checks{"replay equals the present state"});
}

TEST_F(VerifyNew, FindsMetalThatDoesNotAddUp) {
  Behind("update book.piece set length_nm = length_nm - 1 where tag = '" + drop + "'");
  EXPECT_EQ(Failing(), (Checks{"replay equals the present state", "metal balance of every piece", "metal balance of every lot"}));
}

TEST_F(VerifyNew, FindsAnEditedHappening) {
  Behind("update book.happening set who = 'x' where happening_id = (select max(happening_id) from book.happening where tbl = 'stroke')");
  EXPECT_EQ(Failing(), Checks{"chains of happenings"});
}

TEST_F(VerifyNew, FindsAHappeningThatWasTakenAway) {
  Do(shop.clerk, "put_away", {drop, "GATE"});
  Behind("delete from book.happening where deed = 'put_away'");
  EXPECT_EQ(Failing(), (Checks{"ends of chains", "replay equals the present state"}));
}

TEST_F(VerifyNew, FindsWhatWasTakenAwayBelowTheSealByTheSeal) {
  Behind("update book.chain_end set seq = seq - 1 where chain = 'cut_list'");
  EXPECT_EQ(Failing(), Checks{"the last seal"});
}

TEST_F(VerifyNew, FindsAnotherSeal) {
  Behind("update book.seal set digest = encode(sha256('x'), 'hex')");
  EXPECT_EQ(Failing(), Checks{"the last seal"});
}

TEST_F(VerifyNew, LooksAtAllOfABookThatWasNeverSealed) {
  Behind("delete from book.seal; update book.piece set place_id = place_id + 1 where tag = '" + new_bar + "'");
  EXPECT_EQ(Failing(), Checks{"replay equals the present state"});
}

// What it promises not to see: verify_book sees it.
TEST_F(VerifyNew, LeavesAnOldRowToVerifyBook) {
  Behind("update book.cut_list set name = 'x'");
  EXPECT_EQ(Failing(), Checks());
  EXPECT_EQ(shop.Word("select string_agg(\"check\", ',') as w from api.verify_book() where not ok and \"check\" like 'replay%'"),
            "replay equals the present state");
}

}  // namespace
}  // namespace heatkeep
