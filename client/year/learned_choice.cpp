#include "client/year/learned_choice.h"

#include <utility>

#include "client/allocator/value.h"
#include "client/year/policy.h"

namespace heatkeep::year {
namespace {

using allocator::Layout;
using allocator::PieceKind;

const Money kReturn{267}, kShelf{300};  // measure, mark, label, rack; a place for a year
constexpr int kDaysAYear = 250;
constexpr Length kLongest{6100 * kNmPerMm};

WorthRules RulesOf(const Group& group) {
  WorthRules rules;
  rules.replace_per_metre = group.price_per_metre;
  rules.scrap_per_metre = group.scrap_per_metre;
  rules.return_cost = kReturn;
  rules.shelf_per_year = kShelf;
  rules.horizon_days = kDaysAYear * 3 / 2;
  rules.days_a_year = kDaysAYear;
  rules.window_days = kDaysAYear * 2;
  rules.half_life_days = kDaysAYear;
  rules.kerf = group.rules.kerf;
  rules.grip = group.rules.grip;
  return rules;
}

}  // namespace

void LearnedChoice::Review(int today, GroupRack& rack) {
  if (lines_.empty() || lines_.front().day >= today) return;
  const WorthRules rules = RulesOf(group_);
  Past past;
  past.first_day = lines_.front().day;
  past.today = today;
  for (const DayLine& l : lines_)
    if (l.day < today) past.lines.push_back({l.day, l.cut, l.quantity, PaperType::None, {}, false});
  for (const Length drop : rack.drops()) past.rack.push_back({drop, PaperType::None, {}});
  curve_ = WorthCurve({}, past, rules, kLongest);
  for (std::size_t d = rack.drops().size(); d-- > 0;)
    if (curve_.Racked(rack.drops()[d]) <= allocator::Priced(group_.scrap_per_metre, rack.drops()[d])) rack.Clear(d);
  keep_ = curve_.KeepLength();
  learned_ = true;
}

FineMoney LearnedChoice::MoneyOf(const allocator::Problem& problem, const allocator::Plan& plan) const {
  std::int64_t sum = plan.value.layouts * problem.per_setup.micro;
  for (const Layout& layout : plan.layouts) {
    const auto& piece = problem.pieces[static_cast<std::size_t>(layout.piece)];
    std::int64_t one = piece.costs.per_pull.micro;
    one += piece.kind == PieceKind::Bar ? allocator::Priced(group_.price_per_metre, piece.length).micro : curve_.Racked(piece.length).micro;
    one -=
        layout.left >= problem.rules.keep ? curve_.Left(layout.left).micro : allocator::Priced(group_.scrap_per_metre, layout.left).micro;
    sum += one * layout.repeat;
  }
  return {sum};
}

allocator::Plan LearnedChoice::Plan(const allocator::Problem& problem, int iterations) const {
  std::optional<allocator::Plan> best;
  FineMoney least;
  const auto offer = [&](Policy way, const allocator::Problem& asked) {
    allocator::Plan plan = PlanOf(way, asked, iterations);
    const FineMoney money = MoneyOf(problem, plan);
    const bool better = !best || plan.value.unmet_pieces < best->value.unmet_pieces ||
        (plan.value.unmet_pieces == best->value.unmet_pieces && money < least);
    if (!better) return;
    best = std::move(plan);
    least = money;
  };
  offer(Policy::DropsFirst, problem);
  if (!learned_) return *best;
  offer(Policy::Plain, problem);
  offer(Policy::NewBar, problem);
  offer(Policy::LeastMoney, problem);
  for (std::size_t b = 0; b < group_.bars.size(); ++b) {  // one bar length at a time
    allocator::Problem one = problem;
    for (std::size_t other = 0; other < group_.bars.size(); ++other)
      if (other != b) one.pieces[other].count = 0;
    offer(Policy::DropsFirst, one);
  }
  return *best;
}

}  // namespace heatkeep::year
