#include "client/command/replan_command.h"

#include <algorithm>
#include <ostream>
#include <stdexcept>
#include <utility>

#include "client/allocator/proof_words.h"
#include "client/command/learned_worth.h"
#include "client/gateway/replan_door.h"
#include "schema/terms/bad_text.h"
#include "schema/terms/length_text.h"
#include "schema/terms/scan.h"
#include "schema/terms/tag.h"

namespace heatkeep::command {
namespace {

constexpr int kTries = 5;

using Measured = std::vector<std::pair<std::string, Length>>;

// Read before anything is booked. Throws BadText.
Measured MeasuredOf(const ReplanOptions& options) {
  Measured all;
  for (const std::string& text : options.measured) {
    const auto equal = text.find('=');
    if (equal == std::string::npos) throw BadText("--measured " + text + ": it names no length", "TAG=1018mm");
    all.emplace_back(TagForm(text.substr(0, equal)), ReadLength(text.substr(equal + 1)));
    if (all.back().second.nm <= 0) throw BadText("--measured " + text + ": the length is nothing", "a length above 0; a piece that is not there is --missing");
  }
  if (!options.bad.empty() && options.reason.empty()) throw BadText("--bad: no reason is given", "--reason WORDS");
  return all;
}

// Is it at the saw?
bool RequireTaken(const PlanUnderWay& plan, const std::string& tag) {
  for (std::size_t i = 0; i < plan.layouts.size(); ++i)
    if (plan.asked.problem.pieces[static_cast<std::size_t>(plan.layouts[i].piece)].tag == tag) return plan.at_saw[i];
  throw std::invalid_argument("plan " + std::to_string(plan.number) + " has no piece " + tag + " that can still be planned anew; what is cut of it is booked first (`heatkeep cut record`)");
}

// Books the mishaps, each as the deed it is.
void Book(Connection& connection, const ReplanOptions& options, const Measured& measured, const PlanUnderWay& plan) {
  Deeds deeds(connection);
  const auto reason = [&](const char* otherwise) { return options.reason.empty() ? std::string(otherwise) : options.reason; };
  for (const auto& [tag, length] : measured) {
    const std::string cause = reason("measured at the saw");
    if (RequireTaken(plan, tag)) deeds.MeasureAtSaw(NewRequest(), tag, length, cause, options.measured_with);
    else deeds.CorrectLength(NewRequest(), tag, length, std::nullopt, cause, options.measured_with);
  }
  for (const std::string& text : options.missing) {
    RequireTaken(plan, TagForm(TagOfScan(text)));
    deeds.ReportMissing(NewRequest(), TagForm(TagOfScan(text)), reason("not in its place"));
  }
  const auto quarantine = [&](const std::vector<std::string>& tags, const std::string& why) {
    for (const std::string& text : tags) {
      RequireTaken(plan, TagForm(TagOfScan(text)));
      deeds.Quarantine(NewRequest(), TagForm(TagOfScan(text)), why);
    }
  };
  quarantine(options.bad, options.reason);
  quarantine(options.unreadable, reason("its mark cannot be read"));
}

// Pieces at the saw that nothing is cut from any more.
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

int Say(const BookCall& call, const ReplanOptions& options, const PlanUnderWay& before, const allocator::Replanned& mended,
        const MendAnswer& done, const std::string& proof) {
  const int unmet = mended.plan.value.unmet_pieces;
  const std::vector<std::string> back = ToPutBack(before, mended);
  if (options.json) {
    Json shorts = Json::array();
    for (const allocator::Short& s : mended.plan.shorts) {
      const allocator::Line& line = mended.problem.lines[static_cast<std::size_t>(s.line)];
      shorts.push_back({{"order", line.order}, {"line", line.line}, {"missing", s.missing}, {"why", s.why}});
    }
    call.out << Json{{"plan", before.number}, {"dry", options.dry}, {"kept", mended.kept}, {"planned_anew", mended.planned_anew},
                     {"changed", mended.words}, {"put_back", back}, {"proof", proof}, {"short", std::move(shorts)}}.dump(2) << '\n';
  } else {
    const auto pieces = [](int n) { return std::to_string(n) + (n == 1 ? " piece" : " pieces"); };
    call.out << "plan " << before.number << (options.dry ? " would change" : "") << ": " << pieces(mended.kept) << " as planned, "
             << pieces(mended.planned_anew) << " planned anew\n";
    for (const std::string& words : mended.words) call.out << "  " << words << '\n';
    for (const std::string& tag : back) call.out << "  nothing is cut from " << tag << ": take it from the saw\n";
    call.out << "now: saw " << before.saw << " " << proof << '\n';
    if (!options.dry && done.let_go + done.promised > 0) call.out << "the sheet has changed: `heatkeep report sheet " << before.number << "`\n";
  }
  return unmet > 0 ? 3 : 0;
}

}  // namespace

int RunReplan(const BookCall& call, const ReplanOptions& options) {
  return WithBook(call, [&](Connection& connection) {
    const Measured measured = MeasuredOf(options);
    allocator::Limits limits;
    limits.seconds = options.seconds;
    for (int attempt = 0; attempt < kTries; ++attempt) {
      Transaction all(connection);
      const PlanUnderWay before = ReadUnderWay(connection, options.plan, limits);
      Book(connection, options, measured, before);
      ToMend to_mend = ReadToMend(connection, before);
      LearnWorth(ReadPastDemand(connection), to_mend.asked.problem);
      const allocator::Replanned mended = allocator::Replan(to_mend.asked.problem, to_mend.plan, to_mend.fixed, to_mend.changes);
      const std::string proof = allocator::ProofWords(mended.problem, mended.plan);
      if (options.dry) return Say(call, options, before, mended, {}, proof);
      try {
        const MendAnswer done = CommitMended(connection, NewRequest(), before, to_mend, mended, proof, options.reason);
        if (done.taken.empty()) {
          all.Commit();
          return Say(call, options, before, mended, done, proof);
        }
        for (const TakenPiece& t : done.taken) call.err << "taken meanwhile: " << t.tag << ", " << t.why << '\n';
      } catch (const DbError& error) {
        if (error.sqlstate != "HK409") throw;
        call.err << "changed meanwhile: " << error.what() << '\n';
      }
    }
    throw DbError(DbError::Kind::Stale, "HK409", "others keep taking the pieces: nothing was changed; try again in a moment");
  });
}

}  // namespace heatkeep::command
