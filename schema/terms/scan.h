// What a scanner gives: the message of a label's two-dimensional code, and what is said in it.
//
// Written: the envelope of ISO/IEC 15434, format 06, with data identifiers of ANSI MH10.8.2 (ISO/IEC 15418):
//     [)> RS 06 GS field GS field ... RS EOT         RS = 30, GS = 29, EOT = 4
// S the tag, 1T the heat as read, 1P grade and section, 7Q a length or count with its unit, L a place, K and 4K an order
// and its line. The tag or place always comes first, so that it is found even where a scanner drops the control characters.
//
// Read: that envelope; the same with RS, GS and EOT written out by the scanner (<GS>, {GS}, ^], the control pictures) or with
// blanks at the ends or an AIM symbology identifier (]d1) in front; the same without any control character, as some scanners that
// act as a keyboard send it: then the fields cannot be told apart, so only the tag is taken (it has a fixed form and a check
// character) and nothing is guessed of the rest. Where only the end is lost, the last field is not taken. A bare tag, or one behind its
// identifier S, is a scan too.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "schema/terms/bad_text.h"

namespace heatkeep {

struct Scan {
  std::vector<std::pair<std::string, std::string>> fields;  // identifier ("S", "1T") and data, in their order
  bool whole = true;                                        // false: control characters were lost; there is more on the label than is here

  // The data behind an identifier; nothing where the scan has none.
  std::optional<std::string> Of(std::string_view identifier) const;
};

// The message of these fields. Throws BadText where an identifier is not digits and one capital letter, where data is empty or
// holds a control character (it could not be read back).
std::string WriteEnvelope(const std::vector<std::pair<std::string, std::string>>& fields);

// Whether `text` begins as an envelope does: then it is a scan, good or bad.
bool LooksLikeEnvelope(std::string_view text);

// Throws BadText: another format than 06, nothing in it, an identifier that cannot be, one of ours twice, a tag whose check
// character is wrong, over 4096 bytes.
Scan ReadScan(std::string_view text);

// Where a tag or a place is wanted: that of a scanned envelope, anything else as it is. Throws BadText for an envelope that cannot
// be read or says no such thing.
std::string TagOfScan(std::string_view text);
std::string PlaceOfScan(std::string_view text);

}  // namespace heatkeep
