// The papers station: anything scanned or typed is traced; a hold is previewed, placed, undone; an unknown word is said to be unknown.
#include "client/stations/papers_station.h"

#include <QFile>

#include "tests/stations/desk_test.h"

namespace heatkeep {
namespace {

class PapersStationTest : public DeskTest {
 protected:
  PapersStation& OpenPapers(const std::string& login = "quality") {
    OpenDesk(login, [this](Desk& desk) { return std::vector<Station*>{station = new PapersStation(desk)}; });
    return *station;
  }
  // A certified bar of M2208 of which 14 x 290 were cut for O1 and one drop is left; its tag.
  std::string CutBar() {
    const std::string tag = shop.ReceiveCertified({})[0];
    shop.AddLine({});
    shop.Fetch(tag, {{.count = 14, .length = 290}});
    shop.Record(tag, Json::array({Trim(), Good(14, 290)}), DropLeft(1900));
    return tag;
  }
  void ShowsWhat(const std::string& name) {
    WaitFor([&] { return station->work().answer() && station->work().answer()->what.name == name && !station->work().busy(); }, name.c_str());
  }

  PapersStation* station = nullptr;
};

TEST_F(PapersStationTest, AHeatTypedIsItsFamilyTreeItsBalanceAndItsPapers) {
  CutBar();
  OpenPapers();
  Picture("papers_empty");
  TypeIn("M2208");
  Press(Qt::Key_Return);
  ShowsWhat("M2208");
  EXPECT_EQ(station->work().answer()->what.kind, "heat");
  EXPECT_EQ(station->tree()->pieces(), 2) << "the bar and its drop";
  ASSERT_EQ(station->work().answer()->record->balances.size(), 1U);
  ASSERT_EQ(station->work().answer()->documents.size(), 1U);
  EXPECT_EQ(station->work().answer()->documents[0].type, "3.1");
  Picture("papers_heat");
}

TEST_F(PapersStationTest, ATagScannedIsThePieceWithWhatHappenedToIt) {
  const std::string tag = CutBar();
  OpenPapers();
  ScanIn(QString::fromStdString(tag));
  ShowsWhat(tag);
  EXPECT_EQ(station->work().answer()->what.kind, "piece");
  ASSERT_FALSE(station->work().answer()->history.empty());
  EXPECT_EQ(station->work().answer()->history.front().deed, "record_cut");
  Picture("papers_piece");
}

TEST_F(PapersStationTest, AnOrderSaysWhichHeatsWentIntoIt) {
  CutBar();
  OpenPapers();
  TypeIn("O1");
  Press(Qt::Key_Return);
  ShowsWhat("O1");
  EXPECT_TRUE(station->work().answer()->record->heats->one_heat);
  Picture("papers_order");
}

TEST_F(PapersStationTest, AHoldIsPreviewedThenPlacedThenUndoneByOneKey) {
  CutBar();
  OpenPapers();
  TypeIn("M2208");
  Press(Qt::Key_Return);
  ShowsWhat("M2208");
  Press(Qt::Key_F5);
  WaitFor([&] { return window->findChild<QLineEdit*>("answer")->isVisible(); }, "the preview and the question");
  Picture("papers_preview");
  EXPECT_EQ(shop.Number("select count(*) as n from book.hold"), 0) << "a preview changes nothing";
  TypeIn("crack found");
  Press(Qt::Key_Return);
  WaitFor([&] { return shop.Number("select count(*) as n from book.hold where heat = 'M2208' and lifted_by is null and reason = 'crack found'") == 1; }, "the hold");
  WaitFor([&] { return window->last()->sign() == Sign::Done && !station->work().answer()->holds.empty(); }, "what is shown to say so");
  Picture("papers_held");
  Press(Qt::Key_Z, Qt::ControlModifier);
  WaitFor([&] { return shop.Number("select count(*) as n from book.hold where lifted_by is null") == 0; }, "the hold to be off again");
}

TEST_F(PapersStationTest, ARecordOnPaperCanBeProvedLater) {
  CutBar();
  OpenPapers();
  TypeIn("O1");
  Press(Qt::Key_Return);
  ShowsWhat("O1");
  Press(Qt::Key_F8);
  WaitFor([&] { return window->findChild<QLineEdit*>("answer")->isVisible(); }, "the question");
  const QString file = folder.filePath("trace.pdf");
  window->findChild<QLineEdit*>("answer")->setText(file);
  Press(Qt::Key_Return);
  WaitFor([&] { return QFile::exists(file); }, "the file");
  EXPECT_EQ(shop.Number("select count(*) as n from book.printed_record"), 1);
}

TEST_F(PapersStationTest, AnOrderLeavesUnderItsNote) {
  CutBar();
  OpenPapers("planner");
  TypeIn("O1");
  Press(Qt::Key_Return);
  ShowsWhat("O1");
  Press(Qt::Key_F9);
  WaitFor([&] { return window->findChild<QLineEdit*>("answer")->isVisible(); }, "the question");
  TypeIn("118");
  Press(Qt::Key_Return);
  WaitFor([&] { return shop.Number("select count(*) as n from book.stroke s join book.shipment_line l using (shipment_line_id) join book.shipment h using (shipment_id) where h.note = '118'") == 14; }, "the shipment");
}

TEST_F(PapersStationTest, WhatTheBookDoesNotKnowIsSaidAndNothingElseIsShownForIt) {
  OpenPapers();
  TypeIn("M22O8");
  Press(Qt::Key_Return);
  WaitFor([&] { return window->last()->sign() == Sign::Warning; }, "the words");
  EXPECT_FALSE(station->work().answer().has_value());
}

TEST_F(PapersStationTest, WhatWaitsForPapersIsAtTheLeft) {
  shop.Receive({.heat = "M4000"});
  OpenPapers();
  WaitFor([&] { return station->work().waiting().awaited.size() == 1; }, "the heat without papers");
  EXPECT_EQ(station->work().waiting().awaited[0].heat, "M4000");
}

}  // namespace
}  // namespace heatkeep
