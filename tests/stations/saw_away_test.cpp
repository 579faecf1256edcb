// A saw without the book: a desk that is started then goes on with the sheets it kept, over restarts, and what was done is booked once.
#include <QFile>

#include "client/gateway/saw_deeds.h"
#include "client/models/saw_sheets.h"
#include "client/queue/saw_queue.h"
#include "client/stations/saw_station.h"
#include "tests/stations/desk_test.h"

namespace heatkeep {
namespace {

class SawAwayTest : public DeskTest {
 protected:
  SawAwayTest() : file(folder.filePath("saw1.queue").toStdString()) {
    SawQueue queue(file);
    nlohmann::json block = SawDeeds(shop.saw).TakeTagBlock(NewRequest(), {{"device", "saw-1"}, {"site", "main"}, {"size", 10}});
    block["device"] = "saw-1";
    queue.AddBlock(block);
  }
  DeskWindow::MakeStations Saw() {
    return [this](Desk& desk) { return std::vector<Station*>{station = new SawStation(desk)}; };
  }
  std::function<void(DeskSettings&)> AtSaw(const QString& saw = "1") {
    return [this, saw](DeskSettings& settings) {
      settings.saw = saw;
      settings.queue_file = QString::fromStdString(file);
    };
  }
  void OpenOnce() {
    OpenDesk("saw", Saw(), AtSaw());
    WaitFor([&] { return !station->work().sheets().empty(); }, "the sheet");
  }
  void StartAway() {
    CloseDesk();
    wire_cut = true;
    if (wire) wire->Cut();
    OpenDeskAway("saw", Saw(), AtSaw());
  }
  std::string Promised() {
    const std::string tag = shop.ReceiveCertified({})[0];
    shop.AddLine({});
    shop.Promise(tag, {{.count = 14, .length = 290}});
    return tag;
  }
  std::string StateOf(const std::string& tag) { return shop.Word("select state::text as w from book.piece where tag = $1", {tag}); }
  std::int64_t GoodOf(const std::string& tag) {
    return shop.Number("select count(*) as n from book.stroke s join book.piece p using (piece_id) where p.tag = $1 and s.class = 'good'",
                       {tag});
  }
  void AtStep(SawWork::Step step, const char* what) {
    WaitFor([&, step] { return station->work().step() == step; }, what);
  }
  QString Said() { return window->last()->words(); }

  std::string file;
  SawStation* station = nullptr;
};

TEST_F(SawAwayTest, ADeskStartedWithoutTheBookCutsFromTheSheetsItKeptOverRestartsAndAllIsBookedOnce) {
  const std::string tag = Promised();
  OpenOnce();
  StartAway();
  ASSERT_EQ(station->work().sheets().size(), 1U);
  EXPECT_TRUE(station->work().as_of().isValid());
  EXPECT_TRUE(window->banner()->isVisible());
  bool as_of = false;
  for (const PlainWords* words : station->findChildren<PlainWords*>())
    as_of |= words->isVisible() && words->text().contains("Sheets as of " + station->work().as_of().toString("HH:mm"));
  EXPECT_TRUE(as_of) << "how old the sheets are is shown";
  Picture("saw_started_away");
  ScanIn(QString::fromStdString(tag));
  AtStep(SawWork::Step::Cut, "the piece at the saw");
  StartAway();  // the machine was switched off with the piece in the saw
  AtStep(SawWork::Step::Cut, "the piece still at the saw");
  Press(Qt::Key_F1);
  AtStep(SawWork::Step::Place, "the drop");
  const std::string drop = station->work().drop().toStdString();
  StartAway();  // and with the drop in the hand
  AtStep(SawWork::Step::Place, "the drop again");
  EXPECT_EQ(station->work().drop().toStdString(), drop);
  ScanIn("B1-3");
  AtStep(SawWork::Step::Nothing, "nothing more to do");
  StartAway();
  EXPECT_EQ(station->work().step(), SawWork::Step::Nothing);
  EXPECT_EQ(StateOf(tag), "on rack") << "nothing has reached the book yet";
  wire_cut = false;
  WaitFor([&] { return StateOf(tag) == "cut up"; }, "the deeds in the book");
  WaitFor([&] { return SawQueue(file).Waiting() == 0; }, "nothing to wait");
  EXPECT_EQ(GoodOf(tag), 14);
  EXPECT_EQ(shop.Word("select w.name as w from book.piece p join book.place w using (place_id) where p.tag = $1", {drop}), "B1-3");
  EXPECT_EQ(shop.Number("select count(*) as n from book.conflict"), 0);
  WaitFor(
      [&] {
        return shop.Word("select j.state::text as w from book.label_job j join book.piece p using (piece_id) where p.tag = $1", {drop}) ==
            "printed";
      },
      "the label of the drop");
  EXPECT_EQ(shop.Broken(), std::vector<std::string>());
}

TEST_F(SawAwayTest, SheetsThatAreCutShortOrForeignAreToldAndNotUsed) {
  Promised();
  OpenOnce();
  CloseDesk();
  const QString sheets = QString::fromStdString(SheetsFileOf(file));
  ASSERT_TRUE(QFile::exists(sheets));
  QFile torn(sheets);
  ASSERT_TRUE(torn.resize(torn.size() / 2));
  StartAway();
  EXPECT_TRUE(Said().contains("the sheets kept here are not used")) << Said().toStdString();
  EXPECT_TRUE(Said().contains("cut short")) << Said().toStdString();
  EXPECT_TRUE(station->work().sheets().empty());
  CloseDesk();
  QFile foreign(sheets);
  ASSERT_TRUE(foreign.open(QIODevice::WriteOnly | QIODevice::Truncate));
  foreign.write("shopping list\n");
  foreign.close();
  StartAway();
  EXPECT_TRUE(Said().contains("and this is none")) << Said().toStdString();
  EXPECT_TRUE(station->work().sheets().empty());
  // with the book they are read anew
  wire_cut = false;
  WaitFor([&] { return !station->work().sheets().empty(); }, "the sheet");
}

TEST_F(SawAwayTest, SheetsOfAnotherSawAreNotUsed) {
  Promised();
  OpenOnce();
  CloseDesk();
  wire_cut = true;
  OpenDeskAway("saw", Saw(), AtSaw("2"));
  EXPECT_TRUE(Said().contains("are of saw 1")) << Said().toStdString();
  EXPECT_TRUE(station->work().sheets().empty());
}

TEST_F(SawAwayTest, ACutWhoseAnswerGotLostIsBookedOnceThoughTheDeskWasStartedAgainAndMoreWasCutMeanwhile) {
  const std::vector<std::string> tags = shop.ReceiveCertified({.count = 2});
  shop.AddLine({.quantity = 28});
  for (const std::string& tag : tags) shop.Promise(tag, {{.count = 14, .length = 290}});
  OverLossyWire();
  OpenOnce();
  const std::string first = station->work().block()->tag, second = first == tags[0] ? tags[1] : tags[0];
  const QDateTime fetched = QDateTime::currentDateTime();
  ScanIn(QString::fromStdString(first));
  AtStep(SawWork::Step::Cut, "the piece at the saw");
  // the desk hears of its own deed and reads anew: were that answer lost, the cut would still wait behind it, unasked
  WaitFor([&] { return station->work().as_of() > fetched; }, "the sheets read after it");
  wire->LoseAnswers();
  Press(Qt::Key_F1);
  WaitFor([&] { return StateOf(first) == "cut up"; }, "the cut in the book");
  wire->Cut();
  wire_cut = true;
  WaitFor([&] { return Said().contains("whether the cut of") && Said().contains("Write " + QString::fromStdString(first)); },
          "the words of it");
  AtStep(SawWork::Step::Pull, "the next piece to fetch");
  Picture("saw_answer_lost");
  StartAway();
  AtStep(SawWork::Step::Pull, "the next piece to fetch, after a restart");
  EXPECT_EQ(station->work().block()->tag, second);
  ScanIn(QString::fromStdString(second));
  AtStep(SawWork::Step::Cut, "the second piece at the saw");
  Press(Qt::Key_F1);
  AtStep(SawWork::Step::Place, "the second drop");
  Press(Qt::Key_F1);
  AtStep(SawWork::Step::Nothing, "nothing more");
  wire->Mend();
  wire_cut = false;
  WaitFor([&] { return StateOf(second) == "cut up" && SawQueue(file).Waiting() == 0; }, "the second cut in the book");
  EXPECT_EQ(GoodOf(first), 14);
  EXPECT_EQ(GoodOf(second), 14);
  EXPECT_EQ(shop.Number("select count(*) as n from book.conflict"), 0);
  EXPECT_EQ(shop.Broken(), std::vector<std::string>());
}

}  // namespace
}  // namespace heatkeep
