// How long a person waits at the desk on a large book, and how long the window's event loop was ever held up. Prints a table.
// usage: bench_desk HOME PERSON      the folder of a book of one's own (seed/ten-years made it), and a planner of it
#include <QApplication>
#include <QElapsedTimer>
#include <QLineEdit>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <cstdio>

#include "client/book/book_location.h"
#include "client/stations/all_stations.h"
#include "client/stations/desk_look.h"
#include "client/stations/desk_window.h"
#include "client/stations/papers_station.h"
#include "client/stations/rack_station.h"
#include "reports/paint_session.h"

namespace {

using namespace heatkeep;

// The longest pause between two turns of the event loop since it was last asked.
class Watchdog {
 public:
  Watchdog() {
    timer_.setTimerType(Qt::PreciseTimer);
    QObject::connect(&timer_, &QTimer::timeout, [this] { longest_ = std::max(longest_, since_.restart()); });
    since_.start();
    timer_.start(1);
  }
  qint64 Longest() {
    QTest::qWait(5);
    return std::exchange(longest_, 0);
  }

 private:
  QTimer timer_;
  QElapsedTimer since_;
  qint64 longest_ = 0;
};

Watchdog* dog = nullptr;

template <typename Deed, typename Done>
void Measured(const char* what, const char* wanted, Deed deed, Done done) {
  dog->Longest();
  QElapsedTimer clock;
  clock.start();
  deed();
  const bool in_time = QTest::qWaitFor(done, 120'000);
  const qint64 took = clock.elapsed();
  std::printf("| %s | %lld ms%s | %s | %lld ms |\n", what, static_cast<long long>(took), in_time ? "" : " and not done", wanted, static_cast<long long>(dog->Longest()));
  std::fflush(stdout);
}

template <typename Kind>
Kind* Find(DeskWindow& window) { return window.findChild<Kind*>(); }

}  // namespace

int main(int argc, char** argv) {
  if (argc != 3) return std::fprintf(stderr, "usage: bench_desk HOME PERSON\n"), 2;
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  QApplication application(argc, argv);
  PaintSession();
  ApplyLook(application, DeskSettings::Look::Light);
  QTemporaryDir folder;
  QSettings kept(folder.filePath("desk.ini"), QSettings::IniFormat);
  const BookLocation location = FindBook({.book = {}, .person = argv[2], .home = argv[1]});
  OpenBook(location);
  Watchdog watchdog;
  dog = &watchdog;
  BookLink link([location] { return OpenBook(location); });
  std::unique_ptr<DeskWindow> window;
  std::printf("| what | took | wanted | longest the loop was held up |\n|---|---|---|---|\n");
  Measured("the window's first paint", "500 ms", [&] {
    window = std::make_unique<DeskWindow>(link, kept, AllStations);
    window->show();
  }, [&] { return QTest::qWaitForWindowExposed(window.get()); });
  Measured("logged in, the first station open", "", [&] { link.Start(); }, [&] { return link.ready(); });
  RackStation& rack = *Find<RackStation>(*window);
  Measured("the rack's station, first paint", "500 ms", [&] { window->Open(&rack); }, [&] { return rack.isVisible(); });
  const auto shown = [&] { return rack.rows()->table()->model()->rowCount() == static_cast<int>(rack.work().Drops().size()); };
  Measured("what lies in the rack read, its table whole", "", [] {}, [&] { return rack.work().read() && shown(); });
  Measured("what stops each piece and what each drop is worth by use, besides", "", [] {}, [&] { return rack.work().whole() && shown(); });
  const auto& table = *static_cast<RowTable*>(rack.rows()->table()->model());
  std::printf("| | %d rows of %zu pieces | | |\n", table.rowCount(), rack.work().pieces().size());
  Measured("filtered by a word", "150 ms", [&] { rack.rows()->filter()->setText("42CrMo4"); }, [&] { QTest::qWait(0); return true; });
  Measured("the filter taken off", "150 ms", [&] { rack.rows()->filter()->clear(); }, [&] { QTest::qWait(0); return true; });
  Measured("sorted by length", "150 ms", [&] { rack.rows()->table()->sortByColumn(3, Qt::DescendingOrder); }, [&] { QTest::qWait(0); return true; });
  Measured("sorted by grade, a text", "150 ms", [&] { rack.rows()->table()->sortByColumn(1, Qt::AscendingOrder); }, [&] { QTest::qWait(0); return true; });
  PapersStation& papers = *Find<PapersStation>(*window);
  Measured("the papers station, first paint", "500 ms", [&] { window->Open(&papers); }, [&] { return papers.isVisible(); });
  const std::string heat = rack.work().pieces().empty() ? "" : rack.work().pieces().front().heat;
  Measured("a heat traced, its family tree shown", "", [&] { window->Take(QString::fromStdString(heat)); }, [&] { return papers.work().answer() && papers.tree()->pieces() > 0 && !papers.work().busy(); });
  window.reset();
  return 0;
}
