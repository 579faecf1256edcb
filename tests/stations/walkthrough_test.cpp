// From the lorry to the shipment in one window, by keys and scans only: received, put away, its certificate filed, planned, promised, cut,
// the drop put back, shipped, traced. Runs on any platform: QT_QPA_PLATFORM=xcb under a virtual X server shows it as people see it.
#include "client/stations/all_stations.h"
#include "client/stations/papers_station.h"
#include "client/stations/plan_station.h"
#include "client/stations/receiving_station.h"
#include "client/stations/saw_station.h"
#include "tests/stations/desk_test.h"

namespace heatkeep {
namespace {

class Walkthrough : public DeskTest {
 protected:
  template <typename Kind>
  Kind& Go(int number) {
    Press(Qt::Key(Qt::Key_0 + number), Qt::ControlModifier);
    auto* station = dynamic_cast<Kind*>(window->current());
    EXPECT_NE(station, nullptr) << number << " opens " << window->current()->Name().toStdString();
    return *station;
  }
  std::int64_t BarsAt(const std::string& place) {
    return shop.Number("select count(*) as n from api.stock_on_hand where heat = 'K3317' and place = $1", {place});
  }
};

TEST_F(Walkthrough, FromTheLorryToTheShipmentByKeysAndScansOnly) {
  shop.Receive({.heat = "K1000", .length = 900, .place = "B1-2"});
  shop.Expect({2});
  shop.AddLine({});
  OpenDesk("all", AllStations, [](DeskSettings& settings) { settings.saw = "1"; });

  auto& gate = Go<ReceivingStation>(2);
  WaitFor([&] { return gate.work().facts().expected.size() == 1; }, "what is expected");
  ScanIn("PO-17/10");
  WaitFor([&] { return gate.form().note()->hasFocus(); }, "the field of the note");
  TypeIn("LS-904");
  ScanIn("PO-17/10");
  TypeIn("2");
  Press(Qt::Key_Return);
  TypeIn("K3317");
  Press(Qt::Key_Return);
  TypeIn("473.5");
  Press(Qt::Key_F1);
  WaitFor([&] { return gate.putting_away(); }, "the bars to be put away");
  ScanIn("B1-1");
  WaitFor([&] { return BarsAt("B1-1") == 2; }, "the bars in their place");
  Picture("walk_1_received");

  auto& quality = Go<PapersStation>(4);
  PasteIn("K3317");
  Press(Qt::Key_Return);
  WaitFor([&] { return quality.work().answer() && quality.work().answer()->what.name == "K3317" && !quality.work().busy(); }, "the heat");
  Press(Qt::Key_F3);
  WaitFor([&] { return quality.filing() && quality.form()->document().heat == "K3317"; }, "the form");
  TypeIn("C-904");
  Press(Qt::Key_Return);
  Press(Qt::Key_Return);
  PasteIn("2026-03-01");
  Press(Qt::Key_F1);
  WaitFor([&] { return shop.Word("select papers::text as w from book.lot where heat = 'K3317'") == "3.1"; }, "its certificate to be filed");

  auto& planning = Go<PlanStation>(3);
  WaitFor([&] { return !planning.work().lines().empty(); }, "what is open");
  Press(Qt::Key_F1);
  WaitFor([&] { return !planning.work().busy() && planning.work().proposal() != nullptr; }, "a plan");
  Picture("walk_2_planned");
  Press(Qt::Key_F2);
  WaitFor([&] { return shop.Number("select count(*) as n from book.plan where state = 'live'") == 1; }, "the plan to be promised");

  auto& saw = Go<SawStation>(1);
  WaitFor([&] { return saw.work().step() == SawWork::Step::Pull; }, "the sheet at the saw");
  const std::string bar = saw.work().block()->tag;
  ScanIn(QString::fromStdString(bar));
  WaitFor([&] { return saw.work().step() == SawWork::Step::Cut; }, "the bar in the saw");
  Picture("walk_3_cut");
  Press(Qt::Key_F1);
  WaitFor([&] { return saw.work().step() == SawWork::Step::Place; }, "the drop");
  const std::string drop = saw.work().drop().toStdString();
  ScanIn("B1-3");
  WaitFor([&] { return shop.Word("select place as w from api.stock_on_hand where tag = $1", {drop}) == "B1-3"; }, "the drop on the rack");

  auto& papers = Go<PapersStation>(4);
  TypeIn("O1");
  Press(Qt::Key_Return);
  WaitFor([&] { return papers.work().answer() && papers.work().answer()->what.name == "O1" && !papers.work().busy(); }, "the order");
  Press(Qt::Key_F9);
  TypeIn("118");
  Press(Qt::Key_Return);
  WaitFor([&] { return shop.Number("select count(*) as n from book.stroke where shipment_line_id is not null") == 14; }, "the shipment");
  WaitFor([&] { return !papers.work().busy(); }, "the order anew");
  Picture("walk_4_shipped");
  EXPECT_EQ(shop.Broken(), std::vector<std::string>());
}

}  // namespace
}  // namespace heatkeep
