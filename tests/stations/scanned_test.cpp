// A label of ours is understood the same at every station, whatever its scanner makes of the separators.
#include "client/models/scanned.h"

#include "client/stations/counting_station.h"
#include "client/stations/papers_station.h"
#include "client/stations/rack_station.h"
#include "client/stations/receiving_station.h"
#include "client/stations/saw_station.h"
#include "schema/terms/scan.h"
#include "schema/terms/tag.h"
#include "tests/stations/desk_test.h"

namespace heatkeep {
namespace {

const std::string kTag = MakeTag('A', 12);

QString LabelOf(const std::string& tag) {
  return QString::fromStdString(WriteEnvelope({{"S", tag}, {"1T", "M2208"}, {"1P", "42CrMo4 round 80"}, {"7Q", "6000MM"}}));
}

TEST(ReadScanned, ALabelIsItsTagAndItsHeatHoweverTheSeparatorsCome) {
  const QString whole = LabelOf(kTag);
  QString written = whole, bare = whole;
  written.replace(QChar(29), "<GS>").replace(QChar(30), "<RS>").replace(QChar(4), "<EOT>");
  for (const char16_t control : {u'\x1d', u'\x1e', u'\x04'}) bare.remove(QChar(control));
  for (const QString& scan : {whole, written, "]d1" + whole}) {
    const Scanned read = ReadScanned(scan);
    EXPECT_TRUE(read.envelope);
    EXPECT_EQ(read.tag, kTag);
    EXPECT_EQ(read.heat, "M2208");
    EXPECT_EQ(read.text, QString::fromStdString(kTag));
    EXPECT_EQ(read.wrong, "");
  }
  EXPECT_EQ(ReadScanned(bare).tag, kTag);
  EXPECT_EQ(ReadScanned(bare).heat, std::nullopt) << "where fields cannot be told apart nothing is guessed";
}

TEST(ReadScanned, ATagAPlaceAnOrderAndAName) {
  EXPECT_EQ(ReadScanned(QString::fromStdString(kTag)).tag, kTag);
  EXPECT_EQ(ReadScanned(QString::fromStdString("S" + kTag)).tag, kTag);
  EXPECT_EQ(ReadScanned(QString::fromStdString(kTag).toLower()).text, QString::fromStdString(kTag));
  EXPECT_EQ(ReadScanned(QString::fromStdString(WriteEnvelope({{"L", "B1-3"}}))).place, "B1-3");
  const Scanned order = ReadScanned(QString::fromStdString(WriteEnvelope({{"K", "O1"}, {"4K", "10"}})));
  EXPECT_EQ(order.order, "O1");
  EXPECT_EQ(order.line, "10");
  EXPECT_EQ(order.text, "O1");
  const Scanned name = ReadScanned(" B1-3 ");
  EXPECT_EQ(name.text, "B1-3");
  EXPECT_FALSE(name.tag || name.place || name.envelope);
  EXPECT_NE(name.no_tag, "");
}

TEST(ReadScanned, AnEnvelopeThatCannotBeReadSaysWhyAndNamesNothing) {
  const Scanned read =
      ReadScanned(QString("[)>") + QChar(30) + "05" + QChar(29) + "S" + QString::fromStdString(kTag) + QChar(30) + QChar(4));
  EXPECT_TRUE(read.envelope);
  EXPECT_NE(read.wrong, "");
  EXPECT_EQ(read.text, "");
  EXPECT_EQ(read.tag, std::nullopt);
}

class LabelAtEveryStation : public DeskTest {
 protected:
  void Scan(const QString& text) {
    for (const QChar c : text) {
      const bool control = c.unicode() < 32;
      const Qt::Key key = !control ? Qt::Key(c.toUpper().unicode())
          : c == QChar(29)         ? Qt::Key_BracketRight
          : c == QChar(30)         ? Qt::Key_6
                                   : Qt::Key_D;
      QTest::sendKeyEvent(QTest::Click, window->windowHandle(), key, control ? QString() : QString(c),
                          control ? Qt::ControlModifier : Qt::NoModifier);
    }
    QTest::keyClick(window->windowHandle(), Qt::Key_Return);
  }
  QString Said() { return window->last()->words(); }
};

TEST_F(LabelAtEveryStation, AtTheSawItIsFetchedAndAPlacesLabelPutsAway) {
  const std::string tag = shop.ReceiveCertified({})[0];
  shop.AddLine({});
  shop.Promise(tag, {{.count = 14, .length = 290}});
  SawStation* saw = nullptr;
  OpenDesk(
      "saw", [&](Desk& desk) { return std::vector<Station*>{saw = new SawStation(desk)}; },
      [](DeskSettings& settings) { settings.saw = "1"; });
  WaitFor([&] { return !saw->work().sheets().empty(); }, "the sheet");
  Scan(LabelOf(tag));
  WaitFor([&] { return saw->work().step() == SawWork::Step::Cut; }, "the piece at the saw");
  Press(Qt::Key_F1);
  WaitFor([&] { return saw->work().step() == SawWork::Step::Place; }, "the drop");
  const std::string drop = saw->work().drop().toStdString();
  Scan(QString::fromStdString(WriteEnvelope({{"L", "B1-3"}})));
  WaitFor(
      [&] {
        return shop.Word("select w.name as w from book.piece p join book.place w using (place_id) where p.tag = $1", {drop}) == "B1-3";
      },
      "the drop at its place");
}

TEST_F(LabelAtEveryStation, AtThePapersRackGateAndCountItIsTheSamePiece) {
  const std::string tag = shop.Receive({.place = "B1-1"})[0];
  const std::string at_gate = shop.Receive({.heat = "K4000", .place = "GATE"})[0];
  PapersStation* papers = nullptr;
  RackStation* rack = nullptr;
  ReceivingStation* gate = nullptr;
  CountingStation* count = nullptr;
  Do(shop.planner, "freeze_place", {Json{{"place", "B1-1"}}.dump()});
  OpenDesk("all", [&](Desk& desk) {
    return std::vector<Station*>{papers = new PapersStation(desk), rack = new RackStation(desk), gate = new ReceivingStation(desk),
                                 count = new CountingStation(desk)};
  });
  window->Open(papers);
  Scan(LabelOf(tag));
  WaitFor([&] { return papers->work().answer() && papers->work().answer()->what.name == tag; }, "the piece at the papers station");
  window->Open(rack);
  WaitFor([&] { return rack->work().whole(); }, "the rack");
  Scan(LabelOf(tag));
  bool filtered = false;
  for (const QLineEdit* field : rack->findChildren<QLineEdit*>()) filtered |= field->text() == QString::fromStdString(tag);
  EXPECT_TRUE(filtered) << "the rack shows it";
  window->Open(gate);
  WaitFor([&] { return gate->work().gate().size() == 1; }, "what stands at the gate");
  Scan(LabelOf(at_gate));
  EXPECT_TRUE(gate->putting_away());
  window->Open(count);
  WaitFor([&] { return count->work().count("B1-1"); }, "the frozen place");
  Scan(QString::fromStdString(WriteEnvelope({{"L", "B1-1"}})));
  Scan(LabelOf(tag));
  WaitFor([&] { return count->work().here("B1-1").size() == 1; }, "the piece counted");
  EXPECT_EQ(count->work().here("B1-1")[0].tag, QString::fromStdString(tag));
}

}  // namespace
}  // namespace heatkeep
