// What the book and the allocator say reaches a German reader who measures in inches and pounds: in their language and units, on every
// station, by real keys. Lengths: 1 in = 25.4 mm; masses: 1 lb = 0.45359237 kg (international yard and pound agreement, 1959); bars:
// pi d^2/4 x length x 7850 kg/m3.
#include "client/stations/papers_station.h"
#include "client/stations/plan_station.h"
#include "client/stations/receiving_station.h"
#include "client/stations/saw_station.h"
#include "tests/stations/desk_test.h"

namespace heatkeep {
namespace {

class GermanWordsTest : public DeskTest {
 protected:
  GermanWordsTest() { language = "de"; }

  template <typename StationType>
  StationType& Open(const std::string& login) {
    StationType* station = nullptr;
    OpenDesk(
        login, [&](Desk& desk) { return std::vector<Station*>{station = new StationType(desk)}; },
        [](DeskSettings& settings) {
          settings.saw = "1";
          settings.units = {ReadingUnits::LengthAs::InchFraction, ReadingUnits::MassAs::Lb};
        });
    return *station;
  }
  std::string Said() { return window->last()->words().toStdString(); }
};

TEST_F(GermanWordsTest, TheWrongPieceAtTheSaw) {
  const std::string tag = shop.ReceiveCertified({})[0];
  shop.AddLine({});
  shop.Promise(tag, {{.count = 14, .length = 290}});
  const std::string other = shop.ReceiveCertified({.heat = "M3000"})[0];
  SawStation& saw = Open<SawStation>("saw");
  WaitFor([&] { return !saw.work().sheets().empty(); }, "the sheet");
  Picture("de_saw_fetch");
  ScanIn(QString::fromStdString(other));
  WaitFor([&] { return window->last()->sign() == Sign::Refusal; }, "the refusal");
  EXPECT_EQ(Said(), other + " ist keinem Plan zugesagt. Auf diesem Blatt ist es " + tag + " auf B1-1");
  Picture("de_saw_refused");
  ScanIn(QString::fromStdString(tag));
  WaitFor([&] { return saw.work().step() == SawWork::Step::Cut; }, "the piece at the saw");
  Picture("de_saw_cut");
  Press(Qt::Key_F1);
  WaitFor([&] { return saw.work().step() == SawWork::Step::Place; }, "what is left");
  ScanIn("QUAR");
  Picture("de_saw_place");
}

TEST_F(GermanWordsTest, AnotherPieceThatWouldDoIsSaidInInches) {
  const std::string tag = shop.ReceiveCertified({.length = 1016, .kind = "drop", .ends = 2})[0];
  const std::string other = shop.ReceiveCertified({.length = 2032, .kind = "drop", .ends = 2})[0];
  shop.AddLine({.quantity = 3});
  shop.Promise(tag, {{.count = 3, .length = 290}});
  SawStation& saw = Open<SawStation>("saw");
  WaitFor([&] { return !saw.work().sheets().empty(); }, "the sheet");
  Do(shop.quality, "place_hold", {"piece", tag, std::nullopt, "crack at 5 mm"});
  ScanIn(QString::fromStdString(tag));
  WaitFor([&] { return window->last()->sign() == Sign::Refusal; }, "the refusal");
  EXPECT_TRUE(Said().starts_with(tag + ": gesperrt von ")) << Said();
  EXPECT_NE(Said().find("crack at 5 mm"), std::string::npos) << "what a person wrote is left alone: " << Said();
  EXPECT_NE(Said().find("; " + other + " auf B1-1 nehmen (80 in, "), std::string::npos) << Said();
}

TEST_F(GermanWordsTest, AMassThatIsNotTheTheoryAtTheGate) {
  shop.Receive({.heat = "K1000", .place = "B1-1"});
  shop.Expect({12});
  ReceivingStation& gate = Open<ReceivingStation>("clerk");
  WaitFor([&] { return gate.work().facts().expected.size() == 1; }, "what is expected");
  ScanIn("PO-17/10");
  WaitFor([&] { return gate.form().note()->hasFocus(); }, "the field of the note");
  TypeIn("LS-902");
  ScanIn("PO-17/10");
  TypeIn("1");
  Press(Qt::Key_Return);
  TypeIn("K3317");
  Press(Qt::Key_Return);
  TypeIn("505");
  Picture("de_recv_mass");
  Press(Qt::Key_F1);
  WaitFor([&] { return gate.putting_away(); }, "the bar to be put away");
  // 39.458 kg/m x 6 m = 236.75 kg, of which the book says 236.8 = 522.1 lb; 505 lb = 229.06 kg, of which it says 229.1
  EXPECT_NE(Said().find("gewogen 505.1 lb, rechnerisch 522.1 lb"), std::string::npos) << Said();
  ScanIn("B1-1");
  WaitFor([&] { return Said().find("nicht dorthin, wo Material entnommen wird") != std::string::npos; }, "the refusal");
  EXPECT_NE(Said().find("ist in Quarant\u00E4ne (gewogen 505.1 lb"), std::string::npos) << Said();
  Picture("de_recv_refused");
}

TEST_F(GermanWordsTest, AProofAndWhatLacksInPlanning) {
  shop.ReceiveCertified({.length = 1016, .kind = "drop", .ends = 2});
  shop.AddLine({.quantity = 5});
  PlanStation& planning = Open<PlanStation>("planner");
  WaitFor([&] { return !planning.work().lines().empty(); }, "the cut list");
  Picture("de_plan_lines");
  Press(Qt::Key_F1);
  WaitFor([&] { return planning.work().proposal() && !planning.work().busy(); }, "a plan");
  Picture("de_plan");
  const std::string proof = planning.pane(0)->proof().toStdString();
  EXPECT_NE(
      proof.find(
          "Schnitte lassen sich nicht bedienen; nimmt 1 Reststück, bricht keine volle Stange an; kein Plan bricht weniger an (bewiesen)"),
      std::string::npos)
      << proof;
  const std::string lacks = planning.pane(0)->shortage()->words().toStdString();
  EXPECT_NE(lacks.find("das Material, das dafür verwendet werden darf, ist verbraucht"), std::string::npos) << lacks;
  EXPECT_NE(lacks.find(" in"), std::string::npos) << lacks;
  EXPECT_EQ(lacks.find(" mm"), std::string::npos) << lacks;
}

TEST_F(GermanWordsTest, TheWordsOfAHoldBeforeItIsPlaced) {
  shop.ReceiveCertified({.count = 3});
  PapersStation& papers = Open<PapersStation>("quality");
  ScanIn("M2208");
  WaitFor([&] { return papers.work().answer().has_value(); }, "the trace");
  Picture("de_papers");
  Press(Qt::Key_F5);
  WaitFor([&] { return window->findChild<QLineEdit*>("answer")->isVisible(); }, "the preview");
  QString preview;
  for (const QLabel* label : window->findChildren<QLabel*>())
    if (label->isVisible()) preview += label->text() + '\n';
  EXPECT_TRUE(preview.contains("3 Stangen")) << preview.toStdString();
  Picture("de_papers_preview");
}

}  // namespace
}  // namespace heatkeep
