// What is asked of the allocator: pieces of metal, lines of a cut list, and the rules they meet under.
// Lengths are whole nanometres; money inside the allocator is whole millionths of a cent, so that prices per
// metre add up exactly. Nothing here reads a clock, a file or a database.
#pragma once

#include <cstdint>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "client/allocator/worth.h"
#include "schema/terms/length.h"
#include "schema/terms/section.h"

namespace heatkeep::allocator {

enum class PieceKind { Bar, Drop };                             // a full mill length, or a re-usable rest
enum class PaperType { None, Type21, Type22, Type31, Type32 };  // EN 10204, weakest first
enum class Aim { DropsFirst, LeastMoney, FewestBars, LeastMetres };

// Millionths of a cent.
struct FineMoney {
  std::int64_t micro = 0;
  constexpr auto operator<=>(const FineMoney&) const = default;
};

// The arithmetic of one section and grade on its saw. All >= 0; see cut_arithmetic.h for what they do.
struct GroupRules {
  Length kerf, trim, grip, keep;
  std::shared_ptr<const LearnedWorth> rests = nullptr;  // what the group's rests are worth; null: worth.h's own measure
};

// What one piece costs to take and to cut (only Aim::LeastMoney looks at it). All >= 0.
struct PieceCosts {
  FineMoney per_metre;        // price of its metal; times its worth in metres
  FineMoney scrap_per_metre;  // what a leftover below the keep length fetches
  FineMoney per_cut;          // sawing: area / cutting rate x money per minute
  FineMoney per_pull;         // fetching it once
};

struct Piece {
  std::string tag;
  PieceKind kind = PieceKind::Bar;
  std::string section, grade, condition;  // canonical texts; compared as they stand
  std::string heat;
  std::string owner;  // empty: the shop's own; else only lines of that owner may have it
  std::string place;
  std::string held;                    // why it may not be used (held, quarantined, promised); empty: free
  Length length;                       // > 0
  Length doubt;                        // >= 0: it may be this much shorter than written
  int square_ends = 0;                 // 0, 1 or 2 sawn, square ends already there
  std::optional<int> count = 1;        // how many alike; nullopt: as many as wanted
  PaperType papers = PaperType::None;  // the strongest it may be cut for
  PieceCosts costs;
  std::optional<Length> worth = {};  // of a drop of the keep length or longer, by the shop's history; none: as its group's rests
  MassPerMetre mass;                 // 0: not known; only words and figures for people look at it
  std::string risk;                  // what its sheet warns of though it may be used: its papers are awaited; empty: nothing
};

struct Line {
  std::string order, line;
  std::string section, grade, condition;        // condition empty: any
  std::string owner;                            // empty: the shop's own metal; else that customer's metal only
  Length nominal, face, aim;                    // the cut's length is nominal + face + aim (offset inside the tolerance)
  int quantity = 1;                             // >= 0
  int priority = 5;                             // 1 is highest
  std::string due;                              // ISO date, or empty: no date
  std::string one_heat;                         // lines sharing this name come from one heat; empty: no such wish
  int max_heats = 0;                            // at most so many heats for the line; 0: any number
  PaperType papers = PaperType::None;           // at least
  std::vector<std::string> refused_heats = {};  // metal of these heats may not be taken for it
  Length tolerance_plus = {};                   // a piece may measure nominal + face + this; only offers look at it (offers.h)
  std::map<std::string, int> waits = {};        // its own metal that is here and not in the problem: why it may not be used now -> pieces
  Length CutLength() const { return nominal + face + aim; }
};

// One direction only: `given` may stand in for `asked`. Empty `order` means every order allows it.
struct GradeSubstitute {
  std::string asked, given, order;
  FineMoney extra_per_metre;
};
struct SectionSubstitute {
  std::string asked, given, order;
  FineMoney extra_per_metre;
};

// Rules that differ from the general ones for one section and grade; an empty text means any.
struct GroupException {
  std::string section, grade;
  GroupRules rules;
};

struct Limits {
  double seconds = 10;    // wall clock for the whole search; 0: only the first heuristics
  int iterations = 1000;  // budget of the search inside one component (rounds, restarts); makes runs repeatable;
                          // below 10 small components are not tried out exactly
  int threads = 1;        // components solved side by side
  std::uint64_t seed = 1;
};

struct Problem {
  std::vector<Piece> pieces;
  std::vector<Line> lines;
  GroupRules rules;  // unless an exception below names the group; the first match counts
  std::vector<GroupException> exceptions;
  std::vector<GradeSubstitute> grades;
  std::vector<SectionSubstitute> sections;
  FineMoney per_setup;       // a distinct layout
  FineMoney per_extra_heat;  // each heat of an order after its first
  Aim aim = Aim::DropsFirst;
  Limits limits;
};

// The rules a piece is cut under.
inline const GroupRules& RulesFor(const Problem& problem, const Piece& piece) {
  for (const GroupException& e : problem.exceptions)
    if ((e.section.empty() || e.section == piece.section) && (e.grade.empty() || e.grade == piece.grade)) return e.rules;
  return problem.rules;
}

}  // namespace heatkeep::allocator
