// 1280 x 800 is room enough for every station, in each language and unit, whatever is being asked: the window can be made that small, and
// no table needs to be pushed sideways.
#include <QScrollArea>
#include <QScrollBar>
#include <QTableView>

#include "client/stations/all_stations.h"
#include "client/stations/plan_pane.h"
#include "client/stations/receiving_station.h"
#include "client/stations/saw_station.h"
#include "tests/stations/desk_test.h"

namespace heatkeep {
namespace {

using LengthAs = ReadingUnits::LengthAs;

class RoomTest : public DeskTest, public testing::WithParamInterface<std::tuple<const char*, LengthAs>> {
 protected:
  RoomTest() { language = std::get<0>(GetParam()); }

  // A promised bar of a long name and many cuts, drops in the rack, a place that is counted.
  std::string Busy() {
    const std::string tag = shop.ReceiveCertified({})[0];
    shop.ReceiveCertified({.length = 1016, .kind = "drop", .ends = 2});
    shop.AddLine({});
    shop.Promise(tag, {{.count = 14, .length = 290}});
    shop.Expect({2});
    return tag;
  }
  void OpenAll() {
    OpenDesk("all", AllStations, [&](DeskSettings& settings) {
      settings.saw = "1";
      settings.units = {std::get<1>(GetParam()),
                        std::get<1>(GetParam()) == LengthAs::Mm ? ReadingUnits::MassAs::Kg : ReadingUnits::MassAs::Lb};
    });
  }
  template <typename Kind>
  Kind* Go(int number) {
    Press(Qt::Key(Qt::Key_0 + number), Qt::ControlModifier);
    QTest::qWait(200);
    return dynamic_cast<Kind*>(window->current());
  }
  void FitsTheWindow(const char* what) {
    window->resize(1280, 800);
    QTest::qWait(50);
    EXPECT_LE(window->minimumSizeHint().width(), 1280) << what;
    EXPECT_LE(window->minimumSizeHint().height(), 800) << what;
    EXPECT_EQ(window->size(), QSize(1280, 800)) << what;
    for (const QTableView* table : window->findChildren<QTableView*>())
      if (table->isVisible()) { EXPECT_EQ(table->horizontalScrollBar()->maximum(), 0) << what; }
  }
};

TEST_P(RoomTest, TheSawsStationFitsWhateverIsAsked) {
  const std::string tag = Busy();
  OpenAll();
  auto* saw = Go<SawStation>(1);
  WaitFor([&] { return saw->work().step() == SawWork::Step::Pull; }, "the sheet");
  FitsTheWindow("fetch");
  ScanIn(QString::fromStdString(tag));
  WaitFor([&] { return saw->work().step() == SawWork::Step::Cut; }, "the piece at the saw");
  FitsTheWindow("cut");
  Picture(QString("room_saw_%1").arg(language));
  for (const Qt::Key key : {Qt::Key_F3, Qt::Key_F4, Qt::Key_F6, Qt::Key_F7, Qt::Key_F9}) {
    Press(key);
    FitsTheWindow("a question");
    Press(Qt::Key_Escape);
  }
}

TEST_P(RoomTest, EveryOtherStationFits) {
  Busy();
  OpenAll();
  auto* gate = Go<ReceivingStation>(2);
  ASSERT_NE(gate, nullptr);
  WaitFor([&] { return gate->work().facts().expected.size() == 1; }, "what is expected");
  FitsTheWindow("receiving");
  Press(Qt::Key_F6);
  FitsTheWindow("receiving, all of it");
  for (int station = 3; station <= 7; ++station) {
    Go<Station>(station);
    QTest::qWait(300);
    FitsTheWindow(window->current()->Name().toUtf8().constData());
    Picture(QString("room_%1_%2").arg(station).arg(language));
  }
}

INSTANTIATE_TEST_SUITE_P(Readers, RoomTest,
                         testing::Values(std::tuple{"en", LengthAs::InchDecimal}, std::tuple{"de", LengthAs::Mm},
                                         std::tuple{"de", LengthAs::InchFraction}));

TEST(PlanPane, WhatAPlanLacksScrollsAndPushesNothingOutOfTheWindow) {
  PlanPane pane;
  pane.resize(620, 500);
  pane.show();
  QStringList lacks;
  for (int line = 1; line <= 60; ++line) lacks << QString("26-1251/%1, round 80 42CrMo4: 1 missing").arg(line);
  pane.Show({}, true, "saw 1: nothing of it can be cut", "0 pieces", lacks.join('\n'));
  QTest::qWait(50);
  EXPECT_EQ(pane.height(), 500);
  EXPECT_LT(pane.minimumSizeHint().height(), 250);
  auto* scrolled = pane.findChild<QScrollArea*>();
  ASSERT_NE(scrolled, nullptr);
  EXPECT_GT(scrolled->height(), 250) << "no bars: the room is for what is lacking";
  EXPECT_GT(scrolled->verticalScrollBar()->maximum(), 0);
}

}  // namespace
}  // namespace heatkeep
