#include "client/year/group_rack.h"

#include <numeric>
#include <stdexcept>
#include <utility>

namespace heatkeep::year {
namespace {

using allocator::LeftKind;
using allocator::PieceKind;

constexpr std::int64_t kCent = 1'000'000;
const allocator::FineMoney kPull{200 * kCent};  // 3 minutes at 40 an hour
const allocator::FineMoney kSetup{50 * kCent};

}  // namespace

GroupRack::GroupRack(const Group& group) : group_(&group), bars_(group.bars.size(), kLevel) { Restart(); }

void GroupRack::Receive(const std::vector<int>& need) {
  for (std::size_t b = 0; b < bars_.size(); ++b) {
    const int wanted = need.at(b);
    if (2 * bars_[b] >= kLevel && bars_[b] >= wanted) continue;
    const int count = kLevel + wanted - bars_[b];
    bars_[b] += count;
    account_.received += group_->bars[b] * count;
  }
}

allocator::Problem GroupRack::ProblemFor(const std::vector<DayLine>& lines, const allocator::GroupRules& rules) const {
  allocator::Problem problem;
  problem.rules = rules;
  problem.per_setup = kSetup;
  allocator::Piece piece;
  piece.section = group_->section;
  piece.grade = group_->grade;
  piece.costs = {group_->price_per_metre, group_->scrap_per_metre, {}, kPull};
  for (std::size_t b = 0; b < bars_.size(); ++b) {
    piece.tag = "bar " + std::to_string(b);
    piece.length = group_->bars[b];
    piece.count = bars_[b];
    problem.pieces.push_back(piece);
  }
  piece.kind = PieceKind::Drop;
  piece.square_ends = 1;
  piece.count = 1;
  for (std::size_t d = 0; d < drops_.size(); ++d) {
    piece.tag = "rest " + std::to_string(d);
    piece.length = drops_[d];
    problem.pieces.push_back(piece);
  }
  for (const DayLine& l : lines) {
    allocator::Line line;
    line.order = std::to_string(l.order);
    line.line = std::to_string(problem.lines.size() + 1);
    line.section = group_->section;
    line.grade = group_->grade;
    line.nominal = l.cut;
    line.quantity = l.quantity;
    problem.lines.push_back(line);
  }
  return problem;
}

void GroupRack::Apply(const allocator::Problem& problem, const allocator::Plan& plan) {
  std::vector<bool> used(drops_.size());
  std::vector<Length> made;
  for (const allocator::Layout& layout : plan.layouts) {
    const auto p = static_cast<std::size_t>(layout.piece);
    const Length length = problem.pieces.at(p).length;
    if (p < bars_.size()) {
      bars_[p] -= layout.repeat;
      account_.opened += length * layout.repeat;
      account_.bars_opened += layout.repeat;
    } else {
      if (layout.repeat != 1 || used.at(p - bars_.size())) throw std::logic_error("a drop is cut twice");
      used[p - bars_.size()] = true;
      ++account_.drops_used;
    }
    account_.trim += layout.trim * layout.repeat;
    account_.kerf += layout.kerf * layout.repeat;
    for (const allocator::Cut& cut : layout.cuts) account_.delivered += cut.length * cut.count * layout.repeat;
    if (layout.left_kind == LeftKind::Drop) made.insert(made.end(), static_cast<std::size_t>(layout.repeat), layout.left);
    if (layout.left_kind == LeftKind::Scrap) account_.scrap += layout.left * layout.repeat;
  }
  for (const int count : bars_)
    if (count < 0) throw std::logic_error("more bars are cut than there are");
  std::vector<Length> after;
  for (std::size_t d = 0; d < drops_.size(); ++d)
    if (!used[d]) after.push_back(drops_[d]);
  after.insert(after.end(), made.begin(), made.end());
  account_.drops_made += static_cast<int>(made.size());
  drops_ = std::move(after);
}

void GroupRack::Clear(std::size_t drop) {
  account_.scrap += drops_.at(drop);
  account_.cleared += drops_[drop];
  ++account_.drops_cleared;
  drops_.erase(drops_.begin() + static_cast<std::ptrdiff_t>(drop));
}

void GroupRack::Restart() {
  account_ = {};
  start_ = BarLength() + DropLength();
}

Length GroupRack::BarLength() const {
  Length sum;
  for (std::size_t b = 0; b < bars_.size(); ++b) sum += group_->bars[b] * bars_[b];
  return sum;
}

Length GroupRack::DropLength() const { return std::accumulate(drops_.begin(), drops_.end(), Length{}); }

Length GroupRack::Unexplained() const {
  const Account& a = account_;
  return start_ + a.received - a.delivered - a.kerf - a.trim - a.scrap - BarLength() - DropLength();
}

}  // namespace heatkeep::year
