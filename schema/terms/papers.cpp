#include "schema/terms/papers.h"

#include <algorithm>
#include <array>

#include "schema/terms/plain_text.h"

namespace heatkeep {

std::string_view PapersText(Papers papers) {
  switch (papers) {
    case Papers::None: return "none";
    case Papers::P21: return "2.1";
    case Papers::P22: return "2.2";
    case Papers::P31: return "3.1";
    case Papers::P32: return "3.2";
  }
  return "none";
}

Papers ReadPapers(std::string_view text) {
  std::string word = LowerCase(PlainText(text));
  if (word.starts_with("en 10204 ")) word.erase(0, 9);
  if (word.empty()) return Papers::None;
  for (Papers p : {Papers::None, Papers::P21, Papers::P22, Papers::P31, Papers::P32}) {
    if (word == PapersText(p)) return p;
  }
  throw BadText("unknown papers " + Quoted(text), "2.1, 2.2, 3.1, 3.2 (EN 10204) or none");
}

namespace {

// The parts between marks, without blanks at their ends.
std::vector<std::string> Parts(std::string_view text, char mark) {
  std::vector<std::string> parts;
  for (std::size_t at = 0; at <= text.size();) {
    const std::size_t end = std::min(text.find(mark, at), text.size());
    parts.push_back(PlainText(text.substr(at, end - at)));
    at = end + 1;
  }
  return parts;
}

}  // namespace

std::vector<Validator> ReadValidators(std::string_view text) {
  constexpr std::array kWhom{"manufacturer", "independent", "purchaser", "official"};
  std::vector<Validator> validators;
  for (const std::string& one : Parts(text, ';')) {
    if (one.empty()) continue;
    const std::vector<std::string> parts = Parts(one, ',');
    const bool known = parts.size() == 3 && std::find(kWhom.begin(), kWhom.end(), LowerCase(parts[2])) != kWhom.end();
    if (!known || parts[0].empty() || parts[1].empty())
      throw BadText(Quoted(one) + " does not say who validated it", "NAME, POSITION, manufacturer|independent|purchaser|official");
    validators.push_back({parts[0], parts[1], LowerCase(parts[2])});
  }
  return validators;
}

std::string ValidatorsText(const std::vector<Validator>& validators) {
  std::string text;
  for (const Validator& v : validators) text += (text.empty() ? "" : "; ") + v.name + ", " + v.position + ", " + v.whom;
  return text;
}

}  // namespace heatkeep
