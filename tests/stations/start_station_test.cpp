// What a new book needs, step by step; and all stations in one window.
#include "client/stations/start_station.h"

#include <QFile>

#include "client/book/book_location.h"
#include "client/command/demo_shop.h"
#include "client/gateway/readings.h"
#include "client/gateway/start_readings.h"
#include "client/stations/all_stations.h"
#include "tests/stations/desk_test.h"

namespace heatkeep {
namespace {

class StartStationTest : public DeskTest {
 protected:
  void OpenStart() {
    OpenDesk("all", [this](Desk& desk) { return std::vector<Station*>{station = new StartStation(desk)}; });
    WaitFor([&] { return station->steps() == 5; }, "the counts");
  }
  QString Sheet(const char* text) {
    const QString path = folder.filePath("bars.csv");
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(text);
    return path;
  }
  std::vector<std::string> Wrong() {
    std::vector<std::string> words;
    RowTable& table = station->opening().table();
    for (int i = 0; i < table.rowCount(); ++i)
      if (const QString said = table.At(i).cells.back().text; said.startsWith("NOT BOOKED"))
        words.push_back(table.At(i).cells[0].text.toStdString() + " " + said.toStdString());
    return words;
  }

  StartStation* station = nullptr;
};

TEST_F(StartStationTest, CountsTheStepsThatAreDoneAndSaysHowToDoTheNext) {
  OpenDesk("owner", [&](Desk& desk) { return std::vector<Station*>{station = new StartStation(desk)}; });
  WaitFor([&] { return station->steps() == 5; }, "the counts");
  EXPECT_EQ(station->done(), 3) << "grades, saws and people are there; no metal, no cut list";
  Picture("start");
  shop.Receive({});
  shop.AddLine({});
  WaitFor(
      [&] {
        station->Refresh();
        return station->done() == 5;
      },
      "all steps");
}

// The eight rows of the trade's own example of a bad list (common practice, no source): four can be booked, four cannot, each says why.
TEST_F(StartStationTest, AnOpeningBalanceIsLookedAtRowByRowBeforeItIsBooked) {
  OpenStart();
  Press(Qt::Key_F2);
  Picture("start_import_guide");
  station->opening().choose_file = [&] {
    return Sheet(
        "old_tag,kind,grade,section,length,mill,heat,place\n"
        "I1,bar,42CrMo4,round 80,6000,Vandrek,K3317,B1-1\n"
        "I2,drop,42CrMo4,round 80,1100,Vandrek,K3317,B1-1\n"
        "I3,drop,42CrMo4,round 80,\"1,100\",Vandrek,K3317,B1-1\n"
        "I1,drop,42CrMo4,round 80,640,Vandrek,K3317,B1-1\n"
        "I5,drop,C99,round 60,2400,,,B1-1\n"
        "I6,drop,C45E,round 60,900,Vandrek,1.23E+05,B1-1\n"
        "I7,drop,C45E,round 60,700,,,B1-1\n");
  };
  Press(Qt::Key_F2);
  WaitFor([&] { return station->work().look().has_value(); }, "the file looked at");
  const auto wrong = Wrong();
  ASSERT_EQ(wrong.size(), 4u);
  for (const auto& [row, words] : {std::pair("4 ", "1,100"), {"5 ", "I1"}, {"6 ", "C99"}, {"7 ", "1.23E+05"}})
    EXPECT_TRUE(std::any_of(
        wrong.begin(), wrong.end(),
        [&, row = row, words = words](const std::string& w) { return w.starts_with(row) && w.find(words) != std::string::npos; }))
        << row << words;
  EXPECT_EQ(station->work().look()->good.size(), 3u);
  // the first of them is chosen, and all its words stand under the table
  EXPECT_TRUE(station->opening().row_words().startsWith("Row 4: NOT BOOKED: ")) << station->opening().row_words().toStdString();
  EXPECT_TRUE(station->opening().row_words().contains("expected ")) << station->opening().row_words().toStdString();
  Picture("start_import_rows");
  EXPECT_EQ(shop.Number("select count(*) as n from book.piece"), 0) << "looking changes nothing";
  Press(Qt::Key_F4);
  WaitFor([&] { return shop.Number("select count(*) as n from book.piece") == 3; }, "the good rows");
  EXPECT_EQ(shop.Number("select sum(length_nm) as n from book.piece"), Mm(6000 + 1100 + 700));
  WaitFor([&] { return window->last()->words().contains("3 piece"); }, "the word of it");
  Press(Qt::Key_F2);
  WaitFor([&] { return station->work().look().has_value() && !station->work().busy(); }, "the file again");
  Press(Qt::Key_F4);
  WaitFor([&] { return window->last()->words().contains("nothing was added"); }, "the word that it is there");
  EXPECT_EQ(shop.Number("select count(*) as n from book.piece"), 3);
  EXPECT_EQ(shop.Broken(), std::vector<std::string>());
}

TEST_F(StartStationTest, NamesTheBookDoesNotKnowAreEnteredByOneKeyAndThenTheRowsAreGood) {
  OpenStart();
  DropFile(
      Sheet("old_tag,kind,grade,section,length,mill,heat,place,owner\n"
            "I1,bar,42CrMo4,round 80,6000,Newmill,K1,R-1,\n"
            "I2,drop,42CrMo4,round 80,640,Newmill,K1,R-2,Oddly\n"));
  WaitFor([&] { return station->work().look().has_value(); }, "the file dropped on the window");
  EXPECT_EQ(station->work().look()->good.size(), 0u);
  EXPECT_EQ(station->work().look()->new_places, (std::vector<std::string>{"R-1", "R-2"}));
  Press(Qt::Key_F3);
  WaitFor([&] { return station->work().look() && station->work().look()->good.size() == 2 && !station->work().busy(); },
          "the rows to be good");
  EXPECT_EQ(Wrong(), std::vector<std::string>());
  Press(Qt::Key_F4);
  WaitFor([&] { return shop.Number("select count(*) as n from book.piece") == 2; }, "the metal");
  EXPECT_EQ(shop.Word("select kind::text as w from book.place where name = 'R-1'"), "rack");
}

// The demo is made in a private book beside, by what the commands do; the window hears how far it is and is told to open it.
TEST_F(StartStationTest, AnEmptyBookOfOnesOwnOffersTheDemoAndMakesIt) {
  const QString home = folder.filePath("own-demo");
  std::optional<bool> opened;
  QFile::setPermissions(folder.path(), QFile::Permissions(0x7755));  // the account of the database goes through it
  first_book = {.own = true,
                .demo = false,
                .make_demo =
                    [home](const FirstBook::Tell& tell) {
                      command::MakeDemo(home.toStdString(), [&](int done, int all, const std::string& words) {
                        tell(done, all, QString::fromStdString(words));
                      });
                    },
                .open = [&](bool demo) { opened = demo; }};
  OpenStart();
  Picture("start_first_run");
  std::vector<int> steps;
  QObject::connect(&station->work(), &StartWork::Progress, window.get(), [&](int done, int all, const QString&) {
    steps.push_back(done);
    EXPECT_EQ(all, 15) << "the book, six people, eight files";
    if (done == 9) Picture("start_making");
  });
  Press(Qt::Key_F1);
  EXPECT_TRUE(station->work().making());
  EXPECT_TRUE(QTest::qWaitFor([&] { return !station->work().making(); }, 300'000));
  ASSERT_EQ(opened, true) << window->last()->words().toStdString();
  EXPECT_EQ(steps.size(), 16u);
  const BookLocation made = FindBook({.book = {}, .person = {}, .home = home.toStdString()});
  {
    Connection book = OpenBook(made);
    EXPECT_GT(ReadStart(book).at(2), 900) << "pieces on hand";
    EXPECT_EQ(ReadCutLists(book).size(), 3u);
    for (const CheckRow& check : VerifyBook(book, false)) EXPECT_TRUE(check.ok) << check.check << ": " << check.detail;
  }
  OwnCluster(made).Stop();
}

TEST_F(StartStationTest, ABookOfTheShopOffersNoDemo) {
  OpenStart();
  Press(Qt::Key_F1);
  EXPECT_FALSE(station->work().making());
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
