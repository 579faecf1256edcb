// Bytes of a text file to UTF-8.
#pragma once

#include <string>
#include <string_view>

namespace heatkeep::intake {

struct DecodedText {
  std::string utf8;             // without a byte order mark; empty when refused
  std::string encoding;         // "UTF-8", "UTF-16" or "Windows-1252"
  std::string wrong, expected;  // not empty: refused
  int line = 0;                 // where, or 0
};

// A UTF-8 or UTF-16 byte order mark decides; else strict UTF-8 (no overlong forms, no surrogates); else Windows-1252.
// Refused: zip files, zero bytes, what the encoding does not allow.
DecodedText DecodeText(std::string_view bytes);

// Strict UTF-8 all through?
bool IsUtf8(std::string_view bytes);

}  // namespace heatkeep::intake
