// Deciding what to cut from what.
//
// Given: pieces p of length S_p (n_p alike), lines i asking d_i cuts of length l_i, an aim.
// Sets: a layout is a piece p with a multiset a of cuts such that every cut may come from p (eligible.h) and the
//   cuts fit (cut_arithmetic.h: sum a_i (l_i + k) <= room_p, or = exact_p). P is the set of all layouts.
// Variables: x_q >= 0 whole, how often layout q is cut; u_i >= 0 whole, cuts of line i left unmet.
// Constraints: sum_q a_qi x_q + u_i = d_i for every i;  sum_{q of p} x_q <= n_p for every p;
//   lines that name the same one_heat draw on layouts of one heat, a line with max_heats h on at most h heats.
// Objective: the keys of the aim, lexicographically (plan.h, KeysOf):
//   unmet by priority, highest first: sum of u_i over the lines of a priority;
//   drops-first   new length, lost worth, pieces pulled, distinct layouts;
//   fewest-bars   bars opened, then as drops-first;   least-metres   consumed length;   least-money   money.
//   All keys but distinct layouts, set-up money and extra-heat money add up over layouts: c_k(x) = sum_q c_kq x_q.
// Parts: lines and pieces that can touch each other form components; the keys add up over components, which are
//   searched independently, each by quick plans, exact enumeration if small, column generation (the layouts of the
//   relaxation priced by one dynamic programme for all pieces that see the same lines), diving, and a small MIP.
// Bound of key k, with values v_1..v_{k-1} of the keys before it proved: for any pi_i >= 0, mu_j >= 0
//   sum_i pi_i d_i - sum_j mu_j v_j - sum_p n_p max(0, max_q of p (pi a_q - c_kq - sum_j mu_j c_jq)) - the like for u
//   is not above any plan's c_k. The multipliers come from the linear programme, are rounded to whole numbers, and
//   the bound is worked out with them in whole numbers, so it is valid whatever the linear programme's own rounding;
//   it is then rounded up to a figure the key can take.
// Proof: a key is proved when its value equals its bound and all keys before it are proved.
// Doubt: of a piece with doubt d only S - d is planned on and it is never used up; sums use the full S.
// Ties: within equal keys, cuts of equal length and priority go to the earliest due line first, pieces in their order.
// Cost: dominated by pricing, items x (longest room / grid) a round; memory likewise.
// The answer repeats for equal problem and seed whenever `ended_by` is Proof or Budget, on any number of threads.
#pragma once

#include <functional>
#include <stop_token>

#include "client/allocator/plan.h"
#include "client/allocator/problem.h"

namespace heatkeep::allocator {

// Called now and then from the searching threads, one call at a time: value and bound of the whole plan so far.
using Progress = std::function<void(const Value& value, const Bound& bound)>;

// The best plan found. It always passes CheckPlan. Stopping (stop, or the clock) gives the best so far.
// Throws std::invalid_argument, naming the piece or line, when the problem itself makes no sense (a length <= 0, a
// negative rule, quantity below 0); std::logic_error if its own plan fails the check, which is a bug.
Plan Allocate(const Problem& problem, std::stop_token stop = {}, const Progress& progress = {});

}  // namespace heatkeep::allocator
