#include "client/year/year.h"

#include <algorithm>
#include <atomic>
#include <exception>
#include <functional>
#include <mutex>
#include <stdexcept>
#include <thread>

#include "client/year/dice.h"
#include "client/year/learned_choice.h"
#include "client/year/plain_plan.h"

namespace heatkeep::year {
namespace {

// Runs work(0..count-1) on a few threads; the first failure is thrown on.
template <class Work>
void SideBySide(int threads, std::size_t count, const Work& work) {
  std::atomic<std::size_t> next{0};
  std::exception_ptr failure;
  std::mutex mutex;
  const auto one = [&] {
    for (std::size_t i = next++; i < count; i = next++) try {
        work(i);
      } catch (...) {
        const std::lock_guard lock(mutex);
        failure = std::current_exception();
      }
  };
  {
    std::vector<std::jthread> others;
    for (int t = 1; t < threads; ++t) others.emplace_back(one);
    one();
  }
  if (failure) std::rethrow_exception(failure);
}

std::vector<int> NeedOf(const Group& group, const allocator::Problem& problem) {
  allocator::Problem endless = problem;
  for (std::size_t b = 0; b < group.bars.size(); ++b) endless.pieces[b].count = std::nullopt;
  std::vector<int> need(group.bars.size());
  for (const auto& layout : NewBarPlan(endless).layouts) need.at(static_cast<std::size_t>(layout.piece)) += layout.repeat;
  return need;
}

// Each drop comes to mind with a chance of 6 in 10, by day, group and its place in the row.
void Forget(allocator::Problem& problem, const DayLine& when) {
  Dice dice(static_cast<std::uint64_t>(when.day + 10'000) * 1000 + static_cast<std::uint64_t>(when.group));
  for (allocator::Piece& piece : problem.pieces)
    if (piece.kind == allocator::PieceKind::Drop && !dice.Percent(60)) piece.count = 0;
}

// One group's days.
class GroupYear {
 public:
  GroupYear(const Group& group, const std::vector<DayLine>& lines, GroupRack rack, Policy policy, int iterations)
      : group_(group), lines_(lines), rack_(std::move(rack)), policy_(policy), iterations_(iterations), learned_(group, lines) {}

  void Live(int first, int last, const std::function<void(int day, const GroupRack&)>& evening = {}) {
    auto at = std::find_if(lines_.begin(), lines_.end(), [&](const DayLine& l) { return l.day >= first; });
    allocator::GroupRules rules = group_.rules;
    for (int day = first; day <= last; ++day) {
      if (policy_ == Policy::LeastMoney && (day - first) % kMonth == 0) {
        learned_.Review(day, rack_);
        rules.keep = learned_.keep();
      }
      const auto end = std::find_if(at, lines_.end(), [&](const DayLine& l) { return l.day > day; });
      if (at != end) CutList({at, end}, rules);
      at = end;
      if (evening) evening(day, rack_);
    }
  }

  const GroupRack& rack() const { return rack_; }
  int lists() const { return lists_; }
  int by_clock() const { return by_clock_; }

 private:
  static constexpr int kMonth = 21;  // working days

  void CutList(const std::vector<DayLine>& list, const allocator::GroupRules& rules) {
    std::vector<int> need = NeedOf(group_, rack_.ProblemFor(list, rules));
    for (;; ++need.back()) {
      rack_.Receive(need);
      allocator::Problem problem = rack_.ProblemFor(list, rules);
      if (policy_ == Policy::FromMemory) Forget(problem, list.front());
      const allocator::Plan plan =
          policy_ == Policy::LeastMoney ? learned_.Plan(problem, iterations_) : PlanOf(policy_, problem, iterations_);
      by_clock_ += plan.ended_by == allocator::EndedBy::Clock ? 1 : 0;
      if (!plan.shorts.empty()) continue;  // one long bar more
      rack_.Apply(problem, plan);
      break;
    }
    ++lists_;
    if (rack_.Unexplained().nm != 0) throw std::logic_error("a group's account does not close");
  }

  const Group& group_;
  const std::vector<DayLine>& lines_;
  GroupRack rack_;
  Policy policy_;
  int iterations_;
  LearnedChoice learned_;
  int lists_ = 0, by_clock_ = 0;
};

void Add(DayFigures& to, const DayFigures& more) {
  to.drops += more.drops;
  to.drop_length += more.drop_length;
  to.drop_mass += more.drop_mass;
  to.bought += more.bought;
}

DayFigures FiguresOf(const Group& group, const GroupRack& rack) {
  return {static_cast<int>(rack.drops().size()), rack.DropLength(), MassOf(group, rack.DropLength()), MassOf(group, rack.account().opened)};
}

void Add(YearResult& to, const Group& group, const GroupRack& rack) {
  const Account& a = rack.account();
  Account& t = to.total;
  for (Length Account::*part :
       {&Account::received, &Account::opened, &Account::delivered, &Account::kerf, &Account::trim, &Account::scrap, &Account::cleared})
    t.*part += a.*part;
  for (int Account::*part : {&Account::bars_opened, &Account::drops_used, &Account::drops_made, &Account::drops_cleared})
    t.*part += a.*part;
  to.received += MassOf(group, a.received);
  to.bought += MassOf(group, a.opened);
  to.delivered += MassOf(group, a.delivered);
  to.kerf += MassOf(group, a.kerf);
  to.trim += MassOf(group, a.trim);
  to.scrap += MassOf(group, a.scrap);
  to.cleared += MassOf(group, a.cleared);
  to.bars_end += MassOf(group, rack.BarLength());
}

}  // namespace

YearStart::YearStart(const Shop& shop, const YearSettings& settings) : shop_(shop), settings_(settings), lines_(shop.groups.size()) {
  for (const DayLine& line : shop.lines) lines_[static_cast<std::size_t>(line.group)].push_back(line);
  for (const Group& group : shop.groups) racks_.emplace_back(group);
  SideBySide(settings.threads, racks_.size(), [&](std::size_t g) {
    GroupYear past(shop.groups[g], lines_[g], racks_[g], Policy::Plain, settings.iterations);
    past.Live(-shop.before, -1);
    racks_[g] = past.rack();
    racks_[g].Restart();
  });
}

YearResult YearStart::Live(Policy policy) const {
  YearResult result;
  result.policy = policy;
  result.days.resize(static_cast<std::size_t>(shop_.days));
  for (std::size_t g = 0; g < racks_.size(); ++g) {
    Add(result.start, FiguresOf(shop_.groups[g], racks_[g]));
    result.bars_start += MassOf(shop_.groups[g], racks_[g].BarLength());
  }
  std::mutex mutex;
  SideBySide(settings_.threads, racks_.size(), [&](std::size_t g) {
    const Group& group = shop_.groups[g];
    std::vector<DayFigures> days(result.days.size());
    GroupYear year(group, lines_[g], racks_[g], policy, settings_.iterations);
    year.Live(0, shop_.days - 1, [&](int day, const GroupRack& rack) { days[static_cast<std::size_t>(day)] = FiguresOf(group, rack); });
    const std::lock_guard lock(mutex);
    for (std::size_t d = 0; d < days.size(); ++d) Add(result.days[d], days[d]);
    Add(result, group, year.rack());
    result.lists += year.lists();
    result.by_clock += year.by_clock();
  });
  return result;
}

}  // namespace heatkeep::year
