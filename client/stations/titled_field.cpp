#include "client/stations/titled_field.h"

#include <QLabel>
#include <QVBoxLayout>

#include "client/stations/desk_look.h"

namespace heatkeep {

QLabel* TitledField(QBoxLayout* row, const QString& words, QWidget* field, int stretch) {
  auto* down = new QVBoxLayout;
  down->setSpacing(2);
  auto* label = new QLabel(words);
  label->setFont(FontOf(Size::Table));
  label->setBuddy(field);
  field->setAccessibleName(words);
  down->addWidget(label);
  down->addWidget(field);
  row->addLayout(down, stretch);
  return label;
}

}  // namespace heatkeep
