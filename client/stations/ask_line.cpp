#include "client/stations/ask_line.h"

#include <QVBoxLayout>

namespace heatkeep {

AskLine::AskLine(QWidget* parent) : QWidget(parent), words_(new PlainWords(FontOf(Size::Body, true))), field_(new QLineEdit) {
  auto* down = new QVBoxLayout(this);
  down->setContentsMargins(0, 0, 0, 0);
  down->setSpacing(kInside);
  down->addWidget(words_);
  down->addWidget(field_);
  field_->setFont(FontOf(Size::SectionHead));
  field_->setMinimumHeight(36);
  connect(field_, &QLineEdit::returnPressed, this, &AskLine::Answer);
  setVisible(false);
}

void AskLine::Ask(const QString& words, std::function<bool(const QString&)> take, const QString& typed) {
  take_ = std::move(take);
  words_->setText(words);
  field_->setAccessibleName(words);
  field_->setText(typed);
  setVisible(true);
  field_->setFocus();
}

void AskLine::End() {
  take_ = {};
  setVisible(false);
}

void AskLine::Answer() {
  const auto take = take_;
  const QString answer = field_->text().trimmed();
  if (!take) return;
  if (answer.isEmpty()) {
    End();
    return;
  }
  take_ = {};
  if (take(answer)) {
    if (!take_) End();  // else it asked the next question
    return;
  }
  if (!take_) take_ = take;
  field_->selectAll();
}

}  // namespace heatkeep
