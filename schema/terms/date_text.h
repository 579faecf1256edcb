// Dates and times as ISO 8601 writes them, and nothing else: 2026-03-04, 2026-03-04T08:15, 2026-03-04 08:15:30+01:00.
#pragma once

#include <string>
#include <string_view>

#include "schema/terms/bad_text.h"

namespace heatkeep {

// A day that exists (Gregorian calendar, years 1900 to 2199), written with four, two and two digits.
bool IsIsoDate(std::string_view text);

// A date, or a date, 'T' or a blank, hours:minutes, perhaps :seconds, perhaps Z or +hh:mm or -hh:mm.
bool IsIsoDateOrTime(std::string_view text);

// The text back, without blanks around it. Throw BadText.
std::string ReadIsoDate(std::string_view text);
std::string ReadIsoDateOrTime(std::string_view text);

}  // namespace heatkeep
