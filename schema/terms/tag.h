// A piece's tag: one site letter, six digits, one check character; "A004711K" is the canonical form (capitals, no
// blanks). Printed in groups it may be read back with blanks, hyphens and small letters; a letter O is never taken
// for a nought.
//
// The check character is that of ISO/IEC 7064, MOD 37,36 (a hybrid system, M = 36): with a_1..a_n the values of the
// characters (0..9 = 0..9, A..Z = 10..35) and P_1 = M,
//     S_j = P_j |(M+1) + a_j        P_(j+1) = S_j ||M * 2
// where |(M+1) is the remainder on division by 37 and ||M the remainder on division by 36, a remainder of 0 being
// taken as 36; the check character is the value a with (P_(n+1) + a) mod 36 = 1.
// It finds every single wrong character, and nearly every swap of neighbours; the tests say how many.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "schema/terms/bad_text.h"

namespace heatkeep {

// The check character of `body` (0-9 and A-Z only, not empty). Throws BadText.
char CheckCharacter(std::string_view body);

// Whether `text` with its last character as check character is right, for any length of 2 or more.
bool HasRightCheckCharacter(std::string_view text);

// Capitals, blanks and hyphens gone; checks the shape (letter, six digits, character) but not the check character.
// Throws BadText.
std::string TagForm(std::string_view text);

// The canonical form of a right tag. Throws BadText: it names the check character that was read, not the right one,
// so that nobody "corrects" a misread tag.
std::string ReadTag(std::string_view text);

bool IsValidTag(std::string_view text);

// The tag of piece `number` (0..999999) of site `site` ('A'..'Z'). Throws BadText.
std::string MakeTag(char site, std::int64_t number);

}  // namespace heatkeep
