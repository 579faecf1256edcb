// heatkeep report stock|drops|yield|unused|count|buy|scrap: the lists that the owner, the planner and the clerk print, each a view
// of the book, read row by row and shown as PDF, XLSX, CSV or JSON. Exit as the other commands on a book; 130 where a person stopped it.
#pragma once

#include <CLI/CLI.hpp>
#include <functional>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "client/command/deed_command.h"
#include "client/command/paper_files.h"
#include "reports/list_report.h"

namespace heatkeep::command {

// What is asked of a list; what is empty asks for all.
struct ListChoice : PaperOptions {
  std::string grade, section, place, from;
  std::int64_t days = 365;
  bool by_section = false, pieces = false;
};

// The view's rows as they were read, made into those of the list: figures worked out, rows left out or put together.
using ListShape = std::function<std::vector<nlohmann::json>(Connection&, std::vector<nlohmann::json>, const ListChoice&, ListReport&)>;

struct ListSpec {
  std::string verb, help, example;  // what follows "heatkeep report"
  std::string what, view, order, count_of, note;
  std::vector<ListColumn> columns;
  std::vector<std::string> options;  // of "grade", "section", "place", "days", "from", "by-section", "pieces"
  ListShape shape = {};
  std::string reads = {};  // the view's columns that are read, where the others cost much; empty, or each piece: all
};

// What of a row these columns show; what is null or not there is not known.
ListRow CellsOf(const nlohmann::json& row, const std::vector<ListColumn>& columns);

void AddLists(CLI::App& report, const Later& later);

}  // namespace heatkeep::command
