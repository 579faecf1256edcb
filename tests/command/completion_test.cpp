// The completions: a bash that really completes, asked as its line editor asks.
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <fstream>

#include "client/command/command_line.h"
#include "client/command/completion.h"
#include "tests/command/works.h"

namespace heatkeep::command {
namespace {

namespace fs = std::filesystem;

class Completion : public testing::Test {
 protected:
  Completion() : folder_(fs::temp_directory_path() / ("heatkeep-completion-" + std::to_string(getpid()))) {
    fs::create_directories(folder_ / "papers");
    for (const char* name : {"note.csv", "rack.XLSX", "scan.pdf", "two words.ods"}) std::ofstream(folder_ / name) << "x";
    std::ofstream(folder_ / "heatkeep.bash") << BashCompletion(AllCommands());
    CommandPage page;
    std::vector<OptionPage>& desk = page.options;
    desk.resize(4);
    desk[0].name = "--home", desk[0].takes = "FOLDER";
    desk[1].name = "--person", desk[1].takes = "NAME";
    desk[2].name = "--settings", desk[2].takes = "FILE";
    desk[3].name = "--help";
    std::ofstream(folder_ / "heatkeep-desk.bash") << BashCompletion(page, "heatkeep-desk");
  }
  ~Completion() override { fs::remove_all(folder_); }

  // What is proposed for the last of the words after the program, in order of the alphabet.
  Words After(const Words& words, const std::string& program = "heatkeep", const std::string& function = "_heatkeep") const {
    std::ofstream script(folder_ / "ask.bash");
    script << "cd '" << folder_.string() << "' && . ./" << program << ".bash\nCOMP_WORDS=(" << program;
    for (const std::string& word : words) script << " '" << word << "'";
    script << ")\nCOMP_CWORD=" << words.size() << "\n" << function << "\nprintf '%s\\n' \"${COMPREPLY[@]}\"\n";
    script.close();
    FILE* pipe = popen(("bash --norc " + (folder_ / "ask.bash").string() + " 2>&1").c_str(), "r");
    std::string said;
    for (int c; pipe && (c = fgetc(pipe)) != EOF;) said += static_cast<char>(c);
    EXPECT_TRUE(pipe && pclose(pipe) == 0) << said;
    Words proposed;
    std::istringstream lines(said);
    for (std::string line; std::getline(lines, line);)
      if (!line.empty()) proposed.push_back(line);
    std::sort(proposed.begin(), proposed.end());
    return proposed;
  }

  fs::path folder_;
};

bool Names(const Words& words, const std::string& word) { return std::find(words.begin(), words.end(), word) != words.end(); }

TEST_F(Completion, OfCommandsAndTheirCommands) {
  EXPECT_EQ(After({"rec"}), (Words{"recall", "receipt", "receive"}));
  EXPECT_EQ(After({"book", "st"}), (Words{"start", "status", "stop"}));
  EXPECT_EQ(After({"book", "person", ""}), (Words{"add", "list"}));
  EXPECT_EQ(After({"--home", "/srv/bars", "cutlist", "a"}), Words{"add"}) << "the value of an option is no command";
  EXPECT_GE(After({""}).size(), 40U);
}

TEST_F(Completion, OfTheDesksOptionsAndTheirFiles) {
  const auto desk = [&](const Words& words) { return After(words, "heatkeep-desk", "_heatkeep_desk"); };
  EXPECT_EQ(desk({""}), (Words{"--help", "--home", "--person", "--settings"}));
  EXPECT_EQ(desk({"--p"}), Words{"--person"});
  EXPECT_EQ(desk({"--home", ""}), Words{"papers"}) << "folders only";
  EXPECT_EQ(desk({"--settings", "=", "two"}), Words{"two words.ods"});
  EXPECT_EQ(desk({"--settings", "="}).size(), 8U) << "every file here";
  EXPECT_EQ(desk({"--person", ""}), Words{});
}

TEST_F(Completion, OfOptions) {
  EXPECT_EQ(After({"stock", "--gr"}), Words{"--grade"});
  EXPECT_TRUE(Names(After({"saw", "cut", "--"}), "--stroke"));
  EXPECT_TRUE(Names(After({"stock", "--"}), "--person")) << "taken everywhere";
  EXPECT_FALSE(Names(After({"stock", "--"}), "--stroke"));
}

TEST_F(Completion, OfWordsWithAFixedSet) {
  EXPECT_EQ(After({"book", "person", "add", "ilse", "--role", ""}), (Words{"clerk", "owner", "planner", "quality", "saw"}));
  EXPECT_EQ(After({"look", "note.csv", "--as", "c"}), (Words{"certificates", "cuts"}));
  EXPECT_EQ(After({"recall", "he"}), Words{"heat"}) << "by its place";
  EXPECT_EQ(After({"saw", "cut", "A000012K", "--left", "s"}), (Words{"same\\ piece", "scrap"}));
  EXPECT_EQ(After({"allocate", "monday", "--aim", "=", "le"}), (Words{"least-metres", "least-money"}))
      << "bash takes --aim=le for three words";
}

TEST_F(Completion, OfFilesByTheirEndings) {
  EXPECT_EQ(After({"receive", ""}), (Words{"note.csv", "papers", "rack.XLSX", "two words.ods"}));
  EXPECT_EQ(After({"receive", "no"}), Words{"note.csv"});
  EXPECT_EQ(After({"certificate", "attach", "C1", "--scan", ""}), (Words{"papers", "scan.pdf"}));
  EXPECT_EQ(After({"recall", "heat", "K3317", "--letters", ""}), Words{"papers"}) << "a folder";
  EXPECT_EQ(After({"stock", "--grade", ""}), Words{}) << "nothing is guessed";
}

TEST_F(Completion, OfZshNamesEveryCommand) {
  const std::string zsh = ZshCompletion(AllCommands());
  EXPECT_TRUE(zsh.starts_with("#compdef heatkeep\n"));
  for (const char* part :
       {"_heatkeep_book_person_add()", "--role=[", "--json[", "(clerk planner saw quality owner)", "_files -g \"(#i)*.(csv|xlsx|ods)\""})
    EXPECT_TRUE(Has(zsh, part)) << part;
}

}  // namespace
}  // namespace heatkeep::command
