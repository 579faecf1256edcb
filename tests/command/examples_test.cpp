// What is shown to be typed can be typed: every example of every help, and every command that a page for people names.
#include <gtest/gtest.h>
#include <wordexp.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <regex>
#include <set>
#include <sstream>

#include "client/command/command_line.h"

namespace heatkeep::command {
namespace {

namespace fs = std::filesystem;

// As a shell parts them; the program's name is left off.
std::vector<std::string> Typed(const std::string& line) {
  wordexp_t parted;
  if (wordexp(line.c_str(), &parted, WRDE_NOCMD) != 0) return {};
  std::vector<std::string> words(parted.we_wordv + 1, parted.we_wordv + parted.we_wordc);
  wordfree(&parted);
  return words;
}

std::vector<CommandPage> All(const CommandPage& page) {
  std::vector<CommandPage> all{page};
  for (const CommandPage& one : page.commands)
    for (CommandPage& deeper : All(one)) all.push_back(std::move(deeper));
  return all;
}

TEST(Examples, OfEveryHelpAreOfThatCommandAndAreUnderstood) {
  for (const CommandPage& page : All(AllCommands())) {
    EXPECT_FALSE(page.examples.empty()) << page.Typed();
    for (const std::string& example : page.examples) {
      EXPECT_TRUE((example + " ").starts_with(page.Typed() + " ")) << page.Typed() << ": " << example;
      const std::vector<std::string> words = Typed(example);
      ASSERT_FALSE(words.empty()) << example;
      EXPECT_EQ(WrongWords(words), "") << example;
    }
  }
}

TEST(Examples, AreNotSaidInTheDescription) {
  for (const CommandPage& page : All(AllCommands()))
    EXPECT_EQ(page.about.find(": heatkeep "), std::string::npos) << page.Typed() << ": " << page.about;
}

// Of a page: what stands between backquotes or is set off by four blanks, and begins with the program.
std::set<std::string> CommandsIn(const fs::path& page) {
  std::ifstream in(page);
  std::ostringstream whole;
  whole << in.rdbuf();
  const std::string text = std::regex_replace(whole.str(), std::regex(R"(\n(?!\n|    ))"), " ");  // a backquoted one may go over two lines
  std::set<std::string> found;
  const std::regex quoted(R"(`(?:sudo |build/release/bin/)?heatkeep ([^`]*)`)"),
      set_off(R"(\n    (?:[A-Z]+=\S+ |echo \S+ \| )?heatkeep ([^\n|&>]*))");
  for (const std::regex& form : {quoted, set_off})
    for (auto at = std::sregex_iterator(text.begin(), text.end(), form); at != std::sregex_iterator(); ++at) found.insert((*at)[1]);
  return found;
}

// What is wrong with a command of a page, which may leave words out.
std::string WrongIn(const std::string& command, const CommandPage& root) {
  const CommandPage* at = &root;
  const auto takes = [](const CommandPage& page, const std::string& name) {
    return std::find_if(page.options.begin(), page.options.end(), [&](const OptionPage& o) {
      return o.name == name || std::find(o.others.begin(), o.others.end(), name) != o.others.end();
    });
  };
  std::istringstream words(std::regex_replace(command, std::regex(R"("[^"]*")"), "TEXT"));
  for (std::string word; words >> word;) {
    if (word.starts_with("--") && word != "--") {
      const std::string name = word.substr(0, word.find_first_of("=,;"));
      const auto own = takes(*at, name), everywhere = takes(root, name);
      if (own == at->options.end() && everywhere == root.options.end()) return name + " is no option of " + at->Typed();
      if (everywhere != root.options.end() && !everywhere->takes.empty()) words >> word;  // its value is no command
      continue;
    }
    if (at->commands.empty() || !std::islower(static_cast<unsigned char>(word[0]))) continue;
    std::istringstream ways(word);  // list|rates|time
    const CommandPage* next = at;
    for (std::string way; std::getline(ways, way, '|');) {
      const auto child =
          std::find_if(at->commands.begin(), at->commands.end(), [&](const CommandPage& one) { return one.words.back() == way; });
      if (child != at->commands.end()) next = &*child;
      else if (at->needs_command) return way + " is no command of " + at->Typed();
    }
    at = next;
  }
  return "";
}

TEST(Examples, OfThePagesForPeopleAreCommandsThereAre) {
  const CommandPage root = AllCommands();
  std::size_t seen = 0;
  for (const char* page :
       {"README.md", "DEVELOPERS.md", "seed/first_day/README.md", "client/book/ADMINISTRATOR.md", "client/papers/QUALITY.md"}) {
    for (const std::string& command : CommandsIn(fs::path(HEATKEEP_SOURCE) / page)) {
      EXPECT_EQ(WrongIn(command, root), "") << page << ": heatkeep " << command;
      ++seen;
    }
  }
  EXPECT_GE(seen, 80U);
  EXPECT_EQ(WrongIn("hold heat K3317 --preveiw", root), "--preveiw is no option of heatkeep hold heat");
  EXPECT_EQ(WrongIn("saw list|rate", root), "rate is no command of heatkeep saw");
}

}  // namespace
}  // namespace heatkeep::command
