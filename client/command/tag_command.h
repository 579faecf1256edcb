// heatkeep tag check TEXT [--json]: is its check character right, and is it built like a tag? Of a whole scan: what it says.
#pragma once

#include <iosfwd>
#include <string>

namespace heatkeep::command {

// 0: the last character is the right check character (ISO/IEC 7064 MOD 37,36); 1: it is not, and the right one is
// named; 2: there is nothing to check. Blanks and hyphens do not count, small letters are capitals. Text that is right
// but not built like a tag (letter, six digits, check character) is called so.
// json: tag, valid, is_tag, expected_check_character. A scan (schema/terms/scan.h) that can be read is 0, else 2; json: tag (null on a
// label of a place), valid, is_tag, whole, and scan with what each field says by name: tag, heat, metal, length, place, order, line, count.
int RunTagCheck(const std::string& text, bool json, std::ostream& out, std::ostream& err);

}  // namespace heatkeep::command
