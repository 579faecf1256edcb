#include "client/stations/saw_station.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLocale>
#include <QVBoxLayout>

#include "client/models/device_words.h"
#include "client/models/label_output.h"
#include "client/models/qt_words.h"
#include "client/models/scanned.h"
#include "client/stations/plan_words.h"
#include "reports/sheet_words.h"
#include "schema/terms/bad_text.h"
#include "schema/terms/sawing.h"

namespace heatkeep {
namespace {

Sign SignOf(const SheetBlock& block) {
  return block.state == "done" ? Sign::Done : block.state == "dropped" ? Sign::Warning : Sign::Waiting;
}

}  // namespace

SawStation::SawStation(Desk& desk, QWidget* parent) : Station(desk, parent), work_(desk.link, desk.settings), waiting_(new WaitingList) {
  LayOut(waiting_, BuildWork(), BuildWhy());
  connect(waiting_, &WaitingList::Chosen, &work_, &SawWork::Choose);
  connect(&work_, &SawWork::Shown, this, &SawStation::Show);
  connect(&work_, &SawWork::Done, this, [this](const QString& words, bool fully) {
    sign_->Say(fully ? Sign::Done : Sign::Warning, words);
    emit Happened({fully ? Sign::Done : Sign::Warning, words, {}, {}});
  });
  connect(&work_, &SawWork::Refused, this, [this](const QString& words) {
    sign_->Say(Sign::Refusal, words);
    emit Happened({Sign::Refusal, words, {}, {}});
  });
  connect(&work_, &SawWork::HeatWanted, this, [this](const QString& tag, const QString& words) {
    blind_ = true;
    Question(words, [this, tag](const QString& heat) {
      work_.Pull(tag, heat);
      return true;
    });
  });
  connect(&work_, &SawWork::LabelWanted, this, &SawStation::PrintLabel);
  Show();
}

QWidget* SawStation::BuildWork() {
  auto* pane = new QWidget;
  auto* down = Down(pane);
  down->addWidget(age_ = new PlainWords(FontOf(Size::SawBody, true), Use::Warning));
  down->addWidget(head_ = new PlainWords(FontOf(Size::Key, true)));
  down->addWidget(what_ = new PlainWords(FontOf(Size::SawBody)));
  down->addWidget(bar_ = new PieceBarView);
  auto* stop = new QHBoxLayout;
  stop->setSpacing(kBetween);
  stop->addWidget(stop_words_ = new PlainWords(FontOf(Size::SawBody), Use::Quiet, tr("Stop at")));
  stop->addWidget(stop_ = new StopFigure, 3);
  stop->addWidget(stop_for_ = new PlainWords(FontOf(Size::SawBody)), 2);
  stop_words_->setWordWrap(false);
  down->addLayout(stop, 4);
  down->addWidget(sign_ = new SignLine(Size::StationHead, kGlove));
  down->addWidget(asking_ = new AskingLine(Size::SawBody));
  down->addWidget(lengths_ = new QWidget);
  auto* lengths = new QHBoxLayout(lengths_);
  lengths->setContentsMargins(0, 0, 0, 0);
  lengths->addWidget(read_with_ = new PlainWords(FontOf(Size::SawBody), Use::Quiet), 1);
  lengths->addWidget(device_ = new DeedButton(desk().link, {}, tr("ANOTHER"), Qt::Key_F10, DeedButton::Weight::Glove));
  connect(device_, &QPushButton::clicked, &work_, &SawWork::NextDevice);
  lengths_->setVisible(false);
  connect(asking_, &AskingLine::Left, this, [this] {
    blind_ = false;
    lengths_->setVisible(false);
    Show();
  });
  down->addStretch(1);
  down->addWidget(buttons_ = new QWidget);
  auto* buttons = new QGridLayout(buttons_);
  buttons->setContentsMargins(0, 0, 0, 0);
  buttons->setSpacing(kInside);
  BuildButtons(buttons);
  return pane;
}

QWidget* SawStation::BuildWhy() {
  auto* pane = new QWidget;
  auto* down = Down(pane, kBetween);
  down->addWidget(why_ = new WordsPane, 1);
  down->addWidget(new PlainWords(FontOf(Size::Table), Use::Quiet, BookWords(CautionWords())));
  return pane;
}

void SawStation::BuildButtons(QLayout* into) {
  auto* grid = static_cast<QGridLayout*>(into);
  const auto add = [&](int row, int column, int columns, const QString& deed, const QString& words, int key, DeedButton::Weight weight,
                       auto what) {
    auto* button = new DeedButton(desk().link, deed, words, QKeySequence(key), weight);
    connect(button, &QPushButton::clicked, this, what);
    grid->addWidget(button, row, column, 1, columns);
    return button;
  };
  using Weight = DeedButton::Weight;
  confirm_ = add(0, 0, 2, "record_cut", tr("CUT AS PLANNED"), Qt::Key_F1, Weight::PrimaryGlove, [this] { Confirm(); });
  next_run_ = add(0, 2, 1, {}, tr("NEXT STOP"), Qt::Key_F2, Weight::Glove, [this] { work_.NextRun(); });
  rest_ = add(0, 3, 1, "record_cut", tr("REST"), Qt::Key_F3, Weight::Glove, [this] { RestMeasured(); });
  fewer_ = add(1, 0, 1, "record_cut", tr("FEWER"), Qt::Key_F4, Weight::Glove, [this] { FewerCut(); });
  not_there_ = add(1, 1, 1, "report_missing", tr("NOT THERE"), Qt::Key_F5, Weight::Glove,
                   [this] { Mishap(&planning::Mishaps::missing, tr("not in its place")); });
  short_ = add(1, 2, 1, "measure_at_saw", tr("SHORT"), Qt::Key_F6, Weight::Glove, [this] { MeasuredShort(); });
  bad_ = add(1, 3, 1, "quarantine", tr("BAD METAL"), Qt::Key_F7, Weight::Glove, [this] { BadMetal(); });
  no_mark_ = add(2, 0, 1, "quarantine", tr("NO MARK"), Qt::Key_F8, Weight::Glove,
                 [this] { Mishap(&planning::Mishaps::unreadable, tr("its mark cannot be read")); });
  hand_over_ = add(2, 1, 2, "hand_over", tr("SHIFT ENDS"), Qt::Key_F9, Weight::Glove, [this] { HandOver(); });
}

void SawStation::Changed(const QStringList& deeds) {
  if (deeds.isEmpty()) Show();
  else if (!work_.busy()) work_.Read();
}

void SawStation::Redress() {
  Show();
  work_.Read();
}

bool SawStation::Take(const QString& scan) {
  if (!isVisible()) return false;  // what is looked up from another station is neither fetched nor put away
  const Scanned read = ReadScanned(scan);
  const auto refuse = [this](const QString& words) {
    sign_->Say(Sign::Refusal, words);
    emit Happened({Sign::Refusal, words, {}, {}});
    return true;
  };
  if (!read.wrong.isEmpty()) return refuse(read.wrong);
  if (read.tag) {
    asking_->Leave();
    work_.Pull(Q(*read.tag));
    return true;
  }
  if (work_.MeasureWith(read.text)) {
    emit Happened({Sign::Done, tr("Lengths are read with %1").arg(ReadWith()), {}, {}});
    return true;
  }
  const QString place = read.place ? Q(*read.place) : read.text;
  if (work_.step() != SawWork::Step::Place) return read.place ? refuse(tr("%1 is a place: nothing waits for one now").arg(place)) : false;
  if (!work_.IsPlace(place))
    return refuse(tr("%1 is no place of this shop: scan the label of the place where %2 is put").arg(place, work_.drop()));
  work_.PutAway(place);
  return true;
}

QString SawStation::ReadWith() const {
  for (const DeviceRow& device : work_.devices())
    if (Q(device.device) == work_.device()) return DeviceWords(device, work_.tape_doubt(), units());
  return tr("a tape that is not said, \u00B1%1").arg(units().Stop(work_.tape_doubt()));
}

void SawStation::Confirm() {
  switch (work_.step()) {
    case SawWork::Step::Cut: {
      const CutTold told = std::exchange(told_, {});
      work_.Cut(told);
      break;
    }
    case SawWork::Step::Place: work_.LeaveDrop(); break;
    case SawWork::Step::Pull: sign_->Say(Sign::Waiting, tr("scan the piece first: %1").arg(Q(work_.block()->tag))); break;
    default: break;
  }
}

bool SawStation::Stop() {
  if (!asking_->asking()) return false;
  asking_->Leave();
  return true;
}

void SawStation::Show() {
  ShowWaiting();
  const SheetBlock* const block = work_.block();
  const SawWork::Step step = work_.step();
  const bool cut = step == SawWork::Step::Cut, pull = step == SawWork::Step::Pull;
  switch (step) {
    case SawWork::Step::NoSaw:
      head_->setText(tr("Which saw is this?"));
      what_->setText(tr("Say it in the settings: Ctrl+,"));
      break;
    case SawWork::Step::Nothing:
      head_->setText(tr("Nothing waits for saw %1").arg(desk().settings.saw));
      what_->setText(tr("A plan made for this saw shows up here by itself."));
      break;
    case SawWork::Step::Place:
      head_->setText(tr("Where does %1 lie?").arg(work_.drop()));
      what_->setText(tr("Scan its place; Enter: where the piece came from. Longer than its label says: FEWER."));
      break;
    default: break;
  }
  if (block && (cut || pull)) ShowPiece(RemainingOf(*block));
  else bar_->Show(std::nullopt, units());
  bar_->setVisible(block && (cut || pull));
  ShowAge();
  buttons_->setVisible(!asking_->asking());
  for (QWidget* part : std::initializer_list<QWidget*>{stop_words_, stop_, stop_for_}) part->setVisible(cut);
  confirm_->SetWords(step == SawWork::Step::Place ? tr("LEAVE IT THERE") : tr("CUT AS PLANNED"));
  confirm_->SetWanted(!work_.busy() && (cut || step == SawWork::Step::Place));
  next_run_->SetWanted(cut && RemainingOf(*block).cuts.size() > 1);
  rest_->SetWanted(cut && !work_.busy());
  fewer_->SetWanted((cut || step == SawWork::Step::Place) && !work_.busy());
  for (DeedButton* button : {not_there_, short_, bad_, no_mark_}) button->SetWanted((cut || pull) && !work_.busy() && desk().link.ready());
  hand_over_->SetWords(work_.handover() ? tr("TAKE OVER") : tr("SHIFT ENDS"));
  hand_over_->SetWanted(step != SawWork::Step::NoSaw && step != SawWork::Step::Place && !work_.busy());
  read_with_->setText(tr("Read with %1").arg(ReadWith()));
  device_->SetWanted(!work_.devices().empty());
  const std::optional<SheetBlock> shown = block && (cut || pull) ? std::optional(RemainingOf(*block)) : std::nullopt;
  ShowWhy(shown ? &*shown : nullptr);
}

// Off the network: how old is what is shown. On it: whether the saw was handed over.
void SawStation::ShowAge() {
  QString words;
  if (!desk().link.ready() && work_.as_of().isValid()) {
    const bool today = work_.as_of().date() == QDate::currentDate();
    words = tr("Sheets as of %1").arg(today ? work_.as_of().toString("HH:mm") : QLocale().toString(work_.as_of(), "d MMM HH:mm"));
    if (work_.may_keep()) words += tr(": go on with them, what you do is kept here");
  } else if (const auto& handover = work_.handover()) {
    words = tr("%1 handed over: \"%2\". F9 takes the saw over").arg(Q(handover->given_by), Q(handover->words));
  }
  age_->setText(words);
  age_->setVisible(!words.isEmpty());
}

void SawStation::ShowWaiting() {
  std::vector<WaitingEntry> entries;
  const SheetBlock* const now = work_.block();
  for (const Sheet& sheet : work_.sheets()) {
    const QDate due = QDate::fromString(Q(sheet.due), Qt::ISODate), today = QDate::currentDate();
    const QString when = !due.isValid() ? QString()
        : due < today                   ? tr("LATE: was due %1").arg(Q(sheet.due))
        : due == today                  ? tr("due today")
                                        : tr("due %1").arg(Q(sheet.due));
    entries.push_back({.key = {},
                       .title = tr("Plan %1").arg(Q(sheet.number)),
                       .below = {},
                       .right = when,
                       .sign = due.isValid() && due < today ? Sign::Warning : Sign::None,
                       .section = true});
    for (const SheetBlock& b : sheet.blocks)
      entries.push_back({.key = Q(b.tag),
                         .title = Q(b.tag),
                         .below = QString("%1   %2   %3").arg(Q(b.place), Q(b.section), Q(b.grade)),
                         .right = b.state == "done" ? tr("cut")
                             : b.state == "at saw"  ? tr("in the saw")
                                                    : units().Words(b.mass),
                         .sign = SignOf(b),
                         .mono = true});
  }
  waiting_->Show(entries, tr("No plan waits for this saw."));
  if (now) {
    const QSignalBlocker quiet(waiting_);
    waiting_->Choose(Q(now->tag));
  }
}

void SawStation::ShowPiece(const SheetBlock& block) {
  const bool cut = work_.step() == SawWork::Step::Cut;
  const Sheet& sheet = *work_.sheet();
  head_->setText(cut ? tr("Cut %1").arg(Q(block.tag)) : tr("Fetch %1 from %2").arg(Q(block.tag), Q(block.place)));
  // read back blind: what is asked for is not shown beside the question
  const QString heat = blind_ ? tr("as the metal says") : Q(HeatInGroups(block.heat));
  what_->setText(tr("%1  %2   heat %3   %4   %5, %6")
                     .arg(Q(block.section), Q(block.grade), heat, units().Words(block.length, Rounding::Down), units().Words(block.mass),
                          BookWords(HowToLift(block.mass, block.length, sheet.lift_limit))));
  OrderLetters letters;
  for (const SheetBlock& b : sheet.blocks) PieceBarOf(b, letters);
  const PieceBar bar = PieceBarOf(block, letters);
  bar_->Show(bar, units(), LongestOf(sheet), cut ? work_.run() : -1);
  if (!cut || block.cuts.empty()) return;
  const SheetCut& next = block.cuts[static_cast<std::size_t>(work_.run())];
  const std::int64_t strokes = FeedStrokes(next.set, work_.stop_stroke());
  stop_->Show(units().Stop(next.set));
  QString words = tr("%n piece(s) for %1/%2, %3", nullptr, next.count).arg(Q(next.order), Q(next.line), Q(next.customer));
  if (strokes > 1) words += '\n' + tr("longer than the stop: feed %1 times, one cut").arg(strokes);
  if (next.tolerance_minus.nm + next.tolerance_plus.nm > 0) words += '\n' + BookWords(ToleranceWords(next));
  stop_for_->setText(words);
}

void SawStation::ShowWhy(const SheetBlock* block) {
  QStringList words;
  if (block) {
    words << tr("WHAT IS CUT");
    for (const SheetCut& c : block->cuts) words << QString("%1 x %2   %3/%4").arg(c.count).arg(units().Stop(c.set), Q(c.order), Q(c.line));
    words << BookWords(WhatIsLeft(*block, units().Ruler())) << BookWords(LossWords(*block));
    if (!MarkWords(*block).empty()) words << QString() << BookWords(MarkWords(*block));
    if (!DoubtWords(*block).empty()) words << BookWords(DoubtWords(*block));
    if (!BundleWords(*block).empty()) words << BookWords(BundleWords(*block));
    for (const std::string& end : EndWords(*block)) words << BookWords(end);
    for (const std::string& warning : WarningWords(*block)) words << BookWords(warning);
    words << QString() << tr("PAPERS") << Q(block->papers);
    if (IsOthersMetal(*block)) words << tr("owned by %1").arg(Q(block->owner));
    words << QString() << tr("NOT THERE?") << (block->otherwise.empty() ? tr("nothing else held its cuts") : BookWords(block->otherwise));
    if (const Sheet* sheet = work_.sheet()) words << QString() << tr("THE PLAN") << BookWords(sheet->proof);
  }
  why_->Say(words.join('\n'));
}

std::optional<Length> SawStation::LengthIn(const QString& answer) {
  try {
    return units().ReadAboveZero(answer);
  } catch (const BadText& error) {
    sign_->Say(Sign::Refusal, BookWords(std::string(error.what())));
    return std::nullopt;
  }
}

std::optional<int> SawStation::CountIn(const QString& answer, int least, std::optional<int> most) {
  bool whole = false;
  const int count = answer.toInt(&whole);
  if (whole && count >= least && (!most || count <= *most)) return count;
  sign_->Say(Sign::Refusal,
             most ? tr("expected a number from %1 to %2").arg(least).arg(*most) : tr("expected a number from %1 on").arg(least));
  return std::nullopt;
}

// While it is asked, what stands under it makes room, and no other key does anything.
void SawStation::Question(const QString& words, AskingLine::Take take) {
  sign_->Clear();
  asking_->Ask(words, std::move(take));
  Show();
}

void SawStation::AskLength(const QString& words, const std::function<void(Length)>& then) {
  Question(words, [this, then](const QString& answer) {
    const std::optional<Length> length = LengthIn(answer);
    if (length) then(*length);
    return length.has_value();
  });
  lengths_->setVisible(true);
  Show();
}

void SawStation::MeasuredShort() {
  const QString tag = Q(work_.block()->tag);
  AskLength(tr("How long is %1 really? (%2)").arg(tag, units().LengthUnitWord()), [this, tag](Length length) {
    planning::Mishaps mishaps;
    mishaps.measured.emplace_back(tag.toStdString(), length);
    work_.Mend(mishaps);
  });
}

void SawStation::RestMeasured() {
  AskLength(tr("All is cut. How long is what is left? (%1)").arg(units().LengthUnitWord()), [this](Length length) {
    told_.rest = length;
    Confirm();
  });
}

// What is left is longer than was said: so many pieces fewer were cut than was confirmed.
void SawStation::FewerAfterAll() {
  Question(tr("How many strokes were confirmed and not made? %1 is that much longer.").arg(work_.drop()), [this](const QString& answer) {
    const std::optional<int> count = CountIn(answer, 1);
    if (count) work_.TakeBack(*count, tr("fewer cut than confirmed"));
    return count.has_value();
  });
}

void SawStation::FewerCut() {
  if (work_.step() == SawWork::Step::Place) return FewerAfterAll();
  const SheetBlock block = RemainingOf(*work_.block());
  if (block.cuts.empty()) return;
  const SheetCut& cut = block.cuts[static_cast<std::size_t>(work_.run())];
  const std::string line = cut.order + "/" + cut.line;
  Question(tr("How many good pieces for %1 were cut, of %2? The piece is done then.").arg(Q(line)).arg(cut.count),
           [this, line, most = cut.count](const QString& answer) {
             const std::optional<int> count = CountIn(answer, 0, most - 1);
             if (!count) return false;
             told_.done[line] = *count;
             told_.reason = tr("fewer cut than planned").toStdString();
             Confirm();
             return true;
           });
}

void SawStation::HandOver() {
  if (work_.handover()) return work_.TakeOver();
  AskHandedOver(0, {});
}

void SawStation::AskHandedOver(std::size_t cut, const DoneCounts& done) {
  const std::vector<SheetCut> cuts = work_.step() == SawWork::Step::Cut ? RemainingOf(*work_.block()).cuts : std::vector<SheetCut>{};
  if (cut >= cuts.size()) {
    Question(cuts.empty() ? tr("How do things stand at saw %1? The next one reads it.").arg(desk().settings.saw)
                          : tr("How do things stand, and why is the rest open? The next one reads it."),
             [this, done](const QString& words) {
               work_.HandOver(done, words);
               return true;
             });
    return;
  }
  const std::string line = cuts[cut].order + "/" + cuts[cut].line;
  Question(tr("How many good pieces for %1 are cut so far, of %2?").arg(Q(line)).arg(cuts[cut].count),
           [this, cut, done, line, most = cuts[cut].count](const QString& answer) {
             const std::optional<int> count = CountIn(answer, 0, most);
             if (!count) return false;
             DoneCounts more = done;
             more[line] += *count;
             AskHandedOver(cut + 1, more);
             return true;
           });
}

void SawStation::BadMetal() {
  const QString tag = Q(work_.block()->tag);
  Question(tr("What is wrong with %1?").arg(tag), [this, tag](const QString& answer) {
    planning::Mishaps mishaps;
    mishaps.bad.push_back(tag.toStdString());
    mishaps.reason = answer.toStdString();
    work_.Mend(mishaps);
    return true;
  });
}

void SawStation::Mishap(std::vector<std::string> planning::Mishaps::*of, const QString& reason) {
  planning::Mishaps mishaps;
  (mishaps.*of).push_back(work_.block()->tag);
  mishaps.reason = reason.toStdString();
  work_.Mend(mishaps);
}

void SawStation::PrintLabel(const QString& tag) {
  desk().link.Ask(
      this, [tag = tag.toStdString(), settings = desk().settings](Connection& book) { return PrintLabels(book, {tag}, settings); },
      [this, tag](const LabelsOut& out) {
        if (!out.failed.empty())
          emit Happened(
              {Sign::Warning,
               tr("the label of %1 is not out: %2. It stays in the queue; write the tag on the metal").arg(tag, BookWords(out.failed)),
               {},
               {}});
      },
      [this, tag](const DbError& error) {
        emit Happened({Sign::Warning, tr("the label of %1 is not out: %2").arg(tag, WordsOf(error)), {}, {}});
      },
      BookLink::Pace::Long);
}

}  // namespace heatkeep
