#include "client/stations/scan_filter.h"

#include <QCoreApplication>
#include <QGuiApplication>
#include <QWindow>

namespace heatkeep {
namespace {

constexpr qsizetype kShortest = 4;
constexpr int kPrefixedGap = 1000, kSecondLineEnd = 150;

bool EndsScan(const QKeyEvent& key) { return key.key() == Qt::Key_Return || key.key() == Qt::Key_Enter || key.key() == Qt::Key_Tab; }

}  // namespace

ScanFilter::ScanFilter(QObject* parent) : QObject(parent) {
  patience_.setSingleShot(true);
  patience_.setTimerType(Qt::PreciseTimer);
  connect(&patience_, &QTimer::timeout, this, &ScanFilter::PatienceIsOver);
  QCoreApplication::instance()->installEventFilter(this);
}

void ScanFilter::Set(int gap_ms, const QString& prefix) {
  GiveBack();
  gap_ms_ = gap_ms;
  prefix_ = prefix;
}

bool ScanFilter::eventFilter(QObject* watched, QEvent* event) {
  if (giving_ || !watched->isWindowType()) return false;
  switch (event->type()) {
    case QEvent::KeyPress: return Pressed(*static_cast<QKeyEvent*>(event));
    case QEvent::KeyRelease:
      // a held key's release comes with it when it is given back
      return !held_.empty() ||
          (since_scan_.isValid() && since_scan_.elapsed() < kSecondLineEnd && EndsScan(*static_cast<QKeyEvent*>(event)));
    case QEvent::FocusOut: GiveBack(); return false;
    default: return false;
  }
}

QString ScanFilter::CharacterOf(const QKeyEvent& key) const {
  const bool control = key.modifiers().testFlag(Qt::ControlModifier);
  if (key.modifiers() & (Qt::AltModifier | Qt::MetaModifier)) return {};
  if (control) {
    // RS, GS and EOT as a keyboard sends them; only inside a scan, for else they are shortcuts
    if (text_.isEmpty()) return {};
    switch (key.key()) {
      case Qt::Key_BracketRight: return QChar(29);
      case Qt::Key_AsciiCircum:
      case Qt::Key_6: return QChar(30);
      case Qt::Key_D: return QChar(4);
      default: return {};
    }
  }
  const QString text = key.text();
  return text.size() == 1 && text[0].isPrint() ? text : QString();
}

bool ScanFilter::InScan() const { return prefix_.isEmpty() || text_.startsWith(prefix_.left(text_.size())); }

bool ScanFilter::TooLate(const QKeyEvent& key) const {
  const bool prefixed = !prefix_.isEmpty() && text_.startsWith(prefix_);
  return struck_ != 0 && key.timestamp() > struck_ + static_cast<quint64>(prefixed ? kPrefixedGap : gap_ms_);
}

// Keys that were struck in time may still wait in line behind this: one more turn of the loop lets them in.
void ScanFilter::PatienceIsOver() {
  if (last_turn_) {
    GiveBack();
  } else {
    last_turn_ = true;
    patience_.start(0);
  }
}

bool ScanFilter::Pressed(const QKeyEvent& key) {
  if (!held_.empty() && TooLate(key)) GiveBack();
  if (EndsScan(key) && text_.isEmpty() && since_scan_.isValid() && since_scan_.elapsed() < kSecondLineEnd) return true;
  if (EndsScan(key)) {
    const QString text = text_.mid(prefix_.size());
    if (text.size() < kShortest || !text_.startsWith(prefix_)) {
      GiveBack();
      return false;
    }
    Forget();
    since_scan_.start();
    emit Scanned(text);
    return true;
  }
  if (key.key() == Qt::Key_Shift || key.key() == Qt::Key_Control) return false;
  const QString character = CharacterOf(key);
  if (character.isEmpty() || key.isAutoRepeat()) {
    GiveBack();
    return false;
  }
  text_ += character;
  held_.emplace_back(key.clone());
  struck_ = key.timestamp();
  last_turn_ = false;
  if (!InScan()) {
    GiveBack();
    return true;
  }
  patience_.start(!prefix_.isEmpty() && text_.startsWith(prefix_) ? kPrefixedGap : gap_ms_);
  return true;
}

void ScanFilter::GiveBack() {
  patience_.stop();
  struck_ = 0;
  std::vector<std::unique_ptr<QKeyEvent>> keys;
  keys.swap(held_);
  text_.clear();
  QWindow* const window = QGuiApplication::focusWindow();
  if (keys.empty() || !window) return;
  giving_ = true;
  for (const auto& key : keys) {
    QCoreApplication::sendEvent(window, key.get());
    QKeyEvent release(QEvent::KeyRelease, key->key(), key->modifiers(), key->text());
    QCoreApplication::sendEvent(window, &release);
  }
  giving_ = false;
}

void ScanFilter::Forget() {
  patience_.stop();
  struck_ = 0;
  held_.clear();
  text_.clear();
}

}  // namespace heatkeep
