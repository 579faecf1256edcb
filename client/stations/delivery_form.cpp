#include "client/stations/delivery_form.h"

#include <QCompleter>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QStringListModel>
#include <QVBoxLayout>
#include <algorithm>
#include <initializer_list>

#include "client/models/device_words.h"
#include "client/stations/desk_look.h"
#include "client/stations/titled_field.h"

namespace heatkeep {
namespace {

QStringList Strings(const std::vector<std::string>& names) {
  QStringList all;
  for (const std::string& name : names) all.append(QString::fromStdString(name));
  return all;
}

// The names of all of them in columns of one width, so that the fields stand under each other.
void AlignNames(std::initializer_list<QGridLayout*> grids) {
  for (const int column : {0, 2}) {
    int wide = 0;
    for (QGridLayout* grid : grids)
      for (int row = 0; row < grid->rowCount(); ++row)
        if (const QLayoutItem* name = grid->itemAtPosition(row, column)) wide = std::max(wide, name->sizeHint().width());
    for (QGridLayout* grid : grids) {
      grid->setColumnMinimumWidth(column, wide);
      grid->setColumnStretch(column + 1, 1);
    }
  }
}

}  // namespace

DeliveryForm::DeliveryForm(QWidget* parent)
    : QWidget(parent), parties_(new QStringListModel(this)), grades_(new QStringListModel(this)), places_(new QStringListModel(this)) {
  auto* down = Down(this);
  auto* head = new QGridLayout;
  head->setSpacing(kInside);
  note_ = Field(head, 0, 0, tr("Delivery note"));
  supplier_ = Field(head, 0, 1, tr("Supplier"));
  down->addLayout(head);
  down->addSpacing(kInside);
  auto* read = new QHBoxLayout;
  read->setSpacing(kInside);
  Under(tr("Bars counted"), count_ = new QLineEdit, 2, read);
  Under(tr("Note says"), slip_count_ = new QLineEdit, 2, read);
  Under(tr("Heat as read"), heat_ = new QLineEdit, 5, read);
  Under(tr("Read from"), read_from_ = new QComboBox, 3, read);
  weighed_words_ = Under(tr("Weighed kg"), weighed_ = new QLineEdit, 3, read);
  down->addLayout(read);
  for (QLineEdit* big : {count_, heat_, weighed_}) big->setFont(MonoOf(Size::SawBody, true));
  slip_count_->setFont(MonoOf(Size::SawBody));
  for (QWidget* big : std::initializer_list<QWidget*>{count_, slip_count_, heat_, weighed_, read_from_}) big->setFixedHeight(44);
  slip_count_->setFocusPolicy(Qt::StrongFocus);
  read_from_->addItem(tr("metal"), "metal");
  read_from_->addItem(tr("mill's tag"), "tag");
  read_from_->addItem(tr("cannot be read"), "none");
  read_from_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  down->addSpacing(kInside);
  auto* grid = new QGridLayout;
  grid->setHorizontalSpacing(kInside);
  grid->setVerticalSpacing(kInside);
  grade_ = Field(grid, 0, 0, tr("Grade"), tr("as marked"));
  section_ = Field(grid, 0, 1, tr("Section"), tr("round 80, round 2 in"));
  length_ = Field(grid, 1, 0, tr("Length mm"), tr("of one bar, measured"));
  length_words_ = qobject_cast<QLabel*>(grid->itemAtPosition(1, 0)->widget());
  condition_ = Field(grid, 1, 1, tr("Condition"), tr("as rolled, +QT"));
  mill_ = Field(grid, 2, 0, tr("Mill"), tr("who made it"));
  papers_ = Choice(grid, 2, 1, tr("Papers"), {{tr("awaited"), true}, {tr("none come with it"), false}});
  slip_heat_ = Field(grid, 3, 0, tr("Heat on note"), tr("where it says one"));
  slip_heat_->setObjectName("heat on note");
  bundle_ = Field(grid, 3, 1, tr("Bundle"), tr("name on the strap"));
  down->addLayout(grid);
  down->addWidget(more_ = BuildMore());
  AlignNames({head, grid, qobject_cast<QGridLayout*>(more_->layout())});
  Offer(supplier_, parties_);
  Offer(mill_, parties_);
  Offer(owner_, parties_);
  Offer(grade_, grades_);
  Offer(place_, places_);
  connect(read_from_, &QComboBox::currentIndexChanged, this, [this] {
    heat_->setEnabled(read_from_->currentData() != "none");
    emit Edited();
  });
  for (QLineEdit* field : {count_, slip_count_, heat_, weighed_}) connect(field, &QLineEdit::textEdited, this, &DeliveryForm::Edited);
  connect(note_, &QLineEdit::returnPressed, this, [this] { supplier_->text().isEmpty() ? supplier_->setFocus() : count_->setFocus(); });
  connect(supplier_, &QLineEdit::returnPressed, this, [this] { count_->setFocus(); });
  connect(count_, &QLineEdit::returnPressed, this, [this] { heat_->isEnabled() ? heat_->setFocus() : weighed_->setFocus(); });
  connect(heat_, &QLineEdit::returnPressed, this, [this] { weighed_->setFocus(); });
  connect(weighed_, &QLineEdit::returnPressed, this, &DeliveryForm::LineRead);
  // by Tab as the hands go
  QWidget* before = supplier_;
  for (QWidget* next :
       std::initializer_list<QWidget*>{count_, heat_, weighed_, slip_count_, read_from_, grade_, section_, length_, condition_, mill_,
                                       papers_, slip_heat_, bundle_, place_, measured_with_, owner_, owner_ref_, ends_, mark_}) {
    setTabOrder(before, next);
    before = next;
  }
}

QLineEdit* DeliveryForm::Field(QGridLayout* grid, int row, int column, const QString& words, const QString& example) {
  auto* label = new QLabel(words);
  auto* field = new QLineEdit;
  label->setBuddy(field);
  field->setAccessibleName(words);
  field->setPlaceholderText(example);
  field->setMinimumHeight(32);
  grid->addWidget(label, row, 2 * column);
  grid->addWidget(field, row, 2 * column + 1);
  connect(field, &QLineEdit::textEdited, this, &DeliveryForm::Edited);
  return field;
}

QComboBox* DeliveryForm::Choice(QGridLayout* grid, int row, int column, const QString& words,
                                const std::vector<std::pair<QString, QVariant>>& choices) {
  auto* label = new QLabel(words);
  auto* box = new QComboBox;
  for (const auto& [name, value] : choices) box->addItem(name, value);
  label->setBuddy(box);
  box->setAccessibleName(words);
  box->setMinimumHeight(32);
  box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  grid->addWidget(label, row, 2 * column);
  grid->addWidget(box, row, 2 * column + 1);
  connect(box, &QComboBox::currentIndexChanged, this, &DeliveryForm::Edited);
  return box;
}

QWidget* DeliveryForm::BuildMore() {
  auto* more = new QWidget;
  auto* grid = new QGridLayout(more);
  grid->setContentsMargins(0, kInside, 0, 0);
  grid->setHorizontalSpacing(kInside);
  grid->setVerticalSpacing(kInside);
  place_ = Field(grid, 0, 0, tr("Laid at"), tr("the gate"));
  measured_with_ = Choice(grid, 0, 1, tr("Measured with"), {{tr("not said"), QString()}});
  owner_ = Field(grid, 1, 0, tr("Owner"), tr("ours"));
  owner_ref_ = Field(grid, 1, 1, tr("Owner's ref."), tr("of a customer's metal"));
  ends_ = Choice(grid, 2, 0, tr("Ends"), {{tr("rough, from the mill"), 0}, {tr("one sawn square"), 1}, {tr("both sawn square"), 2}});
  mark_ = Choice(grid, 2, 1, tr("Mark on the bar"),
                 {{tr("not looked at"), QString("unknown")},
                  {tr("on one end: that is cut last"), QString("last")},
                  {tr("on the end that is cut first"), QString("first")},
                  {tr("on both ends"), QString("both")},
                  {tr("none on the metal"), QString("none")}});
  more->setVisible(false);
  return more;
}

void DeliveryForm::Unfold(bool unfolded) {
  more_->setVisible(unfolded);
  if (unfolded) place_->setFocus();
  else if (more_->isAncestorOf(focusWidget() ? focusWidget() : this)) count_->setFocus();
}

QLabel* DeliveryForm::Under(const QString& words, QWidget* field, int stretch, QHBoxLayout* row) {
  field->setMinimumWidth(64);
  return TitledField(row, words, field, stretch);
}

void DeliveryForm::Offer(QLineEdit* field, QStringListModel* names) {
  auto* completer = new QCompleter(names, field);
  completer->setCaseSensitivity(Qt::CaseInsensitive);
  completer->setFilterMode(Qt::MatchContains);
  field->setCompleter(completer);
  connect(completer, qOverload<const QString&>(&QCompleter::activated), this, &DeliveryForm::Edited);
}

void DeliveryForm::Show(const TypedLine& line) {
  shown_ = line;
  count_->setText(line.count);
  slip_count_->setText(line.slip_count);
  heat_->setText(line.heat);
  slip_heat_->setText(line.slip_heat);
  weighed_->setText(line.weighed);
  grade_->setText(line.grade);
  section_->setText(line.section);
  length_->setText(line.length);
  condition_->setText(line.condition);
  mill_->setText(line.mill);
  owner_->setText(line.owner);
  owner_ref_->setText(line.owner_ref);
  place_->setText(line.place);
  bundle_->setText(line.bundle);
  read_from_->setCurrentIndex(std::max(0, read_from_->findData(line.read_from)));
  papers_->setCurrentIndex(line.papers_awaited ? 0 : 1);
  measured_with_->setCurrentIndex(std::max(0, measured_with_->findData(line.measured_with)));
  ends_->setCurrentIndex(line.square_ends);
  mark_->setCurrentIndex(std::max(0, mark_->findData(line.mark)));
  if (!(line.place + line.owner + line.owner_ref + line.measured_with).trimmed().isEmpty() || line.square_ends != 0 ||
      line.mark != "unknown")
    more_->setVisible(true);
  emit Edited();
}

TypedLine DeliveryForm::line() const {
  TypedLine line = shown_;
  line.count = count_->text();
  line.slip_count = slip_count_->text();
  line.heat = heat_->isEnabled() ? heat_->text() : QString();
  line.slip_heat = slip_heat_->text();
  line.weighed = weighed_->text();
  line.grade = grade_->text();
  line.section = section_->text();
  line.length = length_->text();
  line.condition = condition_->text();
  line.mill = mill_->text();
  line.owner = owner_->text();
  line.owner_ref = owner_ref_->text();
  line.place = place_->text();
  line.bundle = bundle_->text();
  line.read_from = read_from_->currentData().toString();
  line.papers_awaited = papers_->currentData().toBool();
  line.measured_with = measured_with_->currentData().toString();
  line.square_ends = ends_->currentData().toInt();
  line.mark = mark_->currentData().toString();
  return line;
}

void DeliveryForm::SetUnits(const ReadingUnits& units) {
  units_ = units;
  weighed_words_->setText(tr("Weighed %1").arg(units.MassUnitWord()));
  length_words_->setText(tr("Length %1").arg(units.LengthUnitWord()));
}

void DeliveryForm::SetNames(const DoorFacts& facts) {
  parties_->setStringList(Strings(facts.parties));
  places_->setStringList(Strings(facts.places));
  QStringList grades;
  for (const GradeDensityRow& row : facts.grades) grades.append(QString::fromStdString(row.designation));
  grades_->setStringList(grades);
  const QString before = measured_with_->currentData().toString();
  const QSignalBlocker quiet(measured_with_);
  measured_with_->clear();
  measured_with_->addItem(tr("not said: \u00B1%1").arg(units_.Stop(facts.tape_doubt)), QString());
  for (const DeviceRow& device : facts.devices)
    measured_with_->addItem(DeviceWords(device, facts.tape_doubt, units_), QString::fromStdString(device.device));
  measured_with_->setCurrentIndex(std::max(0, measured_with_->findData(before)));
}

void DeliveryForm::Focus(LineField field) {
  QLineEdit* to = nullptr;
  switch (field) {
    case LineField::None: return;
    case LineField::Count: to = count_; break;
    case LineField::SlipCount: to = slip_count_; break;
    case LineField::Heat: to = heat_; break;
    case LineField::Weighed: to = weighed_; break;
    case LineField::Grade: to = grade_; break;
    case LineField::Section: to = section_; break;
    case LineField::Length: to = length_; break;
    case LineField::Mill: to = mill_; break;
  }
  to->setFocus();
  to->selectAll();
}

}  // namespace heatkeep
