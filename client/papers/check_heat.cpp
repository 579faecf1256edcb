#include "client/papers/check_heat.h"

#include <algorithm>
#include <set>

namespace heatkeep::papers {
namespace {

using Rows = std::vector<const GradeLimit*>;

// One size out of every range between two of the limits' bounds: a size in it stands for all of them.
std::vector<Length> Representatives(const Rows& rows) {
  std::set<Length> bounds{Length{0}};
  for (const GradeLimit* row : rows) {
    bounds.insert(row->sizes.over);
    if (row->sizes.upto) bounds.insert(*row->sizes.upto);
  }
  std::vector<Length> sizes;
  for (const Length bound : bounds) sizes.push_back(bound + Length{1});
  return sizes;
}

std::vector<std::string> Names(const Rows& rows, bool elements) {
  std::vector<std::string> names;
  for (const GradeLimit* row : rows) {
    if (IsElement(row->what) == elements && std::find(names.begin(), names.end(), row->what) == names.end()) names.push_back(row->what);
  }
  return names;
}

const GradeLimit* RowFor(const Rows& rows, const std::string& what, Length size) {
  const auto at =
      std::find_if(rows.begin(), rows.end(), [&](const GradeLimit* row) { return row->what == what && row->sizes.Holds(size); });
  return at == rows.end() ? nullptr : *at;
}

bool InBand(const ProductDeviation& d, const Bound& bound) {
  return bound.millionths > d.over.millionths && (!d.upto || bound.millionths <= d.upto->millionths);
}

// The row of the deviations that a bound of this limit falls into; those of the grade itself before those of the standard.
const ProductDeviation* DeviationOf(const GradeLimit& row, const Bound& bound, const std::vector<ProductDeviation>& deviations) {
  for (const bool own : {true, false}) {
    for (const ProductDeviation& d : deviations) {
      if (row.source.starts_with(d.standard) && d.element == row.what && InBand(d, bound) && (own ? d.grade == row.grade : d.grade.empty()))
        return &d;
    }
  }
  return nullptr;
}

void Widen(Line& line, const GradeLimit& row, const std::vector<ProductDeviation>& deviations) {
  std::string source;
  const auto add = [&](const std::optional<Bound>& bound, bool above) {
    if (!bound) return;
    const ProductDeviation* d = DeviationOf(row, *bound, deviations);
    if (d == nullptr) return;
    (above ? line.above : line.below) = above ? d->above : d->below;
    source = "; deviation: " + d->source + " (" + d->evidence + ")";
  };
  add(row.least, false);
  add(row.most, true);
  line.source += source;
}

Line LineFor(const std::string& what, const GradeLimit* row, const Question& q, const Known& known, const std::vector<std::string>& named) {
  Line line;
  line.what = what;
  if (row != nullptr) {
    TakeLimits(line, *row);
    if (q.product) Widen(line, *row, known.deviations);
  }
  const Reckoned reckoned = Reckon(what, q.analysis, named);
  const bool limited = line.least || line.most;
  if (reckoned.missing.empty()) {
    line.value = reckoned.known;
    Judge(line, q.method);
    return line;
  }
  line.verdict = limited ? Verdict::Missing : Verdict::NotLimited;
  const bool element = IsElement(what);
  line.words = "not reported";
  if (element) return line;
  line.words = "cannot be reckoned: not reported:";
  for (const std::string& e : reckoned.missing) line.words += " " + e;
  Line part = line;  // what is reported is too much already
  part.least.reset();
  part.value = reckoned.known;
  if (reckoned.grows && part.most) Judge(part, q.method);
  if (part.verdict == Verdict::High) {
    part.words = "without " + line.words.substr(line.words.rfind(':') + 2);
    return part;
  }
  return line;
}

// The same value at several sizes: one verdict, or missing where it depends on the size.
Line Merged(const std::vector<Line>& lines) {
  const Line* limited = nullptr;
  bool differs = false, bounds_differ = false;
  for (const Line& line : lines) {
    if (line.verdict == Verdict::NotLimited) continue;
    if (limited == nullptr) limited = &line;
    differs = differs || line.verdict != limited->verdict;
    bounds_differ = bounds_differ || line.least != limited->least || line.most != limited->most;
  }
  if (limited == nullptr) return lines.front();
  const bool wrong = limited->verdict == Verdict::Low || limited->verdict == Verdict::High;
  const bool everywhere = std::none_of(lines.begin(), lines.end(), [](const Line& l) { return l.verdict == Verdict::NotLimited; });
  Line merged = *limited;
  if (differs || (wrong && !everywhere)) {
    merged.verdict = Verdict::Missing;
    merged.words = "depends on the size, which is not said";
    bounds_differ = true;
  }
  if (bounds_differ && merged.verdict != Verdict::Low && merged.verdict != Verdict::High) {
    merged.least.reset();
    merged.most.reset();
    merged.below.reset();
    merged.above.reset();
    merged.rounded.reset();
    merged.note = "limits differ with the size";
  }
  return merged;
}

// An element the grade says nothing of, in an amount that makes another steel of it. EN 10020:2000 Table 1, from memory: what
// divides alloy from non-alloy steel; not asked of stainless grades, whose steel is alloyed already.
bool MakesAnotherSteel(const Answer& answer) {
  static const std::vector<ElementContent> alloys{{"Al", 300'000}, {"Co", 300'000}, {"Cr", 300'000}, {"Cu", 400'000},
                                                  {"Mo", 80'000},  {"Ni", 300'000}, {"Pb", 400'000}, {"Si", 600'000},
                                                  {"Ti", 50'000},  {"V", 100'000},  {"W", 300'000},  {"Mn", 1'650'000}};
  const auto is = [&](const char* element, auto test) {
    return std::any_of(answer.elements.begin(), answer.elements.end(), [&](const Line& l) { return l.what == element && test(l); });
  };
  if (!answer.sums.empty() && answer.sums.front().what.starts_with("each other")) return false;  // others have limits
  if (is("Cr", [](const Line& l) { return l.least && l.least->millionths >= 10'500'000; })) return false;
  return std::any_of(alloys.begin(), alloys.end(), [&](const ElementContent& a) {
    return is(a.element.c_str(), [&](const Line& l) { return l.verdict == Verdict::NotLimited && Compare(*l.value, a.millionths) >= 0; });
  });
}

}  // namespace

Answer CheckHeat(const Question& question, const Known& known) {
  Answer answer;
  Rows rows;
  for (const GradeLimit& limit : known.limits) {
    if (limit.grade == question.grade) rows.push_back(&limit);
  }
  if (rows.empty()) {
    answer.open = "no limits of " + question.grade + " are known";
    return answer;
  }
  const std::vector<std::string> elements = Names(rows, true), sums = Names(rows, false);
  std::vector<Length> sizes;
  bool gap = false;
  for (const Length size : question.size ? std::vector<Length>{*question.size} : Representatives(rows)) {
    const bool covered =
        std::any_of(elements.begin(), elements.end(), [&](const std::string& e) { return RowFor(rows, e, size) != nullptr; });
    if (covered) sizes.push_back(size);
    gap = gap || !covered;
  }
  if (gap)
    answer.open = question.size ? "no limits of " + question.grade + " for this size are known"
                                : "limits are known for some sizes only, and the size is not said";
  if (sizes.empty()) return answer;
  const auto lines_of = [&](const std::vector<std::string>& names, std::vector<Line>& into) {
    for (const std::string& what : names) {
      std::vector<Line> at_sizes;
      for (const Length size : sizes) at_sizes.push_back(LineFor(what, RowFor(rows, what, size), question, known, elements));
      into.push_back(Merged(at_sizes));
    }
  };
  lines_of(elements, answer.elements);
  lines_of(sums, answer.sums);
  for (const ElementContent& e : question.analysis) {
    if (std::find(elements.begin(), elements.end(), e.element) == elements.end())
      answer.elements.push_back(LineFor(e.element, nullptr, question, known, elements));
  }
  std::vector<Line> all = answer.elements;
  all.insert(all.end(), answer.sums.begin(), answer.sums.end());
  const auto judged = [&](const std::vector<Line>& lines) {
    const Overall overall = OverallOf(lines);
    return overall == Overall::Conforms && gap ? Overall::Incomplete : overall;
  };
  answer.composition = judged(answer.elements);
  answer.overall = judged(all);
  return answer;
}

std::vector<std::string> GradesMet(Question question, const Known& known) {
  std::vector<std::string> met;
  std::set<std::string> tried;
  for (const GradeLimit& limit : known.limits) {
    if (!tried.insert(limit.grade).second) continue;
    question.grade = limit.grade;
    const Answer answer = CheckHeat(question, known);
    if (answer.overall == Overall::Conforms && !MakesAnotherSteel(answer)) met.push_back(limit.grade);
  }
  return met;
}

std::vector<std::string> BothSides(const std::vector<Answer>& answers) {
  std::set<std::string> above, below;
  std::vector<std::string> both;
  for (const Answer& answer : answers) {
    for (const Line& line : answer.elements) {
      if (line.value && line.most && Compare(*line.value, line.most->millionths) > 0) above.insert(line.what);
      if (line.value && line.least && Compare(*line.value, line.least->millionths) < 0) below.insert(line.what);
    }
  }
  std::set_intersection(above.begin(), above.end(), below.begin(), below.end(), std::back_inserter(both));
  return both;
}

}  // namespace heatkeep::papers
