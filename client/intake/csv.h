// Delimited text, from bytes as they come to rows of UTF-8 cells (RFC 4180, and what spreadsheets make of it).
// Encoding: a UTF-8 or UTF-16 byte order mark, else strict UTF-8, else Windows-1252. Delimiter: the one of ; tab , |
// that most of the first lines agree on; a first line "sep=;" decides it. Quotes only around a whole cell ("" for one
// inside); within a bare cell a quote is a quote, since 19' 11-3/8" is a length. Lines without text are left out.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

#include "client/intake/table.h"

namespace heatkeep::intake {

inline constexpr std::size_t kLongestRecord = std::size_t{1024} * 1024;

// Refused with a problem: over 64 MiB, a row over 1 MiB, a zero byte or a zip file (a spreadsheet), half a UTF-16
// character, a quote that never ends, text behind a closing quote, a file without a header.
Table ReadCsv(std::string_view bytes, const std::string& name);

}  // namespace heatkeep::intake
