#include "client/stations/next_best.h"

#include "client/models/qt_words.h"
#include "client/stations/plan_words.h"

namespace heatkeep {

NextBest::NextBest(QWidget* parent) : WaitingList(parent) {
  setAccessibleName(tr("what else would do"));
  setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  connect(this, &QListWidget::itemActivated, this, [this] { emit Wanted(chosen()); });
}

void NextBest::ShowOf(const planning::DraftPiece& piece, ReadingUnits units) {
  std::vector<WaitingEntry> entries;
  const std::vector<NextWords> next = NextBestWords(piece, units);
  for (std::size_t i = 0; i < next.size(); ++i)
    entries.push_back({.key = Q(piece.next[i].tag),
                       .title = QString("%1  %2").arg(i + 1).arg(Q(piece.next[i].tag)),
                       .below = next[i].becomes,
                       .right = next[i].where,
                       .mono = true});
  Show(entries, tr("Nothing else that is free holds its cuts."));
  int height = entries.empty() ? QFontMetrics(font()).height() * 2 + 16 : 2;
  for (int i = 0; i < count(); ++i) height += sizeHintForRow(i);
  setFixedHeight(height);
}

QString NextBest::TagAt(const QPoint& at) const {
  const int row = indexAt(at).row();
  return row >= 0 && row < static_cast<int>(entries().size()) ? entries()[static_cast<std::size_t>(row)].key : QString();
}

}  // namespace heatkeep
