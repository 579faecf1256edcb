#include "client/stations/asking_line.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

namespace heatkeep {

AskingLine::AskingLine(Size size, QWidget* parent) : QWidget(parent), words_(new PlainWords(FontOf(size))), field_(new QLineEdit) {
  auto* down = Down(this);
  auto* asked = new QHBoxLayout;
  asked->setSpacing(kBetween);
  asked->addWidget(words_, 1);
  auto* ways = new PlainWords(FontOf(Size::Table), Use::Quiet, tr("Enter: answer   Esc: leave it"));
  ways->setWordWrap(false);
  asked->addWidget(ways, 0, Qt::AlignBottom);
  down->addLayout(asked);
  down->addWidget(field_);
  const bool large = size >= Size::SawBody;
  field_->setObjectName("answer");
  field_->setFont(MonoOf(large ? Size::Key : Size::SectionHead));
  field_->setMinimumHeight(large ? kGlove : 32);
  connect(field_, &QLineEdit::returnPressed, this, &AskingLine::Answer);
  setVisible(false);
}

void AskingLine::Ask(const QString& words, Take take, const QString& typed) {
  take_ = std::move(take);
  words_->setText(words);
  field_->setAccessibleName(words);
  field_->setText(typed);
  field_->selectAll();
  setVisible(true);
  field_->setFocus();
}

void AskingLine::Answer() {
  const QString answer = field_->text().trimmed();
  const Take take = take_;
  if (answer.isEmpty() || !take) {
    Leave();
    return;
  }
  take_ = {};
  if (!take(answer)) {
    take_ = take;
    field_->selectAll();
  } else if (!take_) {
    Leave();
  }
}

void AskingLine::Leave() {
  take_ = {};
  setVisible(false);
  emit Left();
}

}  // namespace heatkeep
