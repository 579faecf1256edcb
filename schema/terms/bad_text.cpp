#include "schema/terms/bad_text.h"

namespace heatkeep {

std::string Quoted(std::string_view text) {
  constexpr std::size_t kLongest = 40;
  std::size_t end = text.size();
  if (end > kLongest) {
    end = kLongest;
    while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80U) --end;
  }
  std::string out = "\"";
  for (char c : text.substr(0, end)) {
    const auto u = static_cast<unsigned char>(c);
    out += (u < 0x20 || u == 0x7F) ? '?' : c;
  }
  if (end < text.size()) out += "...";
  return out + '"';
}

}  // namespace heatkeep
