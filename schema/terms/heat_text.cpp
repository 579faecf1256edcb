#include "schema/terms/heat_text.h"

#include "schema/terms/plain_text.h"

namespace heatkeep {
namespace {

bool IsDigit(char c) { return c >= '0' && c <= '9'; }

char Folded(char c) {
  switch (c) {
    case 'O': return '0';
    case 'I': return '1';
    case 'S': return '5';
    case 'B': return '8';
    default: return c;
  }
}

std::size_t TakeDigits(std::string_view& rest) {
  std::size_t n = 0;
  while (n < rest.size() && IsDigit(rest[n])) ++n;
  rest.remove_prefix(n);
  return n;
}

}  // namespace

std::string FoldedHeat(std::string_view heat) {
  std::string out;
  for (char c : UpperCase(PlainText(heat))) {
    if (c != ' ' && c != '-' && c != '.' && c != '/' && c != '_') out += Folded(c);
  }
  return out;
}

bool LookAlike(std::string_view a, std::string_view b) { return a != b && FoldedHeat(a) == FoldedHeat(b); }

bool SpreadsheetAte(std::string_view heat) {
  const std::string text = UpperCase(PlainText(heat));
  std::string_view rest = text;
  if (TakeDigits(rest) != 1) return false;
  bool mark = false, sign = false;
  if (!rest.empty() && (rest.front() == '.' || rest.front() == ',')) {
    rest.remove_prefix(1);
    mark = TakeDigits(rest) > 0;
  }
  if (rest.empty() || rest.front() != 'E') return false;
  rest.remove_prefix(1);
  if (!rest.empty() && (rest.front() == '+' || rest.front() == '-')) {
    rest.remove_prefix(1);
    sign = true;
  }
  // 1E23 can be a real heat; 1.23E3, 1E+05 and 1.2E+05 are numbers.
  return TakeDigits(rest) > 0 && rest.empty() && (mark || sign);
}

}  // namespace heatkeep
