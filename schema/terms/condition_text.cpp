#include "schema/terms/condition_text.h"

#include "schema/terms/plain_text.h"

namespace heatkeep {

std::string NormalCondition(std::string_view text) {
  std::string out;
  for (char c : UpperCase(PlainText(text))) {
    if (c == '+' && !out.empty() && out.back() == ' ') out.pop_back();
    if (c == ' ' && !out.empty() && out.back() == '+') continue;
    out += c;
  }
  return out;
}

}  // namespace heatkeep
