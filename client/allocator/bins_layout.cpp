#include "client/allocator/bins_layout.h"

#include <algorithm>

namespace heatkeep::allocator {
namespace {

std::size_t At(std::int64_t i) { return static_cast<std::size_t>(i); }
constexpr std::int64_t kFewCells = 3'000, kMostMarks = 60'000'000;
constexpr std::size_t kMostStates = 3'000'000;

}  // namespace

std::int64_t DearestFill::Find(const std::vector<std::int64_t>& price, const std::vector<int>& demand, std::int64_t above, std::size_t most,
                               std::vector<Fill>& fills) {
  chunks_.clear();
  fills.clear();
  candidates_.clear();
  for (std::size_t i = 0; i < bins_.size.size(); ++i) {
    if (price[i] <= 0) continue;
    std::int64_t left = std::min<std::int64_t>(demand[i], bins_.capacity / bins_.size[i]);
    for (std::int64_t n = 1; left > 0; n *= 2) {
      const std::int64_t take = std::min(n, left);
      left -= take;
      chunks_.push_back({static_cast<int>(i), static_cast<int>(take), bins_.size[i] * take, price[i] * take});
    }
  }
  std::stable_sort(chunks_.begin(), chunks_.end(), [](const Chunk& a, const Chunk& b) {
    return static_cast<double>(a.price) * static_cast<double>(b.size) > static_cast<double>(b.price) * static_cast<double>(a.size);
  });
  std::int64_t best = above;
  listed_ = bins_.capacity > kFewCells && List(best);
  if (!listed_ && static_cast<std::int64_t>(chunks_.size()) * bins_.capacity > kMostMarks) {
    // Neither way is open: the fills met so far, and a bound as if the best price per size filled the bin.
    listed_ = true;
    best = std::max(above, static_cast<std::int64_t>(static_cast<double>(bins_.capacity) * ratio_.front()) + 1);
  } else if (!listed_) {
    candidates_.clear();
    best = Table(above);
  }
  std::stable_sort(candidates_.begin(), candidates_.end(), [](const auto& a, const auto& b) { return a.first > b.first; });
  std::vector<int> rest = demand;
  for (std::size_t n = 0; n < candidates_.size() && n < 40 * most && fills.size() < most; ++n) {
    Fill fill = FillOf(n);
    if (!std::all_of(fill.begin(), fill.end(), [&](const auto& cut) { return rest[At(cut.first)] >= cut.second; })) continue;
    int times = 1'000'000;
    for (const auto& [item, count] : fill) times = std::min(times, rest[At(item)] / count);
    for (const auto& [item, count] : fill) rest[At(item)] -= times * count;
    fills.push_back(std::move(fill));
  }
  return best;
}

Fill DearestFill::FillOf(std::size_t candidate) {
  std::vector<std::pair<int, int>> parts;
  if (listed_) {
    for (std::int32_t s = candidates_[candidate].second; s > 0; s = states_[At(s)].from) {
      const Chunk& chunk = chunks_[At(states_[At(s)].chunk)];
      parts.push_back({chunk.item, chunk.count});
    }
  } else {
    auto q = At(candidates_[candidate].second);
    std::int64_t c = bins_.capacity - chunks_[q].size;
    parts.push_back({chunks_[q].item, chunks_[q].count});
    while (q-- > 0)
      if (c >= chunks_[q].size && taken_[q][At(c)]) {
        parts.push_back({chunks_[q].item, chunks_[q].count});
        c -= chunks_[q].size;
      }
  }
  std::sort(parts.begin(), parts.end());
  Fill fill;
  for (const auto& [item, count] : parts) {
    if (!fill.empty() && fill.back().first == item) fill.back().second += count;
    else fill.push_back({item, count});
  }
  return fill;
}

std::int64_t DearestFill::Table(std::int64_t above) {
  // best_[c]: the most that fills of at most c are worth.
  best_.assign(At(bins_.capacity) + 1, 0.0);
  if (taken_.size() < chunks_.size()) taken_.resize(chunks_.size());
  for (std::size_t q = 0; q < chunks_.size(); ++q) {
    const std::int64_t size = chunks_[q].size;
    const auto price = static_cast<double>(chunks_[q].price);
    taken_[q].resize(At(bins_.capacity) + 1);
    double* const to = best_.data();
    char* const mark = taken_[q].data();
    const auto with = static_cast<std::int64_t>(to[bins_.capacity - size] + price);
    if (with > above) candidates_.push_back({with, static_cast<std::int32_t>(q)});
    for (std::int64_t c = bins_.capacity; c >= size; --c) {
      const double now = to[c - size] + price;
      const bool better = now > to[c];
      to[c] = better ? now : to[c];
      mark[c] = better;
    }
    steps_ += bins_.capacity + 1 - size;
  }
  return std::max(above, static_cast<std::int64_t>(best_.back()));
}

bool DearestFill::List(std::int64_t& above) {
  ratio_.assign(chunks_.size() + 1, 0.0);
  for (std::size_t q = chunks_.size(); q-- > 0;)
    ratio_[q] = std::max(ratio_[q + 1], static_cast<double>(chunks_[q].price) / static_cast<double>(chunks_[q].size) * (1 + 1e-12));
  const std::int64_t capacity = bins_.capacity;
  std::int64_t best = above;
  const auto hopeful = [&](std::int64_t size, std::int64_t price, std::size_t next) {
    return static_cast<double>(price) + static_cast<double>(capacity - size) * ratio_[next] + 1 > static_cast<double>(best);
  };
  states_.clear();
  states_.push_back({0, 0, -1, -1});
  list_.assign(1, 0);
  for (std::size_t q = 0; q < chunks_.size() && !list_.empty(); ++q) {
    const Chunk& chunk = chunks_[q];
    next_.clear();
    std::int64_t top = -1;
    const auto keep = [&](std::int32_t s) {
      top = states_[At(s)].price;
      next_.push_back(s);
    };
    std::size_t old = 0;
    // What was there before a size is kept in order of size, each dearer than all lighter ones.
    const auto keep_old = [&](std::int64_t upto) {
      for (; old < list_.size(); ++old) {
        const State& s = states_[At(list_[old])];
        if (s.size > upto) return;
        if (s.price > top && hopeful(s.size, s.price, q + 1)) keep(list_[old]);
      }
    };
    for (std::size_t from = 0; from < list_.size(); ++from) {
      const State s = states_[At(list_[from])];
      const std::int64_t size = s.size + chunk.size, price = s.price + chunk.price;
      if (size > capacity) break;
      keep_old(size - 1);
      if (price <= top) continue;
      if (old < list_.size() && states_[At(list_[old])].size == size && states_[At(list_[old])].price >= price) continue;
      if (price > above) candidates_.push_back({price, static_cast<std::int32_t>(states_.size())});
      if (price > best) best = price;
      else if (price <= above && !hopeful(size, price, q + 1)) continue;
      states_.push_back({size, price, list_[from], static_cast<std::int32_t>(q)});
      keep(static_cast<std::int32_t>(states_.size() - 1));
    }
    keep_old(capacity);
    steps_ += static_cast<std::int64_t>(4 * (list_.size() + next_.size()));
    list_.swap(next_);
    if (states_.size() > kMostStates) return false;
  }
  above = best;
  return true;
}

}  // namespace heatkeep::allocator
