// Several at once on one rack: nothing is promised twice, and who came second is told.
#include <future>

#include "client/allocator/allocate.h"
#include "client/gateway/plan_door.h"
#include "tests/command/works.h"

namespace heatkeep::command {
namespace {

struct AtOnce : Works {
  void Rack(int bars) {
    std::string rows;
    for (int i = 1; i <= bars; ++i) rows += "T" + std::to_string(i) + ",bar,Vandrek,K1,42CrMo4,round 80,3000,2,none,,\n";
    TakeIn(rows);
  }
  void TearDown() override {
    EXPECT_EQ(Number("select count(*) as n from (select piece_id from book.promise where state = 'live' group by 1 having count(*) > 1) x"),
              0);
    EXPECT_EQ(Number("select count(*) as n from api.cut_lines where cut + planned > quantity"), 0);
    EXPECT_EQ(Broken(), "");
  }
};

TEST_F(AtOnce, TwoPlannersOnTheSameListsPromiseEveryCutOnce) {
  Rack(12);
  for (int round = 1; round <= 6; ++round) {
    const std::string list = "L" + std::to_string(round);
    Want(list, "O" + std::to_string(round) + ",10,Pallant,round 80,42CrMo4,900,4,,,,\n");
    const auto plan = [&, list] { return As("planner", {"allocate", list, "--seconds", "1", "--threads", "1"}); };
    std::future<Ran> other = std::async(std::launch::async, plan);
    const Ran one = plan(), two = other.get();
    EXPECT_EQ(one.code, 0) << one;
    EXPECT_EQ(two.code, 0) << two;
    EXPECT_EQ(one.out.starts_with("plan ") + two.out.starts_with("plan "), 1) << one << two;
    EXPECT_EQ(Number("select planned as n from api.cut_lines where cut_list = $1", {list}), 4);
  }
  EXPECT_EQ(Number("select count(*) as n from book.promise where state = 'live'"), 12);
}

TEST_F(AtOnce, TwoPlannersOnDifferentListsShareTheRack) {
  Rack(24);
  for (int round = 1; round <= 6; ++round) {
    std::vector<std::future<Ran>> planners;
    for (const std::string half : {"a", "b"}) {
      const std::string list = "L" + std::to_string(round) + half;
      Want(list, "O" + std::to_string(round) + half + ",10,Pallant,round 80,42CrMo4,900,4,,,,\n");
      planners.push_back(std::async(std::launch::async, [&, list] {
        return As("planner", {"allocate", list, "--seconds", "1", "--threads", "1"});
      }));
    }
    for (std::future<Ran>& planner : planners) {
      const Ran ran = planner.get();
      EXPECT_EQ(ran.code, 0) << ran;
      EXPECT_TRUE(ran.out.starts_with("plan ")) << ran;
      EXPECT_TRUE(ran.err.empty() || ran.err.starts_with("taken meanwhile: ")) << ran;
    }
  }
  EXPECT_EQ(Number("select count(*) as n from book.promise where state = 'live'"), 24);
}

// The problem is read, then somebody else's plan is promised, then ours is committed: the piece is named with its taker.
TEST_F(AtOnce, APieceTakenBetweenReadingAndPromisingIsNamedAndNothingIsPromised) {
  Rack(2);
  Want("A", "O1,10,Pallant,round 80,42CrMo4,900,2,,,,\n");
  Want("B", "O2,10,Pallant,round 80,42CrMo4,900,2,,,,\n");
  Connection planner = book.As("planner");
  PlanQuestion question;
  question.cut_lists = {"A"};
  question.saw = "1";
  question.limits.seconds = 1;
  const BookProblem asked = ReadProblem(planner, question);
  const allocator::Plan plan = allocator::Allocate(asked.problem);
  ASSERT_EQ(Plan("B"), 1);
  const CommitAnswer answer = CommitPlan(planner, NewRequest(), question, asked, plan, "by a test");
  EXPECT_FALSE(answer.plan.has_value());
  ASSERT_EQ(answer.taken.size(), 1U);
  EXPECT_EQ(answer.taken[0].tag, Sheet(1)["blocks"][0]["tag"]);
  EXPECT_EQ(answer.taken[0].why, "promised to plan 1 by test_planner, order O2");
  EXPECT_EQ(Number("select count(*) as n from book.plan"), 1);
  EXPECT_EQ(Plan("A"), 2) << "planned again from what is left";
}

// Eight at once keep taking each other's pieces: whoever is crowded out is told so, and tries again.
TEST_F(AtOnce, EightPlannersEndWithEveryCutPromised) {
  Rack(8);
  std::vector<std::future<std::string>> planners;
  for (int i = 1; i <= 8; ++i) {
    const std::string list = "L" + std::to_string(i);
    Want(list, "O" + std::to_string(i) + ",10,Pallant,round 80,42CrMo4,900,3,,,,\n");
    planners.push_back(std::async(std::launch::async, [&, list] {
      for (int tries = 0; tries < 5; ++tries) {
        const Ran ran = As("planner", {"allocate", list, "--seconds", "1", "--threads", "1"});
        if (ran.code == 0) return std::string();
        if (ran.code != 1 || !Has(ran.err, "others keep taking the pieces")) return "exit " + std::to_string(ran.code) + ran.out + ran.err;
      }
      return std::string("crowded out five times");
    }));
  }
  for (std::future<std::string>& planner : planners) EXPECT_EQ(planner.get(), "");
  EXPECT_EQ(Number("select count(*) as n from book.promise where state = 'live'"), 8);
}

TEST_F(AtOnce, TwoSawsBookingOnePlanBookItOnce) {
  Rack(6);
  Want("A", "O1,10,Pallant,round 80,42CrMo4,900,18,,,,\n");
  ASSERT_EQ(Plan("A"), 1);
  const auto record = [&] { return As("saw", {"cut", "record", "--plan", "1"}); };
  std::future<Ran> other = std::async(std::launch::async, record);
  const Ran one = record(), two = other.get();
  EXPECT_LE(one.code, 1) << one;
  EXPECT_LE(two.code, 1) << two;
  EXPECT_EQ(record().code, 0);
  EXPECT_EQ(Number("select count(*) as n from book.stroke where class = 'good'"), 18);
  EXPECT_EQ(Number("select count(*) as n from book.cut"), 6);
}

TEST_F(AtOnce, TheSameFileTakenInByTwoClerksAtOnceIsTakenInOnce) {
  const std::string file =
      File("d.csv", "note,supplier,mill,heat,read_from,grade,section,length,count\nN1,Vandrek,Vandrek,K1,metal,42CrMo4,round 80,6000,5\n");
  const auto receive = [&] { return As("clerk", {"receive", file}); };
  std::future<Ran> other = std::async(std::launch::async, receive);
  const Ran one = receive(), two = other.get();
  EXPECT_EQ(one.code, 0) << one;
  EXPECT_EQ(two.code, 0) << two;
  EXPECT_NE(Has(one.out, "nothing was added"), Has(two.out, "nothing was added")) << one << two;
  EXPECT_EQ(Number("select count(*) as n from book.piece"), 5);
}

}  // namespace
}  // namespace heatkeep::command
