// The saw's station: a line that goes to plan is two scans and one key; what does not go to plan has a key each; off the network too.
#include "client/stations/saw_station.h"

#include <QFile>

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
  ScanIn("B1-2");
  WaitFor([&] { return station->work().step() == SawWork::Step::Nothing || station->work().drop().isEmpty(); }, "the drop at its place");
  WaitFor([&] { return shop.Word("select w.name as w from book.piece p join book.place w using (place_id) where p.tag = $1", {drop.toStdString()}) == "B1-2"; }, "the book to say so");
  EXPECT_EQ(keys, 1);
  EXPECT_EQ(scans, 2);
  EXPECT_EQ(StateOf(tag), "cut up");
  EXPECT_EQ(shop.Number("select count(*) as n from book.stroke s join book.piece p using (piece_id) where p.tag = $1 and s.class = 'good'", {tag}), 14);
  EXPECT_EQ(window->scan_field()->text(), "");
}

}  // namespace
}  // namespace heatkeep
