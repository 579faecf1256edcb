// The types of inspection document of EN 10204:2004, from weakest to strongest: 2.1 declaration of compliance,
// 2.2 test report on other metal of the kind, 3.1 tests of this metal signed by the maker's representative who is
// independent of production, 3.2 also by the purchaser's or an official inspector. (From memory of the standard.)
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "schema/terms/bad_text.h"

namespace heatkeep {

enum class Papers { None, P21, P22, P31, P32 };

// "none", "2.1", "2.2", "3.1", "3.2".
std::string_view PapersText(Papers papers);

// The same words back; empty is None; "EN 10204" in front is allowed. Throws BadText.
Papers ReadPapers(std::string_view text);

// Who validated a document, and for whom: "manufacturer", "independent" (of production), "purchaser" or "official".
struct Validator {
  std::string name, position, whom;
  bool operator==(const Validator&) const = default;
};

// "A. Lund, head of the laboratory, independent; B. Roe, inspector, purchaser". Throws BadText.
std::vector<Validator> ReadValidators(std::string_view text);
std::string ValidatorsText(const std::vector<Validator>& validators);  // the same words back

}  // namespace heatkeep
