#include "client/command/list_command.h"

#include <memory>

#include "client/command/known_names.h"
#include "client/command/list_specs.h"
#include "client/command/option_values.h"
#include "client/command/paper_files.h"
#include "client/command/work_watch.h"
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
  return is("grade", c.grade) && is("place", c.place) &&
      (c.from.empty() || !row.contains("month") || row["month"].get<std::string>() >= c.from) &&
      (c.section.empty() || !row.contains("section") || ReadSection(row["section"].get<std::string>()) == ReadSection(c.section));
}

std::vector<Json> RowsOf(Connection& connection, const ListSpec& spec, const ListChoice& choice, WorkWatch& watch) {
  std::vector<Json> rows;
  std::size_t read = 0;
  const auto about = watch.Shown() ? static_cast<std::size_t>(AboutHowMany(connection, spec.view)) : 0;
  const auto tell = [&] { watch.Count("rows read", read, about, true); };
  tell();
  EachRowOf(
      connection, spec.view, spec.order, choice.pieces ? std::string() : spec.reads,
      [&](Json&& row) {
        if (Asked(row, choice)) rows.push_back(std::move(row));
        ++read;
        tell();
      },
      tell);
  return rows;
}

int RunList(const BookCall& call, const ListSpec& spec, const ListChoice& choice) {
  return WithBook(call, [&](Connection& connection) {
    RequirePlace(connection, choice.place);
    RequireGrade(connection, choice.grade);
    WorkWatch watch(call.err, choice.progress);
    ListReport list;
    list.what = spec.what;
    list.subject = SubjectOf(choice);
    list.currency = ReadCurrency(connection);
    list.note = spec.note;
    list.count_of = spec.count_of;
    list.columns = spec.columns;
    std::vector<Json> rows = RowsOf(connection, spec, choice, watch);
    if (spec.shape) rows = spec.shape(connection, std::move(rows), choice, list);
    for (Json& row : rows) {
      list.rows.push_back(CellsOf(row, list.columns));
      row = nullptr;  // of a long list both would not be little
    }
    const PrintOptions print = PrintFor(connection, choice, &watch);
    return WritePapers(call, choice,
                       {{".pdf", [&](const std::string& p) { WriteListPdf(p, list, print); }},
                        {".xlsx", [&](const std::string& p) { WriteListXlsx(p, list, print); }},
                        {".csv", [&](const std::string& p) { WriteListCsv(p, list); }},
                        {".json", [&](const std::string& p) { WriteListJson(p, list); }}},
                       [&] { return ListJson(list).dump(2); });
  });
}

}  // namespace

ListRow CellsOf(const Json& row, const std::vector<ListColumn>& columns) {
  ListRow cells;
  cells.reserve(columns.size());
  for (const ListColumn& column : columns) {
    const auto at = row.find(column.key);
    if (at == row.end() || at->is_null()) cells.emplace_back(std::string());
    else if (at->is_number_integer()) cells.emplace_back(at->get<std::int64_t>());
    else cells.emplace_back(at->is_string() ? at->get<std::string>() : at->dump());
  }
  return cells;
}

void AddLists(CLI::App& report, const Later& later) {
  for (const ListSpec& spec : AllLists()) {
    CLI::App* app = report.add_subcommand(spec.verb, spec.help);
    app->footer("example: heatkeep report " + spec.verb + " " + spec.example);
    auto choice = std::make_shared<ListChoice>();
    AddPaperOptions(*app, *choice, "pdf|xlsx|csv|json");
    for (const std::string& option : spec.options) {
      if (option == "grade") app->add_option("--grade", choice->grade, "only this grade");
      if (option == "section") app->add_option("--section", choice->section, "only this section: round 80");
      if (option == "place") app->add_option("place", choice->place, "the place")->required();
      if (option == "days")
        app->add_option("--days", choice->days, "for how long nobody worked on it")->capture_default_str()->check(Between(1, 100'000));
      if (option == "from") app->add_option("--from", choice->from, "the first month: 2026-01");
      if (option == "by-section") app->add_flag("--by-section", choice->by_section, "each section and grade by itself");
      if (option == "pieces") app->add_flag("--pieces", choice->pieces, "each piece by itself, drawn to scale");
    }
    app->callback([later, &spec, choice] { later([&spec, choice](const BookCall& call) { return RunList(call, spec, *choice); }); });
  }
}

}  // namespace heatkeep::command
