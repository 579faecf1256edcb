#include "client/allocator/cut_arithmetic.h"

namespace heatkeep::allocator {

Room RoomOf(const Piece& piece, const GroupRules& rules) {
  Room room;
  const bool squared = piece.square_ends == 0 && rules.trim.nm > 0;
  const bool good_far_end = piece.square_ends == 2 || rules.trim.nm == 0;
  room.kerf = rules.kerf;
  room.grip = rules.grip;
  room.trim = squared ? rules.trim : Length{};
  room.trim_kerf = squared ? rules.kerf : Length{};
  room.after_trim = piece.length - room.trim - room.trim_kerf;
  const Length stays = rules.grip.nm > 0 ? rules.grip : (good_far_end ? Length{} : rules.trim);
  room.room = room.after_trim - stays - piece.doubt;
  if (good_far_end && piece.doubt.nm == 0) {
    if (rules.grip.nm == 0) room.room = room.after_trim + rules.kerf;  // run-off and no cut join the ordinary endings
    else room.exact = room.after_trim + rules.kerf;
  }
  return room;
}

bool Fits(const Room& room, Length taken, Length longest) {
  return taken <= room.room || (room.exact && taken == *room.exact && longest >= room.grip);
}

Ending EndingOf(const Room& room, Length taken, int count) {
  Ending ending;
  const Length r = room.after_trim - taken;
  ending.kerf = room.trim_kerf + room.kerf * count;
  if (r.nm > 0) {
    ending.left = r;
  } else {
    ending.kerf += r;  // the last cut costs k + r, which is nothing when r = -k
    ending.last_uncut = r == -room.kerf;
  }
  return ending;
}

LeftKind LeftKindOf(Length left, Length keep) {
  if (left.nm <= 0) return LeftKind::None;
  return left >= keep ? LeftKind::Drop : LeftKind::Scrap;
}

Length ShortestBar(const GroupRules& rules, Length length, int count, Length doubt) {
  Length bar = (length + rules.kerf) * count + doubt;
  if (rules.trim.nm > 0) bar += rules.trim + rules.kerf;
  if (rules.grip.nm > 0) return bar + rules.grip;
  if (rules.trim.nm > 0) return bar + rules.trim;
  return doubt.nm > 0 ? bar : bar - rules.kerf;  // the last piece is the remainder itself
}

}  // namespace heatkeep::allocator
