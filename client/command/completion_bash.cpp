#include <algorithm>
#include <functional>

#include "client/command/completion.h"

namespace heatkeep::command {
namespace {

// How the script goes through what is typed. A value of the tables below is a list of words with a line end after each, or
// "@csv|xlsx" (files), "@" (any file), "@/" (folders), "?" (anything, nothing to propose).
constexpr const char* kWalk = R"bash(
_heatkeep() {
  local cur=${COMP_WORDS[COMP_CWORD]} at=heatkeep place=1 i=1 word value=
  COMPREPLY=()
  # --option=value comes as three words
  [[ $cur == = ]] && cur=
  while ((i < COMP_CWORD)); do
    word=${COMP_WORDS[i]}
    value=
    if [[ $word == -* ]]; then
      [[ -n ${_heatkeep_takes["$at $word"]+x} ]] && value="$at $word"
      [[ -z $value && -n ${_heatkeep_takes["heatkeep $word"]+x} ]] && value="heatkeep $word"
      if [[ -n $value ]]; then
        [[ ${COMP_WORDS[i + 1]} == = ]] && ((i++))
        ((i + 1 < COMP_CWORD)) && value=
        ((i++))
      fi
    elif [[ -n ${_heatkeep_known["$at $word"]+x} && $place == 1 ]]; then
      at="$at $word"
    else
      ((place++))
    fi
    ((i++))
  done
  local what=
  if [[ -n $value ]]; then
    what=${_heatkeep_takes["$value"]}
  elif [[ $cur == -* ]]; then
    what=${_heatkeep_options["$at"]}
  else
    [[ $place == 1 ]] && what=${_heatkeep_commands["$at"]:-}
    while [[ -z $what && $place -gt 0 ]]; do
      what=${_heatkeep_places["$at $place"]:-}
      [[ -n $what || -z ${_heatkeep_places["$at last"]+x} ]] && break
      ((place--))  # the last place takes as many as there are
    done
    [[ -z $what && -z ${_heatkeep_commands["heatkeep"]:-} ]] && what=${_heatkeep_options["heatkeep"]}  # options are all it takes
  fi
  local IFS=$'\n'
  case $what in
    @/) compopt -o filenames 2>/dev/null; COMPREPLY=($(compgen -d -- "$cur")) ;;
    @) compopt -o filenames 2>/dev/null; COMPREPLY=($(compgen -f -- "$cur")) ;;
    @*)
      compopt -o filenames 2>/dev/null
      local file
      for file in $(compgen -f -- "$cur"); do
        [[ -d $file || ${file,,} =~ \.(${what#@})$ ]] && COMPREPLY+=("$file")
      done
      ;;
    \?) ;;
    *)
      for word in $(compgen -W "$what" -- "$cur"); do COMPREPLY+=("${word// /\\ }"); done
      ;;
  esac
  return 0
}
)bash";

std::string Quoted(const std::string& text) { return "'" + text + "'"; }  // no word of ours has a '

std::string Lines(const std::vector<std::string>& words) {
  std::string all;
  for (const std::string& word : words) all += (all.empty() ? "" : "\\n") + word;
  return "$'" + all + "'";
}

std::string Value(const OptionPage& option) {
  if (!option.choices.empty()) return Lines(option.choices);
  if (option.takes == "FOLDER") return "'@/'";
  if (option.takes == "FILE") return "'@'";
  if (option.takes.starts_with("FILE(")) return Quoted("@" + option.takes.substr(5, option.takes.size() - 6));
  return "'?'";
}

void Walk(const CommandPage& page, const std::function<void(const CommandPage&)>& see) {
  see(page);
  for (const CommandPage& one : page.commands) Walk(one, see);
}

// declare -A NAME=(...), what `rows` says of each command.
std::string Table(const std::string& name, const CommandPage& root, const std::function<std::string(const CommandPage&)>& rows) {
  std::string text = "declare -gA " + name + "=(\n";
  Walk(root, [&](const CommandPage& page) { text += rows(page); });
  return text + ")\n";
}

std::string Row(const std::string& key, const std::string& value) { return "  [" + Quoted(key) + "]=" + value + "\n"; }

}  // namespace

std::string Renamed(std::string script, const std::string& program) {
  static const std::string known = "_heatkeep";
  std::string name = "_" + program;
  std::replace(name.begin(), name.end(), '-', '_');
  for (std::size_t at = 0; (at = script.find(known, at)) != std::string::npos; at += name.size()) script.replace(at, known.size(), name);
  return script;
}

std::string BashCompletion(const CommandPage& root, const std::string& program) {
  std::vector<std::string> everywhere;
  for (const OptionPage& option : root.options)
    if (!option.takes.empty()) everywhere.push_back(option.name);
  std::string text = "# Completion of " + program + " for bash, made from the same words as its help.\n";
  text += Table("_heatkeep_known", root, [](const CommandPage& p) { return p.words.empty() ? "" : Row(p.Typed(), "1"); });
  text += Table("_heatkeep_commands", root, [](const CommandPage& p) {
    std::vector<std::string> words;
    for (const CommandPage& one : p.commands) words.push_back(one.words.back());
    return words.empty() ? "" : Row(p.Typed(), Lines(words));
  });
  text += Table("_heatkeep_options", root, [&](const CommandPage& p) {
    std::vector<std::string> words;
    for (const OptionPage& option : p.options)
      if (!option.in_line) words.push_back(option.name);
    if (!p.words.empty()) words.insert(words.end(), everywhere.begin(), everywhere.end());
    return Row(p.Typed(), Lines(words));
  });
  text += Table("_heatkeep_takes", root, [](const CommandPage& p) {
    std::string rows;
    for (const OptionPage& option : p.options) {
      if (option.in_line || option.takes.empty()) continue;
      rows += Row(p.Typed() + " " + option.name, Value(option));
      for (const std::string& other : option.others) rows += Row(p.Typed() + " " + other, Value(option));
    }
    return rows;
  });
  text += Table("_heatkeep_places", root, [](const CommandPage& p) {
    std::string rows;
    int place = 0;
    bool many = false;
    for (const OptionPage& option : p.options) {
      if (!option.in_line) continue;
      rows += Row(p.Typed() + " " + std::to_string(++place), Value(option));
      many = option.many;
    }
    return many ? rows + Row(p.Typed() + " last", "1") : rows;
  });
  return Renamed(text + kWalk + "complete -F _heatkeep ", program) + program + "\n";
}

}  // namespace heatkeep::command
