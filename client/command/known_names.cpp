#include "client/command/known_names.h"

#include <algorithm>
#include <vector>

#include "client/command/option_values.h"
#include "client/gateway/readings.h"
#include "schema/terms/bad_text.h"

namespace heatkeep::command {
namespace {

void Require(const std::string& wrong, const std::string& name, const std::vector<std::string>& known, const std::string& names_them) {
  if (name.empty() || std::find(known.begin(), known.end(), name) != known.end()) return;
  const std::vector<std::string> near = Near(name, known);
  throw BadText(wrong + " " + Quoted(name), near.empty() ? names_them : "perhaps " + OneOfWords(near) + "; " + names_them);
}

}  // namespace

void RequirePlace(Connection& connection, const std::string& place) {
  if (!place.empty())
    Require("there is no place", place, ReadNames(connection, "places", "place"), "one that `heatkeep shop places` names");
}

void RequireGrade(Connection& connection, const std::string& grade) {
  if (grade.empty()) return;
  std::vector<std::string> known;
  for (const char* column : {"designation", "number", "uns"})
    for (std::string& name : ReadNames(connection, "grades", column)) known.push_back(std::move(name));
  Require("unknown grade", grade, known, "a designation, number or UNS number of the grade list");
}

void RequireSaw(Connection& connection, const std::string& saw) {
  Require("no saw is called", saw, ReadNames(connection, "saws", "saw"), "one that `heatkeep saw list` names");
}

}  // namespace heatkeep::command
