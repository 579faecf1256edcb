// The desk's one window. Top: the scan field, the stations this login may work at, who is logged in. Under it, when the book is away, a
// banner that says so. Bottom: what happened last, in words, and how to undo it. Keys: Ctrl+1.. a station, Esc ends what the
// station has under way, else goes to the scan field, Ctrl+Z undoes what happened last, Ctrl+P prints what is shown, Ctrl+comma the
// settings.
#pragma once

#include <QLineEdit>
#include <QMainWindow>
#include <QPushButton>
#include <QStackedWidget>
#include <functional>
#include <vector>

#include "client/stations/deed_button.h"
#include "client/stations/scan_filter.h"
#include "client/stations/sign_line.h"
#include "client/stations/station.h"

class QButtonGroup;
class QHBoxLayout;
class QLabel;
class QSettings;

namespace heatkeep {

class DeskWindow : public QMainWindow {
  Q_OBJECT

 public:
  using MakeStations = std::function<std::vector<Station*>(Desk&)>;

  // `kept`: where the settings are kept; must outlive the window.
  DeskWindow(BookLink& link, QSettings& kept, const MakeStations& stations, const FirstBook& first = {});

  Station* current() const;
  void Open(Station* station);
  // As if it had been scanned.
  void Take(const QString& scan);

  QLineEdit* scan_field() const { return scan_; }
  SignLine* last() const { return last_; }
  SignLine* banner() const { return banner_; }
  Desk& desk() { return desk_; }
  const ScanFilter& scans() const { return scans_; }

 protected:
  void changeEvent(QEvent* event) override;
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dropEvent(QDropEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;  // Ctrl+Z is a field's own only while there is typing to undo

 private:
  void BuildTop(QHBoxLayout* top);
  void BuildKeys();
  void BookIsBack();
  void OpenWhatIsEmpty();
  void BookIsAway(const QString& words);
  void StartAway();
  void BookChanged();
  void Tell(const Said& said);
  void Undo();
  void OpenSettings();
  void Print();
  bool MayWork(const Station& station) const;

  Desk desk_;
  QSettings& kept_;
  ScanFilter scans_;
  std::vector<Station*> stations_;
  std::vector<QPushButton*> names_;
  QLineEdit* scan_;
  QLabel* who_;
  QStackedWidget* pages_;
  SignLine *banner_, *last_;
  QPushButton* undo_;
  DeedButton *print_, *set_;
  Said said_;
  bool was_ready_ = false;
  QStringList changed_;
  QTimer changed_soon_;
};

}  // namespace heatkeep
