#include "client/stations/settings_page.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>

#include "client/gateway/readings.h"
#include "client/models/device_words.h"
#include "client/stations/desk_look.h"

namespace heatkeep {

SettingsPage::SettingsPage(Desk& desk, QWidget* parent) : QDialog(parent), before_(desk.settings) {
  using LengthAs = ReadingUnits::LengthAs;
  using MassAs = ReadingUnits::MassAs;
  using Look = DeskSettings::Look;
  setWindowTitle(tr("Settings of this desk"));
  setMinimumWidth(640);
  choose_path = [this](const QString& head, bool folder) {
    return folder ? QFileDialog::getExistingDirectory(this, head)
                  : QFileDialog::getSaveFileName(this, head, {}, {}, nullptr, QFileDialog::DontConfirmOverwrite);
  };
  auto* form = new QFormLayout(this);
  form->setContentsMargins(kAround, kAround, kAround, kAround);
  form->setSpacing(kInside);
  setMinimumWidth(720);
  lengths_ = Choice(form, tr("Lengths in"),
                    {{tr("millimetres"), int(LengthAs::Mm)},
                     {tr("inches with fractions"), int(LengthAs::InchFraction)},
                     {tr("inches with decimals"), int(LengthAs::InchDecimal)}},
                    int(before_.units.length));
  masses_ = Choice(form, tr("Masses in"), {{tr("kilograms"), int(MassAs::Kg)}, {tr("pounds"), int(MassAs::Lb)}}, int(before_.units.mass));
  look_ =
      Choice(form, tr("Look"), {{tr("as the system"), int(Look::System)}, {tr("light"), int(Look::Light)}, {tr("dark"), int(Look::Dark)}},
             int(before_.look));
  std::vector<std::pair<QString, QVariant>> scales;
  for (const int percent : {75, 100, 125, 150, 175, 200, 250, 300}) scales.emplace_back(tr("%1 %").arg(percent), percent);
  scale_ = Choice(form, tr("Size of all that is shown (from the next start)"), scales, before_.scale);
  language_ = Choice(form, tr("Language (from the next start)"),
                     {{tr("as the system"), QString()}, {"English", QString("en")}, {"Deutsch", QString("de")}}, before_.language);
  saw_ = Choice(form, tr("This desk stands at saw"), {{tr("none"), QString()}}, QString());
  if (!before_.saw.isEmpty()) {
    saw_->addItem(before_.saw, before_.saw);
    saw_->setCurrentIndex(1);
  }
  desk.link.Ask(
      this, [](Connection& book) { return ReadNames(book, "saws", "saw"); },
      [this](const std::vector<std::string>& saws) {
        for (const std::string& saw : saws) {
          const QString name = QString::fromStdString(saw);
          if (saw_->findData(name) < 0) saw_->addItem(name, name);
        }
      });
  measured_with_ = Choice(form, tr("Lengths are read with"), {{tr("not said"), QString()}}, QString());
  if (!before_.measured_with.isEmpty()) {
    measured_with_->addItem(before_.measured_with, before_.measured_with);
    measured_with_->setCurrentIndex(1);
  }
  desk.link.Ask(
      this, [](Connection& book) { return std::pair(ReadLengthDevices(book), ReadTapeDoubt(book)); },
      [this](const std::pair<std::vector<DeviceRow>, Length>& read) {
        for (const DeviceRow& device : read.first) {
          const QString name = Q(device.device), words = DeviceWords(device, read.second, before_.units);
          if (const int at = measured_with_->findData(name); at >= 0) measured_with_->setItemText(at, words);
          else measured_with_->addItem(words, name);
        }
      });
  queue_file_ = Path(form, tr("Deeds kept while the book is away"), before_.queue_file, tr("a file that `heatkeep saw block` made"), false);
  label_printer_ = Field(form, tr("Label printer"), before_.label_printer, tr("its name in the system; empty: labels as files"));
  label_folder_ = Path(form, tr("Folder for labels as files"), before_.label_folder, tr("a folder"), true);
  paper_printer_ = Field(form, tr("Printer for sheets"), before_.paper_printer, tr("its name in the system; empty: sheets as files"));
  paper_folder_ = Path(form, tr("Folder for sheets as files"), before_.paper_folder, tr("a folder"), true);
  scan_prefix_ = Field(form, tr("The scanner sends first"), before_.scan_prefix, tr("nothing: a scan is known by its speed"));
  scan_gap_ = new QSpinBox;
  scan_gap_->setRange(5, 500);
  scan_gap_->setSuffix(" ms");
  scan_gap_->setValue(before_.scan_gap_ms);
  form->addRow(tr("Longest pause within a scan"), scan_gap_);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
  for (const auto which : {QDialogButtonBox::Ok, QDialogButtonBox::Cancel}) buttons->button(which)->setIcon({});
  buttons->button(QDialogButtonBox::Ok)->setText(tr("Set"));
  buttons->button(QDialogButtonBox::Cancel)->setText(tr("Leave as it was"));
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  form->addRow(buttons);
}

QComboBox* SettingsPage::Choice(QFormLayout* form, const QString& label, const std::vector<std::pair<QString, QVariant>>& words,
                                const QVariant& now) {
  auto* box = new QComboBox;
  for (const auto& [word, value] : words) box->addItem(word, value);
  box->setCurrentIndex(std::max(0, box->findData(now)));
  box->setAccessibleName(label);
  form->addRow(label, box);
  return box;
}

QLineEdit* SettingsPage::Field(QFormLayout* form, const QString& label, const QString& now, const QString& example) {
  auto* field = new QLineEdit(now);
  field->setPlaceholderText(example);
  field->setAccessibleName(label);
  form->addRow(label, field);
  return field;
}

QLineEdit* SettingsPage::Path(QFormLayout* form, const QString& label, const QString& now, const QString& example, bool folder) {
  auto* field = new QLineEdit(now);
  field->setPlaceholderText(example);
  field->setAccessibleName(label);
  auto* choose = new QPushButton(tr("Choose ..."));
  choose->setAutoDefault(false);
  choose->setAccessibleName(tr("choose: %1").arg(label));
  connect(choose, &QPushButton::clicked, this, [this, field, label, folder] {
    if (const QString path = choose_path(label, folder); !path.isEmpty()) field->setText(path);
  });
  auto* row = new QHBoxLayout;
  row->addWidget(field, 1);
  row->addWidget(choose);
  form->addRow(label, row);
  return field;
}

DeskSettings SettingsPage::settings() const {
  DeskSettings s = before_;
  s.units.length = static_cast<ReadingUnits::LengthAs>(lengths_->currentData().toInt());
  s.units.mass = static_cast<ReadingUnits::MassAs>(masses_->currentData().toInt());
  s.look = static_cast<DeskSettings::Look>(look_->currentData().toInt());
  s.scale = scale_->currentData().toInt();
  s.language = language_->currentData().toString();
  s.saw = saw_->currentData().toString();
  s.measured_with = measured_with_->currentData().toString();
  s.queue_file = queue_file_->text().trimmed();
  s.label_printer = label_printer_->text().trimmed();
  s.label_folder = label_folder_->text().trimmed();
  s.paper_printer = paper_printer_->text().trimmed();
  s.paper_folder = paper_folder_->text().trimmed();
  s.scan_prefix = scan_prefix_->text();
  s.scan_gap_ms = scan_gap_->value();
  return s;
}

}  // namespace heatkeep
