#include "schema/terms/tolerance_text.h"

#include "schema/terms/plain_text.h"

namespace heatkeep {
namespace {

constexpr const char* kExpected = "a tolerance like -0/+1 or +-0.5";

Length ReadPart(std::string_view part, std::string_view text, LengthReading how) {
  try {
    return ReadLength(part, how);
  } catch (const BadText& e) { throw BadText("tolerance " + Quoted(text) + ": " + e.Wrong(), kExpected); }
}

// Where the second signed part begins: behind "/" or a blank. 0: there is none.
std::size_t SecondSign(std::string_view text) { return text.find_first_of("+-", 1); }

std::string_view WithoutSlash(std::string_view part) {
  while (!part.empty() && (part.back() == ' ' || part.back() == '/')) part.remove_suffix(1);
  return part;
}

}  // namespace

Tolerance ReadTolerance(std::string_view typed, LengthReading how) {
  std::string text = PlainText(typed);
  if (text.starts_with("\u00B1")) text.replace(0, 2, "+-");
  if (text.empty()) throw BadText("no tolerance is written", kExpected);
  if (text.starts_with("+-") || text.starts_with("+/-")) {
    const Length both = ReadPart(std::string_view(text).substr(text[1] == '/' ? 3 : 2), text, how);
    return {both, both};
  }
  if (text.starts_with("0/")) text.insert(0, text.find('+') == std::string::npos ? "+" : "-");
  if (text.ends_with("/0")) text.insert(text.size() - 1, text.front() == '+' ? "-" : "+");
  const std::size_t second = SecondSign(text);
  if ((text.front() != '+' && text.front() != '-') || second == std::string::npos || text[second] == text.front()) {
    throw BadText(Quoted(text) + " does not say one lower and one upper limit", kExpected);
  }
  const std::string_view all = text;
  const Length first = ReadPart(WithoutSlash(all.substr(1, second - 1)), text, how);
  const Length other = ReadPart(all.substr(second + 1), text, how);
  return text.front() == '-' ? Tolerance{first, other} : Tolerance{other, first};
}

std::string ToleranceText(const Tolerance& t) { return "-" + WriteMmExact(t.minus) + "/+" + WriteMmExact(t.plus); }

}  // namespace heatkeep
