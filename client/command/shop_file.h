// The shop's JSON file (shop_command.h says what is in it), read before any of it goes to the book. A wrong value is named by
// its path in the file.
#pragma once

#include <nlohmann/json.hpp>
#include <set>
#include <string>

namespace heatkeep::command {

using Json = nlohmann::json;
using Names = std::set<std::string>;

// What the book has already and the file may name.
struct Known {
  Names sites, places, grades;
};

// All throw BadText, "file: list[row].key: ...".

Json ReadShop(const std::string& file, const std::string& bytes);

// The bodies of what the book is told: the shop, its rules, the stand-ins of grades and of sections.
Json ShopPart(const Known& known, const std::string& file, const Json& shop);
Json RulesPart(const Known& known, const std::string& file, const Json& shop);
Json GradeStandins(const std::string& file, const Json& shop);
Json SectionStandins(const std::string& file, const Json& shop);

}  // namespace heatkeep::command
