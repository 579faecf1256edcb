#include "client/command/demo_shop.h"

#include <sstream>
#include <stdexcept>
#include <vector>

#include "client/command/book_command.h"
#include "client/command/cutlist_command.h"
#include "client/command/receive_command.h"
#include "client/command/reference_files.h"
#include "client/command/shop_command.h"
#include "client/intake/file_bytes.h"

namespace heatkeep::command {
namespace {

// One step of the making: what it is, and the exit status of the command that does it.
struct Step {
  std::string words;
  std::function<int(std::ostream& out, std::ostream& err)> run;
};

Step AsPerson(const std::filesystem::path& home, const std::string& person, const std::string& words,
              const std::function<int(const BookCall&)>& run) {
  return {words, [=](std::ostream& out, std::ostream& err) {
            return run({{.book = {}, .person = person, .home = home.string()}, out, err});
          }};
}

std::vector<Step> StepsFor(const std::filesystem::path& home) {
  BookCommand book;
  book.where.home = home.string();
  const auto run_book = [](BookDeed deed, const BookCommand& command) {
    return [deed, command](std::ostream& out, std::ostream& err) {
      std::istringstream none;
      return RunBook(deed, command, none, out, err);
    };
  };
  // With the grade list and the limits that come with the program, as `book init` has them: what the shop's files say is of these grades.
  const auto make = [init = run_book(BookDeed::Init, book), home](std::ostream& out, std::ostream& err) {
    if (const int failed = init(out, err)) return failed;
    return RunGradesThatCome({{.book = {}, .person = {}, .home = home.string()}, out, err});
  };
  std::vector<Step> steps{{"the book is made", make}};
  std::istringstream people(intake::FileBytes(ScenarioFile("people.csv")));
  std::string line;
  std::getline(people, line);
  while (std::getline(people, line)) {
    const std::size_t comma = line.find(',');
    BookCommand person = book;
    person.name = line.substr(0, comma);
    person.roles = {line.substr(comma + 1)};
    steps.push_back({"people: " + person.name, run_book(BookDeed::PersonAdd, person)});
  }
  const auto add = [&](const std::string& person, const std::string& words, const std::function<int(const BookCall&)>& run) {
    steps.push_back(AsPerson(home, person, words, run));
  };
  add("osk", "saws, places, prices", [](const BookCall& call) { return RunShopSet(call, ScenarioFile("shop.json")); });
  add("ines", "what may stand in for what", [](const BookCall& call) { return RunShopSign(call, ScenarioFile("shop.json")); });
  add("mara", "what lies in the rack", [](const BookCall& call) {
    return RunOpening(call, {ScenarioFile("opening.csv"), {}}, false, false);
  });
  add("mara", "deliveries", [](const BookCall& call) { return RunReceive(call, {ScenarioFile("deliveries.csv"), {}}, false); });
  add("ines", "certificates", [](const BookCall& call) {
    return RunCertificates(call, {.file = {ScenarioFile("certificates.csv"), {}}, .reason = {}, .scans = {}, .validated_by = {}});
  });
  for (const char* list : {"cutlist_a.csv", "cutlist_b.csv", "cutlist_c.csv"})
    add("jonas", "cut lists", [list](const BookCall& call) { return RunCutListAdd(call, {ScenarioFile(list), {}}, {}); });
  return steps;
}

}  // namespace

std::filesystem::path DemoHome(std::filesystem::path home) {
  home += "-demo";
  return home;
}

void MakeDemo(const std::filesystem::path& home, const std::function<void(int done, int all, const std::string& words)>& tell) {
  const std::vector<Step> steps = StepsFor(home);
  const int all = static_cast<int>(steps.size());
  for (int i = 0; i < all; ++i) {
    const Step& step = steps[static_cast<std::size_t>(i)];
    tell(i, all, step.words);
    std::ostringstream out, err;
    if (step.run(out, err) != 0) throw std::runtime_error(step.words + ": " + err.str());
  }
  tell(all, all, "ready");
}

}  // namespace heatkeep::command
