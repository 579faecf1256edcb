// The settings of this desk: units, look, language, saw, labels, scanner.
#pragma once

#include <QDialog>

#include "client/stations/station.h"

class QComboBox;
class QFormLayout;
class QLineEdit;
class QSpinBox;

namespace heatkeep {

class SettingsPage : public QDialog {
  Q_OBJECT

 public:
  SettingsPage(Desk& desk, QWidget* parent);

  DeskSettings settings() const;  // as set here

 private:
  QComboBox* Choice(QFormLayout* form, const QString& label, const std::vector<std::pair<QString, QVariant>>& words, const QVariant& now);
  QLineEdit* Field(QFormLayout* form, const QString& label, const QString& now, const QString& example);

  QComboBox *lengths_, *masses_, *look_, *language_, *saw_, *measured_with_;
  QLineEdit *queue_file_, *label_printer_, *label_folder_, *paper_printer_, *paper_folder_, *scan_prefix_;
  QSpinBox* scan_gap_;
  DeskSettings before_;
};

}  // namespace heatkeep
