#include "client/papers/verdict.h"

#include <algorithm>
#include <array>

#include "schema/terms/bad_text.h"
#include "schema/terms/number_text.h"

namespace heatkeep::papers {
namespace {

// The bound with the deviation that a product analysis may have.
Bound Widened(const Bound& bound, const std::optional<Bound>& by, int sign) {
  return by ? Bound{bound.millionths + sign * by->millionths, std::max(bound.places, by->places)} : bound;
}

// Compares with one bound: -1, 0, 1; sets what was compared.
int Against(const Fraction& value, const Bound& bound, Method method, std::optional<std::int64_t>& rounded) {
  if (method == Method::Absolute) return Compare(value, bound.millionths);
  rounded = RoundToPlaces(value, bound.places, method == Method::HalfEven ? Tie::HalfEven : Tie::HalfAway);
  return *rounded < bound.millionths ? -1 : *rounded > bound.millionths ? 1 : 0;
}

constexpr std::array<std::string_view, 3> kMethods{"absolute", "rounding", "rounding-b"};

}  // namespace

std::string_view VerdictText(Verdict verdict) {
  constexpr std::array<std::string_view, 5> words{"ok", "low", "high", "missing", "not limited"};
  return words.at(static_cast<std::size_t>(verdict));
}

std::string_view OverallText(Overall overall) {
  constexpr std::array<std::string_view, 3> words{"conforms", "violates", "incomplete"};
  return words.at(static_cast<std::size_t>(overall));
}

Method ReadMethod(std::string_view text) {
  for (std::size_t i = 0; i < kMethods.size(); ++i) {
    if (kMethods.at(i) == text) return static_cast<Method>(i);
  }
  throw BadText("unknown method " + Quoted(text), "absolute, rounding (ties to even) or rounding-b (ties to the larger)");
}

void Judge(Line& line, Method method) {
  line.verdict = line.least || line.most ? Verdict::Ok : Verdict::NotLimited;
  if (line.least && Against(*line.value, Widened(*line.least, line.below, -1), method, line.rounded) < 0) {
    line.verdict = Verdict::Low;
  } else if (line.most && Against(*line.value, Widened(*line.most, line.above, 1), method, line.rounded) > 0) {
    line.verdict = Verdict::High;
  }
}

Overall OverallOf(const std::vector<Line>& lines) {
  bool missing = false, limited = false;
  for (const Line& line : lines) {
    if (line.verdict == Verdict::Low || line.verdict == Verdict::High) return Overall::Violates;
    missing = missing || line.verdict == Verdict::Missing;
    limited = limited || line.verdict == Verdict::Ok;
  }
  return missing || !limited ? Overall::Incomplete : Overall::Conforms;
}

Overall Worse(Overall a, Overall b) {
  if (a == Overall::Violates || b == Overall::Violates) return Overall::Violates;
  return a == Overall::Conforms ? b : a;
}

std::string ValueText(const Fraction& value) {
  const bool whole = value.numerator % value.denominator == 0;
  const std::int64_t shown = RoundToPlaces(value, whole ? 6 : 4, Tie::HalfEven);
  return (shown < 0 ? "-" : "") + WriteScaled(shown < 0 ? -shown : shown, 6);
}

std::string LineWords(const Line& line, std::string_view unit) {
  if (line.verdict == Verdict::Missing || (line.verdict == Verdict::NotLimited && !line.words.empty()))
    return line.what + ": " + (line.words.empty() ? "not reported" : line.words);
  std::string text = line.what + " " + ValueText(*line.value) + " " + std::string(unit);
  const bool low = line.verdict == Verdict::Low, high = line.verdict == Verdict::High;
  if (low) text += ", at least " + BoundText(*line.least);
  if (high) text += ", at most " + BoundText(*line.most);
  const auto& by = low ? line.below : line.above;
  if ((low || high) && by) text += " and " + BoundText(*by) + " more for a product analysis";
  return text;
}

}  // namespace heatkeep::papers
