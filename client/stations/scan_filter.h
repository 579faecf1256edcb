// Scanners that act as a keyboard, told from hands by their speed (or by a prefix they are set to), wherever the focus is.
//
// Characters that may belong to a scan are held back for `gap`; when the next one comes in time they are held further, and when Enter
// or Tab follows at least four of them they are one scan and nothing of them reaches any field. When it does not come in time they were
// typed, and are given to the focus as they were, in their order, at most `gap` late. With a prefix set, what begins with it is a scan
// whatever its speed up to a second a character, and nothing else is. Control characters of an ISO/IEC 15434 message come as Ctrl with
// a letter or sign and belong to the scan. Pauses are those between the keys as they were struck, not as a busy program got to them. An
// Enter that follows a scan at once is the scanner's second line end and is dropped.
#pragma once

#include <QElapsedTimer>
#include <QKeyEvent>
#include <QObject>
#include <QString>
#include <QTimer>
#include <memory>
#include <vector>

namespace heatkeep {

class ScanFilter : public QObject {
  Q_OBJECT

 public:
  explicit ScanFilter(QObject* parent = nullptr);  // sees the keys of every window of the application

  void Set(int gap_ms, const QString& prefix);
  bool holds() const { return !held_.empty(); }  // keys of which it is not known yet whether they are a scan

 signals:
  void Scanned(const QString& text);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  bool Pressed(const QKeyEvent& key);
  bool TooLate(const QKeyEvent& key) const;
  void PatienceIsOver();
  QString CharacterOf(const QKeyEvent& key) const;
  bool InScan() const;
  void GiveBack();  // held keys were typed
  void Forget();

  int gap_ms_ = 35;
  QString prefix_;
  QString text_;
  std::vector<std::unique_ptr<QKeyEvent>> held_;
  QTimer patience_;
  QElapsedTimer since_scan_;
  quint64 struck_ = 0;  // when the last held key was, by the system's clock, ms; 0: not known
  bool last_turn_ = false;
  bool giving_ = false;
};

}  // namespace heatkeep
