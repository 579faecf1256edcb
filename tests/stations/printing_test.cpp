// Every screen prints: what is on it comes out as a paper, read back here by another program (poppler).
#include "client/stations/all_stations.h"
#include "client/stations/counting_station.h"
#include "client/stations/papers_station.h"
#include "client/stations/plan_station.h"
#include "client/stations/rack_station.h"
#include "client/stations/receiving_station.h"
#include "client/stations/saw_station.h"
#include "client/stations/start_station.h"
#include "reports/sheet_words.h"
#include "tests/stations/desk_test.h"

namespace heatkeep {
namespace {

class PrintingTest : public DeskTest {
 protected:
  template <typename Kind>
  Kind& Go(int number) {
    Press(Qt::Key(Qt::Key_0 + number), Qt::ControlModifier);
    return dynamic_cast<Kind&>(*window->current());
  }
  void OpenAll() {
    OpenDesk("all", AllStations, [](DeskSettings& settings) { settings.saw = "1"; });
  }
};

bool Says(const std::string& text, const std::string& words) { return text.find(words) != std::string::npos; }

TEST_F(PrintingTest, TheSawAndThePlanPrintThePickList) {
  const std::string tag = shop.ReceiveCertified({})[0];
  shop.AddLine({});
  ASSERT_TRUE(shop.Promise(tag, {{.count = 14}}).contains("plan"));
  OpenAll();
  auto& saw = Go<SawStation>(1);
  WaitFor([&] { return saw.work().block() != nullptr; }, "the sheet");
  std::string text = Printed();
  EXPECT_TRUE(Says(text, tag) && Says(text, "M2208") && Says(text, "290")) << text;
  auto& planning = Go<PlanStation>(3);
  auto* list = planning.findChild<WaitingList*>();
  WaitFor([&] { return list->count() > 0; }, "the plan");
  list->setFocus();
  Press(Qt::Key_Down);
  WaitFor([&] { return planning.work().sheet().has_value(); }, "the plan's sheet");
  text = Printed();
  EXPECT_TRUE(Says(text, tag) && Says(text, "290")) << text;
}

TEST_F(PrintingTest, ThePlannerPrintsTheOpenLinesAndWhatIsProposed) {
  const std::string drop = shop.ReceiveCertified({.length = 1000, .kind = "drop", .ends = 2})[0];
  shop.AddLine({.quantity = 3});
  OpenAll();
  auto& planning = Go<PlanStation>(3);
  WaitFor([&] { return !planning.work().lines().empty(); }, "the lines");
  std::string text = Printed();
  EXPECT_TRUE(Says(text, "Open lines") && Says(text, "O1/10") && Says(text, "round 80")) << text;
  Press(Qt::Key_F1);
  WaitFor([&] { return planning.work().proposal() && !planning.work().busy(); }, "a plan");
  text = Printed();
  EXPECT_TRUE(Says(text, "Proposed, not promised yet") && Says(text, "opens no full bar") && Says(text, drop)) << text;
  EXPECT_EQ(shop.Number("select count(*) as n from book.promise"), 0) << "paper promises nothing";
}

TEST_F(PrintingTest, TheGatePrintsWhatStandsThereWithItsTags) {
  const auto tags = shop.Receive({.heat = "K0770", .count = 2, .place = "GATE"});
  OpenAll();
  auto& gate = Go<ReceivingStation>(2);
  WaitFor([&] { return gate.work().gate().size() == 1; }, "the bars at the gate");
  const std::string text = Printed();
  for (const std::string& tag : tags) EXPECT_TRUE(Says(text, tag)) << text;
  EXPECT_TRUE(Says(text, HeatInGroups("K0770"))) << text;
}

TEST_F(PrintingTest, PapersPrintWhatWaits) {
  shop.Receive({.heat = "M4000"});
  OpenAll();
  auto& papers = Go<PapersStation>(4);
  WaitFor([&] { return papers.work().waiting().awaited.size() == 1; }, "what waits");
  const std::string text = Printed();
  EXPECT_TRUE(Says(text, "M4000") && Says(text, "Papers awaited")) << text;
}

TEST_F(PrintingTest, ACountSheetIsAsBlindAsTheScreen) {
  const std::string tag = shop.Receive({.length = 900, .place = "B1-2", .kind = "drop"}).at(0);
  Do(shop.planner, "freeze_place", {Json{{"place", "B1-2"}}.dump()});
  OpenAll();
  auto& counting = Go<CountingStation>(5);
  WaitFor([&] { return counting.work().count("B1-2") != nullptr && counting.place() == "B1-2"; }, "the count");
  const std::string text = Printed();
  EXPECT_TRUE(Says(text, "Count sheet") && Says(text, "B1-2")) << text;
  EXPECT_FALSE(Says(text, tag)) << "what should lie there is not on it";
}

TEST_F(PrintingTest, TheRackPrintsItsDrawingsAndItsRows) {
  const std::string drop = shop.Receive({.length = 1900, .kind = "drop"}).at(0);
  OpenAll();
  auto& rack = Go<RackStation>(6);
  WaitFor([&] { return rack.work().whole(); }, "the rack");
  const std::string text = Printed();
  EXPECT_TRUE(Says(text, drop) && Says(text, "1900")) << text;
  EXPECT_TRUE(Says(text, "drops by length")) << "the drawing's words are words: " << text;
  EXPECT_TRUE(Says(text, "DROPS ARE WORTH")) << text;
}

TEST_F(PrintingTest, TheStepsOfANewBookPrint) {
  OpenAll();
  auto& start = Go<StartStation>(7);
  WaitFor([&] { return start.steps() == 5; }, "the counts");
  const std::string text = Printed();
  EXPECT_TRUE(Says(text, "People") && Says(text, "The shop")) << text;
}

TEST_F(PrintingTest, WhereThePaperCannotGoIsSaid) {
  OpenDesk("all", AllStations, [this](DeskSettings& settings) { settings.paper_folder = folder.filePath("desk.ini") + "/no folder"; });
  Press(Qt::Key_P, Qt::ControlModifier);
  WaitFor([&] { return window->last()->words().startsWith("not printed: "); }, "the words");
  EXPECT_TRUE(window->last()->words().contains("cannot be made"));
}

}  // namespace
}  // namespace heatkeep
