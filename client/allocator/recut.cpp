#include "client/allocator/recut.h"

#include <algorithm>

#include "client/allocator/worth.h"

namespace heatkeep::allocator {
namespace {

std::size_t At(int i) { return static_cast<std::size_t>(i); }
constexpr std::int64_t kMostSplits = 1500;
constexpr std::size_t kMostPieces = 30'000;
constexpr int kTargets = 30;        // looked at for the one that lacks least
constexpr std::size_t kAsked = 10;  // times the pieces: partners asked before another target has its turn

struct Held {
  int source = 0;
  std::vector<std::pair<int, int>> cuts;  // (item, count), ascending
  Costs cost{};
  std::int64_t slack = 0;
};

// What one of the two gets in a split.
struct Side {
  int source = -1;  // -1: nothing
  Costs cost{};
  std::int64_t slack = 0;
};

class Recutter {
 public:
  Recutter(const Component& c, std::size_t key, const Solution& best, Chance& chance, const SearchControl& control)
      : c_(c), ranks_(c.priorities.size()), last_(key - c.priorities.size()), chance_(chance), control_(control) {
    for (const Source& s : c.sources) stock_.push_back(s.count);
    for (const auto& [p, times] : best.patterns)
      for (std::int64_t n = 0; n < times && pieces_.size() < kMostPieces + 1; ++n) {
        pieces_.push_back({p.source, p.cuts, p.cost, SlackOf(p.source, p.taken.nm)});
        --stock_[At(p.source)];
      }
    const Key what = c.keys[last_];
    gather_ = what == Key::NewLength || what == Key::BarsOpened || what == Key::ConsumedLength;
    slow_ = std::find(c.keys.begin(), c.keys.begin() + static_cast<std::ptrdiff_t>(last_) + 1, Key::Money) <=
        c.keys.begin() + static_cast<std::ptrdiff_t>(last_);
    Ladders();
    sum_ = {};
    for (const Held& h : pieces_)
      for (std::size_t k = 0; k <= last_; ++k) sum_[k] += h.cost[k];
  }

  bool Fit() const { return pieces_.size() >= 2 && pieces_.size() <= kMostPieces; }

  void Run(std::int64_t goal, std::int64_t looks) {
    goal_ = goal;
    until_ = looks;
    while (!Done()) {
      if (gather_) Climb();
      else Pair(chance_.Next() % pieces_.size(), Partner(), Want::Uneven);
    }
    control_.spend(6 * looks_);
  }

  bool better() const { return gained_; }

  std::vector<std::pair<Pattern, std::int64_t>> Patterns() const {
    std::vector<std::pair<Pattern, std::int64_t>> patterns;
    for (const Held& h : pieces_) {
      Pattern p;
      p.source = h.source;
      p.cuts = h.cuts;
      if (!h.cuts.empty() && Complete(c_, p)) patterns.push_back({std::move(p), 1});
    }
    return patterns;
  }

 private:
  enum class Want { Target, Random, Uneven };

  bool Done() {
    if (looks_ >= until_ || pieces_.size() < 2 || sum_[last_] <= goal_) return true;
    return (++asked_ & 255) == 0 && control_.enough();
  }

  std::int64_t SlackOf(int source, std::int64_t taken) const {
    return std::max<std::int64_t>(0, c_.sources[At(source)].room.room.nm - taken);
  }

  // By source: the bars its cuts may be moved to as they are, shortest first; a drop only has itself.
  void Ladders() {
    ladder_.resize(c_.sources.size());
    for (std::size_t s = 0; s < c_.sources.size(); ++s) {
      const Source& x = c_.sources[s];
      if (!x.bar) {
        ladder_[s] = {static_cast<int>(s)};
        if (stock_[s] > 0) unused_.push_back(static_cast<int>(s));
        continue;
      }
      for (std::size_t t = 0; t < c_.sources.size(); ++t)
        if (c_.sources[t].bar && c_.sources[t].own == x.own && c_.sources[t].view == x.view) ladder_[s].push_back(static_cast<int>(t));
      std::stable_sort(ladder_[s].begin(), ladder_[s].end(),
                       [&](int a, int b) { return c_.sources[At(a)].room.room < c_.sources[At(b)].room.room; });
    }
  }

  // How much more room the piece needs to become the next shorter one, or to be empty.
  std::int64_t Lacking(std::size_t i) const {
    const Held& h = pieces_[i];
    const std::int64_t room = c_.sources[At(h.source)].room.room.nm;
    std::int64_t next = 0;
    for (int s : ladder_[At(h.source)]) {
      const std::int64_t other = c_.sources[At(s)].room.room.nm;
      if (other < room && stock_[At(s)] > 0) next = std::max(next, other);
    }
    return room - next - h.slack;
  }

  // A piece, or (at pieces_.size()) a fresh drop.
  std::size_t Partner() {
    if (!unused_.empty() && chance_.Next() % 8 == 0) return pieces_.size();
    return chance_.Next() % pieces_.size();
  }

  // Gathers room on one bar until it gets shorter, or for as long as there are partners to ask.
  void Climb() {
    std::size_t target = pieces_.size();
    std::int64_t least = 0;
    for (int n = 0; n < kTargets; ++n) {
      const std::size_t i = chance_.Next() % pieces_.size();
      if (pieces_[i].cost[last_] <= 0) continue;
      const std::int64_t lacks = Lacking(i);
      if (target == pieces_.size() || lacks < least) target = i, least = lacks;
    }
    if (target == pieces_.size()) {
      looks_ += 100;
      return;
    }
    const std::int64_t before = sum_[last_];
    const std::size_t tries = kAsked * pieces_.size();
    for (std::size_t n = 0; n < tries && sum_[last_] == before && !Done(); ++n) {
      std::size_t partner = Partner();
      if (const std::size_t other = Partner();  // of two the one that has more to give
          std::max(other, partner) < pieces_.size() && other != target && pieces_[other].slack > pieces_[partner].slack)
        partner = other;
      if (target >= pieces_.size()) return;
      if (Pair(target, partner, Want::Target)) continue;
      const std::size_t third = Partner();
      if (partner < pieces_.size() && partner != target && third != target)
        Pair(partner, third, chance_.Next() % 2 == 0 ? Want::Uneven : Want::Random);
    }
  }

  // Deals the cuts of two pieces out anew; true if anything was changed.
  bool Pair(std::size_t a, std::size_t b, Want want) {
    if (a == b || a >= pieces_.size()) {
      ++looks_;
      return false;
    }
    const bool fresh = b >= pieces_.size();
    if (fresh) {
      const std::size_t n = chance_.Next() % unused_.size();
      if (stock_[At(unused_[n])] <= 0) {
        unused_[n] = unused_.back();
        unused_.pop_back();
        ++looks_;
        return false;
      }
      pieces_.push_back({unused_[n], {}, {}, 0});
      pieces_.back().slack = SlackOf(unused_[n], 0);
      --stock_[At(unused_[n])];
      b = pieces_.size() - 1;
    }
    const bool moved = Split(a, b, want);
    // An emptied piece goes back.
    for (std::size_t i : {std::max(a, b), std::min(a, b)})
      if (pieces_[i].cuts.empty()) {
        const int s = pieces_[i].source;
        ++stock_[At(s)];
        if (!c_.sources[At(s)].bar && stock_[At(s)] == 1 && !(fresh && i == b)) unused_.push_back(s);
        pieces_[i] = std::move(pieces_.back());
        pieces_.pop_back();
      }
    return moved;
  }

  bool Split(std::size_t a, std::size_t b, Want want) {
    a_ = &pieces_[a];
    b_ = &pieces_[b];
    want_ = want;
    Union();
    // A pair whose room together cannot help is not worth the look.
    if (want == Want::Target && b_->slack == 0 && ladder_[At(b_->source)].size() == 1) {
      ++looks_;
      return false;
    }
    best_cost_ = {};
    for (std::size_t k = 0; k <= last_; ++k) best_cost_[k] = a_->cost[k] + b_->cost[k];
    now_cost_ = best_cost_;
    best_rank_ = want == Want::Target ? static_cast<double>(a_->slack) : want == Want::Uneven ? Unevenness(a_->slack, b_->slack) : 0;
    equal_ = 0;
    found_ = false;
    ++stock_[At(a_->source)];
    ++stock_[At(b_->source)];
    Deal(0, 0, 0, 0, 0, 0, 0);
    looks_ += 20;
    const auto [source_a, source_b] = std::pair{found_ ? side_a_.source : a_->source, found_ ? side_b_.source : b_->source};
    if (found_) {
      for (std::size_t k = 0; k <= last_; ++k) sum_[k] += best_cost_[k] - now_cost_[k];
      if (best_cost_ < now_cost_) gained_ = true;
      Put(*a_, side_a_, true);
      Put(*b_, side_b_, false);
    }
    --stock_[At(source_a >= 0 ? source_a : a_->source)];
    --stock_[At(source_b >= 0 ? source_b : b_->source)];
    return found_;
  }

  static double Unevenness(std::int64_t a, std::int64_t b) {
    const double x = static_cast<double>(a), y = static_cast<double>(b);
    return x * x + y * y;
  }

  void Union() {
    items_.clear();
    std::size_t i = 0, j = 0;
    while (i < a_->cuts.size() || j < b_->cuts.size()) {
      const int x = i < a_->cuts.size() ? a_->cuts[i].first : 1 << 30, y = j < b_->cuts.size() ? b_->cuts[j].first : 1 << 30;
      Shared s;
      s.item = std::min(x, y);
      s.length = c_.items[At(s.item)].length.nm;
      if (x == s.item) s.in_a = a_->cuts[i++].second;
      s.all = s.in_a;
      if (y == s.item) s.all += b_->cuts[j++].second;
      const bool to_a = c_.views[At(c_.sources[At(a_->source)].view)].may[At(s.item)] != 0;
      const bool to_b = c_.views[At(c_.sources[At(b_->source)].view)].may[At(s.item)] != 0;
      s.least = to_b ? 0 : s.all;
      s.most = to_a ? s.all : 0;
      items_.push_back(s);
    }
    // Too many splits: some of the cuts stay where they are.
    for (;;) {
      std::int64_t splits = 1;
      std::size_t most = 0;
      for (std::size_t n = 0; n < items_.size(); ++n) {
        splits = std::min<std::int64_t>(splits * (items_[n].most - items_[n].least + 1), 1'000'000'000);
        if (items_[n].most - items_[n].least > items_[most].most - items_[most].least ||
            (items_[n].most - items_[n].least == items_[most].most - items_[most].least && chance_.Next() % 2 == 0))
          most = n;
      }
      if (splits <= kMostSplits) break;
      Shared& s = items_[most];
      if (s.most - s.least > 2) {
        s.least = std::max(s.least, s.in_a - 1);
        s.most = std::min(s.most, s.in_a + 1);
      } else {
        s.least = s.most = s.in_a;
      }
    }
    kerf_a_ = c_.sources[At(a_->source)].room.kerf.nm;
    kerf_b_ = c_.sources[At(b_->source)].room.kerf.nm;
    most_a_ = MostOf(a_->source);
    most_b_ = MostOf(b_->source);
  }

  std::int64_t MostOf(int source) const {
    std::int64_t most = 0;
    for (int s : ladder_[At(source)]) {
      const Room& room = c_.sources[At(s)].room;
      most = std::max({most, room.room.nm, room.exact.value_or(Length{}).nm});
    }
    return most;
  }

  void Deal(std::size_t n, std::int64_t taken_a, std::int64_t taken_b, std::int64_t longest_a, std::int64_t longest_b, int count_a,
            int count_b) {
    if (n == items_.size()) {
      Look(taken_a, taken_b, longest_a, longest_b, count_a, count_b);
      return;
    }
    Shared& s = items_[n];
    for (int x = s.least; x <= s.most; ++x) {
      const std::int64_t a = taken_a + (s.length + kerf_a_) * x, b = taken_b + (s.length + kerf_b_) * (s.all - x);
      if (a > most_a_) break;
      if (b > most_b_) continue;
      s.now = x;
      Deal(n + 1, a, b, x > 0 ? std::max(longest_a, s.length) : longest_a, x < s.all ? std::max(longest_b, s.length) : longest_b,
           count_a + x, count_b + s.all - x);
    }
  }

  // One side of a split: the first of its ladder that takes it.
  bool Choose(const Held& held, std::int64_t taken, std::int64_t longest, int count, bool is_a, int not_twice, Side& side) {
    side = {};
    if (count == 0) return true;
    for (int s : ladder_[At(held.source)]) {
      const Source& x = c_.sources[At(s)];
      if (stock_[At(s)] <= (s == not_twice ? 1 : 0) || !Fits(x.room, {taken}, {longest})) continue;
      side.source = s;
      side.slack = SlackOf(s, taken);
      return Cost(x, taken, count, is_a, side);
    }
    return false;
  }

  bool Cost(const Source& x, std::int64_t taken, int count, bool is_a, Side& side) {
    if (slow_) {
      Pattern p;
      p.source = side.source;
      for (const Shared& s : items_)
        if (const int n = is_a ? s.now : s.all - s.now; n > 0) p.cuts.push_back({s.item, n});
      if (!Complete(c_, p)) return false;
      looks_ += 10;
      side.cost = p.cost;
      return true;
    }
    for (std::size_t k = 0; k <= last_; ++k) switch (c_.keys[k]) {
        case Key::BarsOpened: side.cost[k] = x.bar ? 1 : 0; break;
        case Key::NewLength: side.cost[k] = x.bar && x.own ? x.length.nm : 0; break;
        case Key::ConsumedLength: side.cost[k] = x.length.nm; break;
        case Key::PiecesPulled: side.cost[k] = 1; break;
        case Key::LostWorth:
          side.cost[k] = (x.worth - (x.own ? WorthOfRest(EndingOf(x.room, {taken}, count).left, x.keep, x.rests) : Length{})).nm;
          looks_ += 5;
          break;
        default: break;
      }
    return true;
  }

  void Look(std::int64_t taken_a, std::int64_t taken_b, std::int64_t longest_a, std::int64_t longest_b, int count_a, int count_b) {
    ++looks_;
    Side a, b;
    if (!Choose(*a_, taken_a, longest_a, count_a, true, -1, a)) return;
    if (!Choose(*b_, taken_b, longest_b, count_b, false, a.source, b)) return;
    Costs cost{};
    for (std::size_t k = 0; k <= last_; ++k) cost[k] = a.cost[k] + b.cost[k];
    if (cost > best_cost_) return;
    double rank = 0;
    switch (want_) {
      case Want::Target: rank = static_cast<double>(a.slack); break;
      case Want::Uneven: rank = Unevenness(a.slack, b.slack); break;
      case Want::Random: break;
    }
    if (cost == best_cost_) {
      if (want_ == Want::Random) {
        if (chance_.Next() % static_cast<std::uint64_t>(++equal_) != 0) return;  // each as likely as any other
      } else if (rank <= best_rank_) {
        return;
      }
    } else {
      equal_ = 1;
    }
    best_cost_ = cost;
    best_rank_ = rank;
    side_a_ = a;
    side_b_ = b;
    found_ = true;
    for (Shared& s : items_) s.best = s.now;
  }

  void Put(Held& held, const Side& side, bool is_a) {
    held.cuts.clear();
    for (const Shared& s : items_)
      if (const int n = is_a ? s.best : s.all - s.best; n > 0) held.cuts.push_back({s.item, n});
    if (side.source >= 0) held.source = side.source;
    held.cost = side.cost;
    held.slack = side.source >= 0 ? side.slack : SlackOf(held.source, 0);
  }

  struct Shared {
    int item = 0, all = 0, in_a = 0;
    int least = 0, most = 0;  // how many of them a may get
    int now = 0, best = 0;
    std::int64_t length = 0;
  };

  const Component& c_;
  std::size_t ranks_, last_;
  Chance& chance_;
  const SearchControl& control_;
  bool gather_ = false, slow_ = false, gained_ = false, found_ = false;
  std::vector<std::int64_t> stock_;
  std::vector<Held> pieces_;
  std::vector<std::vector<int>> ladder_;
  std::vector<int> unused_;  // drops that may still be taken, and some that are gone
  Costs sum_{}, best_cost_{}, now_cost_{};
  std::int64_t goal_ = 0, looks_ = 0, until_ = 0, asked_ = 0;
  // The pair at hand.
  Held *a_ = nullptr, *b_ = nullptr;
  Want want_ = Want::Target;
  std::vector<Shared> items_;
  std::int64_t kerf_a_ = 0, kerf_b_ = 0, most_a_ = 0, most_b_ = 0;
  double best_rank_ = 0;
  int equal_ = 0;
  Side side_a_, side_b_;
};

}  // namespace

void Recut(const Component& c, std::size_t key, const Solution& best, std::int64_t goal, std::int64_t looks, Chance& chance,
           const SearchControl& control, const Offer& offer) {
  Recutter recutter(c, key, best, chance, control);
  if (!recutter.Fit()) return;
  recutter.Run(goal, looks);
  if (recutter.better()) offer(Assembled(c, recutter.Patterns()));
}

}  // namespace heatkeep::allocator
