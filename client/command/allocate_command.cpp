#include "client/command/allocate_command.h"

#include <algorithm>
#include <ostream>
#include <stdexcept>

#include "client/command/extras_words.h"
#include "client/command/known_names.h"
#include "client/command/plan_json.h"
#include "client/command/search_watch.h"
#include "client/gateway/readings.h"
#include "client/planning/make_plan.h"
#include "reports/sheet_json.h"
#include "reports/sheet_words.h"
#include "schema/terms/counted.h"
#include "schema/terms/length_text.h"

namespace heatkeep::command {
namespace {

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

void SayWhy(std::ostream& out, const allocator::Problem& problem, const allocator::Plan& plan, const PlanExtras& extras) {
  for (std::size_t i = 0; i < plan.layouts.size(); ++i) {
    out << "  " << allocator::SourceWords(problem.pieces[static_cast<std::size_t>(plan.layouts[i].piece)]) << ':';
    if (extras.why[i].empty()) out << " nothing else holds its cuts\n";
    else out << '\n';
    for (const allocator::Alternative& a : extras.why[i])
      out << "    not " << allocator::SourceWords(problem.pieces[static_cast<std::size_t>(a.piece)]) << ": " << a.words << '\n';
  }
}

// What each piece would be cut into, where there is no plan in the book to look at.
void SayLayouts(std::ostream& out, const allocator::Problem& problem, const allocator::Plan& plan) {
  for (const allocator::Layout& layout : plan.layouts) {
    const allocator::Piece& piece = problem.pieces[static_cast<std::size_t>(layout.piece)];
    out << "  " << allocator::SourceWords(piece) << ", " << piece.section << ' ' << piece.grade << ", heat "
        << (piece.heat.empty() ? "unknown" : piece.heat);
    if (layout.repeat > 1) out << ", " << layout.repeat << " alike";
    out << ':';
    for (const allocator::Cut& cut : layout.cuts) {
      const allocator::Line& line = problem.lines[static_cast<std::size_t>(cut.line)];
      out << "  " << cut.count << " x " << WriteMm(cut.length) << " mm for " << line.order << '/' << line.line;
    }
    out << "; left " << WriteMm(layout.left, Rounding::Down) << " mm "
        << (layout.left_kind == allocator::LeftKind::Drop        ? "keep"
                : layout.left_kind == allocator::LeftKind::Scrap ? "scrap"
                                                                 : "nothing")
        << '\n';
  }
}

// Says one saw's plan, or adds it to `answers` when JSON is asked for.
int Answer(const BookCall& call, const AllocateOptions& options, Json* answers, const planning::MadePlan& made) {
  const auto& [question, asked, plan, extras, proof, learned, overruled, not_heeded] = made.draft;
  if (answers) {
    Json answer = {{"saw", question.saw},
                   {"proof", proof},
                   {"proved", plan.proved},
                   {"pieces", plan.value.pieces_pulled},
                   {"short", plan.value.unmet_pieces},
                   {"bars_opened", plan.value.bars_opened},
                   {"new_length_nm", plan.value.new_length.nm}};
    answer["plan"] = made.plan ? Json(*made.plan) : Json();
    answer["ended_by"] = NameOf(plan.ended_by);
    answer["worth"] = learned.empty() ? "by length" : learned;
    const std::pair<const char*, nlohmann::ordered_json> figures[] = {{"value", FiguresJson(plan.value, asked.problem.aim)},
                                                                      {"bound", FiguresJson(plan.bound)}};
    for (const auto& [name, of] : figures)
      for (const auto& [key, figure] : of.items()) answer[name][key] = figure;
    const nlohmann::ordered_json all = ExtrasJson(asked.problem, plan, extras);
    for (const auto& [key, told] : all.items()) answer[key] = told;
    answer["shorts"] = Json::array();
    for (const allocator::Short& s : plan.shorts) {
      const allocator::Line& line = asked.problem.lines[static_cast<std::size_t>(s.line)];
      answer["shorts"].push_back({{"order", line.order}, {"line", line.line}, {"missing", s.missing}, {"why", s.why}});
    }
    answers->push_back(std::move(answer));
  } else {
    call.out << (made.plan ? "plan " + std::to_string(*made.plan) : "not promised") << ": saw " << question.saw << " " << proof << '\n';
    if (options.dry) SayLayouts(call.out, asked.problem, plan);
    SayShorts(call.out, asked.problem, plan);
    SayExtras(asked.problem, plan, extras, call.out);
    if (!learned.empty()) call.out << learned << '\n';
    SayEnd(plan, call.out);
    if (options.why) SayWhy(call.out, asked.problem, plan, extras);
  }
  return plan.value.unmet_pieces > 0 ? 3 : 0;
}

struct SawPlan {
  int exit = 0;
  Length widest;  // section the saw takes
};

// Throws BadText before anything is planned.
void RequireSaws(Connection& connection, const std::vector<std::string>& saws) {
  for (const std::string& saw : saws) RequireSaw(connection, saw);
}

planning::DraftWishes WishesOf(const AllocateOptions& options) {
  planning::DraftWishes wishes;
  if (!options.buy.empty()) wishes.offers = ReadOffers(options.buy);
  wishes.price_of_one_heat = options.price_of_one_heat;
  return wishes;
}

// One saw's plan, promised; `last`: of the saws asked for.
SawPlan PlanSaw(const BookCall& call, const AllocateOptions& options, Connection& connection, const PlanQuestion& question, bool last,
                Json* answers) {
  const auto searched = [&](const allocator::Problem& problem) { return Searched(problem, call.err); };
  const auto told = [&](const std::string& words) { call.err << words << '\n'; };
  const planning::MadePlan made = planning::MakePlan(connection, question, WishesOf(options), searched, options.dry, told);
  const BookProblem& asked = made.draft.asked;
  if (last) SayTooLarge(call.err, question.saw, asked.too_large);
  const int at_least = last && !asked.too_large.empty() ? 3 : 0;
  if (asked.problem.lines.empty()) {
    if (last && !answers) call.out << "nothing for saw " << question.saw << " is open in these cut lists\n";
    return {at_least, asked.widest};
  }
  return {std::max(at_least, Answer(call, options, answers, made)), asked.widest};
}

}  // namespace

int RunAllocate(const BookCall& call, const AllocateOptions& options) {
  return WithBook(call, [&](Connection& connection) {
    PlanQuestion question;
    question.cut_lists = options.cut_lists;
    question.bundled = options.bundled;
    question.aim = AimNamed(options.aim);
    question.limits.seconds = options.seconds;
    question.limits.threads = options.threads;
    question.limits.seed = options.seed;
    RequireSaws(connection, options.saws);
    Json answers = Json::array();
    int worst = 0;
    for (const std::string& saw : options.saws) {
      question.saw = saw;
      const SawPlan planned = PlanSaw(call, options, connection, question, saw == options.saws.back(), options.json ? &answers : nullptr);
      worst = std::max(worst, planned.exit);
      question.wider_than = std::max(question.wider_than, planned.widest);
    }
    if (options.json) call.out << answers.dump(2) << '\n';
    return worst;
  });
}

int RunPlanList(const BookCall& call, bool json) {
  return WithBook(call, [&](Connection& connection) {
    Json rows = Json::array();
    const std::vector<PlanRow> plans = ReadPlans(connection);
    for (const PlanRow& p : plans) {
      if (json)
        rows.push_back({{"plan", p.plan},
                        {"state", p.state},
                        {"aim", p.aim},
                        {"saw", p.saw},
                        {"proof", p.proof},
                        {"made_by", p.made_by},
                        {"made_at", p.made_at},
                        {"due", p.due}});
      else call.out << "plan " << p.plan << " (" << p.state << ", saw " << p.saw << ", by " << p.made_by << "): " << p.proof << '\n';
    }
    if (json) call.out << rows.dump(2) << '\n';
    else if (plans.empty()) call.out << "no plans yet; `heatkeep allocate CUTLIST` makes one\n";
    return 0;
  });
}

int RunPlanShow(const BookCall& call, std::int64_t plan, bool json, bool why) {
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
      for (const SheetCut& c : b.cuts) call.out << "  " << c.count << " x " << WriteMm(c.set) << " mm for " << c.order << "/" << c.line;
      call.out << "; left " << WriteMm(b.left, Rounding::Down) << " mm "
               << (b.fate == LeftFate::Drop        ? "keep"
                       : b.fate == LeftFate::Scrap ? "scrap"
                                                   : "nothing")
               << '\n';
      for (const std::string& warning : WarningWords(b)) call.out << "   " << warning << '\n';
      for (const std::string& words : EndWords(b)) call.out << "   " << words << '\n';
      if (b.bundle > 1) call.out << "   " << BundleWords(b) << '\n';
      if (why) call.out << "   not there: " << (b.otherwise.empty() ? "nothing else held its cuts" : b.otherwise) << '\n';
    }
    for (const SheetShort& s : sheet->shorts)
      call.out << "short: " << s.order << "/" << s.line << ", " << s.missing << " missing: " << s.why << '\n';
    return 0;
  });
}

int RunPlanCancel(const BookCall& call, std::int64_t plan, const std::string& reason) {
  return WithBook(call, [&](Connection& connection) {
    const Json answer = Deeds(connection).CancelPlan(NewRequest(), plan, reason);
    std::string at_saw;
    for (const Json& tag : answer["at_saw"]) at_saw += (at_saw.empty() ? "" : ", ") + tag.get<std::string>();
    call.out << "plan " << plan << (at_saw.empty() ? " is cancelled, " : " stays for what is at the saw (" + at_saw + "), ")
             << Counted(answer["released"].get<int>(), "piece") << " free again\n";
    return 0;
  });
}

}  // namespace heatkeep::command
