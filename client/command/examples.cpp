#include "client/command/examples.h"

#include <CLI/CLI.hpp>
#include <array>
#include <sstream>
#include <string>
#include <vector>

#include "client/command/command_page.h"

namespace heatkeep::command {
namespace {

struct Example {
  const char* command;
  const char* rest;  // what follows it
};

constexpr std::array kExamples{
    Example{"book init", "--home /srv/bars"},
    Example{"book start", "--home /srv/bars"},
    Example{"book stop", "--home /srv/bars"},
    Example{"book status", "--json"},
    Example{"book verify", "--json"},
    Example{"book migrate", "--check"},
    Example{"book seal", ""},
    Example{"book backup", "/backup/bars-2026-03-02.tar"},
    Example{"book restore", "/backup/bars-2026-03-02.tar --home /srv/bars"},
    Example{"book person add", "ilse --role clerk --role saw"},
    Example{"book person list", ""},
    Example{"tag check", "A000001D"},
    Example{"ship", "26-1184/10=4 26-1184/20=2 --note D-2041 --customer \"Drewe Conveyors\""},
    Example{"receive", "note-20418.xlsx --sheet Monday"},
    Example{"opening", "rack.csv --leave-out-bad"},
    Example{"certificate add", "documents.csv"},
    Example{"certificate file", "documents.csv"},
    Example{"certificate replace", "corrected.csv --reason \"Mo was misprinted\""},
    Example{"certificate show", "M26/2201 --issuer Vandrek"},
    Example{"certificate check", "M26/2201 --method rounding"},
    Example{"grades add", "grades.csv"},
    Example{"shop set", "shop.json"},
    Example{"shop sign", "standins.json"},
    Example{"cutlist add", "monday.csv --name monday"},
    Example{"cutlist list", "--json"},
    Example{"look", "monday.xlsx --as cuts --rows 5"},
    Example{"stock", "--grade 42CrMo4 --section \"round 80\""},
    Example{"conflict list", "--json"},
    Example{"conflict close", "3 --decision \"measured again, in order\" --free"},
    Example{"allocate", "monday --saw 1 --saw 2 --aim drops-first --buy 6000mm"},
    Example{"plan show", "1 --why"},
    Example{"plan cancel", "1 --reason \"order put off\""},
    Example{"plan list", "--json"},
    Example{"pull", "A000001D --saw 1 --plan 1 --heat-read 3317"},
    Example{"report sheet", "1 --to sheet.pdf --to sheet.xlsx"},
    Example{"report trace", "heat 47-0783 --mill Vandrek --to trace.pdf"},
    Example{"report balance", "47-0783 --mill Vandrek --to balance.pdf"},
    Example{"simulate", "--seed 3 --lines 1000 --policy plain --policy drops-first --out year"},
};

// An example behind a description ("free what has lapsed: heatkeep saw lapse") is said once, in the last lines of the help.
void SetApart(CLI::App& app) {
  const std::string about = app.get_description(), more = app.get_footer();
  if (const std::size_t at = about.find(": heatkeep "); at != std::string::npos) {
    app.description(about.substr(0, at));
    app.footer("example: " + about.substr(at + 2) + (more.empty() ? "" : "\n" + more));
  }
  for (CLI::App* child : app.get_subcommands([](CLI::App*) { return true; })) SetApart(*child);
}

// A noun shows what its first command shows.
std::string ShowByCommands(CLI::App& app) {
  std::string first;
  for (CLI::App* child : app.get_subcommands([](CLI::App* one) { return !one->get_group().empty(); })) {
    const std::string theirs = ShowByCommands(*child);
    if (first.empty()) first = theirs;
  }
  if (first.empty()) {
    const std::vector<std::string> own = PageOf(app).examples;
    return own.empty() ? "" : own.front();
  }
  if (app.get_footer().empty()) app.footer("example: " + first);
  return first;
}

}  // namespace

void AddExamples(CLI::App& root) {
  for (const Example& example : kExamples) {
    CLI::App* app = &root;
    std::istringstream words(example.command);
    for (std::string word; words >> word;) app = app->get_subcommand(word);
    const std::string rest = example.rest;
    app->footer("example: heatkeep " + std::string(example.command) + (rest.empty() ? "" : " " + rest));
  }
  SetApart(root);
  ShowByCommands(root);
}

}  // namespace heatkeep::command
