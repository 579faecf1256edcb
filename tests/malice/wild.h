// What nobody would type by mistake.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "client/gateway/deeds.h"

namespace heatkeep {

struct WildText {
  const char* name;
  std::string text;
  bool seen = true;  // false: holds what a deed must refuse, because nobody could read it as it stands
};

// SQL that would break out of a text, formats and patterns, controls, marks that turn the direction of writing, letters of many
// scripts, and a text of a million characters that cannot be compressed.
const std::vector<WildText>& WildTexts();

// Values of an argument of this SQL type that its input takes; the first is null.
std::vector<std::optional<std::string>> WildValues(const std::string& type);

// Calls visit(pointer) for every value of the body that is no list or object.
void EachLeaf(const Json& body, const std::function<void(const Json::json_pointer&)>& visit);

// Whether a refusal is one a person may get: ours, forbidden, or what the type of an argument has against it.
bool IsClean(const std::string& sqlstate);

}  // namespace heatkeep
