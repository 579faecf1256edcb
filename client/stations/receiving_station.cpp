#include "client/stations/receiving_station.h"

#include <QFileDialog>
#include <QHBoxLayout>
#include <QVBoxLayout>

#include "client/models/device_words.h"
#include "client/models/label_output.h"
#include "client/models/qt_words.h"
#include "client/models/scanned.h"
#include "client/stations/gate_words.h"

namespace heatkeep {
namespace {

constexpr int kMostRemarks = 5, kPhotoHeight = 104;
const QString kNotOrdered = "not ordered";

const QStringList& Touching() {
  static const QStringList deeds{"receive_delivery", "reverse_receipt",  "expect_delivery", "promise_expected",  "decide_over",
                                 "put_away",         "move_bundle",      "quarantine",      "release",           "accept_document",
                                 "file_document",    "receive_transfer", "customer_return", "back_from_outside", "define_shop",
                                 "define_grade",     "set_rules"};
  return deeds;
}

QString KeyOf(const ExpectedRow& row) { return "order/" + Q(row.order) + '/' + Q(row.line); }
QString KeyOf(const GateGroup& group) { return "gate/" + Q(group.tags[0]); }
QString KeyOfLine(std::size_t line) { return "line/" + QString::number(line); }

Sign SignOf(Remark::Kind kind) {
  return kind == Remark::Kind::Stops ? Sign::Refusal : kind == Remark::Kind::Warning ? Sign::Warning : Sign::Done;
}

}  // namespace

ReceivingStation::ReceivingStation(Desk& desk, QWidget* parent)
    : Station(desk, parent), work_(desk.link, desk.settings), waiting_(new WaitingList), pages_(new QStackedWidget) {
  choose_photo = [this] { return QFileDialog::getOpenFileName(this, tr("Photo of the mark"), {}, tr("Photos (*.jpg *.jpeg *.png)")); };
  pages_->addWidget(BuildRead());
  pages_->addWidget(put_ = new PutAwayPage(desk, work_));
  connect(put_, &PutAwayPage::LabelsWanted, this, &ReceivingStation::PrintLabelsOf);
  LayOut(waiting_, pages_, BuildWhy());
  connect(waiting_, &WaitingList::Chosen, this, &ReceivingStation::Choose);
  for (const auto turned : {&QListWidget::itemActivated, &QListWidget::itemClicked})
    connect(waiting_, turned, this, [this] { Turn(waiting_->chosen()); });
  connect(&work_, &ReceivingWork::Shown, this, &ReceivingStation::Show);
  connect(&work_, &ReceivingWork::Refused, this, &ReceivingStation::Refuse);
  connect(&work_, &ReceivingWork::Done, this,
          [this](const QString& words, bool fully, const QString& undo_words, const std::function<void()>& undo) {
            put_->Say(fully ? Sign::Done : Sign::Warning, words);
            emit Happened({fully ? Sign::Done : Sign::Warning, words, undo_words, undo});
          });
  connect(&work_, &ReceivingWork::LabelsWanted, this, &ReceivingStation::PrintLabelsOf);
  connect(&work_, &ReceivingWork::NoteBooked, this, [this](const QStringList& tags) {
    drafts_.clear();
    form_->note()->clear();
    form_->supplier()->clear();
    just_booked_ = tags.value(0);
    chosen_.clear();
    form_->Show({});
  });
  connect(&work_, &ReceivingWork::OwedPapers, this, [this](const std::vector<OwedPapersRow>& rows) {
    owed_ = rows;
    ShowLine();
  });
  Redress();
}

QWidget* ReceivingStation::BuildRead() {
  auto* pane = new QWidget;
  auto* down = Down(pane);
  down->addWidget(head_ = new PlainWords(FontOf(Size::StationHead, true)));
  down->addWidget(form_ = new DeliveryForm);
  down->addSpacing(kInside);
  for (int i = 0; i < kMostRemarks; ++i) {
    remarks_.push_back(new SignLine(Size::SectionHead));
    down->addWidget(remarks_.back());
  }
  down->addStretch(1);
  auto* buttons = new QHBoxLayout;
  buttons->setSpacing(kInside);
  using Weight = DeedButton::Weight;
  buttons->addWidget(receive_ = new DeedButton(desk().link, "receive_delivery", tr("Receive the note"), Qt::Key_F1, Weight::Primary), 2);
  buttons->addWidget(next_ = new DeedButton(desk().link, {}, tr("Next line"), Qt::Key_F2), 1);
  buttons->addWidget(out_ = new DeedButton(desk().link, {}, tr("Change this line"), Qt::Key_F3), 1);
  buttons->addWidget(more_ = new DeedButton(desk().link, {}, tr("More"), Qt::Key_F6), 1);
  connect(more_, &QPushButton::clicked, this, [this] { form_->Unfold(!form_->unfolded()); });
  connect(receive_, &QPushButton::clicked, this, &ReceivingStation::ReceiveNote);
  connect(next_, &QPushButton::clicked, this, [this] { ReadIt(); });
  connect(out_, &QPushButton::clicked, this, &ReceivingStation::TakeLineOut);
  for (DeedButton* button : {receive_, next_, out_, more_}) button->setMinimumHeight(kGlove);
  down->addLayout(buttons);
  connect(form_, &DeliveryForm::Edited, this, &ReceivingStation::ShowLine);
  connect(form_, &DeliveryForm::LineRead, this, [this] { ReadIt(); });
  connect(form_->supplier(), &QLineEdit::editingFinished, this, [this] { SetNote(); });
  return pane;
}

QWidget* ReceivingStation::BuildWhy() {
  auto* pane = new QWidget;
  auto* down = Down(pane, kBetween);
  photo_ = new DeedButton(desk().link, "add_photo", tr("PHOTO"), Qt::Key_F5, DeedButton::Weight::Glove);
  photo_->setMinimumHeight(kPhotoHeight);
  connect(photo_, &QPushButton::clicked, this, &ReceivingStation::Photo);
  down->addWidget(photo_);
  down->addWidget(why_ = new WordsPane, 1);
  return pane;
}

void ReceivingStation::Changed(const QStringList& deeds) {
  if (deeds.isEmpty()) Show();
  else if (!work_.busy() && Touch(deeds, Touching())) work_.Read();
}

void ReceivingStation::Redress() {
  form_->SetUnits(units());
  Show();
  work_.Read();
}

void ReceivingStation::Show() {
  form_->SetNames(work_.facts());
  if (!just_booked_.isEmpty())
    for (const GateGroup& group : work_.gate())
      for (const std::string& tag : group.tags)
        if (Q(tag) == just_booked_) {
          just_booked_.clear();
          chosen_ = KeyOf(group);
          put_->Forget();
        }
  if (chosen_.startsWith("gate/") && !InHand()) {  // put away: the next of them
    chosen_ = work_.gate().empty() ? QString() : KeyOf(work_.gate()[0]);
    put_->Forget();
  }
  if (chosen_.startsWith("order/") && !form_->line().Begun() && !work_.facts().Expected(form_->line().order, form_->line().order_line))
    chosen_.clear();  // all of it came
  if (chosen_.isEmpty() && !work_.facts().expected.empty()) {
    chosen_ = KeyOf(work_.facts().expected[0]);
    Choose(chosen_);
  }
  ShowWaiting();
  pages_->setCurrentIndex(chosen_.startsWith("gate/") ? 1 : 0);
  if (putting_away())
    if (const GateGroup* group = InHand()) put_->Show(*group);
  ShowLine();
}

const GateGroup* ReceivingStation::InHand() const {
  for (const GateGroup& group : work_.gate())
    if (KeyOf(group) == chosen_) return &group;
  return nullptr;
}

void ReceivingStation::ShowWaiting() {
  std::vector<WaitingEntry> entries;
  if (!work_.lines().empty()) {
    entries.push_back({.key = {},
                       .title = tr("This note"),
                       .below = {},
                       .right = tr("%n line(s) read", nullptr, static_cast<int>(work_.lines().size())),
                       .section = true});
    for (std::size_t i = 0; i < work_.lines().size(); ++i) {
      const ReadLine& line = work_.lines()[i];
      entries.push_back({.key = KeyOfLine(i),
                         .title = line.typed.heat.isEmpty() ? tr("no heat") : line.typed.heat.trimmed(),
                         .below = tr("%1 x %2 %3").arg(line.judged.count).arg(line.typed.section.trimmed(), line.typed.grade.trimmed()),
                         .right = line.judged.theory ? units().Words(*line.judged.theory) : QString(),
                         .sign = line.judged.Stops() ? Sign::Refusal
                             : line.judged.Agrees()  ? Sign::Done
                                                     : Sign::Warning,
                         .mono = true});
    }
  }
  if (!work_.gate().empty()) {
    entries.push_back({.key = {}, .title = tr("To put away"), .below = {}, .right = {}, .section = true});
    for (const GateGroup& group : work_.gate())
      entries.push_back({.key = KeyOf(group),
                         .title = group.first.heat.empty() ? tr("no heat") : Q(group.first.heat),
                         .below = tr("%1 x %2 %3").arg(group.tags.size()).arg(Q(group.first.section), Q(group.first.grade)),
                         .right = units().Words(group.mass),
                         .sign = group.first.blocked.find("quarantine") != std::string::npos ? Sign::Refusal : Sign::Waiting,
                         .mono = true});
  }
  entries.push_back({.key = {}, .title = tr("Expected"), .below = {}, .right = tr("due"), .section = true});
  for (const ExpectedRow& row : work_.facts().expected)
    entries.push_back(
        {.key = KeyOf(row),
         .title = tr("%1 / %2  %3").arg(Q(row.order), Q(row.line), Q(row.supplier)),
         .below = tr("%1 x %2 %3, %4").arg(row.ordered - row.delivered).arg(Q(row.section), Q(row.grade), units().Words(row.length)),
         .right = Q(row.due),
         .sign = Sign::None});
  entries.push_back(
      {.key = kNotOrdered, .title = tr("Something not ordered"), .below = tr("read it as it is"), .right = {}, .sign = Sign::None});
  waiting_->Show(entries, {});
  const QSignalBlocker quiet(waiting_);
  waiting_->Choose(chosen_);
}

void ReceivingStation::KeepDraft() {
  if (chosen_.startsWith("order/") || chosen_ == kNotOrdered) drafts_[chosen_] = form_->line();
}

void ReceivingStation::Choose(const QString& key) {
  if (key != chosen_) KeepDraft();
  chosen_ = key;
  just_booked_.clear();
  put_->Forget();
  if (key.startsWith("gate/")) {
    put_->Unsay();
    Show();
    return;
  }
  pages_->setCurrentIndex(0);
  if (key.startsWith("line/")) {
    form_->Show(work_.lines()[key.mid(5).toUInt()].typed);
    return;
  }
  TypedLine line;
  if (const auto draft = drafts_.find(key); draft != drafts_.end()) {
    line = draft->second;
  } else {
    for (const ExpectedRow& row : work_.facts().expected)
      if (KeyOf(row) == key) line = work_.Pick(row);
  }
  for (const ExpectedRow& row : work_.facts().expected)
    if (KeyOf(row) == key && work_.lines().empty() &&
        (form_->supplier()->text().isEmpty() || form_->supplier()->text() != Q(row.supplier))) {
      form_->supplier()->setText(Q(row.supplier));
      SetNote();
    }
  form_->Show(line);
}

void ReceivingStation::Turn(const QString& key) {
  if (key != chosen_) Choose(key);
  ShowWaiting();
  if (key.startsWith("gate/")) put_->FocusPlace();
  else if (form_->note()->text().trimmed().isEmpty()) form_->note()->setFocus();
  else form_->Focus(LineField::Count);
}

void ReceivingStation::SetNote() {
  work_.note.number = form_->note()->text().trimmed();
  work_.note.supplier = form_->supplier()->text().trimmed();
  if (owed_of_ == work_.note.supplier) return;
  owed_of_ = work_.note.supplier;
  owed_.clear();
  if (!owed_of_.isEmpty()) work_.AskOwedPapers(owed_of_);
}

void ReceivingStation::ShowLine() {
  const TypedLine line = form_->line();
  const bool read = chosen_.startsWith("line/");
  const JudgedLine judged =
      read && chosen_.mid(5).toUInt() < work_.lines().size() ? work_.lines()[chosen_.mid(5).toUInt()].judged : work_.Judge(line);
  head_->setText(read ? tr("Read for this note")
                     : chosen_ == kNotOrdered || line.order.isEmpty()
                     ? tr("What is it? Read it from the metal")
                     : tr("Order %1, line %2: count it, read its heat").arg(line.order, line.order_line));
  for (std::size_t i = 0; i < remarks_.size(); ++i) {
    if (i < judged.remarks.size()) remarks_[i]->Say(SignOf(judged.remarks[i].kind), judged.remarks[i].words);
    else remarks_[i]->Clear();
  }
  receive_->SetWanted(!work_.busy() && (!work_.lines().empty() || line.Begun()));
  next_->SetWanted(!read && line.Begun());
  out_->SetWanted(read && !work_.busy());
  photo_->SetWanted(putting_away() || !read);
  const GateWords words{work_.facts(), units(), desk().link.May("reverse_receipt")};
  why_->Say(putting_away() ? words.Reversing() : words.OfLine(line, judged, owed_of_, owed_));
}

bool ReceivingStation::ReadIt() {
  const TypedLine line = form_->line();
  const JudgedLine judged = work_.Judge(line);
  if (!judged.body) {
    Refuse(judged.wrong);
    form_->Focus(judged.field);
    return false;
  }
  if (const ExpectedRow* row = work_.facts().Expected(line.order, line.order_line)) {
    if (const QString other = work_.NotOfThisNote(*row); !other.isEmpty()) {
      Refuse(other);
      return false;
    }
    work_.note.order = Q(row->order);
  }
  SetNote();
  drafts_.erase(chosen_);
  const QString line_of = chosen_;
  form_->Show({});
  work_.AddLine(line);
  emit Happened(
      {judged.Agrees() ? Sign::Done : Sign::Warning, tr("line %1 is read; F1 receives the whole note").arg(work_.lines().size()), {}, {}});
  chosen_ = line_of;
  drafts_.erase(chosen_);
  Choose(chosen_ == kNotOrdered ? kNotOrdered : line_of);
  ShowWaiting();
  form_->Focus(LineField::Count);
  return true;
}

void ReceivingStation::ReceiveNote() {
  if (work_.busy()) return;
  SetNote();
  if (!chosen_.startsWith("line/") && form_->line().Begun()) {
    if (form_->note()->text().trimmed().isEmpty()) {
      Refuse(tr("which delivery note is it? Type its number"));
      form_->note()->setFocus();
      return;
    }
    if (!ReadIt()) return;
  }
  work_.Receive();
}

void ReceivingStation::Confirm() {
  if (putting_away()) put_->Confirm();
  else if (receive_->isEnabled()) ReceiveNote();
}

void ReceivingStation::TakeLineOut() {
  const std::size_t at = chosen_.mid(5).toUInt();
  if (!chosen_.startsWith("line/") || at >= work_.lines().size()) return;
  const TypedLine line = work_.lines()[at].typed;
  chosen_ = line.order.isEmpty() ? kNotOrdered : "order/" + line.order + '/' + line.order_line;
  drafts_[chosen_] = line;
  work_.TakeOut(at);
  Choose(chosen_);
  Turn(chosen_);
}

void ReceivingStation::Photo() {
  const QString file = choose_photo();
  if (file.isEmpty()) return;
  if (putting_away()) {
    if (InHand()) work_.AddPhoto(put_->tag(), file);
    return;
  }
  TypedLine line = form_->line();
  line.photos.append(file);
  form_->Show(line);
  emit Happened({Sign::Done, tr("the photo is kept with this line, and with its first bar when the note is received"), {}, {}});
}

const ExpectedRow* ReceivingStation::LineOf(const QString& scan) const {
  const ExpectedRow* first = nullptr;
  for (const ExpectedRow& row : work_.facts().expected) {
    if (scan == Q(row.order) + '/' + Q(row.line)) return &row;
    const bool read = std::any_of(work_.lines().begin(), work_.lines().end(),
                                  [&](const ReadLine& l) { return l.typed.order == Q(row.order) && l.typed.order_line == Q(row.line); });
    if (scan == Q(row.order) && (!first || !read)) {
      if (!read) return &row;
      first = &row;
    }
  }
  return first;
}

bool ReceivingStation::TakeTag(const std::string& tag) {
  for (const GateGroup& group : work_.gate())
    for (const std::string& one : group.tags)
      if (one == tag) {
        if (KeyOf(group) != chosen_) Choose(KeyOf(group));
        ShowWaiting();
        put_->Show(group);
        put_->TakeTag(tag);
        return true;
      }
  return false;
}

bool ReceivingStation::TakePlace(const QString& place) {
  if (!putting_away()) {
    Refuse(tr("%1 is a place: choose first what is put there, or scan its tag").arg(place));
    return true;
  }
  if (InHand()) put_->TakePlace(place);
  return true;
}

bool ReceivingStation::Take(const QString& scan) {
  const Scanned read = ReadScanned(scan);
  if (!read.wrong.isEmpty()) {
    Refuse(read.wrong);
    return true;
  }
  const QString order = read.order && read.line ? Q(*read.order) + '/' + Q(*read.line) : read.text;
  if (const ExpectedRow* row = LineOf(order)) {
    if (KeyOf(*row) != chosen_) Choose(KeyOf(*row));
    Turn(KeyOf(*row));
    return true;
  }
  if (!isVisible()) return read.tag && TakeTag(*read.tag);  // looked up from another station: shown, nothing done
  const auto& places = work_.facts().places;
  if (read.place || std::find(places.begin(), places.end(), read.text.toStdString()) != places.end())
    return TakePlace(read.place ? Q(*read.place) : read.text);
  if (read.tag) return TakeTag(*read.tag);
  if (!putting_away() && TakeDevice(read.text)) return true;
  // a mill's tag: the heat as it is on it, for the line in hand
  const auto heat = read.envelope ? read.heat : std::optional(read.text.toStdString());
  if (putting_away() || !heat || chosen_.isEmpty() || chosen_.startsWith("line/") || !form_->line().heat.trimmed().isEmpty() ||
      !form_->line().Begun())
    return false;
  TypedLine line = form_->line();
  line.heat = Q(*heat);
  line.read_from = "tag";
  form_->Show(line);
  form_->Focus(LineField::Weighed);
  emit Happened({Sign::Warning, tr("heat %1 is from the mill's tag: does the metal say the same?").arg(line.heat), {}, {}});
  return true;
}

// A tape or readout: what the length of this line was measured with.
bool ReceivingStation::TakeDevice(const QString& name) {
  for (const DeviceRow& device : work_.facts().devices)
    if (Q(device.device) == name) {
      TypedLine line = form_->line();
      line.measured_with = name;
      form_->Show(line);
      emit Happened({device.overdue ? Sign::Warning : Sign::Done,
                     tr("measured with %1").arg(DeviceWords(device, work_.facts().tape_doubt, units())),
                     {},
                     {}});
      return true;
    }
  return false;
}

void ReceivingStation::PrintLabelsOf(const QStringList& tags) {
  std::vector<std::string> all;
  for (const QString& tag : tags) all.push_back(tag.toStdString());
  desk().link.Ask(
      this, [all, settings = desk().settings](Connection& book) { return PrintLabels(book, all, settings); },
      [this](const LabelsOut& out) {
        if (!out.failed.empty())
          emit Happened({Sign::Warning,
                         tr("the labels are not out: %1. They stay in the queue; F4 prints them again").arg(BookWords(out.failed)),
                         {},
                         {}});
        else
          put_->Say(Sign::Done,
                    out.labels == 0 ? tr("no label of these waits") : tr("%n label(s) out: %1", nullptr, out.labels).arg(Q(out.where)));
      },
      [this](const DbError& error) { Refuse(WordsOf(error)); }, BookLink::Pace::Long);
}

void ReceivingStation::Refuse(const QString& words) {
  put_->Say(Sign::Refusal, words);
  emit Happened({Sign::Refusal, words, {}, {}});
}

}  // namespace heatkeep
