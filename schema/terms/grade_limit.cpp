#include "schema/terms/grade_limit.h"

#include "schema/terms/number_text.h"
#include "schema/terms/plain_text.h"

namespace heatkeep {

std::string BoundText(const Bound& bound) {
  std::string digits = std::to_string(bound.millionths);
  if (digits.size() < 7) digits.insert(0, 7 - digits.size(), '0');
  const std::string whole = digits.substr(0, digits.size() - 6);
  return bound.places == 0 ? whole : whole + "." + digits.substr(digits.size() - 6, static_cast<std::size_t>(bound.places));
}

Bound ReadBound(std::string_view text, char mark) {
  constexpr std::int64_t kMost = 1'000'000'000'000;
  const std::string plain = PlainText(text);
  const std::size_t at = plain.find(mark);
  const Bound bound{ReadScaled(plain, 6, mark), at == std::string::npos ? 0 : static_cast<int>(plain.size() - at - 1)};
  if (bound.places > 6) throw BadText(Quoted(text) + " has too many places", "at most six behind the decimal mark");
  if (bound.millionths > kMost) throw BadText(Quoted(text) + " is too large", "at most 1 000 000");
  return bound;
}

}  // namespace heatkeep
