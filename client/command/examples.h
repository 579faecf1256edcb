// An example for every command: what a person would type with the invented shop. It stands behind its description, in its last lines, or
// in the one table here. A noun gets that of its first command.
#pragma once

namespace CLI {
class App;
}

namespace heatkeep::command {

// Sets the last lines of the help of every command. A footer of `root` itself is to be set before, but after its commands were made: they
// would begin with it. Throws CLI::OptionNotFound where the table names a command that is not there.
void AddExamples(CLI::App& root);

}  // namespace heatkeep::command
