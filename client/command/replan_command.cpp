#include "client/command/replan_command.h"

#include <ostream>

#include "client/planning/mend_plan.h"
#include "schema/terms/bad_text.h"
#include "schema/terms/counted.h"
#include "schema/terms/length_text.h"
#include "schema/terms/scan.h"
#include "schema/terms/tag.h"

namespace heatkeep::command {
namespace {

// Read before anything is booked. Throws BadText.
planning::Mishaps MishapsOf(const ReplanOptions& options) {
  planning::Mishaps all{.measured_with = options.measured_with, .reason = options.reason};
  for (const std::string& text : options.measured) {
    const auto equal = text.find('=');
    if (equal == std::string::npos) throw BadText("--measured " + text + ": it names no length", "TAG=1018mm");
    all.measured.emplace_back(TagForm(text.substr(0, equal)), ReadLength(text.substr(equal + 1)));
    if (all.measured.back().second.nm <= 0)
      throw BadText("--measured " + text + ": the length is nothing", "a length above 0; a piece that is not there is --missing");
  }
  if (!options.bad.empty() && options.reason.empty()) throw BadText("--bad: no reason is given", "--reason WORDS");
  const auto tags = [](const std::vector<std::string>& texts, std::vector<std::string>& of) {
    for (const std::string& text : texts) of.push_back(TagForm(TagOfScan(text)));
  };
  tags(options.missing, all.missing);
  tags(options.bad, all.bad);
  tags(options.unreadable, all.unreadable);
  return all;
}

int Say(const BookCall& call, const ReplanOptions& options, const planning::MendedPlan& answer) {
  const allocator::Replanned& mended = answer.mended;
  const PlanUnderWay& before = answer.before;
  const int unmet = mended.plan.value.unmet_pieces;
  if (options.json) {
    Json shorts = Json::array();
    for (const allocator::Short& s : mended.plan.shorts) {
      const allocator::Line& line = mended.problem.lines[static_cast<std::size_t>(s.line)];
      shorts.push_back({{"order", line.order}, {"line", line.line}, {"missing", s.missing}, {"why", s.why}});
    }
    call.out << Json{{"plan", before.number},   {"dry", options.dry},
                     {"kept", mended.kept},     {"planned_anew", mended.planned_anew},
                     {"changed", mended.words}, {"put_back", answer.put_back},
                     {"proof", answer.proof},   {"short", std::move(shorts)}}
                    .dump(2)
             << '\n';
  } else {
    call.out << "plan " << before.number << (options.dry ? " would change" : "") << ": " << Counted(mended.kept, "piece") << " as planned, "
             << Counted(mended.planned_anew, "piece") << " planned anew\n";
    for (const std::string& words : mended.words) call.out << "  " << words << '\n';
    for (const std::string& tag : answer.put_back) call.out << "  nothing is cut from " << tag << ": take it from the saw\n";
    call.out << "now: saw " << before.saw << " " << answer.proof << '\n';
    if (!options.dry && answer.done.let_go + answer.done.promised > 0)
      call.out << "the sheet has changed: `heatkeep report sheet " << before.number << "`\n";
  }
  return unmet > 0 ? 3 : 0;
}

}  // namespace

int RunReplan(const BookCall& call, const ReplanOptions& options) {
  return WithBook(call, [&](Connection& connection) {
    const auto told = [&](const std::string& words) { call.err << words << '\n'; };
    return Say(call, options, planning::MendPlan(connection, options.plan, MishapsOf(options), options.seconds, options.dry, told));
  });
}

}  // namespace heatkeep::command
