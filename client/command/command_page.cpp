#include "client/command/command_page.h"

#include <CLI/CLI.hpp>
#include <sstream>

namespace heatkeep::command {
namespace {

std::string Trimmed(const std::string& text) {
  const std::size_t from = text.find_first_not_of(" \n"), to = text.find_last_not_of(" \n");
  return from == std::string::npos ? "" : text.substr(from, to - from + 1);
}

// "{a,b}" somewhere in the words of the checks.
std::vector<std::string> ChoicesIn(const std::string& type) {
  std::vector<std::string> choices;
  const std::size_t open = type.find('{'), close = type.find('}', open);
  if (open == std::string::npos || close == std::string::npos) return choices;
  std::istringstream words(type.substr(open + 1, close - open - 1));
  for (std::string word; std::getline(words, word, ',');) choices.push_back(word);
  return choices;
}

OptionPage OptionOf(const CLI::Option& option) {
  OptionPage page;
  page.in_line = !option.nonpositional();
  for (const std::string& name : option.get_snames()) page.others.push_back("-" + name);
  for (const std::string& name : option.get_lnames()) page.others.push_back("--" + name);
  page.name = page.in_line ? option.get_name() : page.others.back();
  if (!page.in_line) {
    if (!option.get_lnames().empty()) page.name = "--" + option.get_lnames().front();
    std::erase(page.others, page.name);
  }
  if (option.get_items_expected_max() > 0) {
    const std::string type = option.get_type_name();
    page.takes = type.substr(0, type.find(':'));
    page.choices = ChoicesIn(type);
  }
  page.standard = option.get_default_str();
  page.help = option.get_description();
  page.required = option.get_required();
  page.many = option.get_items_expected_max() > 1 || option.get_multi_option_policy() == CLI::MultiOptionPolicy::TakeAll;
  return page;
}

// What is an example goes there, the rest of the help's last lines stays as it is.
void AddFooter(CommandPage& page, const std::string& footer) {
  std::istringstream lines(footer);
  for (std::string line; std::getline(lines, line);) {
    std::string said = Trimmed(line);
    if (said.starts_with("example: ")) said = said.substr(9);
    if (said.starts_with("heatkeep ")) page.examples.push_back(said);
    else if (said != "Examples" && !(said.empty() && page.notes.empty())) page.notes += line + "\n";
  }
  page.notes = page.notes.substr(0, page.notes.find_last_not_of('\n') + 1);
}

CommandPage PageOf(const CLI::App& app, std::vector<std::string> words) {
  CommandPage page;
  page.words = std::move(words);
  page.about = app.get_description();
  AddFooter(page, app.get_footer());
  for (const CLI::Option* option : app.get_options()) page.options.push_back(OptionOf(*option));
  for (const CLI::App* child : app.get_subcommands([](const CLI::App* one) { return !one->get_group().empty(); })) {
    std::vector<std::string> deeper = page.words;
    deeper.push_back(child->get_name());
    page.commands.push_back(PageOf(*child, std::move(deeper)));
  }
  page.needs_command = app.get_require_subcommand_min() > 0;
  return page;
}

}  // namespace

std::string CommandPage::Typed() const {
  std::string typed = "heatkeep";
  for (const std::string& word : words) typed += " " + word;
  return typed;
}

CommandPage PageOf(const CLI::App& root) { return PageOf(root, {}); }

const std::vector<ExitStatus>& AllExitStatuses() {
  static const std::vector<ExitStatus> all{{0, "done"},
                                           {1, "the book refused, or something was found wrong"},
                                           {2, "the words or a file are wrong; nothing was changed"},
                                           {3, "some cuts cannot be served, or SQL files and book do not fit"},
                                           {4, "the book cannot be reached"},
                                           {130, "a person stopped it (Ctrl-C)"}};
  return all;
}

}  // namespace heatkeep::command
