// What a drop of any length is worth to one group, all its later uses counted; drop_worth.h counts the first only.
//
// On a grid of 20 mm, from short to long, with lambda_e, P, T and the demand of drop_worth.h:
//   gain(L)  = f P x mean over the demand of (n_i (l_i + k) (r - s) + gain(what that use leaves));  f = 0.85: what is
//              used later is worth less than what is used now, for room, money bound and what may go wrong, each time
//   gain(L)  = max(0, gain(L) - shelf x T), and never more than L (r - s): a drop is never worth more than new metal
//   V(L) = L s + gain(L) on the rack;  V(L) = L s + max(0, gain(L) - return) for one that must be put back first.
// Between grid lengths the shorter one's gain counts. Amounts in FineMoney.
#pragma once

#include <vector>

#include "client/year/drop_worth.h"

namespace heatkeep::year {

class WorthCurve {
 public:
  WorthCurve() = default;  // scrap value only
  // `like`: papers and owner of the drops in question. Longer drops than `longest` are worth what that is, and new
  // metal beyond it.
  WorthCurve(const RackDrop& like, const Past& past, const WorthRules& rules, Length longest);

  FineMoney Racked(Length drop) const;  // of one that is on the rack
  FineMoney Left(Length rest) const;    // of what a cut leaves
  // The shortest rest from which putting back pays on the whole. Whether it pays need not change only once along the grid (a crowded
  // middle of the rack, say): it is the grid length that divides best, where what is lost below it by scrapping rests that pay, and above
  // it by keeping rests that do not, is least in sum; the shortest of equals. Beyond `longest` when
  // nothing pays.
  Length KeepLength() const;

 private:
  double Gain(Length drop) const;
  std::vector<double> gain_;  // of grid length i
  WorthRules rules_;
};

}  // namespace heatkeep::year
