// The book's texts as Qt shows them.
#pragma once

#include <QString>
#include <string>

#include "client/gateway/db_error.h"
#include "client/models/reading_units.h"
#include "schema/terms/money.h"

namespace heatkeep {

inline QString Q(const std::string& text) { return QString::fromStdString(text); }

// What the book, the allocator or a term says in English, as the desk's reader reads it: in their language (the program's translator) and
// units. A name stays as it is (client/models/phrase_book.h).
QString BookWords(const std::string& english);
QString BookWords(const QString& english);
void ReadBookIn(const ReadingUnits& units);  // from now on; at first millimetres and kilograms

// The words of a refusal for people: what, why, and what to do next.
QString WordsOf(const DbError& error);

// "1234.50", "-0.05": without the currency.
QString AmountWords(Money money);

}  // namespace heatkeep
