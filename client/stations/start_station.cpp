#include "client/stations/start_station.h"

#include <QVBoxLayout>
#include <algorithm>

#include "client/gateway/start_readings.h"

namespace heatkeep {

std::vector<StartStation::Step> StartStation::Steps() {
  return {
      {tr("Grades and their limits"), tr("heatkeep grades add FILE\nheatkeep grades limits\n\nGrades by their standard's designation and number, with density. The limits that come with the program say their source.")},
      {tr("The shop: saws, places, mills, customers"), tr("heatkeep shop set shop.json\n\nseed/scenario/shop.json is an example. Kerf and grip are what the shop measures, not what a table says.")},
      {tr("What lies there: the opening balance"), tr("heatkeep look bars.xlsx --as opening\nheatkeep opening bars.xlsx\n\nA spreadsheet of bars and drops, one row each or alike: grade, section, heat as read, length, place. The first command only shows what it would be understood as.")},
      {tr("The first cut list"), tr("heatkeep cutlist add list.csv\n\nThen the planning station: F1 plans, F2 promises.")},
      {tr("People"), tr("heatkeep book person add NAME --role clerk\n\nA login a person; the roles are clerk, planner, saw, quality, owner.")},
  };
}

StartStation::StartStation(Desk& desk, QWidget* parent) : Station(desk, parent), list_(new WaitingList) {
  auto* pane = new QWidget;
  auto* down = Down(pane, kBetween);
  down->addWidget(head_ = new PlainWords(FontOf(Size::StationHead, true)));
  down->addWidget(how_ = new PlainWords(MonoOf(Size::Body)));
  down->addStretch(1);
  LayOut(list_, pane, nullptr);
  connect(list_, &WaitingList::Chosen, this, &StartStation::Show);
  Show();
}

void StartStation::Refresh() {
  desk().link.Ask(this, [](Connection& book) { return ReadStart(book); }, [this](const std::vector<std::int64_t>& counts) {
    counts_ = counts;
    const auto first = std::find(counts_.begin(), counts_.end(), 0);
    Show();
    if (list_->chosen().isEmpty()) list_->Choose(QString::number(first == counts_.end() ? 0 : first - counts_.begin()));
  });
}

void StartStation::Changed(const QStringList& deeds) {
  static const QStringList touch{"define_shop", "define_grade", "open_balance", "add_cut_list", "define_limits"};
  if (Touch(deeds, touch)) Refresh();
}

int StartStation::done() const { return static_cast<int>(std::count_if(counts_.begin(), counts_.end(), [](std::int64_t count) { return count > 0; })); }

void StartStation::Show() {
  const std::vector<Step> steps = Steps();
  std::vector<WaitingEntry> entries;
  for (std::size_t i = 0; i < counts_.size() && i < steps.size(); ++i)
    entries.push_back({.key = QString::number(i), .title = steps[i].title.section(": ", 0, 0), .below = steps[i].title.section(": ", 1), .right = counts_[i] > 0 ? QString::number(counts_[i]) : QString(), .sign = counts_[i] > 0 ? Sign::Done : Sign::Waiting});
  {
    const QSignalBlocker quiet(list_);
    list_->Show(entries, tr("The book is being read ..."));
  }
  head_->setText(done() == this->steps() && this->steps() > 0 ? tr("The book is ready for work") : tr("%1 of %2 steps to the first cut").arg(done()).arg(steps.size()));
  const int chosen = list_->chosen().isEmpty() ? -1 : list_->chosen().toInt();
  how_->setText(chosen >= 0 && chosen < static_cast<int>(steps.size()) ? steps[static_cast<std::size_t>(chosen)].how : QString());
}

}  // namespace heatkeep
