#include "client/papers/mechanical.h"

#include <algorithm>

namespace heatkeep::papers {
namespace {

const TestValue* ValueOf(const TestQuestion& q, const std::string& property) {
  const auto at = std::find_if(q.values.begin(), q.values.end(), [&](const TestValue& v) { return v.property == property; });
  return at == q.values.end() ? nullptr : &*at;
}

// What the rows of one property say of its value.
Line LineFor(const std::string& property, const std::vector<const MechanicalLimit*>& rows, const TestQuestion& q) {
  Line line;
  line.what = property;
  const TestValue* value = ValueOf(q, property);
  if (value != nullptr) line.value = Fraction{value->millionths, 1};
  const MechanicalLimit* row = rows.size() == 1 && rows.front()->sizes.All() ? rows.front() : nullptr;
  for (const MechanicalLimit* r : rows) {
    if (q.size && r->sizes.Holds(*q.size)) row = r;
  }
  if (row == nullptr && !rows.empty()) {
    line.verdict = Verdict::Missing;
    line.words = q.size ? "no limits for this size are known" : "depends on the size, which is not said";
    return line;
  }
  if (row != nullptr) TakeLimits(line, *row);
  if (line.value) {
    Judge(line, q.method);
  } else {
    line.verdict = Verdict::Missing;
    line.words = "not reported";
  }
  return line;
}

}  // namespace

std::string_view UnitOf(std::string_view property) { return property == "A" ? "%" : "MPa"; }

std::vector<Line> CheckTests(const TestQuestion& question, const std::vector<MechanicalLimit>& limits) {
  std::vector<std::string> properties;
  const auto add = [&properties](const std::string& p) {
    if (std::find(properties.begin(), properties.end(), p) == properties.end()) properties.push_back(p);
  };
  const auto ours = [&](const MechanicalLimit& l) { return l.grade == question.grade && (l.condition.empty() || l.condition == question.condition); };
  for (const MechanicalLimit& l : limits) {
    if (ours(l)) add(l.property);
  }
  for (const TestValue& v : question.values) add(v.property);
  std::vector<Line> lines;
  for (const std::string& property : properties) {
    std::vector<const MechanicalLimit*> rows;
    for (const MechanicalLimit& l : limits) {
      if (ours(l) && l.property == property) rows.push_back(&l);
    }
    lines.push_back(LineFor(property, rows, question));
  }
  return lines;
}

}  // namespace heatkeep::papers
