#include "client/stations/gate_words.h"

#include "client/models/qt_words.h"

namespace heatkeep {
namespace {

constexpr int kMostHeats = 3;
constexpr std::size_t kMostOwed = 6;

QString OrDash(const QString& text) { return text.trimmed().isEmpty() ? QString("-") : text.trimmed(); }

}  // namespace

void GateWords::AddNote(QStringList& words, const TypedLine& line, const JudgedLine& judged) const {
  if (line.slip_count.trimmed().isEmpty() && line.slip_heat.trimmed().isEmpty()) return;
  const std::int64_t bars = judged.counted_before + judged.count;
  words << tr("THE NOTE AGAINST THE METAL")
        << tr("bars: note %1, metal %2").arg(OrDash(line.slip_count), bars == 0 ? QString("-") : QString::number(bars))
        << tr("heat: note %1, metal %2").arg(OrDash(line.slip_heat), OrDash(line.heat)) << QString();
}

void GateWords::AddOrdered(QStringList& words, const TypedLine& line) const {
  const ExpectedRow* const row = facts_.Expected(line.order, line.order_line);
  if (!row) return;
  words << tr("ORDERED")
        << tr("%1 x %2 %3 %4, %5").arg(row->ordered).arg(Q(row->section), Q(row->grade), Q(row->condition), units_.Words(row->length))
        << tr("%1 came before; due %2").arg(row->delivered).arg(Q(row->due))
        << (row->papers == "none" ? tr("no papers ordered") : tr("papers ordered: %1").arg(Q(row->papers)));
  if (!row->promised.empty()) words << tr("kept for: %1").arg(BookWords(row->promised));
  words << QString();
}

void GateWords::AddHeat(QStringList& words, const QString& heat) const {
  if (heat.isEmpty()) return;
  words << tr("HEAT %1").arg(heat);
  int found = 0;
  for (const KnownHeatRow& known : facts_.heats)
    if (Q(known.heat) == heat && ++found <= kMostHeats)
      words << tr("in the book: %n bar(s) of %1 %2, %3, note %4 of %5", nullptr, static_cast<int>(known.bars))
                   .arg(Q(known.section), Q(known.grade), Q(known.mill), Q(known.note), Q(known.received_on));
  if (found == 0) words << tr("came never before");
  words << QString();
}

void GateWords::AddOwed(QStringList& words, const QString& supplier, const std::vector<OwedPapersRow>& owed) const {
  if (supplier.isEmpty()) return;
  words << tr("PAPERS AWAITED FROM %1").arg(supplier);
  if (owed.empty()) words << tr("none");
  for (std::size_t i = 0; i < owed.size() && i < kMostOwed; ++i) {
    const QString late = owed[i].days_late > 0 ? tr(", %n day(s) late", nullptr, static_cast<int>(owed[i].days_late)) : QString();
    words << tr("%1  %2, %n piece(s)%3", nullptr, static_cast<int>(owed[i].pieces)).arg(Q(owed[i].heat), Q(owed[i].section), late);
  }
  if (owed.size() > kMostOwed) words << tr("and %n more", nullptr, static_cast<int>(owed.size() - kMostOwed));
  words << QString();
}

QString GateWords::OfLine(const TypedLine& line, const JudgedLine& judged, const QString& supplier,
                          const std::vector<OwedPapersRow>& owed) const {
  QStringList words;
  if (!line.photos.isEmpty()) words << tr("%n photo(s) with this line", nullptr, static_cast<int>(line.photos.size())) << QString();
  AddNote(words, line, judged);
  AddOrdered(words, line);
  AddHeat(words, line.heat.trimmed());
  AddOwed(words, supplier, owed);
  if (judged.Stops())
    words << tr("WHAT WAITS IN QUARANTINE")
          << tr("It is received and tagged, kept apart, and cannot be promised or cut until quality looks at it.") << QString();
  return (words << Reversing()).join('\n');
}

QString GateWords::Reversing() const {
  return tr("A WRONG RECEIPT") + '\n' +
      (may_reverse_ ? tr("Ctrl+Z right after it reverses it, while nothing of it has gone on.")
                    : tr("is reversed by quality, with the reason; nothing is erased."));
}

}  // namespace heatkeep
