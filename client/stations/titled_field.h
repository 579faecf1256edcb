// A field with its name in small letters above it.
#pragma once

#include <QString>

class QBoxLayout;
class QLabel;
class QWidget;

namespace heatkeep {

// Puts both into `row`; the field is called by these words for those who hear the screen.
QLabel* TitledField(QBoxLayout* row, const QString& words, QWidget* field, int stretch);

}  // namespace heatkeep
