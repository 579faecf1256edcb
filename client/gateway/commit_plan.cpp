#include <numeric>

#include "client/allocator/explain.h"
#include "client/gateway/plan_body.h"

namespace heatkeep {
namespace {

using allocator::LeftKind;

// A customer's own rest goes back to the rack whatever its length: it is not ours to scrap.
std::string FateWord(const allocator::Piece& piece, const allocator::Layout& layout) {
  if (layout.left.nm == 0) return "none";
  return layout.left_kind == LeftKind::Drop || !piece.owner.empty() ? "drop" : "scrap";
}

Json LayoutJson(const BookProblem& asked, const allocator::Layout& layout) {
  const allocator::Problem& problem = asked.problem;
  const allocator::Piece& piece = problem.pieces.at(static_cast<std::size_t>(layout.piece));
  Json cuts = Json::array();
  for (const allocator::Cut& cut : layout.cuts) {
    const allocator::Line& line = problem.lines.at(static_cast<std::size_t>(cut.line));
    cuts.push_back({{"order", line.order}, {"line", line.line}, {"count", cut.count}, {"length_nm", cut.length.nm}});
  }
  return {{"tag", piece.tag},
          {"version", asked.versions.at(piece.tag)},
          {"length_nm", piece.length.nm},
          {"trim_nm", layout.trim.nm},
          {"kerf_nm", layout.kerf.nm},
          {"left_nm", layout.left.nm},
          {"left", FateWord(piece, layout)},
          {"cuts", std::move(cuts)}};
}

std::string Otherwise(const allocator::Problem& problem, const std::vector<allocator::Alternative>& why) {
  std::string words;
  for (const allocator::Alternative& a : why)
    words += (words.empty() ? "" : "; else ") + allocator::SourceWords(problem.pieces.at(static_cast<std::size_t>(a.piece))) + " (" +
        a.words + ")";
  return words;
}

Json ValueJson(const allocator::Plan& plan, allocator::Aim aim) {
  Json value = Json::object();
  for (const allocator::Key key : allocator::KeysOf(aim)) value[allocator::NameOf(key)] = allocator::FigureOf(plan.value, key);
  return value;
}

Json BoundJson(const allocator::Plan& plan) {
  Json bound = Json::object();
  for (const auto& [key, figure] : plan.bound.figures) bound[allocator::NameOf(key)] = figure;
  return bound;
}

std::string StatusWord(allocator::Status status) {
  switch (status) {
    case allocator::Status::Proved: return "proved";
    case allocator::Status::Short: return "short";
    case allocator::Status::Feasible: break;
  }
  return "feasible";
}

std::string EndedWord(allocator::EndedBy ended) {
  switch (ended) {
    case allocator::EndedBy::Proof: return "proof";
    case allocator::EndedBy::Clock: return "clock";
    case allocator::EndedBy::Stopped: return "stopped";
    case allocator::EndedBy::Budget: break;
  }
  return "budget";
}

}  // namespace

Json PlanBody(const BookProblem& asked, const allocator::Plan& plan, const std::string& proof, const std::vector<std::size_t>& layouts) {
  const allocator::Problem& problem = asked.problem;
  Json body = {{"kerf_nm", asked.kerf.nm},
               {"trim_nm", asked.trim.nm},
               {"grip_nm", asked.grip.nm},
               {"status", StatusWord(plan.status)},
               {"ended_by", EndedWord(plan.ended_by)},
               {"proof", proof},
               {"value", ValueJson(plan, problem.aim)},
               {"bound", BoundJson(plan)},
               {"layouts", Json::array()},
               {"shorts", Json::array()}};
  allocator::Explanation explanation(problem, plan);
  for (const std::size_t i : layouts) {
    body["layouts"].push_back(LayoutJson(asked, plan.layouts[i]));
    if (const std::string otherwise = Otherwise(problem, explanation.Why(i)); !otherwise.empty())
      body["layouts"].back()["otherwise"] = otherwise;
  }
  for (const allocator::Short& s : plan.shorts) {
    const allocator::Line& line = problem.lines.at(static_cast<std::size_t>(s.line));
    body["shorts"].push_back({{"order", line.order}, {"line", line.line}, {"missing", s.missing}, {"why", s.why}});
  }
  return body;
}

std::vector<TakenPiece> TakenOf(const Json& answer) {
  std::vector<TakenPiece> taken;
  if (answer.contains("taken"))
    for (const Json& t : answer["taken"]) taken.push_back({t["tag"], t["why"]});
  return taken;
}

CommitAnswer CommitPlan(Connection& connection, const RequestNumber& request, const PlanQuestion& question, const BookProblem& asked,
                        const allocator::Plan& plan, const std::string& proof, const std::string& reason) {
  std::vector<std::size_t> all(plan.layouts.size());
  std::iota(all.begin(), all.end(), std::size_t{0});
  Json body = PlanBody(asked, plan, proof, all);
  body["aim"] = AimWord(question.aim);
  body["saw"] = question.saw;
  body["bundled"] = question.bundled;
  if (!reason.empty()) body["reason"] = reason;
  const Json answer = Deeds(connection).CommitPlan(request, body);
  CommitAnswer committed;
  committed.taken = TakenOf(answer);
  if (answer.contains("plan")) committed.plan = answer["plan"].get<std::int64_t>();
  return committed;
}

}  // namespace heatkeep
