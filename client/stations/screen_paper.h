// What stands on a screen as parts of a page (reports/screen_page.h), and the page as a desk's paper.
#pragma once

#include <QWidget>

#include "client/models/paper_output.h"
#include "client/models/row_table.h"
#include "client/stations/plan_bars.h"
#include "client/stations/waiting_list.h"
#include "reports/screen_page.h"

namespace heatkeep {

PagePart WordsPart(const QString& head, const QString& words);   // a paragraph a line
PagePart TablePart(const QString& head, const RowTable& table);  // the rows shown, in their order
PagePart WaitingPart(const QString& head, const WaitingList& list);
std::vector<PagePart> BarParts(const std::vector<PlanBarGroup>& groups);
// As the widget paints itself, in the light scheme.
PagePart DrawnPart(const QString& head, QWidget& widget);

// A page in the reader's units, with the words for what is left.
ScreenPage PageOf(const QString& what, const QString& subject, const ReadingUnits& units);

// `kind` begins the file's name.
DeskPaper PaperOf(const QString& kind, ScreenPage page);

}  // namespace heatkeep
