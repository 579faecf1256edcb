#include "client/stations/papers_station.h"

#include <QDir>
#include <QHBoxLayout>
#include <QStandardPaths>
#include <QVBoxLayout>

#include "client/models/qt_words.h"
#include "client/models/scanned.h"
#include "reports/record_words.h"
#include "reports/sheet_words.h"
#include "reports/trace_report.h"

namespace heatkeep {
namespace {

constexpr int kHistoryLines = 30;

}  // namespace

PapersStation::PapersStation(Desk& desk, QWidget* parent) : Station(desk, parent), work_(desk.link, desk.settings), waiting_(new WaitingList) {
  LayOut(waiting_, BuildWork(), papers_ = new WordsPane);
  connect(waiting_, &WaitingList::Chosen, this, &PapersStation::ChosenWaiting);
  connect(tree_, &FamilyTreeView::Opened, &work_, &PapersWork::Ask);
  connect(&work_, &PapersWork::WaitingShown, this, &PapersStation::ShowWaiting);
  connect(&work_, &PapersWork::Shown, this, &PapersStation::ShowAnswer);
  connect(&work_, &PapersWork::Previewed, this, &PapersStation::AskHold);
  connect(&work_, &PapersWork::Unknown, this, [this](const QString& text) {
    sign_->Say(Sign::Warning, tr("The book knows no tag, heat, order, place, document or note \"%1\". Heats are kept exactly as read: O and 0 are two.").arg(text));
    emit Happened({Sign::Warning, tr("%1: nothing in the book is called that").arg(text), {}, {}});
  });
  connect(&work_, &PapersWork::Held, this, [this](std::int64_t hold, const QString& words) {
    emit Happened({Sign::Done, words, tr("lift the hold again"), [this, hold] { work_.Lift(hold, tr("placed by mistake")); }});
  });
  connect(&work_, &PapersWork::Done, this, [this](const QString& words) {
    sign_->Say(Sign::Done, words);
    emit Happened({Sign::Done, words, {}, {}});
  });
  connect(&work_, &PapersWork::Refused, this, [this](const QString& words) {
    sign_->Say(Sign::Refusal, words);
    emit Happened({Sign::Refusal, words, {}, {}});
  });
  ShowWaiting();
  ShowAnswer();
}

QWidget* PapersStation::BuildWork() {
  auto* pane = new QWidget;
  auto* down = Down(pane);
  down->addWidget(head_ = new PlainWords(FontOf(Size::StationHead, true)));
  down->addWidget(what_ = new PlainWords(FontOf(Size::Body)));
  down->addWidget(sign_ = new SignLine);
  down->addWidget(asking_ = new AskingLine);
  auto* buttons = new QHBoxLayout;
  buttons->setSpacing(kInside);
  const auto add = [&](const QString& deed, const QString& words, Qt::Key key, auto what) {
    auto* button = new DeedButton(desk().link, deed, words, key);
    connect(button, &QPushButton::clicked, this, what);
    buttons->addWidget(button);
    return button;
  };
  hold_ = add("place_hold", tr("HOLD ..."), Qt::Key_F5, [this] { work_.Preview(); });
  lift_ = add("lift_hold", tr("Lift the hold ..."), Qt::Key_F6, [this] { AskLift(); });
  ship_ = add("ship", tr("Ship ..."), Qt::Key_F9, [this] { AskNote(); });
  package_ = add("keep_package", tr("Certificate package"), Qt::Key_F7, [this] { AskFile(tr("package"), &PapersWork::WritePackageTo); });
  record_ = add("keep_record", tr("Trace record"), Qt::Key_F8, [this] { AskFile(tr("trace"), &PapersWork::WriteTraceTo); });
  buttons->addStretch(1);
  down->addLayout(buttons);
  down->addSpacing(kInside);
  down->addWidget(balance_ = new BalanceBarView);
  down->addWidget(tree_ = new FamilyTreeView, 1);
  return pane;
}

void PapersStation::Refresh() {
  work_.ReadWaiting();
  work_.ReadAgain();
}

void PapersStation::Changed(const QStringList& deeds) {
  if (!deeds.isEmpty() && !work_.busy()) Refresh();
  else ShowAnswer();
}

void PapersStation::Redress() { ShowAnswer(); }

bool PapersStation::Take(const QString& scan) {
  const Scanned read = ReadScanned(scan);
  if (!read.wrong.isEmpty()) {
    sign_->Say(Sign::Refusal, read.wrong);
    return true;
  }
  sign_->Clear();
  asking_->Leave();
  work_.Ask(read.text);
  return true;
}

void PapersStation::ShowWaiting() {
  std::vector<WaitingEntry> entries;
  const PapersWaiting& waiting = work_.waiting();
  const auto section = [&](const QString& title, std::size_t count) {
    if (count > 0) entries.push_back({.key = {}, .title = title, .below = {}, .right = QString::number(count), .section = true});
  };
  section(tr("For a decision"), waiting.conflicts.size());
  for (const ConflictRow& c : waiting.conflicts)
    entries.push_back({.key = tr("conflict") + ' ' + QString::number(c.conflict), .title = c.tag.empty() ? BookWords(c.kind) : Q(c.tag), .below = BookWords(c.words), .right = {}, .sign = Sign::Warning, .mono = !c.tag.empty()});
  section(tr("Held"), waiting.holds.size());
  for (const HoldRow& h : waiting.holds) entries.push_back({.key = "ref " + Q(h.ref), .title = Q(h.ref), .below = BookWords(h.reason), .right = BookWords(h.scope), .sign = Sign::Refusal, .mono = true});
  section(tr("Papers awaited"), waiting.awaited.size());
  for (const AwaitedRow& a : waiting.awaited)
    entries.push_back({.key = "ref " + Q(a.heat), .title = Q(a.heat), .below = QString("%1  %2  %3").arg(Q(a.section), Q(a.grade), Q(a.mill)),
                       .right = a.chase_on.empty() ? QString() : a.days_late > 0 ? tr("%n day(s) late", nullptr, static_cast<int>(a.days_late)) : Q(a.chase_on),
                       .sign = a.days_late > 0 ? Sign::Warning : Sign::Waiting, .mono = true});
  waiting_->Show(entries, tr("Nothing waits for papers or a decision."));
}

void PapersStation::ChosenWaiting(const QString& key) {
  if (key.startsWith("ref ")) {
    Take(key.mid(4));
    return;
  }
  for (const ConflictRow& c : work_.waiting().conflicts) {
    if (key != tr("conflict") + ' ' + QString::number(c.conflict)) continue;
    if (!c.tag.empty()) work_.Ask(Q(c.tag));
    sign_->Say(Sign::Warning, BookWords(c.words));
    if (desk().link.May("close_conflict"))
      asking_->Ask(tr("What was decided, and why? It closes the conflict."), [this, id = c.conflict](const QString& words) {
        work_.CloseConflict(id, words, false);
        return true;
      });
  }
}

void PapersStation::ShowAnswer() {
  const std::optional<PapersAnswer>& answer = work_.answer();
  const bool order = answer && (answer->what.kind == "order" || answer->what.kind == "note");
  hold_->SetWanted(!work_.hold_scope().isEmpty() && !work_.busy());
  lift_->SetWanted(answer && !answer->holds.empty() && !work_.busy());
  package_->SetWanted(order && !work_.busy());
  ship_->SetWanted(answer && answer->what.kind == "order" && !work_.busy());
  record_->SetWanted(answer && answer->record && !work_.busy());
  if (!answer) {
    head_->setText(tr("Which heat, piece or order?"));
    what_->setText(tr("Type or scan anything: where it is from, its papers, where the rest of it is."));
    balance_->Show(std::nullopt, units());
    tree_->Show({}, units());
    papers_->Say({});
    return;
  }
  const QString kind = answer->what.kind == "heat" ? tr("Heat") : answer->what.kind == "piece" ? tr("Piece") : answer->what.kind == "order" ? tr("Order") : BookWords(answer->what.kind);
  head_->setText(QString("%1 %2").arg(kind, Q(answer->what.kind == "heat" ? HeatInGroups(answer->what.name) : answer->what.name)));
  QStringList about;
  if (!answer->what.mill.empty()) about << Q(answer->what.mill);
  if (!answer->what.words.empty()) about << BookWords(answer->what.words);
  if (answer->record) {
    about << BookWords(TraceCounts(answer->record->lines));
    if (answer->record->heats) about << BookWords(answer->record->heats->statement);
  }
  what_->setText(about.join("\n"));
  if (!answer->holds.empty()) sign_->Say(Sign::Refusal, tr("HELD: %1 (%2)").arg(BookWords(answer->holds.front().reason), Q(answer->holds.front().held_by)));
  else if (sign_->sign() == Sign::Refusal && sign_->words().startsWith(tr("HELD: %1 (%2)").left(4))) sign_->Clear();
  const bool balanced = answer->record && answer->record->balances.size() == 1;
  balance_->Show(balanced ? std::optional(answer->record->balances.front()) : std::nullopt, units());
  tree_->Show(answer->record ? answer->record->lines : std::vector<TraceLine>{}, units());
  ShowPapers();
}

void PapersStation::ShowPapers() {
  const PapersAnswer& answer = *work_.answer();
  QStringList words{tr("PAPERS")};
  for (const HeatDocument& d : answer.documents) {
    words << tr("%1 no. %2, %3").arg(Q(d.type), Q(d.number), Q(d.issuer))
          << QString("%1 %2 %3").arg(Q(d.grade), Q(d.section), Q(d.condition)).simplified()
          << (d.replaced ? tr("replaced by a later version") : d.accepted_by.empty() ? tr("filed, not accepted yet") : tr("accepted by %1").arg(Q(d.accepted_by)))
          << (d.file_sha256.empty() ? tr("typed, no file") : tr("file kept, SHA-256 %1...").arg(Q(d.file_sha256.substr(0, 12)))) << QString();
  }
  if (answer.documents.empty()) words << tr("none in the book") << QString();
  for (const HoldRow& h : answer.holds) words << tr("HOLD %1").arg(h.hold) << BookWords(h.reason) << tr("by %1").arg(Q(h.held_by)) << QString();
  if (!work_.others().empty()) words << tr("ALSO CALLED THAT");
  for (const Found& f : work_.others()) words << QString("%1 %2 %3").arg(BookWords(f.kind), Q(f.name), Q(f.mill)).trimmed();
  if (!answer.history.empty()) words << tr("WHAT HAPPENED");
  for (std::size_t i = 0; i < answer.history.size() && i < kHistoryLines; ++i) {
    const HistoryRow& h = answer.history[i];
    words << QString("%1  %2, %3%4").arg(Q(h.at), BookWords(Q(h.deed).replace('_', ' ')), Q(h.who), h.reason.empty() ? QString() : ": " + BookWords(h.reason));
  }
  words << QString() << tr("This compares and reports what the book holds. It replaces neither the standard nor the person responsible.");
  papers_->Say(words.join('\n'));
}

void PapersStation::AskHold(const QString& preview) {
  sign_->Say(Sign::Warning, preview);
  asking_->Ask(tr("Why is it held? Enter holds it at once, for everybody."), [this](const QString& reason) {
    work_.Hold(reason);
    return true;
  });
}

void PapersStation::AskLift() {
  const HoldRow hold = work_.answer()->holds.front();
  asking_->Ask(tr("What shows that %1 %2 may be used? (the hold was: %3)").arg(BookWords(hold.scope), Q(hold.ref), BookWords(hold.reason)), [this, hold](const QString& evidence) {
    work_.Lift(hold.hold, evidence);
    return true;
  });
}

void PapersStation::AskNote() {
  asking_->Ask(tr("Under which delivery note does all of %1 that is on site leave?").arg(Q(work_.answer()->what.name)), [this](const QString& note) {
    work_.Ship(note);
    return true;
  });
}

void PapersStation::AskFile(const QString& what, void (PapersWork::*write)(const QString&)) {
  const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
  asking_->Ask(tr("To which file? It ends in .pdf"), [this, write](const QString& file) {
    if (!file.endsWith(".pdf", Qt::CaseInsensitive)) {
      sign_->Say(Sign::Refusal, tr("expected a name that ends in .pdf"));
      return false;
    }
    (work_.*write)(file);
    return true;
  });
  QString name = Q(work_.answer()->what.name);
  asking_->field()->setText(QString("%1/%2-%3.pdf").arg(folder.isEmpty() ? QDir::homePath() : folder, what, name.replace('/', '-')));
}

}  // namespace heatkeep
