#include "client/models/qt_words.h"

#include <cstdlib>

namespace heatkeep {

QString WordsOf(const DbError& error) {
  QString words = Q(error.message);
  if (!error.detail.empty()) words += ". " + Q(error.detail);
  if (!error.hint.empty()) words += " - " + Q(error.hint);
  return words;
}

QString AmountWords(Money money) {
  return QString("%1%2.%3").arg(money.cents < 0 ? "-" : "").arg(std::abs(money.cents) / 100).arg(std::abs(money.cents) % 100, 2, 10, QChar('0'));
}

}  // namespace heatkeep
