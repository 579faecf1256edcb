// A desk's window on a real book, worked by real keys: typed by hand, or as fast as a scanner.
#pragma once

#include <gtest/gtest.h>

#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <QTranslator>
#include <atomic>
#include <functional>
#include <memory>

#include "client/models/book_link.h"
#include "client/stations/desk_window.h"
#include "tests/schema/small_shop.h"
#include "tests/stations/lossy_wire.h"

namespace heatkeep {

class DeskTest : public testing::Test {
 protected:
  DeskTest();
  ~DeskTest() override;

  // Opens the window as this login ("saw", "clerk", ...) and waits until the book has answered. `set` changes the desk's settings first.
  DeskWindow& OpenDesk(const std::string& login, const DeskWindow::MakeStations& stations,
                       const std::function<void(DeskSettings&)>& set = {});

  // The same while the book cannot be reached: waits until the window says so.
  DeskWindow& OpenDeskAway(const std::string& login, const DeskWindow::MakeStations& stations,
                           const std::function<void(DeskSettings&)>& set = {});
  // The program ends; its settings and what it kept stay. To be opened again.
  void CloseDesk();
  // Desks opened from now on reach the book over `wire`.
  void OverLossyWire();

  // As a keyboard-wedge scanner types: fast, then Enter. Counted in `keys` as one.
  void ScanIn(const QString& text);
  // As hands type: slowly, a character at a time.
  void TypeIn(const QString& text);
  void Press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier);

  // As text from a clipboard goes into the field with the focus.
  void PasteIn(const QString& text);
  // Ctrl+P; the text of the PDF that came out (poppler).
  std::string Printed();
  // A file dragged onto the window and let go.
  void DropFile(const QString& path);

  // Runs the event loop until `done`, at most 10 s; fails the test where it never is.
  void WaitFor(const std::function<bool()>& done, const char* what);

  // The book cannot be reached any more: its sessions end, new ones are refused. And back.
  void CutTheWire();
  void MendTheWire();

  // Saves the window as NAME.png where HEATKEEP_PICTURES names a folder: to be looked at.
  void Picture(const QString& name);

  SmallShop shop;
  QTemporaryDir folder;
  std::unique_ptr<QSettings> kept;
  std::unique_ptr<BookLink> link;
  std::unique_ptr<DeskWindow> window;
  FirstBook first_book;  // what the window is opened with
  std::atomic<bool> wire_cut = false;
  std::unique_ptr<LossyWire> wire;
  int keys = 0;  // pressed by hand since it was set to 0
  int scans = 0;
  QString language;  // of the window that is opened next

 private:
  QTranslator words_;
  void Start(const std::string& login, const DeskWindow::MakeStations& stations, const std::function<void(DeskSettings&)>& set);
};

}  // namespace heatkeep
