// The counting station: a place frozen by the planner, counted blind by the clerk with the scanner, approved by another person. Common
// practice of the trade, no source.
#include "client/stations/counting_station.h"

#include <QAbstractItemModelTester>
#include <QLabel>
#include <QTableView>

#include "schema/terms/tag.h"
#include "tests/stations/desk_test.h"

namespace heatkeep {
namespace {

class CountingStationTest : public DeskTest {
 protected:
  void TearDown() override { EXPECT_EQ(shop.Broken(), std::vector<std::string>()); }

  CountingStation& OpenAs(const std::string& login, const std::function<void(DeskSettings&)>& set = {}) {
    testers.clear();
    window.reset();
    link.reset();
    OpenDesk(
        login, [this](Desk& desk) { return std::vector<Station*>{station = new CountingStation(desk)}; }, set);
    testers.clear();
    for (RowTable* table : station->findChildren<RowTable*>())
      testers.push_back(std::make_unique<QAbstractItemModelTester>(table, QAbstractItemModelTester::FailureReportingMode::Fatal));
    EXPECT_EQ(testers.size(), 2u) << "what is counted here, and what differs";
    WaitFor([&] { return !station->work().places().empty(); }, "the places");
    return *station;
  }
  std::vector<std::string> Drops(std::int64_t length, int count, const std::string& heat, const std::string& place = "B1-1") {
    return shop.ReceiveCertified({.heat = heat, .length = length, .count = count, .place = place, .kind = "drop", .ends = 1});
  }
  void Freeze() { Do(shop.planner, "freeze_place", {Json{{"place", "B1-1"}}.dump()}); }
  void Scan(const std::string& text) { ScanIn(QString::fromStdString(text)); }
  void ScanAndTick(const std::string& tag) {
    Scan(tag);
    WaitFor([&] { return Said().startsWith(QString::fromStdString(tag) + " counted"); }, "the tick");
    QTest::qWait(160);  // the next scan is no second line end
  }
  QString Said() { return window->last()->words(); }
  std::string StateOf(const std::string& tag) { return shop.Word("select state::text as w from book.piece where tag = $1", {tag}); }
  std::string PlaceOf(const std::string& tag) {
    return shop.Word("select w.name as w from book.piece join book.place w using (place_id) where tag = $1", {tag});
  }
  // All that is written in the window: labels and cells.
  QStringList Shown() {
    QStringList all;
    for (const QLabel* label : window->findChildren<QLabel*>())
      if (label->isVisible()) all << label->text();
    for (const QTableView* table : window->findChildren<QTableView*>())
      if (table->isVisible())
        for (int row = 0; row < table->model()->rowCount(); ++row)
          for (int column = 0; column < table->model()->columnCount(); ++column)
            all << table->model()->index(row, column).data().toString();
    for (const QListWidget* list : window->findChildren<QListWidget*>())
      for (int i = 0; i < list->count(); ++i) all << list->item(i)->text();
    return all;
  }
  bool IsShown(const std::string& words) { return Shown().join('\n').contains(QString::fromStdString(words)); }

  CountingStation* station = nullptr;
  std::vector<std::unique_ptr<QAbstractItemModelTester>> testers;  // all tables of the station, through all of a test
};

TEST_F(CountingStationTest, OneIsMissingAndOneTooManyAndAnotherPersonSignsForIt) {
  const auto tags = Drops(640, 3, "M2208");
  const std::string stray = Drops(500, 1, "K3317", "B1-2").at(0);
  // the planner freezes
  OpenAs("planner");
  ScanIn("B1-1");
  WaitFor([&] { return station->place() == "B1-1"; }, "the place");
  Picture("count_freeze");
  Press(Qt::Key_F1);
  WaitFor([&] { return shop.Number("select count(*) as n from api.counts where state = 'open'") == 1; }, "the place to be frozen");
  WaitFor([&] { return Said().contains("frozen"); }, "the words of it");
  // the clerk counts, and is not told what should lie there
  OpenAs("clerk");
  WaitFor([&] { return station->work().count("B1-1") != nullptr; }, "the open count");
  for (const std::string& tag : tags) EXPECT_FALSE(IsShown(tag)) << tag;
  EXPECT_TRUE(station->work().differences().empty());
  ScanAndTick(tags[0]);
  ScanAndTick(tags[1]);
  ScanAndTick(stray);
  EXPECT_TRUE(Said().contains("the book has it at B1-2; leave it here, it is noted")) << Said().toStdString();
  EXPECT_TRUE(IsShown(tags[0]));
  EXPECT_FALSE(IsShown(tags[2]));
  Picture("count_scanned");
  // twice is said, and counted once; a tag of nobody is said, too
  Scan(tags[0]);
  WaitFor([&] { return Said().contains("was counted already"); }, "the second time");
  QTest::qWait(160);
  Scan(MakeTag('A', 999'999));
  WaitFor([&] { return Said().contains("no piece has the tag"); }, "the unknown tag");
  Picture("count_unknown");
  Press(Qt::Key_F1);
  WaitFor([&] { return shop.Number("select count(*) as n from api.counts where state = 'counted' and tags = 3") == 1; },
          "the end of counting");
  WaitFor([&] { return IsShown("looked at by the planner or the owner"); }, "the words to the clerk");
  EXPECT_FALSE(IsShown(tags[2]));
  Picture("count_finished");
  EXPECT_EQ(StateOf(tags[2]), "on rack");
  // the planner looks at it, and must say what was looked for
  OpenAs("planner");
  WaitFor([&] { return IsShown(tags[2]); }, "the differences");
  EXPECT_TRUE(IsShown("not found"));
  EXPECT_TRUE(IsShown("belongs elsewhere"));
  Picture("count_approve");
  Press(Qt::Key_F1);
  WaitFor([&] { return window->last()->sign() == Sign::Refusal; }, "the question for words");
  EXPECT_EQ(StateOf(tags[2]), "on rack");
  for (QLineEdit* field : station->findChildren<QLineEdit*>())
    if (field->isVisible() && field->accessibleName().startsWith("What the differences")) field->setFocus();
  TypeIn("looked under it");
  Press(Qt::Key_Return);
  WaitFor([&] { return StateOf(tags[2]) == "missing"; }, "the approval");
  EXPECT_EQ(PlaceOf(stray), "B1-1");
  WaitFor([&] { return Said().contains(QString::fromStdString(tags[2]) + " is missing"); }, "the words of it");
  Picture("count_approved");
  EXPECT_EQ(shop.Number("select count(*) as n from book.piece where frozen"), 0);
}

TEST_F(CountingStationTest, TagsScannedFasterThanTheBookAnswersAreAllCounted) {
  const auto tags = Drops(640, 6, "M2208");
  Freeze();
  OpenAs("clerk");
  WaitFor([&] { return station->work().count("B1-1") != nullptr; }, "the open count");
  shop.admin.ExecuteScript("begin; lock table book.stock_count in access exclusive mode");
  for (const std::string& tag : tags) {
    Scan(tag);
    QTest::qWait(160);
  }
  Press(Qt::Key_F1);
  EXPECT_TRUE(station->work().here("B1-1").empty());  // the book has answered nothing yet
  shop.admin.ExecuteScript("commit");
  WaitFor([&] { return shop.Number("select coalesce(sum(tags), 0)::bigint as n from api.counts where state = 'counted'") == 6; },
          "six tags");
}

TEST_F(CountingStationTest, ATagWhoseAnswerGotLostIsToldAgainAndCountedOnce) {
  const auto tags = Drops(640, 2, "M2208");
  Freeze();
  OpenAs("clerk");
  WaitFor([&] { return station->work().count("B1-1") != nullptr; }, "the open count");
  shop.admin.ExecuteScript("begin; lock table book.count_line in access exclusive mode");
  Scan(tags[0]);
  QTest::qWait(160);
  shop.admin.ExecuteScript(
      "select pg_terminate_backend(pid) from pg_stat_activity where pid <> pg_backend_pid() and application_name <> '' and query like '%count_seen%'");
  WaitFor([&] { return Said().contains("it is asked again when the book is back") || !link->ready(); }, "the loss to be noticed");
  shop.admin.ExecuteScript("commit");
  WaitFor([&] { return station->work().here("B1-1").size() == 1; }, "the tag to be counted after all");
  ScanAndTick(tags[1]);
  EXPECT_EQ(shop.Number("select count(*) as n from book.count_line"), 2);
}

TEST_F(CountingStationTest, ALengthMeasuredAndAPieceWithoutATagAreDifferencesInWords) {
  const auto tags = Drops(640, 1, "M2208");
  Freeze();
  OpenAs("clerk");
  WaitFor([&] { return station->work().count("B1-1") != nullptr; }, "the open count");
  const auto into = [&](const QString& name) {
    for (QLineEdit* field : station->findChildren<QLineEdit*>())
      if (field->isVisible() && field->accessibleName().contains(name)) field->setFocus();
  };
  into("Measured length");
  TypeIn("638");
  ScanAndTick(tags[0]);
  into("without a tag");
  TypeIn("round 80");
  into("its length");
  TypeIn("410");
  Press(Qt::Key_F2);
  WaitFor([&] { return Said().contains("without a tag is counted"); }, "the piece without a tag");
  Picture("count_measured");
  Press(Qt::Key_F1);
  WaitFor([&] { return shop.Number("select count(*) as n from api.counts where state = 'counted'") == 1; }, "the end of counting");
  OpenAs("owner", [](DeskSettings& settings) {
    settings.look = DeskSettings::Look::Dark;
    settings.units.length = ReadingUnits::LengthAs::InchFraction;
  });
  WaitFor([&] { return IsShown("other length") && IsShown("without a tag"); }, "both differences");
  Picture("count_dark_inch");
  for (QLineEdit* field : station->findChildren<QLineEdit*>())
    if (field->isVisible() && field->accessibleName().startsWith("What the differences")) field->setFocus();
  TypeIn("tape");
  Press(Qt::Key_F1);
  WaitFor([&] { return shop.LengthOf(tags[0]) == Mm(638); }, "the length put right");
  EXPECT_EQ(
      shop.Number(
          "select count(*) as n from api.stock_on_hand where length_nm = 410000000 and heat is null and blocked like '%found without a tag%'"),
      1);
}

TEST_F(CountingStationTest, AboveTheLimitThePlannerIsToldThatTheOwnerSigns) {
  Do(shop.owner, "set_rules",
     {R"({"prices": [{"grade": "42CrMo4", "cents_per_tonne": 160000, "scrap_cents_per_tonne": 25000}], "settings": {"count_limit_cents": "4000"}})"});
  const auto tags = Drops(640, 1, "M2208");  // 0.640 m x 39.458 kg/m at 1.60: 40.40
  Freeze();
  Do(shop.clerk, "count_seen", {Json{{"place", "B1-1"}, {"seen", Json::array()}, {"done", true}}.dump()});
  OpenAs("planner");
  WaitFor([&] { return IsShown("-40.40"); }, "the worth");
  for (QLineEdit* field : station->findChildren<QLineEdit*>())
    if (field->isVisible() && field->accessibleName().startsWith("What the differences")) field->setFocus();
  TypeIn("not there");
  Press(Qt::Key_F1);
  WaitFor([&] { return Said().contains("the owner approves them"); }, "the refusal");
  Picture("count_limit");
  EXPECT_EQ(StateOf(tags[0]), "on rack");
  // given up: nothing is changed
  Press(Qt::Key_F3);
  WaitFor([&] { return shop.Number("select count(*) as n from api.counts where state = 'given up'") == 1; }, "the count to be given up");
  EXPECT_EQ(StateOf(tags[0]), "on rack");
}

}  // namespace
}  // namespace heatkeep
