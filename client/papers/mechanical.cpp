#include "client/papers/mechanical.h"

#include <algorithm>

namespace heatkeep::papers {
namespace {

using Rows = std::vector<const MechanicalLimit*>;

// What the rows of one property say of a value; none: it is not reported.
Line LineFor(const std::string& property, const Rows& rows, const TestValue* value, const TestQuestion& q) {
  Line line;
  line.what = property;
  if (value != nullptr) line.value = Fraction{value->millionths, 1};
  if (rows.empty()) {
    line.words = "no limit known";
    return line;
  }
  const MechanicalLimit* row = rows.size() == 1 && rows.front()->sizes.All() ? rows.front() : nullptr;
  for (const MechanicalLimit* r : rows) {
    if (q.size && r->sizes.Holds(*q.size)) row = r;
  }
  if (row == nullptr) {
    line.verdict = Verdict::Missing;
    line.words = q.size ? "no limit known for this size" : "depends on the size, which is not said";
    return line;
  }
  TakeLimits(line, *row);
  if (line.value) {
    Judge(line, q.method);
  } else {
    line.verdict = Verdict::Missing;
    line.words = "not reported";
  }
  return line;
}

// Those for this condition; where it has none of this property, those for any condition.
Rows RowsOf(const std::string& property, const TestQuestion& q, const std::vector<MechanicalLimit>& limits) {
  Rows own, any;
  for (const MechanicalLimit& l : limits) {
    if (l.grade != q.grade || l.property != property) continue;
    if (l.condition == q.condition) own.push_back(&l);
    else if (l.condition.empty()) any.push_back(&l);
  }
  return own.empty() ? any : own;
}

}  // namespace

std::string_view UnitOf(std::string_view property) { return property == "A" ? "%" : "MPa"; }

std::vector<Line> CheckTests(const TestQuestion& question, const std::vector<MechanicalLimit>& limits) {
  std::vector<std::string> properties;
  const auto add = [&properties](const std::string& p) {
    if (std::find(properties.begin(), properties.end(), p) == properties.end()) properties.push_back(p);
  };
  for (const MechanicalLimit& l : limits) {
    if (l.grade == question.grade && (l.condition.empty() || l.condition == question.condition)) add(l.property);
  }
  for (const TestValue& v : question.values) add(v.property);
  std::vector<Line> lines;
  for (const std::string& property : properties) {
    const Rows rows = RowsOf(property, question, limits);
    const std::size_t before = lines.size();
    for (const TestValue& v : question.values) {
      if (v.property == property) lines.push_back(LineFor(property, rows, &v, question));
    }
    if (lines.size() == before) lines.push_back(LineFor(property, rows, nullptr, question));
  }
  return lines;
}

Overall OverallOfTests(const std::vector<Line>& lines) {
  const Overall overall = OverallOf(lines);
  const bool unknown = std::any_of(lines.begin(), lines.end(), [](const Line& l) { return l.verdict == Verdict::NotLimited; });
  return overall == Overall::Conforms && unknown ? Overall::Incomplete : overall;
}

}  // namespace heatkeep::papers
