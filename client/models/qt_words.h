// The book's texts as Qt shows them.
#pragma once

#include <QString>
#include <string>

#include "client/gateway/db_error.h"
#include "schema/terms/money.h"

namespace heatkeep {

inline QString Q(const std::string& text) { return QString::fromStdString(text); }

// The words of a refusal for people: what, why, and what to do next.
QString WordsOf(const DbError& error);

// "1234.50", "-0.05": without the currency.
QString AmountWords(Money money);

}  // namespace heatkeep
