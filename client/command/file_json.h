// JSON of a file somebody gives: each key once in its object, and nested so deep and no deeper - what writes a value calls
// itself once a level, and a file of a million brackets would end the program.
#pragma once

#include <algorithm>
#include <nlohmann/json.hpp>
#include <set>
#include <string>
#include <vector>

#include "schema/terms/bad_text.h"

namespace heatkeep::command {

// Throws BadText "name:line: this is not JSON; expected <expected>", or "name: ..." for the rest.
template <class Value = nlohmann::json>
Value ReadFileJson(const std::string& bytes, const std::string& name, const std::string& expected, int deepest = 8) {
  std::vector<std::set<std::string>> keys;  // of the objects that are open
  const auto look = [&](int depth, typename Value::parse_event_t event, Value& parsed) {
    using Event = typename Value::parse_event_t;
    if (depth > deepest) throw BadText(name + ": it is nested more than " + std::to_string(deepest) + " deep", expected);
    if (event == Event::object_start) keys.emplace_back();
    if (event == Event::object_end) keys.pop_back();
    if (event == Event::key && !keys.back().insert(parsed.template get<std::string>()).second)
      throw BadText(name + ": key " + Quoted(parsed.template get<std::string>()) + " stands twice in one object", "each key once");
    return true;
  };
  try {
    return Value::parse(bytes, look);
  } catch (const typename Value::parse_error& e) {
    const auto end = bytes.begin() + static_cast<std::ptrdiff_t>(std::min(bytes.size(), e.byte > 0 ? e.byte - 1 : 0));
    throw BadText(name + ":" + std::to_string(1 + std::count(bytes.begin(), end, '\n')) + ": this is not JSON", expected);
  } catch (const typename Value::out_of_range&) {  // 1e400
    throw BadText(name + ": a number in it is beyond all range", expected);
  }
}

}  // namespace heatkeep::command
