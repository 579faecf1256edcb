#include "client/stations/document_form.h"

#include <QCompleter>
#include <QFileDialog>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace heatkeep {

DocumentForm::DocumentForm(BookLink& link, DocumentWork& work, QWidget* parent) : QWidget(parent), work_(work) {
  choose_file = [this] {
    return QFileDialog::getOpenFileName(this, tr("The document's file"), {}, tr("Documents (*.pdf *.png *.jpg *.jpeg *.tif *.tiff)"));
  };
  auto* down = Down(this);
  auto* grid = new QGridLayout;
  grid->setHorizontalSpacing(kBetween);
  grid->setVerticalSpacing(kInside / 2);
  file_ = Field(grid, 0, 0, 4, tr("File, as it came from the mill: choose it, drop it on the window, or type it"),
                tr("typed without its file"));
  number_ = Field(grid, 2, 0, 1, tr("Number"), {});
  issuer_ = Field(grid, 2, 1, 1, tr("Issued by"), {});
  issued_ = Field(grid, 2, 2, 1, tr("Date on it"), "2026-03-04");
  type_ = new QComboBox;
  for (const char* type : {"2.1", "2.2", "3.1", "3.2"}) type_->addItem(type);
  type_->setCurrentText("3.1");
  type_->setAccessibleName(tr("type, EN 10204"));
  grid->addWidget(new QLabel(tr("Type, EN 10204")), 2, 3);
  grid->addWidget(type_, 3, 3);
  heat_ = Field(grid, 4, 0, 1, tr("Heat, as the document has it"), {});
  heat_->setFont(MonoOf(Size::Body));
  section_ = Field(grid, 4, 1, 1, tr("Section"), "round 80");
  grade_ = Field(grid, 4, 2, 1, tr("Grade"), "42CrMo4");
  condition_ = Field(grid, 4, 3, 1, tr("Condition"), "+QT");
  analysis_ = Field(grid, 6, 0, 4, tr("Analysis of the heat, mass %"), "C 0.41 Si 0.26 Mn 0.75 P 0.010 S 0.012");
  tests_ = Field(grid, 8, 0, 2, tr("Tests: Rm and Re in MPa, A in %"), "Rm 1028 Re 775 A 16");
  validated_ = Field(grid, 8, 2, 2, tr("Validated by: name, position, for whom"), tr("A. Lund, laboratory, independent"));
  for (int column = 0; column < 4; ++column) grid->setColumnStretch(column, 1);
  down->addLayout(grid);
  down->addSpacing(kInside);
  down->addWidget(sign_ = new SignLine);
  auto* buttons = new QHBoxLayout;
  buttons->setSpacing(kInside);
  buttons->addWidget(file_it_ = new DeedButton(link, {}, tr("File it"), Qt::Key_F1, DeedButton::Weight::Primary));
  buttons->addWidget(choose_ = new DeedButton(link, {}, tr("Choose the file ..."), Qt::Key_F2));
  buttons->addWidget(leave_ = new DeedButton(link, {}, tr("Leave it"), Qt::Key_F3));
  buttons->addStretch(1);
  down->addLayout(buttons);
  down->addWidget(
      file_words_ = new PlainWords(
          FontOf(Size::Table), Use::Quiet,
          tr("Values are compared with the published limits of the grade. That replaces neither the standard nor the judgement of the person responsible.")));
  down->addStretch(1);
  connect(file_it_, &QPushButton::clicked, this, [this] { work_.File(document()); });
  connect(choose_, &QPushButton::clicked, this, [this] {
    if (const QString file = choose_file(); !file.isEmpty()) SetFile(file);
  });
  connect(leave_, &QPushButton::clicked, this, &DocumentForm::Left);
  connect(&work_, &DocumentWork::Shown, this, &DocumentForm::Follow);
}

QLineEdit* DocumentForm::Field(QGridLayout* grid, int row, int column, int span, const QString& words, const QString& example) {
  auto* name = new QLabel(words);
  name->setFont(FontOf(Size::Table));
  auto* field = new QLineEdit;
  field->setPlaceholderText(example);
  field->setAccessibleName(words);
  field->setMinimumHeight(30);
  grid->addWidget(name, row, column, 1, span);
  grid->addWidget(field, row + 1, column, 1, span);
  connect(field, &QLineEdit::returnPressed, this, [this] { focusNextChild(); });
  return field;
}

void DocumentForm::Follow() {
  file_it_->SetWanted(!work_.busy());
  if (issuer_->completer() || work_.issuers().isEmpty()) return;
  for (const auto& [field, names] : {std::pair(issuer_, work_.issuers()), {grade_, work_.grades()}}) {
    auto* offer = new QCompleter(names, field);
    offer->setCaseSensitivity(Qt::CaseInsensitive);
    field->setCompleter(offer);
  }
}

void DocumentForm::Show(const TypedDocument& d) {
  const std::pair<QLineEdit*, QString> fields[]{
      {file_, d.file},         {number_, d.number},   {issuer_, d.issuer},         {issued_, d.issued},
      {heat_, d.heat},         {section_, d.section}, {grade_, d.grade},           {condition_, d.condition},
      {analysis_, d.analysis}, {tests_, d.tests},     {validated_, d.validated_by}};
  for (const auto& [field, text] : fields) field->setText(text);
  type_->setCurrentText(d.type);
  sign_->Clear();
  work_.ReadNames();
  Follow();
  (number_->text().isEmpty() ? number_ : issued_)->setFocus();
}

void DocumentForm::SetFile(const QString& file) {
  file_->setText(file);
  sign_->Say(Sign::Waiting, tr("the file is chosen: what does it say?"));
  number_->setFocus();
}

TypedDocument DocumentForm::document() const {
  return {file_->text().trimmed(), issuer_->text(), number_->text(),    type_->currentText(), issued_->text(), heat_->text(),
          section_->text(),        grade_->text(),  condition_->text(), analysis_->text(),    tests_->text(),  validated_->text()};
}

}  // namespace heatkeep
