#include "client/command/word_errors.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <ostream>

#include "client/command/command_page.h"
#include "client/command/option_values.h"
#include "schema/terms/bad_text.h"

namespace heatkeep::command {
namespace {

// The command that the words lead to, as far as they are known.
const CommandPage& Reached(const CommandPage& root, const std::vector<std::string>& typed) {
  const CommandPage* at = &root;
  for (std::size_t i = 0; i < typed.size() && !at->commands.empty(); ++i) {
    const auto option = std::find_if(at->options.begin(), at->options.end(), [&](const OptionPage& o) { return o.name == typed[i]; });
    if (option != at->options.end() && !option->takes.empty()) {  // its value is no command
      ++i;
      continue;
    }
    const auto child =
        std::find_if(at->commands.begin(), at->commands.end(), [&](const CommandPage& one) { return one.words.back() == typed[i]; });
    if (child != at->commands.end()) at = &*child;
  }
  return *at;
}

std::vector<std::string> CommandsOf(const CommandPage& page) {
  std::vector<std::string> words;
  for (const CommandPage& one : page.commands) words.push_back(one.words.back());
  return words;
}

std::vector<std::string> OptionsOf(const CommandPage& page, const CommandPage& root) {
  std::vector<std::string> names;
  for (const CommandPage* of : {&page, &root})
    for (const OptionPage& option : of->options)
      if (!option.in_line) names.push_back(option.name);
  return names;
}

std::string Perhaps(const std::string& typed, const std::vector<std::string>& known) {
  const std::vector<std::string> near = Near(typed, known);
  return near.empty() ? "" : "; perhaps " + OneOfWords(near) + " is meant";
}

std::string PlacesOf(const CommandPage& page) {
  std::string places;
  for (const OptionPage& option : page.options)
    if (option.in_line) places += (places.empty() ? "" : " ") + option.name;
  return places.empty() ? "options only" : places + " and options";
}

// The first typed word that nobody took; an option before a word.
std::string Left(const CLI::App& root, const std::vector<std::string>& typed) {
  const std::vector<std::string> left = root.remaining(true);
  std::string first;
  for (const std::string& word : typed) {
    if (std::find(left.begin(), left.end(), word) == left.end()) continue;
    if (word.starts_with('-')) return word;
    if (first.empty()) first = word;
  }
  return first;
}

std::string WhatIsWrong(const CommandPage& page, const CommandPage& root, const std::string& left, const CLI::ParseError& error) {
  std::string what = error.what();
  if (left.starts_with('-')) return Quoted(left) + " is no option of it" + Perhaps(left.substr(0, left.find('=')), OptionsOf(page, root));
  const std::vector<std::string> commands = CommandsOf(page);
  if (!left.empty() && (page.needs_command || (!commands.empty() && !Near(left, commands).empty())))
    return Quoted(left) + " is no command" + (page.words.empty() ? "" : " of it; expected " + OneOfWords(commands)) +
        Perhaps(left, commands);
  if (!left.empty()) return Quoted(left) + " is one word too many; expected " + PlacesOf(page) + " (a text with blanks goes in quotes)";
  if (what == "A subcommand is required")
    return page.words.empty() ? "a command is missing" : "a command is missing; expected " + OneOfWords(commands);
  if (what.ends_with(" is required")) return what.substr(0, what.size() - 12) + " is missing";
  if (const std::string_view head = "Could not convert: "; what.starts_with(head))
    if (const std::size_t equals = what.find(" = "); equals != std::string::npos)
      return what.substr(head.size(), equals - head.size()) + ": " + Quoted(what.substr(equals + 3)) + " is not a number";
  if (dynamic_cast<const CLI::ArgumentMismatch*>(&error) && what.ends_with(" missing") && what.find(": ") != std::string::npos)
    return what.substr(0, what.find(": ")) + " needs a value behind it";
  return what;
}

}  // namespace

void SayWordError(const CLI::App& app, const CLI::ParseError& error, const std::vector<std::string>& typed, std::ostream& err) {
  const CommandPage root = PageOf(app);
  const CommandPage& page = Reached(root, typed);
  err << page.Typed() << ": " << WhatIsWrong(page, root, Left(app, typed), error) << '\n';
  if (!page.needs_command && !page.examples.empty()) err << "  example: " << page.examples.front() << '\n';
  err << "  `" << page.Typed() << " --help` says " << (page.needs_command ? "what there is" : "what it takes") << '\n';
}

}  // namespace heatkeep::command
