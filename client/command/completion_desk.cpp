// The desk has no commands: its options are all there is to complete.
#include "client/command/completion.h"

namespace heatkeep::command {
namespace {

bool Folder(const OptionPage& option) { return option.takes == "FOLDER"; }
bool File(const OptionPage& option) { return option.takes == "FILE"; }

}  // namespace

std::string DeskBashCompletion(const std::vector<OptionPage>& options) {
  std::string names, cases;
  for (const OptionPage& option : options) {
    names += (names.empty() ? "" : "\\n") + option.name;
    if (option.takes.empty()) continue;
    cases += "    " + option.name + ") ";
    if (Folder(option) || File(option))
      cases += std::string("compopt -o filenames 2>/dev/null; COMPREPLY=($(compgen ") + (Folder(option) ? "-d" : "-f") + " -- \"$cur\")) ";
    cases += ";;\n";
  }
  return R"bash(_heatkeep_desk() {
  local IFS=$'\n' cur=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD - 1]}
  COMPREPLY=()
  # --option=value comes as three words
  [[ $cur == = ]] && cur=
  [[ $before == = ]] && before=${COMP_WORDS[COMP_CWORD - 2]}
  case $before in
)bash" +
      cases + "    *) COMPREPLY=($(compgen -W $'" + names + R"bash(' -- "$cur")) ;;
  esac
  return 0
}
complete -F _heatkeep_desk heatkeep-desk
)bash";
}

std::string DeskZshCompletion(const std::vector<OptionPage>& options) {
  std::string text = "#compdef heatkeep-desk\n_arguments";
  for (const OptionPage& option : options) {
    text += " \\\n  \"" + option.name + (option.takes.empty() ? "" : "=") + "[" + option.help + "]";
    if (!option.takes.empty()) text += ":" + option.takes + ":" + (Folder(option) ? "_files -/" : File(option) ? "_files" : " ");
    text += "\"";
  }
  return text + "\n";
}

}  // namespace heatkeep::command
