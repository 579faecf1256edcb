#include "client/command/cut_command.h"

#include <algorithm>
#include <map>
#include <ostream>

#include "client/command/book_command.h"
#include "client/gateway/cut_body.h"
#include "client/gateway/deeds.h"
#include "client/gateway/readings.h"
#include "client/gateway/saw_deeds.h"
#include "schema/terms/bad_text.h"
#include "schema/terms/counted.h"
#include "schema/terms/date_text.h"
#include "schema/terms/length_text.h"
#include "schema/terms/number_text.h"
#include "schema/terms/scan.h"
#include "schema/terms/tag.h"

namespace heatkeep::command {
namespace {

// What the person said differently of the piece. Throws BadText.
CutTold ToldOf(const CutOptions& options, const DoneCounts& done) {
  CutTold told{.done = done,
               .measured_with = options.measured_with,
               .last_uncut = options.last_uncut,
               .scrap = options.scrap,
               .reason = options.reason};
  if (!options.measured.empty()) told.measured = ReadLength(options.measured);
  if (!options.rest.empty()) told.rest = ReadLength(options.rest);
  if (!options.place.empty()) told.place = PlaceOfScan(options.place);
  return told;
}

// "ORDER/LINE=COUNT". Throws BadText.
std::pair<std::string, int> ReadDone(const std::string& text) {
  const auto equals = text.rfind('=');
  if (equals == std::string::npos || text.find('/') > equals)
    throw BadText(Quoted(text) + " does not name a line and a count", "ORDER/LINE=COUNT");
  return {text.substr(0, equals), static_cast<int>(ReadWhole(text.substr(equals + 1), 0, 1'000'000))};
}

void SayCut(std::ostream& out, const SheetBlock& block, const CutBody& cut, const Json& answer) {
  out << block.tag << ": " << answer["good"] << (answer["good"] == 1 ? " piece" : " pieces");
  if (!answer["drop_tag"].is_null())
    out << ", drop " << answer["drop_tag"].get<std::string>() << " (" << WriteMm(cut.rest, Rounding::Down) << " mm) to "
        << cut.body["left"]["place"].get<std::string>();
  else if (cut.rest.nm == 0) out << ", nothing left";
  if (!cut.body["strokes"].empty() && cut.body["strokes"].back()["kerf_nm"] == 0)
    out << (cut.body["strokes"].size() == 1 && answer["good"] == 1 ? "; issued whole, no cut" : "; no cut for the last one");
  out << '\n';
  if (!answer["stop"].is_null()) out << answer["stop"].get<std::string>() << '\n';
  for (const Json& words : answer.value("conflicts", Json::array()))
    out << "a person decides (heatkeep conflict list): " << words.get<std::string>() << '\n';
  out.flush();  // what is said is booked, whatever happens next
}

// The words of the person, checked against the sheet before anything is booked. Throws BadText, invalid_argument.
DoneCounts DoneOf(const Sheet& sheet, const CutOptions& options, const std::string& tag) {
  if (tag.empty() && !(options.done.empty() && options.measured.empty() && options.rest.empty() && !options.last_uncut))
    throw std::invalid_argument("what differs from the plan belongs to one piece; expected --tag");
  if (!options.measured.empty()) ReadLength(options.measured);
  if (!options.rest.empty()) ReadLength(options.rest);
  DoneCounts done;
  for (const std::string& text : options.done) {
    const auto [line, count] = ReadDone(text);
    const bool cut_here = std::any_of(sheet.blocks.begin(), sheet.blocks.end(), [&, name = line](const SheetBlock& b) {
      return b.tag == tag && std::any_of(b.cuts.begin(), b.cuts.end(), [&](const SheetCut& c) { return c.order + "/" + c.line == name; });
    });
    if (!cut_here) throw std::invalid_argument("--done " + text + ": nothing of " + line + " is cut from " + tag + " in this plan");
    if (!done.emplace(line, count).second) throw std::invalid_argument("--done " + text + ": " + line + " is named twice");
  }
  return done;
}

// "TAG=LAST4" each; throws BadText.
std::map<std::string, std::string> HeatsRead(const std::vector<std::string>& words) {
  std::map<std::string, std::string> read;
  for (const std::string& word : words) {
    const auto at = word.find('=');
    if (at == std::string::npos || at + 1 == word.size())
      throw BadText("--heat-read: " + Quoted(word) + " names no piece and heat", "TAG=LAST4");
    read[TagForm(word.substr(0, at))] = word.substr(at + 1);
  }
  return read;
}

// The words for one bar said of no other.
CutOptions WithoutDeviations(CutOptions options) {
  options.measured.clear();
  options.rest.clear();
  options.scrap = false;
  return options;
}

// What is booked in one deed: a piece by itself, or the bars of a bundle; in the order of the sheet. A piece that is asked for by its tag
// alone is cut by itself.
using Blocks = std::vector<const SheetBlock*>;
std::vector<Blocks> DeedsOf(const Sheet& sheet, const std::string& tag, int bundle) {
  std::vector<Blocks> deeds;
  std::map<int, std::size_t> at;
  bool has_tag = tag.empty() || bundle == 0;
  for (const SheetBlock& block : sheet.blocks) {
    if (bundle > 0 ? block.bundle_no != bundle : !tag.empty() && block.tag != tag) continue;
    has_tag = has_tag || block.tag == tag;
    const bool alone = block.bundle < 2 || (bundle == 0 && !tag.empty());
    if (!alone && at.contains(block.bundle_no)) {
      deeds[at[block.bundle_no]].push_back(&block);
      continue;
    }
    if (!alone) at[block.bundle_no] = deeds.size();
    deeds.push_back({&block});
  }
  return has_tag ? deeds : std::vector<Blocks>{};
}

bool Refused(std::ostream& err, const Json& answer) {
  if (!answer.contains("refused")) return false;
  err << "refused: " << answer["words"].get<std::string>() << '\n';
  return true;
}

}  // namespace

int RunPull(const BookCall& call, const std::string& tag, const std::string& saw, std::int64_t plan, const std::string& heat_read) {
  return WithBook(call, [&](Connection& connection) {
    const Json answer = Deeds(connection).Pull(NewRequest(), TagOfScan(tag), saw, plan, heat_read);
    if (Refused(call.err, answer)) return 1;
    call.out << answer["tag"].get<std::string>() << " is at saw " << saw << ", for plan " << answer["plan"] << '\n';
    return 0;
  });
}

int RunCutRecord(const BookCall& call, const CutOptions& options) {
  return WithBook(call, [&](Connection& connection) {
    const std::optional<Sheet> sheet = ReadSheet(connection, options.plan);
    if (!sheet) throw std::invalid_argument("there is no plan " + std::to_string(options.plan) + "; `heatkeep plan list` names them");
    const std::string tag = options.tag.empty() ? "" : TagForm(TagOfScan(options.tag));
    bool met = false, refused = false;
    for (const std::string& dropped : ReadDropped(connection, options.plan)) {
      if (!tag.empty() && dropped != tag) continue;
      met = refused = true;
      call.err << "not cut: " << dropped << ", it is no longer promised to plan " << options.plan << '\n';
    }
    const DoneCounts done = met && !tag.empty() ? DoneCounts{} : DoneOf(*sheet, options, tag);
    const std::map<std::string, std::string> read = HeatsRead(options.heats_read);
    Deeds deeds(connection);
    SawDeeds saw_deeds(connection);
    Json answers = Json::array();
    const auto read_of = [&](const SheetBlock& block) { return read.contains(block.tag) ? read.at(block.tag) : std::string(); };
    const auto as_cut = [&](const SheetBlock& block) {
      return tag.empty() || block.tag == tag ? CutBodyOf(block, ToldOf(options, done), sheet->saw)
                                             : CutBodyOf(block, ToldOf(WithoutDeviations(options), {}), sheet->saw);
    };
    const auto record = [&](const SheetBlock& block) {
      if (block.state == "promised" && Refused(call.err, deeds.Pull(NewRequest(), block.tag, sheet->saw, options.plan, read_of(block))))
        return false;
      const CutBody cut = as_cut(block);
      answers.push_back(deeds.RecordCut(NewRequest(), cut.body));
      if (!options.json) SayCut(call.out, block, cut, answers.back());
      return true;
    };
    const auto record_bundle = [&](const Blocks& bars) {
      Json made{{"saw", sheet->saw}, {"plan", options.plan}, {"tags", Json::array()}, {"heats_read", Json::object()}};
      Json body{{"saw", sheet->saw}, {"finish", true}, {"bars", Json::array()}};
      std::map<std::string, CutBody> cuts;
      for (const SheetBlock* bar : bars) {
        made["tags"].push_back(bar->tag);
        if (const std::string heat = read_of(*bar); !heat.empty()) made["heats_read"][bar->tag] = heat;
        body["bars"].push_back(cuts.emplace(bar->tag, as_cut(*bar)).first->second.body);
      }
      const bool fetched = std::all_of(bars.begin(), bars.end(), [](const SheetBlock* b) { return b->made_up; });
      if (!fetched && Refused(call.err, saw_deeds.MakeUpBundle(NewRequest(), made))) return false;
      answers.push_back(saw_deeds.RecordBundle(NewRequest(), body));
      if (options.json) return true;
      call.out << "bundle " << bars.front()->bundle_no << ": " << bars.size() << " bars in "
               << Counted(answers.back()["strokes"].get<int>(), "stroke") << "\n";
      for (const SheetBlock* bar : bars)
        for (const Json& answer : answers.back()["bars"])
          if (answer["tag"] == bar->tag) SayCut(call.out, *bar, cuts.at(bar->tag), answer);
      return true;
    };
    int failed = 0;
    for (const Blocks& bars : DeedsOf(*sheet, tag, options.bundle)) {
      met = true;
      if (bars.front()->state == "done") continue;
      try {
        refused = !(bars.size() > 1 ? record_bundle(bars) : record(*bars.front())) || refused;
      } catch (const DbError& error) {
        failed = ExplainBookFailure(error, call.err);
        if (error.kind != DbError::Kind::Refused && error.kind != DbError::Kind::Stale) break;
      }
    }
    if (!met && options.bundle > 0)
      throw std::invalid_argument("plan " + std::to_string(options.plan) + " has no bundle " + std::to_string(options.bundle) +
                                  (tag.empty() ? "" : " with " + tag));
    if (!met) throw std::invalid_argument("plan " + std::to_string(options.plan) + " has no piece " + tag);
    if (options.json) call.out << answers.dump(2) << '\n';
    else if (answers.empty() && !refused && failed == 0) call.out << "all of it is booked already; nothing was changed\n";
    return failed != 0 ? failed : refused ? 1 : 0;
  });
}

int RunShip(const BookCall& call, const ShipOptions& options) {
  return WithBook(call, [&](Connection& connection) {
    Json shipment = {{"note", options.note}, {"customer", options.customer}, {"lines", Json::array()}};
    if (!options.true_at.empty()) shipment["true_at"] = ReadIsoDateOrTime(options.true_at);
    if (!options.device.empty()) shipment["device"] = options.device;
    for (const std::string& text : options.lines) {
      const auto first = text.find('='), second = first == std::string::npos ? first : text.find('=', first + 1);
      const auto [name, count] = ReadDone(text.substr(0, second));
      const auto slash = name.rfind('/');
      shipment["lines"].push_back({{"order", name.substr(0, slash)}, {"line", name.substr(slash + 1)}, {"count", count}});
      for (std::size_t at = second; at != std::string::npos; at = text.find(',', at + 1))
        shipment["lines"].back()["heats"].push_back(text.substr(at + 1, text.find(',', at + 1) - at - 1));
    }
    const Json answer = Deeds(connection).Ship(NewRequest(), shipment);
    for (const Json& l : answer["lines"])
      call.out << "shipped " << l["count"] << " of " << l["order"].get<std::string>() << "/" << l["line"].get<std::string>() << ", heat "
               << (l["heat"].is_null() ? "unknown" : l["heat"].get<std::string>()) << '\n';
    return 0;
  });
}

}  // namespace heatkeep::command
