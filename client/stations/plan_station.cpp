#include "client/stations/plan_station.h"

#include <QComboBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "client/models/qt_words.h"
#include "client/models/scanned.h"
#include "client/stations/plan_words.h"

namespace heatkeep {
namespace {

std::vector<TableColumn> LineColumns(const ReadingUnits& units) {
  return {{PlanStation::tr("Line"), false, 9},   {PlanStation::tr("Section"), false, 9},
          {PlanStation::tr("Grade"), false, 10}, {PlanStation::tr("Length %1").arg(units.LengthUnitWord()), true, 9},
          {PlanStation::tr("Open"), true, 5},    {PlanStation::tr("Due"), false, 10},
          {PlanStation::tr("Papers"), false, 5}};
}

}  // namespace

PlanStation::PlanStation(Desk& desk, QWidget* parent)
    : Station(desk, parent), work_(desk.link), waiting_(new WaitingList), lines_(LineColumns(desk.settings.units)) {
  LayOut(waiting_, BuildWork(), beside_all_ = BuildWhy());
  connect(waiting_, &WaitingList::Chosen, &work_, &PlanWork::Choose);
  connect(&work_, &PlanWork::Shown, this, &PlanStation::Show);
  connect(&work_, &PlanWork::Progress, this, [this](const QString& words) {
    progress_->Say(
        Sign::Waiting,
        words.isEmpty() ? tr("It is being planned. Esc: the best so far") : tr("It is being planned: %1. Esc: the best so far").arg(words));
  });
  connect(&work_, &PlanWork::Done, this, &PlanStation::Promised);
  connect(&work_, &PlanWork::Warned, this, [this](const QString& words) { emit Happened({Sign::Warning, words, {}, {}}); });
  connect(&work_, &PlanWork::Refused, this, [this](const DbError& error) { emit Happened({Sign::Refusal, WordsOf(error), {}, {}}); });
  connect(&work_, &PlanWork::NotFound, this, [this](const QString& name) { emit LookUp(name); });
  for (PlanPane* pane : panes_) {
    connect(pane->bars(), &PlanBars::Chosen, this, &PlanStation::ShowWhy);
    connect(pane->bars(), &PlanBars::Confirmed, this, &PlanStation::Confirm);
    LetDrag(pane->bars(), [bars = pane->bars()](const QPoint& at) { return bars->KeyAt(at); });
  }
  LetDrag(next_, [this](const QPoint& at) { return next_->TagAt(at); });
  connect(next_, &NextBest::Wanted, this, [this](const QString& other) { AskWhyInstead(Q(PieceInHand()->block.tag), other); });
  connect(&work_, &PlanWork::Proposed, this, &PlanStation::FocusBars);
  connect(lines_view_, &RowView::Chosen, this, &PlanStation::ShowWhy);
  connect(saw_, &QComboBox::activated, this, [this] { work_.SetSaw(saw_->currentData().toString()); });
  Show();
}

QWidget* PlanStation::BuildWhy() {
  auto* pane = new QWidget;
  auto* down = Down(pane);
  down->addWidget(next_head_ = new PlainWords(FontOf(Size::Table), Use::Quiet, tr("What else would do. Drag one onto a bar, or F6")));
  down->addWidget(next_ = new NextBest);
  down->addWidget(why_ = new WordsPane, 1);
  return pane;
}

// What is taken hold of there takes the cuts of the bar it is let go on, once the reason is said.
void PlanStation::LetDrag(QAbstractScrollArea* from, std::function<QString(const QPoint& at)> tag_at) {
  auto* drag = new PieceDrag(from, [this, tag_at = std::move(tag_at)](const QPoint& at) {
    return work_.proposal() && not_this_->isEnabled() ? tag_at(at) : QString();
  });
  const auto bars = [this] { return panes_[work_.in_hand()]->bars(); };
  connect(drag, &PieceDrag::Over, this, [bars](const QString& tag, const QPoint& at) { bars()->AimAt(at, tag); });
  connect(drag, &PieceDrag::LetGo, this, [this, bars](const QString& tag, const QPoint& at) {
    const QString onto = bars()->AimAt(at, tag);
    bars()->AimAtNothing();
    if (!onto.isEmpty()) AskWhyInstead(onto, tag);
  });
}

QWidget* PlanStation::BuildWork() {
  auto* pane = new QWidget;
  auto* down = Down(pane);
  auto* top = new QHBoxLayout;
  top->addWidget(head_ = new PlainWords(FontOf(Size::StationHead, true)), 1);
  saw_ = new QComboBox;
  saw_->setAccessibleName(tr("saw to plan for"));
  saw_->addItem(tr("each line where it fits"), QString());
  top->addWidget(saw_, 0, Qt::AlignTop);
  down->addLayout(top);
  down->addWidget(difference_ = new PlainWords(FontOf(Size::Body)));
  down->addWidget(progress_ = new SignLine(Size::Body));
  stack_ = new QStackedWidget;
  stack_->addWidget(lines_view_ =
                        new RowView(&lines_, tr("Nothing is open here. A cut list that comes in shows up at the left by itself.")));
  auto* plans = new QWidget;
  auto* across = new QHBoxLayout(plans);
  across->setContentsMargins(0, 0, 0, 0);
  across->setSpacing(kAround);
  for (PlanPane*& plan : panes_) across->addWidget(plan = new PlanPane, 1);
  stack_->addWidget(plans);
  down->addWidget(stack_, 1);
  down->addWidget(ask_ = new AskingLine);
  auto* buttons = new QGridLayout;
  buttons->setSpacing(kInside);
  BuildButtons(buttons);
  down->addLayout(buttons);
  lines_view_->SetCount([this] {
    qint64 open = 0;
    for (const CutLineRow& line : work_.lines()) open += line.open;
    return tr("%n line(s), ", nullptr, static_cast<int>(work_.lines().size())) +
        tr("%n piece(s) to be cut", nullptr, static_cast<int>(open));
  });
  return pane;
}

void PlanStation::BuildButtons(QLayout* into) {
  auto* grid = static_cast<QGridLayout*>(into);
  using Weight = DeedButton::Weight;
  const auto add = [&](int row, int column, const QString& deed, const QString& words, int key, auto what, Weight weight = Weight::Plain) {
    auto* button = new DeedButton(desk().link, deed, words, key == 0 ? QKeySequence() : QKeySequence(key), weight);
    connect(button, &QPushButton::clicked, this, what);
    grid->addWidget(button, row, column);
    return button;
  };
  plan_ = add(
      0, 0, {}, tr("Plan"), Qt::Key_F1, [this] { work_.Plan(); }, Weight::Primary);
  again_ = add(0, 0, {}, tr("Plan again"), Qt::Key_F1, [this] { work_.Plan(); });
  promise_ = add(
      0, 1, "commit_plan", tr("Promise it"), Qt::Key_F2, [this] { work_.Promise(); }, Weight::Primary);
  beside_ = add(0, 2, {}, tr("Second aim"), Qt::Key_F3, [this] { work_.PlanBeside(); });
  other_ = add(1, 2, {}, tr("The other"), Qt::Key_F4, [this] {
    work_.TakeOther();
    FocusBars();
  });
  not_this_ = add(1, 0, "commit_plan", tr("Not this piece"), Qt::Key_F5, [this] { LeaveOut(); });
  instead_ = add(1, 1, "commit_plan", tr("Another instead"), Qt::Key_F6, [this] { TakeInstead(); });
  longer_ = add(0, 3, {}, tr("Search a minute"), Qt::Key_F9, [this] { work_.PlanLonger(); });
  cancel_ = add(1, 3, "cancel_plan", tr("Cancel plan"), Qt::Key_F8, [this] { Cancel(); });
  discard_ = add(1, 3, {}, tr("Forget it"), Qt::Key_F8, [this] { work_.Discard(); });
  for (int column = 0; column < 4; ++column) grid->setColumnStretch(column, 1);
  stop_ = add(0, 1, {}, tr("Best so far"), 0, [this] { work_.StopSearch(); });
}

void PlanStation::Changed(const QStringList& deeds) {
  if (deeds.isEmpty()) Show();
  else if (!work_.busy()) work_.Read();
}

void PlanStation::Redress() {
  lines_.SetColumns(LineColumns(units()));
  lines_view_->FitColumns();
  Show();
  work_.Read();
}

bool PlanStation::Take(const QString& scan) {
  const Scanned read = ReadScanned(scan);
  const QString name = read.order ? Q(*read.order) : read.text;
  for (const CutListRow& list : work_.lists())
    if (Q(list.name) == name) {
      work_.Choose("list:" + name);
      return true;
    }
  if (!desk().link.ready()) return false;
  work_.Find(name);  // an order; what is none is looked up
  return true;
}

void PlanStation::Confirm() {
  if (work_.proposal()) work_.Promise();
  else work_.Plan();
}

bool PlanStation::Stop() {
  if (work_.searching()) {
    work_.StopSearch();
    return true;
  }
  if (!ask_->asking()) return false;
  ask_->Leave();
  return true;
}

void PlanStation::Show() {
  ShowWaiting();
  ShowHead();
  const bool plan = work_.chosen_plan().has_value(), proposed = work_.proposal() != nullptr;
  if (proposed) ShowProposals();
  else if (plan) ShowSheet();
  else ShowLines();
  stack_->setCurrentIndex(proposed || plan ? 1 : 0);
  beside_all_->setVisible(work_.proposals().size() < 2);
  if (!work_.searching()) progress_->Clear();
  else if (progress_->words().isEmpty()) progress_->Say(Sign::Waiting, tr("It is being planned. Esc: the best so far"));
  ShowWhy();
  ShowButtons();
}

void PlanStation::ShowWaiting() {
  std::vector<WaitingEntry> entries;
  const auto due = [](const std::string& day) { return day.empty() ? QString() : tr("due %1").arg(Q(day)); };
  const auto head = [&](const QString& words) {
    entries.push_back({.key = {}, .title = words, .below = {}, .right = {}, .section = true});
  };
  if (!work_.lists().empty()) head(tr("To be planned"));
  qint64 all = 0;
  for (const CutListRow& list : work_.lists()) {
    all += list.open;
    entries.push_back({.key = "list:" + Q(list.name),
                       .title = Q(list.name),
                       .below = tr("%1 of %2 pieces open, %n line(s)", nullptr, list.lines).arg(list.open).arg(list.pieces),
                       .right = due(list.due)});
  }
  if (work_.lists().size() > 1)
    entries.push_back({.key = "all",
                       .title = tr("All that is open"),
                       .below = tr("%1 pieces of %n cut list(s), as one", nullptr, static_cast<int>(work_.lists().size())).arg(all),
                       .right = {}});
  if (!work_.plans().empty()) head(tr("Promised"));
  for (const PlanRow& plan : work_.plans())
    entries.push_back({.key = "plan:" + QString::number(plan.plan),
                       .title = tr("Plan %1, saw %2").arg(plan.plan).arg(Q(plan.saw)),
                       .below = BookWords(plan.proof),
                       .right = due(plan.due)});
  waiting_->Show(entries, tr("No cut list has anything open. `heatkeep cutlist add` takes one in."));
  const QSignalBlocker quiet(waiting_);
  waiting_->Choose(work_.chosen());
}

void PlanStation::ShowHead() {
  if (saw_->count() != static_cast<int>(work_.saws().size()) + 1) {
    while (saw_->count() > 1) saw_->removeItem(1);
    for (const std::string& saw : work_.saws()) saw_->addItem(tr("saw %1 only").arg(Q(saw)), Q(saw));
    saw_->setCurrentIndex(std::max(0, saw_->findData(work_.saw())));
  }
  const QStringList lists = work_.chosen_lists();
  saw_->setVisible(!lists.isEmpty());
  if (const auto plan = work_.chosen_plan()) head_->setText(tr("Plan %1").arg(*plan));
  else if (lists.isEmpty()) head_->setText(tr("Nothing waits to be planned"));
  else head_->setText(work_.chosen() == "all" ? tr("All that is open") : tr("Cut list %1").arg(lists.front()));
}

void PlanStation::ShowLines() {
  difference_->setVisible(false);
  std::vector<TableRow> rows;
  for (const CutLineRow& l : work_.lines()) {
    TableRow row{.key = Q(l.order + "/" + l.line), .cells = {}, .bar = {}};
    row.cells = {{Q(l.order + "/" + l.line)},
                 {Q(l.section)},
                 {Q(l.grade)},
                 {units().Number(l.length), l.length.nm},
                 {QString::number(l.open), l.open},
                 {Q(l.due)},
                 {l.papers == "none" ? QString() : Q(l.papers)}};
    rows.push_back(std::move(row));
  }
  lines_.SetRows(std::move(rows));
  if (lines_view_->chosen().isEmpty() && lines_.rowCount() > 0) lines_view_->Choose(lines_.At(0).key);
}

void PlanStation::ShowProposals() {
  const std::vector<PlanProposal>& all = work_.proposals();
  OrderLetters letters;
  Length longest;
  for (const PlanProposal& p : all) longest = std::max(longest, LongestOf(p));
  for (std::size_t i = 0; i < 2; ++i) {
    panes_[i]->setVisible(i < all.size());
    if (i >= all.size()) continue;
    panes_[i]->bars()->Show(GroupsOf(all[i], units(), letters), units(), longest);
    panes_[i]->Show(all.size() > 1 ? AimWords(all[i].aim) : QString(), i == work_.in_hand(), ProofWords(all[i]),
                    FiguresWords(all[i].figures, units()), ShortWords(all[i]));
  }
  const QString difference = work_.difference();
  difference_->setVisible(!difference.isEmpty());
  if (!difference.isEmpty())
    difference_->setText(tr("%1 against %2: %3").arg(AimWords(work_.proposal()->aim), AimWords(all[1 - work_.in_hand()].aim), difference));
}

void PlanStation::ShowSheet() {
  difference_->setVisible(false);
  panes_[1]->setVisible(false);
  panes_[0]->setVisible(work_.sheet().has_value());
  if (!work_.sheet()) { return; }
  const Sheet& sheet = *work_.sheet();
  OrderLetters letters;
  panes_[0]->bars()->Show(GroupsOf(sheet, units(), letters), units(), LongestOf(sheet));
  panes_[0]->Show({}, true, tr("saw %1: %2").arg(Q(sheet.saw), Q(sheet.proof)),
                  sheet.due.empty() ? tr("made by %1").arg(Q(sheet.made_by)) : tr("made by %1, due %2").arg(Q(sheet.made_by), Q(sheet.due)),
                  ShortWords(sheet));
}

const planning::DraftPiece* PlanStation::PieceInHand() const {
  const PlanProposal* const now = work_.proposal();
  if (!now) return nullptr;
  const std::string tag = panes_[work_.in_hand()]->bars()->chosen().toStdString();
  for (const auto& pieces : now->pieces)
    for (const planning::DraftPiece& piece : pieces)
      if (piece.block.tag == tag) return &piece;
  return nullptr;
}

void PlanStation::ShowWhy() {
  QString words;
  if (const planning::DraftPiece* piece = PieceInHand()) {
    words = Q(piece->block.tag) + "\n\n" + WhyWords(*piece, units(), work_.lift_limit()) + "\n\n" + AboutWords(*work_.proposal());
  } else if (work_.proposal()) {
    words = AboutWords(*work_.proposal());
  } else if (work_.sheet()) {
    const auto it = std::ranges::find(work_.sheet()->blocks, panes_[0]->bars()->chosen().toStdString(), &SheetBlock::tag);
    if (it != work_.sheet()->blocks.end()) words = Q(it->tag) + "\n\n" + WhyWords(*it, units(), work_.lift_limit());
  } else {
    for (const CutLineRow& l : work_.lines()) {
      if (Q(l.order + "/" + l.line) != lines_view_->chosen()) continue;
      QStringList all{
          Q(l.order + "/" + l.line),        QString(),
          tr("for %1").arg(Q(l.customer)),  tr("%1 cut, %2 promised, %3 open of %4").arg(l.cut).arg(l.planned).arg(l.open).arg(l.quantity),
          tr("papers %1").arg(Q(l.papers)), tr("priority %1 (1 is highest)").arg(l.priority)};
      if (!l.condition.empty()) all << tr("condition %1").arg(Q(l.condition));
      if (l.one_heat) all << tr("all of one heat");
      if (l.max_heats > 0) all << tr("at most %n heat(s)", nullptr, l.max_heats);
      if (!l.owner.empty()) all << tr("from metal that %1 owns").arg(Q(l.owner));
      words = all.join('\n');
    }
  }
  why_->Say(words);
  const planning::DraftPiece* const piece = PieceInHand();
  for (QWidget* widget : std::initializer_list<QWidget*>{next_head_, next_}) widget->setVisible(piece != nullptr);
  if (piece) next_->ShowOf(*piece, units());
  if (!work_.busy()) instead_->SetWanted(PieceInHand() && !PieceInHand()->next.empty());
}

void PlanStation::ShowButtons() {
  const bool lists = !work_.chosen_lists().isEmpty(), proposed = work_.proposal() != nullptr, plan = work_.chosen_plan().has_value(),
             idle = !work_.busy();
  plan_->setVisible(!proposed && !plan);
  again_->setVisible(proposed);
  promise_->setVisible(proposed && !work_.searching());
  stop_->setVisible(work_.searching());
  for (DeedButton* button : {beside_, longer_}) button->setVisible(!plan);
  other_->setVisible(work_.proposals().size() > 1);
  for (DeedButton* button : {not_this_, instead_, discard_}) button->setVisible(proposed);
  cancel_->setVisible(plan);
  for (DeedButton* button : {plan_, again_, beside_, longer_}) button->SetWanted(idle && lists && !work_.lines().empty());
  discard_->SetWanted(idle);
  promise_->SetWanted(idle && proposed && !work_.proposal()->nothing_to_cut());
  not_this_->SetWanted(idle && PieceInHand());
  instead_->SetWanted(idle && PieceInHand() && !PieceInHand()->next.empty());
  cancel_->SetWanted(idle && work_.sheet().has_value());
}

void PlanStation::FocusBars() {
  if (isVisible() && !ask_->asking()) panes_[work_.in_hand()]->bars()->setFocus();
}

void PlanStation::AskReason(const QString& words, std::function<void(const QString& reason)> then, const QString& typed) {
  ask_->Ask(
      words,
      [then = std::move(then)](const QString& reason) {
        then(reason);
        return true;
      },
      typed);
}

void PlanStation::LeaveOut() {
  const QString tag = Q(PieceInHand()->block.tag);
  AskReason(tr("Why is %1 not to be taken?").arg(tag), [this, tag](const QString& reason) { work_.LeaveOut(tag, reason); });
}

void PlanStation::TakeInstead() {
  const planning::DraftPiece& piece = *PieceInHand();
  const QString tag = Q(piece.block.tag);
  std::vector<QString> tags;
  for (const planning::NextBest& next : piece.next) tags.push_back(Q(next.tag));
  QStringList choices;
  const std::vector<NextWords> next = NextBestWords(piece, units());
  for (std::size_t i = 0; i < next.size(); ++i)
    choices << QString("%1  %2  %3: %4").arg(i + 1).arg(tags[i], next[i].where, next[i].becomes);
  ask_->Ask(tr("Which one instead of %1? Its number: %2").arg(tag, choices.join("  |  ")), [this, tag, tags](const QString& answer) {
    const int number = answer.toInt();
    if (number < 1 || number > static_cast<int>(tags.size())) {
      emit Happened({Sign::Refusal, tr("%1: expected a number from 1 to %2").arg(answer).arg(tags.size()), {}, {}});
      return false;
    }
    AskWhyInstead(tag, tags[static_cast<std::size_t>(number - 1)]);
    return true;
  });
}

void PlanStation::AskWhyInstead(const QString& tag, const QString& other) {
  if (!not_this_->isEnabled()) return;  // nothing to overrule, or not by this login
  AskReason(tr("Why %1 instead of %2?").arg(other, tag),
            [this, tag, other](const QString& reason) { work_.TakeInstead(tag, other, reason); });
}

void PlanStation::Cancel() {
  const std::int64_t plan = *work_.chosen_plan();
  AskReason(tr("Why is plan %1 cancelled? What is at the saw stays.").arg(plan),
            [this, plan](const QString& reason) { work_.Cancel({plan}, reason); });
}

void PlanStation::Promised(const QString& words, const QList<qint64>& plans) {
  if (plans.isEmpty()) {
    emit Happened({Sign::Done, words, {}, {}});
    return;
  }
  emit Happened({Sign::Done, words, plans.size() == 1 ? tr("cancel plan %1").arg(plans.front()) : tr("cancel these plans"),
                 [this, plans] { work_.Cancel(plans, tr("taken back after it was promised")); }});
}

}  // namespace heatkeep
