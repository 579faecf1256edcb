#include "schema/terms/scan.h"

#include <algorithm>
#include <array>

#include "schema/terms/tag.h"

namespace heatkeep {
namespace {

constexpr char kRs = 30, kGs = 29, kEot = 4, kUnread = 26;
constexpr std::string_view kStart = "[)>";
constexpr std::size_t kMost = 4096, kTag = 8;
constexpr const char* kExpected = "what a Heatkeep label's code says: [)> RS 06 GS S<tag> GS ... RS EOT";

// How scanners write a control character out.
struct Written {
  std::string_view text;
  char control;
};
constexpr std::array<Written, 12> kWritten{{{"<GS>", kGs},
                                            {"<RS>", kRs},
                                            {"<EOT>", kEot},
                                            {"{GS}", kGs},
                                            {"{RS}", kRs},
                                            {"{EOT}", kEot},
                                            {"^]", kGs},
                                            {"^^", kRs},
                                            {"^D", kEot},
                                            {"\xE2\x90\x9D", kGs},
                                            {"\xE2\x90\x9E", kRs},
                                            {"\xE2\x90\x84", kEot}}};

bool IsDigit(char c) { return c >= '0' && c <= '9'; }
bool IsCapital(char c) { return c >= 'A' && c <= 'Z'; }
bool IsControl(char c) { return static_cast<unsigned char>(c) < 32 || c == 127; }
bool IsBlank(char c) { return c == ' ' || c == '\t' || c == '\r' || c == '\n'; }

// Up to three digits and a capital letter.
std::size_t IdentifierSize(std::string_view field) {
  std::size_t n = 0;
  while (n < 3 && n < field.size() && IsDigit(field[n])) ++n;
  return n < field.size() && IsCapital(field[n]) ? n + 1 : 0;
}

std::string_view WithoutEnds(std::string_view text) {
  while (!text.empty() && IsBlank(text.front())) text.remove_prefix(1);
  while (!text.empty() && IsBlank(text.back())) text.remove_suffix(1);
  if (text.size() > 3 && text[0] == ']' && !IsControl(text[1]) && (IsDigit(text[2]) || IsCapital(text[2]))) text.remove_prefix(3);
  return text;
}

// Only where the envelope has no control character of its own: a heat may well hold "^]".
std::string WithControls(std::string_view text) {
  if (std::any_of(text.begin(), text.end(), IsControl)) return std::string(text);
  std::string plain;
  while (!text.empty()) {
    const auto* at = std::find_if(kWritten.begin(), kWritten.end(), [&](const Written& w) { return text.starts_with(w.text); });
    plain += at == kWritten.end() ? text.front() : at->control;
    text.remove_prefix(at == kWritten.end() ? 1 : at->text.size());
  }
  return plain;
}

void Take(Scan& scan, std::string_view field) {
  // A reader that does not know extended channel interpretations leaves the number of UTF-8, 26, as a character.
  if (!field.empty() && field.front() == kUnread) field.remove_prefix(1);
  const std::size_t n = IdentifierSize(field);
  if (std::any_of(field.begin(), field.end(), IsControl))
    throw BadText("a control character inside a field of the scan: " + Quoted(field), "one label scanned at a time");
  if (n == 0) throw BadText("a field without a data identifier in the scan: " + Quoted(field), kExpected);
  const std::string identifier(field.substr(0, n)), data(field.substr(n));
  if (data.empty()) throw BadText("nothing behind the data identifier " + identifier + " of the scan", kExpected);
  if (scan.Of(identifier)) throw BadText("the data identifier " + identifier + " comes twice in the scan", "one label scanned at a time");
  scan.fields.emplace_back(identifier, identifier == "S" && data.size() == kTag ? ReadTag(data) : data);
}

// Behind "[)>06" with every control character lost: the tag that stands first.
Scan WithoutControls(std::string_view rest) {
  if (rest.size() < kTag + 1 || rest.front() != 'S' || !IsValidTag(rest.substr(1, kTag)))
    throw BadText("the scanner has dropped the control characters, and no tag stands first in " + Quoted(rest),
                  "the scanner set to send control characters, or the tag typed");
  return {{{"S", ReadTag(rest.substr(1, kTag))}}, rest.size() == kTag + 1};
}

Scan ReadEnvelope(std::string_view text) {
  text.remove_prefix(kStart.size());
  if (!text.empty() && text.front() == kRs) text.remove_prefix(1);
  const std::string_view format = text.substr(0, 2);
  if (format != "06") throw BadText("the scan is of format " + Quoted(format), "format 06 of ISO/IEC 15434: data identifiers");
  text.remove_prefix(2);
  if (text.find(kGs) == std::string_view::npos) {
    while (!text.empty() && (text.back() == kEot || text.back() == kRs)) text.remove_suffix(1);
    return WithoutControls(text);
  }
  if (text.front() != kGs) throw BadText("no separator behind the format number of the scan", kExpected);
  if (text.back() == kEot) text.remove_suffix(1);
  Scan scan;
  scan.whole = text.back() == kRs;
  if (scan.whole) text.remove_suffix(1);
  while (!text.empty()) {
    text.remove_prefix(1);
    const std::size_t end = std::min(text.find(kGs), text.size());
    const std::string_view field = text.substr(0, end);
    text.remove_prefix(end);
    // what breaks off may be a part of itself; a tag has a check character
    if (scan.whole || !text.empty() || (field.size() == kTag + 1 && field.front() == 'S')) Take(scan, field);
  }
  if (scan.fields.empty()) throw BadText("nothing is in the scan", kExpected);
  return scan;
}

std::string OfScan(std::string_view text, std::string_view identifier, const std::string& what, const std::string& expected) {
  if (!LooksLikeEnvelope(text)) return std::string(text);
  if (const auto found = ReadScan(text).Of(identifier)) return *found;
  throw BadText("no " + what + " is in the scan " + Quoted(text), expected);
}

}  // namespace

std::optional<std::string> Scan::Of(std::string_view identifier) const {
  for (const auto& [name, data] : fields)
    if (name == identifier) return data;
  return std::nullopt;
}

std::string WriteEnvelope(const std::vector<std::pair<std::string, std::string>>& fields) {
  std::string message(kStart);
  message += kRs;
  message += "06";
  for (const auto& [identifier, data] : fields) {
    if (identifier.empty() || IdentifierSize(identifier) != identifier.size())
      throw BadText(Quoted(identifier) + " is no data identifier", "up to three digits and a capital letter");
    if (data.empty() || std::any_of(data.begin(), data.end(), IsControl))
      throw BadText("a code cannot carry " + Quoted(data) + " behind " + identifier, "text without control characters");
    message += kGs + identifier + data;
  }
  message += kRs;
  message += kEot;
  return message;
}

bool LooksLikeEnvelope(std::string_view text) { return WithoutEnds(text).starts_with(kStart); }

Scan ReadScan(std::string_view text) {
  if (text.size() > kMost) throw BadText("a scan of " + std::to_string(text.size()) + " bytes", "at most 4096");
  text = WithoutEnds(text);
  if (text.starts_with(kStart)) return ReadEnvelope(WithControls(text));
  if (text.size() == kTag + 1 && text.front() == 'S' && IsValidTag(text.substr(1))) return {{{"S", ReadTag(text.substr(1))}}, true};
  return {{{"S", ReadTag(text)}}, true};
}

std::string TagOfScan(std::string_view text) { return OfScan(text, "S", "tag", "the label of a piece"); }

std::string PlaceOfScan(std::string_view text) { return OfScan(text, "L", "place", "the label of a place"); }

}  // namespace heatkeep
