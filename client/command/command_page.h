// The tree of commands as plain words, taken from the options that are really read: what man pages and completions are made from.
#pragma once

#include <string>
#include <vector>

namespace CLI {
class App;
}

namespace heatkeep::command {

struct OptionPage {
  std::string name;                  // "--to", or of a place in line "file"
  std::vector<std::string> others;   // other names of it: "-h", "--of"
  std::string takes;                 // "TEXT", "FILE(csv|xlsx|ods)", "FOLDER"; empty: nothing, a flag
  std::vector<std::string> choices;  // where there is a fixed set
  std::string standard;              // what holds when it is not given
  std::string help;
  bool in_line = false;  // by its place, without a name
  bool required = false;
  bool many = false;  // may be given several times
};

struct CommandPage {
  std::vector<std::string> words;     // {"book", "init"}; of the program itself none
  std::string about;                  // one line
  std::vector<std::string> examples;  // "heatkeep book init --home /srv/bars"
  std::string notes;                  // what its help says besides, as it stands there
  std::vector<OptionPage> options;
  std::vector<CommandPage> commands;
  bool needs_command = false;  // does nothing by itself

  std::string Typed() const;  // "heatkeep book init"
};

// Hidden commands are left out.
CommandPage PageOf(const CLI::App& root);

// What the program answers with: every number, and what it means.
struct ExitStatus {
  int code;
  const char* meaning;
};
const std::vector<ExitStatus>& AllExitStatuses();

}  // namespace heatkeep::command
