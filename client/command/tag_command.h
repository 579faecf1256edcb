// heatkeep tag TEXT [--json]: is its check character right, and is it built like a tag?
#pragma once

#include <iosfwd>
#include <string>

namespace heatkeep::command {

// 0: the last character is the right check character (ISO/IEC 7064 MOD 37,36); 1: it is not, and the right one is
// named; 2: there is nothing to check. Blanks and hyphens do not count, small letters are capitals. Text that is right
// but not built like a tag (letter, six digits, check character) is called so.
// json: tag, valid, is_tag, expected_check_character.
int RunTagCheck(const std::string& text, bool json, std::ostream& out, std::ostream& err);

}  // namespace heatkeep::command
