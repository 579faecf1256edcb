#include "client/stations/start_station.h"

#include <QHBoxLayout>
#include <QProgressBar>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "client/stations/screen_paper.h"

namespace heatkeep {

std::vector<StartStation::Step> StartStation::Steps() {
  return {
      {tr("Grades and their limits"),
       tr("heatkeep grades add FILE\nheatkeep grades limits\n\nGrades by their standard's designation and number, with density. The limits that come with the program say their source; a new private book has them.")},
      {tr("The shop: saws, places, mills, customers"),
       tr("heatkeep shop set shop.json\n\nseed/scenario/shop.json is an example. Kerf and grip are what the shop measures, not what a table says.")},
      {tr("What lies there: the opening balance"),
       tr("F2 brings in a spreadsheet of bars and drops, one row each or alike: tag, grade, section, length, and what is known of heat, place and owner. Every row is shown with what is wrong with it before anything is booked.\n\nAt the command line: heatkeep opening bars.xlsx")},
      {tr("The first cut list"), tr("heatkeep cutlist add list.csv\n\nThen the planning station: F1 plans, F2 promises.")},
      {tr("People"),
       tr("heatkeep book person add NAME --role clerk\n\nA login a person; the roles are clerk, planner, saw, quality, owner.")},
  };
}

StartStation::StartStation(Desk& desk, QWidget* parent)
    : Station(desk, parent), work_(desk.link, desk.first), list_(new WaitingList), pages_(new QStackedWidget) {
  pages_->addWidget(BuildSteps());
  auto* import = new QWidget;
  auto* down = Down(import);
  auto* top = new QHBoxLayout;
  top->addWidget(import_head_ = new PlainWords(FontOf(Size::StationHead, true), Use::Text, tr("What lies there: the opening balance")), 1);
  top->addWidget(back_ = new DeedButton(desk.link, {}, tr("Back to the steps"), Qt::Key_F8), 0, Qt::AlignTop);
  down->addLayout(top);
  down->addWidget(opening_ = new OpeningPage(desk.link, work_, units()), 1);
  pages_->addWidget(import);
  LayOut(list_, pages_, nullptr);
  connect(back_, &QPushButton::clicked, this, [this] { pages_->setCurrentIndex(0); });
  connect(list_, &WaitingList::Chosen, this, &StartStation::Show);
  connect(&work_, &StartWork::Shown, this, &StartStation::Show);
  connect(&work_, &StartWork::Progress, this, [this](int done, int all, const QString& words) {
    progress_->setRange(0, all);
    progress_->setValue(done);
    sign_->Say(Sign::Waiting, tr("the demo is being made: %1").arg(words));
  });
  connect(&work_, &StartWork::Done, this, [this](const QString& words) { emit Happened({Sign::Done, words, {}, {}}); });
  connect(&work_, &StartWork::Refused, this, [this](const QString& words) {
    sign_->Say(Sign::Refusal, words);
    emit Happened({Sign::Refusal, words, {}, {}});
  });
  Show();
}

QWidget* StartStation::BuildSteps() {
  auto* pane = new QWidget;
  auto* down = Down(pane, kBetween);
  down->addWidget(head_ = new PlainWords(FontOf(Size::StationHead, true)));
  down->addWidget(offer_ = new PlainWords(FontOf(Size::Body)));
  auto* row = new QHBoxLayout;
  row->setSpacing(kInside);
  row->addWidget(demo_ = new DeedButton(desk().link, {}, tr("Look around in the demo shop"), Qt::Key_F1));
  row->addWidget(import_ =
                     new DeedButton(desk().link, "open_balance", tr("Bring in what lies there"), Qt::Key_F2, DeedButton::Weight::Primary));
  for (DeedButton* button : {demo_, import_}) button->setMinimumWidth(260);
  row->addStretch(1);
  down->addLayout(row);
  down->addWidget(sign_ = new SignLine);
  down->addWidget(progress_ = new QProgressBar);
  progress_->setVisible(false);
  down->addSpacing(kBetween);
  down->addWidget(commands_ = new PlainWords(MonoOf(Size::Body)));
  down->addWidget(how_ = new PlainWords(FontOf(Size::Body)));
  down->addStretch(1);
  connect(demo_, &QPushButton::clicked, this, [this] {
    if (work_.first().demo) work_.first().open(false);
    else work_.MakeDemo();
  });
  connect(import_, &QPushButton::clicked, this, &StartStation::OpenImport);
  return pane;
}

void StartStation::OpenImport() {
  pages_->setCurrentIndex(1);
  opening_->Follow();
}

bool StartStation::TakeFile(const QString& file) {
  static const QStringList endings{".xlsx", ".ods", ".csv"};
  if (std::none_of(endings.begin(), endings.end(), [&](const QString& ending) { return file.endsWith(ending, Qt::CaseInsensitive); }))
    return false;
  OpenImport();
  work_.Look(file);
  return true;
}

bool StartStation::Stop() {
  if (pages_->currentIndex() == 0) return false;
  pages_->setCurrentIndex(0);
  return true;
}

DeskPaper StartStation::Paper() {
  const bool import = pages_->currentIndex() == 1;
  ScreenPage page = PageOf(tr("A new book"), import ? import_head_->text() : head_->text(), units());
  if (import) page.parts = {WordsPart({}, opening_->words()), TablePart({}, opening_->table())};
  else page.parts = {WaitingPart({}, *list_), WordsPart({}, (commands_->text() + "\n\n" + how_->text()).trimmed())};
  return PaperOf("start", std::move(page));
}

void StartStation::Changed(const QStringList& deeds) {
  static const QStringList touch{"define_shop", "define_grade", "open_balance", "add_cut_list", "define_limits"};
  if (Touch(deeds, touch)) Refresh();
}

void StartStation::Redress() {
  opening_->Follow();
  Show();
}

int StartStation::done() const {
  return static_cast<int>(std::count_if(work_.counts().begin(), work_.counts().end(), [](std::int64_t count) { return count > 0; }));
}

void StartStation::Show() {
  const std::vector<Step> steps = Steps();
  const std::vector<std::int64_t>& counts = work_.counts();
  std::vector<WaitingEntry> entries;
  for (std::size_t i = 0; i < counts.size() && i < steps.size(); ++i)
    entries.push_back({.key = QString::number(i),
                       .title = steps[i].title.section(": ", 0, 0),
                       .below = steps[i].title.section(": ", 1),
                       .right = counts[i] > 0 ? QString::number(counts[i]) : QString(),
                       .sign = counts[i] > 0 ? Sign::Done : Sign::Waiting});
  {
    const QSignalBlocker quiet(list_);
    list_->Show(entries, tr("The book is being read ..."));
    const auto first = std::find(counts.begin(), counts.end(), 0);
    if (list_->chosen().isEmpty() && !counts.empty()) list_->Choose(QString::number(first == counts.end() ? 0 : first - counts.begin()));
  }
  const FirstBook& first = work_.first();
  const bool whole = done() == this->steps() && this->steps() > 0;
  if (first.demo) head_->setText(tr("The demo: Ostrel Shaftworks, an invented shop"));
  else if (first.own && work_.empty()) head_->setText(tr("An empty book of your own"));
  else head_->setText(whole ? tr("The book is ready for work") : tr("%1 of %2 steps to the first cut").arg(done()).arg(steps.size()));
  if (first.demo)
    offer_->setText(
        tr("Everything in it is invented. What you do here changes only the demo. Your own book is beside it, as you left it."));
  else if (first.own)
    offer_->setText(tr(
        "The demo is a shop with 900 bars and drops, their certificates and three cut lists, in a book of its own beside this one: it takes about a minute to make and changes nothing here.\nOr begin with your own metal: a spreadsheet of what lies there becomes the opening balance."));
  offer_->setVisible(first.own);
  demo_->setVisible(first.own);
  demo_->SetWords(first.demo ? tr("Back to your own book") : tr("Look around in the demo shop"));
  demo_->SetWanted(!work_.making());
  import_->SetWanted(!work_.busy());
  import_->setVisible(!first.demo);
  progress_->setVisible(work_.making());
  if (!work_.making() && sign_->sign() == Sign::Waiting) sign_->Clear();
  const int chosen = list_->chosen().isEmpty() ? -1 : list_->chosen().toInt();
  const QString how = chosen >= 0 && chosen < static_cast<int>(steps.size()) ? steps[static_cast<std::size_t>(chosen)].how : QString();
  const bool commands = how.startsWith("heatkeep ");
  commands_->setText(commands ? how.section("\n\n", 0, 0) : QString());
  commands_->setVisible(commands);
  how_->setText(commands ? how.section("\n\n", 1) : how);
}

}  // namespace heatkeep
