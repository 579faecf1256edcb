// The pages for people, tried literally: every command of a page is run by a shell, in a folder with the files that lie beside
// the page, on a book made by the page itself. What stands under a command must be in its answer. And every picture and page that a
// page points to is there.
//
// A command is a line with four blanks in front; lines with six are what it answers.
#include <gtest/gtest.h>
#include <stdlib.h>
#include <sys/wait.h>

#include <array>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <regex>
#include <sstream>
#include <string>
#include <vector>

namespace {

namespace fs = std::filesystem;

struct Step {
  std::string command;
  std::vector<std::string> answers;
};

std::string Whole(const fs::path& file) {
  std::ifstream in(file);
  std::ostringstream text;
  text << in.rdbuf();
  return text.str();
}

std::vector<Step> StepsOf(const fs::path& page) {
  std::vector<Step> steps;
  std::istringstream lines(Whole(page));
  for (std::string line; std::getline(lines, line);) {
    if (line.starts_with("      ")) {
      if (!steps.empty()) steps.back().answers.push_back(line.substr(6));
    } else if (line.starts_with("    ")) {
      steps.push_back({line.substr(4), {}});
    }
  }
  return steps;
}

struct Said {
  int code = -1;
  std::string text;
};

Said RunInShell(const std::string& command) {
  Said said;
  FILE* pipe = popen(("{ " + command + "\n} 2>&1").c_str(), "r");
  if (pipe == nullptr) return said;
  std::array<char, 4096> part{};
  for (std::size_t n; (n = fread(part.data(), 1, part.size(), pipe)) > 0;) said.text.append(part.data(), n);
  const int ended = pclose(pipe);
  said.code = WIFEXITED(ended) ? WEXITSTATUS(ended) : -1;
  return said;
}

// A folder of its own, with the page's files, in which the programs are found and no book is yet.
class Newcomer : public testing::Test {
 protected:
  void SetUp() override {
    std::string name = (fs::temp_directory_path() / "heatkeep-guide-XXXXXX").string();
    ASSERT_NE(mkdtemp(name.data()), nullptr);
    folder_ = name;
    fs::permissions(folder_, fs::perms(0755));  // where root tries it, the server runs under another account
    before_ = fs::current_path();
    setenv("HEATKEEP_HOME", (folder_ / "book").c_str(), 1);
    setenv("HOME", folder_.c_str(), 1);
    setenv("PATH", (std::string(HEATKEEP_PROGRAM_FOLDER) + ":" + getenv("PATH")).c_str(), 1);
  }

  void TearDown() override {
    RunInShell("heatkeep book stop");
    fs::current_path(before_);
    fs::remove_all(folder_);
  }

  void Follow(const std::string& page) {
    const fs::path whole = fs::path(HEATKEEP_SOURCE) / page;
    for (const fs::directory_entry& file : fs::directory_iterator(whole.parent_path()))
      if (file.is_regular_file()) fs::copy_file(file.path(), folder_ / file.path().filename());
    fs::current_path(folder_);
    const std::vector<Step> steps = StepsOf(whole);
    ASSERT_FALSE(steps.empty()) << page << " has no command";
    for (const Step& step : steps) {
      const Said said = RunInShell(step.command);
      ASSERT_EQ(said.code, 0) << step.command << "\n" << said.text;
      for (const std::string& answer : step.answers)
        ASSERT_NE(said.text.find(answer), std::string::npos) << step.command << "\ndid not answer: " << answer << "\nbut:\n" << said.text;
    }
  }

  fs::path folder_, before_;
};

TEST_F(Newcomer, ComesFromASpreadsheetToTheFirstPickListByThePage) { Follow("seed/first_day/README.md"); }

// Every page of the project, and what it points to inside the project.
TEST(Pages, PointToWhatIsThere) {
  const std::regex link(R"(\]\(([^)#]+)[^)]*\))");
  int pages = 0, links = 0;
  for (auto at = fs::recursive_directory_iterator(HEATKEEP_SOURCE); at != fs::recursive_directory_iterator(); ++at) {
    const std::string name = at->path().filename().string();
    if (at->is_directory() && (name == "build" || name == ".git")) at.disable_recursion_pending();
    if (at->path().extension() != ".md") continue;
    ++pages;
    const std::string text = Whole(at->path());
    for (auto match = std::sregex_iterator(text.begin(), text.end(), link); match != std::sregex_iterator(); ++match) {
      const std::string target = (*match)[1];
      if (target.find("://") != std::string::npos) continue;
      ++links;
      EXPECT_TRUE(fs::exists(at->path().parent_path() / target)) << at->path() << " points to " << target;
    }
  }
  EXPECT_GE(pages, 5);
  EXPECT_GE(links, 20);
}

// Every table of outside values is in the one list of sources.
TEST(Pages, TheListOfSourcesNamesEveryReferenceTable) {
  const std::string sources = Whole(fs::path(HEATKEEP_SOURCE) / "tests/SOURCES.md");
  int tables = 0;
  for (const fs::directory_entry& file : fs::directory_iterator(fs::path(HEATKEEP_SOURCE) / "tests/reference")) {
    if (file.path().extension() != ".csv") continue;
    ++tables;
    EXPECT_NE(sources.find(file.path().filename().string()), std::string::npos) << file.path().filename();
  }
  EXPECT_GE(tables, 10);
}

}  // namespace
