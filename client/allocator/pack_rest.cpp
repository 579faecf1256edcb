#include "client/allocator/pack_rest.h"

#include <algorithm>
#include <map>
#include <unordered_set>

namespace heatkeep::allocator {
namespace {

class Packer {
 public:
  Packer(const Component& c, const std::vector<int>& demand, std::int64_t nodes) : nodes_(nodes) {
    room_ = c.sources.front().room.room.nm;
    for (std::size_t i = 0; i < demand.size(); ++i) {
      if (demand[i] <= 0) continue;
      item_.push_back(static_cast<int>(i));
      size_.push_back((c.items[i].length + c.sources.front().room.kerf).nm);
      left_.push_back(demand[i]);
      mark_.push_back(0x9E3779B97F4A7C15ULL * (i + 1) ^ (0xBF58476D1CE4E5B9ULL * (i + 7) >> 9));
      need_ += size_.back() * demand[i];
    }
    for (std::size_t n = 0; n < left_.size(); ++n) hash_ += mark_[n] * static_cast<std::uint64_t>(left_[n]);
  }

  bool Pack(std::int64_t pieces) {
    if (pieces <= 0 || need_ > pieces * room_) return need_ == 0;
    if (!size_.empty() && size_.front() > room_) return false;
    return Open(pieces * room_ - need_);
  }

  std::vector<Cuts> Packing() const {
    std::vector<Cuts> all;
    for (const auto& piece : done_) {
      std::map<int, int> counts;
      for (std::size_t n : piece) ++counts[item_[n]];
      all.emplace_back(counts.begin(), counts.end());
    }
    return all;
  }
  std::int64_t steps() const { return steps_; }

 private:
  bool Open(std::int64_t waste) {
    std::size_t first = 0;
    while (first < left_.size() && left_[first] == 0) ++first;
    if (first == left_.size()) return true;
    if (failed_.count(hash_) != 0) return false;
    done_.emplace_back();
    Put(first);
    if (Fill(first, room_ - size_[first], waste)) return true;
    Take(first);
    done_.pop_back();
    if (steps_ < nodes_) failed_.insert(hash_);
    return false;
  }

  // Goes on filling the piece with cuts from `from` on.
  bool Fill(std::size_t from, std::int64_t rest, std::int64_t waste) {
    if (++steps_ >= nodes_) return false;
    for (std::size_t n = from; n < left_.size(); ++n) {
      ++steps_;
      if (left_[n] == 0 || size_[n] > rest) continue;
      Put(n);
      if (Fill(n, rest - size_[n], waste)) return true;
      Take(n);
      if (steps_ >= nodes_) return false;
    }
    if (rest > waste) return false;
    for (std::size_t n = left_.size(); n-- > 0;)  // only maximal fillings
      if (left_[n] > 0) {
        if (size_[n] <= rest) return false;
        break;
      }
    return Open(waste - rest);
  }

  void Put(std::size_t n) {
    --left_[n];
    hash_ -= mark_[n];
    done_.back().push_back(n);
  }
  void Take(std::size_t n) {
    ++left_[n];
    hash_ += mark_[n];
    done_.back().pop_back();
  }

  std::int64_t nodes_, steps_ = 0, room_ = 0, need_ = 0;
  std::vector<int> item_, left_;
  std::vector<std::int64_t> size_;
  std::vector<std::uint64_t> mark_;
  std::uint64_t hash_ = 0;
  std::unordered_set<std::uint64_t> failed_;
  std::vector<std::vector<std::size_t>> done_;
};

}  // namespace

std::optional<std::vector<Cuts>> PackRest(const Component& c, const std::vector<int>& demand, std::int64_t pieces,
                                          std::int64_t nodes, std::int64_t& steps) {
  Packer packer(c, demand, nodes);
  const bool packed = packer.Pack(pieces);
  steps += 5 * packer.steps();
  if (!packed) return std::nullopt;
  return packer.Packing();
}

}  // namespace heatkeep::allocator
