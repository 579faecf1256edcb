// The allocator's answer: which piece is cut how, what that is worth, and how near the best it is.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "client/allocator/problem.h"
#include "schema/terms/length.h"

namespace heatkeep::allocator {

enum class LeftKind { None, Drop, Scrap };

// `count` equal pieces for one line; `length` is of one piece, face and aim included.
struct Cut {
  int line = 0;  // index into Problem::lines
  int count = 0;
  Length length;
};

// One way of cutting one piece, `repeat` times. trim + kerf + sum(count * length) + left = the piece's length.
struct Layout {
  int piece = 0;  // index into Problem::pieces
  int repeat = 1;
  Length trim;            // the squaring slice, without its kerf
  Length kerf;            // all kerf of one repeat, that of the trim included
  std::vector<Cut> cuts;  // longest first, except that a piece left uncut as the last one stands last
  Length left;
  LeftKind left_kind = LeftKind::None;
};

// A line that is not fully served, and why in words.
struct Short {
  int line = 0;
  int missing = 0;
  std::string why;
};

// What a plan amounts to. `layouts` counts set-ups: layouts that differ in the section or grade cut or in the
// cut lengths and their counts. Customer's own metal counts in bars, consumed and pulled only.
struct Value {
  std::map<int, int> unmet_by_priority;  // priority -> pieces; only priorities with something missing
  int unmet_pieces = 0;
  int bars_opened = 0;
  Length new_length;       // full bars of the shop's own opened
  Length consumed_length;  // full length of every piece pulled
  Length scrap_length;     // leftovers below the keep length; kerf and trim are not in it
  Length lost_worth;       // worth of the pieces taken - worth of what is left, whole micrometres
  FineMoney money;
  int pieces_pulled = 0;
  int layouts = 0;
  bool operator==(const Value&) const = default;
};

enum class Key { Unmet, BarsOpened, NewLength, ConsumedLength, LostWorth, Money, PiecesPulled, Layouts };

// The keys an aim minimises, in this order; Unmet stands for all priorities, highest first.
std::vector<Key> KeysOf(Aim aim);
// The name a key has in the plan file, without unit.
std::string NameOf(Key key);
// The value's figure for a key (nm, millionths of a cent, or a count).
std::int64_t FigureOf(const Value& value, Key key);

// No plan can be better than this. Only keys that were really bounded are in it.
struct Bound {
  std::optional<std::map<int, int>> unmet_by_priority;
  std::map<Key, std::int64_t> figures;
};

enum class Status { Proved, Feasible, Short };
enum class EndedBy { Proof, Budget, Clock, Stopped };

struct Plan {
  std::vector<Layout> layouts;
  std::vector<Short> shorts;
  Value value;
  Bound bound;
  std::vector<Key> proved_keys;      // in the aim's order, each only if all before it are proved
  bool proved = false;               // the aim's leading key after unmet is proved
  Status status = Status::Feasible;  // Short whenever a cut is not placed
  EndedBy ended_by = EndedBy::Budget;
  double seconds = 0;  // wall clock used; not part of what is repeatable
  std::uint64_t seed = 1;
};

}  // namespace heatkeep::allocator
