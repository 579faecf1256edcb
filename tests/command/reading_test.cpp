// Every command that changes nothing takes --json and says JSON, of a book with something in it. What is a deed is known by its words
// (--true-at, or a deed of the saws) or stands in the list here; all the rest are readings, and a new one must show what it says.
#include <algorithm>
#include <map>

#include "client/command/command_line.h"
#include "client/command/saw_deed_words.h"
#include "tests/command/works.h"
#include "tests/reports/invented_pdf.h"

namespace heatkeep::command {
namespace {

const std::set<std::string>& OtherDeeds() {
  static const std::set<std::string> deeds{"book init",
                                           "book start",
                                           "book stop",
                                           "book backup",
                                           "book restore",
                                           "book seal",
                                           "book person add",
                                           "receive",
                                           "opening",
                                           "grades add",
                                           "grades limits",
                                           "grades correct",
                                           "shop set",
                                           "shop sign",
                                           "cutlist add",
                                           "conflict close",
                                           "allocate",
                                           "plan cancel",
                                           "replan",
                                           "pull",
                                           "cut record",
                                           "ship",
                                           "saw block",
                                           "saw send",
                                           "certificate add",
                                           "certificate file",
                                           "certificate replace",
                                           "certificate attach",
                                           "certificate pass",
                                           "certificate package"};
  return deeds;
}

// Those that answer 1 where what was asked is not so: the tests' server runs without fsync, and no analysis here is complete.
const std::set<std::string>& SayNo() {
  static const std::set<std::string> names{"book verify", "heat check", "certificate check"};
  return names;
}

std::string Joined(const Words& words) {
  std::string all;
  for (const std::string& word : words) all += (all.empty() ? "" : " ") + word;
  return all;
}

bool Takes(const CommandPage& page, const std::string& option) {
  return std::any_of(page.options.begin(), page.options.end(), [&](const OptionPage& o) { return o.name == option; });
}

bool IsDeed(const CommandPage& page) {
  const std::string name = Joined(page.words);
  const auto& saws = AllSawDeeds();
  return Takes(page, "--true-at") || OtherDeeds().contains(name) ||
      std::any_of(saws.begin(), saws.end(), [&](const SawDeedWords& deed) { return name == std::string("saw ") + deed.name; });
}

// Every command that does something by itself.
std::vector<CommandPage> Doers(const CommandPage& page) {
  std::vector<CommandPage> all;
  if (!page.needs_command) all.push_back(page);
  for (const CommandPage& one : page.commands)
    for (CommandPage& deeper : Doers(one)) all.push_back(std::move(deeper));
  return all;
}

class Readings : public Works {
 protected:
  Readings() {
    TakeIn("I1,bar,Vandrek,47-0783,42CrMo4,round 80,6000,,3.1,,\nI2,drop,Vandrek,47-0783,42CrMo4,round 80,900,,3.1,,\n");
    Certify("M26/2201,3.1,Vandrek,47-0783,round 80,42CrMo4\n");
    Want("monday", "O1,10,Pallant,round 80,42CrMo4,240,2,,,,\n");
    EXPECT_NE(Plan("monday"), 0);
    File("stock.csv", "tag,kind,section,grade,heat,length,count,ends\nB1,bar,round 80,42CrMo4,K3317,6000,1,\n");
    File("cuts.csv", "order,line,section,grade,length,quantity\nA1,1,round 80,42CrMo4,240,2\n");
    // a document that has its paper
    const std::string pdf = File("c1.pdf", InventedPdf({"INVENTED"}));
    const Ran attached = As("quality", {"certificate", "attach", "M26/2201", "--scan", pdf});
    EXPECT_EQ(attached.code, 0) << attached;
    EXPECT_EQ(As("saw", {"saw", "block", "--device", "saw-1", "--site", "main", "--size", "5", "--queue", PathOf("saw-1.queue")}).code, 0);
    const Ran kept = As("saw", {"saw", "pull", TagOf("I1"), "--saw", "1", "--queue", PathOf("saw-1.queue"), "--login", "saw"});
    EXPECT_EQ(kept.code, 0) << kept;
  }

  // What a reading is asked with, where its name is not enough.
  std::map<std::string, Words> Asked() {
    const std::string tag = TagOf("I1");
    return {{"section", {"round 50"}},
            {"tag check", {tag}},
            {"heat check", {"--grade", "4140", "--analysis", "C=0.41 Mn=0.86"}},
            {"look", {PathOf("cuts.csv"), "--as", "cuts"}},
            {"plan", {"--stock", PathOf("stock.csv"), "--cuts", PathOf("cuts.csv"), "--json", PathOf("plan.json")}},
            {"plan show", {"1"}},
            {"saw time", {"1"}},
            {"saw estimate", {"round 100", "--rate", "40"}},
            {"saw queue", {PathOf("saw-1.queue")}},
            {"report sheet", {"1"}},
            {"report trace", {"heat", "47-0783"}},
            {"report balance", {"47-0783"}},
            {"report count", {"B1-1"}},
            {"recall", {"heat", "47-0783"}},
            {"certificate show", {"M26/2201"}},
            {"certificate check", {"M26/2201"}},
            {"certificate export", {"M26/2201", "--to", PathOf("again.pdf")}},
            {"label print", {"--to", PathOf("labels.pdf")}},
            {"simulate", {"--lines", "20", "--groups", "2", "--days", "5", "--policy", "plain"}},
            {"book migrate", {"--check"}}};
  }
};

TEST_F(Readings, AllTakeJsonSayJsonAndChangeNothing) {
  std::map<std::string, Words> asked = Asked();
  const std::string before = Digest();
  int readings = 0;
  for (const CommandPage& page : Doers(AllCommands())) {
    if (IsDeed(page)) continue;
    const std::string name = Joined(page.words);
    EXPECT_TRUE(Takes(page, "--json")) << name;
    Words words = page.words;
    const Words more = asked[name];
    words.insert(words.end(), more.begin(), more.end());
    if (std::find(more.begin(), more.end(), "--json") == more.end()) words.push_back("--json");
    const Ran ran =
        name == "book migrate" ? Heatkeep({"--book", book.Conninfo("admin"), "book", "migrate", "--check", "--json"}) : As("all", words);
    EXPECT_TRUE(ran.code == 0 || (SayNo().contains(name) && ran.code == 1)) << Joined(words) << '\n' << ran;
    std::string said = ran.out;
    if (name == "plan") {
      std::ifstream in(PathOf("plan.json"));
      said.assign(std::istreambuf_iterator<char>(in), {});
    }
    EXPECT_TRUE(Json::accept(said)) << Joined(words) << '\n' << ran;
    ++readings;
  }
  EXPECT_GE(readings, 68);
  EXPECT_EQ(Digest(), before);
}

TEST_F(Readings, TheListOfDeedsNamesOnlyWhatThereIs) {
  std::set<std::string> names;
  for (const CommandPage& page : Doers(AllCommands())) names.insert(Joined(page.words));
  for (const std::string& deed : OtherDeeds()) EXPECT_TRUE(names.contains(deed)) << deed;
}

}  // namespace
}  // namespace heatkeep::command
