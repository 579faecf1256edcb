#include "client/command/completion.h"

namespace heatkeep::command {
namespace {

// Inside '...' of a specification of _arguments: no quote, and what is special there behind a backslash.
std::string Said(const std::string& text) {
  std::string out;
  for (const char c : text) {
    if (c == '\'') out += "'\\''";
    else if (c == '[' || c == ']' || c == ':' || c == '\\') out += std::string("\\") + c;
    else out += c;
  }
  return out;
}

std::string Action(const OptionPage& option) {
  if (!option.choices.empty()) {
    std::string words;
    for (const std::string& word : option.choices) {
      words += words.empty() ? "" : " ";
      for (const char c : word) words += c == ' ' ? "\\ " : std::string(1, c);
    }
    return "(" + words + ")";
  }
  if (option.takes == "FOLDER") return "_files -/";
  if (option.takes == "FILE") return "_files";
  if (option.takes.starts_with("FILE(")) return "_files -g \"(#i)*.(" + option.takes.substr(5, option.takes.size() - 6) + ")\"";
  return " ";
}

std::string Name(const CommandPage& page) {
  std::string name = "_heatkeep";
  for (const std::string& word : page.words) name += "_" + word;
  return name;
}

std::string Specification(const OptionPage& option) {
  const std::string message = Said(option.name.substr(option.name.find_first_not_of('-')));
  const std::string value = option.takes.empty() ? "" : ":" + message + ":" + Action(option);
  if (option.in_line) return " \\\n    '" + std::string(option.many ? "*" : "") + ":" + message + ":" + Action(option) + "'";
  std::string specs;
  std::vector<std::string> names = option.others;
  names.push_back(option.name);
  for (const std::string& name : names)  // "--name=": its value behind a blank or an equals sign
    specs += " \\\n    '" + std::string(option.many ? "*" : "") + name + (name.starts_with("--") && !value.empty() ? "=" : "") + "[" +
        Said(option.help) + "]" + value + "'";
  return specs;
}

void AddFunction(const CommandPage& page, const CommandPage& root, std::string& text) {
  for (const CommandPage& one : page.commands) AddFunction(one, root, text);
  text += Name(page) + "() {\n  local curcontext=$curcontext state line\n  _arguments -C -S";
  for (const OptionPage& option : page.options) text += Specification(option);
  if (!page.words.empty())
    for (const OptionPage& option : root.options)
      if (!option.takes.empty()) text += Specification(option);
  if (page.commands.empty()) {
    text += "\n}\n";
    return;
  }
  text += " \\\n    '1: :->command' \\\n    '*:: :->words'\n  case $state in\n    command)\n      local -a commands=(\n";
  for (const CommandPage& one : page.commands) text += "        '" + Said(one.words.back()) + ":" + Said(one.about) + "'\n";
  text += "      )\n      _describe -t commands command commands ;;\n    words)\n      case $line[1] in\n";
  for (const CommandPage& one : page.commands) text += "        " + one.words.back() + ") " + Name(one) + " ;;\n";
  text += "      esac ;;\n  esac\n}\n";
}

}  // namespace

std::string ZshCompletion(const CommandPage& root, const std::string& program) {
  std::string functions;
  AddFunction(root, root, functions);
  return "#compdef " + program + "\n# Completion of " + program + " for zsh, made from the same words as its help.\n" +
      Renamed(functions + "_heatkeep \"$@\"\n", program);
}

}  // namespace heatkeep::command
