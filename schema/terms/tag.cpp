#include "schema/terms/tag.h"

#include "schema/terms/number_text.h"
#include "schema/terms/plain_text.h"

namespace heatkeep {
namespace {

constexpr const char* kExpected = "a letter, six digits and a check character";
constexpr int kM = 36;
constexpr std::string_view kCharacters = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

int ValueOf(char c, std::string_view text) {
  const auto at = kCharacters.find(c);
  if (at == std::string_view::npos) {
    throw BadText("a character that is neither digit nor capital letter in " + Quoted(text), "0-9 and A-Z");
  }
  return static_cast<int>(at);
}

// P after the last character.
int Carried(std::string_view body) {
  int p = kM;
  for (char c : body) {
    const int s = (p + ValueOf(c, body)) % kM;
    p = (s == 0 ? kM : s) * 2 % (kM + 1);
  }
  return p;
}

bool IsDigit(char c) { return c >= '0' && c <= '9'; }

}  // namespace

char CheckCharacter(std::string_view body) {
  if (body.empty()) throw BadText("nothing to check", "at least one character");
  return kCharacters[static_cast<std::size_t>((kM + 1 - Carried(body)) % kM)];
}

bool HasRightCheckCharacter(std::string_view text) {
  return text.size() >= 2 && CheckCharacter(text.substr(0, text.size() - 1)) == text.back();
}

std::string TagForm(std::string_view text) {
  std::string form;
  for (char c : UpperCase(PlainText(text))) {
    if (c != ' ' && c != '-') form += c;
  }
  if (form.empty()) throw BadText("no tag is written", kExpected);
  if (form.size() != 8) { throw BadText(Quoted(text) + " has " + std::to_string(form.size()) + " characters", kExpected); }
  bool shaped = form.front() >= 'A' && form.front() <= 'Z';
  for (std::size_t i = 1; i < 7; ++i) shaped = shaped && IsDigit(form[i]);
  if (!shaped || kCharacters.find(form.back()) == std::string_view::npos) {
    throw BadText(Quoted(text) + " is not built like a tag", kExpected);
  }
  return form;
}

std::string ReadTag(std::string_view text) {
  std::string form = TagForm(text);
  if (!HasRightCheckCharacter(form)) {
    throw BadText("the check character " + Quoted(form.substr(7)) + " of tag " + Quoted(form) + " is wrong",
                  "the tag read again, character by character");
  }
  return form;
}

bool IsValidTag(std::string_view text) {
  try {
    ReadTag(text);
    return true;
  } catch (const BadText&) { return false; }
}

std::string MakeTag(char site, std::int64_t number) {
  if (site < 'A' || site > 'Z') throw BadText("site " + Quoted(std::string(1, site)), "one letter from A to Z");
  if (number < 0 || number > 999'999) { throw BadText("tag number " + WriteWhole(number) + " is out of range", "0 to 999 999"); }
  const std::string digits = std::to_string(number);
  const std::string body = site + std::string(6 - digits.size(), '0') + digits;
  return body + CheckCharacter(body);
}

}  // namespace heatkeep
