#include "client/stations/screen_paper.h"

#include <QCoreApplication>
#include <QPainter>

#include "client/stations/desk_look.h"

namespace heatkeep {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(ScreenPaper)
};

}  // namespace

PagePart WordsPart(const QString& head, const QString& words) {
  PagePart part{.head = head.toStdString()};
  for (const QString& line : words.split('\n', Qt::SkipEmptyParts)) part.words.push_back(line.toStdString());
  return part;
}

PagePart TablePart(const QString& head, const RowTable& table) {
  PagePart part{.head = head.toStdString()};
  for (const TableColumn& c : table.columns())
    part.columns.push_back({c.head.toStdString(), static_cast<double>(c.bar ? 24 : c.width), c.number, false, c.bar});
  for (int i = 0; i < table.rowCount(); ++i) {
    PageRow row;
    for (const TableCell& cell : table.At(i).cells) row.texts.push_back(cell.text.toStdString());
    row.bar = table.At(i).bar;
    part.rows.push_back(std::move(row));
  }
  return part;
}

PagePart WaitingPart(const QString& head, const WaitingList& list) {
  PagePart part{.head = head.toStdString(),
                .columns = {{Words::tr("What").toStdString(), 3},
                            {Words::tr("About it").toStdString(), 6},
                            {Words::tr("When, how much").toStdString(), 2, true}}};
  for (const WaitingEntry& entry : list.entries())
    part.rows.push_back({{(entry.section ? "- " + entry.title + " -" : entry.title).toStdString(),
                          QString(entry.below).replace('\n', ' ').toStdString(), entry.right.toStdString()}});
  return part;
}

std::vector<PagePart> BarParts(const std::vector<PlanBarGroup>& groups) {
  std::vector<PagePart> parts;
  for (const PlanBarGroup& group : groups) {
    parts.push_back({.head = group.head.toStdString()});
    for (const PlanBar& bar : group.bars)
      parts.back().bars.push_back({bar.title.toStdString(), bar.beside.toStdString(), bar.right.toStdString(), bar.bar});
  }
  return parts;
}

PagePart DrawnPart(const QString& head, QWidget& widget) {
  PagePart part{.head = head.toStdString()};
  const OnPaper light;
  QPainter painter(&part.drawing);
  widget.render(&painter, {}, {}, QWidget::DrawChildren);
  painter.end();
  part.drawn = widget.size();
  return part;
}

ScreenPage PageOf(const QString& what, const QString& subject, const ReadingUnits& units) {
  ScreenPage page{.what = what.toStdString(), .subject = subject.toStdString(), .parts = {}, .full = {}, .units = units.Ruler()};
  page.keep_word = Words::tr("keep").toStdString();
  page.scrap_word = Words::tr("scrap").toStdString();
  page.empty_words = Words::tr("Nothing to show.").toStdString();
  return page;
}

DeskPaper PaperOf(const QString& kind, ScreenPage page) {
  return {kind, [page = std::move(page)](Connection&, const std::string& file, const PrintOptions& print) {
            WriteScreenPage(file, page, print);
          }};
}

}  // namespace heatkeep
