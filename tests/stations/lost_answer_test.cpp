// A deed whose answer gets lost, with the desk ended before the book is back: when the desk is started again it says what is not known,
// asks again with the same request number, and the book holds the deed once.
#include <QDir>

#include "client/stations/counting_station.h"
#include "client/stations/papers_station.h"
#include "client/stations/receiving_station.h"
#include "tests/stations/desk_test.h"

namespace heatkeep {
namespace {

class LostAnswerTest : public DeskTest {
 protected:
  void Expect() {
    shop.Receive({.heat = "K1000", .place = "B1-1"});  // so that the mill of this supplier's bars is known
    shop.Expect({12});
  }
  DeskWindow::MakeStations Gate() {
    return [this](Desk& desk) { return std::vector<Station*>{gate = new ReceivingStation(desk)}; };
  }
  DeskWindow::MakeStations Papers() {
    return [this](Desk& desk) { return std::vector<Station*>{papers = new PapersStation(desk)}; };
  }
  DeskWindow::MakeStations Counting() {
    return [this](Desk& desk) { return std::vector<Station*>{counting = new CountingStation(desk)}; };
  }
  // A note of three bars, typed but for the last key.
  void TypeNote(const QString& number) {
    WaitFor([&] { return gate->work().facts().expected.size() == 1; }, "what is expected");
    ScanIn("PO-17/10");
    WaitFor([&] { return gate->form().note()->hasFocus(); }, "the field of the note");
    TypeIn(number);
    ScanIn("PO-17/10");
    TypeIn("3");
    Press(Qt::Key_Return);
    TypeIn("K3317");
  }
  std::int64_t Receipts(const std::string& note) { return shop.Number("select count(*) as n from book.receipt where note = $1", {note}); }
  std::int64_t BarsOf(const std::string& heat) {
    return shop.Number("select count(*) as n from api.stock_on_hand where heat = $1", {heat});
  }
  int Kept() { return static_cast<int>(QDir(folder.filePath("unanswered")).entryList(QDir::Files).size()); }
  QString Said() { return window->last()->words(); }

  ReceivingStation* gate = nullptr;
  PapersStation* papers = nullptr;
  CountingStation* counting = nullptr;
};

TEST_F(LostAnswerTest, OfAReceiptThatWasBookedIsThereOnceAfterARestart) {
  Expect();
  OverLossyWire();
  OpenDesk("clerk", Gate());
  TypeNote("LS-901");
  wire->LoseAnswers();
  Press(Qt::Key_F1);
  WaitFor([&] { return Receipts("LS-901") == 1; }, "the receipt in the book");
  wire->Cut();
  WaitFor([&] { return Said().contains("whether the receipt of note LS-901 was done is not known"); }, "the words of it");
  EXPECT_EQ(Kept(), 1);
  Picture("recv_answer_lost");
  CloseDesk();
  OpenDeskAway("clerk", Gate());
  WaitFor([&] { return Said().contains("whether the receipt of note LS-901 was done is not known"); }, "the same after the restart");
  wire->Mend();
  WaitFor([&] { return Said().contains("The missing answer is here: Note LS-901: 3 bar"); }, "the answer");
  EXPECT_EQ(Receipts("LS-901"), 1);
  EXPECT_EQ(BarsOf("K3317"), 3);
  EXPECT_EQ(Kept(), 0);
  WaitFor([&] { return QDir(folder.filePath("labels")).entryList({"*.pdf"}).size() == 1; }, "the labels");
}

TEST_F(LostAnswerTest, OfAReceiptThatNeverReachedTheBookIsDoneOnceAfterARestart) {
  Expect();
  OverLossyWire();
  OpenDesk("clerk", Gate());
  TypeNote("LS-902");
  wire->LoseQuestions();
  Press(Qt::Key_F1);
  WaitFor([&] { return Kept() == 1; }, "the deed on the disk");
  wire->Cut();
  CloseDesk();  // before the desk knows of it
  OpenDeskAway("clerk", Gate());
  EXPECT_EQ(Receipts("LS-902"), 0);
  wire->Mend();
  WaitFor([&] { return Receipts("LS-902") == 1; }, "the receipt in the book");
  WaitFor([&] { return Said().contains("The missing answer is here: Note LS-902: 3 bar"); }, "the answer");
  EXPECT_EQ(BarsOf("K3317"), 3);
  EXPECT_EQ(Kept(), 0);
}

TEST_F(LostAnswerTest, OfAHoldIsOneHoldAndCanStillBeUndone) {
  shop.ReceiveCertified({});
  OverLossyWire();
  OpenDesk("quality", Papers());
  TypeIn("M2208");
  Press(Qt::Key_Return);
  WaitFor([&] { return papers->work().answer() && !papers->work().busy(); }, "the heat");
  Press(Qt::Key_F5);
  WaitFor([&] { return window->findChild<QLineEdit*>("answer")->isVisible(); }, "the question");
  TypeIn("crack found");
  wire->LoseAnswers();
  Press(Qt::Key_Return);
  WaitFor([&] { return shop.Number("select count(*) as n from book.hold") == 1; }, "the hold in the book");
  wire->Cut();
  WaitFor([&] { return Said().contains("whether the hold on heat M2208 was done is not known"); }, "the words of it");
  CloseDesk();
  OpenDeskAway("quality", Papers());
  wire->Mend();
  WaitFor([&] { return Said().contains("The missing answer is here: heat M2208 is held"); }, "the answer");
  EXPECT_EQ(shop.Number("select count(*) as n from book.hold"), 1);
  Press(Qt::Key_Z, Qt::ControlModifier);
  WaitFor([&] { return shop.Number("select count(*) as n from book.hold where lifted_by is null") == 0; }, "the hold to be off again");
}

TEST_F(LostAnswerTest, OfATagThatWasCountedIsCountedOnceAfterARestart) {
  const std::string tag = shop.Receive({.heat = "M2208", .length = 640, .place = "B1-1", .kind = "drop", .ends = 1}).at(0);
  Do(shop.planner, "freeze_place", {Json{{"place", "B1-1"}}.dump()});
  OverLossyWire();
  OpenDesk("clerk", Counting());
  WaitFor([&] { return counting->work().count("B1-1") != nullptr; }, "the open count");
  wire->LoseAnswers();
  ScanIn(QString::fromStdString(tag));
  WaitFor([&] { return shop.Number("select count(*) as n from book.count_line") == 1; }, "the tag in the book");
  wire->Cut();
  WaitFor([&] { return Said().contains("whether the count of " + QString::fromStdString(tag) + " was done is not known"); },
          "the words of it");
  CloseDesk();
  OpenDeskAway("clerk", Counting());
  wire->Mend();
  WaitFor([&] { return Said().contains("The missing answer is here: " + QString::fromStdString(tag) + " counted"); }, "the answer");
  EXPECT_EQ(counting->work().here("B1-1").size(), 1u);
  EXPECT_EQ(shop.Number("select count(*) as n from book.count_line"), 1);
  EXPECT_EQ(Kept(), 0);
}

TEST_F(LostAnswerTest, OfADocumentIsFiledAndAcceptedOnceAfterARestart) {
  shop.Receive({.heat = "M4000"});
  OverLossyWire();
  OpenDesk("quality", Papers());
  TypeIn("M4000");
  Press(Qt::Key_Return);
  WaitFor([&] { return papers->work().answer() && !papers->work().busy(); }, "the heat");
  Press(Qt::Key_F3);
  WaitFor([&] { return papers->filing(); }, "the form");
  TypedDocument typed = papers->form()->document();
  typed.number = "C-77";
  typed.issued = "2026-01-02";
  typed.analysis = "C 0.41 Si 0.26";
  papers->form()->Show(typed);
  shop.admin.ExecuteScript("begin; lock table book.document in exclusive mode");  // it is read and not written
  Press(Qt::Key_F1);
  WaitFor([&] { return Kept() == 1; }, "the deed on the disk");
  wire->LoseAnswers();
  shop.admin.ExecuteScript("commit");
  WaitFor([&] { return shop.Number("select count(*) as n from book.document where accepted_by is not null") == 1; },
          "the document in the book");
  wire->Cut();
  WaitFor([&] { return Said().contains("whether the filing of document C-77 was done is not known"); }, "the words of it");
  CloseDesk();
  OpenDeskAway("quality", Papers());
  wire->Mend();
  WaitFor([&] { return Said().contains("The missing answer is here: document C-77 is filed and accepted: 1 lot"); }, "the answer");
  EXPECT_EQ(shop.Number("select count(*) as n from book.document"), 1);
  EXPECT_EQ(Kept(), 0);
}

TEST_F(LostAnswerTest, OfAnotherLoginWaitsForThatLoginAndIsTold) {
  Expect();
  OverLossyWire();
  OpenDesk("clerk", Gate());
  TypeNote("LS-903");
  wire->LoseQuestions();
  Press(Qt::Key_F1);
  WaitFor([&] { return Kept() == 1; }, "the deed on the disk");
  wire->Cut();
  CloseDesk();
  wire->Mend();
  OpenDesk("all", Gate());
  WaitFor([&] { return Said().contains("test_clerk asked for it"); }, "the words of it");
  EXPECT_EQ(Receipts("LS-903"), 0);
  EXPECT_EQ(Kept(), 1);
  CloseDesk();
  OpenDesk("clerk", Gate());
  WaitFor([&] { return Receipts("LS-903") == 1; }, "the receipt in the book");
}

TEST_F(LostAnswerTest, CutShortOnTheDiskIsToldAndNotAsked) {
  Expect();
  QDir(folder.path()).mkpath("unanswered");
  QFile torn(folder.filePath("unanswered/receiving-7c1f"));
  ASSERT_TRUE(torn.open(QIODevice::WriteOnly));
  torn.write("HEATKW1 deed\n\x40");
  torn.close();
  OpenDesk("clerk", Gate());
  WaitFor([&] { return Said().contains("cut short"); }, "the words of it");
  EXPECT_TRUE(Said().contains("look in the book whether it was done"));
  EXPECT_EQ(Kept(), 1);
}

}  // namespace
}  // namespace heatkeep
