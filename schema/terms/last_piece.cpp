#include "schema/terms/last_piece.h"

#include <algorithm>

namespace heatkeep {

int FurtherPieces(Length left, Length length, Length kerf, Length doubt, Length stays) {
  if (length.nm <= 0) return 0;
  const std::int64_t room = left.nm - doubt.nm - stays.nm;
  return static_cast<int>(std::clamp<std::int64_t>(room / (length + kerf).nm, 0, 1'000'000));
}

std::optional<Length> LastUncut(const LastPiece& end) {
  const Length whole = end.last + end.kerf + end.left;
  if (end.kerf.nm <= 0 || !end.good_far_end || end.doubt.nm > 0 || whole > end.longest) return std::nullopt;
  return whole;
}

bool IsThin(const LastPiece& end) { return end.kerf.nm > 0 && end.left < kThinSlice; }

}  // namespace heatkeep
