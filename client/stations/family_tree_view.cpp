#include "client/stations/family_tree_view.h"

#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <algorithm>
#include <cmath>
#include <tuple>

#include "client/models/qt_words.h"
#include "client/stations/desk_look.h"
#include "reports/sheet_words.h"

namespace heatkeep {
namespace {

constexpr int kStep = 20;    // indentation of one depth
constexpr int kDeepest = 8;  // deeper pieces are not indented further; each says what it came from

int LineHeight(const QFont& font) { return QFontMetrics(font).height(); }

}  // namespace

FamilyTreeView::FamilyTreeView(QWidget* parent) : QAbstractScrollArea(parent) {
  setFrameShape(QFrame::NoFrame);
  setFocusPolicy(Qt::StrongFocus);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setAccessibleName(tr("family tree"));
}

void FamilyTreeView::Show(const std::vector<TraceLine>& lines, ReadingUnits units) {
  units_ = units;
  pieces_.clear();
  full_ = {};
  chosen_ = -1;
  OrderLetters letters;
  for (TreePiece& piece : TreePieces(lines)) {
    Placed placed{.piece = std::move(piece), .bar = {}, .words = {}};
    placed.bar = TreeBar(placed.piece, letters);
    placed.words = TreeWords(placed.piece, letters);
    for (BarRun& run : placed.bar.runs)
      if (run.letter.size() > 2) run.letter = (run.letter == "other" ? tr("other") : BookWords(run.letter)).toStdString();
    full_ = std::max(full_, placed.bar.length);
    if (placed.piece.piece.depth > 0 && !pieces_.empty()) {
      const TraceLine &now = placed.piece.piece, &before = pieces_.back().piece.piece;
      placed.same_metal =
          std::tie(now.heat, now.mill, now.section, now.grade) == std::tie(before.heat, before.mill, before.section, before.grade);
    }
    pieces_.push_back(std::move(placed));
  }
  Arrange();
}

int FamilyTreeView::IndentOf(const Placed& placed) const { return std::min(placed.piece.piece.depth, kDeepest) * kStep; }

BarView FamilyTreeView::ViewOf(const Placed& placed, double y) const {
  int deepest = 0;
  for (const Placed& p : pieces_) deepest = std::max(deepest, IndentOf(p));
  BarView view = StationView(IndentOf(placed) + kInside, y, viewport()->width() - deepest - 2 * kInside, full_);
  view.scheme = CurrentScheme();
  view.symbol = false;
  view.bar_height = 24;
  view.text = QFontInfo(FontOf(Size::Table)).pixelSize();
  view.units = units_.Ruler();
  view.ruler = &placed == pieces_.data();  // one scale for all of them
  view.keep_word = tr("left").toStdString();
  return view;
}

void FamilyTreeView::Arrange() {
  int y = 0;
  const int head = LineHeight(MonoOf(Size::Body, true)), line = LineHeight(FontOf(Size::Table));
  for (Placed& placed : pieces_) {
    placed.top = y;
    placed.height = 2 * kInside + head + static_cast<int>(std::ceil(PieceBarHeight(placed.bar, ViewOf(placed, 0)))) +
        line * static_cast<int>(placed.words.size());
    y += placed.height;
  }
  verticalScrollBar()->setPageStep(viewport()->height());
  verticalScrollBar()->setSingleStep(40);
  verticalScrollBar()->setRange(0, std::max(0, y - viewport()->height()));
  viewport()->update();
}

void FamilyTreeView::paintEvent(QPaintEvent*) {
  QPainter painter(viewport());
  painter.setRenderHint(QPainter::Antialiasing);
  if (pieces_.empty()) {
    painter.setPen(ColorOf(Use::Quiet));
    painter.drawText(viewport()->rect().adjusted(kInside, kInside, -kInside, -kInside), Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap,
                     tr("Its family tree stands here: every piece to one scale under the piece it came from, and where it is now."));
    return;
  }
  const int scrolled = verticalScrollBar()->value(), bottom = scrolled + viewport()->height();
  const QFont tag_font = MonoOf(Size::Body, true), small = FontOf(Size::Table);
  const int head = LineHeight(tag_font), line = LineHeight(small);
  for (std::size_t i = 0; i < pieces_.size(); ++i) {
    const Placed& placed = pieces_[i];
    if (placed.top + placed.height < scrolled || placed.top > bottom) continue;
    const TraceLine& piece = placed.piece.piece;
    const int y = placed.top - scrolled, left = IndentOf(placed) + kInside, right = viewport()->width() - kInside;
    if (static_cast<int>(i) == chosen_) painter.fillRect(0, y, 4, placed.height - kInside, ColorOf(Use::Done));
    painter.setPen(ColorOf(Use::Text));
    painter.setFont(tag_font);
    painter.drawText(left, y + head, Q(piece.name));
    const int after_tag = left + QFontMetrics(tag_font).horizontalAdvance(Q(piece.name)) + kBetween;
    painter.setFont(FontOf(Size::Table, piece.held));
    const QString where = (piece.held ? tr("HELD, ") : QString()) + BookWords(piece.where_now);
    const int where_width = std::min(QFontMetrics(painter.font()).horizontalAdvance(where) + 2, (right - after_tag) * 2 / 3);
    painter.setPen(ColorOf(piece.held ? Use::Refusal : Use::Text));
    painter.drawText(QRect(right - where_width, y, where_width, head + 4), Qt::AlignRight | Qt::AlignBottom,
                     QFontMetrics(painter.font()).elidedText(where, Qt::ElideRight, where_width));
    painter.setFont(small);
    painter.setPen(ColorOf(Use::Quiet));
    QString about = tr("%1 of %2").arg(BookWords(piece.what), units_.Words(piece.length, Rounding::Down));
    if (!piece.parent.empty()) about += tr(" from %1").arg(Q(piece.parent));
    if (!piece.heat.empty() && !placed.same_metal) about += tr(", heat %1 %2").arg(Q(HeatInGroups(piece.heat)), Q(piece.mill));
    if (!placed.same_metal) about += QString(", %1 %2").arg(Q(piece.section), Q(piece.grade));
    const int about_width = right - where_width - kBetween - after_tag;
    painter.drawText(QRect(after_tag, y, about_width, head + 4), Qt::AlignLeft | Qt::AlignBottom,
                     QFontMetrics(small).elidedText(about, Qt::ElideRight, about_width));
    int at = y + head + kInside;
    at += static_cast<int>(std::ceil(PaintPieceBar(painter, placed.bar, ViewOf(placed, at))));
    painter.setFont(small);
    painter.setPen(ColorOf(Use::Text));
    for (const std::string& words : placed.words)
      painter.drawText(QRect(left, at, right - left, line), Qt::AlignLeft,
                       QFontMetrics(small).elidedText(BookWords(words), Qt::ElideRight, right - left)),
          at += line;
  }
}

void FamilyTreeView::resizeEvent(QResizeEvent*) { Arrange(); }

void FamilyTreeView::Choose(int piece) {
  if (pieces_.empty()) return;
  chosen_ = std::clamp(piece, 0, pieces() - 1);
  const Placed& placed = pieces_[static_cast<std::size_t>(chosen_)];
  QScrollBar* const bar = verticalScrollBar();
  if (placed.top < bar->value()) bar->setValue(placed.top);
  if (placed.top + placed.height > bar->value() + viewport()->height()) bar->setValue(placed.top + placed.height - viewport()->height());
  setAccessibleDescription(Q(placed.piece.piece.name) + ", " + BookWords(placed.piece.piece.where_now));
  viewport()->update();
}

int FamilyTreeView::At(int y) const {
  const int at = y + verticalScrollBar()->value();
  for (std::size_t i = 0; i < pieces_.size(); ++i)
    if (at >= pieces_[i].top && at < pieces_[i].top + pieces_[i].height) return static_cast<int>(i);
  return -1;
}

void FamilyTreeView::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_Down: Choose(chosen_ + 1); break;
    case Qt::Key_Up: Choose(chosen_ - 1); break;
    case Qt::Key_Return:
    case Qt::Key_Enter:
      if (chosen_ >= 0) emit Opened(Q(pieces_[static_cast<std::size_t>(chosen_)].piece.piece.name));
      break;
    default: QAbstractScrollArea::keyPressEvent(event);
  }
}

void FamilyTreeView::mousePressEvent(QMouseEvent* event) {
  if (const int at = At(static_cast<int>(event->position().y())); at >= 0) Choose(at);
}

void FamilyTreeView::mouseDoubleClickEvent(QMouseEvent* event) {
  if (const int at = At(static_cast<int>(event->position().y())); at >= 0)
    emit Opened(Q(pieces_[static_cast<std::size_t>(at)].piece.piece.name));
}

}  // namespace heatkeep
