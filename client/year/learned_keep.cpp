#include "client/year/learned_keep.h"

#include "client/year/keep_length.h"

namespace heatkeep::year {
namespace {

const Money kReturn{267}, kShelf{300};  // measure, mark, label, rack; a place for a year
constexpr int kDaysAYear = 250;
constexpr KeepGrid kGrid{{100 * kNmPerMm}, {3000 * kNmPerMm}, {20 * kNmPerMm}};

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

Length LearnedKeep::Review(int today, GroupRack& rack) {
  if (lines_.empty() || lines_.front().day >= today) return keep_.value_or(group_.rules.keep);
  const WorthRules rules = RulesOf(group_);
  Past past;
  past.first_day = lines_.front().day;
  past.today = today;
  for (const DayLine& l : lines_)
    if (l.day < today) past.lines.push_back({l.day, l.cut, l.quantity, PaperType::None, {}, false});
  for (const Length drop : rack.drops()) past.rack.push_back({drop, PaperType::None, {}});
  for (std::size_t d = rack.drops().size(); d-- > 0;) {
    const RackDrop drop = past.rack[d];
    past.rack.erase(past.rack.begin() + static_cast<std::ptrdiff_t>(d));  // it does not stand before itself
    if (WorthOf(drop, past, rules, true).keep)
      past.rack.insert(past.rack.begin() + static_cast<std::ptrdiff_t>(d), drop);
    else
      rack.Clear(d);
  }
  keep_ = KeepLength({}, past, rules, kGrid, keep_);
  return *keep_;
}

}  // namespace heatkeep::year
