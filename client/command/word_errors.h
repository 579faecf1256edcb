// What is wrong with the words of a command line, said so that the next try is right: which word, what there is, what was perhaps
// meant, and an example.
#pragma once

#include <iosfwd>
#include <string>
#include <vector>

namespace CLI {
class App;
class ParseError;
}  // namespace CLI

namespace heatkeep::command {

// `typed`: the words as they were given, without the program's name. `error` is what reading them threw.
void SayWordError(const CLI::App& root, const CLI::ParseError& error, const std::vector<std::string>& typed, std::ostream& err);

}  // namespace heatkeep::command
