// What stops metal and lets it go on: put away, quarantine, release, holds.
#include "client/command/deed_command.h"
#include "client/gateway/records.h"

namespace heatkeep::command {

void AddStopDeeds(CLI::App& root, const Later& later) {
  const DeedWord tag{"tag", "tag", "the tag"}, reason{"--reason", "reason", "why"};
  AddDeed(root, later,
          {"putaway",
           "put a piece in a place",
           "A000001D B1-1",
           &StockDeeds::PutAway,
           {tag, {"place", "place", "the place"}},
           "{tag} is in {place}"});
  AddDeed(root, later,
          {"quarantine",
           "stop a piece",
           "A000001D --reason \"rust at one end\" --place QUAR",
           &StockDeeds::Quarantine,
           {tag, reason, {"--place", "place", "the place of kind quarantine it is put in", WordKind::Text, false}},
           "{tag} is in quarantine[, in {place}][; {plans}]"});
  AddDeed(root, later,
          {"release",
           "free a piece, wholly or for less",
           "A000001D --evidence \"measured, no crack\" --not-for 3.1",
           &StockDeeds::Release,
           {tag,
            {"--evidence", "evidence", "what shows that it may be used"},
            {"--not-for", "not_for", "the weakest papers it may no longer serve", WordKind::Text, false, {"2.1", "2.2", "3.1", "3.2"}}},
           "{tag} is released[, {limits}]"});

  CLI::App& hold = Noun(root, "hold", "hold a heat, a lot, a piece, a certificate or a receipt, or lift a hold");
  for (const std::string scope : {"heat", "lot", "piece", "certificate", "receipt"}) {
    const bool of = scope == "certificate" || scope == "receipt";
    std::vector<DeedWord> words{{"ref", "ref", scope == "heat" ? "the heat number" : of ? "its number" : "the tag"}, reason};
    if (scope == "heat") words.push_back({"--mill", "mill", "only of this mill", WordKind::Text, false});
    if (of) words.push_back({"--of", "mill", "its issuer or supplier"});
    AddDeed(
        hold, later,
        {scope, "hold a " + scope + " from now on",
         (scope == "heat" ? "M2208"
              : of        ? "88-1203 --of Vandrek"
                          : "A000001D") +
             std::string(" --reason \"letter of the mill\""),
         &StockDeeds::PlaceHold, words,
         "hold {hold_id}: {pieces} pieces stopped[; AT A SAW NOW: {at_saw}][; {plans}][; it looks like heat {look_alikes}, which is NOT held]",
         [scope](Json body) {
           body["scope"] = scope;
           return body;
         },
         [](Connection& connection, const Json& body) {
           return PreviewHold(connection, body["scope"], body["ref"], body.value("mill", ""));
         }});
  }
  AddDeed(hold, later,
          {"lift",
           "lift a hold by its number",
           "3 --evidence \"second analysis\"",
           &StockDeeds::LiftHold,
           {{"hold", "hold", "its number", WordKind::Count}, {"--evidence", "evidence", "what shows that it may be used"}},
           "hold {hold_id} is lifted"});
}

}  // namespace heatkeep::command
