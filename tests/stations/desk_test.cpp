#include "tests/stations/desk_test.h"

#include <QApplication>
#include <QClipboard>
#include <QDropEvent>
#include <QFileInfo>
#include <QMimeData>
#include <QUrl>
#include <QWindow>

#include "client/stations/desk_look.h"
#include "reports/paint_session.h"
#include "tests/reports/read_back.h"

namespace heatkeep {
namespace {

// For pictures: HEATKEEP_LOOK=dark, HEATKEEP_LENGTHS=inch, HEATKEEP_LANGUAGE=de.
void Dressed(DeskSettings& settings) {
  if (qEnvironmentVariable("HEATKEEP_LOOK") == "dark") settings.look = DeskSettings::Look::Dark;
  if (qEnvironmentVariable("HEATKEEP_LENGTHS") == "inch") settings.units = {ReadingUnits::LengthAs::InchFraction, ReadingUnits::MassAs::Lb};
}

}  // namespace

DeskTest::DeskTest() : language(qEnvironmentVariable("HEATKEEP_LANGUAGE", "en")) {}

DeskTest::~DeskTest() { CloseDesk(); }

void DeskTest::CloseDesk() {
  window.reset();
  link.reset();
  QApplication::removeTranslator(&words_);
}

void DeskTest::OverLossyWire() {
  const Row server =
      shop.admin
          .Execute(
              "select setting || '/.s.PGSQL.' || current_setting('port') as path, current_setting('port')::int as port from pg_settings where name = 'unix_socket_directories'")
          .Only();
  wire = std::make_unique<LossyWire>(server.Text("path"), folder.path().toStdString(), static_cast<int>(server.Int("port")));
}

void DeskTest::Start(const std::string& login, const DeskWindow::MakeStations& stations, const std::function<void(DeskSettings&)>& set) {
  kept = std::make_unique<QSettings>(folder.filePath("desk.ini"), QSettings::IniFormat);
  DeskSettings settings;
  settings.label_folder = folder.filePath("labels");
  settings.paper_folder = folder.filePath("papers");
  settings.look = DeskSettings::Look::Light;
  settings.scan_gap_ms = 300;  // so slow is the scanner of a test on a busy machine
  if (set) set(settings);
  Dressed(settings);
  EXPECT_TRUE(words_.load(":/translations/heatkeep_" + language));
  QApplication::installTranslator(&words_);
  settings.Save(*kept);
  ApplyLook(*qobject_cast<QApplication*>(QApplication::instance()), settings.look);
  const std::string over_wire = wire ? " host='" + folder.path().toStdString() + "' requirepeer=''" : "";  // the wire itself is the peer
  link = std::make_unique<BookLink>([this, conninfo = shop.book.Conninfo(login) + over_wire] {
    if (wire_cut) throw DbError(DbError::Kind::Unreachable, "", "no route to the book");
    return Connection::Open(conninfo);
  });
  window = std::make_unique<DeskWindow>(*link, *kept, stations, first_book);
  window->show();
  window->activateWindow();
  EXPECT_TRUE(QTest::qWaitForWindowActive(window.get()));
  link->Start();
}

DeskWindow& DeskTest::OpenDesk(const std::string& login, const DeskWindow::MakeStations& stations,
                               const std::function<void(DeskSettings&)>& set) {
  Start(login, stations, set);
  WaitFor([&] { return link->ready() && window->current(); }, "the book to answer");
  return *window;
}

DeskWindow& DeskTest::OpenDeskAway(const std::string& login, const DeskWindow::MakeStations& stations,
                                   const std::function<void(DeskSettings&)>& set) {
  Start(login, stations, set);
  WaitFor([&] { return window->banner()->isVisible(); }, "the banner");
  return *window;
}

void DeskTest::ScanIn(const QString& text) {
  ++scans;
  for (const QChar c : text)
    QTest::sendKeyEvent(QTest::Click, window->windowHandle(), Qt::Key(c.toUpper().unicode()), QString(c), Qt::NoModifier);
  QTest::keyClick(window->windowHandle(), Qt::Key_Return);
}

void DeskTest::TypeIn(const QString& text) {
  keys += static_cast<int>(text.size());
  for (const QChar c : text) {
    QTest::sendKeyEvent(QTest::Click, window->windowHandle(), Qt::Key(c.toUpper().unicode()), QString(c), Qt::NoModifier);
    QTest::qWait(window->desk().settings.scan_gap_ms + 25);
    WaitFor([&] { return !window->scans().holds(); }, "the key to be typing");  // on a busy machine it is not yet
  }
}

void DeskTest::Press(Qt::Key key, Qt::KeyboardModifiers modifiers) {
  ++keys;
  QTest::qWait(160);  // a hand is not as fast as the second line end of a scanner
  QTest::keyClick(window->windowHandle(), key, modifiers);
}

void DeskTest::PasteIn(const QString& text) {
  QGuiApplication::clipboard()->setText(text);
  Press(Qt::Key_V, Qt::ControlModifier);
}

std::string DeskTest::Printed() {
  window->last()->Clear();
  Press(Qt::Key_P, Qt::ControlModifier);
  WaitFor([&] { return window->last()->words().startsWith("printed: "); }, "the paper");
  const QString file = window->last()->words().mid(9);
  const QString into = qEnvironmentVariable("HEATKEEP_PICTURES");
  if (!into.isEmpty()) QFile::copy(file, into + '/' + QFileInfo(file).fileName());
  return TextOf(file.toStdString());
}

void DeskTest::DropFile(const QString& path) {
  QMimeData data;
  data.setUrls({QUrl::fromLocalFile(path)});
  QDragEnterEvent enter(window->rect().center(), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
  QCoreApplication::sendEvent(window.get(), &enter);
  ASSERT_TRUE(enter.isAccepted());
  QDropEvent drop(window->rect().center(), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
  QCoreApplication::sendEvent(window.get(), &drop);
}

void DeskTest::WaitFor(const std::function<bool()>& done, const char* what) {
  EXPECT_TRUE(QTest::qWaitFor(done, 10'000)) << "waited in vain for " << what
                                             << "; the last line says: " << (window ? window->last()->words().toStdString() : "");
}

void DeskTest::CutTheWire() {
  wire_cut = true;
  shop.admin.Execute("select pg_terminate_backend(pid) from pg_stat_activity where datname = current_database() and usename = $1",
                     {link->who().toStdString()});
  WaitFor([&] { return !link->ready(); }, "the book to be away");
}

void DeskTest::MendTheWire() {
  wire_cut = false;
  WaitFor([&] { return link->ready(); }, "the book to be back");
}

void DeskTest::Picture(const QString& name) {
  const QString into = qEnvironmentVariable("HEATKEEP_PICTURES");
  if (into.isEmpty()) return;
  QTest::qWait(60);  // words that wrap are laid out a turn later
  EXPECT_TRUE(window->grab().save(into + "/" + name + ".png"));
}

}  // namespace heatkeep
