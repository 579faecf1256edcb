#include "client/planning/learned_worth.h"

#include <algorithm>
#include <map>
#include <memory>
#include <set>

#include "client/year/worth_curve.h"
#include "schema/terms/wide.h"

namespace heatkeep::planning {
namespace {

using allocator::FineMoney;
using allocator::Piece;
using allocator::PieceKind;

constexpr int kDays = 90;
constexpr std::size_t kLines = 5;
constexpr Length kStep{20 * kNmPerMm};
constexpr Length kLongest{6100 * kNmPerMm};  // a longer rest is worth at least what this is

// Length of full bar for this money, at this price a metre; down to whole micrometres.
Length InBar(FineMoney money, FineMoney per_metre) {
  return {static_cast<std::int64_t>(Wide{money.micro} * 1'000'000 / per_metre.micro) * 1000};
}

// The shop's own pieces of one section and grade.
struct Own {
  std::vector<Piece*> pieces;
  FineMoney price, scrap;
  year::RackDrop like;  // the papers most of them have
};

Own OwnOf(allocator::Problem& problem, const std::string& section, const std::string& grade) {
  Own own;
  std::map<allocator::PaperType, int> papers;
  for (Piece& p : problem.pieces) {
    if (p.section != section || p.grade != grade || !p.owner.empty()) continue;
    own.pieces.push_back(&p);
    own.price = std::max(own.price, p.costs.per_metre);
    own.scrap = std::max(own.scrap, p.costs.scrap_per_metre);
    if (++papers[p.papers] > papers[own.like.papers]) own.like.papers = p.papers;
  }
  return own;
}

}  // namespace

std::optional<year::Past> PastOf(const PastDemand& past, const std::string& section, const std::string& grade,
                                 const std::set<std::pair<std::string, std::string>>& planned) {
  const auto rows = past.by_group.find({section, grade});
  if (rows == past.by_group.end() || past.today - past.first_day < kDays) return std::nullopt;
  year::Past known{{}, past.first_day, past.today, {}};
  for (const PastDemand::Row& r : rows->second)
    if (r.day < past.today && !planned.contains({r.order, r.line}))
      known.lines.push_back({r.day, r.cut, r.quantity, r.papers, r.owner, r.one_heat});
  if (known.lines.size() < kLines) return std::nullopt;
  return known;
}

std::string LearnWorth(const PastDemand& past, allocator::Problem& problem) {
  std::set<std::pair<std::string, std::string>> planned;
  for (const allocator::Line& line : problem.lines) planned.emplace(line.order, line.line);
  std::size_t lines = 0, groups = 0;
  for (allocator::GroupException& group : problem.exceptions) {
    std::optional<year::Past> known = PastOf(past, group.section, group.grade, planned);
    if (!known) continue;
    Own own = OwnOf(problem, group.section, group.grade);
    if (own.price.micro <= 0) continue;
    Length longest;
    for (const Piece* p : own.pieces) {
      longest = std::max(longest, std::min(p->length, kLongest));
      if (p->kind == PieceKind::Drop && p->held.empty()) known->rack.push_back({p->length, p->papers, {}});
    }
    year::WorthRules rules;
    rules.replace_per_metre = own.price;
    rules.scrap_per_metre = own.scrap;
    rules.return_cost = {past.cents_return};
    rules.shelf_per_year = {past.cents_shelf_year};
    rules.kerf = group.rules.kerf;
    rules.grip = group.rules.grip;
    const year::WorthCurve curve(own.like, *known, rules, longest);
    auto rests = std::make_shared<allocator::LearnedWorth>();
    rests->step = kStep;
    Length most;
    for (Length l; l <= longest; l += kStep) {
      most = std::max(most, std::min(InBar(curve.Left(l), own.price), allocator::WorthOfBar({l.nm / 1000 * 1000})));
      rests->of.push_back(most);
    }
    for (Piece* p : own.pieces)
      if (p->kind == PieceKind::Drop && p->length >= group.rules.keep)
        p->worth = std::max(allocator::WorthOfRest(p->length, group.rules.keep, rests.get()),
                            std::min(InBar(curve.Racked(p->length), own.price), Length{p->length.nm / 1000 * 1000}));
    group.rules.rests = std::move(rests);
    lines += known->lines.size();
    ++groups;
  }
  if (groups == 0) return {};
  return "worth of rests: learned from " + std::to_string(lines) + " past lines, for " + std::to_string(groups) +
      (groups == 1 ? " section and grade" : " sections and grades");
}

}  // namespace heatkeep::planning
