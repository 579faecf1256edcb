#include "client/allocator/bins_quick.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <unordered_set>

#include "client/allocator/starts.h"

namespace heatkeep::allocator {
namespace {

std::size_t At(int i) { return static_cast<std::size_t>(i); }

Packing Counted(const std::vector<std::vector<int>>& bins) {
  std::map<Fill, int> merged;
  for (std::vector<int> items : bins) {
    std::sort(items.begin(), items.end());
    Fill fill;
    for (int i : items) {
      if (!fill.empty() && fill.back().first == i) ++fill.back().second;
      else fill.push_back({i, 1});
    }
    if (!fill.empty()) ++merged[fill];
  }
  return {merged.begin(), merged.end()};
}

// Fills one bin around its longest cut, cuts in a given order.
class OneBin {
 public:
  OneBin(const Bins& bins, const std::vector<int>& order, std::vector<int>& left, int looks)
      : bins_(bins), order_(order), left_(left), looks_(looks) {}

  std::vector<int> Filled(int first, std::int64_t enough) {
    enough_ = enough;
    seen_ = 0;
    now_.assign(1, first);
    --left_[At(first)];
    const std::int64_t rest = bins_.capacity - bins_.size[At(first)];
    least_ = rest + 1;
    shortest_ = bins_.capacity;
    for (std::size_t i = left_.size(); i-- > 0;)
      if (left_[i] > 0) {
        shortest_ = bins_.size[i];
        break;
      }
    Extend(0, rest);
    ++left_[At(first)];
    return best_;
  }
  std::int64_t steps() const { return steps_; }

 private:
  bool Extend(std::size_t from, std::int64_t rest) {
    if (rest < least_) {
      least_ = rest;
      best_ = now_;
      if (rest <= enough_) return true;
    }
    if (rest < shortest_) return false;
    for (std::size_t n = from; n < order_.size(); ++n) {
      ++steps_;
      const int i = order_[n];
      if (left_[At(i)] == 0 || bins_.size[At(i)] > rest) continue;
      if (++seen_ > looks_) return true;
      --left_[At(i)];
      now_.push_back(i);
      const bool done = Extend(n, rest - bins_.size[At(i)]);
      now_.pop_back();
      ++left_[At(i)];
      if (done) return true;
    }
    return false;
  }

  const Bins& bins_;
  const std::vector<int>& order_;
  std::vector<int>& left_;
  int looks_, seen_ = 0;
  std::int64_t steps_ = 0;
  std::int64_t enough_ = 0, least_ = 0, shortest_ = 1;
  std::vector<int> now_, best_;
};

class Packer {
 public:
  Packer(const Bins& bins, const std::vector<int>& demand, std::int64_t looks) : bins_(bins), left_(demand), looks_(looks) {
    for (std::size_t n = 0; n < left_.size(); ++n) {
      mark_.push_back(0x9E3779B97F4A7C15ULL * (n + 1) ^ (0xBF58476D1CE4E5B9ULL * (n + 7) >> 9));
      hash_ += mark_[n] * static_cast<std::uint64_t>(left_[n]);
      need_ += bins.size[n] * left_[n];
    }
  }

  bool Pack(std::int64_t goal) { return need_ <= goal * bins_.capacity && Open(goal * bins_.capacity - need_); }
  const std::vector<std::vector<int>>& packed() const { return done_; }
  std::int64_t steps() const { return steps_; }

 private:
  bool Open(std::int64_t waste) {
    std::size_t first = 0;
    while (first < left_.size() && left_[first] == 0) ++first;
    if (first == left_.size()) return true;
    if (failed_.count(hash_) != 0) return false;
    done_.emplace_back();
    Put(first);
    if (Extend(first, bins_.capacity - bins_.size[first], waste)) return true;
    Take(first);
    done_.pop_back();
    if (steps_ < looks_) failed_.insert(hash_);
    return false;
  }

  // Goes on filling the bin with cuts from `from` on.
  bool Extend(std::size_t from, std::int64_t rest, std::int64_t waste) {
    if (++steps_ >= looks_) return false;
    for (std::size_t n = from; n < left_.size(); ++n) {
      ++steps_;
      if (left_[n] == 0 || bins_.size[n] > rest) continue;
      Put(n);
      if (Extend(n, rest - bins_.size[n], waste)) return true;
      Take(n);
      if (steps_ >= looks_) return false;
    }
    if (rest > waste) return false;
    for (std::size_t n = left_.size(); n-- > 0;)
      if (left_[n] > 0) {
        if (bins_.size[n] <= rest) return false;
        break;
      }
    return Open(waste - rest);
  }

  void Put(std::size_t n) {
    --left_[n];
    hash_ -= mark_[n];
    done_.back().push_back(static_cast<int>(n));
  }
  void Take(std::size_t n) {
    ++left_[n];
    hash_ += mark_[n];
    done_.back().pop_back();
  }

  const Bins& bins_;
  std::vector<int> left_;
  std::int64_t looks_, steps_ = 0, need_ = 0;
  std::vector<std::uint64_t> mark_;
  std::uint64_t hash_ = 0;
  std::unordered_set<std::uint64_t> failed_;
  std::vector<std::vector<int>> done_;
};

}  // namespace

Packing BestFit(const Bins& bins, const std::vector<int>& demand) {
  std::multimap<std::int64_t, std::size_t> open;  // by room left
  std::vector<std::vector<int>> all;
  for (std::size_t i = 0; i < demand.size(); ++i)
    for (int n = 0; n < demand[i]; ++n) {
      auto it = open.lower_bound(bins.size[i]);
      std::int64_t room = bins.capacity;
      std::size_t at = all.size();
      if (it != open.end()) {
        room = it->first;
        at = it->second;
        open.erase(it);
      } else {
        all.emplace_back();
      }
      all[at].push_back(static_cast<int>(i));
      open.emplace(room - bins.size[i], at);
    }
  return Counted(all);
}

Packing OneByOne(const Bins& bins, const std::vector<int>& demand, std::int64_t goal, int looks, std::uint64_t chance,
                 const BinsControl& control) {
  std::vector<int> left = demand, order(demand.size());
  std::iota(order.begin(), order.end(), 0);
  if (chance != 0) {
    Chance dice(chance);
    std::vector<double> key;
    for (std::int64_t size : bins.size) key.push_back(static_cast<double>(size) * (1 - 0.3 * dice.Unit()));
    std::stable_sort(order.begin(), order.end(), [&](int a, int b) { return key[At(a)] > key[At(b)]; });
  }
  std::int64_t need = 0;
  for (std::size_t i = 0; i < left.size(); ++i) need += left[i] * bins.size[i];
  OneBin one(bins, order, left, looks);
  std::vector<std::vector<int>> all;
  for (std::size_t first = 0; first < left.size();) {
    if (left[first] == 0) {
      ++first;
      continue;
    }
    const std::int64_t more = goal - static_cast<std::int64_t>(all.size());
    const std::int64_t waste = more > 0 ? (more * bins.capacity - need) / more : 0;
    const std::int64_t before = one.steps();
    all.push_back(one.Filled(static_cast<int>(first), std::max<std::int64_t>(0, waste)));
    control.spend(2 * (one.steps() - before));
    for (int i : all.back()) {
      --left[At(i)];
      need -= bins.size[At(i)];
    }
  }
  return Counted(all);
}

std::optional<Packing> PackRest(const Bins& bins, const std::vector<int>& demand, std::int64_t goal, std::int64_t looks,
                                const BinsControl& control) {
  Packer packer(bins, demand, looks);
  const bool packed = packer.Pack(goal);
  control.spend(5 * packer.steps());
  if (!packed) return std::nullopt;
  return Counted(packer.packed());
}

}  // namespace heatkeep::allocator
