// An example for every command whose own help has none, from one table: what a person would type with the invented shop. A noun gets
// that of its first command.
#pragma once

namespace CLI {
class App;
}

namespace heatkeep::command {

// Sets the last line of the help of each command of the table. Throws CLI::OptionNotFound where the table names a command that is not
// there.
void AddExamples(CLI::App& root);

}  // namespace heatkeep::command
