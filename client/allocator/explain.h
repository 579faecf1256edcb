// Why this piece and not another: for a layout of a plan, the pieces the plan leaves that would hold exactly its cuts,
// and what each would cost more than the chosen one. What to take when the chosen piece is not there.
//
// A piece is named only if it may serve every cut (eligible.h, so never metal of another owner, held or too weak in its
// papers), the cuts fit, the rules on heats still hold with the rest of the plan as it is, and the plan leaves it.
// Order: the aim's own keys of that one layout (new length and worth lost; consumed length; money), then the shorter
// piece, then the tag.
// Cost: layouts x pieces once Why is called for them; pieces x lines for the hard rules, worked out when first asked.
#pragma once

#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "client/allocator/plan.h"
#include "client/allocator/problem.h"

namespace heatkeep::allocator {

// Figures are of one repeat, the other piece's less the chosen one's; below 0 where the other takes less.
struct Alternative {
  int piece = 0;  // index into Problem::pieces
  Length left;    // what it would leave
  LeftKind left_kind = LeftKind::None;
  bool opens_bar = false;           // it is a full bar of the shop's own, and the chosen one is none
  Length lost_more;                 // worth
  std::optional<FineMoney> dearer;  // only if both have a price; without set-ups and extra heats
  std::string words;                // "leaves 75 mm scrap, 0.21 dearer"
};

class Explanation {
 public:
  // Both must outlive it.
  Explanation(const Problem& problem, const Plan& plan);

  // The next best for plan.layouts[layout], at most `most`.
  std::vector<Alternative> Why(std::size_t layout, std::size_t most = 3);

 private:
  bool May(int line, std::size_t piece);
  bool HeatsHold(const Layout& layout, std::size_t without, const std::string& heat) const;

  const Problem& problem_;
  const Plan& plan_;
  std::vector<std::int64_t> free_;                            // by piece: how many the plan leaves; unlimited is plenty
  std::vector<std::vector<char>> may_;                        // by line, piece
  std::map<std::string, std::vector<std::size_t>> by_group_;  // one_heat -> layouts
  std::vector<std::vector<std::size_t>> by_line_;             // line -> layouts, where it limits its heats
};

// "A000123X in B3-2, 1900 mm", and what is to be known before it is used ("cut at risk: ...").
std::string SourceWords(const Piece& piece);

}  // namespace heatkeep::allocator
