#include "client/stations/rack_station.h"

#include <QHBoxLayout>
#include <QShortcut>
#include <QVBoxLayout>
#include <algorithm>

#include "client/models/qt_words.h"
#include "client/models/scanned.h"
#include "client/stations/deed_button.h"
#include "client/stations/yield_view.h"
#include "reports/piece_bar.h"

namespace heatkeep {
namespace {

constexpr std::int64_t kYear = 365;
constexpr QChar kFigureSpace(0x2007);  // as wide as a digit
constexpr std::size_t kClasses = 24, kRowsATurn = 1000;

QString MoneyWords(std::int64_t cents) {
  QString whole = QString::number(cents / 100);
  for (qsizetype at = whole.size() - 3; at > 0; at -= 3) whole.insert(at, ' ');
  return whole;
}

PieceBar BarOf(const RackPiece& piece) {
  StockRow row;
  row.tag = piece.tag;
  row.kind = piece.kind;
  row.section = piece.section;
  row.length = piece.length;
  return PieceBarOf(row);
}

QString KeyOf(const RackGroup& group) { return Q(group.grade + "\n" + group.section); }

}  // namespace

RackStation::RackStation(Desk& desk, QWidget* parent)
    : Station(desk, parent), work_(desk.link), table_(Columns()), groups_(new WaitingList) {
  auto* pane = new QWidget;
  auto* down = Down(pane);
  down->addWidget(head_ = new PlainWords(FontOf(Size::StationHead, true)));
  auto* first = new QHBoxLayout;
  first->addWidget(next_ = new PlainWords(FontOf(Size::Body)), 1);
  auto* unused = new DeedButton(desk.link, {}, tr("Only what nobody used"), Qt::Key_F1);
  unused->setCheckable(true);
  connect(unused, &QPushButton::toggled, this, [this](bool only) {
    unused_only_ = only;
    ShowRows();
  });
  first->addWidget(unused);
  down->addLayout(first);
  down->addWidget(lengths_ = new LengthBarsView);
  down->addWidget(rows_ = new RowView(&table_, WhenEmpty()), 1);
  auto* why = new QWidget;
  auto* right = Down(why);
  right->addWidget(worth_ = new PlainWords(FontOf(Size::Body)));
  worth_->HeadLines();
  right->addWidget(new PlainWords(FontOf(Size::Table), Use::Quiet, tr("where it lies: load of each place, number of pieces")));
  right->addWidget(map_ = new RackMapView, 1);
  right->addWidget(yield_ = new YieldView);
  LayOut(groups_, pane, why);
  why->setMinimumWidth(300);
  connect(groups_, &WaitingList::Chosen, this, [this](const QString& key) {
    ChooseGroup({key.section('\n', 0, 0).toStdString(), key.section('\n', 1, 1).toStdString()});
  });
  connect(map_, &RackMapView::Chosen, this, [this](const QString& place) { rows_->filter()->setText(place); });
  connect(rows_, &RowView::Opened, this, &RackStation::LookUp);
  connect(&work_, &RackWork::Shown, this, &RackStation::Show);
  connect(&work_, &RackWork::BeforeShown, this, [this] {
    more_.stop();
    to_show_.clear();
  });
  more_.setSingleShot(true);
  connect(&more_, &QTimer::timeout, this, &RackStation::ShowMore);
  connect(&work_, &RackWork::Refused, this, [this](const QString& words) { emit Happened({Sign::Refusal, words, {}, {}}); });
  Show();
}

QString RackStation::WhenEmpty() { return tr("No drops. What is left of a cut, and is long enough to be kept, shows up here."); }

std::vector<TableColumn> RackStation::Columns() const {
  // all of them fit the pane at 1280: the whole rack says grade and section, a group its pieces' mass and their bars
  const bool whole = work_.group().grade.empty();
  std::vector<TableColumn> columns{{.head = tr("Tag"), .width = 8}};
  if (whole) columns.insert(columns.end(), {{.head = tr("Grade"), .width = 12}, {.head = tr("Section"), .width = 8}});
  columns.push_back({.head = tr("Length %1").arg(units().LengthUnitWord()), .number = true, .width = 8});
  if (!whole) columns.push_back({.head = tr("Mass %1").arg(units().MassUnitWord()), .number = true, .width = 7});
  columns.insert(columns.end(),
                 {{.head = tr("Place"), .width = 5},
                  {.head = tr("Days"), .number = true, .width = 5},
                  {.head = tr("As scrap"), .number = true, .width = 7},
                  {.head = tr("By use"), .number = true, .width = 6},
                  {.head = tr("As new"), .number = true, .width = 6}});
  if (!whole) columns.push_back({.head = tr("To scale"), .bar = true});
  return columns;
}

TableRow RackStation::RowOf(const RackPiece& p) const {
  const auto money = [](std::optional<std::int64_t> cents) { return cents ? TableCell{AmountWords({*cents}), *cents} : TableCell{}; };
  const bool whole = work_.group().grade.empty();
  std::vector<TableCell> cells{{Q(p.tag)}};
  if (whole) cells.insert(cells.end(), {{Q(p.grade)}, {Q(p.section)}});
  cells.push_back({units().Number(p.length, Rounding::Down), p.length.nm});
  if (!whole) cells.push_back({units().Number(p.mass), p.mass.g});
  cells.insert(
      cells.end(),
      {{Q(p.place)}, {QString::number(p.days), p.days}, money(p.scrap_cents), money(p.expected_cents), money(p.replacement_cents)});
  if (!whole) cells.push_back({});
  return {Q(p.tag), std::move(cells), BarOf(p)};
}

void RackStation::Changed(const QStringList& deeds) {
  static const QStringList touch{"record_cut", "receive_delivery", "put_away", "ship", "scrap_piece", "open_balance", "set_rules"};
  if (Touch(deeds, touch)) work_.Read();
}

void RackStation::Redress() {
  table_.SetColumns(Columns());
  rows_->FitColumns();
  Show();
}

void RackStation::ChooseGroup(const RackGroup& group) {
  const bool other_columns = group.grade.empty() != work_.group().grade.empty();
  work_.Choose(group);
  if (!other_columns) return;
  table_.SetColumns(Columns());
  rows_->FitColumns();
  ShowRows();
}

bool RackStation::Take(const QString& scan) {
  const QString name = ReadScanned(scan).text;
  for (const RackPiece& p : work_.pieces())
    if (Q(p.tag) == name || Q(p.place) == name) {
      ChooseGroup({});
      rows_->filter()->setText(name);
      return true;
    }
  return false;
}

void RackStation::Show() {
  ShowGroups();
  const RackGroup& group = work_.group();
  const std::vector<const RackPiece*> drops = work_.Drops(), unused = work_.Unused(kYear);
  head_->setText(!work_.read() ? tr("The rack is being read ...")
                     : unused.empty()
                     ? tr("Everything was used within a year")
                     : tr("%n piece(s) nobody used for a year: sell, use or bin", nullptr, static_cast<int>(unused.size())));
  const RackSums sums = SumsOf(drops), still = SumsOf(unused);
  QString words = tr("%1: %n drop(s), %2, %3", nullptr, static_cast<int>(sums.pieces))
                      .arg(group.grade.empty() ? tr("Whole rack") : Q(group.grade + " " + group.section), units().Total(sums.length),
                           units().Words(sums.mass));
  if (!unused.empty()) words += tr(". What nobody used: %1, %2").arg(units().Total(still.length), units().Words(still.mass));
  next_->setText(work_.read() ? words : QString());
  std::vector<int> counts(kClasses, 0);
  Length longest{1};
  for (const RackPiece* p : drops) longest = std::max(longest, p->length);
  // round figures of the reader's own under the bars
  const std::int64_t least = units().length == ReadingUnits::LengthAs::Mm ? kNmPerMm * 50 : kNmPerInch * 2;
  const Length step{(longest.nm / static_cast<std::int64_t>(kClasses) / least + 1) * least};
  for (const RackPiece* p : drops) ++counts[std::min(kClasses - 1, static_cast<std::size_t>((p->length.nm - 1) / step.nm))];
  lengths_->Show(counts, work_.Wanted(step, kClasses), step, work_.keep(), units());
  map_->Show(work_.places(), units());
  yield_->Show(work_.months());
  ShowRows();
  ShowWorth();
}

void RackStation::ShowGroups() {
  const std::vector<RackPiece>& pieces = work_.pieces();
  std::vector<WaitingEntry> entries{
      {.key = KeyOf({}), .title = tr("Whole rack"), .below = tr("%n piece(s) of ours", nullptr, static_cast<int>(pieces.size()))}};
  for (const RackWork::GroupSum& g : work_.Groups())
    entries.push_back({.key = KeyOf(g.group),
                       .title = Q(g.group.section),
                       .below = Q(g.group.grade),
                       .right = tr("%n drop(s), %1", nullptr, g.drops).arg(units().Total(g.length))});
  groups_->Show(entries, tr("Nothing of ours is in the rack."));
  const QSignalBlocker quiet(groups_);
  groups_->Choose(KeyOf(work_.group()));
}

// A thousand rows a turn of the loop, so that a full rack does not hold up the window.
void RackStation::ShowRows() {
  to_show_ = unused_only_ ? work_.Unused(kYear) : work_.Drops();
  Length longest;
  for (const RackPiece* p : to_show_) longest = std::max(longest, p->length);
  rows_->SetFullLength(longest);
  rows_->SetCount([this] { return tr("%n piece(s). Enter: papers. Ctrl+E: keep as CSV", nullptr, table_.rowCount()); });
  rows_->SetEmptyWords(unused_only_ ? tr("Nothing of it lay unused for a year.") : WhenEmpty());
  table_.SetRows({});
  shown_ = 0;
  ShowMore();
}

void RackStation::ShowMore() {
  std::vector<TableRow> rows;
  for (; shown_ < to_show_.size() && rows.size() < kRowsATurn; ++shown_) rows.push_back(RowOf(*to_show_[shown_]));
  table_.Append(std::move(rows));
  if (shown_ < to_show_.size()) more_.start(0);
}

void RackStation::ShowWorth() {
  const std::vector<const RackPiece*> drops = work_.Drops();
  const RackSums sums = SumsOf(drops);
  QStringList words{work_.currency().empty() ? tr("DROPS ARE WORTH") : tr("DROPS ARE WORTH, %1").arg(Q(work_.currency()))};
  words << tr("as scrap %1").arg(MoneyWords(sums.scrap_cents))
        << tr("by expected use %1")
               .arg(!work_.whole()           ? tr("being worked out ...")
                        : sums.expected == 0 ? tr("not known yet")
                                             : MoneyWords(sums.expected_cents))
        << tr("as new %1").arg(MoneyWords(sums.replacement_cents));
  if (sums.priced < sums.pieces) words << tr("%n piece(s) have no price", nullptr, static_cast<int>(sums.pieces - sums.priced));
  words << QString() << tr("AGE");
  constexpr std::int64_t kQuarter = 91;
  int ages[5] = {};
  for (const RackPiece* p : drops) ++ages[std::min<std::int64_t>(4, p->days / kQuarter)];
  const QString names[5] = {tr("this quarter"), tr("one quarter"), tr("two quarters"), tr("three quarters"), tr("a year and more")};
  const auto digits = static_cast<int>(QString::number(*std::ranges::max_element(ages)).size());
  for (int i = 0; i < 5; ++i) words << QString("%1  %2").arg(ages[i], digits, 10, kFigureSpace).arg(names[i]);
  worth_->setText(words.join('\n'));
}

}  // namespace heatkeep
