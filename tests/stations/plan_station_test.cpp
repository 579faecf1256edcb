// The planning station: one key plans, one promises; what lacks says what to buy; two aims side by side; a person's word with its reason;
// a long search stopped; what somebody took meanwhile.
#include "client/stations/plan_station.h"

#include <QDir>

#include "tests/stations/desk_test.h"

namespace heatkeep {
namespace {

class PlanStationTest : public DeskTest {
 protected:
  PlanStation& OpenPlanning(const std::function<void(DeskSettings&)>& set = {}) {
    OpenDesk(
        "planner", [this](Desk& desk) { return std::vector<Station*>{station = new PlanStation(desk)}; }, set);
    WaitFor([&] { return !station->work().lists().empty() && !station->work().lines().empty(); }, "the cut list");
    return *station;
  }
  // A full bar of 6 m, sawn drops of 1 m and 2 m, all of one heat with 3.1 papers; 3 x 290 are asked for (876 with kerf).
  void ABarAndTwoDrops() {
    bar = shop.ReceiveCertified({})[0];
    short_drop = shop.ReceiveCertified({.length = 1000, .kind = "drop", .ends = 2})[0];
    long_drop = shop.ReceiveCertified({.length = 2000, .kind = "drop", .ends = 2})[0];
    shop.AddLine({.quantity = 3});
  }
  void PlanByKey() {
    Press(Qt::Key_F1);
    WaitFor([&] { return station->work().proposal() != nullptr && !station->work().busy(); }, "a plan");
  }
  std::vector<std::string> TagsOf(std::size_t proposal = 0) {
    std::vector<std::string> tags;
    for (const auto& pieces : station->work().proposals().at(proposal).pieces)
      for (const auto& piece : pieces) tags.push_back(piece.block.tag);
    return tags;
  }
  std::vector<std::string> NextBestTags() {
    std::vector<std::string> tags;
    for (const WaitingEntry& entry : station->next_best()->entries()) tags.push_back(entry.key.toStdString());
    return tags;
  }
  // The mouse takes hold at one point of the window, moves to another and lets go; all in window coordinates.
  void Drag(const QPoint& from, const QPoint& to) {
    QWindow* const glass = window->windowHandle();
    QTest::mousePress(glass, Qt::LeftButton, Qt::NoModifier, from);
    for (const QPoint& at : {from + QPoint(4, 4), from + QPoint(30, 30), (from + to) / 2, to}) QTest::mouseMove(glass, at);
    Picture("plan_dragging");
    QTest::mouseRelease(glass, Qt::LeftButton, Qt::NoModifier, to);
  }
  QPoint OfBar(const std::string& tag) {
    PlanBars* const bars = station->pane(0)->bars();
    return bars->viewport()->mapTo(window.get(), bars->BarRect(QString::fromStdString(tag)).center());
  }
  QPoint OfNextBest(int row) {
    NextBest* const list = station->next_best();
    return list->viewport()->mapTo(window.get(), list->visualItemRect(list->item(row)).center());
  }
  std::int64_t Promises(const std::string& tag) {
    return shop.Number("select count(*) as n from book.promise r join book.piece p using (piece_id) where p.tag = $1 and r.state = 'live'",
                       {tag});
  }
  std::int64_t Live() { return shop.Number("select count(*) as n from book.promise where state = 'live'"); }
  bool LastSays(const char* words) { return window->last()->words().contains(words); }

  PlanStation* station = nullptr;
  std::string bar, short_drop, long_drop;
};

TEST_F(PlanStationTest, OneKeyPlansAndOnePromisesAndUndoTakesItBack) {
  ABarAndTwoDrops();
  OpenPlanning();
  Picture("plan_lines");
  keys = 0;
  PlanByKey();
  Picture("plan_plan");
  EXPECT_EQ(TagsOf(), std::vector{short_drop});
  EXPECT_EQ(station->pane(0)->bars()->chosen().toStdString(), short_drop);
  EXPECT_TRUE(station->pane(0)->proof().contains("takes 1 drop, opens no full bar; no plan opens less (proved)"));
  EXPECT_EQ(NextBestTags(), (std::vector{long_drop, bar})) << "why not another";
  EXPECT_EQ(Live(), 0) << "nothing is promised before it was looked at";
  Press(Qt::Key_F2);
  WaitFor([&] { return station->work().sheet().has_value(); }, "the promised plan");
  EXPECT_EQ(keys, 2);
  EXPECT_EQ(Promises(short_drop), 1);
  Picture("plan_promised");
  Press(Qt::Key_Z, Qt::ControlModifier);
  WaitFor([&] { return Live() == 0; }, "the promise to be taken back");
  EXPECT_EQ(shop.Word("select state::text as w from book.plan"), "cancelled");
  EXPECT_EQ(shop.Word("select reason as w from book.happening where deed = 'cancel_plan' limit 1"), "taken back after it was promised");
}

TEST_F(PlanStationTest, EnterOnTheEmptyScanFieldPlansAndEnterAgainPromises) {
  ABarAndTwoDrops();
  OpenPlanning();
  Press(Qt::Key_Return);
  WaitFor([&] { return station->work().proposal() != nullptr && !station->work().busy(); }, "a plan");
  Press(Qt::Key_Return);
  WaitFor([&] { return Promises(short_drop) == 1; }, "the promise");
}

// 6 000 - 12 - 60 = 5 928 holds 20 x 292; for the other 5 a bar of 12 + 5 x 292 + 60 = 1 532 (common practice of sawing, by hand).
TEST_F(PlanStationTest, WhatLacksSaysTheShortestBarAndWhatToBuy) {
  shop.ReceiveCertified({});
  shop.AddLine({.quantity = 25});
  OpenPlanning();
  PlanByKey();
  const QString lacks = station->pane(0)->shortage()->words();
  EXPECT_TRUE(lacks.contains("O1/10") && lacks.contains("5 missing")) << lacks.toStdString();
  EXPECT_TRUE(lacks.contains("the shortest bar to buy for 5 is 1532 mm")) << lacks.toStdString();
  EXPECT_TRUE(lacks.contains("buy")) << lacks.toStdString();
  EXPECT_EQ(station->pane(0)->shortage()->sign(), Sign::Warning);
  Picture("plan_short");
  Press(Qt::Key_F2);
  WaitFor([&] { return station->work().sheet().has_value(); }, "the promised plan");
  EXPECT_EQ(shop.Number("select missing as n from book.plan_short"), 5);
  EXPECT_TRUE(station->pane(0)->shortage()->words().contains("5 missing"));
}

TEST_F(PlanStationTest, TwoAimsLieSideBySideWithTheirDifferenceInWordsAndTheOneInHandIsPromised) {
  bar = shop.ReceiveCertified({})[0];
  for (int i = 0; i < 4; ++i) shop.ReceiveCertified({.length = 1900, .kind = "drop", .ends = 2});
  shop.AddLine({.length = 900, .quantity = 4});
  OpenPlanning();
  PlanByKey();
  Press(Qt::Key_F3);
  WaitFor([&] { return station->work().proposals().size() == 2 && !station->work().busy(); }, "the second plan");
  EXPECT_EQ(station->work().proposals()[0].aim, "drops-first");
  EXPECT_EQ(station->work().proposals()[1].aim, "least-money");
  EXPECT_EQ(station->work().in_hand(), 0u);
  EXPECT_TRUE(station->difference()->text().startsWith("drops first against least money: ")) << station->difference()->text().toStdString();
  EXPECT_TRUE(station->pane(0)->isVisible() && station->pane(1)->isVisible());
  QTest::qWait(50);
  Picture("plan_beside");
  Press(Qt::Key_F4);
  WaitFor([&] { return station->work().in_hand() == 1; }, "the other in hand");
  EXPECT_TRUE(station->difference()->text().startsWith("least money against drops first: ")) << station->difference()->text().toStdString();
  Press(Qt::Key_F3);
  WaitFor(
      [&] {
        return station->work().proposals().size() == 2 && station->work().proposals()[1].aim == "fewest-bars" && !station->work().busy();
      },
      "the next aim");
  Press(Qt::Key_F4);
  Press(Qt::Key_F2);
  WaitFor([&] { return station->work().sheet().has_value(); }, "the promised plan");
  EXPECT_EQ(shop.Word("select aim as w from book.plan"), "fewest-bars");
}

TEST_F(PlanStationTest, APieceLeftOutWithAReasonIsNotTakenAndTheReasonIsKept) {
  ABarAndTwoDrops();
  OpenPlanning();
  PlanByKey();
  Press(Qt::Key_F5);
  TypeIn("for Drewe");
  Picture("plan_reason");
  Press(Qt::Key_Return);
  WaitFor([&] { return !station->work().busy() && TagsOf() == std::vector{long_drop}; }, "a plan without it");
  EXPECT_EQ(NextBestTags(), std::vector{bar}) << "nor is it offered";
  Picture("plan_overruled");
  Press(Qt::Key_F2);
  WaitFor([&] { return Promises(long_drop) == 1; }, "the promise");
  EXPECT_EQ(Promises(short_drop), 0);
  EXPECT_EQ(shop.Word("select reason as w from book.happening where deed = 'commit_plan' limit 1"),
            "without " + short_drop + ": for Drewe");
  EXPECT_TRUE(QString::fromStdString(shop.Word("select proof as w from book.plan"))
                  .endsWith("; without " + QString::fromStdString(short_drop) + ": for Drewe"));
}

TEST_F(PlanStationTest, AnotherPieceInsteadTakesTheSameCuts) {
  ABarAndTwoDrops();
  OpenPlanning();
  PlanByKey();
  Press(Qt::Key_F6);
  TypeIn("7");
  Press(Qt::Key_Return);
  EXPECT_TRUE(LastSays("expected a number from 1 to 2"));
  Press(Qt::Key_Backspace);
  TypeIn("2");
  Press(Qt::Key_Return);
  TypeIn("is on top");
  Press(Qt::Key_Return);
  WaitFor([&] { return !station->work().busy() && TagsOf() == std::vector{bar}; }, "the bar instead");
  EXPECT_TRUE(station->pane(0)->proof().contains("at most 6.00 m from the best possible; " + QString::fromStdString(bar) + " instead of"))
      << station->pane(0)->proof().toStdString();
  Press(Qt::Key_F2);
  WaitFor([&] { return Promises(bar) == 1; }, "the promise");
  EXPECT_EQ(shop.Word("select reason as w from book.happening where deed = 'commit_plan' limit 1"),
            bar + " instead of " + short_drop + ": is on top");
}

TEST_F(PlanStationTest, APieceDraggedOntoABarTakesItsCutsWithAReason) {
  ABarAndTwoDrops();
  OpenPlanning();
  PlanByKey();
  ASSERT_EQ(TagsOf(), std::vector{short_drop});
  ASSERT_EQ(NextBestTags(), (std::vector{long_drop, bar}));
  Drag(OfNextBest(1), OfBar(short_drop));
  WaitFor([&] { return window->findChild<QLineEdit*>("answer")->isVisible(); }, "the question why");
  Picture("plan_dragged");
  EXPECT_EQ(TagsOf(), std::vector{short_drop}) << "nothing changes without a reason";
  TypeIn("on top");
  Press(Qt::Key_Return);
  WaitFor([&] { return !station->work().busy() && TagsOf() == std::vector{bar}; }, "the bar instead");
  Press(Qt::Key_F2);
  WaitFor([&] { return Promises(bar) == 1; }, "the promise");
  EXPECT_EQ(shop.Word("select reason as w from book.happening where deed = 'commit_plan' limit 1"),
            bar + " instead of " + short_drop + ": on top")
      << "the same deed as by key";
}

TEST_F(PlanStationTest, APieceLetGoBesideTheBarsChangesNothing) {
  ABarAndTwoDrops();
  OpenPlanning();
  PlanByKey();
  Drag(OfNextBest(0), station->pane(0)->bars()->mapTo(window.get(), QPoint(60, station->pane(0)->bars()->height() - 10)));
  EXPECT_FALSE(window->findChild<QLineEdit*>("answer")->isVisible());
  EXPECT_TRUE(station->work().overruled().empty());
}

TEST_F(PlanStationTest, EnterOnWhatElseWouldDoAsksForTheReasonToo) {
  ABarAndTwoDrops();
  OpenPlanning();
  PlanByKey();
  station->next_best()->setFocus();
  ASSERT_EQ(station->next_best()->selectedItems().size(), 1) << "the first stands out as soon as the keys are there";
  EXPECT_EQ(station->next_best()->chosen().toStdString(), long_drop);
  Press(Qt::Key_Return);
  TypeIn("dry");
  Press(Qt::Key_Return);
  WaitFor([&] { return !station->work().busy() && TagsOf() == std::vector{long_drop}; }, "the other drop");
}

TEST_F(PlanStationTest, WhatIsDueFirstStandsFirstAndWhatHasNoDateLast) {
  shop.ReceiveCertified({});
  shop.AddLine({.order = "NODATE"});
  for (const auto& [order, due] : {std::pair("LATER", "2031-05-02"), {"SOONER", "2031-04-01"}}) {
    Do(shop.planner, "add_cut_list",
       {Json{{"name", std::string("L-") + order},
             {"lines",
              Json::array({{{"order", order},
                            {"line", "10"},
                            {"customer", "Pallant"},
                            {"section", Round(80)},
                            {"grade", "42CrMo4"},
                            {"length_nm", Mm(300)},
                            {"quantity", 2},
                            {"papers", "3.1"},
                            {"due", due}}})}}
            .dump()});
  }
  OpenPlanning();
  WaitFor([&] { return station->work().lists().size() == 3; }, "the lists");
  const auto& lists = station->work().lists();
  EXPECT_EQ(lists[0].name, "L-SOONER");
  EXPECT_EQ(lists[1].name, "L-LATER");
  EXPECT_TRUE(lists[2].due.empty());
  EXPECT_EQ(station->work().chosen(), "list:L-SOONER") << "and it is what the station opens with";
}

TEST_F(PlanStationTest, WhatIsMoreUrgentGetsTheMetalWhereThereIsTooLittle) {
  shop.ReceiveCertified({.length = 1000, .kind = "drop", .ends = 2});
  Json lines = Json::array();
  for (const auto& [order, priority] : {std::pair("CAN-WAIT", 5), {"URGENT", 1}})
    lines.push_back({{"order", order},
                     {"line", "10"},
                     {"customer", "Pallant"},
                     {"section", Round(80)},
                     {"grade", "42CrMo4"},
                     {"length_nm", Mm(600)},
                     {"quantity", 1},
                     {"papers", "3.1"},
                     {"priority", priority}});
  Do(shop.planner, "add_cut_list", {Json{{"name", "L1"}, {"lines", lines}}.dump()});
  OpenPlanning();
  PlanByKey();
  ASSERT_EQ(station->work().proposal()->shorts.size(), 1u);
  EXPECT_EQ(station->work().proposal()->shorts[0].order, "CAN-WAIT") << "one piece of 600 comes out of 1000";
}

TEST_F(PlanStationTest, EachLineIsPlannedForTheNarrowestSawThatTakesItOrForOneSawAlone) {
  shop.ReceiveCertified({.round = 80});
  shop.Deliver("N-2", {{.heat = "K3317", .round = 300}});
  shop.Certify("K3317", {.round = 300});
  shop.AddLines({{.line = "10", .quantity = 2}, {.line = "20", .quantity = 2, .round = 300}});  // saw 1 takes up to 260, saw 2 up to 500
  OpenPlanning();
  PlanByKey();
  const auto& drafts = station->work().proposal()->drafts;
  ASSERT_EQ(drafts.size(), 2u);
  EXPECT_NE(drafts[0].question.saw, "2");
  EXPECT_EQ(drafts[1].question.saw, "2");
  Picture("plan_two_saws");
  Press(Qt::Key_F2);
  WaitFor([&] { return shop.Number("select count(*) as n from book.plan where state = 'live'") == 2; }, "a plan a saw");
  EXPECT_EQ(shop.Number("select count(distinct saw_id) as n from book.plan"), 2);
}

TEST_F(PlanStationTest, AllThatIsOpenIsPlannedAsOne) {
  shop.ReceiveCertified({.length = 1000, .kind = "drop", .ends = 2});
  shop.AddLine({.quantity = 1, .order = "O1"});
  shop.AddLine({.quantity = 2, .order = "O2"});
  OpenPlanning();
  auto* list = station->findChild<WaitingList*>();
  list->setFocus();
  Press(Qt::Key_Down);
  Press(Qt::Key_Down);
  WaitFor([&] { return station->work().chosen() == "all" && station->work().lines().size() == 2; }, "all that is open");
  PlanByKey();
  ASSERT_EQ(TagsOf().size(), 1u) << "both orders out of one drop";
  const auto& cuts = station->work().proposal()->pieces[0][0].block.cuts;
  int pieces = 0;
  for (const SheetCut& cut : cuts) pieces += cut.count;
  EXPECT_EQ(pieces, 3);
  Press(Qt::Key_F2);
  WaitFor([&] { return Live() == 1; }, "the promise");
}

TEST_F(PlanStationTest, WhatSomebodyTookMeanwhileIsSaidAndItIsPlannedAgain) {
  ABarAndTwoDrops();
  shop.AddLine({.quantity = 2, .order = "O2"});
  OpenPlanning();
  ScanIn("L1");
  WaitFor([&] { return station->work().chosen() == "list:L1" && !station->work().lines().empty(); }, "the first list");
  PlanByKey();
  ASSERT_EQ(TagsOf(), std::vector{short_drop});
  ASSERT_TRUE(shop.Promise(short_drop, {{.count = 2, .order = "O2"}}).contains("plan"));
  Press(Qt::Key_F2);
  WaitFor([&] { return LastSays("taken meanwhile"); }, "the word of it");
  EXPECT_TRUE(LastSays(short_drop.c_str()) && LastSays("Planned again"));
  WaitFor([&] { return !station->work().busy() && TagsOf() == std::vector{long_drop}; }, "the new plan");
  EXPECT_EQ(Promises(long_drop), 0) << "it is to be looked at first";
  Press(Qt::Key_F2);
  WaitFor([&] { return Promises(long_drop) == 1; }, "the promise");
}

TEST_F(PlanStationTest, ALongSearchIsWatchedAndStoppedWithTheBestSoFar) {
  std::vector<Bars> rack;
  for (int i = 0; i < 120; ++i) rack.push_back({.length = 400 + (i * 7919) % 1900, .kind = "drop", .ends = 2});
  rack.push_back({.length = 6000, .count = 30});
  rack.push_back({.heat = "K3317", .round = 60});
  shop.Deliver("N1", rack);
  shop.Certify("M2208");
  shop.Certify("K3317", {.round = 60});
  std::vector<Wanted> wanted;
  for (int i = 0; i < 30; ++i)
    wanted.push_back({.line = std::to_string(i),
                      .length = 150 + (i * 6101) % 900,
                      .quantity = 6 + i % 7,
                      .max_heats = i % 5 == 0 ? std::optional(2) : std::nullopt});
  wanted.push_back({.line = "60", .quantity = 2, .round = 60});
  shop.AddLines(wanted);
  OpenPlanning();
  Press(Qt::Key_F9);
  WaitFor([&] { return station->progress()->words().contains("opens"); }, "word of the search");
  EXPECT_TRUE(station->work().searching());
  Picture("plan_searching");
  Press(Qt::Key_Escape);
  WaitFor([&] { return station->work().proposal() != nullptr && !station->work().busy(); }, "the best so far");
  const planning::Draft draft = station->work().proposal()->drafts.at(0);
  EXPECT_EQ(draft.plan.ended_by, allocator::EndedBy::Stopped);
  EXPECT_EQ(draft.plan.value.unmet_pieces, 0);
  EXPECT_TRUE(LastSays("the search was stopped; this is the best it had found"));
  Picture("plan_many");
  Press(Qt::Key_Down);
  Press(Qt::Key_Down);
  EXPECT_EQ(station->pane(0)->bars()->chosen().toStdString(), TagsOf().at(2));
  Press(Qt::Key_F2);
  WaitFor([&] { return station->work().sheet().has_value(); }, "the promised plan");
  EXPECT_EQ(Live(), draft.plan.value.pieces_pulled);
}

TEST_F(PlanStationTest, AnOrderOrACutListScannedIsChosenAndAnythingElseIsLookedUp) {
  shop.ReceiveCertified({});
  shop.AddLine({.quantity = 3});
  shop.AddLine({.quantity = 4, .order = "O2-LONG"});
  OpenPlanning();
  ScanIn("O2-LONG");
  WaitFor([&] { return station->work().chosen() == "list:L2"; }, "the order's list");
  ScanIn("L1XX");
  WaitFor([&] { return LastSays("L1XX: nothing here is called that"); }, "the word of it");
  EXPECT_EQ(station->work().chosen(), "list:L2");
}

TEST_F(PlanStationTest, ALivePlanPrintsItsPickListAndIsCancelledWithAReasonWhileWhatIsAtTheSawStays) {
  for (int i = 0; i < 2; ++i) shop.ReceiveCertified({.length = 1000, .kind = "drop", .ends = 2});
  shop.AddLine({.quantity = 6});
  OpenPlanning();
  PlanByKey();
  const std::vector<std::string> tags = TagsOf();
  ASSERT_EQ(tags.size(), 2u);
  Press(Qt::Key_F2);
  WaitFor([&] { return station->work().sheet().has_value(); }, "the plan");
  EXPECT_NE(Printed().find(tags[0]), std::string::npos) << "the pick list";
  EXPECT_EQ(QDir(folder.filePath("papers")).entryList({"plan-*.pdf"}).size(), 1);
  shop.Pull(tags[0]);
  Press(Qt::Key_F8);
  TypeIn("wrong day");
  Press(Qt::Key_Return);
  WaitFor([&] { return LastSays("is cancelled: 1 piece"); }, "the plan to be cancelled");
  EXPECT_EQ(shop.Word("select state::text as w from book.piece where tag = $1", {tags[0]}), "at saw");
  EXPECT_EQ(shop.Word("select f.state::text as w from book.layout f join book.piece p using (piece_id) where p.tag = $1", {tags[0]}),
            "at saw");
  EXPECT_EQ(Promises(tags[1]), 0);
  EXPECT_EQ(shop.Word("select reason as w from book.happening where deed = 'cancel_plan' limit 1"), "wrong day");
}

TEST_F(PlanStationTest, LengthsAreInTheReadersUnits) {
  ABarAndTwoDrops();
  OpenPlanning([](DeskSettings& settings) {
    settings.units = {ReadingUnits::LengthAs::InchFraction, ReadingUnits::MassAs::Lb};
    settings.look = DeskSettings::Look::Dark;
  });
  Picture("plan_lines_inch");
  PlanByKey();
  EXPECT_TRUE(station->pane(0)->bars()->accessibleDescription().contains("39 5/16 in"))
      << station->pane(0)->bars()->accessibleDescription().toStdString();                 // 1 000 mm is 39.37 in, at hand rounded down
  EXPECT_TRUE(station->why().contains("3 x 11.417 in")) << station->why().toStdString();  // 290 mm
  Picture("plan_plan_inch");
}

}  // namespace
}  // namespace heatkeep
