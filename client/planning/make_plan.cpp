#include "client/planning/make_plan.h"

#include <algorithm>

#include "client/allocator/plan_of_layouts.h"
#include "client/allocator/proof_words.h"
#include "client/allocator/value.h"
#include "client/planning/learned_worth.h"

namespace heatkeep::planning {
namespace {

constexpr int kTries = 5;

std::optional<std::size_t> PieceCalled(const allocator::Problem& problem, const std::string& tag) {
  const auto it = std::ranges::find(problem.pieces, tag, &allocator::Piece::tag);
  if (it == problem.pieces.end()) return std::nullopt;
  return static_cast<std::size_t>(it - problem.pieces.begin());
}

// Pieces that are not to be taken at all are as if they were held.
void LeaveOut(const std::vector<Overrule>& overruled, Draft& draft) {
  for (const Overrule& o : overruled) {
    if (!o.instead.empty()) continue;
    const std::optional<std::size_t> piece = PieceCalled(draft.asked.problem, o.tag);
    if (!piece) continue;  // nobody's any more: it is not taken either
    draft.asked.problem.pieces[*piece].held = "left out: " + o.reason;
    draft.overruled.push_back(o);
  }
}

// The same cuts from the other piece; nothing else of the plan changes. Answers why not, in words; empty: done.
std::string TakeInstead(const Overrule& o, const allocator::Problem& problem, allocator::Plan& plan) {
  const std::optional<std::size_t> piece = PieceCalled(problem, o.instead);
  if (!piece) return o.instead + " instead of " + o.tag + ": it is not free, or not of a metal that may serve";
  for (std::size_t i = 0; i < plan.layouts.size(); ++i) {
    if (problem.pieces[static_cast<std::size_t>(plan.layouts[i].piece)].tag != o.tag) continue;
    const std::vector<allocator::Alternative> others = allocator::Explanation(problem, plan).Why(i, problem.pieces.size());
    if (std::ranges::find(others, static_cast<int>(*piece), &allocator::Alternative::piece) == others.end())
      return o.instead + " instead of " + o.tag + ": it does not hold its cuts, is taken otherwise, or may not serve them";
    std::vector<allocator::Layout> layouts = plan.layouts;
    std::vector<std::pair<int, int>> cuts;
    for (const allocator::Cut& cut : layouts[i].cuts) cuts.emplace_back(cut.line, cut.count);
    layouts[i] = allocator::MakeLayout(problem, static_cast<int>(*piece), 1, cuts);
    allocator::Plan changed = allocator::PlanOfLayouts(problem, layouts);
    allocator::TakeBounds(problem, plan, changed);
    changed.ended_by = plan.ended_by;
    changed.seconds = plan.seconds;
    changed.seed = plan.seed;
    plan = std::move(changed);
    return {};
  }
  return o.instead + " instead of " + o.tag + ": the plan does not take " + o.tag;
}

std::string OverruledWords(const std::vector<Overrule>& overruled) {
  std::string words;
  for (const Overrule& o : overruled)
    words += (words.empty() ? "" : "; ") + (o.instead.empty() ? "without " + o.tag : o.instead + " instead of " + o.tag) + ": " + o.reason;
  return words;
}

}  // namespace

Draft MakeDraft(Connection& connection, const PlanQuestion& question, const DraftWishes& wishes, const Searcher& searcher) {
  Draft draft;
  draft.question = question;
  draft.asked = ReadProblem(connection, question);
  const allocator::Problem& problem = draft.asked.problem;
  if (problem.lines.empty()) return draft;
  draft.learned = LearnWorth(ReadPastDemand(connection), draft.asked.problem);
  LeaveOut(wishes.overruled, draft);
  draft.plan = searcher(problem);
  const ExtraWishes told{draft.asked.plain_below, wishes.offers, wishes.price_of_one_heat, draft.asked.bars_at_a_time};
  draft.extras = TakeBetter(problem, draft.plan, told);
  for (const Overrule& o : wishes.overruled) {
    if (o.instead.empty()) continue;
    const std::string why_not = TakeInstead(o, problem, draft.plan);
    if (why_not.empty()) draft.overruled.push_back(o);
    else draft.not_heeded.push_back({o.tag, o.instead, why_not});
  }
  AddWhy(problem, draft.plan, told, draft.extras);
  draft.proof = allocator::ProofWords(problem, draft.plan);
  if (!draft.overruled.empty()) draft.proof += "; " + OverruledWords(draft.overruled);
  return draft;
}

Promised Promise(Connection& connection, const RequestNumber& request, const Draft& draft) {
  Promised promised;
  try {
    const CommitAnswer answer =
        CommitPlan(connection, request, draft.question, draft.asked, draft.plan, draft.proof, OverruledWords(draft.overruled));
    promised.plan = answer.plan;
    for (const TakenPiece& t : answer.taken) promised.meanwhile.push_back("taken meanwhile: " + t.tag + ", " + t.why);
  } catch (const DbError& error) {
    if (error.sqlstate != "HK409") throw;
    promised.meanwhile.push_back(std::string("changed meanwhile: ") + error.what());
  }
  return promised;
}

MadePlan MakePlan(Connection& connection, const PlanQuestion& question, const DraftWishes& wishes, const Searcher& searcher, bool dry,
                  const std::function<void(const std::string& words)>& told) {
  for (int attempt = 0; attempt < kTries; ++attempt) {
    MadePlan made{{}, MakeDraft(connection, question, wishes, searcher)};
    if (dry || made.draft.plan.layouts.empty()) return made;
    const Promised promised = Promise(connection, NewRequest(), made.draft);
    made.plan = promised.plan;
    if (made.plan) return made;
    for (const std::string& words : promised.meanwhile) told(words);
  }
  throw DbError(DbError::Kind::Stale, "HK409", "others keep taking the pieces: no plan was promised; try again in a moment");
}

}  // namespace heatkeep::planning
