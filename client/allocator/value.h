// What layouts and whole plans amount to, in every key.
//
// Money of one layout = price x (worth of the piece - worth of what is left)
//                     + scrap price x (the piece, if it is a drop below its keep length; - what is left as scrap)
//                     + sawing x cuts made (the trim counts, a last piece left uncut does not)
//                     + one pull + what substitutes cost extra per metre of cut;
// each product of a price per metre and a length is rounded half up to a millionth of a cent.
// Metal that is a customer's own has no worth and no scrap value here.
// Of a plan: the sum, + set-ups x distinct layouts + extra heats x (heats - 1) for every order.
#pragma once

#include <utility>
#include <vector>

#include "client/allocator/cut_arithmetic.h"
#include "client/allocator/plan.h"
#include "client/allocator/problem.h"

namespace heatkeep::allocator {

// price x length, rounded half up.
FineMoney Priced(FineMoney per_metre, Length length);

// Worth of a whole piece of the shop's own, of what is left of it; 0 for a customer's metal.
Length WorthOf(const Piece& piece, const GroupRules& rules);

// The layout of `piece` with these cuts (line, count). Requires that they fit; sorts them longest first.
Layout MakeLayout(const Problem& problem, int piece, int repeat, const std::vector<std::pair<int, int>>& cuts);

// Value of a plan made of these layouts; what they leave unserved is unmet.
Value ValueOf(const Problem& problem, const std::vector<Layout>& layouts);

}  // namespace heatkeep::allocator
