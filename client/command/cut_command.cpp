#include "client/command/cut_command.h"

#include <ostream>

#include "client/command/planned_cut.h"
#include "client/gateway/deeds.h"
#include "client/gateway/readings.h"
#include "schema/terms/length_text.h"

namespace heatkeep::command {
namespace {

// The deed's body for one block: as planned, with what the person said differently.
Json BodyOf(const SheetBlock& block, const CutOptions& options, const DoneCounts& done, const std::string& saw,
            const std::string& came_from) {
  Json body = {{"tag", block.tag}, {"saw", saw}, {"finish", true}, {"strokes", StrokesOf(block, done)}};
  Length start = block.length;
  if (!options.measured.empty()) {
    start = ReadLength(options.measured);
    body["measured_nm"] = start.nm;
  }
  if (!options.reason.empty()) body["reason"] = options.reason;
  const Length rest = RestOf(body["strokes"], start);
  const bool as_planned = done.empty() && start == block.length;
  if (options.scrap || (as_planned && block.fate == LeftFate::Scrap)) {
    body["left"] = {{"fate", "scrap"}};
  } else if (rest.nm > 0) {
    body["left"] = {{"fate", "drop"}, {"place", options.place.empty() ? came_from : options.place}};
    if (!options.rest.empty()) body["left"]["length_nm"] = ReadLength(options.rest).nm;
  } else {
    body["left"] = {{"fate", "none"}};
  }
  return body;
}

void SayCut(std::ostream& out, const SheetBlock& block, const Json& body, const Json& answer) {
  out << block.tag << ": " << answer["good"] << " pieces";
  if (!answer["drop_tag"].is_null()) {
    const Length rest{body["left"].contains("length_nm") ? body["left"]["length_nm"].get<std::int64_t>()
                                                         : RestOf(body["strokes"], block.length).nm};
    out << ", drop " << answer["drop_tag"].get<std::string>() << " (" << WriteMm(rest, Rounding::Down) << " mm) to "
        << body["left"]["place"].get<std::string>();
  }
  out << '\n';
  if (!answer["stop"].is_null()) out << "STOP: " << answer["stop"].get<std::string>() << '\n';
}

bool Refused(std::ostream& err, const Json& answer) {
  if (!answer.contains("refused")) return false;
  err << "refused: " << answer["words"].get<std::string>() << '\n';
  return true;
}

}  // namespace

int RunPull(const BookCall& call, const std::string& tag, const std::string& saw, std::int64_t plan) {
  return WithBook(call, [&](Connection& connection) {
    const Json answer = Deeds(connection).Pull(NewRequest(), tag, saw, plan);
    if (Refused(call.err, answer)) return 1;
    call.out << answer["tag"].get<std::string>() << " is at saw " << saw << ", for plan " << answer["plan"] << '\n';
    return 0;
  });
}

int RunCutRecord(const BookCall& call, const CutOptions& options) {
  return WithBook(call, [&](Connection& connection) {
    const std::optional<Sheet> sheet = ReadSheet(connection, options.plan);
    if (!sheet) throw std::invalid_argument("there is no plan " + std::to_string(options.plan) + "; `heatkeep plan list` names them");
    DoneCounts done;
    for (const std::string& text : options.done) done.insert(ReadDone(text));
    if (options.tag.empty() && !(done.empty() && options.measured.empty() && options.rest.empty()))
      throw std::invalid_argument("what differs from the plan belongs to one piece; expected --tag");
    Deeds deeds(connection);
    Json answers = Json::array();
    bool met = false, refused = false;
    for (const SheetBlock& block : sheet->blocks) {
      if (!options.tag.empty() && block.tag != options.tag) continue;
      met = true;
      if (block.state == "done") continue;
      if (block.state == "promised" && Refused(call.err, deeds.Pull(NewRequest(), block.tag, sheet->saw, options.plan))) {
        refused = true;
        continue;
      }
      const Json body = BodyOf(block, options, done, sheet->saw, block.place);
      answers.push_back(deeds.RecordCut(NewRequest(), body));
      if (!options.json) SayCut(call.out, block, body, answers.back());
    }
    if (!met) throw std::invalid_argument("plan " + std::to_string(options.plan) + " has no piece " + options.tag);
    if (options.json) call.out << answers.dump(2) << '\n';
    else if (answers.empty() && !refused) call.out << "all of it is booked already\n";
    return refused ? 1 : 0;
  });
}

int RunShip(const BookCall& call, const std::string& note, const std::string& customer, const std::vector<std::string>& lines) {
  return WithBook(call, [&](Connection& connection) {
    Json shipment = {{"note", note}, {"customer", customer}, {"lines", Json::array()}};
    for (const std::string& text : lines) {
      const auto [name, count] = ReadDone(text);
      const auto slash = name.rfind('/');
      shipment["lines"].push_back({{"order", name.substr(0, slash)}, {"line", name.substr(slash + 1)}, {"count", count}});
    }
    const Json answer = Deeds(connection).Ship(NewRequest(), shipment);
    for (const Json& l : answer["lines"])
      call.out << "shipped " << l["count"] << " of " << l["order"].get<std::string>() << "/" << l["line"].get<std::string>() << ", heat "
               << (l["heat"].is_null() ? "unknown" : l["heat"].get<std::string>()) << '\n';
    return 0;
  });
}

}  // namespace heatkeep::command
