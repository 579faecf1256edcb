// The rack's station: what lies there, against what was asked for, with its worths; unused first; filtered and opened by keys.
#include "client/stations/rack_station.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>

#include "tests/stations/desk_test.h"

namespace heatkeep {
namespace {

class RackStationTest : public DeskTest {
 protected:
  RackStationTest() {
    Do(shop.owner, "set_rules", {R"({"prices": [{"grade": "42CrMo4", "cents_per_tonne": 160000, "scrap_cents_per_tonne": 20000}]})"});
    const std::string tag = shop.ReceiveCertified({})[0];
    shop.AddLine({});
    shop.Fetch(tag, {{.count = 14, .length = 290}});
    drop = shop.Record(tag, Json::array({Trim(), Good(14, 290)}), DropLeft(1900))["drop_tag"];
    shop.Receive({.heat = "M5000", .length = 2000, .place = "B1-3", .kind = "bar"});
  }
  void OpenRack() {
    OpenDesk("planner", [this](Desk& desk) { return std::vector<Station*>{station = new RackStation(desk)}; });
    tester = std::make_unique<QAbstractItemModelTester>(station->rows()->table()->model(),
                                                        QAbstractItemModelTester::FailureReportingMode::Fatal);
    WaitFor([&] { return station->work().whole(); }, "the rack");
  }

  std::string drop;
  RackStation* station = nullptr;
  std::unique_ptr<QAbstractItemModelTester> tester;
};

TEST_F(RackStationTest, DropsStandWithTheirLengthsPlacesAndWorths) {
  OpenRack();
  ASSERT_EQ(station->work().Drops().size(), 1U);
  const RackPiece& piece = *station->work().Drops()[0];
  EXPECT_EQ(piece.tag, drop);
  EXPECT_EQ(piece.length, Length{Mm(1900)});
  // pi/4 80^2 x 1900 mm3 x 7.85 g/cm3 = 74 971 g; at 1600 and 200 a tonne 119.95 and 14.99
  EXPECT_EQ(piece.replacement_cents, 11995);
  EXPECT_EQ(piece.scrap_cents, 1499);
  const RackSums sums = SumsOf(station->work().Drops());
  EXPECT_EQ(sums.pieces, 1U);
  EXPECT_EQ(sums.scrap_cents, 1499);
  Picture("rack");
}

TEST_F(RackStationTest, EveryPlaceHasItsLoad) {
  OpenRack();
  const auto& places = station->work().places();
  const auto at = std::find_if(places.begin(), places.end(), [](const PlaceLoad& p) { return p.place == "B1-3"; });
  ASSERT_NE(at, places.end());
  EXPECT_EQ(at->pieces, 1);
  EXPECT_EQ(at->load, Mass{78917}) << "2 m of round 80: pi/4 80^2 x 2000 mm3 x 7.85 g/cm3";
  EXPECT_EQ(at->most, Mass{100000});
}

TEST_F(RackStationTest, AGroupChosenByKeysShowsItsKeepLength) {
  OpenRack();
  auto* list = station->findChild<WaitingList*>();
  list->setFocus();
  Press(Qt::Key_Down);
  Press(Qt::Key_Down);
  WaitFor([&] { return station->work().keep().has_value(); }, "the keep length");
  EXPECT_EQ(station->work().keep(), Length{Mm(150)});
  EXPECT_EQ(station->work().group().section, "round 80");
  Picture("rack_group");
}

TEST_F(RackStationTest, APlaceScannedFiltersAndEnterOpensThePapers) {
  OpenRack();
  QSignalSpy asked(station, &Station::LookUp);
  ScanIn("B1-1");
  WaitFor([&] { return station->rows()->filter()->text() == "B1-1"; }, "the filter");
  station->rows()->table()->setFocus();
  station->rows()->Choose(QString::fromStdString(drop));
  Press(Qt::Key_Return);
  ASSERT_EQ(asked.size(), 1);
  EXPECT_EQ(asked[0][0].toString().toStdString(), drop);
}

}  // namespace
}  // namespace heatkeep
