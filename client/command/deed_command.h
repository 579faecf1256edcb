// A command that is one deed or one list of the book, said in a few lines: its words, what each becomes in the deed's body,
// and what is answered. Every deed takes --true-at, --device and --json besides; every list --json.
//
// Exit as the other commands on a book. A word that cannot be read is refused (2) before the book is asked.
#pragma once

#include <CLI/CLI.hpp>
#include <functional>
#include <map>
#include <string>
#include <vector>

#include "client/command/with_book.h"
#include "client/gateway/stock_deeds.h"

namespace heatkeep::command {

// Registers what a parsed command will do.
using Later = std::function<void(std::function<int(const BookCall&)>)>;

enum class WordKind { Text, Texts, Length, Mass, Count, Date, Yes, Section, PerKg, File };

// `name` as CLI11 has it: "tag" (a place in line) or "--place". `key` in the body.
struct DeedWord {
  std::string name, key, help;
  WordKind kind = WordKind::Text;
  bool required = true;
  std::vector<std::string> choices = {};  // where there is a fixed set
};

using DeedMethod = Json (StockDeeds::*)(const RequestNumber&, const Json&);

struct DeedWords {
  std::string verb, help, example;  // example: what follows "heatkeep NOUN VERB"
  DeedMethod method;
  std::vector<DeedWord> words;
  std::string says;                      // {..} from the answer, lengths in mm, masses in kg; [..] only where its {..} says something
  std::function<Json(Json)> shape = {};  // the body as the deed takes it, where that is not flat
  std::function<Json(Connection&, const Json&)> preview = {};  // what it would do, from the same body, changing nothing: adds --preview,
                                                               // which needs no option but its own; "words" of the answer is said
};

// A value as people read it: keys ending in _nm in mm, in _g in kg, in cents with two decimals.
std::string InWords(const std::string& key, const Json& value);

void AddDeed(CLI::App& noun, const Later& later, const DeedWords& deed);

// A list of a view: columns to show, in this order; `only` (may be empty) is the column an optional word picks. Where the list has nothing
// of that word, `none` is said of it if the view `known` has it in the same column, and else it is refused: `expected` says what it should
// be.
struct ListWords {
  std::string verb, help, view, order;
  std::vector<std::string> columns;
  std::string only = {};
  std::map<std::string, std::string> said = {};  // how a column is said that does not speak for itself: "lifted by {}"; 0 is not said
  std::string known = {}, expected = {}, none = {};
};
void AddList(CLI::App& noun, const Later& later, const ListWords& list);

// The noun of this name; made where it is new.
CLI::App& Noun(CLI::App& root, const std::string& name, const std::string& help);

// All deeds of the stock side and their lists.
void AddDoorDeeds(CLI::App& root, const Later& later);
void AddRackDeeds(CLI::App& root, const Later& later);
void AddStopDeeds(CLI::App& root, const Later& later);
void AddMendingDeeds(CLI::App& root, const Later& later);
void AddPieceDeeds(CLI::App& root, const Later& later);

}  // namespace heatkeep::command
