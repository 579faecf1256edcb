// The settings of this desk: units, look, scale, language, saw, scanner, printers, files. What is a file or a folder is chosen or typed.
#pragma once

#include <QDialog>
#include <functional>

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

  // Asks for a file (or a folder); empty: none. A file dialog unless it is set otherwise.
  std::function<QString(const QString& head, bool folder)> choose_path;

 private:
  QComboBox* Choice(QFormLayout* form, const QString& label, const std::vector<std::pair<QString, QVariant>>& words, const QVariant& now);
  QLineEdit* Field(QFormLayout* form, const QString& label, const QString& now, const QString& example);
  QLineEdit* Path(QFormLayout* form, const QString& label, const QString& now, const QString& example, bool folder);

  QComboBox *lengths_, *masses_, *look_, *scale_, *language_, *saw_, *measured_with_;
  QLineEdit *queue_file_, *label_printer_, *label_folder_, *paper_printer_, *paper_folder_, *scan_prefix_;
  QSpinBox* scan_gap_;
  DeskSettings before_;
};

}  // namespace heatkeep
