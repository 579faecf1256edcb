#include "client/command/man_page.h"

#include <algorithm>
#include <sstream>

#include "client/command/option_values.h"
#include "client/command/roff.h"

namespace heatkeep::command {
namespace {

std::string Takes(const OptionPage& option) {
  return option.takes.substr(0, option.takes.find('('));  // the endings of a file are said in the text
}

std::string Says(const OptionPage& option) {
  std::string text = option.help;
  const auto add = [&](const std::string& more) { text += (text.empty() ? "" : text.ends_with('.') ? " " : ". ") + more; };
  if (!option.choices.empty()) add("One of " + OneOfWords(option.choices) + ".");
  if (const std::size_t open = option.takes.find('('); open != std::string::npos) {
    std::string endings = option.takes.substr(open + 1, option.takes.size() - open - 2);
    std::replace(endings.begin(), endings.end(), '|', ' ');
    add("Files ending in: " + endings + ".");
  }
  if (!option.standard.empty() && !option.takes.empty()) add("If not given: " + option.standard + ".");
  if (option.many && option.help.find("several") == std::string::npos) add("May be given several times.");
  if (option.required && !option.in_line) add("Must be given.");
  return text.empty() ? "See the synopsis" : text;
}

std::string OptionText(const OptionPage& option) {
  std::string names;
  if (option.in_line) names = Italic(option.name);
  for (const std::string& other : option.others) names += Bold(other) + ", ";
  if (!option.in_line) names += Bold(option.name) + (option.takes.empty() ? "" : " " + Italic(Takes(option)));
  return ".TP\n" + names + "\n" + Roff(Says(option)) + "\n";
}

std::string Synopsis(const CommandPage& page) {
  std::string line = Bold(page.Typed()) + " [" + Italic("options") + "]";
  for (const OptionPage& option : page.options)
    if (option.required && !option.in_line) line += " " + Bold(option.name) + (option.takes.empty() ? "" : " " + Italic(Takes(option)));
  for (const OptionPage& option : page.options)
    if (option.in_line)
      line += (option.required ? " " : " [") + Italic(option.name) + (option.many ? " ..." : "") + (option.required ? "" : "]");
  if (!page.commands.empty()) line += page.needs_command ? " " + Italic("command") + " ..." : " [" + Italic("command") + " ...]";
  return ".SH SYNOPSIS\n" + line + "\n";
}

std::string Commands(const CommandPage& page) {
  if (page.commands.empty()) return "";
  std::string text = ".SH COMMANDS\n";
  for (const CommandPage& one : page.commands) text += ".TP\n" + Bold(one.words.back()) + "\n" + Roff(one.about) + "\n";
  return text + ".PP\nEach has a page of its own: " + Bold(ManName(page.commands.front())) + "(1), and so on.\n";
}

// Its own; of one that has none, the first of each of its commands.
std::vector<std::string> ExamplesOf(const CommandPage& page) {
  std::vector<std::string> examples = page.examples;
  if (examples.empty())
    for (const CommandPage& one : page.commands) {
      const std::vector<std::string> theirs = ExamplesOf(one);
      if (!theirs.empty()) examples.push_back(theirs.front());
    }
  return examples;
}

std::string Examples(const std::vector<std::string>& examples) {
  std::string all;
  for (const std::string& example : examples) all += example + "\n";
  return ".SH EXAMPLES\n" + AsTyped(all).substr(4);
}

std::string Exits(const std::vector<int>& without = {}) {
  std::string text = ".SH EXIT STATUS\n";
  for (const auto& [code, meaning] : AllExitStatuses())
    if (std::find(without.begin(), without.end(), code) == without.end())
      text += ".TP\n" + Bold(std::to_string(code)) + "\n" + Roff(meaning) + "\n";
  return text;
}

constexpr const char* kWhole =
    ".SH ENVIRONMENT\n"
    ".TP\n\\fBHEATKEEP_HOME\\fR\nThe folder of a book of one's own; else /var/lib/heatkeep for root, else heatkeep under XDG_DATA_HOME or ~/.local/share.\n"
    ".TP\n\\fBPGHOST\\fR, \\fBPGSERVICE\\fR, \\fBPGDATABASE\\fR ...\nA shop's book on a server, as libpq reads them, where neither \\-\\-book nor \\-\\-home is given.\n"
    ".TP\n\\fBHEATKEEP_IDLE_SECONDS\\fR\nAfter how many seconds without anybody the server of a book of one's own is stopped; else 600.\n"
    ".TP\n\\fBHEATKEEP_SCHEMA\\fR\nThe folder of the SQL files, where it is not share/heatkeep/schema beside the program's own folder.\n";

std::string SeeAlso(const CommandPage& page, const CommandPage& root) {
  std::vector<std::string> names;
  if (page.words.empty()) names.push_back("heatkeep-desk");
  else names.push_back("heatkeep");
  const CommandPage* at = &root;
  for (std::size_t depth = 0; depth + 1 < page.words.size(); ++depth) {
    for (const CommandPage& one : at->commands)
      if (one.words.back() == page.words[depth]) at = &one;
    names.push_back(ManName(*at));
  }
  for (const CommandPage& one : page.commands) names.push_back(ManName(one));
  std::string text = ".SH SEE ALSO\n";
  for (const std::string& name : names) text += ".BR " + Roff(name) + " (1),\n";
  return text + ".BR heatkeep\\-files (5)\n";
}

}  // namespace

std::string ManName(const CommandPage& page) {
  std::string name = page.Typed();
  std::replace(name.begin(), name.end(), ' ', '-');
  return name;
}

std::string ManPage(const CommandPage& page, const CommandPage& root, const ManEdition& edition) {
  std::string text =
      Title(ManName(page), 1, edition) + ".SH NAME\n" + Roff(ManName(page)) + " \\- " + Roff(page.about) + "\n" + Synopsis(page);
  text += ".SH DESCRIPTION\n" + Roff(page.about) + ".\n";
  if (!page.notes.empty()) text += AsTyped(page.notes);
  text += Commands(page) + ".SH OPTIONS\n";
  for (const OptionPage& option : page.options)
    if (option.in_line) text += OptionText(option);
  for (const OptionPage& option : page.options)
    if (!option.in_line) text += OptionText(option);
  if (!page.words.empty()) {
    std::string everywhere;
    for (const OptionPage& option : root.options)
      if (!option.takes.empty()) everywhere += (everywhere.empty() ? "" : ", ") + Bold(option.name);
    text += ".PP\nEvery command takes " + everywhere + " too; see " + Bold("heatkeep") + "(1).\n";
  }
  text += Examples(ExamplesOf(page)) + Exits();
  if (page.words.empty()) text += kWhole;
  return text + SeeAlso(page, root);
}

std::string DeskManPage(const std::vector<OptionPage>& options, const ManEdition& edition) {
  std::string text = Title("heatkeep-desk", 1, edition) +
      ".SH NAME\nheatkeep\\-desk \\- the windows of Heatkeep: one station a role\n"
      ".SH SYNOPSIS\n" +
      Bold("heatkeep-desk") + " [" + Italic("options") +
      "]\n"
      ".SH DESCRIPTION\nOne window with a station a role: saw, receiving, planning, papers, counting, rack. A login sees those it may work at; "
      "the privileges of the book decide. Without options it opens a book of one\\(aqs own, and makes it where there is none. "
      "What it shows and does is also to be had from " +
      Bold("heatkeep") + "(1).\n.SH OPTIONS\n";
  for (const OptionPage& option : options) text += OptionText(option);
  return text + Examples({"heatkeep-desk", "heatkeep-desk --book service=shop", "heatkeep-desk --home /srv/bars"}) + Exits({1, 3, 130}) +
      ".SH SEE ALSO\n.BR heatkeep (1),\n.BR heatkeep\\-files (5)\n";
}

}  // namespace heatkeep::command
