// Typed text made plain: what word processors and spreadsheets turn into typographic signs is turned back.
#pragma once

#include <string>
#include <string_view>

namespace heatkeep {

// Blanks of every kind become one ' ', none at the ends; primes and curly quotes become ' and " (two ' become ");
// dashes and the minus sign become '-', the multiplication sign 'x', the fraction slash '/'; a fraction sign
// becomes " 1/2" with a blank before it (halves, quarters, eighths). Everything else stays byte for byte.
std::string PlainText(std::string_view utf8);

// The first character that nobody could read as it stands, "U+000A"; empty where there is none: controls (line ends and tabs are some),
// what is not seen, what turns the direction of writing. What the book refuses in a text (schema/guard/deed.sql).
std::string UnreadableCharacter(std::string_view utf8);

// ASCII letters only; other bytes stay.
std::string LowerCase(std::string_view text);
std::string UpperCase(std::string_view text);

}  // namespace heatkeep
