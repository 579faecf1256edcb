#include "client/command/deed_command.h"

#include <algorithm>
#include <map>
#include <memory>
#include <ostream>

#include "client/command/option_values.h"
#include "client/gateway/read_rows.h"
#include "client/gateway/readings.h"
#include "client/gateway/section_json.h"
#include "client/incoming/base64.h"
#include "client/intake/file_bytes.h"
#include "schema/terms/date_text.h"
#include "schema/terms/length_text.h"
#include "schema/terms/mass_text.h"
#include "schema/terms/number_text.h"
#include "schema/terms/scan.h"

namespace heatkeep::command {
namespace {

// What was typed, or what the code of a label says.
std::string TypedOrScanned(const std::string& key, const std::string& text) {
  if (key == "tag" || key == "tags" || key == "as_tag" || key == "scanned") return TagOfScan(text);
  return key == "place" ? PlaceOfScan(text) : text;
}

Json ValueOf(const DeedWord& word, std::vector<std::string> said) {
  try {
    for (std::string& text : said) text = TypedOrScanned(word.key, text);
    switch (word.kind) {
      case WordKind::Texts: return said;
      case WordKind::Yes: return true;
      case WordKind::Text: return said.front();
      case WordKind::Length: return ReadLength(said.front()).nm;
      case WordKind::Mass: return ReadMass(said.front()).g;
      case WordKind::Count: return ReadWhole(said.front(), 0, 1'000'000'000);
      case WordKind::Date: return ReadIsoDate(said.front());
      case WordKind::Section: return SectionJson(ReadSection(said.front()));
      case WordKind::PerKg: return CentsPerTonne({ReadScaled(said.front(), 2)});
      case WordKind::File: return incoming::Base64(intake::FileBytes(said.front()));
    }
  } catch (const BadText& bad) { throw BadText(word.name + ": " + bad.Wrong(), bad.Expected()); }
  return nullptr;
}

bool IsMoney(const std::string& key) { return key == "cents" || key.ends_with("_cents") || key.starts_with("cents_per_"); }

bool SaysNothing(const Json& value) { return value.is_null() || (value.is_array() && value.empty()); }

std::string Filled(const std::string& says, const Json& answer) {
  if (const std::size_t from = says.find('['), to = says.find(']'); from < to && to != std::string::npos) {
    const std::size_t key = says.find('{', from) + 1;
    const bool shown = !SaysNothing(answer.value(says.substr(key, says.find('}', key) - key), Json()));
    return Filled(says.substr(0, from) + (shown ? says.substr(from + 1, to - from - 1) : "") + says.substr(to + 1), answer);
  }
  std::string text;
  for (std::size_t at = 0; at < says.size();) {
    const std::size_t open = says.find('{', at), close = says.find('}', open == std::string::npos ? at : open);
    if (open == std::string::npos) return text + says.substr(at);
    const std::string key = says.substr(open + 1, close - open - 1);
    const Json value = answer.value(key, Json());
    text += says.substr(at, open - at) + InWords(key, value);
    at = close + 1;
    if (value != 1 || says.compare(at, 1, " ") != 0) continue;  // "1 pieces" is "1 piece"; "is", "was" and "has" stay
    const std::size_t end = std::min(says.find_first_not_of("abcdefghijklmnopqrstuvwxyz", at + 1), says.size());
    text += says.substr(at, end - at - (end - at > 4 && says[end - 1] == 's' ? 1 : 0));
    at = end;
  }
  return text;
}

const char* TakesOf(WordKind kind) {
  switch (kind) {
    case WordKind::Text:
    case WordKind::Texts:
    case WordKind::Yes: return "TEXT";
    case WordKind::Length: return "LENGTH";
    case WordKind::Mass: return "MASS";
    case WordKind::Count: return "NUMBER";
    case WordKind::Date: return "DATE";
    case WordKind::Section: return "SECTION";
    case WordKind::PerKg: return "MONEY";
    case WordKind::File: return kScanFile;
  }
  return "TEXT";
}

// What an example says where a list is of one thing: what the demo has of that name.
std::string SampleOf(const std::string& column) {
  static const std::map<std::string, std::string> samples{{"place", "B3-1"},
                                                          {"note", "\"V 20418\""},
                                                          {"bundle", "S-12"},
                                                          {"number", "M26/2201"},
                                                          {"customer", "\"Drewe Conveyors\""},
                                                          {"owner", "\"Ister Marine\""},
                                                          {"heat", "47-0783"},
                                                          {"order_no", "P26-104"},
                                                          {"ticket", "W-4471"},
                                                          {"grade", "42CrMo4"}};
  const auto at = samples.find(column);
  return at == samples.end() ? "A000001D" : at->second;
}

std::string AsSaid(const ListWords& list, const std::string& column, std::string words) {
  const auto said = list.said.find(column);
  if (said == list.said.end()) return words;
  std::string all = said->second;
  return all.replace(all.find("{}"), 2, words);
}

struct Said {
  std::vector<std::vector<std::string>> words;  // one list a word of the command; a flag says "yes"
  std::string true_at, device;
  bool json = false, preview = false;
};

}  // namespace

std::string InWords(const std::string& key, const Json& value) {
  if (value.is_null()) return "-";
  if (value.is_number_integer() && key.ends_with("_nm")) return WriteMm({value.get<std::int64_t>()}, Rounding::Down) + " mm";
  if (value.is_number_integer() && key.ends_with("_g")) return WriteKg({value.get<std::int64_t>()}) + " kg";
  if (value.is_number_integer() && IsMoney(key)) return WriteScaled(value.get<std::int64_t>(), 2);
  if (value.is_boolean()) return value.get<bool>() ? "yes" : "no";
  if (value.is_array()) {
    std::string all;
    for (const Json& one : value)
      all += (all.empty() ? "" : ", ") + (one.is_object() && one.contains("tag") ? one["tag"].get<std::string>() : InWords({}, one));
    return all.empty() ? "none" : all;
  }
  return value.is_string() ? value.get<std::string>() : value.dump();
}

CLI::App& Noun(CLI::App& root, const std::string& name, const std::string& help) {
  for (CLI::App* known : root.get_subcommands([&](CLI::App* app) { return app->get_name() == name; })) return *known;
  return *root.add_subcommand(name, help)->require_subcommand(1);
}

void AddDeed(CLI::App& noun, const Later& later, const DeedWords& deed) {
  CLI::App* app = noun.add_subcommand(deed.verb, deed.help);
  // a deed of the root itself has no noun: heatkeep putaway
  app->footer("example: heatkeep " + (noun.get_parent() ? noun.get_name() + " " : "") + deed.verb + " " + deed.example);
  auto said = std::make_shared<Said>();
  said->words.resize(deed.words.size());
  for (std::size_t i = 0; i < deed.words.size(); ++i) {
    const DeedWord& w = deed.words[i];
    CLI::Option* option = w.kind == WordKind::Yes
        ? app->add_flag(w.name, w.help)->each([said, i](const std::string&) { said->words[i] = {"yes"}; })
        : w.kind == WordKind::Texts ? app->add_option(w.name, said->words[i], w.help)
                                    : app->add_option_function<std::string>(
                                          w.name, [said, i](const std::string& word) { said->words[i] = {word}; }, w.help);
    if (w.kind != WordKind::Yes) option->type_name(TakesOf(w.kind));
    if (!w.choices.empty()) option->check(OneOf(w.choices));
    // an option that a preview can do without is missed when the deed is done
    if (w.required && w.kind != WordKind::Yes && !(deed.preview && w.name.starts_with("--") && w.key == "reason")) option->required();
  }
  if (deed.preview) app->add_flag("--preview", said->preview, "say what it would stop, and change nothing");
  app->add_option("--true-at", said->true_at, "when it really happened, if earlier: 2026-03-04T22:15");
  app->add_option("--device", said->device, "where it is entered");
  app->add_flag("--json", said->json, "the answer as JSON");
  app->callback([later, said, deed] {
    later([said, deed](const BookCall& call) {
      return WithBook(call, [&](Connection& connection) {
        Json body = Json::object();
        for (std::size_t i = 0; i < deed.words.size(); ++i)
          if (!said->words[i].empty()) body[deed.words[i].key] = ValueOf(deed.words[i], said->words[i]);
        if (deed.shape) body = deed.shape(std::move(body));
        if (said->preview) {
          const Json answer = deed.preview(connection, body);
          call.out << (said->json ? answer.dump(2) : "it would stop: " + answer["words"].get<std::string>()) << '\n';
          return 0;
        }
        for (const DeedWord& w : deed.words)
          if (deed.preview && w.required && !body.contains(w.key))
            throw BadText(w.name + " is missing", w.help + ", or --preview to see what it would stop");
        if (body.is_object() && !said->true_at.empty()) body["true_at"] = ReadIsoDateOrTime(said->true_at);
        if (body.is_object() && !said->device.empty()) body["device"] = said->device;
        StockDeeds deeds(connection);
        const Json answer = (deeds.*deed.method)(NewRequest(), body);
        const bool refused = answer.is_object() && answer.contains("refused");  // the book remembers it
        if (said->json) call.out << answer.dump(2) << '\n';
        else if (!refused) call.out << Filled(deed.says, answer) << '\n';
        if (refused) {
          call.err << "heatkeep: " << answer["words"].get<std::string>() << '\n';
          return 1;
        }
        if (answer.contains("warning") && !answer["warning"].is_null())
          call.err << "heatkeep: " << answer["warning"].get<std::string>() << '\n';
        return 0;
      });
    });
  });
}

void AddList(CLI::App& noun, const Later& later, const ListWords& list) {
  CLI::App* app = noun.add_subcommand(list.verb, list.help);
  app->footer("example: heatkeep " + noun.get_name() + " " + list.verb + (list.only.empty() ? "" : " " + SampleOf(list.only)) + " --json");
  auto only = std::make_shared<std::string>();
  auto json = std::make_shared<bool>(false);
  if (!list.only.empty()) app->add_option(list.only, *only, "only this one");
  app->add_flag("--json", *json, "as JSON, every column");
  app->callback([later, list, only, json] {
    later([list, only, json](const BookCall& call) {
      return WithBook(call, [&](Connection& connection) {
        const Json rows = ReadRows(connection, list.view, list.order, only->empty() ? "" : list.only, *only);
        const bool picked = !only->empty() && !list.known.empty();
        if (picked && rows.empty() && ReadRows(connection, list.known, list.only, list.only, *only).empty())
          throw BadText(Quoted(*only) + " is not in the book", list.expected);
        if (*json) call.out << rows.dump(2) << '\n';
        else if (rows.empty() && picked) call.out << list.none << ' ' << *only << '\n';
        else if (rows.empty()) call.out << "none" << (only->empty() ? "" : " of " + Quoted(*only) + "; without it all are listed") << '\n';
        if (*json) return 0;
        const bool money = std::any_of(list.columns.begin(), list.columns.end(), IsMoney);
        const std::string currency = money ? ReadCurrency(connection) : "";
        for (const Json& row : rows) {
          std::string line;
          for (const std::string& column : list.columns)
            if (row.contains(column) && !row[column].is_null() && !(list.said.contains(column) && row[column] == 0))
              line += (line.empty() ? "" : "  ") + AsSaid(list, column, InWords(column, row[column])) +
                  (IsMoney(column) && !currency.empty() ? " " + currency : "");
          call.out << line << '\n';
        }
        return 0;
      });
    });
  });
}

}  // namespace heatkeep::command
