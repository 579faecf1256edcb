#include "client/stations/row_view.h"

#include <QFileDialog>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMessageBox>
#include <QPainter>
#include <QShortcut>
#include <QStyledItemDelegate>
#include <QToolTip>
#include <QVBoxLayout>
#include <algorithm>
#include <numeric>

#include "reports/piece_bar.h"
#include "reports/table_csv.h"

namespace heatkeep {
namespace {

constexpr int kPad = 5;         // of a cell, left and right
constexpr int kMeasured = 200;  // rows that say how wide a column is to be
constexpr int kNarrowest = 5;   // letters of a column of words

// In the table's own distance from the edges, so that figures and words of neighbours do not touch.
void PaintWords(QPainter* painter, const QRect& cell, const QString& words, Qt::Alignment alignment, const QFont& font,
                const QColor& color) {
  painter->save();
  painter->setFont(font);
  painter->setPen(color);
  const QRect box = cell.adjusted(kPad, 0, -kPad, 0);
  painter->drawText(box, static_cast<int>(alignment) | Qt::TextSingleLine,
                    QFontMetrics(font).elidedText(words, Qt::ElideRight, box.width()));
  painter->restore();
}

class HeadPainter : public QHeaderView {
 public:
  HeadPainter() : QHeaderView(Qt::Horizontal) {
    setSectionsClickable(true);
    setHighlightSections(false);
    setFont(FontOf(Size::Table, true));
  }

 protected:
  void paintSection(QPainter* painter, const QRect& cell, int section) const override {
    painter->fillRect(cell, palette().color(QPalette::Base));
    QString words = model()->headerData(section, Qt::Horizontal, Qt::DisplayRole).toString();
    if (isSortIndicatorShown() && sortIndicatorSection() == section)
      words += sortIndicatorOrder() == Qt::AscendingOrder ? QString(" \u25B4") : QString(" \u25BE");
    PaintWords(painter, cell, words, Qt::Alignment(model()->headerData(section, Qt::Horizontal, Qt::TextAlignmentRole).toInt()), font(),
               ColorOf(Use::Text));
    painter->setPen(ColorOf(Use::Quiet));
    painter->drawLine(cell.bottomLeft(), cell.bottomRight());
  }
};

class CellPainter : public QStyledItemDelegate {
 public:
  explicit CellPainter(const RowView* view) : QStyledItemDelegate(const_cast<RowView*>(view)), view_(view) {}

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    const auto* bar = static_cast<const PieceBar*>(index.data(RowTable::kBar).value<const void*>());
    if (!bar) {
      QStyleOptionViewItem cell = option;
      initStyleOption(&cell, index);
      const QString text = cell.text;
      cell.text.clear();
      view_->style()->drawControl(QStyle::CE_ItemViewItem, &cell, painter, view_->table());
      const int shift = view_->PointShift(index.column(), text);
      PaintWords(painter, option.rect.adjusted(0, 0, -shift, 0), text, cell.displayAlignment, cell.font,
                 cell.palette.color(cell.state.testFlag(QStyle::State_Selected) ? QPalette::HighlightedText : QPalette::Text));
    } else {
      painter->save();
      painter->setRenderHint(QPainter::Antialiasing);
      BarView bars = TableCellView(option.rect.x() + kInside, option.rect.y() + (option.rect.height() - 18) / 2.0,
                                   option.rect.width() - 2 * kInside, std::max(view_->full_length(), bar->length));
      bars.scheme = CurrentScheme();
      bars.symbol = false;
      PaintPieceBar(*painter, *bar, bars);
      painter->restore();
    }
    painter->setPen(ColorOf(Use::Hairline));
    painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
  }

  // What is cut short is said whole.
  bool helpEvent(QHelpEvent* event, QAbstractItemView* view, const QStyleOptionViewItem& option, const QModelIndex& index) override {
    const QString words = index.data().toString();
    if (event->type() != QEvent::ToolTip || QFontMetrics(view->font()).horizontalAdvance(words) <= option.rect.width() - 2 * kPad)
      return QStyledItemDelegate::helpEvent(event, view, option, index);
    QToolTip::showText(event->globalPos(), words, view);
    return true;
  }

 private:
  const RowView* view_;
};

// Behind the point; -1: no plain number.
int DecimalsOf(const QString& words) {
  bool number = false;
  words.toDouble(&number);
  if (!number) return -1;
  const qsizetype point = words.indexOf('.');
  return point < 0 ? 0 : static_cast<int>(words.size() - point - 1);
}

// Where there is too little room the longest words give way, never a figure.
void Narrow(std::vector<int>& wide, const std::vector<TableColumn>& columns, int room, int least) {
  for (int over = std::accumulate(wide.begin(), wide.end(), 0) - room; over > 0;) {
    std::size_t widest = columns.size();
    for (std::size_t i = 1; i < columns.size(); ++i)  // the first names the row
      if (!columns[i].number && wide[i] > least && (widest == columns.size() || wide[i] > wide[widest])) widest = i;
    if (widest == columns.size()) return;
    const int less = std::min(over, std::max(1, (wide[widest] - least + 1) / 2));
    wide[widest] -= less;
    over -= less;
  }
}

}  // namespace

RowView::RowView(RowTable* table, const QString& empty_words, QWidget* parent)
    : QWidget(parent), rows_(table), empty_words_(empty_words), filter_(new QLineEdit), view_(new QTableView),
      count_(new PlainWords(FontOf(Size::Table), Use::Quiet)) {
  auto* down = Down(this);
  auto* top = new QHBoxLayout;
  filter_->setPlaceholderText(tr("show only rows with these words"));
  filter_->setAccessibleName(tr("filter"));
  filter_->setClearButtonEnabled(true);
  filter_->setFixedWidth(std::max(240, filter_->fontMetrics().horizontalAdvance(filter_->placeholderText()) + 40));
  top->addWidget(filter_);
  top->addWidget(count_, 1);
  down->addLayout(top);
  view_->setHorizontalHeader(new HeadPainter);
  view_->setModel(rows_);
  view_->setItemDelegate(new CellPainter(this));
  view_->setFont(FontOf(Size::Table));
  view_->setShowGrid(false);
  view_->setFrameShape(QFrame::NoFrame);
  view_->setSortingEnabled(true);
  view_->horizontalHeader()->setSortIndicator(-1, Qt::AscendingOrder);
  view_->setSelectionBehavior(QAbstractItemView::SelectRows);
  view_->setSelectionMode(QAbstractItemView::SingleSelection);
  view_->setTabKeyNavigation(false);
  view_->setWordWrap(false);
  view_->verticalHeader()->hide();
  view_->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  view_->verticalHeader()->setDefaultSectionSize(std::max(26, QFontMetrics(view_->font()).height() + kInside));
  view_->horizontalHeader()->setStretchLastSection(true);
  view_->viewport()->installEventFilter(this);
  view_->installEventFilter(this);
  down->addWidget(view_, 1);
  FitColumns();
  connect(view_->horizontalHeader(), &QHeaderView::sectionResized, this, [this] {
    if (!fitting_ && QGuiApplication::mouseButtons() != Qt::NoButton) own_widths_ = true;
  });
  connect(rows_, &QAbstractItemModel::modelReset, this, &RowView::WidenColumns);
  connect(rows_, &QAbstractItemModel::rowsInserted, this, &RowView::WidenColumns);
  connect(filter_, &QLineEdit::textChanged, rows_, &RowTable::SetFilter);
  connect(rows_, &QAbstractItemModel::modelReset, this, &RowView::Count);
  connect(rows_, &QAbstractItemModel::layoutChanged, this, &RowView::Count);
  connect(rows_, &QAbstractItemModel::rowsInserted, this, &RowView::Count);
  connect(view_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this](const QModelIndex& now) {
    if (now.isValid()) emit Chosen(now.data(RowTable::kKey).toString());
  });
  connect(view_, &QTableView::doubleClicked, this, [this](const QModelIndex& at) { emit Opened(at.data(RowTable::kKey).toString()); });
  auto* keep = new QShortcut(Qt::CTRL | Qt::Key_E, this);
  keep->setContext(Qt::WidgetWithChildrenShortcut);
  connect(keep, &QShortcut::activated, this, &RowView::KeepAsCsv);
  Count();
}

void RowView::SetCount(std::function<QString()> words) {
  count_words_ = std::move(words);
  Count();
}

void RowView::Count() {
  count_->setText(count_words_ ? count_words_() : tr("%n row(s)", nullptr, rows_->rowCount()));
  view_->viewport()->update();
}

void RowView::FitColumns() {
  own_widths_ = false;
  WidenColumns();
}

int RowView::PointShift(int column, const QString& number) const {
  const int most = decimals_.empty() ? 0 : decimals_[static_cast<std::size_t>(column)], has = DecimalsOf(number);
  if (most == 0 || has < 0) return 0;
  return QFontMetrics(view_->font()).horizontalAdvance((has == 0 ? "." : "") + QString(most - has, '0'));
}

void RowView::WidenColumns() {
  const auto& columns = rows_->columns();
  decimals_.assign(columns.size(), 0);
  for (std::size_t i = 0; i < columns.size(); ++i)
    for (int row = 0; columns[i].number && row < std::min(kMeasured, rows_->rowCount()); ++row)
      if (i < rows_->At(row).cells.size()) decimals_[i] = std::max(decimals_[i], DecimalsOf(rows_->At(row).cells[i].text));
  if (own_widths_) return;
  const QFontMetrics letters(view_->font()), head(view_->horizontalHeader()->font());
  std::vector<int> said, needed;
  for (std::size_t i = 0; i < columns.size(); ++i) {
    int wide = head.horizontalAdvance(columns[i].head);
    for (int row = 0; row < std::min(kMeasured, rows_->rowCount()); ++row)
      if (i < rows_->At(row).cells.size())
        wide = std::max(
            wide, letters.horizontalAdvance(rows_->At(row).cells[i].text) + PointShift(static_cast<int>(i), rows_->At(row).cells[i].text));
    said.push_back(columns[i].width * letters.horizontalAdvance('0') + 2 * kPad);
    needed.push_back(columns[i].bar ? said.back() : wide + 2 * kPad + 2);
  }
  std::vector<int> wide;
  std::ranges::transform(said, needed, std::back_inserter(wide), [](int a, int b) { return std::max(a, b); });
  const int room = view_->viewport()->width();
  if (std::accumulate(wide.begin(), wide.end(), 0) > room) {
    wide = needed;
    Narrow(wide, columns, room, kNarrowest * letters.horizontalAdvance('0') + 2 * kPad);
  }
  fitting_ = true;
  for (std::size_t i = 0; i < wide.size(); ++i) view_->setColumnWidth(static_cast<int>(i), wide[i]);
  fitting_ = false;
}

QString RowView::chosen() const {
  return view_->currentIndex().isValid() ? view_->currentIndex().data(RowTable::kKey).toString() : QString();
}

void RowView::Choose(const QString& key) {
  const int row = rows_->RowOf(key);
  if (row >= 0) view_->setCurrentIndex(rows_->index(row, 0));
}

bool RowView::eventFilter(QObject* watched, QEvent* event) {
  if (watched == view_ && event->type() == QEvent::KeyPress) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    if ((key == Qt::Key_Return || key == Qt::Key_Enter) && view_->currentIndex().isValid()) {
      emit Opened(chosen());
      return true;
    }
  }
  if (watched == view_->viewport() && event->type() == QEvent::Resize) WidenColumns();
  if (watched == view_->viewport() && event->type() == QEvent::Paint && rows_->rowCount() == 0) {
    QPainter painter(view_->viewport());
    painter.setPen(ColorOf(Use::Quiet));
    painter.setFont(FontOf(Size::Body));
    painter.drawText(view_->viewport()->rect().adjusted(kInside, kInside, -kInside, -kInside),
                     Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, rows_->all() == 0 ? empty_words_ : tr("No row has these words."));
    return true;
  }
  return QWidget::eventFilter(watched, event);
}

void RowView::KeepAsCsv() {
  const QString file = QFileDialog::getSaveFileName(this, tr("Keep as CSV"), {}, "CSV (*.csv)");
  if (file.isEmpty()) return;
  Table table{.name = "rows", .columns = {}, .rows = {}};
  for (const TableColumn& column : rows_->columns()) table.columns.push_back({.head = column.head.toStdString()});
  for (int i = 0; i < rows_->rowCount(); ++i) {
    table.rows.emplace_back();
    for (const TableCell& cell : rows_->At(i).cells) table.rows.back().emplace_back(cell.text.toStdString());
  }
  try {
    WriteTableCsv(file.toStdString(), table);
  } catch (const std::exception& error) { QMessageBox::warning(this, tr("Not kept"), error.what()); }
}

}  // namespace heatkeep
