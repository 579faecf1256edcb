#include "client/command/tag_command.h"

#include <map>
#include <nlohmann/json.hpp>
#include <ostream>

#include "schema/terms/plain_text.h"
#include "schema/terms/scan.h"
#include "schema/terms/tag.h"

namespace heatkeep::command {
namespace {

std::string Form(const std::string& text) {
  std::string form;
  for (char c : UpperCase(PlainText(text))) {
    if (c != ' ' && c != '-') form += c;
  }
  return form;
}

bool IsBuiltLikeATag(const std::string& form) {
  try {
    TagForm(form);
    return true;
  } catch (const BadText&) { return false; }
}

// What a data identifier of our labels is.
std::string NameOf(const std::string& identifier) {
  static const std::map<std::string, std::string> names{{"S", "tag"},   {"1T", "heat"}, {"1P", "metal"}, {"7Q", "length"},
                                                        {"L", "place"}, {"K", "order"}, {"4K", "line"},  {"Q", "count"}};
  const auto at = names.find(identifier);
  return at == names.end() ? identifier : at->second;
}

int SayScan(const std::string& text, bool json, std::ostream& out) {
  const Scan scan = ReadScan(text);
  nlohmann::ordered_json j{{"tag", scan.Of("S") ? nlohmann::ordered_json(*scan.Of("S")) : nlohmann::ordered_json(nullptr)},
                           {"valid", true},
                           {"is_tag", scan.Of("S").has_value()},
                           {"whole", scan.whole},
                           {"scan", nlohmann::ordered_json::object()}};
  for (const auto& [identifier, data] : scan.fields) {
    j["scan"][NameOf(identifier)] = data;
    if (!json) out << NameOf(identifier) << ' ' << data << '\n';
  }
  if (json) out << j.dump(2, ' ', false, nlohmann::ordered_json::error_handler_t::replace) << '\n';
  else if (!scan.whole) out << "the scanner has dropped control characters: there is more on the label\n";
  return 0;
}

}  // namespace

int RunTagCheck(const std::string& text, bool json, std::ostream& out, std::ostream& err) {
  try {
    if (LooksLikeEnvelope(text)) return SayScan(text, json, out);
    const std::string form = Form(text);
    if (form.size() < 2) throw BadText(Quoted(text) + " is too short to check", "characters and a check character");
    const char expected = CheckCharacter(std::string_view(form).substr(0, form.size() - 1));
    const bool valid = form.back() == expected;
    const bool is_tag = IsBuiltLikeATag(form);
    if (json) {
      nlohmann::ordered_json j{{"tag", form}, {"valid", valid}, {"is_tag", is_tag}};
      j["expected_check_character"] = std::string(1, expected);
      out << j.dump(2) << "\n";
    } else {
      out << form << (valid ? ": the check character is right" : ": the check character is wrong; expected ");
      if (!valid) out << expected;
      out << (is_tag ? "" : " (not built like a tag: a letter, six digits and a check character)") << "\n";
    }
    return valid ? 0 : 1;
  } catch (const BadText& e) {
    err << e.what() << "\n";
    return 2;
  }
}

}  // namespace heatkeep::command
