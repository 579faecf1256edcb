#include "client/allocator/bins_branch.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace heatkeep::allocator {
namespace {

std::size_t At(std::int64_t i) { return static_cast<std::size_t>(i); }
__extension__ using Wide = __int128;

// Every filling around the first cut left to which nothing can be added, within a loss and a waste. Left out are those
// that some other one can stand for: a cut of it changed for a longer one still left, or two cuts for one at least as
// long as both (what was changed goes where the longer one would have been); but not if `wanted` has it.
class Fillings {
 public:
  static constexpr std::size_t kMost = 20'000;
  static constexpr std::int64_t kMostSteps = 5'000'000, kMostTable = 4'000'000;

  Fillings(const Bins& bins, const std::vector<int>& rest, const std::vector<std::int64_t>& price, std::int64_t top, std::int64_t loss,
           std::int64_t waste, const std::map<Fill, double>& wanted)
      : bins_(bins), left_(rest), wanted_(wanted), price_(price), least_price_(top - loss), least_size_(bins.capacity - waste),
        counts_(rest.size(), 0) {
    const std::size_t n = rest.size();
    if (static_cast<std::int64_t>(n) * (bins.capacity + 1) <= kMostTable) Table();
    ratio_.assign(n + 1, 0.0);
    shortest_.assign(n + 1, bins.capacity + 1);
    for (std::size_t i = n; i-- > 0;) {
      ratio_[i] = ratio_[i + 1];
      shortest_[i] = shortest_[i + 1];
      if (rest[i] == 0) continue;
      ratio_[i] = std::max(ratio_[i], static_cast<double>(price[i]) / static_cast<double>(bins.size[i]));
      shortest_[i] = std::min(shortest_[i], bins.size[i]);
    }
  }

  // false: there were too many.
  bool Run(std::vector<std::pair<std::int64_t, Fill>>& found) {
    found_ = &found;
    std::size_t first = 0;
    while (left_[first] == 0) ++first;
    counts_[first] = 1;
    return Extend(first, bins_.size[first], price_[first]);
  }
  std::int64_t steps() const { return steps_; }

 private:
  void Table() {
    const std::size_t n = left_.size(), width = At(bins_.capacity) + 1;
    best_.assign((n + 1) * width, 0);
    for (std::size_t i = n; i-- > 0;) {
      const std::int64_t* const from = &best_[(i + 1) * width];
      std::int64_t* const to = &best_[i * width];
      std::copy(from, from + width, to);
      for (int k = 1; k <= left_[i] && k * bins_.size[i] <= bins_.capacity; ++k) {
        const std::int64_t size = k * bins_.size[i], value = k * price_[i];
        for (std::int64_t c = size; c <= bins_.capacity; ++c) to[c] = std::max(to[c], from[c - size] + value);
      }
    }
  }
  bool Hopeful(std::size_t i, std::int64_t size, std::int64_t price) const {
    const std::int64_t room = bins_.capacity - size;
    if (!best_.empty()) return price + best_[i * (At(bins_.capacity) + 1) + At(room)] >= least_price_;
    return static_cast<double>(price) + static_cast<double>(room) * ratio_[i] * (1 + 1e-12) + 1 >= static_cast<double>(least_price_);
  }

  bool Extend(std::size_t i, std::int64_t size, std::int64_t price) {
    if (++steps_ > kMostSteps) return false;
    for (; i < left_.size() && Hopeful(i, size, price); ++i) {
      if (shortest_[i] > bins_.capacity - size) break;
      if (counts_[i] >= left_[i] || size + bins_.size[i] > bins_.capacity) continue;
      ++steps_;
      ++counts_[i];
      const bool all = Extend(i, size + bins_.size[i], price + price_[i]);
      --counts_[i];
      if (!all) return false;
    }
    if (size < least_size_ || price < least_price_) return true;
    for (std::size_t j = left_.size(); j-- > 0;)
      if (counts_[j] < left_[j]) {
        if (bins_.size[j] <= bins_.capacity - size) return true;
        break;
      }
    Fill fill;
    for (std::size_t j = 0; j < counts_.size(); ++j)
      if (counts_[j] > 0) fill.push_back({static_cast<int>(j), counts_[j]});
    if (Replaceable(fill, bins_.capacity - size) && wanted_.count(fill) == 0) return true;
    found_->push_back({price, std::move(fill)});
    return found_->size() < kMost;
  }

  // Is there a cut left of a size from `least` to `most`?
  bool Left(std::int64_t least, std::int64_t most) const {
    const auto descending = [](std::int64_t size, std::int64_t value) { return size > value; };
    auto i = static_cast<std::size_t>(std::lower_bound(bins_.size.begin(), bins_.size.end(), most, descending) - bins_.size.begin());
    for (; i < left_.size() && bins_.size[i] >= least; ++i)
      if (counts_[i] < left_[i]) return true;
    return false;
  }
  bool Replaceable(const Fill& fill, std::int64_t waste) const {
    for (std::size_t a = 0; a < fill.size(); ++a) {
      const std::int64_t one = bins_.size[At(fill[a].first)];
      if (waste > 0 && Left(one + 1, one + waste)) return true;
      for (std::size_t b = fill[a].second > 1 ? a : a + 1; b < fill.size(); ++b) {
        const std::int64_t two = one + bins_.size[At(fill[b].first)];
        if (Left(two, two + waste)) return true;
      }
    }
    return false;
  }

  const Bins& bins_;
  const std::vector<int>& left_;
  const std::map<Fill, double>& wanted_;
  const std::vector<std::int64_t>& price_;
  std::int64_t least_price_, least_size_, steps_ = 0;
  std::vector<int> counts_;
  std::vector<std::int64_t> best_, shortest_;  // best_: the most that cuts from i on are worth in a room
  std::vector<double> ratio_;
  std::vector<std::pair<std::int64_t, Fill>>* found_ = nullptr;
};

}  // namespace

BinsBranch::Answer BinsBranch::Within(std::int64_t goal, Packing& found) {
  std::vector<int> rest = bins_.demand;
  taken_.clear();
  const Answer answer = Try(rest, goal);
  if (answer == Answer::Yes) found = taken_;
  return answer;
}

// Is the relaxation's answer whole, or does it become so when what is nearly whole is made so?
bool BinsBranch::Whole(const std::vector<int>& rest, std::int64_t more) {
  std::vector<int> left = rest;
  Packing all;
  for (const auto& [fill, x] : relaxation_.Used()) {
    const auto times = static_cast<int>(std::llround(x));
    if (std::abs(x - times) > 1e-5) return false;
    more -= times;
    for (const auto& [item, count] : fill) left[At(item)] -= times * count;
    all.push_back({fill, times});
  }
  if (more < 0 || std::any_of(left.begin(), left.end(), [](int n) { return n > 0; })) return false;
  taken_.insert(taken_.end(), all.begin(), all.end());
  return true;
}

bool BinsBranch::Children(const std::vector<int>& rest, std::int64_t more, std::vector<Child>& children) {
  const std::vector<std::int64_t>& price = relaxation_.price();
  const std::int64_t top = relaxation_.top();
  Wide loss = Wide{top} * more, waste = Wide{bins_.capacity} * more;
  for (std::size_t i = 0; i < rest.size(); ++i) {
    loss -= Wide{price[i]} * rest[i];
    waste -= Wide{bins_.size[i]} * rest[i];
  }
  if (loss < 0 || waste < 0) return true;
  std::map<Fill, double> use;
  for (auto& [fill, x] : relaxation_.Used()) use.emplace(std::move(fill), x);
  Fillings fillings(bins_, rest, price, top, static_cast<std::int64_t>(std::min<Wide>(loss, top)),
                    static_cast<std::int64_t>(std::min<Wide>(waste, bins_.capacity)), use);
  std::vector<std::pair<std::int64_t, Fill>> found;
  const bool all = fillings.Run(found);
  control_.spend(3 * fillings.steps());
  for (auto& [worth, fill] : found) {
    const auto at = use.find(fill);
    children.push_back({at == use.end() ? 0.0 : at->second, top - worth, std::move(fill)});
  }
  std::stable_sort(children.begin(), children.end(),
                   [](const Child& a, const Child& b) { return a.use != b.use ? a.use > b.use : a.loss < b.loss; });
  return all;
}

BinsBranch::Answer BinsBranch::Try(std::vector<int>& rest, std::int64_t more) {
  if (std::all_of(rest.begin(), rest.end(), [](int n) { return n == 0; })) return Answer::Yes;
  if (more <= 0 || failed_.count(rest) != 0) return Answer::No;
  if (++seen_ > nodes_ || control_.enough()) return Answer::Unknown;
  if (relaxation_.Solve(rest, more + 1, 200) > more) {
    failed_.insert(rest);
    return Answer::No;
  }
  if (Whole(rest, more)) return Answer::Yes;
  std::vector<Child> children;
  bool all = Children(rest, more, children);
  const std::size_t before = taken_.size();
  for (const Child& child : children) {
    for (const auto& [item, count] : child.fill) rest[At(item)] -= count;
    taken_.push_back({child.fill, 1});
    const Answer answer = Try(rest, more - 1);
    if (answer == Answer::Yes) return answer;
    taken_.resize(before);
    for (const auto& [item, count] : child.fill) rest[At(item)] += count;
    if (answer == Answer::Unknown) all = false;
    if (seen_ > nodes_ || control_.enough()) return Answer::Unknown;
  }
  if (!all) return Answer::Unknown;
  failed_.insert(rest);
  return Answer::No;
}

}  // namespace heatkeep::allocator
