// What drops are worth to a plan of the book: by length where the shop has no past, by its past where it has one.
#include "tests/command/works.h"

namespace heatkeep::command {
namespace {

class Worth : public Works {
 protected:
  // One of 300 from a drop of 500 or of 800; the metal has a price.
  void TwoDrops() {
    ASSERT_EQ(As("owner",
                 {"shop", "set",
                  File("p.json", R"({"prices": [{"grade": "42CrMo4", "per_kg": "1.60", "scrap_per_kg": "0.25", "from": "2020-01-01"}]})")})
                  .code,
              0);
    TakeIn("A,drop,Vandrek,K1,42CrMo4,round 80,500,2,none,,\nB,drop,Vandrek,K2,42CrMo4,round 80,800,2,none,,\n");
    Want("now", "O1,10,Pallant,round 80,42CrMo4,300,1,,,,\n");
  }
  // `count` lines of one piece of 400 each, one every four days before today.
  void Past(int count) {
    std::string rows = "order,line,section,grade,length,quantity,due\n";
    for (int i = 0; i < count; ++i)
      rows += "P" + std::to_string(i) + ",1,round 80,42CrMo4,400,1," +
          Word("select to_char(current_date - $1::integer, 'YYYY-MM-DD') as w", {1 + 4 * i}) + "\n";
    ASSERT_EQ(As("planner", {"cutlist", "add", File("past.csv", rows)}).code, 0);
  }
  std::string Taken(const std::string& aim) {
    const Json told = Asked("planner", {"allocate", "now", "--dry", "--aim", aim});
    worth_ = told[0]["worth"];
    return Word("select old_tag as w from book.piece where tag = $1", {told[0]["layouts"][0]["tag"].get<std::string>()});
  }
  std::string worth_;
};

// By length: r (1 - exp(-r / 1 m)) of 500 - 198 loses 161 mm, of 800 - 498 loses 245. By the past, in which 400 was asked for every
// four days and nothing else: 400 + 2 + 60 = 462 comes from a rest of 500 and of 498, from 800 once too, from 198 never; so 800 gives
// up nothing and 500 gives up its one use.
TEST_F(Worth, ThePastChoosesTheDropThatIsNotWantedOtherwise) {
  TwoDrops();
  for (const char* aim : {"drops-first", "least-money"}) {
    EXPECT_EQ(Taken(aim), "A") << aim;
    EXPECT_EQ(worth_, "by length");
  }
  Past(60);
  for (const char* aim : {"drops-first", "least-money"}) {
    EXPECT_EQ(Taken(aim), "B") << aim;
    EXPECT_EQ(worth_, "worth of rests: learned from 60 past lines, for 1 section and grade");
  }
  const Ran ran = As("planner", {"allocate", "now"});
  EXPECT_TRUE(Has(ran.out, "worth of rests: learned from 60 past lines")) << ran;
  EXPECT_EQ(ran.code, 0) << "the book promises what the past chose";
  EXPECT_EQ(Broken(), "");
}

TEST_F(Worth, AShortPastOrFewLinesAreNoPast) {
  TwoDrops();
  Past(20);
  EXPECT_EQ(Taken("drops-first"), "A") << "77 days";
  EXPECT_EQ(worth_, "by length");
}

}  // namespace
}  // namespace heatkeep::command
