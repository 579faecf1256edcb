#include "client/stations/papers_station.h"

#include <QDir>
#include <QFileInfo>
#include <QGridLayout>
#include <QStackedWidget>
#include <QStandardPaths>
#include <QVBoxLayout>

#include "client/models/qt_words.h"
#include "client/models/scanned.h"
#include "reports/record_words.h"
#include "reports/sheet_words.h"

namespace heatkeep {
namespace {

constexpr int kHistoryLines = 30;

}  // namespace

PapersStation::PapersStation(Desk& desk, QWidget* parent)
    : Station(desk, parent), work_(desk.link, desk.settings), documents_(desk.link, desk.settings), waiting_(new WaitingList) {
  LayOut(waiting_, BuildWork(), papers_ = new WordsPane);
  connect(waiting_, &WaitingList::Chosen, this, &PapersStation::ChosenWaiting);
  connect(tree_, &FamilyTreeView::Opened, &work_, &PapersWork::Ask);
  connect(&work_, &PapersWork::WaitingShown, this, &PapersStation::ShowWaiting);
  connect(&work_, &PapersWork::Shown, this, &PapersStation::ShowAnswer);
  connect(&work_, &PapersWork::Previewed, this, &PapersStation::AskHold);
  connect(&work_, &PapersWork::Unknown, this, [this](const QString& text) {
    sign_->Say(Sign::Warning,
               tr("The book knows no tag, heat, order, place, document or note \"%1\". Heats are kept exactly as read: O and 0 are two.")
                   .arg(text));
    emit Happened({Sign::Warning, tr("%1: nothing in the book is called that").arg(text), {}, {}});
  });
  connect(&work_, &PapersWork::Held, this, [this](std::int64_t hold, const QString& words) {
    emit Happened({Sign::Done, words, tr("lift the hold again"), [this, hold] { work_.Lift(hold, tr("placed by mistake")); }});
  });
  connect(&work_, &PapersWork::Lifted, this, [this](const HoldRow& hold, const QString& words) {
    sign_->Say(Sign::Done, words);
    Said said{Sign::Done, words, {}, {}};
    if (this->desk().link.May("place_hold")) {
      said.undo_words = tr("hold it again");
      said.undo = [this, hold] { work_.HoldAgain(hold); };
    }
    emit Happened(said);
  });
  connect(&work_, &PapersWork::Done, this, [this](const QString& words) {
    sign_->Say(Sign::Done, words);
    emit Happened({Sign::Done, words, {}, {}});
  });
  connect(&documents_, &DocumentWork::Done, this, &PapersStation::Filed);
  connect(&documents_, &DocumentWork::Contradicts, this, [this](const QString& words) {
    form_->sign()->Say(Sign::Refusal, tr("CONTRADICTS: %1").arg(words));
    sign_->Say(Sign::Refusal, tr("CONTRADICTS: %1").arg(words));
    emit Happened({Sign::Refusal, words, {}, {}});
    work_.ReadWaiting();
  });
  connect(&documents_, &DocumentWork::Refused, this, [this](const QString& words) {
    form_->sign()->Say(Sign::Refusal, words);
    emit Happened({Sign::Refusal, words, {}, {}});
  });
  connect(form_, &DocumentForm::Left, this, &PapersStation::LeaveForm);
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
  auto* buttons = new QGridLayout;
  buttons->setSpacing(kInside);
  const auto add = [&](int row, int column, const QString& deed, const QString& words, Qt::Key key, auto what) {
    auto* button = new DeedButton(desk().link, deed, words, key);
    connect(button, &QPushButton::clicked, this, what);
    buttons->addWidget(button, row, column);
    return button;
  };
  hold_ = add(0, 0, "place_hold", tr("HOLD ..."), Qt::Key_F5, [this] { work_.Preview(); });
  lift_ = add(0, 1, "lift_hold", tr("Lift the hold ..."), Qt::Key_F6, [this] { AskLift(); });
  ship_ = add(0, 2, "ship", tr("Ship ..."), Qt::Key_F9, [this] { AskNote(); });
  file_ = add(1, 0, {}, tr("File a certificate"), Qt::Key_F3, [this] { OpenForm({}); });
  accept_ = add(1, 1, "accept_document", tr("Accept the document"), Qt::Key_F4, [this] {
    if (const HeatDocument* d = NotAccepted()) documents_.Accept(Q(d->issuer), Q(d->number));
  });
  package_ = add(1, 2, "keep_package", tr("Certificate package"), Qt::Key_F7, [this] { AskPackage(); });
  for (int column = 0; column < 3; ++column) buttons->setColumnStretch(column, 1);
  down->addLayout(buttons);
  down->addSpacing(kInside);
  down->addWidget(balance_ = new BalanceBarView);
  down->addWidget(tree_ = new FamilyTreeView, 1);
  stack_ = new QStackedWidget;
  stack_->addWidget(pane);
  auto* filing = new QWidget;
  auto* form = Down(filing, kBetween);
  form->addWidget(new PlainWords(FontOf(Size::StationHead, true), Use::Text, tr("File a certificate")));
  form->addWidget(form_ = new DocumentForm(desk().link, documents_), 1);
  stack_->addWidget(filing);
  return stack_;
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
  if (filing()) LeaveForm();
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
    entries.push_back({.key = tr("conflict") + ' ' + QString::number(c.conflict),
                       .title = c.tag.empty() ? BookWords(c.kind) : Q(c.tag),
                       .below = BookWords(c.words),
                       .right = {},
                       .sign = Sign::Warning,
                       .mono = !c.tag.empty()});
  section(tr("Held"), waiting.holds.size());
  for (const HoldRow& h : waiting.holds)
    entries.push_back({.key = "ref " + Q(h.ref),
                       .title = Q(h.ref),
                       .below = BookWords(h.reason),
                       .right = BookWords(h.scope),
                       .sign = Sign::Refusal,
                       .mono = true});
  section(tr("Papers awaited"), waiting.awaited.size());
  for (const AwaitedRow& a : waiting.awaited)
    entries.push_back({.key = "ref " + Q(a.heat),
                       .title = Q(a.heat),
                       .below = QString("%1  %2  %3").arg(Q(a.section), Q(a.grade), Q(a.mill)),
                       .right = a.chase_on.empty() ? QString()
                           : a.days_late > 0       ? tr("%n day(s) late", nullptr, static_cast<int>(a.days_late))
                                                   : Q(a.chase_on),
                       .sign = a.days_late > 0 ? Sign::Warning : Sign::Waiting,
                       .mono = true});
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
  file_->SetWanted(!work_.busy() && (desk().link.May("file_document") || desk().link.May("file_papers")));
  accept_->SetWanted(NotAccepted() && !documents_.busy());
  hold_->SetWanted(!work_.hold_scope().isEmpty() && !work_.busy());
  lift_->SetWanted(answer && !answer->holds.empty() && !work_.busy());
  package_->SetWanted(order && !work_.busy());
  ship_->SetWanted(answer && answer->what.kind == "order" && !work_.busy());
  if (!answer) {
    head_->setText(tr("Which heat, piece or order?"));
    what_->setText(tr("Type or scan anything: where it is from, its papers, where the rest of it is."));
    balance_->Show(std::nullopt, units());
    tree_->Show({}, units());
    papers_->Say({});
    return;
  }
  const QString kind = answer->what.kind == "heat" ? tr("Heat")
      : answer->what.kind == "piece"               ? tr("Piece")
      : answer->what.kind == "order"               ? tr("Order")
                                                   : BookWords(answer->what.kind);
  head_->setText(QString("%1 %2").arg(kind, Q(answer->what.kind == "heat" ? HeatInGroups(answer->what.name) : answer->what.name)));
  QStringList about;
  if (!answer->what.mill.empty()) about << Q(answer->what.mill);
  if (!answer->what.words.empty()) about << BookWords(answer->what.words);
  if (answer->record) {
    about << BookWords(TraceCounts(answer->record->lines));
    if (answer->record->heats) about << BookWords(answer->record->heats->statement);
  }
  what_->setText(about.join("\n"));
  if (!answer->holds.empty())
    sign_->Say(Sign::Refusal, tr("HELD: %1 (%2)").arg(BookWords(answer->holds.front().reason), Q(answer->holds.front().held_by)));
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
          << (d.replaced                  ? tr("replaced by a later version")
                  : d.accepted_by.empty() ? tr("filed, not accepted yet")
                                          : tr("accepted by %1").arg(Q(d.accepted_by)))
          << (d.file_sha256.empty() ? tr("typed, no file") : tr("file kept, SHA-256 %1...").arg(Q(d.file_sha256.substr(0, 12))))
          << QString();
  }
  if (answer.documents.empty()) words << tr("none in the book") << QString();
  for (const HoldRow& h : answer.holds)
    words << tr("HOLD %1").arg(h.hold) << BookWords(h.reason) << tr("by %1").arg(Q(h.held_by)) << QString();
  if (!work_.others().empty()) words << tr("ALSO CALLED THAT");
  for (const Found& f : work_.others()) words << QString("%1 %2 %3").arg(BookWords(f.kind), Q(f.name), Q(f.mill)).trimmed();
  if (!answer.history.empty()) words << tr("WHAT HAPPENED");
  for (std::size_t i = 0; i < answer.history.size() && i < kHistoryLines; ++i) {
    const HistoryRow& h = answer.history[i];
    words << QString("%1  %2, %3%4")
                 .arg(Q(h.at), BookWords(Q(h.deed).replace('_', ' ')), Q(h.who), h.reason.empty() ? QString() : ": " + BookWords(h.reason));
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
  asking_->Ask(tr("What shows that %1 %2 may be used? (the hold was: %3)").arg(BookWords(hold.scope), Q(hold.ref), BookWords(hold.reason)),
               [this, hold](const QString& evidence) {
                 work_.Lift(hold.hold, evidence);
                 return true;
               });
}

void PapersStation::AskNote() {
  asking_->Ask(tr("Under which delivery note does all of %1 that is on site leave?").arg(Q(work_.answer()->what.name)),
               [this](const QString& note) {
                 work_.Ship(note);
                 return true;
               });
}

bool PapersStation::filing() const { return stack_->currentIndex() == 1; }

bool PapersStation::TakeFile(const QString& file) {
  static const QStringList endings{"pdf", "png", "jpg", "jpeg", "tif", "tiff"};
  if (!endings.contains(QFileInfo(file).suffix().toLower())) return false;
  if (filing()) form_->SetFile(file);
  else OpenForm(file);
  return true;
}

bool PapersStation::Stop() {
  if (asking_->asking()) {
    asking_->Leave();
    return true;
  }
  if (!filing()) return false;
  LeaveForm();
  return true;
}

void PapersStation::OpenForm(const QString& file) {
  if (!desk().link.May("file_document") && !desk().link.May("file_papers")) {
    emit Happened({Sign::Refusal, tr("certificates are filed by the stockroom clerk or by quality"), {}, {}});
    return;
  }
  asking_->Leave();
  if (filing_.heat.isEmpty()) filing_ = OfWhatIsShown();
  if (!file.isEmpty()) filing_.file = file;
  stack_->setCurrentIndex(1);
  form_->Show(filing_);
  if (!file.isEmpty()) form_->SetFile(file);
}

void PapersStation::LeaveForm() {
  filing_ = form_->document();  // what was typed stays, for the same heat
  stack_->setCurrentIndex(0);
}

TypedDocument PapersStation::OfWhatIsShown() const {
  TypedDocument typed;
  if (!work_.answer()) return typed;
  const Found& what = work_.answer()->what;
  if (work_.answer()->record)
    for (const TraceLine& line : work_.answer()->record->lines)
      if (!line.heat.empty()) {
        typed.issuer = Q(line.mill);
        typed.heat = Q(line.heat);
        typed.section = Q(line.section);
        typed.grade = Q(line.grade);
        typed.condition = Q(line.condition);
        break;
      }
  for (const AwaitedRow& row : work_.waiting().awaited)
    if (typed.heat.isEmpty() && row.heat == what.name) {
      typed.issuer = Q(row.mill);
      typed.heat = Q(row.heat);
      typed.section = Q(row.section);
      typed.grade = Q(row.grade);
    }
  return typed;
}

const HeatDocument* PapersStation::NotAccepted() const {
  if (!work_.answer()) return nullptr;
  for (const HeatDocument& d : work_.answer()->documents)
    if (d.accepted_by.empty() && !d.replaced) return &d;
  return nullptr;
}

void PapersStation::Filed(const QString& issuer, const QString& number, const QString& words, bool fully, bool reversible) {
  const QString heat = filing() ? form_->document().heat.trimmed() : work_.answer() ? Q(work_.answer()->what.name) : QString();
  filing_ = {};
  stack_->setCurrentIndex(0);
  sign_->Say(fully ? Sign::Done : Sign::Warning, words);
  Said said{fully ? Sign::Done : Sign::Warning, words, {}, {}};
  if (reversible && desk().link.May("place_hold")) {
    said.undo_words = tr("hold what document %1 is of").arg(number);
    said.undo = [this, issuer, number] { documents_.Hold(issuer, number, tr("accepted by mistake")); };
  }
  emit Happened(said);
  work_.ReadWaiting();
  if (!heat.isEmpty()) work_.Ask(heat);
}

void PapersStation::AskPackage() {
  const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
  QString name = Q(work_.answer()->what.name);
  asking_->Ask(
      tr("To which file? It ends in .pdf"),
      [this](const QString& file) {
        if (!file.endsWith(".pdf", Qt::CaseInsensitive)) {
          sign_->Say(Sign::Refusal, tr("expected a name that ends in .pdf"));
          return false;
        }
        work_.WritePackageTo(file);
        return true;
      },
      QString("%1/%2-%3.pdf").arg(folder.isEmpty() ? QDir::homePath() : folder, tr("package"), name.replace('/', '-')));
}

}  // namespace heatkeep
