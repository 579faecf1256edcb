#include "client/phrases/phrase.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <string_view>

namespace heatkeep::phrases {
namespace {

bool Letter(char c) { return std::isalpha(static_cast<unsigned char>(c)) != 0; }

// The unit at the beginning of what follows a hole, its kind, and how long it is with its blank.
struct UnitKind {
  std::string_view unit;
  char kind;
};
constexpr std::array<UnitKind, 4> kUnits{{{" mm", 'L'}, {" nm", 'E'}, {" m", 'T'}, {" kg", 'M'}}};

constexpr std::array<std::string_view, 22> kCounted{
    " pieces", " bars",  " drops", " cuts", " days",   " lines",   " heats", " strokes", " labels", " plans",         " happenings",
    " lots",   " files", " bytes", " tags", " chains", " layouts", " hours", " orders",  " seals",  " live promises", " cut pieces"};

bool Begins(std::string_view text, std::string_view word) {
  return text.starts_with(word) && (text.size() == word.size() || !Letter(text[word.size()]));
}

std::string_view Trimmed(std::string_view text) {
  const auto loose = [](char c) { return c == ' ' || c == ',' || c == ';' || c == '\n'; };
  while (!text.empty() && (loose(text.front()) || text.front() == '.' || text.front() == ':' || text.starts_with("- ")))
    text.remove_prefix(1);
  for (;;) {
    if (text.size() >= 2 && text[text.size() - 2] == '\1') break;
    if (text.empty() || !(loose(text.back()) || text.back() == ':')) break;
    text.remove_suffix(1);
  }
  return text;
}

}  // namespace

Phrase PhraseOf(const std::string& draft) {
  Phrase phrase;
  int letters = 0;
  std::string_view rest = Trimmed(draft);
  while (!rest.empty()) {
    if (rest.front() != '\1') {
      letters += Letter(rest.front()) ? 1 : 0;
      phrase.english += rest.front();
      rest.remove_prefix(1);
      continue;
    }
    char kind = rest.size() > 1 ? rest[1] : 'N';
    rest.remove_prefix(2);
    for (const UnitKind& unit : kUnits) {
      if (!Begins(rest, unit.unit)) continue;
      kind = unit.kind;
      rest.remove_prefix(unit.unit.size());
      break;
    }
    for (const std::string_view counted : kCounted)
      if (kind == 'N' && Begins(rest, counted) && !phrase.Counts()) kind = 'C';
    phrase.kinds += kind;
    phrase.english += '%' + std::to_string(phrase.kinds.size());
  }
  const bool number = phrase.kinds.find('l') != std::string::npos && phrase.english.size() > 2 * phrase.kinds.size();
  const bool key = !phrase.kinds.empty() && phrase.english.find(' ') == std::string::npos;  // "torn-%1"
  if (!number && (letters < 2 || key)) return {};
  return phrase;
}

bool SeveralWords(const std::string& text) {
  for (std::size_t i = 1; i + 1 < text.size(); ++i)
    if (text[i] == ' ' && text[i - 1] != ' ') return true;
  return false;
}

std::vector<std::string> Chained(const std::vector<std::string>& begins, const std::vector<std::string>& ends, std::size_t most) {
  const auto starts = [](const std::string& end) { return !end.empty() && (Letter(end.front()) || end.front() == '\1'); };
  if (begins.size() == 1 && begins[0].size() == 2 && begins[0][0] == '\1' && !ends.empty() && std::all_of(ends.begin(), ends.end(), starts))
    return ends;
  std::vector<std::string> all;
  if (begins.size() * ends.size() > most) return all;
  for (const std::string& begin : begins)
    for (const std::string& end : ends) all.push_back(begin + end);
  return all;
}

}  // namespace heatkeep::phrases
