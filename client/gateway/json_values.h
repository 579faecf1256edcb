// Values of the book's JSON answers: null and what is not there are the empty value.
#pragma once

#include <cstdint>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

namespace heatkeep {

inline std::string JsonText(const nlohmann::json& object, const char* key) {
  const auto found = object.find(key);
  return found == object.end() || found->is_null() ? std::string() : found->get<std::string>();
}

inline std::int64_t JsonInt(const nlohmann::json& object, const char* key) {
  const auto found = object.find(key);
  return found == object.end() || found->is_null() ? 0 : found->get<std::int64_t>();
}

// A null among the texts is left out.
inline std::vector<std::string> JsonTexts(const nlohmann::json& object, const char* key) {
  std::vector<std::string> texts;
  const auto found = object.find(key);
  if (found == object.end() || found->is_null()) return texts;
  for (const nlohmann::json& text : *found)
    if (!text.is_null()) texts.push_back(text.get<std::string>());
  return texts;
}

}  // namespace heatkeep
