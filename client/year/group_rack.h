// One group's metal: full bars, drops, and the account of every millimetre that came and went.
//   rack at the start + received = delivered + kerf + trim + scrap + rack now, to the nanometre, always.
#pragma once

#include <vector>

#include "client/allocator/plan.h"
#include "client/allocator/problem.h"
#include "client/year/shop.h"

namespace heatkeep::year {

struct Account {
  Length received, opened;  // full bars: from the lorry; taken to the saw
  Length delivered, kerf, trim, scrap;
  Length cleared;  // drops scrapped because they did not earn their place; in `scrap` too
  int bars_opened = 0, drops_used = 0, drops_made = 0, drops_cleared = 0;
};

class GroupRack {
 public:
  explicit GroupRack(const Group& group);

  // Brings full bars in: of each length, when fewer than half the level or than `need` are there, up to the level and
  // what is needed. The level is kLevel bars of each length.
  void Receive(const std::vector<int>& need);
  // The pieces a list may be cut from, bars first; prices for least-money; drops shorter than the keep length too.
  allocator::Problem ProblemFor(const std::vector<DayLine>& lines, const allocator::GroupRules& rules) const;
  // Cuts as planned. Requires a plan of the problem ProblemFor gave last.
  void Apply(const allocator::Problem& problem, const allocator::Plan& plan);
  // Takes one drop off the rack for scrap.
  void Clear(std::size_t drop);
  // Begins the account anew: what is on the rack now is the start.
  void Restart();

  const std::vector<Length>& drops() const { return drops_; }  // oldest first
  const Account& account() const { return account_; }
  Length BarLength() const;
  Length DropLength() const;
  Length Start() const { return start_; }
  // 0 when the account closes.
  Length Unexplained() const;

  static constexpr int kLevel = 4;

 private:
  const Group* group_;
  std::vector<int> bars_;
  std::vector<Length> drops_;
  Account account_;
  Length start_;
};

}  // namespace heatkeep::year
