#include "tests/malice/wild.h"

#include <random>

namespace heatkeep {
namespace {

// Letters drawn by lot: no index and no compression makes it short.
std::string AMillionCharacters() {
  std::mt19937 dice(4711);
  std::string text;
  while (text.size() < 1'000'000) text += static_cast<char>('!' + dice() % 90);
  for (char& c : text)
    if (c == '"' || c == '\\') c = ' ';
  return text;
}

}  // namespace

const std::vector<WildText>& WildTexts() {
  static const std::vector<WildText> texts{
      {"breaks out", "'; drop table book.piece; -- \"; delete from book.happening; /*"},
      {"dollars and formats", "$$ $1 %s %I %L %1$s {} \\ \\\\ \\' \\u0041 E'\\x41' &lt;script&gt;"},
      {"patterns", "%_%[^a]*+?(){}|^$.**@?#>>'{a,b}'::text || chr(0)"},
      {"many scripts", "\u0416\u00e9\u0301 \u4e2d\u6587 \u0639\u0631\u0628\u064a \U0001F529 \U00010348 \ufdfa"},
      {"controls", "A\x01\x02\x1b[31m\x7f\x08", false},
      {"on two lines", "D1\n2\tA", false},
      {"turns the direction", "A73\u202e12\u2066B", false},
      {"not seen", "A7\u200b321\ufeff", false},
      {"a million characters", AMillionCharacters(), false},
  };
  return texts;
}

std::vector<std::optional<std::string>> WildValues(const std::string& type) {
  using List = std::vector<std::optional<std::string>>;
  if (type == "text") {
    List list{std::nullopt, "", " "};
    for (const WildText& wild : WildTexts()) list.emplace_back(wild.text);
    return list;
  }
  if (type == "bigint") return {std::nullopt, "-9223372036854775808", "-1", "0", "9223372036854775807"};
  if (type == "integer") return {std::nullopt, "-2147483648", "-1", "0", "2147483647"};
  if (type == "boolean") return {std::nullopt, "t", "f"};
  if (type.starts_with("timestamp")) return {std::nullopt, "-infinity", "infinity", "4713-01-01 BC", "294276-12-31", "epoch"};
  if (type == "uuid") return {std::nullopt, "00000000-0000-0000-0000-000000000000", "ffffffff-ffff-ffff-ffff-ffffffffffff"};
  if (type == "jsonb") {
    const std::string deep = std::string(2000, '[') + std::string(2000, ']');
    return {std::nullopt,
            "null",
            "{}",
            "[]",
            "[[]]",
            "[{}]",
            "\"\"",
            "1e300",
            "true",
            deep,
            R"({"lines": [{}], "tag": [], "reason": {}})",
            R"([null, {"tag": {}}, 1])"};
  }
  return {std::nullopt};
}

void EachLeaf(const Json& body, const std::function<void(const Json::json_pointer&)>& visit) {
  const auto flat = body.flatten();
  for (const auto& [path, value] : flat.items()) visit(Json::json_pointer(path));
}

bool IsClean(const std::string& sqlstate) {
  return sqlstate.empty() || sqlstate == "42501" || sqlstate.starts_with("HK") || sqlstate.starts_with("22");
}

}  // namespace heatkeep
