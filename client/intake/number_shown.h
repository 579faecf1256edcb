// What a spreadsheet shows for the number it stores.
#pragma once

#include <string>
#include <string_view>

#include "client/intake/table.h"

namespace heatkeep::intake {

struct NumberFormat {
  enum class Kind { Plain, Scientific, Percent, Date, Time, Padded };
  Kind kind = Kind::Plain;
  int zeros = 0;      // of Padded: so many digits at least before the decimal mark
  std::string words;  // letters or inch marks that the format sets beside the number
};

// From a format code of SpreadsheetML (ISO/IEC 29500-1, 18.8.30): `dd/mm/yyyy`, `0.00E+00`, `0000`, `0.0" mm"`.
NumberFormat ReadFormatCode(std::string_view code);

// One of the built-in formats by its number (18.8.30, from memory); an unknown one is plain.
NumberFormat BuiltInFormat(int id);

struct ShownCell {
  std::string text;
  CellKind kind = CellKind::Number;
};

// `stored` as the file has it ("60.299999999999997") and its format: "60.3", "1.23E+05", "07715", "42 %", "3.5 in",
// "2026-03-04T08:15:00". `from_1904`: days count from 1904-01-01. Throws BadText: no number, a day that is none.
ShownCell ShowNumber(std::string_view stored, const NumberFormat& format, bool from_1904);

// A number without exponent where it has at most 15 digits before the mark: 15 significant digits, no zeros at the end.
std::string PlainNumber(double value);

}  // namespace heatkeep::intake
