// The program `heatkeep`: the command line, no display needed.
#include <iostream>

#include "client/command/command_line.h"

int main(int argc, char** argv) { return heatkeep::command::RunCommandLine(argc, argv, std::cin, std::cout, std::cerr); }
