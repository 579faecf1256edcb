#include "client/command/tag_command.h"

#include <nlohmann/json.hpp>
#include <ostream>

#include "schema/terms/plain_text.h"
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
  } catch (const BadText&) {
    return false;
  }
}

}  // namespace

int RunTagCheck(const std::string& text, bool json, std::ostream& out, std::ostream& err) {
  try {
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
