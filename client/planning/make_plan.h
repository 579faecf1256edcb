// A plan of the book made: what is open and what may be taken is read, the worth of rests learned, a plan searched, bettered and told
// about, and promised in one deed. Promised to nobody it is a Draft, to be looked at and overruled.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "client/gateway/plan_door.h"
#include "client/planning/plan_extras.h"

namespace heatkeep::planning {

// A person's word against what a plan would choose. Tags as kept.
struct Overrule {
  std::string tag;      // not this piece
  std::string instead;  // but this one, for the same cuts; empty: whatever is best without it
  std::string reason;
};

struct DraftWishes {
  std::vector<allocator::Offer> offers = allocator::MillLengths();  // what a supplier sells, for what is short
  bool price_of_one_heat = false;
  std::vector<Overrule> overruled;
};

// What searches: Allocate, watched and stopped as its caller likes.
using Searcher = std::function<allocator::Plan(const allocator::Problem& problem)>;

struct NotHeeded {
  std::string tag, instead;
  std::string why;  // "D-0107 instead of D-0101: it is not free, or not of a metal that may serve"
};

struct Draft {
  PlanQuestion question;
  BookProblem asked;
  allocator::Plan plan;  // of no layouts where nothing is open, or nothing can be cut
  PlanExtras extras;
  std::string proof;                // with what was overruled behind it
  std::string learned;              // what the worth of rests was learned from; empty: nothing
  std::vector<Overrule> overruled;  // that this plan heeds
  std::vector<NotHeeded> not_heeded;
};

// Throws std::invalid_argument for a cut list or saw that is not in the book; DbError.
Draft MakeDraft(Connection& connection, const PlanQuestion& question, const DraftWishes& wishes, const Searcher& searcher);

// Either the number of the plan, or what somebody took or changed meanwhile, in words: nothing is promised then, make the draft anew.
struct Promised {
  std::optional<std::int64_t> plan;
  std::vector<std::string> meanwhile;
};
// Requires a draft with layouts. Throws DbError.
Promised Promise(Connection& connection, const RequestNumber& request, const Draft& draft);

struct MadePlan {
  std::optional<std::int64_t> plan;  // nothing: `dry`, or there is nothing to be cut
  Draft draft;
};
// Made and promised, made anew while others take its pieces, at most five times: `told` hears in words of each. Throws as above, and
// DbError, Stale when others keep taking the pieces.
MadePlan MakePlan(Connection& connection, const PlanQuestion& question, const DraftWishes& wishes, const Searcher& searcher, bool dry,
                  const std::function<void(const std::string& words)>& told);

}  // namespace heatkeep::planning
