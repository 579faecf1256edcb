#include "client/models/qt_words.h"

#include <QHash>
#include <QMutex>
#include <cstdlib>

#include "client/models/phrase_book.h"

namespace heatkeep {
namespace {

// What was read is kept: a list asks for the same words again and again.
struct Reader {
  PhraseBook book{BookPhrases()};
  ReadingUnits units;
  QHash<QString, QString> said;
  QMutex one;  // also the lanes' threads may ask
};

Reader& TheReader() {
  static Reader reader;
  return reader;
}

constexpr qsizetype kMostKept = 5000;

}  // namespace

QString BookWords(const QString& english) {
  Reader& reader = TheReader();
  const QMutexLocker lock(&reader.one);
  if (const auto known = reader.said.constFind(english); known != reader.said.constEnd()) return *known;
  if (reader.said.size() >= kMostKept) reader.said.clear();
  return *reader.said.insert(english, reader.book.Said(english, reader.units));
}

QString BookWords(const std::string& english) { return BookWords(Q(english)); }

void ReadBookIn(const ReadingUnits& units) {
  Reader& reader = TheReader();
  const QMutexLocker lock(&reader.one);
  reader.units = units;
  reader.said.clear();
}

QString WordsOf(const DbError& error) {
  QString words = BookWords(error.message);
  if (!error.detail.empty()) words += ". " + BookWords(error.detail);
  if (!error.hint.empty()) words += " - " + BookWords(error.hint);
  return words;
}

QString AmountWords(Money money) {
  return QString("%1%2.%3")
      .arg(money.cents < 0 ? "-" : "")
      .arg(std::abs(money.cents) / 100)
      .arg(std::abs(money.cents) % 100, 2, 10, QChar('0'));
}

}  // namespace heatkeep
