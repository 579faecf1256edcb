#include "client/stations/counting_station.h"

#include <QHBoxLayout>
#include <QVBoxLayout>
#include <algorithm>

#include "client/models/qt_words.h"
#include "client/models/scanned.h"
#include "client/stations/titled_field.h"
#include "schema/terms/bad_text.h"

namespace heatkeep {
namespace {

const QStringList& Touching() {
  static const QStringList deeds{"freeze_place", "unfreeze_place", "count_seen", "approve_count", "define_shop", "set_rules"};
  return deeds;
}

}  // namespace

CountingStation::CountingStation(Desk& desk, QWidget* parent)
    : Station(desk, parent), work_(desk.link, desk.settings), waiting_(new WaitingList), pages_(new QStackedWidget),
      here_(new RowTable({}, this)), differences_(new RowTable({}, this)) {
  pages_->addWidget(BuildFreeze());
  pages_->addWidget(BuildCount());
  pages_->addWidget(BuildApprove());
  LayOut(waiting_, pages_, why_ = new WordsPane);
  connect(waiting_, &WaitingList::Chosen, this, &CountingStation::Choose);
  connect(&work_, &CountingWork::Shown, this, &CountingStation::Show);
  connect(&work_, &CountingWork::Refused, this, &CountingStation::Refuse);
  connect(&work_, &CountingWork::Ticked, this, [this](const QString& words, bool fully) {
    ticked_->Say(fully ? Sign::Done : Sign::Warning, words);
    emit Happened({fully ? Sign::Done : Sign::Warning, words, {}, {}});
  });
  connect(&work_, &CountingWork::Done, this,
          [this](const QString& words, bool fully, const QString& undo_words, const std::function<void()>& undo) {
            ticked_->Clear();
            approve_sign_->Clear();
            words_->setText({});
            emit Happened({fully ? Sign::Done : Sign::Warning, words, undo_words, undo});
          });
  Redress();
}

QWidget* CountingStation::BuildFreeze() {
  auto* pane = new QWidget;
  auto* down = Down(pane);
  down->addWidget(freeze_head_ = new PlainWords(FontOf(Size::StationHead, true)));
  down->addWidget(freeze_what_ = new PlainWords(FontOf(Size::SectionHead)));
  down->addStretch(1);
  auto* row = new QHBoxLayout;
  row->addWidget(freeze_ = new DeedButton(desk().link, "freeze_place", tr("Freeze this place"), Qt::Key_F1, DeedButton::Weight::Primary));
  row->addStretch(1);
  freeze_->setMinimumWidth(240);
  down->addLayout(row);
  connect(freeze_, &QPushButton::clicked, this, [this] { work_.Freeze(place_); });
  return pane;
}

QLineEdit* CountingStation::Field(QBoxLayout* row, const QString& words, const QString& example, int stretch) {
  auto* field = new QLineEdit;
  field->setPlaceholderText(example);
  field->setMinimumHeight(36);
  TitledField(row, words, field, stretch);
  return field;
}

QWidget* CountingStation::BuildCount() {
  auto* pane = new QWidget;
  auto* down = Down(pane);
  down->addWidget(count_head_ = new PlainWords(FontOf(Size::StationHead, true)));
  down->addWidget(counted_ = new PlainWords(FontOf(Size::Key, true)));
  down->addWidget(ticked_ = new SignLine(Size::SawBody));
  down->addSpacing(kInside);
  auto* measure = new QHBoxLayout;
  measured_ = Field(measure, tr("Measured length of the next tag; empty: not measured"), tr("measure it, type it, scan the tag"), 1);
  down->addLayout(measure);
  auto* unmarked = new QHBoxLayout;
  unmarked->setSpacing(kInside);
  section_ = Field(unmarked, tr("A piece without a tag: section"), tr("round 80"), 3);
  length_ = Field(unmarked, tr("its length, measured"), {}, 2);
  marks_ = Field(unmarked, tr("marks seen on it"), tr("none"), 3);
  unmarked->addWidget(unmarked_ = new DeedButton(desk().link, "count_seen", tr("Count it"), Qt::Key_F2), 2, Qt::AlignBottom);
  unmarked_->setMinimumHeight(36);
  down->addLayout(unmarked);
  down->addSpacing(kInside);
  down->addWidget(here_view_ = new RowView(here_, tr("Scan a tag: it ticks in here. What should lie here is not shown; count what does.")),
                  1);
  auto* row = new QHBoxLayout;
  row->addWidget(finish_ = new DeedButton(desk().link, "count_seen", tr("All is scanned"), Qt::Key_F1, DeedButton::Weight::Primary));
  finish_->setMinimumWidth(240);
  row->addStretch(1);
  down->addLayout(row);
  connect(finish_, &QPushButton::clicked, this, [this] { work_.Finish(place_); });
  connect(unmarked_, &QPushButton::clicked, this, &CountingStation::CountUnmarked);
  connect(marks_, &QLineEdit::returnPressed, this, &CountingStation::CountUnmarked);
  return pane;
}

QWidget* CountingStation::BuildApprove() {
  auto* pane = new QWidget;
  auto* down = Down(pane);
  down->addWidget(approve_head_ = new PlainWords(FontOf(Size::StationHead, true)));
  down->addWidget(approve_what_ = new PlainWords(FontOf(Size::SectionHead)));
  down->addWidget(approve_sign_ = new SignLine(Size::SectionHead));
  down->addWidget(differences_view_ = new RowView(differences_, tr("Nothing differs: what was counted is what the book says.")), 1);
  auto* signing = new QWidget;
  auto* below = Down(signing);
  auto* row = new QHBoxLayout;
  words_ = Field(row, tr("What the differences come from, or what was looked for"), tr("looked under the rack; asked saw 2"), 1);
  below->addLayout(row);
  auto* buttons = new QHBoxLayout;
  buttons->setSpacing(kInside);
  buttons->addWidget(approve_ =
                         new DeedButton(desk().link, "approve_count", tr("Approve the count"), Qt::Key_F1, DeedButton::Weight::Primary));
  buttons->addWidget(give_up_ = new DeedButton(desk().link, "unfreeze_place", tr("Give it up, count again"), Qt::Key_F3));
  approve_->setMinimumWidth(240);
  give_up_->setMinimumWidth(240);
  buttons->addStretch(1);
  below->addLayout(buttons);
  down->addWidget(signing_ = signing);
  down->addStretch();
  connect(approve_, &QPushButton::clicked, this, [this] { work_.Approve(place_, words_->text()); });
  connect(words_, &QLineEdit::returnPressed, this, [this] {
    if (approve_->isEnabled()) work_.Approve(place_, words_->text());
  });
  connect(give_up_, &QPushButton::clicked, this, [this] { work_.GiveUp(place_, words_->text()); });
  return pane;
}

void CountingStation::Changed(const QStringList& deeds) {
  if (deeds.isEmpty()) Show();
  else if (!work_.busy() && Touch(deeds, Touching())) work_.Read();
}

void CountingStation::Redress() {
  SetColumns();
  Show();
  work_.Read();
}

void CountingStation::SetColumns() {
  const QString unit = units().LengthUnitWord();
  here_->SetColumns(
      {{tr("Tag"), false, 10}, {tr("What"), false, 23}, {tr("Measured %1").arg(unit), true, 12}, {tr("To be heeded"), false, 24}});
  differences_->SetColumns({{tr("What"), false, 13},
                            {tr("Tag"), false, 18},
                            {tr("Book %1").arg(unit), true, 8},
                            {tr("Counted %1").arg(unit), true, 10},
                            {tr("Off %1").arg(unit), true, 8},
                            {tr("Worth"), true, 8}});
  here_view_->FitColumns();
  differences_view_->FitColumns();
}

void CountingStation::Choose(const QString& place) {
  if (place == place_) return;
  place_ = place;
  ticked_->Clear();
  approve_sign_->Clear();
  words_->setText({});
  Show();
}

void CountingStation::Show() {
  if (place_.isEmpty() || (!work_.count(place_) && !desk().link.May("freeze_place"))) {
    const auto& counts = work_.counts();
    place_ = !counts.empty()                                         ? Q(counts[0].place)
        : desk().link.May("freeze_place") && !work_.places().empty() ? Q(work_.places()[0])
                                                                     : QString();
  }
  ShowWaiting();
  const CountRow* const count = work_.count(place_);
  if (!count) {
    freeze_head_->setText(place_.isEmpty() ? tr("Nothing is to be counted") : tr("Count %1?").arg(place_));
    freeze_what_->setText(
        place_.isEmpty()
            ? tr("A place that the planner freezes shows up here by itself.")
            : tr("Once it is frozen nothing is taken from it or put in it, and plans leave it alone, until its count is approved or given up."));
    freeze_->setVisible(!place_.isEmpty());
    freeze_->SetWanted(!work_.busy());
    pages_->setCurrentIndex(kFreeze);
  } else if (count->state == "open") {
    ShowCount(*count);
  } else {
    ShowApprove(*count);
  }
  ShowWhy(count);
}

void CountingStation::ShowWaiting() {
  std::vector<WaitingEntry> entries;
  for (const auto& [state, title] : {std::pair{"open", tr("Being counted")}, {"counted", tr("To be approved")}}) {
    bool first = true;
    for (const CountRow& row : work_.counts()) {
      if (row.state != state) continue;
      if (std::exchange(first, false)) entries.push_back({.key = {}, .title = title, .below = {}, .right = {}, .section = true});
      entries.push_back(
          {.key = Q(row.place),
           .title = Q(row.place),
           .below = row.state == "open" ? tr("frozen by %1").arg(Q(row.started_by)) : tr("counted by %1").arg(Q(row.counted_by)),
           .right = tr("%n tag(s)", nullptr, static_cast<int>(row.tags)),
           .sign = row.state == "open"                         ? Sign::Waiting
               : row.difference.nm == 0 && row.missing.nm == 0 ? Sign::Done
                                                               : Sign::Warning,
           .mono = true});
    }
  }
  if (desk().link.May("freeze_place")) {
    entries.push_back({.key = {}, .title = tr("Places"), .below = {}, .right = {}, .section = true});
    for (const std::string& place : work_.places())
      if (!work_.count(Q(place))) entries.push_back({.key = Q(place), .title = Q(place), .below = {}, .right = {}, .mono = true});
  }
  waiting_->Show(entries, tr("No place is being counted."));
  const QSignalBlocker quiet(waiting_);
  waiting_->Choose(place_);
}

void CountingStation::ShowCount(const CountRow& count) {
  pages_->setCurrentIndex(kCount);
  count_head_->setText(tr("Scan every tag that lies at %1").arg(place_));
  counted_->setText(tr("%n counted", nullptr, static_cast<int>(count.tags)));
  std::vector<TableRow> rows;
  for (const CountedHere& one : work_.here(place_))
    rows.insert(rows.begin(),
                {QString::number(rows.size()),
                 {{one.tag.isEmpty() ? tr("no tag") : one.tag},
                  {one.what},
                  {one.measured ? units().Number(*one.measured, Rounding::Down) : QString(),
                   one.measured ? std::optional<qint64>(one.measured->nm) : std::nullopt},
                  {one.words}}});
  here_->SetRows(std::move(rows));
}

void CountingStation::ShowApprove(const CountRow& count) {
  pages_->setCurrentIndex(kApprove);
  const bool may_look = desk().link.May("approve_count");
  approve_head_->setText(may_look ? tr("%1 is counted: look at what differs").arg(place_) : tr("%1 is counted").arg(place_));
  signing_->setVisible(may_look);
  differences_view_->setVisible(may_look);
  if (!may_look) {
    approve_what_->setText(
        tr("%n tag(s) were counted by %1. The differences are looked at by the planner or the owner; until then nothing moves here.",
           nullptr, static_cast<int>(count.tags))
            .arg(Q(count.counted_by)));
  } else {
    approve_what_->setText(tr("%n tag(s), %1 counted by %2; not found %3; in all %4, worth %5", nullptr, static_cast<int>(count.tags))
                               .arg(units().Sum(count.counted), Q(count.counted_by), units().Sum(count.missing),
                                    units().Sum(count.difference), MoneyWords(count.worth)));
    std::vector<TableRow> rows;
    for (const CountDifferenceRow& d : work_.differences()) {
      if (Q(d.place) != place_) continue;
      const auto length = [this](Length l) { return TableCell{units().Number(l), l.nm}; };
      rows.push_back({Q(d.tag),
                      {{d.what == "not found"                  ? tr("not found")
                            : d.what == "not here in the book" ? tr("belongs elsewhere")
                            : d.what == "other length"         ? tr("other length")
                                                               : tr("without a tag")},
                       {Q(d.tag)},
                       length(d.book),
                       length(d.counted),
                       length(d.difference),
                       {MoneyWords(d.worth), d.worth.cents}}});
    }
    differences_->SetRows(std::move(rows));
  }
  approve_->SetWanted(!work_.busy());
  give_up_->SetWanted(!work_.busy());
}

void CountingStation::ShowWhy(const CountRow* count) {
  QStringList words{
      tr("A COUNT IS BLIND"),
      tr("Whoever counts is not told what should lie there. Count what you see, also what belongs elsewhere or has no tag."), QString(),
      tr("NOTHING PUTS ITSELF RIGHT"),
      tr("Differences change nothing until another person than the counter signs for them. Worth above %1 is signed by the owner.")
          .arg(MoneyWords(work_.limit()))};
  if (count && count->state == "counted")
    words
        << QString() << tr("WHAT AN APPROVAL DOES")
        << tr("Not found: missing, its metal unexplained until it turns up. Belongs elsewhere: it lies here from now on. Other length: what was measured. Without a tag: unknown metal in quarantine, never taken for the missing one by its looks.");
  why_->Say(words.join('\n'));
}

QString CountingStation::MoneyWords(Money money) const {
  return AmountWords(money) + (work_.currency().isEmpty() ? QString() : ' ' + work_.currency());
}

std::optional<Length> CountingStation::LengthIn(QLineEdit* field) {
  try {
    return units().ReadAboveZero(field->text());
  } catch (const BadText& error) {
    Refuse(BookWords(std::string(error.what())));
    field->setFocus();
    field->selectAll();
    return std::nullopt;
  }
}

void CountingStation::CountUnmarked() {
  if (pages_->currentIndex() != kCount || section_->text().trimmed().isEmpty()) {
    section_->setFocus();
    return;
  }
  const auto length = LengthIn(length_);
  if (!length) return;
  work_.SeeUnmarked(place_, section_->text(), *length, marks_->text());
  for (QLineEdit* field : {section_, length_, marks_}) field->setText({});
}

bool CountingStation::Take(const QString& scan) {
  if (!isVisible()) return false;  // what is looked up from another station is not counted
  const Scanned read = ReadScanned(scan);
  if (!read.wrong.isEmpty()) {
    Refuse(read.wrong);
    return true;
  }
  const std::string place = read.place.value_or(read.text.toStdString());
  if (work_.count(Q(place)) || std::find(work_.places().begin(), work_.places().end(), place) != work_.places().end()) {
    if (!work_.count(Q(place)) && !desk().link.May("freeze_place"))
      Refuse(tr("%1 is not frozen: the planner freezes a place before it is counted").arg(Q(place)));
    else Choose(Q(place));
    return true;
  }
  if (pages_->currentIndex() != kCount) return false;
  if (!read.tag) {
    Refuse(read.no_tag.isEmpty() ? tr("%1 is no tag: the label of a piece is scanned here, or a place").arg(read.text) : read.no_tag);
    return true;
  }
  std::optional<Length> measured;
  if (!measured_->text().trimmed().isEmpty()) {
    measured = LengthIn(measured_);
    if (!measured) return true;
  }
  work_.See(place_, Q(*read.tag), measured);
  measured_->setText({});
  return true;
}

void CountingStation::Confirm() {
  if (pages_->currentIndex() == kFreeze && freeze_->isEnabled()) work_.Freeze(place_);
}

void CountingStation::Refuse(const QString& words) {
  ticked_->Say(Sign::Refusal, words);
  approve_sign_->Say(Sign::Refusal, words);
  emit Happened({Sign::Refusal, words, {}, {}});
}

}  // namespace heatkeep
