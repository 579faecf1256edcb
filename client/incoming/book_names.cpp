#include "client/incoming/book_names.h"

#include "client/gateway/readings.h"
#include "schema/terms/bad_text.h"

namespace heatkeep::incoming {
namespace {

std::set<std::string> Names(Connection& connection, const std::string& view, std::initializer_list<const char*> columns) {
  std::set<std::string> names;
  for (const char* column : columns) {
    for (std::string& name : ReadNames(connection, view, column)) names.insert(std::move(name));
  }
  return names;
}

}  // namespace

BookNames::BookNames(Connection& connection, std::string file, const intake::TableFacts& facts)
    : file_(std::move(file)), sheet_(facts.sheet), grades_(Names(connection, "grades", {"designation", "number"})),
      parties_(Names(connection, "parties", {"name"})), places_(Names(connection, "places", {"place"})) {}

void BookNames::Need(const std::set<std::string>& known, int line, const std::string& what, const std::string& word,
                     const std::string& expected) {
  if (word.empty() || known.contains(word)) return;
  Problem(line, what + " " + Quoted(word) + " is not in the book", expected);
}

void BookNames::Problem(int line, const std::string& wrong, const std::string& expected) {
  problems_.push_back({file_, line, wrong, expected, sheet_.empty() ? "" : sheet_ + "!" + std::to_string(line)});
}

void BookNames::Grade(int line, const std::string& word) {
  Need(grades_, line, "grade", word, "a designation or number of the grade list");
}
void BookNames::Party(int line, const std::string& what, const std::string& word) {
  Need(parties_, line, what, word, "a name that the owner has entered");
}
void BookNames::Place(int line, const std::string& word) { Need(places_, line, "place", word, "a place of the shop"); }

}  // namespace heatkeep::incoming
