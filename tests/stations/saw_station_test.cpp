// The saw's station: a line that goes to plan is two scans and one key; what does not go to plan has a key each; off the network too.
#include "client/stations/saw_station.h"

#include <QDir>
#include <iostream>
#include <tuple>

#include "client/gateway/cut_body.h"
#include "client/gateway/saw_deeds.h"
#include "client/queue/saw_queue.h"
#include "tests/stations/desk_test.h"

namespace heatkeep {
namespace {

class SawStationTest : public DeskTest {
 protected:
  SawStation& OpenSaw(const std::function<void(DeskSettings&)>& set = {}) {
    OpenDesk(
        "saw", [this](Desk& desk) { return std::vector<Station*>{station = new SawStation(desk)}; },
        [&](DeskSettings& settings) {
          settings.saw = "1";
          if (set) set(settings);
        });
    WaitFor([&] { return !station->work().sheets().empty(); }, "the sheet");
    return *station;
  }
  // A bar of 6 m promised for 14 x 290; its tag.
  std::string Promised() {
    const std::string tag = shop.ReceiveCertified({})[0];
    shop.AddLine({});
    shop.Promise(tag, {{.count = 14, .length = 290}});
    return tag;
  }
  // The same, fetched at the desk.
  std::string AtTheSaw() {
    std::string tag = Promised();
    OpenSaw();
    ScanIn(QString::fromStdString(tag));
    WaitFor([&] { return station->work().step() == SawWork::Step::Cut; }, "the piece at the saw");
    return tag;
  }
  std::string StateOf(const std::string& tag) { return shop.Word("select state::text as w from book.piece where tag = $1", {tag}); }

  SawStation* station = nullptr;
};

TEST_F(SawStationTest, ALineThatGoesToPlanIsTwoScansAndOneKey) {
  const std::string tag = Promised();
  OpenSaw();
  EXPECT_EQ(station->work().step(), SawWork::Step::Pull);
  Picture("saw_fetch");
  keys = scans = 0;
  ScanIn(QString::fromStdString(tag));
  WaitFor([&] { return station->work().step() == SawWork::Step::Cut; }, "the piece at the saw");
  Picture("saw_cut");
  Press(Qt::Key_F1);
  WaitFor([&] { return station->work().step() == SawWork::Step::Place; }, "what is left to be put away");
  const QString drop = station->work().drop();
  Picture("saw_place");
  ScanIn("B1-3");
  WaitFor([&] { return station->work().step() == SawWork::Step::Nothing || station->work().drop().isEmpty(); }, "the drop at its place");
  WaitFor(
      [&] {
        return shop.Word("select w.name as w from book.piece p join book.place w using (place_id) where p.tag = $1",
                         {drop.toStdString()}) == "B1-3";
      },
      "the book to say so");
  EXPECT_EQ(keys, 1);
  EXPECT_EQ(scans, 2);
  EXPECT_EQ(StateOf(tag), "cut up");
  EXPECT_EQ(shop.Number("select count(*) as n from book.stroke s join book.piece p using (piece_id) where p.tag = $1 and s.class = 'good'",
                        {tag}),
            14);
  EXPECT_EQ(window->scan_field()->text(), "");
}

TEST_F(SawStationTest, WhatWasConfirmedAndNotCutIsTakenBackWhileTheDropIsInHand) {
  const std::string tag = AtTheSaw();
  Press(Qt::Key_F1);
  WaitFor([&] { return station->work().step() == SawWork::Step::Place && !station->work().busy(); }, "what is left to be put away");
  const std::string drop = station->work().drop().toStdString();
  const std::int64_t before = shop.LengthOf(drop);
  Press(Qt::Key_F4);
  TypeIn("0");
  Press(Qt::Key_Return);
  EXPECT_TRUE(station->findChild<AskingLine*>()->asking()) << "none is no answer";
  TypeIn("2");
  Picture("saw_take_back");
  Press(Qt::Key_Return);
  WaitFor([&] { return shop.LengthOf(drop) != before; }, "the longer drop");
  EXPECT_EQ(shop.LengthOf(drop), before + 2 * Mm(292));
  WaitFor([&] { return window->last()->words().contains("taken back"); }, "the word of it");
  EXPECT_EQ(station->work().step(), SawWork::Step::Place) << "it is to be put away all the same";
  Picture("saw_taken_back");
  EXPECT_EQ(shop.Number("select cut as n from api.cut_lines"), 12);
  // two that were not made are two; there is no fifteenth
  Press(Qt::Key_F4);
  TypeIn("15");
  Press(Qt::Key_Return);
  WaitFor([&] { return window->last()->sign() == Sign::Refusal; }, "the refusal");
  EXPECT_EQ(shop.LengthOf(drop), before + 2 * Mm(292));
}

TEST_F(SawStationTest, TheWrongPieceIsRefusedWithTheReasonAndTheRightOneWaits) {
  const std::string tag = Promised();
  const std::string other = shop.ReceiveCertified({.heat = "M3000"})[0];
  OpenSaw();
  ScanIn(QString::fromStdString(other));
  WaitFor([&] { return window->last()->sign() == Sign::Refusal; }, "the refusal");
  EXPECT_TRUE(window->last()->words().contains("is not promised to any plan")) << window->last()->words().toStdString();
  Picture("saw_refused");
  EXPECT_EQ(StateOf(other), "on rack");
  EXPECT_EQ(StateOf(tag), "on rack");
}

TEST_F(SawStationTest, TheHeatIsReadBackBlindWhereTheOrderHasPapers) {
  Do(shop.owner, "set_rules", {R"({"settings": {"heat_read_back": "yes"}})"});
  const std::string tag = Promised();
  OpenSaw();
  ScanIn(QString::fromStdString(tag));
  WaitFor([&] { return window->findChild<QLineEdit*>("answer")->isVisible(); }, "the question");
  Picture("saw_heat_asked");
  TypeIn("2209");
  Press(Qt::Key_Return);
  WaitFor([&] { return window->last()->sign() == Sign::Refusal; }, "the refusal");
  EXPECT_TRUE(window->last()->words().contains("call quality")) << window->last()->words().toStdString();
  EXPECT_EQ(StateOf(tag), "on rack");
  ScanIn(QString::fromStdString(tag));
  WaitFor([&] { return window->findChild<QLineEdit*>("answer")->isVisible(); }, "the question again");
  TypeIn("2208");
  Press(Qt::Key_Return);
  WaitFor([&] { return station->work().step() == SawWork::Step::Cut; }, "the piece at the saw");
  EXPECT_EQ(StateOf(tag), "at saw");
}

TEST_F(SawStationTest, EscLeavesAQuestionAndTheNextOneIsTheOneThatIsAsked) {
  const std::string tag = AtTheSaw();
  const auto* asked = station->findChild<AskingLine*>();
  for (const Qt::Key key : {Qt::Key_F3, Qt::Key_F4, Qt::Key_F6, Qt::Key_F7, Qt::Key_F9}) {
    Press(key);
    EXPECT_TRUE(asked->asking());
    Press(Qt::Key_Escape);
    EXPECT_FALSE(asked->asking());
    EXPECT_FALSE(asked->isVisible());
  }
  EXPECT_EQ(StateOf(tag), "at saw");
}

TEST_F(SawStationTest, WhatIsNowhereKnownIsSaidLargeToo) {
  Promised();
  OpenSaw();
  ScanIn("XY-4711");
  WaitFor([&] { return window->last()->words() == "XY-4711: nothing here is called that"; }, "the word of it");
  const auto lines = station->findChildren<SignLine*>();
  EXPECT_TRUE(
      std::ranges::any_of(lines, [&](const SignLine* line) { return line->isVisible() && line->words() == window->last()->words(); }));
}

TEST_F(SawStationTest, AShortPieceIsMeasuredAndTheRestOfThePlanMendedByOneKeyAndALength) {
  const std::string tag = AtTheSaw();
  Press(Qt::Key_F6);
  TypeIn("3000");
  Press(Qt::Key_Return);
  WaitFor([&] { return shop.LengthOf(tag) == Mm(3000); }, "the length in the book");
  WaitFor([&] { return !station->work().busy() && station->work().block() && station->work().block()->length == Length{Mm(3000)}; },
          "the sheet anew");
  EXPECT_TRUE(window->last()->words().contains("short")) << window->last()->words().toStdString();
  // so many words leave the buttons their room in the smallest window
  window->resize(1280, 800);
  QTest::qWait(100);
  for (const DeedButton* button : station->findChildren<DeedButton*>())
    if (button->isVisible()) { EXPECT_LT(button->geometry().bottom(), button->parentWidget()->height()) << button->text().toStdString(); }
  Picture("saw_short");
}

TEST_F(SawStationTest, NotThereBadMetalAndNoMarkEachTakeThePieceOutOfThePlan) {
  const std::vector<std::string> tags = shop.ReceiveCertified({.count = 4});
  shop.AddLine({.quantity = 3});
  for (int i = 0; i < 3; ++i) shop.Promise(tags[static_cast<std::size_t>(i)], {{.count = 1, .length = 290}});
  OpenSaw();
  const auto in_hand = [&] { return station->work().block() ? station->work().block()->tag : std::string(); };
  const auto settled = [&](const std::string& out) { return !station->work().busy() && in_hand() != out; };
  std::string out = in_hand();
  Press(Qt::Key_F5);
  WaitFor([&] { return settled(out); }, "the next piece");
  EXPECT_EQ(StateOf(out), "missing");
  out = in_hand();
  Press(Qt::Key_F8);
  WaitFor([&] { return settled(out); }, "the next piece");
  EXPECT_EQ(shop.Word("select quarantine::text as w from book.piece where tag = $1", {out}), "its mark cannot be read");
  out = in_hand();
  Press(Qt::Key_F7);
  TypeIn("crack");
  Press(Qt::Key_Return);
  WaitFor([&] { return settled(out); }, "the next piece");
  EXPECT_EQ(shop.Word("select quarantine::text as w from book.piece where tag = $1", {out}), "crack");
}

TEST_F(SawStationTest, ARestMeasuredOtherwiseIsTheDropsLength) {
  const std::string tag = AtTheSaw();
  Press(Qt::Key_F3);
  TypeIn("1898");
  Press(Qt::Key_Return);
  WaitFor([&] { return station->work().step() == SawWork::Step::Place; }, "the drop");
  EXPECT_EQ(shop.LengthOf(station->work().drop().toStdString()), Mm(1898));
}

TEST_F(SawStationTest, TheLabelOfADropIsOutAsAFileAndTheBookKnows) {
  const std::string tag = AtTheSaw();
  Press(Qt::Key_F1);
  WaitFor([&] { return station->work().step() == SawWork::Step::Place; }, "the drop");
  const std::string drop = station->work().drop().toStdString();
  WaitFor(
      [&] {
        return shop.Word("select j.state::text as w from book.label_job j join book.piece p using (piece_id) where p.tag = $1", {drop}) ==
            "printed";
      },
      "the label");
  EXPECT_EQ(QDir(folder.filePath("labels")).entryList({"*.pdf"}).size(), 1);
}

TEST_F(SawStationTest, OffTheNetworkDeedsAreKeptAndBookedOnceWhenTheBookIsBack) {
  const std::string tag = Promised();
  const std::string file = folder.filePath("saw1.queue").toStdString();
  {
    SawQueue queue(file);
    nlohmann::json block = SawDeeds(shop.saw).TakeTagBlock(NewRequest(), {{"device", "saw-1"}, {"site", "main"}, {"size", 10}});
    block["device"] = "saw-1";
    queue.AddBlock(block);
  }
  OpenSaw([&](DeskSettings& settings) { settings.queue_file = QString::fromStdString(file); });
  CutTheWire();
  EXPECT_TRUE(window->banner()->isVisible());
  Picture("saw_away");
  ScanIn(QString::fromStdString(tag));
  WaitFor([&] { return station->work().step() == SawWork::Step::Cut; }, "the piece at the saw");
  Press(Qt::Key_F1);
  WaitFor([&] { return station->work().step() == SawWork::Step::Place; }, "the drop");
  const std::string drop = station->work().drop().toStdString();
  ScanIn("B1-3");
  WaitFor([&] { return station->work().drop().isEmpty(); }, "the drop at its place");
  EXPECT_EQ(StateOf(tag), "on rack") << "nothing has reached the book yet";
  MendTheWire();
  WaitFor([&] { return StateOf(tag) == "cut up"; }, "the deeds in the book");
  WaitFor([&] { return SawQueue(file).Waiting() == 0; }, "nothing to wait");
  EXPECT_EQ(shop.Word("select w.name as w from book.piece p join book.place w using (place_id) where p.tag = $1", {drop}), "B1-3");
  EXPECT_EQ(shop.Number("select count(*) as n from book.conflict"), 0);
  EXPECT_FALSE(window->banner()->isVisible());
}

TEST_F(SawStationTest, WithoutAQueueADeedOffTheNetworkIsRefusedInWords) {
  const std::string tag = Promised();
  OpenSaw();
  CutTheWire();
  ScanIn(QString::fromStdString(tag));
  WaitFor([&] { return window->last()->sign() == Sign::Refusal; }, "the refusal");
  EXPECT_TRUE(window->last()->words().contains("note it down")) << window->last()->words().toStdString();
  MendTheWire();
  EXPECT_EQ(StateOf(tag), "on rack");
}

TEST_F(SawStationTest, WhatSomebodyElseChangesIsShownByItself) {
  Promised();
  OpenSaw();
  const std::string more = shop.ReceiveCertified({.heat = "M2209"})[0];
  shop.AddLine({.line = "20", .quantity = 2, .order = "O2"});
  shop.Promise(more, {{.count = 2, .length = 290, .line = "20", .order = "O2"}});
  WaitFor([&] { return station->work().sheets().size() == 2; }, "the second sheet");
}

TEST_F(SawStationTest, APlanThatIsDueBeforeTheOneInHandGoesFirstAndIsTold) {
  Promised();
  OpenSaw();
  const std::string urgent = shop.ReceiveCertified({.heat = "M2209"})[0];
  Json line{{"order", "O9"},   {"line", "10"},         {"customer", "Pallant"}, {"section", Round(80)}, {"grade", "42CrMo4"},
            {"condition", ""}, {"length_nm", Mm(300)}, {"quantity", 1},         {"papers", "3.1"},      {"due", "2027-01-04"}};
  Do(shop.planner, "add_cut_list", {Json{{"name", "urgent"}, {"lines", Json::array({line})}}.dump()});
  shop.Promise(urgent, {{.count = 1, .length = 300, .line = "10", .order = "O9"}});
  WaitFor([&] { return station->work().block() && station->work().block()->tag == urgent; }, "the urgent piece to be the next");
  EXPECT_TRUE(
      window->last()->words().contains("came in and goes first, due 2027-01-04: now " + QString::fromStdString(urgent) + " at B1-1"))
      << window->last()->words().toStdString();
  ASSERT_EQ(station->work().sheets().size(), 2U);
  EXPECT_EQ(station->work().sheets()[0].due, "2027-01-04");
  Picture("saw_urgent");
}

TEST_F(SawStationTest, ASawShowsItsOwnSheetsOnlyAndAnotherSawsWhenTheDeskIsPutThere) {
  const std::vector<std::string> tags = shop.ReceiveCertified({.count = 2});
  shop.AddLine({.quantity = 4});
  shop.Promise(tags[0], {{.count = 2, .length = 290}}, "1");
  shop.Promise(tags[1], {{.count = 2, .length = 290}}, "2");
  OpenSaw();
  ASSERT_EQ(station->work().sheets().size(), 1U);
  EXPECT_EQ(station->work().block()->tag, tags[0]);
  // a piece of the other saw is refused with what belongs here
  ScanIn(QString::fromStdString(tags[1]));
  WaitFor([&] { return window->last()->sign() == Sign::Refusal; }, "the refusal");
  EXPECT_TRUE(window->last()->words().contains("On this sheet it is " + QString::fromStdString(tags[0]) + " at B1-1"))
      << window->last()->words().toStdString();
  EXPECT_EQ(StateOf(tags[1]), "on rack");
  window->desk().settings.saw = "2";
  station->Redress();
  WaitFor([&] { return station->work().block() && station->work().block()->tag == tags[1]; }, "the other saw's sheet");
  EXPECT_EQ(station->work().sheets().size(), 1U);
  ScanIn(QString::fromStdString(tags[1]));
  WaitFor([&] { return StateOf(tags[1]) == "at saw"; }, "the piece at saw 2");
}

TEST_F(SawStationTest, AShiftEndsWithABarInTheViceAndTheNextOneGoesOnWithWhatIsLeft) {
  const std::string tag = AtTheSaw();
  Press(Qt::Key_F9);
  WaitFor([&] { return window->findChild<QLineEdit*>("answer")->isVisible(); }, "the question");
  TypeIn("5");
  Press(Qt::Key_Return);
  TypeIn("band is blunt");
  Picture("saw_shift_ends");
  Press(Qt::Key_Return);
  WaitFor([&] { return station->work().handover().has_value(); }, "the hand-over");
  EXPECT_EQ(shop.Number("select count(*) as n from book.stroke s join book.piece p using (piece_id) where p.tag = $1 and s.class = 'good'",
                        {tag}),
            5);
  // 6000 - 10 - 2 - 5 x 292 = 4528
  EXPECT_EQ(shop.LengthOf(tag), Mm(4528));
  CloseDesk();
  OpenDesk(
      "saw", [this](Desk& desk) { return std::vector<Station*>{station = new SawStation(desk)}; },
      [](DeskSettings& settings) { settings.saw = "1"; });
  WaitFor([&] { return station->work().handover() && station->work().block(); }, "the hand-over and its sheet");
  EXPECT_EQ(station->work().handover()->words, "band is blunt");
  Picture("saw_handed_over");
  Press(Qt::Key_F9);
  WaitFor([&] { return !station->work().handover(); }, "the saw to be taken over");
  EXPECT_EQ(shop.Number("select count(*) as n from book.handover where taken_by is not null"), 1);
  ASSERT_EQ(RemainingOf(*station->work().block()).cuts.size(), 1U);
  EXPECT_EQ(RemainingOf(*station->work().block()).cuts[0].count, 9);
  EXPECT_EQ(RemainingOf(*station->work().block()).mass,
            Mass{178'667});  // pi/4 x 80^2 x 4528 mm3 x 7850 kg/m3 = 178.6677 kg, whole grams downwards
  Picture("saw_taken_over");
  Press(Qt::Key_F1);
  WaitFor([&] { return station->work().step() == SawWork::Step::Place; }, "the drop");
  EXPECT_EQ(StateOf(tag), "cut up");
  EXPECT_EQ(shop.Number("select count(*) as n from book.stroke s join book.piece p using (piece_id) where p.tag = $1 and s.class = 'good'",
                        {tag}),
            14);
  // 6000 - 10 - 2 - 14 x 292 = 1900
  EXPECT_EQ(shop.LengthOf(station->work().drop().toStdString()), Mm(1900));
  EXPECT_EQ(shop.Broken(), std::vector<std::string>());
}

TEST_F(SawStationTest, AMeasuredRestCarriesTheDoubtOfTheTapeThatWasScanned) {
  for (const auto& [name, doubt] : {std::pair{"tape 3", 500'000}, {"tape 4", 2'000'000}}) {
    Do(shop.quality, "add_device", {Json{{"device", name}, {"kind", "tape"}, {"site", "main"}}.dump()});
    Do(shop.quality, "calibrate_device",
       {Json{{"device", name}, {"calibrated_on", "2026-01-05"}, {"due_on", "2031-01-05"}, {"doubt_nm", doubt}, {"certificate", "C-1"}}
            .dump()});
  }
  const std::string tag = AtTheSaw();
  Press(Qt::Key_F3);
  const auto read_with = [&](const QString& words) {
    for (const PlainWords* label : station->findChildren<PlainWords*>())
      if (label->isVisible() && label->text() == words) return true;
    return false;
  };
  EXPECT_TRUE(read_with(QString("Read with a tape that is not said, \u00B10.0 mm")));
  ScanIn("tape 4");
  EXPECT_TRUE(read_with(QString("Read with tape 4, \u00B12.0 mm")));
  for (int i = 0; i < 2; ++i) Press(Qt::Key_F10);
  EXPECT_TRUE(read_with(QString("Read with tape 3, \u00B10.5 mm")));
  Picture("saw_rest");
  TypeIn("1898");
  Press(Qt::Key_Return);
  WaitFor([&] { return station->work().step() == SawWork::Step::Place; }, "the drop");
  const std::string drop = station->work().drop().toStdString();
  EXPECT_EQ(shop.LengthOf(drop), Mm(1898));
  EXPECT_EQ(shop.Number("select doubt_nm as n from book.piece where tag = $1", {drop}), 500'000);
  EXPECT_EQ(shop.Word("select d.name as w from book.piece p join book.device d on d.device_id = p.measured_with where p.tag = $1", {drop}),
            "tape 3");
}

TEST_F(SawStationTest, APlaceThatIsNoneIsRefusedAndTheDropStillWaits) {
  const std::string tag = AtTheSaw();
  Press(Qt::Key_F1);
  WaitFor([&] { return station->work().step() == SawWork::Step::Place; }, "the drop");
  ScanIn("M2208");  // the heat on the mill's label
  EXPECT_TRUE(window->last()->words().contains("M2208 is no place of this shop")) << window->last()->words().toStdString();
  EXPECT_EQ(station->work().step(), SawWork::Step::Place);
}

// 22 minutes of arc at 2 m are 12.8 mm (ISO 9241-303 recommends 20 to 22 for reading, from memory); 30 mm where the window has the room.
TEST_F(SawStationTest, TheStopSettingIsReadFromTwoMetresInTheSmallestWindowAndThirtyMillimetresInALargeOne) {
  const std::string tag = AtTheSaw();
  for (const auto& [width, height, least] : {std::tuple{1280, 800, 16.0}, {1920, 1080, 29.5}}) {
    window->resize(width, height);
    QTest::qWait(100);
    EXPECT_EQ(window->width(), width) << "there is room enough";
    EXPECT_GE(station->stop().FigureHeightMm(), least) << width;
    EXPECT_LE(station->stop().FigureHeightMm(), 30.5) << width;
    std::cout << width << " x " << height << ": " << station->stop().FigureHeightMm() << " mm\n";
    Picture(QString("saw_cut_%1").arg(width));
  }
  for (const DeedButton* button : station->findChildren<DeedButton*>()) {
    if (button->isVisible()) { EXPECT_GE(button->height(), kGlove) << button->text().toStdString(); }
  }
}

}  // namespace
}  // namespace heatkeep
