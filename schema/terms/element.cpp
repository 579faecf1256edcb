#include "schema/terms/element.h"

#include <algorithm>

#include "schema/terms/number_text.h"

namespace heatkeep {

bool IsElement(std::string_view symbol) { return std::find(kElements.begin(), kElements.end(), symbol) != kElements.end(); }

std::int64_t ReadContent(std::string_view text, char mark) {
  const std::int64_t read = ReadScaled(text, 6, mark);
  if (read > kHundredPercent) throw BadText(Quoted(text) + " % is more than all of it", "mass %, 0 to 100");
  return read;
}

void CheckSum(const std::vector<ElementContent>& analysis) {
  std::int64_t sum = 0;
  for (const ElementContent& e : analysis) sum += e.millionths;
  if (sum > kHundredPercent + kHundredPercent / 100) {
    throw BadText("the elements add up to " + WriteScaled(sum, 6) + " %", "mass % that add up to 100 or less");
  }
}

}  // namespace heatkeep
