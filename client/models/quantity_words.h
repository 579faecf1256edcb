// A length or mass inside a sentence: read exactly, written in the reader's units.
#pragma once

#include <QString>
#include <optional>

#include "client/models/reading_units.h"

namespace heatkeep {

// What stands in a sentence for a quantity; kinds as in client/phrases/phrase.h: L "1018.5 mm", l "1018.5" of mm, E "1018500000 nm",
// T "12.05 m", M "39.5 kg". A sign (- + ±) may stand before it, thousands may be set apart by blanks.
// `fine`: a length to a thousandth of an inch, where a sixteenth would hide a difference; a length under an inch that is no whole
// sixteenth is always written so. Else down, as all material at hand is. In the units it came in the text stays as it is. None: no such
// quantity.
std::optional<QString> QuantityWords(const QString& text, char kind, const ReadingUnits& units, bool fine = false);

// A whole text that is a quantity with its unit, of whichever kind.
std::optional<QString> AnyQuantityWords(const QString& text, const ReadingUnits& units);

// Every number directly before mm, m or kg in a text that nothing else is known of; one whose beginning is in doubt ("5 250 mm") stays.
QString WithQuantities(const QString& text, const ReadingUnits& units);

}  // namespace heatkeep
