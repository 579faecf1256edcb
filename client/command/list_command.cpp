#include "client/command/list_command.h"

#include <memory>

#include "client/command/list_specs.h"
#include "client/command/paper_files.h"
#include "client/gateway/read_rows.h"
#include "client/gateway/readings.h"
#include "schema/terms/section.h"

namespace heatkeep::command {
namespace {

using Json = nlohmann::json;

// "round 80, 42CrMo4": what was asked for.
std::string SubjectOf(const ListChoice& c) {
  std::string words;
  const auto add = [&](const std::string& word) { words += (words.empty() || word.empty() ? "" : ", ") + word; };
  add(c.section);
  add(c.grade);
  if (!c.place.empty()) add("place " + c.place);
  if (!c.from.empty()) add("from " + c.from);
  return words.empty() ? "all" : words;
}

bool Asked(const Json& row, const ListChoice& c) {
  const auto is = [&](const char* key, const std::string& wanted) { return wanted.empty() || !row.contains(key) || row[key] == wanted; };
  return is("grade", c.grade) && is("place", c.place) && (c.from.empty() || !row.contains("month") || row["month"].get<std::string>() >= c.from) &&
         (c.section.empty() || !row.contains("section") || ReadSection(row["section"].get<std::string>()) == ReadSection(c.section));
}

Cell CellOf(const Json& row, const std::string& key) {
  const auto at = row.find(key);
  if (at == row.end() || at->is_null()) return std::string();
  if (at->is_number_integer()) return at->get<std::int64_t>();
  return at->is_string() ? at->get<std::string>() : at->dump();
}

int RunList(const BookCall& call, const ListSpec& spec, const ListChoice& choice) {
  return WithBook(call, [&](Connection& connection) {
    std::vector<Json> rows;
    for (Json& row : ReadRows(connection, spec.view, spec.order))
      if (Asked(row, choice)) rows.push_back(std::move(row));
    ListReport list;
    list.what = spec.what;
    list.subject = SubjectOf(choice);
    list.currency = ReadCurrency(connection);
    list.note = spec.note;
    list.count_of = spec.count_of;
    list.columns = spec.columns;
    if (spec.shape) rows = spec.shape(connection, std::move(rows), choice, list);
    for (const Json& row : rows) {
      ListRow cells;
      for (const ListColumn& column : list.columns) cells.push_back(CellOf(row, column.key));
      list.rows.push_back(std::move(cells));
    }
    const PrintOptions print = PrintFor(connection, choice);
    const auto json = [&] { return ListJson(list).dump(2); };
    return WritePapers(call, choice,
                       {{".pdf", [&](const std::string& p) { WriteListPdf(p, list, print); }},
                        {".xlsx", [&](const std::string& p) { WriteListXlsx(p, list, print); }},
                        {".csv", [&](const std::string& p) { WriteListCsv(p, list); }},
                        {".json", TextWriter(json)}},
                       json);
  });
}

}  // namespace

void AddLists(CLI::App& report, const Later& later) {
  for (const ListSpec& spec : AllLists()) {
    CLI::App* app = report.add_subcommand(spec.verb, spec.help);
    app->footer("example: heatkeep report " + spec.verb + " " + spec.example);
    auto choice = std::make_shared<ListChoice>();
    app->add_option("--to", choice->files, "file.pdf, file.xlsx, file.csv or file.json; may be given several times; none: JSON here")->allow_extra_args(false);
    app->add_flag("--letter", choice->letter, "Letter instead of A4");
    for (const std::string& option : spec.options) {
      if (option == "grade") app->add_option("--grade", choice->grade, "only this grade");
      if (option == "section") app->add_option("--section", choice->section, "only this section: round 80");
      if (option == "place") app->add_option("place", choice->place, "the place")->required();
      if (option == "days") app->add_option("--days", choice->days, "for how long nobody worked on it")->capture_default_str()->check(CLI::Range(1, 100'000));
      if (option == "from") app->add_option("--from", choice->from, "the first month: 2026-01");
      if (option == "by-section") app->add_flag("--by-section", choice->by_section, "each section and grade by itself");
    }
    app->callback([later, &spec, choice] { later([&spec, choice](const BookCall& call) { return RunList(call, spec, *choice); }); });
  }
}

}  // namespace heatkeep::command
