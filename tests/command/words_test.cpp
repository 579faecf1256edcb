// The words themselves: help, what is not known, and the exit status of everything that can go wrong.
#include "tests/command/works.h"

namespace heatkeep::command {
namespace {

// Every command by its words, as the help of its parent lists them.
std::vector<Words> Commands(const Words& parent = {}) {
  Words asked = parent;
  asked.push_back("--help");
  const std::string help = Heatkeep(asked).out;
  std::vector<Words> found{parent};
  std::size_t at = help.find("\nSubcommands:\n");
  if (at == std::string::npos) return found;
  for (at = help.find('\n', at + 1) + 1; help.compare(at, 2, "  ") == 0; at = help.find('\n', at) + 1) {
    if (help.compare(at, 3, "   ") == 0) continue;  // the help of a long name goes on
    Words child = parent;
    child.push_back(help.substr(at + 2, help.find_first_of(" \n", at + 2) - at - 2));
    for (Words& words : Commands(child)) found.push_back(std::move(words));
  }
  return found;
}

TEST(CommandWords, EveryCommandHasHelp) {
  const std::vector<Words> commands = Commands();
  EXPECT_GE(commands.size(), 40U);
  for (Words words : commands) {
    words.push_back("--help");
    const Ran ran = Heatkeep(words);
    EXPECT_EQ(ran.code, 0) << ran;
    EXPECT_GT(ran.out.size(), 60U) << ran;
    EXPECT_EQ(ran.err, "");
  }
}

TEST(CommandWords, EveryDeedsHelpHasAnExample) {
  for (Words words : Commands()) {
    std::string typed = "heatkeep";
    for (const std::string& word : words) typed += " " + word;
    words.push_back("--help");
    const std::string help = Heatkeep(words).out;
    if (Has(help, "\nSubcommands:\n")) continue;
    const std::size_t options = help.find("\n\n");
    const std::string described = help.substr(0, help.find("\nUsage:")) + help.substr(options);  // without the usage line
    EXPECT_TRUE(Has(described, typed + " ") || Has(described, ": " + typed + "\n")) << typed;
  }
}

TEST(CommandWords, WhatIsNotKnownIsBadInput) {
  for (Words words : Commands()) {
    words.push_back("--no-such-option");
    const Ran ran = Heatkeep(words);
    EXPECT_EQ(ran.code, 2) << ran;
    EXPECT_NE(ran.err, "");
    EXPECT_EQ(ran.out, "");
  }
  for (const Words& words : std::vector<Words>{{}, {"fly"}, {"book"}, {"hold"}, {"report"}, {"cut"}, {"receive"}, {"plan", "show", "one"}})
    EXPECT_EQ(Heatkeep(words).code, 2) << Heatkeep(words);
}

TEST(CommandWords, WhatIsWrongIsSaidSoThatTheNextTryIsRight) {
  const auto said = [](const Words& words) { return Heatkeep(words).err; };
  EXPECT_EQ(said({"stokc"}), "heatkeep: \"stokc\" is no command; perhaps stock is meant\n  `heatkeep --help` says what there is\n");
  EXPECT_EQ(said({"fly"}), "heatkeep: \"fly\" is no command\n  `heatkeep --help` says what there is\n");
  EXPECT_EQ(said({}), "heatkeep: a command is missing\n  `heatkeep --help` says what there is\n");
  EXPECT_EQ(said({"--home", "stock"}), "heatkeep: a command is missing\n  `heatkeep --help` says what there is\n")
      << "stock is the folder there";
  EXPECT_EQ(said({"book", "person"}),
            "heatkeep book person: a command is missing; expected add or list\n  `heatkeep book person --help` says what there is\n");
  EXPECT_EQ(
      said({"book", "statsu"}),
      "heatkeep book: \"statsu\" is no command of it; expected init, start, stop, status, verify, migrate, backup, restore, seal or person; perhaps status is meant\n"
      "  `heatkeep book --help` says what there is\n");
  EXPECT_TRUE(said({"plan", "shwo", "1"})
                  .starts_with("heatkeep plan: \"shwo\" is no command of it; expected show, cancel or list; perhaps show is meant\n"));
  EXPECT_EQ(
      said({"stock", "--grad", "x"}),
      "heatkeep stock: \"--grad\" is no option of it; perhaps --grade is meant\n  example: heatkeep stock --grade 42CrMo4 --section \"round 80\"\n"
      "  `heatkeep stock --help` says what it takes\n");
  EXPECT_EQ(
      said({"receive"}),
      "heatkeep receive: file is missing\n  example: heatkeep receive note-20418.xlsx --sheet Monday\n  `heatkeep receive --help` says what it takes\n");
  EXPECT_TRUE(
      said({"section", "round", "50"})
          .starts_with("heatkeep section: \"50\" is one word too many; expected words and options (a text with blanks goes in quotes)\n"));
  EXPECT_TRUE(said({"plan", "show", "one"}).starts_with("heatkeep plan show: plan: \"one\" is not a number\n"));
  EXPECT_TRUE(said({"stock", "--grade"}).starts_with("heatkeep stock: --grade needs a value behind it\n")) << said({"stock", "--grade"});
  EXPECT_TRUE(
      said({"look", "x.csv", "--as", "cutz"})
          .starts_with(
              "heatkeep look: --as: \"cutz\" is not known; expected stock, cuts, delivery, opening, certificates or grades; perhaps cuts is meant\n"));
}

TEST(CommandWords, EveryHelpHasAnExample) {
  for (Words words : Commands()) {
    words.push_back("--help");
    EXPECT_TRUE(Has(Heatkeep(words).out, "heatkeep ")) << words.front();
  }
}

TEST(CommandWords, VersionIsANumber) {
  const Ran ran = Heatkeep({"--version"});
  EXPECT_EQ(ran.code, 0);
  EXPECT_TRUE(ran.out.find_first_not_of("0123456789.\n") == std::string::npos) << ran;
}

TEST(CommandWords, ABookThatCannotBeReachedIsFour) {
  const Ran ran = Heatkeep({"--book", "host=/nowhere port=1 dbname=none", "stock"});
  EXPECT_EQ(ran.code, 4) << ran;
  EXPECT_NE(ran.err, "");
  EXPECT_EQ(Heatkeep({"--book", "host=/nowhere port=1 dbname=none", "book", "verify"}).code, 4);
}

TEST(CommandWords, TwoBooksAtOnceAreBadInput) {
  EXPECT_EQ(Heatkeep({"--book", "dbname=x", "--home", "/nowhere", "stock"}).code, 2);
  EXPECT_EQ(Heatkeep({"--book", "no = such = thing", "stock"}).code, 2);
}

using OnABook = Works;

TEST_F(OnABook, WhatOneMayNotDoNamesTheRolesThatMay) {
  const Ran ran = As("clerk", {"saw", "ticket", "--bin", "B", "--dealer", "D", "--ticket", "T", "--mass", "480", "--per-kg", "0.25"});
  EXPECT_EQ(ran.err,
            "heatkeep: you may not do this: scrap_ticket\n"
            "  it is the work of planner or quality; whoever keeps the book gives roles with `heatkeep book person add`\n");
  EXPECT_TRUE(Has(As("clerk", {"plan", "cancel", "1", "--reason", "x"}).err, "it is the work of planner;"));
}

TEST_F(OnABook, NobodyButTheRoleDoesItsWork) {
  const std::string before = Digest();
  const std::string cuts = File("A.csv", "order,line,section,grade,length,quantity\nO1,10,round 80,42CrMo4,1,1\n");
  for (const auto& [who, words] :
       std::vector<std::pair<std::string, Words>>{{"planner", {"shop", "set", PathOf("shop.json")}},
                                                  {"clerk", {"cutlist", "add", cuts}},
                                                  {"clerk", {"book", "verify"}},
                                                  {"quality", {"pull", "A000001D", "--saw", "1", "--plan", "1"}},
                                                  {"owner", {"plan", "cancel", "1", "--reason", "x"}},
                                                  {"planner", {"quarantine", "A000001D", "--reason", "x"}},
                                                  {"owner", {"ship", "O1/10=1", "--note", "D1", "--customer", "Pallant"}}}) {
    const Ran ran = As(who, words);
    EXPECT_EQ(ran.code, 1) << who << ' ' << words[0] << '\n' << ran;
    EXPECT_TRUE(words[0] == "quarantine" || Has(ran.err, "you may not do this")) << ran;
  }
  EXPECT_EQ(Digest(), before);
}

TEST_F(OnABook, VerifyAnswersOneWhereTheServerMayLoseWrites) {
  const Ran ran = As("quality", {"book", "verify"});
  EXPECT_EQ(ran.code, 1) << "the tests' server runs without fsync\n" << ran;
  EXPECT_TRUE(Has(ran.out + ran.err, "fsync off")) << ran;
}

}  // namespace
}  // namespace heatkeep::command
