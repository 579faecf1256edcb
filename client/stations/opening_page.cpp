#include "client/stations/opening_page.h"

#include <QFileDialog>
#include <QHBoxLayout>
#include <QVBoxLayout>
#include <algorithm>
#include <map>

#include "client/models/qt_words.h"
#include "schema/terms/section.h"

namespace heatkeep {

OpeningPage::OpeningPage(BookLink& link, StartWork& work, const ReadingUnits& units, QWidget* parent)
    : QWidget(parent), work_(work), units_(units), what_(new PlainWords(FontOf(Size::Body))), sign_(new SignLine), table_(Columns()) {
  choose_file = [this] {
    return QFileDialog::getOpenFileName(this, tr("The spreadsheet of what lies there"), {}, tr("Tables (*.xlsx *.ods *.csv)"));
  };
  auto* down = Down(this);
  down->addWidget(what_);
  down->addWidget(sign_);
  down->addWidget(
      rows_ = new RowView(
          &table_,
          tr("No file chosen yet. Choose one, or drop it on this window: every row is shown here with what is wrong with it, and nothing is booked before you say so.")),
      1);
  down->addWidget(row_words_ = new SignLine);
  connect(rows_, &RowView::Chosen, this, &OpeningPage::ShowRow);
  auto* buttons = new QHBoxLayout;
  buttons->setSpacing(kInside);
  buttons->addWidget(book_ = new DeedButton(link, "open_balance", tr("Book the opening balance"), Qt::Key_F4, DeedButton::Weight::Primary));
  buttons->addWidget(choose_ = new DeedButton(link, {}, tr("Choose the spreadsheet ..."), Qt::Key_F2));
  buttons->addWidget(names_ = new DeedButton(link, "define_shop", tr("Enter the new names"), Qt::Key_F3));
  buttons->addStretch(1);
  down->addLayout(buttons);
  connect(book_, &QPushButton::clicked, &work_, &StartWork::Book);
  connect(names_, &QPushButton::clicked, &work_, &StartWork::EnterNames);
  connect(choose_, &QPushButton::clicked, this, [this] {
    if (const QString file = choose_file(); !file.isEmpty()) work_.Look(file);
  });
  connect(&work_, &StartWork::Looked, this, [this] {
    ShowRows();
    Follow();
  });
  connect(&work_, &StartWork::Shown, this, &OpeningPage::Follow);
  Follow();
}

std::vector<TableColumn> OpeningPage::Columns() const {
  return {{tr("Row"), true, 5},
          {tr("Tag"), false, 9},
          {tr("Section"), false, 10},
          {tr("Grade"), false, 13},
          {tr("Length %1").arg(units_.LengthUnitWord()), true, 9},
          {tr("How many"), true, 8},
          {tr("Heat"), false, 10},
          {tr("Place"), false, 7},
          {tr("What is wrong with it"), false, 30}};
}

void OpeningPage::ShowRows() {
  table_.SetColumns(Columns());
  rows_->FitColumns();
  std::vector<TableRow> rows;
  if (work_.look()) {
    const incoming::OpeningLook& look = *work_.look();
    std::map<int, QStringList> heeded;
    for (const intake::FileProblem& warning : look.warnings) heeded[warning.line] << BookWords(warning.wrong);
    for (const intake::FileProblem& p : look.problems) {
      const QString words = p.expected.empty() ? BookWords(p.wrong) : tr("%1; expected %2").arg(BookWords(p.wrong), BookWords(p.expected));
      rows.push_back(
          {QString("bad %1").arg(rows.size()),
           {{p.line > 0 ? QString::number(p.line) : QString(), p.line}, {}, {}, {}, {}, {}, {}, {}, {tr("NOT BOOKED: %1").arg(words)}}});
    }
    for (const intake::OpeningFileRow& r : look.good)
      rows.push_back({QString::number(r.line_in_file),
                      {{QString::number(r.line_in_file), r.line_in_file},
                       {Q(r.old_tag)},
                       {Q(SectionText(r.section))},
                       {Q(r.grade)},
                       {units_.Number(r.length), r.length.nm},
                       {QString::number(r.count), r.count},
                       {Q(r.heat)},
                       {Q(r.place)},
                       {heeded[r.line_in_file].join("; ")}}});
  }
  const auto faulty = std::ranges::find_if(rows, [](const TableRow& row) { return !row.cells.back().text.isEmpty(); });
  const QString first = faulty == rows.end() ? QString() : faulty->key;
  table_.SetRows(std::move(rows));
  row_words_->Clear();
  if (!first.isEmpty()) rows_->Choose(first);
}

void OpeningPage::ShowRow(const QString& key) {
  const int at = table_.RowOf(key);
  if (at < 0) return row_words_->Clear();
  const TableRow& row = table_.At(at);
  const QString wrong = row.cells.back().text, number = row.cells.front().text;
  const QString head = number.isEmpty() ? QString() : tr("Row %1: ").arg(number);
  if (wrong.isEmpty()) row_words_->Say(Sign::Done, head + tr("nothing is wrong with it"));
  else row_words_->Say(key.startsWith("bad ") ? Sign::Refusal : Sign::Warning, head + wrong);
}

void OpeningPage::Follow() {
  const bool looked = work_.look().has_value();
  const std::size_t news = looked ? work_.look()->new_places.size() + work_.look()->new_mills.size() + work_.look()->new_owners.size() : 0;
  names_->setVisible(news > 0);
  names_->SetWanted(!work_.busy());
  choose_->SetWanted(!work_.busy());
  book_->SetWanted(looked && !work_.busy() && !work_.look()->good.empty());
  if (!looked) {
    what_->setText(tr(
        "One row a piece, or alike pieces: XLSX, ODS or CSV, the heads in the first row, in any order.\n"
        "Needed: old_tag (its name in the old list), kind (bar or drop), grade, section (round 80, flat 60 x 20), length (6000, 3.2 m, 13 7/8 in).\n"
        "Where known: heat (as it stands on the metal) with mill, condition, place, count, papers, owner, ends (how many are sawn), doubt, price.\n"
        "A heat is never guessed: a piece without one stays a piece without one."));
    sign_->Clear();
    return;
  }
  const incoming::OpeningLook& look = *work_.look();
  int pieces = 0;
  Length length;
  for (const intake::OpeningFileRow& r : look.good) {
    pieces += r.count;
    length += r.length * r.count;
  }
  what_->setText(tr("%1: %n row(s) can be booked, ", nullptr, static_cast<int>(look.good.size())).arg(Q(look.file.path)) +
                 tr("%n piece(s), %1", nullptr, pieces).arg(units_.Total(length)));
  if (news > 0) {
    QStringList names;
    for (const auto* of : {&look.new_places, &look.new_mills, &look.new_owners})
      for (const std::string& name : *of) names << Q(name);
    const qsizetype shown = 12;
    const QString more = names.size() > shown ? tr(" and %n more", nullptr, static_cast<int>(names.size() - shown)) : QString();
    sign_->Say(
        Sign::Warning,
        tr("%n name(s) are not in the book yet: %1%2. F3 enters them: places as racks, makers, owners. A name that is misspelt is better put right in the file.",
           nullptr, static_cast<int>(names.size()))
            .arg(names.mid(0, shown).join(", "), more));
  } else if (!look.problems.empty()) {
    sign_->Say(
        Sign::Warning,
        tr("%n row(s) are not booked: they stand in front, with what is wrong. Put them right in the file and choose it again, or book the others.",
           nullptr, static_cast<int>(look.problems.size())));
  } else {
    sign_->Say(Sign::Done, tr("every row is as it should be"));
  }
}

}  // namespace heatkeep
