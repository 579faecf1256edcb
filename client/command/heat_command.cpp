#include "client/command/heat_command.h"

#include <ostream>

#include "client/command/heat_lines.h"
#include "client/command/option_text.h"
#include "client/command/reference_files.h"
#include "client/papers/analysis_text.h"
#include "client/papers/mechanical.h"
#include "schema/terms/condition_text.h"
#include "schema/terms/length_text.h"
#include "schema/terms/number_text.h"

namespace heatkeep::command {
namespace {

using papers::Overall;

struct Checked {
  std::string grade;
  std::vector<papers::Answer> answers;  // one an analysis
  std::vector<papers::Line> tests;
  std::vector<std::string> both_sides, met;
  std::vector<papers::Analysis> analyses;
  Overall overall = Overall::Incomplete;
};

std::int64_t TestNumber(const std::string& name, const std::string& text) {
  return ReadOption(name, text, [most = name == "A" ? std::int64_t{100} : std::int64_t{10'000}](const std::string& words) {
    if (words.find(',') != std::string::npos) throw BadText("a comma in " + Quoted(words), "a decimal point, as 12.5");
    const std::int64_t read = ReadScaled(words, 6);
    if (read > most * 1'000'000) throw BadText(Quoted(words) + " is too large", "at most " + std::to_string(most));
    return read;
  });
}

papers::TestQuestion Tests(const HeatCheckOptions& o, const papers::Question& q) {
  papers::TestQuestion tests{q.grade, NormalCondition(o.condition), q.size, {}, q.method};
  if (!o.rm.empty()) tests.values.push_back({"Rm", TestNumber("Rm", o.rm)});
  if (!o.re.empty()) tests.values.push_back({"Re", TestNumber("Re", o.re)});
  if (!o.a.empty()) tests.values.push_back({"A", TestNumber("A", o.a)});
  if (!o.rm.empty() && !o.re.empty() && tests.values[1].millionths > tests.values[0].millionths) {
    throw BadText("Re is higher than Rm", "a yield strength below the tensile strength");
  }
  return tests;
}

Checked Check(const HeatCheckOptions& o, const Reference& reference) {
  papers::Question q;
  q.grade = GradeCalled(reference.grades, o.grade).designation;
  q.product = o.product;
  q.method = papers::ReadMethod(o.method);
  if (!o.size.empty()) {
    q.size = ReadLength(o.size);
    if (q.size->nm == 0) throw BadText(Quoted(o.size) + " is no size", "a size over zero");
  }
  if (o.analyses.size() > 1 && !o.product) throw BadText("a heat has one analysis", "one --analysis, or several with --product");
  Checked c;
  c.grade = q.grade;
  const papers::TestQuestion tests = Tests(o, q);
  if (!tests.values.empty()) c.tests = papers::CheckTests(tests, reference.mechanical);
  for (const std::string& text : o.analyses) {
    q.analysis = papers::ReadAnalysis(text);
    c.analyses.push_back(q.analysis);
    c.answers.push_back(papers::CheckHeat(q, reference.known));
    if (c.answers.back().elements.empty())
      throw BadText(c.answers.back().open, "a grade and a size whose limits are in the program's table");
    c.overall = c.answers.size() == 1 ? c.answers[0].overall : papers::Worse(c.overall, c.answers.back().overall);
  }
  c.both_sides = papers::BothSides(c.answers);
  if (!c.both_sides.empty()) c.overall = Overall::Violates;
  if (!c.tests.empty()) c.overall = papers::Worse(c.overall, papers::OverallOfTests(c.tests));
  if (c.analyses.size() == 1) c.met = papers::GradesMet(q, reference.known);
  return c;
}

Json ReckonedJson(const papers::Analysis& analysis) {
  Json all = Json::object();
  for (const char* what : {"CEV", "CET", "Pcm", "PREN"}) {
    const papers::Reckoned r = papers::Reckon(what, analysis, {});
    all[what] = r.missing.empty() ? NumberJson(r.known) : Json(nullptr);
    if (!r.missing.empty()) all[std::string(what) + "_needs"] = r.missing;
  }
  return all;
}

void SayJson(const Checked& c, const HeatCheckOptions& o, std::ostream& out) {
  Json j{{"grade", c.grade}, {"analysis", o.product ? "product" : "heat"}, {"method", o.method}};
  const auto add = [&](Json& into, std::size_t i) {
    into["elements"] = LinesJson(c.answers[i].elements, "element");
    into["sums"] = LinesJson(c.answers[i].sums, "what");
    into["reckoned"] = ReckonedJson(c.analyses[i]);
    into["composition"] = papers::OverallText(c.answers[i].composition);
    if (!c.answers[i].open.empty()) into["open"] = c.answers[i].open;
  };
  if (c.answers.size() == 1) {
    add(j, 0);
    j["meets"] = c.met;
  } else {
    for (std::size_t i = 0; i < c.answers.size(); ++i) add(j["analyses"][i], i);
    j["outside_on_both_sides"] = c.both_sides;
  }
  if (!c.tests.empty()) j["tests"] = LinesJson(c.tests, "property");
  j["overall"] = papers::OverallText(c.overall);
  j["states"] = kComparison;
  out << j.dump(2) << "\n";
}

void SayWords(const Checked& c, const HeatCheckOptions& o, std::ostream& out) {
  out << c.grade << ", " << (o.product ? "product analysis" : "heat analysis") << ", " << o.method << " method\n";
  for (std::size_t i = 0; i < c.answers.size(); ++i) {
    if (c.answers.size() > 1) out << "analysis " << i + 1 << "\n";
    ShowLines(out, c.answers[i].elements);
    ShowLines(out, c.answers[i].sums);
    if (!c.answers[i].open.empty()) out << c.answers[i].open << "\n";
    for (const char* what : {"CEV", "CET", "Pcm", "PREN"}) {
      const papers::Reckoned r = papers::Reckon(what, c.analyses[i], {});
      if (r.missing.empty()) out << "  " << what << " = " << papers::ValueText(r.known) << "\n";
    }
  }
  ShowLines(out, c.tests);
  for (const std::string& element : c.both_sides)
    out << element << " lies above the range in one analysis and below it in another (EN 10088-2 allows one side only)\n";
  for (const papers::Answer& a : c.answers) SayWrong(out, a.elements, a.sums);
  SayWrong(out, c.tests, {});
  out << papers::OverallText(c.overall) << "\n";
  if (!c.met.empty()) {
    out << "meets the limits of:";
    for (const std::string& grade : c.met) out << " " << grade << (grade == c.met.back() ? "\n" : ",");
  }
  out << kComparison << "\n";
}

}  // namespace

int RunHeatCheck(const HeatCheckOptions& options, std::ostream& out, std::ostream& err) {
  try {
    const Checked checked = Check(options, ReadReference());
    options.json ? SayJson(checked, options, out) : SayWords(checked, options, out);
    return checked.overall == Overall::Conforms ? 0 : 1;
  } catch (const std::exception& e) {
    err << "heatkeep: " << e.what() << "\n";
    return 2;
  }
}

}  // namespace heatkeep::command
