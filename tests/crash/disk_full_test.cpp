// The disk of the book is full: a deed is refused in words and nothing of it is there; when there is room again, work goes on. Where even
// the server's log of writes cannot grow the server ends; what it had acknowledged is there when it is started again.
#include "client/gateway/request_number.h"
#include "tests/crash/ground.h"

namespace heatkeep {
namespace {

struct DiskFull : OnBadGround {
  // More bars than fit into what the tables hold free.
  std::string Lorry(const std::string& note) const {
    return RunFile(note + ".csv",
                   "note,supplier,mill,heat,read_from,grade,section,length,count,ends,papers,place\n" + note +
                       ",Vandrek,Vandrek,F1,metal,42CrMo4,round 80,1000,900,2,none,B1-1\n");
  }
};

TEST_F(DiskFull, ADeedIsRefusedInWordsAndDoneWhenThereIsRoomAgain) {
  Refill(5);
  const std::int64_t pieces = Number("select count(*) as n from book.piece"),
                     happenings = Number("select count(*) as n from book.happening");
  Full("data");
  HeatkeepProcess refused(Words({"receive", Lorry("N-full")}));
  EXPECT_EQ(refused.Finish(), 4) << refused.text();
  EXPECT_NE(refused.text().find("the disk of the book is full, and nothing of this was booked: make room there and do it again"),
            std::string::npos)
      << refused.text();
  EXPECT_EQ(Number("select count(*) as n from book.piece"), pieces);
  EXPECT_EQ(Number("select count(*) as n from book.happening"), happenings);
  EXPECT_EQ(Number("select count(*) as n from book.receipt where note = 'N-full'"), 0);
  Full("");
  Run({"receive", Lorry("N-full")});
  EXPECT_EQ(Number("select count(*) as n from book.piece"), pieces + 900);
  HeatkeepProcess process(Words({"cut", "record", "--plan", plan}));
  EXPECT_EQ(process.Finish(), 0) << process.text();
  Remember(process);
  EXPECT_GE(said.size(), 5U);
  ExpectWhole();
}

TEST_F(DiskFull, WhatWasAcknowledgedIsThereAfterTheServerHadToEnd) {
  Refill(5);
  HeatkeepProcess before(Words({"cut", "record", "--plan", plan}));
  ASSERT_EQ(before.Finish(), 0);
  Remember(before);
  Refill(5);
  Full("all");
  bool lost = false;
  for (int i = 0; i < 20 && !lost; ++i) {
    try {
      Connection admin = cluster.Admin();
      admin.Execute("select pg_switch_wal()");
      admin.Execute("select api.seal_book($1)", {NewRequest().text});
    } catch (const std::exception&) { lost = true; }
  }
  ASSERT_TRUE(lost);
  HeatkeepProcess during(Words({"cut", "record", "--plan", plan}));  // done before, refused, or the book cannot be reached
  during.Finish();
  Remember(during);
  Full("");
  WaitUntilQuiet();
  Run({"cut", "record", "--plan", plan});
  EXPECT_EQ(ToCut(), 0);
  ExpectWhole();
}

}  // namespace
}  // namespace heatkeep
