// What a new book needs, step by step; and all stations in one window.
#include "client/stations/start_station.h"

#include "client/stations/all_stations.h"
#include "tests/stations/desk_test.h"

namespace heatkeep {
namespace {

class StartStationTest : public DeskTest {};

TEST_F(StartStationTest, CountsTheStepsThatAreDoneAndSaysHowToDoTheNext) {
  StartStation* station = nullptr;
  OpenDesk("owner", [&](Desk& desk) { return std::vector<Station*>{station = new StartStation(desk)}; });
  WaitFor([&] { return station->steps() == 5; }, "the counts");
  EXPECT_EQ(station->done(), 3) << "grades, saws and people are there; no metal, no cut list";
  Picture("start");
  shop.Receive({});
  shop.AddLine({});
  WaitFor([&] {
    station->Refresh();
    return station->done() == 5;
  }, "all steps");
}

TEST_F(StartStationTest, ALoginSeesTheStationsItMayWorkAt) {
  const auto seen = [&] {
    QStringList names;
    for (QPushButton* button : window->findChildren<QPushButton*>())
      if (button->isVisible() && button->autoExclusive()) names.append(button->text());
    return names;
  };
  OpenDesk("saw", AllStations, [](DeskSettings& settings) { settings.saw = "1"; });
  EXPECT_TRUE(seen().contains("Saw")) << seen().join(", ").toStdString();
  EXPECT_FALSE(seen().contains("Rack"));
  EXPECT_FALSE(seen().contains("Start"));
  OpenDesk("all", AllStations, [](DeskSettings& settings) { settings.saw = "1"; });
  EXPECT_EQ(seen().size(), 7) << seen().join(", ").toStdString();
  for (int i = 0; i < 7; ++i) {
    Press(Qt::Key(Qt::Key_1 + i), Qt::ControlModifier);
    Picture("all_" + QString::number(i + 1));
  }
  EXPECT_EQ(window->current()->Name(), "Start");
}

}  // namespace
}  // namespace heatkeep
