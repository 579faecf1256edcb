#include "client/papers/quantity.h"

#include <algorithm>

namespace heatkeep::papers {
namespace {

struct Term {
  std::string_view element;
  std::int64_t count = 1;
};

struct Formula {
  std::string_view name;
  std::int64_t denominator = 1;
  std::vector<Term> terms;
};

const std::vector<Formula>& Formulae() {
  static const std::vector<Formula> formulae{
      {"CEV", 30, {{"C", 30}, {"Mn", 5}, {"Cr", 6}, {"Mo", 6}, {"V", 6}, {"Ni", 2}, {"Cu", 2}}},
      {"CET", 40, {{"C", 40}, {"Mn", 4}, {"Mo", 4}, {"Cr", 2}, {"Cu", 2}, {"Ni", 1}}},
      {"Pcm", 60, {{"C", 60}, {"Si", 2}, {"Mn", 3}, {"Cu", 3}, {"Cr", 3}, {"Ni", 1}, {"Mo", 4}, {"V", 6}, {"B", 300}}},
      {"PREN", 10, {{"Cr", 10}, {"Mo", 33}, {"N", 160}}},
      {"PREW", 20, {{"Cr", 20}, {"Mo", 66}, {"W", 33}, {"N", 320}}}};
  return formulae;
}

[[noreturn]] void Unknown(std::string_view what) {
  throw BadText(Quoted(what) + " is nothing an analysis has", "an element, a sum like Cr+Mo+Ni, CEV, CET, Pcm, PREN, PREW, or others");
}

// "Cr+Mo+Ni", "Ti-5C": [sign] [whole number] element, one after the other.
std::vector<Term> SumTerms(std::string_view what) {
  std::vector<Term> terms;
  for (std::string_view rest = what; !rest.empty();) {
    std::int64_t count = 1;
    if (rest.front() == '+' || rest.front() == '-') {
      if (terms.empty()) Unknown(what);
      count = rest.front() == '-' ? -1 : 1;
      rest.remove_prefix(1);
    } else if (!terms.empty()) {
      Unknown(what);
    }
    std::int64_t number = 0;
    for (; !rest.empty() && rest.front() >= '0' && rest.front() <= '9' && number < 100; rest.remove_prefix(1))
      number = number * 10 + (rest.front() - '0');
    const std::string_view symbol = rest.substr(0, std::min(rest.find_first_of("+-"), rest.size()));
    if (!IsElement(symbol)) Unknown(what);
    terms.push_back({symbol, count * (number == 0 ? 1 : number)});
    rest.remove_prefix(symbol.size());
  }
  if (terms.empty()) Unknown(what);
  return terms;
}

Formula FormulaOf(std::string_view what) {
  for (const Formula& f : Formulae()) {
    if (f.name == what) return f;
  }
  return {what, 1, SumTerms(what)};
}

constexpr std::string_view kEach = "each other", kSum = "sum of others";

// The elements behind "but", where `what` is about others; nothing where it is not.
std::optional<std::vector<std::string>> OthersBut(std::string_view what) {
  const std::string_view start = what.starts_with(kEach) ? kEach : kSum;
  if (!what.starts_with(start)) return std::nullopt;
  std::vector<std::string> but;
  std::string_view rest = what.substr(start.size());
  if (rest.empty()) return but;
  if (!rest.starts_with(" but ")) Unknown(what);
  for (const Term& term : SumTerms(rest.substr(5))) but.emplace_back(term.element);
  return but;
}

}  // namespace

std::optional<std::int64_t> ContentOf(const Analysis& analysis, std::string_view element) {
  for (const ElementContent& e : analysis) {
    if (e.element == element) return e.millionths;
  }
  return std::nullopt;
}

Reckoned Reckon(std::string_view what, const Analysis& analysis, const std::vector<std::string>& named) {
  Reckoned reckoned;
  if (const auto but = OthersBut(what)) {
    for (const ElementContent& e : analysis) {
      const auto is = [&e](const std::vector<std::string>& list) { return std::find(list.begin(), list.end(), e.element) != list.end(); };
      if (is(named) || is(*but)) continue;
      std::int64_t& sum = reckoned.known.numerator;
      sum = what.starts_with(kEach) ? std::max(sum, e.millionths) : sum + e.millionths;
    }
    return reckoned;
  }
  const Formula formula = FormulaOf(what);
  reckoned.known.denominator = formula.denominator;
  for (const Term& term : formula.terms) {
    reckoned.grows = reckoned.grows && term.count > 0;
    if (const auto content = ContentOf(analysis, term.element)) {
      reckoned.known.numerator += term.count * *content;
    } else {
      reckoned.missing.emplace_back(term.element);
    }
  }
  return reckoned;
}

void CheckWhat(std::string_view what) {
  if (!OthersBut(what)) FormulaOf(what);
}

}  // namespace heatkeep::papers
