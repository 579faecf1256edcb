#include "client/stations/desk_window.h"

#include <QApplication>
#include <QDropEvent>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QMimeData>
#include <QSettings>
#include <QShortcut>
#include <QUrl>
#include <QVBoxLayout>

#include "client/gateway/start_readings.h"
#include "client/models/qt_words.h"
#include "client/models/start_work.h"
#include "client/stations/settings_page.h"

namespace heatkeep {
namespace {

constexpr int kGatherChanges = 150;  // ms in which changes of the book are taken together

}  // namespace

DeskWindow::DeskWindow(BookLink& link, QSettings& kept, const MakeStations& stations, const FirstBook& first)
    : desk_{link, DeskSettings::Load(kept), first}, kept_(kept), scan_(new QLineEdit), who_(new QLabel), pages_(new QStackedWidget),
      banner_(new SignLine(Size::SectionHead)), last_(new SignLine), undo_(new QPushButton),
      print_(new DeedButton(link, {}, tr("Print"), QKeySequence::Print)),
      set_(new DeedButton(link, {}, tr("Settings"), Qt::CTRL | Qt::Key_Comma)) {
  setWindowTitle("Heatkeep");
  resize(1280, 800);
  stations_ = stations(desk_);
  auto* page = new QWidget;
  auto* down = Down(page, 0);
  auto* top = new QHBoxLayout;
  BuildTop(top);
  down->addLayout(top);
  auto* band = new QHBoxLayout;
  band->setContentsMargins(kAround, 0, kAround, 0);
  band->addWidget(banner_);
  down->addLayout(band);
  for (Station* station : stations_) pages_->addWidget(station);
  down->addWidget(pages_, 1);
  auto* bottom = new QHBoxLayout;
  bottom->setContentsMargins(kAround, kInside, kAround, kInside);
  bottom->addWidget(last_, 1);
  bottom->addSpacerItem(new QSpacerItem(0, 0, QSizePolicy::Expanding));  // the buttons stay where they are while nothing is said
  undo_->setVisible(false);
  undo_->setFocusPolicy(Qt::TabFocus);
  bottom->addWidget(undo_);
  for (DeedButton* quiet : {print_, set_}) {
    quiet->setFlat(true);
    quiet->setMinimumHeight(kAround);
    quiet->setFont(FontOf(Size::Table));
    quiet->setFocusPolicy(Qt::TabFocus);
    bottom->addWidget(quiet);
  }
  connect(print_, &QPushButton::clicked, this, &DeskWindow::Print);
  connect(set_, &QPushButton::clicked, this, &DeskWindow::OpenSettings);
  down->addLayout(bottom);
  setCentralWidget(page);
  setAcceptDrops(true);
  connect(undo_, &QPushButton::clicked, this, &DeskWindow::Undo);
  for (Station* station : stations_) {
    connect(station, &Station::Happened, this, &DeskWindow::Tell);
    connect(station, &Station::LookUp, this, [this](const QString& what) {
      for (Station* other : stations_)
        if (other != sender() && MayWork(*other) && other->Take(what)) {
          Open(other);
          return;
        }
      const QString words = tr("%1: nothing here is called that").arg(what);
      Tell({Sign::Warning, words, {}, {}});
      if (current()) current()->NotFound(words);
    });
  }
  BuildKeys();
  QCoreApplication::instance()->installEventFilter(this);
  ReadBookIn(desk_.settings.units);
  scans_.Set(desk_.settings.scan_gap_ms, desk_.settings.scan_prefix);
  connect(&scans_, &ScanFilter::Scanned, this, &DeskWindow::Take);
  connect(&link, &BookLink::Ready, this, &DeskWindow::BookIsBack);
  connect(&link, &BookLink::Away, this, &DeskWindow::BookIsAway);
  changed_soon_.setSingleShot(true);
  changed_soon_.setInterval(kGatherChanges);
  connect(&changed_soon_, &QTimer::timeout, this, &DeskWindow::BookChanged);
  connect(&link, &BookLink::Changed, this, [this](const QStringList& deeds) {
    changed_ += deeds;
    if (!changed_soon_.isActive()) changed_soon_.start();
  });
}

void DeskWindow::BuildTop(QHBoxLayout* top) {
  top->setContentsMargins(kAround, kBetween, kAround, kInside);
  top->setSpacing(kInside);
  scan_->setPlaceholderText(tr("scan or type: a tag, a heat, an order, a place"));
  scan_->setAccessibleName(tr("scan field"));
  scan_->setClearButtonEnabled(true);
  scan_->setMinimumSize(320, 36);
  scan_->setFont(MonoOf(Size::SectionHead));
  connect(scan_, &QLineEdit::returnPressed, this, [this] {
    const QString typed = scan_->text().trimmed();
    scan_->clear();
    if (!typed.isEmpty()) Take(typed);
    else if (current()) current()->Confirm();
  });
  top->addWidget(scan_, 1);
  for (std::size_t i = 0; i < stations_.size(); ++i) {
    auto* name = new QPushButton(stations_[i]->Name());
    name->setCheckable(true);
    name->setAutoExclusive(true);
    name->setFlat(true);
    name->setMinimumHeight(36);
    name->setFixedWidth(QFontMetrics(name->font()).horizontalAdvance(name->text()) + kAround);
    name->setVisible(false);
    name->setToolTip(tr("Ctrl+%1").arg(i + 1));
    connect(name, &QPushButton::clicked, this, [this, i] { Open(stations_[i]); });
    auto* key = new QShortcut(QKeySequence(Qt::CTRL | static_cast<Qt::Key>(Qt::Key_1 + static_cast<int>(i))), this);
    connect(key, &QShortcut::activated, this, [this, i] {
      if (MayWork(*stations_[i])) Open(stations_[i]);
    });
    names_.push_back(name);
    top->addWidget(name);
  }
  who_->setFont(FontOf(Size::Table));
  top->addWidget(who_);
}

void DeskWindow::BuildKeys() {
  const auto on = [this](const QKeySequence& key, auto what) { connect(new QShortcut(key, this), &QShortcut::activated, this, what); };
  on(Qt::Key_Escape, [this] {
    if (current() && current()->Stop()) return;
    scan_->setFocus();
    scan_->selectAll();
  });
  on(QKeySequence::Undo, [this] { Undo(); });
}

Station* DeskWindow::current() const { return qobject_cast<Station*>(pages_->currentWidget()); }

bool DeskWindow::MayWork(const Station& station) const {
  const QStringList deeds = station.Deeds();
  return deeds.isEmpty() || std::any_of(deeds.begin(), deeds.end(), [this](const QString& deed) { return desk_.link.May(deed); });
}

void DeskWindow::Open(Station* station) {
  pages_->setCurrentWidget(station);
  for (std::size_t i = 0; i < stations_.size(); ++i) names_[i]->setChecked(stations_[i] == station);
  station->Refresh();
  scan_->setFocus();
}

void DeskWindow::Take(const QString& scan) {
  if (!current() || current()->Take(scan)) return;
  emit current()->LookUp(scan);
}

void DeskWindow::BookIsBack() {
  who_->setText(tr("logged in as %1").arg(desk_.link.who()));
  Station* first = nullptr;
  for (std::size_t i = 0; i < stations_.size(); ++i) {
    const bool may = MayWork(*stations_[i]);
    names_[i]->setVisible(may);
    if (may && (!first || (first->NowAndThen() && !stations_[i]->NowAndThen()))) first = stations_[i];
  }
  banner_->Clear();
  if (!was_ready_ || !current() || !MayWork(*current())) {
    was_ready_ = true;
    if (first) Open(first);
    if (desk_.first.own && !desk_.first.demo) OpenWhatIsEmpty();
    return;
  }
  Tell({Sign::Done, tr("the book can be reached again"), {}, {}});
  current()->Refresh();
}

// A private book that nobody works in yet opens where it is made ready.
void DeskWindow::OpenWhatIsEmpty() {
  desk_.link.Ask(
      this, [](Connection& book) { return ReadStart(book); },
      [this](const std::vector<std::int64_t>& counts) {
        if (!NothingInIt(counts)) return;
        for (Station* station : stations_)
          if (station->OpensEmptyBook() && MayWork(*station)) Open(station);
      });
}

void DeskWindow::BookIsAway(const QString& words) {
  banner_->Say(Sign::Warning,
               tr("The book cannot be reached; what is shown may be old. It is tried again all the time. (%1)")
                   .arg(words.section('\n', 0, 0).trimmed()));
  if (!was_ready_) StartAway();
  if (current()) current()->Changed({});
}

// Started without the book: the station that can work without it.
void DeskWindow::StartAway() {
  for (std::size_t i = 0; i < stations_.size(); ++i) {
    if (!stations_[i]->StartAway()) continue;
    was_ready_ = true;
    who_->setText(tr("as %1, who worked here last").arg(desk_.link.who()));
    names_[i]->setVisible(true);
    Open(stations_[i]);
    return;
  }
}

void DeskWindow::BookChanged() {
  QStringList deeds;
  deeds.swap(changed_);
  if (current()) current()->Changed(deeds);
}

void DeskWindow::Tell(const Said& said) {
  said_ = said;
  last_->Say(said.sign, said.words);
  undo_->setVisible(bool(said.undo));
  undo_->setText(tr("Undo: %1   Ctrl+Z").arg(said.undo_words));
}

void DeskWindow::Undo() {
  if (!said_.undo) return;
  const auto undo = said_.undo;
  said_.undo = {};
  undo_->setVisible(false);
  undo();
}

void DeskWindow::Print() {
  if (!current() || !desk_.link.ready()) return;
  const DeskPaper paper = current()->Paper();
  if (paper.kind.isEmpty()) return Tell({Sign::Warning, tr("there is nothing on this screen to print"), {}, {}});
  desk_.link.Ask(
      this, [paper, settings = desk_.settings](Connection& book) { return PrintPaper(book, paper, settings); },
      [this](const PaperOut& out) {
        if (out.failed.empty()) Tell({Sign::Done, tr("printed: %1").arg(Q(out.where)), {}, {}});
        else Tell({Sign::Warning, tr("not printed: %1").arg(Q(out.failed)), {}, {}});
      },
      [this](const DbError& error) {
        Tell({Sign::Refusal, WordsOf(error), {}, {}});
      },
      BookLink::Pace::Long);
}

void DeskWindow::OpenSettings() {
  SettingsPage page(desk_, this);
  if (page.exec() != QDialog::Accepted) return;
  desk_.settings = page.settings();
  desk_.settings.Save(kept_);
  ReadBookIn(desk_.settings.units);
  scans_.Set(desk_.settings.scan_gap_ms, desk_.settings.scan_prefix);
  ApplyLook(*qobject_cast<QApplication*>(QApplication::instance()), desk_.settings.look);
  for (Station* station : stations_) station->Redress();
}

bool DeskWindow::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() != QEvent::ShortcutOverride || !said_.undo || !static_cast<QKeyEvent*>(event)->matches(QKeySequence::Undo))
    return false;
  const auto* field = qobject_cast<QLineEdit*>(watched);
  if (!field || (field->isUndoAvailable() && field != scan_)) return false;
  event->ignore();
  return true;
}

void DeskWindow::dragEnterEvent(QDragEnterEvent* event) {
  if (event->mimeData()->hasUrls() && event->mimeData()->urls().first().isLocalFile()) event->acceptProposedAction();
}

void DeskWindow::dropEvent(QDropEvent* event) {
  const QString file = event->mimeData()->urls().first().toLocalFile();
  event->acceptProposedAction();
  if (!current() || !current()->TakeFile(file))
    Tell({Sign::Warning,
          tr("%1: this screen takes no such file; certificates go to Papers, an opening balance to Start").arg(file),
          {},
          {}});
}

void DeskWindow::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange && current()) current()->update();
  QMainWindow::changeEvent(event);
}

}  // namespace heatkeep
