#include "client/planning/mend_plan.h"

#include <algorithm>
#include <stdexcept>

#include "client/allocator/proof_words.h"
#include "client/planning/learned_worth.h"

namespace heatkeep::planning {
namespace {

constexpr int kTries = 5;

// Is it at the saw?
bool RequireTaken(const PlanUnderWay& plan, const std::string& tag) {
  for (std::size_t i = 0; i < plan.layouts.size(); ++i)
    if (plan.asked.problem.pieces[static_cast<std::size_t>(plan.layouts[i].piece)].tag == tag) return plan.at_saw[i];
  throw std::invalid_argument("plan " + std::to_string(plan.number) + " has no piece " + tag +
                              " that can still be planned anew; what is cut of it is booked first (`heatkeep cut record`)");
}

void Book(Connection& connection, const Mishaps& mishaps, const PlanUnderWay& plan) {
  Deeds deeds(connection);
  const auto reason = [&](const char* otherwise) { return mishaps.reason.empty() ? std::string(otherwise) : mishaps.reason; };
  for (const auto& [tag, length] : mishaps.measured) {
    const std::string cause = reason("measured at the saw");
    if (RequireTaken(plan, tag)) deeds.MeasureAtSaw(NewRequest(), tag, length, cause, mishaps.measured_with);
    else deeds.CorrectLength(NewRequest(), tag, length, std::nullopt, cause, mishaps.measured_with);
  }
  for (const std::string& tag : mishaps.missing) {
    RequireTaken(plan, tag);
    deeds.ReportMissing(NewRequest(), tag, reason("not in its place"));
  }
  const auto quarantine = [&](const std::vector<std::string>& tags, const std::string& why) {
    for (const std::string& tag : tags) {
      RequireTaken(plan, tag);
      deeds.Quarantine(NewRequest(), tag, why);
    }
  };
  quarantine(mishaps.bad, mishaps.reason);
  quarantine(mishaps.unreadable, reason("its mark cannot be read"));
}

std::vector<std::string> ToPutBack(const PlanUnderWay& before, const allocator::Replanned& mended) {
  std::vector<std::string> tags;
  for (std::size_t i = 0; i < before.layouts.size(); ++i) {
    const int piece = before.layouts[i].piece;
    const auto& now = mended.plan.layouts;
    if (before.at_saw[i] && std::none_of(now.begin(), now.end(), [&](const allocator::Layout& l) { return l.piece == piece; }))
      tags.push_back(before.asked.problem.pieces[static_cast<std::size_t>(piece)].tag);
  }
  return tags;
}

}  // namespace

MendedPlan MendPlan(Connection& connection, std::int64_t plan, const Mishaps& mishaps, double seconds, bool dry,
                    const std::function<void(const std::string& words)>& told) {
  if (!mishaps.bad.empty() && mishaps.reason.empty()) throw std::domain_error("a piece is bad, and no reason is given");
  allocator::Limits limits;
  limits.seconds = seconds;
  for (int attempt = 0; attempt < kTries; ++attempt) {
    try {
      Transaction all(connection);
      MendedPlan answer;
      answer.before = ReadUnderWay(connection, plan, limits);
      Book(connection, mishaps, answer.before);
      ToMend to_mend = ReadToMend(connection, answer.before);
      LearnWorth(ReadPastDemand(connection), to_mend.asked.problem);
      answer.mended = allocator::Replan(to_mend.asked.problem, to_mend.plan, to_mend.fixed, to_mend.changes);
      answer.proof = allocator::ProofWords(answer.mended.problem, answer.mended.plan);
      answer.put_back = ToPutBack(answer.before, answer.mended);
      if (dry) return answer;
      answer.done = CommitMended(connection, NewRequest(), answer.before, to_mend, answer.mended, answer.proof, mishaps.reason);
      if (answer.done.taken.empty()) {
        all.Commit();
        return answer;
      }
      if (told)
        for (const TakenPiece& t : answer.done.taken) told("taken meanwhile: " + t.tag + ", " + t.why);
    } catch (const DbError& error) {
      // read again: somebody changed what was read, or the database gave this up so that others could go on (its deeds leave the order of
      // locks)
      if (error.kind != DbError::Kind::Stale) throw;
      if (told) told(std::string("changed meanwhile: ") + error.what());
    }
  }
  throw DbError(DbError::Kind::Stale, "HK409", "others keep taking the pieces: nothing was changed; try again in a moment");
}

}  // namespace heatkeep::planning
