// What comes out of comparing one value with its limits.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "client/papers/rounding.h"
#include "schema/terms/grade_limit.h"

namespace heatkeep::papers {

enum class Verdict { Ok, Low, High, Missing, NotLimited };
enum class Overall { Conforms, Violates, Incomplete };

// Absolute: any excess, however small, is outside (ASTM E29 section 5). The others: rounded to the figures of the limit
// first (E29 section 6 and ISO 404:2013 8.5; rounding.h). Measurement uncertainty is not applied (ISO 404 8.6).
enum class Method { Absolute, HalfEven, HalfAway };

std::string_view VerdictText(Verdict verdict);  // "ok", "low", "high", "missing", "not limited"
std::string_view OverallText(Overall overall);  // "conforms", "violates", "incomplete"
Method ReadMethod(std::string_view text);       // "absolute", "rounding", "rounding-b". Throws BadText

struct Line {
  std::string what;                     // "C", "CEV", "Rm"
  std::optional<Fraction> value;        // millionths of the unit; none: not reported, or not to be reckoned
  std::optional<Bound> least, most;     // as printed; none where there is none, or where they depend on a size not said
  std::optional<Bound> below, above;    // permissible deviation of a product analysis that was added to them
  std::optional<std::int64_t> rounded;  // as it was compared with the bound it is nearest to; none by the absolute method
  Verdict verdict = Verdict::NotLimited;
  std::string words;                   // why it is missing or depends on the size; empty else
  std::string source, note, evidence;  // of the limit
};

// The line is judged by this row: its limits, and where they stand.
template <class Row>
void TakeLimits(Line& line, const Row& row) {
  line.least = row.least;
  line.most = row.most;
  line.source = row.source;
  line.note = row.note;
  line.evidence = row.evidence;
}

// One value against bounds that hold for it; sets rounded and verdict. `line.value` must be there.
void Judge(Line& line, Method method);

// Violates before incomplete before conforms. No line is limited: incomplete.
Overall OverallOf(const std::vector<Line>& lines);

Overall Worse(Overall a, Overall b);

// "C 0.434 %, at most 0.43"; of a missing one "S is not reported". `unit` is "%" or "MPa".
std::string LineWords(const Line& line, std::string_view unit);

// Millionths with as many places as they need, at most six; a value that goes on is rounded to four places.
std::string ValueText(const Fraction& value);

}  // namespace heatkeep::papers
