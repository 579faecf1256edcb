// The saw's station: a line that goes to plan is two scans and one key; what does not go to plan has a key each; off the network too.
#include "client/stations/saw_station.h"

#include <QDir>

#include "client/gateway/saw_deeds.h"
#include "client/queue/saw_queue.h"
#include "tests/stations/desk_test.h"

namespace heatkeep {
namespace {

class SawStationTest : public DeskTest {
 protected:
  SawStation& OpenSaw(const std::function<void(DeskSettings&)>& set = {}) {
    OpenDesk("saw", [this](Desk& desk) { return std::vector<Station*>{station = new SawStation(desk)}; }, [&](DeskSettings& settings) {
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
  WaitFor([&] { return shop.Word("select w.name as w from book.piece p join book.place w using (place_id) where p.tag = $1", {drop.toStdString()}) == "B1-3"; }, "the book to say so");
  EXPECT_EQ(keys, 1);
  EXPECT_EQ(scans, 2);
  EXPECT_EQ(StateOf(tag), "cut up");
  EXPECT_EQ(shop.Number("select count(*) as n from book.stroke s join book.piece p using (piece_id) where p.tag = $1 and s.class = 'good'", {tag}), 14);
  EXPECT_EQ(window->scan_field()->text(), "");
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

TEST_F(SawStationTest, AShortPieceIsMeasuredAndTheRestOfThePlanMendedByOneKeyAndALength) {
  const std::string tag = Promised();
  OpenSaw();
  ScanIn(QString::fromStdString(tag));
  WaitFor([&] { return station->work().step() == SawWork::Step::Cut; }, "the piece at the saw");
  Press(Qt::Key_F6);
  TypeIn("3000");
  Press(Qt::Key_Return);
  WaitFor([&] { return shop.LengthOf(tag) == Mm(3000); }, "the length in the book");
  WaitFor([&] { return !station->work().busy() && station->work().block() && station->work().block()->length == Length{Mm(3000)}; }, "the sheet anew");
  EXPECT_TRUE(window->last()->words().contains("short")) << window->last()->words().toStdString();
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
  const std::string tag = Promised();
  OpenSaw();
  ScanIn(QString::fromStdString(tag));
  WaitFor([&] { return station->work().step() == SawWork::Step::Cut; }, "the piece at the saw");
  Press(Qt::Key_F3);
  TypeIn("1898");
  Press(Qt::Key_Return);
  WaitFor([&] { return station->work().step() == SawWork::Step::Place; }, "the drop");
  EXPECT_EQ(shop.LengthOf(station->work().drop().toStdString()), Mm(1898));
}

TEST_F(SawStationTest, TheLabelOfADropIsOutAsAFileAndTheBookKnows) {
  const std::string tag = Promised();
  OpenSaw();
  ScanIn(QString::fromStdString(tag));
  WaitFor([&] { return station->work().step() == SawWork::Step::Cut; }, "the piece at the saw");
  Press(Qt::Key_F1);
  WaitFor([&] { return station->work().step() == SawWork::Step::Place; }, "the drop");
  const std::string drop = station->work().drop().toStdString();
  WaitFor([&] { return shop.Word("select j.state::text as w from book.label_job j join book.piece p using (piece_id) where p.tag = $1", {drop}) == "printed"; }, "the label");
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

}  // namespace
}  // namespace heatkeep
