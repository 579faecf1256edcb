// What is installed beside the programs and made from their words: the man pages and the completions of the shells.
// usage: heatkeep-pages VERSION DATE FOLDER     fills FOLDER/man1, FOLDER/man5 and FOLDER/completion; exit 0, or 2 and a message
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <stdexcept>

#include "client/app/desk_options.h"
#include "client/command/command_line.h"
#include "client/command/completion.h"
#include "client/command/files_page.h"
#include "client/command/man_page.h"

namespace {

using namespace heatkeep::command;
namespace fs = std::filesystem;

void Write(const fs::path& file, const std::string& text) {
  std::ofstream out(file, std::ios::binary);
  if (!(out << text) || !out.flush()) throw std::runtime_error(file.string() + ": cannot be written");
}

void WritePages(const CommandPage& page, const CommandPage& root, const ManEdition& edition, const fs::path& folder) {
  Write(folder / (ManName(page) + ".1"), ManPage(page, root, edition));
  for (const CommandPage& one : page.commands) WritePages(one, root, edition, folder);
}

CommandPage Desk() {
  CommandPage desk;
  std::vector<OptionPage>& options = desk.options;
  for (const auto& [name, takes, help] : heatkeep::kDeskOptions) {
    OptionPage option;
    option.name = std::string("--") + name;
    option.takes = takes;
    option.help = help;
    options.push_back(option);
  }
  for (const auto& [name, other, help] :
       {std::tuple{"--help", "-h", "What it takes."}, std::tuple{"--version", "-v", "Which one it is."}}) {
    OptionPage option;
    option.name = name;
    option.others = {other};
    option.help = help;
    options.push_back(option);
  }
  return desk;
}

}  // namespace

int main(int argc, char** argv) {
  if (argc != 4) {
    std::fprintf(stderr, "heatkeep-pages: expected VERSION DATE FOLDER\n");
    return 2;
  }
  try {
    const ManEdition edition{argv[1], argv[2]};
    const fs::path folder = argv[3];
    fs::remove_all(folder / "man1");
    fs::create_directories(folder / "man1");
    fs::create_directories(folder / "man5");
    fs::create_directories(folder / "completion");
    const CommandPage root = AllCommands(), desk = Desk();
    WritePages(root, root, edition, folder / "man1");
    Write(folder / "man1/heatkeep-desk.1", DeskManPage(desk.options, edition));
    Write(folder / "man5/heatkeep-files.5", FilesManPage(edition));
    Write(folder / "completion/heatkeep", BashCompletion(root));
    Write(folder / "completion/_heatkeep", ZshCompletion(root));
    Write(folder / "completion/heatkeep-desk", BashCompletion(desk, "heatkeep-desk"));
    Write(folder / "completion/_heatkeep-desk", ZshCompletion(desk, "heatkeep-desk"));
    return 0;
  } catch (const std::exception& error) {
    std::fprintf(stderr, "heatkeep-pages: %s\n", error.what());
    return 2;
  }
}
