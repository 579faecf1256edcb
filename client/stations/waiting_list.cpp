#include "client/stations/waiting_list.h"

#include <QPainter>
#include <QResizeEvent>
#include <QStyledItemDelegate>

#include "client/stations/desk_look.h"
#include "client/stations/plain_words.h"

namespace heatkeep {
namespace {

enum Role { kKey = Qt::UserRole + 1, kBelow, kRight, kSign, kMono, kSection };

// One line, or two where one is too narrow; what is longer still is cut short in the second.
QStringList LinesOf(const QString& words, const QFontMetrics& letters, int room) {
  if (words.isEmpty()) return {};
  if (letters.horizontalAdvance(words) <= room) return {words};
  qsizetype end = words.size();
  while (end > 0 && letters.horizontalAdvance(words.left(end)) > room) end = words.lastIndexOf(' ', end - 1);
  if (end <= 0) return {letters.elidedText(words, Qt::ElideRight, room)};
  return {words.left(end).trimmed(), letters.elidedText(words.mid(end).trimmed(), Qt::ElideRight, room)};
}

class EntryPainter : public QStyledItemDelegate {
 public:
  explicit EntryPainter(const QListWidget* list) : QStyledItemDelegate(const_cast<QListWidget*>(list)), list_(list) {}

  QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const override {
    const int title = QFontMetrics(FontOf(Size::Body, true)).height();
    const QFontMetrics below(FontOf(Size::Table));
    if (index.data(kSection).toBool()) return {100, title + 2 * kInside};
    const int sign = static_cast<Sign>(index.data(kSign).toInt()) == Sign::None ? 0 : TitleOf(index).height() + kInside;
    const auto lines = LinesOf(Unbroken(index.data(kBelow).toString()), below, list_->viewport()->width() - 2 * kInside - sign).size();
    return {100, title + static_cast<int>(lines) * below.height() + 2 * kInside};
  }

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    painter->save();
    const bool chosen = option.state.testFlag(QStyle::State_Selected);
    const QColor text = chosen ? ColorOf(Use::Ground) : ColorOf(Use::Text), quiet = chosen ? text : ColorOf(Use::Quiet);
    if (chosen) painter->fillRect(option.rect, ColorOf(Use::Done));
    const QRect box = option.rect.adjusted(kInside, kInside, -kInside, -kInside);
    const bool section = index.data(kSection).toBool();
    const QFontMetrics title = TitleOf(index), below(FontOf(Size::Table));
    const auto sign = static_cast<Sign>(index.data(kSign).toInt());
    int left = box.left();
    if (sign != Sign::None) {
      const QRectF sign_box(left, box.top(), title.height(), title.height());
      if (chosen) {
        painter->setPen(Qt::NoPen);
        painter->setBrush(ColorOf(Use::Ground));
        painter->drawRoundedRect(sign_box.adjusted(-2, -2, 2, 2), 3, 3);
      }
      PaintSign(*painter, sign_box, sign);
      left += title.height() + kInside;
    }
    painter->setFont(FontOf(Size::Table));
    painter->setPen(quiet);
    const QString right = index.data(kRight).toString();
    const int right_width = right.isEmpty() ? 0 : below.horizontalAdvance(right) + kInside;
    painter->drawText(box, Qt::AlignRight | Qt::AlignTop, right);
    painter->setFont(TitleFont(index));
    painter->setPen(section ? quiet : text);
    const int room = box.right() - left - right_width;
    painter->drawText(QRect(left, box.top(), room, title.height()), Qt::AlignLeft | Qt::AlignVCenter,
                      title.elidedText(index.data().toString(), Qt::ElideRight, room));
    painter->setFont(FontOf(Size::Table));
    painter->setPen(quiet);
    int top = box.top() + title.height();
    for (const QString& line : LinesOf(Unbroken(index.data(kBelow).toString()), below, box.right() + 1 - left)) {
      painter->drawText(QRect(left, top, box.right() + 1 - left, below.height()), Qt::AlignLeft | Qt::AlignVCenter, line);
      top += below.height();
    }
    painter->setPen(ColorOf(Use::Hairline));
    painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
    painter->restore();
  }

 private:
  static QFont TitleFont(const QModelIndex& index) {
    const bool section = index.data(kSection).toBool();
    return index.data(kMono).toBool() ? MonoOf(Size::Body, true) : FontOf(section ? Size::Table : Size::Body, true);
  }
  static QFontMetrics TitleOf(const QModelIndex& index) { return QFontMetrics(TitleFont(index)); }

  const QListWidget* list_;
};

}  // namespace

WaitingList::WaitingList(QWidget* parent) : QListWidget(parent) {
  setItemDelegate(new EntryPainter(this));
  setFrameShape(QFrame::NoFrame);
  setVerticalScrollMode(ScrollPerPixel);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setAccessibleName(tr("what waits"));
  connect(this, &QListWidget::currentItemChanged, this, [this](const QListWidgetItem* now) {
    if (now && !signalsBlocked()) emit Chosen(now->data(kKey).toString());
  });
}

void WaitingList::Show(const std::vector<WaitingEntry>& entries, const QString& empty_words) {
  const QString before = chosen();
  const bool quiet = blockSignals(true);
  empty_words_ = empty_words;
  entries_ = entries;
  clear();
  for (const WaitingEntry& entry : entries) {
    auto* item = new QListWidgetItem(entry.title, this);
    item->setData(kKey, entry.key);
    item->setData(kBelow, entry.below);
    item->setData(kRight, entry.right);
    item->setData(kSign, static_cast<int>(entry.sign));
    item->setData(kMono, entry.mono);
    item->setData(kSection, entry.section);
    item->setData(Qt::AccessibleTextRole, QString(entry.title + ", " + entry.below + ", " + entry.right));
    item->setToolTip(entry.below);
    if (entry.section) item->setFlags(Qt::NoItemFlags);
    if (!entry.section && entry.key == before) setCurrentItem(item);
  }
  blockSignals(quiet);
}

void WaitingList::Choose(const QString& key) {
  for (int i = 0; i < count(); ++i)
    if (item(i)->data(kKey).toString() == key && item(i)->flags().testFlag(Qt::ItemIsSelectable)) setCurrentItem(item(i));
}

QString WaitingList::chosen() const { return currentItem() ? currentItem()->data(kKey).toString() : QString(); }

// The keys' entry stands out: QListWidget makes the first one current without showing it.
void WaitingList::focusInEvent(QFocusEvent* event) {
  QListWidget::focusInEvent(event);
  if (currentItem()) currentItem()->setSelected(true);
}

void WaitingList::resizeEvent(QResizeEvent* event) {
  QListWidget::resizeEvent(event);
  if (event->size().width() != event->oldSize().width()) scheduleDelayedItemsLayout();
}

void WaitingList::paintEvent(QPaintEvent* event) {
  QListWidget::paintEvent(event);
  if (count() > 0) return;
  QPainter painter(viewport());
  painter.setPen(ColorOf(Use::Quiet));
  painter.drawText(viewport()->rect().adjusted(kInside, kInside, -kInside, -kInside), Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap,
                   empty_words_);
}

}  // namespace heatkeep
