// The man pages: made from the words the program really reads, one a command, and such that groff has nothing to say against them.
#include <gtest/gtest.h>

#include <cstdio>
#include <filesystem>
#include <fstream>

#include "client/command/command_line.h"
#include "client/command/man_page.h"
#include "tests/command/works.h"

namespace heatkeep::command {
namespace {

std::vector<CommandPage> All(const CommandPage& page) {
  std::vector<CommandPage> all{page};
  for (const CommandPage& one : page.commands)
    for (CommandPage& deeper : All(one)) all.push_back(std::move(deeper));
  return all;
}

// What a program says on both its outputs.
std::string SaidBy(const std::string& command) {
  FILE* pipe = popen((command + " 2>&1").c_str(), "r");
  std::string said;
  for (int c; pipe && (c = fgetc(pipe)) != EOF;) said += static_cast<char>(c);
  EXPECT_TRUE(pipe && pclose(pipe) == 0) << command << '\n' << said;
  return said;
}

TEST(Pages, EveryCommandHasOneWithAllItsParts) {
  const CommandPage root = AllCommands();
  const std::vector<CommandPage> pages = All(root);
  EXPECT_GE(pages.size(), 200U);
  for (const CommandPage& page : pages) {
    const std::string text = ManPage(page, root, {"0.1.0", "2026-11-26"});
    std::size_t at = 0;
    for (const char* part : {".TH ", ".SH NAME\n", ".SH SYNOPSIS\n", ".SH DESCRIPTION\n", ".SH OPTIONS\n", ".SH EXAMPLES\n",
                             ".SH EXIT STATUS\n", ".SH SEE ALSO\n"}) {
      const std::size_t found = text.find(part, at);
      EXPECT_NE(found, std::string::npos) << page.Typed() << ": no " << part;
      at = std::min(found, text.size());
    }
    const std::size_t examples = text.find(".SH EXAMPLES");
    EXPECT_NE(text.find("heatkeep", examples), std::string::npos) << page.Typed();
    EXPECT_LT(text.find("heatkeep", examples), text.find(".SH EXIT STATUS")) << page.Typed();
  }
}

TEST(Pages, NameEveryOptionThatTheHelpNames) {
  const CommandPage root = AllCommands();
  for (const CommandPage& page : All(root)) {
    Words asked = page.words;
    asked.push_back("--help");
    const std::string help = Heatkeep(asked).out, text = ManPage(page, root, {"0.1.0", "2026-11-26"});
    for (std::size_t at = help.find("\n  --"); at != std::string::npos && at < help.find("\n\n", help.find("\nOptions:"));
         at = help.find("\n  --", at + 1)) {
      const std::string name = help.substr(at + 3, help.find_first_of(" ,\n", at + 3) - at - 3);
      EXPECT_NE(text.find(Roff(name)), std::string::npos) << page.Typed() << ' ' << name;
    }
  }
}

TEST(Pages, AreSaidToBeGoodByGroff) {
  const CommandPage root = AllCommands();
  const std::filesystem::path folder = std::filesystem::temp_directory_path() / ("heatkeep-pages-" + std::to_string(getpid()));
  std::filesystem::create_directory(folder);
  std::string files;
  for (const CommandPage& page : All(root)) {
    const std::string name = (folder / (ManName(page) + ".1")).string();
    std::ofstream(name) << ManPage(page, root, {"0.1.0", "2026-11-26"});
    files += " " + name;
  }
  std::ofstream(folder / "desk.1") << DeskManPage({{"--book", {}, "CONNINFO", {}, "", "a shop's book", false, false, false}},
                                                  {"0.1.0", "2026-11-26"});
  EXPECT_EQ(SaidBy("groff -man -Tutf8 -ww -z" + files + " " + (folder / "desk.1").string()), "");
  const std::string read = SaidBy("groff -man -Tascii -P-cbou " + (folder / "heatkeep-stock.1").string());
  EXPECT_TRUE(Has(read, "\nNAME\n       heatkeep-stock - what is in the shop\n")) << read;
  EXPECT_TRUE(Has(read, "heatkeep stock --grade 42CrMo4 --section \"round 80\"")) << read;
  std::filesystem::remove_all(folder);
}

}  // namespace
}  // namespace heatkeep::command
