// The gate on paper: the note as it was read from the metal, or, when bars are to be put away, all that stands at the gate with its tags.
#include "client/models/qt_words.h"
#include "client/stations/receiving_station.h"
#include "client/stations/screen_paper.h"
#include "reports/sheet_words.h"

namespace heatkeep {
namespace {

PagePart TagsPart(const QString& head, const std::vector<GateGroup>& gate, const ReadingUnits& units) {
  PagePart part{.head = head.toStdString(),
                .columns = {{ReceivingStation::tr("Tag").toStdString(), 3, false, true},
                            {ReceivingStation::tr("Heat").toStdString(), 3, false, true},
                            {ReceivingStation::tr("Section").toStdString(), 3},
                            {ReceivingStation::tr("Grade").toStdString(), 3},
                            {ReceivingStation::tr("Length %1").arg(units.LengthUnitWord()).toStdString(), 2, true},
                            {ReceivingStation::tr("Place").toStdString(), 2},
                            {ReceivingStation::tr("To be heeded").toStdString(), 5}}};
  for (const GateGroup& group : gate)
    for (const std::string& tag : group.tags)
      part.rows.push_back({{tag, HeatInGroups(group.first.heat), group.first.section, group.first.grade,
                            units.Number(group.first.length, Rounding::Down).toStdString(), group.first.place,
                            BookWords(group.first.blocked).toStdString()}});
  return part;
}

}  // namespace

DeskPaper ReceivingStation::Paper() {
  ScreenPage page =
      PageOf(tr("Receiving"),
             work_.note.number.isEmpty() ? tr("at the gate") : tr("note %1 of %2").arg(work_.note.number, work_.note.supplier), units());
  if (!work_.lines().empty()) {
    PagePart lines{.head = tr("Read from the metal").toStdString(),
                   .columns = {{tr("Order").toStdString(), 3},
                               {tr("Bars").toStdString(), 1, true},
                               {tr("Heat").toStdString(), 3, false, true},
                               {tr("Section").toStdString(), 3},
                               {tr("Grade").toStdString(), 3},
                               {tr("Length").toStdString(), 2, true},
                               {tr("Weighed").toStdString(), 2, true},
                               {tr("To be heeded").toStdString(), 5}}};
    for (const ReadLine& line : work_.lines()) {
      QStringList remarks;
      for (const Remark& remark : line.judged.remarks)
        if (remark.kind != Remark::Kind::Fine) remarks << remark.words;
      const TypedLine& t = line.typed;
      PageRow row;
      for (const QString& text : {t.order.isEmpty() ? tr("not ordered") : t.order + '/' + t.order_line, t.count, t.heat, t.section, t.grade,
                                  t.length, t.weighed, remarks.join("; ")})
        row.texts.push_back(text.toStdString());
      lines.rows.push_back(std::move(row));
    }
    page.parts.push_back(std::move(lines));
  }
  if (!work_.gate().empty()) page.parts.push_back(TagsPart(tr("At the gate, to be put away"), work_.gate(), units()));
  page.parts.push_back(WaitingPart(tr("What is awaited"), *waiting_));
  return PaperOf("receiving", std::move(page));
}

}  // namespace heatkeep
