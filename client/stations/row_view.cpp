#include "client/stations/row_view.h"

#include <QFileDialog>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QMessageBox>
#include <QPainter>
#include <QShortcut>
#include <QStyledItemDelegate>
#include <QVBoxLayout>

#include "reports/piece_bar.h"
#include "reports/table_csv.h"

namespace heatkeep {
namespace {

class CellPainter : public QStyledItemDelegate {
 public:
  explicit CellPainter(const RowView* view) : QStyledItemDelegate(const_cast<RowView*>(view)), view_(view) {}

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    const auto* bar = static_cast<const PieceBar*>(index.data(RowTable::kBar).value<const void*>());
    if (!bar) {
      QStyledItemDelegate::paint(painter, option, index);
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

 private:
  const RowView* view_;
};

}  // namespace

RowView::RowView(RowTable* table, const QString& empty_words, QWidget* parent)
    : QWidget(parent), rows_(table), empty_words_(empty_words), filter_(new QLineEdit), view_(new QTableView),
      count_(new PlainWords(FontOf(Size::Table), Use::Quiet)) {
  auto* down = Down(this);
  auto* top = new QHBoxLayout;
  filter_->setPlaceholderText(tr("show only rows with these words"));
  filter_->setAccessibleName(tr("filter"));
  filter_->setClearButtonEnabled(true);
  filter_->setFixedWidth(260);
  top->addWidget(filter_);
  top->addWidget(count_, 1);
  down->addLayout(top);
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
  view_->horizontalHeader()->setFont(FontOf(Size::Table, true));
  view_->horizontalHeader()->setHighlightSections(false);
  view_->horizontalHeader()->setStretchLastSection(true);
  view_->viewport()->installEventFilter(this);
  view_->installEventFilter(this);
  down->addWidget(view_, 1);
  FitColumns();
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
  const int letter = QFontMetrics(view_->font()).horizontalAdvance('0');
  const auto& columns = rows_->columns();
  for (std::size_t i = 0; i < columns.size(); ++i) view_->setColumnWidth(static_cast<int>(i), columns[i].width * letter + 2 * kInside);
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
