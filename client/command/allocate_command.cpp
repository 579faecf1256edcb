#include "client/command/allocate_command.h"

#include <algorithm>
#include <ostream>
#include <stdexcept>

#include "client/allocator/allocate.h"
#include "client/allocator/proof_words.h"
#include "client/gateway/plan_door.h"
#include "client/gateway/readings.h"
#include "reports/sheet_json.h"
#include "schema/terms/length_text.h"

namespace heatkeep::command {
namespace {

constexpr int kTries = 5;

allocator::Aim AimOf(const std::string& word) {
  for (const auto aim : {allocator::Aim::DropsFirst, allocator::Aim::LeastMoney, allocator::Aim::FewestBars, allocator::Aim::LeastMetres})
    if (AimWord(aim) == word) return aim;
  throw std::invalid_argument("aim \"" + word + "\" is not known; expected drops-first, least-money, fewest-bars or least-metres");
}

void SayTaken(std::ostream& out, const std::vector<TakenPiece>& taken) {
  for (const TakenPiece& t : taken) out << "taken meanwhile: " << t.tag << ", " << t.why << '\n';
}

void SayTooLarge(std::ostream& err, const std::string& saw, const std::vector<std::string>& lines) {
  if (lines.empty()) return;
  err << "too large for saw " << saw << ", to be planned on another:";
  for (const std::string& line : lines) err << ' ' << line;
  err << '\n';
}

void SayShorts(std::ostream& out, const allocator::Problem& problem, const allocator::Plan& plan) {
  for (const allocator::Short& s : plan.shorts) {
    const allocator::Line& line = problem.lines[static_cast<std::size_t>(s.line)];
    out << "short: order " << line.order << " line " << line.line << ", " << s.missing << " missing: " << s.why << '\n';
  }
}

int Answer(const BookCall& call, const AllocateOptions& options, const std::string& saw, const BookProblem& asked, const allocator::Plan& plan,
           const std::string& proof, std::optional<std::int64_t> number) {
  if (options.json) {
    Json answer = {{"saw", saw}, {"proof", proof}, {"proved", plan.proved}, {"pieces", plan.value.pieces_pulled}, {"short", plan.value.unmet_pieces},
                   {"bars_opened", plan.value.bars_opened}, {"new_length_nm", plan.value.new_length.nm}};
    answer["plan"] = number ? Json(*number) : Json();
    call.out << answer.dump(2) << '\n';
  } else {
    call.out << (number ? "plan " + std::to_string(*number) : "not promised") << ": saw " << saw << " " << proof << '\n';
    SayShorts(call.out, asked.problem, plan);
  }
  return plan.value.unmet_pieces > 0 ? 3 : 0;
}

struct SawPlan {
  int exit = 0;
  Length widest;  // section the saw takes
};

// One saw's plan, promised; made again while others take its pieces.
SawPlan PlanSaw(const BookCall& call, const AllocateOptions& options, Connection& connection, const PlanQuestion& question,
                bool last) {
  for (int attempt = 0; attempt < kTries; ++attempt) {
    const BookProblem asked = ReadProblem(connection, question);
    if (attempt == 0 && last) SayTooLarge(call.err, question.saw, asked.too_large);
    if (asked.problem.lines.empty()) {
      if (last) call.out << "nothing for saw " << question.saw << " is open in these cut lists\n";
      return {0, asked.widest};
    }
    const allocator::Plan plan = allocator::Allocate(asked.problem);
    const std::string proof = allocator::ProofWords(asked.problem, plan);
    if (options.dry) return {Answer(call, options, question.saw, asked, plan, proof, std::nullopt), asked.widest};
    const CommitAnswer committed = CommitPlan(connection, NewRequest(), question, asked, plan, proof);
    if (committed.plan) return {Answer(call, options, question.saw, asked, plan, proof, committed.plan), asked.widest};
    SayTaken(call.err, committed.taken);
  }
  throw DbError(DbError::Kind::Stale, "HK409", "others keep taking the pieces: no plan was promised; try again in a moment");
}

}  // namespace

int RunAllocate(const BookCall& call, const AllocateOptions& options) {
  return WithBook(call, [&](Connection& connection) {
    PlanQuestion question;
    question.cut_lists = options.cut_lists;
    question.bundled = options.bundled;
    question.aim = AimOf(options.aim);
    question.limits.seconds = options.seconds;
    question.limits.threads = options.threads;
    question.limits.seed = options.seed;
    int worst = 0;
    for (const std::string& saw : options.saws) {
      question.saw = saw;
      const SawPlan planned = PlanSaw(call, options, connection, question, saw == options.saws.back());
      worst = std::max(worst, planned.exit);
      question.wider_than = std::max(question.wider_than, planned.widest);
    }
    return worst;
  });
}

int RunPlanList(const BookCall& call, bool json) {
  return WithBook(call, [&](Connection& connection) {
    Json rows = Json::array();
    const std::vector<PlanRow> plans = ReadPlans(connection);
    for (const PlanRow& p : plans) {
      if (json) rows.push_back({{"plan", p.plan}, {"state", p.state}, {"aim", p.aim}, {"saw", p.saw}, {"proof", p.proof},
                                {"made_by", p.made_by}, {"made_at", p.made_at}, {"due", p.due}});
      else call.out << "plan " << p.plan << " (" << p.state << ", saw " << p.saw << ", by " << p.made_by << "): " << p.proof << '\n';
    }
    if (json) call.out << rows.dump(2) << '\n';
    else if (plans.empty()) call.out << "no plans yet; `heatkeep allocate CUTLIST` makes one\n";
    return 0;
  });
}

int RunPlanShow(const BookCall& call, std::int64_t plan, bool json) {
  return WithBook(call, [&](Connection& connection) {
    const std::optional<Sheet> sheet = ReadSheet(connection, plan);
    if (!sheet) throw std::invalid_argument("there is no plan " + std::to_string(plan) + "; `heatkeep plan list` names them");
    if (json) {
      call.out << SheetJson(*sheet).dump(2) << '\n';
      return 0;
    }
    call.out << "plan " << plan << ", saw " << sheet->saw << ": " << sheet->proof << '\n';
    for (const SheetBlock& b : sheet->blocks) {
      call.out << b.block << ". " << b.place << "  " << b.tag << "  " << b.section << " " << b.grade << "  heat " << b.heat << "  "
               << WriteMm(b.length) << " mm (" << b.state << "):";
      for (const SheetCut& c : b.cuts) call.out << "  " << c.count << " x " << WriteMm(c.set) << " for " << c.order << "/" << c.line;
      call.out << "; left " << WriteMm(b.left, Rounding::Down) << " mm "
               << (b.fate == LeftFate::Drop ? "keep" : b.fate == LeftFate::Scrap ? "scrap" : "nothing") << '\n';
    }
    for (const SheetShort& s : sheet->shorts)
      call.out << "short: " << s.order << "/" << s.line << ", " << s.missing << " missing: " << s.why << '\n';
    return 0;
  });
}

int RunPlanCancel(const BookCall& call, std::int64_t plan, const std::string& reason) {
  return WithBook(call, [&](Connection& connection) {
    const Json answer = Deeds(connection).CancelPlan(NewRequest(), plan, reason);
    call.out << "plan " << plan << " is cancelled, " << answer["released"] << " pieces are free again\n";
    return 0;
  });
}

}  // namespace heatkeep::command
