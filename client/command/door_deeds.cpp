// At the door and about papers: what is expected, what came otherwise, what is awaited.
#include "client/command/deed_command.h"
#include "client/command/option_text.h"
#include "schema/terms/grade_limit.h"

namespace heatkeep::command {
namespace {

// What was typed for `key`, as the book takes a limit: with the figures it is printed with.
void PutBound(Json& row, const std::string& key) {
  if (!row.contains(key)) return;
  const Bound bound = ReadOption("--" + key, row[key].get<std::string>(), [](const std::string& words) { return ReadBound(words); });
  row[key] = bound.millionths;
  row[key + "_places"] = bound.places;
}

}  // namespace

void AddDoorDeeds(CLI::App& root, const Later& later) {
  CLI::App& expected = Noun(root, "expected", "what is ordered and not here yet");
  AddDeed(
      expected, later,
      {"add",
       "a line of a purchase order",
       "P-2641 --line 1 --supplier Vandrek --section \"round 80\" --grade 42CrMo4 --condition +QT --length \"6000 mm\" --quantity 12 --due 2026-12-01",
       &StockDeeds::ExpectDelivery,
       {{"order", "purchase_order", "the purchase order"},
        {"--line", "line", "its line"},
        {"--supplier", "supplier", "who delivers"},
        {"--section", "section", "round 80", WordKind::Section},
        {"--grade", "grade", "designation or number"},
        {"--condition", "condition", "+QT", WordKind::Text, false},
        {"--length", "length_nm", "of a bar", WordKind::Length},
        {"--quantity", "quantity", "how many", WordKind::Count},
        {"--due", "due", "the day", WordKind::Date},
        {"--papers", "papers", "what must come with it", WordKind::Text, false, {"2.1", "2.2", "3.1", "3.2"}}},
       "purchase order {purchase_order} is expected",
       [](Json body) {
         const Json head{{"purchase_order", body["purchase_order"]}, {"supplier", body["supplier"]}};
         body.erase("purchase_order");
         body.erase("supplier");
         Json whole = head;
         whole["lines"] = Json::array({std::move(body)});
         return whole;
       }});
  AddDeed(expected, later,
          {"promise",
           "keep metal that is on its way for a job",
           "P-2641 1 --for 26-1184/10 --bars 2",
           &StockDeeds::PromiseExpected,
           {{"order", "purchase_order", "the purchase order"},
            {"line", "purchase_line", "its line"},
            {"--for", "for", "ORDER/LINE of the cut list"},
            {"--bars", "bars", "how many", WordKind::Count}},
           "{words}",
           [](Json body) {
             const std::string wanted = body["for"];
             const std::size_t slash = wanted.rfind('/');
             if (slash == std::string::npos) throw BadText("--for: " + Quoted(wanted) + " names no line", "ORDER/LINE");
             body.erase("for");
             body["order"] = wanted.substr(0, slash);
             body["line"] = wanted.substr(slash + 1);
             return body;
           }});
  AddList(expected, later,
          {"list",
           "what is on its way",
           "expected",
           "due purchase_order line",
           {"due", "purchase_order", "line", "supplier", "quantity", "section", "grade", "length_nm", "words", "promised"}});

  CLI::App& receipt = Noun(root, "receipt", "what came, and what came otherwise");
  AddDeed(receipt, later,
          {"decide-over",
           "keep or return bars that the slip does not say",
           "\"V 20418\" --supplier Vandrek --line 1 --keep --reason \"used next week\"",
           &StockDeeds::DecideOver,
           {{"note", "note", "the delivery note"},
            {"--supplier", "supplier", "whose"},
            {"--line", "line", "its line"},
            {"--keep", "keep", "they stay; else they go back", WordKind::Yes},
            {"--reason", "reason", "why"}},
           "{bars} bars, kept: {kept}",
           [](Json body) {
             body["keep"] = body.contains("keep");
             return body;
           }});
  AddDeed(receipt, later,
          {"sign-opening",
           "sign the opening balance as planner or as quality",
           "opening.csv",
           &StockDeeds::SignOpening,
           {{"name", "name", "its name"}},
           "{name}: signed by the planner: {planner}, by quality: {quality}"});
  AddList(receipt, later,
          {"list",
           "every line received",
           "receipts",
           "received_at note line",
           {"note", "supplier", "line", "counted", "section", "grade", "heat", "length_nm", "mismatch", "reversed_by", "reversed_words"},
           "note",
           {{"reversed_by", "REVERSED by {}:"}}});
  AddList(receipt, later,
          {"claims", "what to claim of whom, in words", "claims", "supplier note line", {"supplier", "note", "line", "words"}, "note"});

  CLI::App& papers = Noun(root, "papers", "papers that are awaited");
  AddDeed(papers, later,
          {"chase",
           "ask again on a day",
           "Vandrek K3317 --on 2026-12-01 --words \"asked by mail\"",
           &StockDeeds::ChasePapers,
           {{"mill", "mill", "whose heat"},
            {"heat", "heat", "the heat"},
            {"--on", "chase_on", "the day", WordKind::Date},
            {"--words", "words", "who was asked"}},
           "asked for again on {chase_on}: {lots} lots"});
  AddDeed(papers, later,
          {"accept",
           "accept a document the clerk has filed",
           "Vandrek 88-1203",
           &StockDeeds::AcceptDocument,
           {{"issuer", "issuer", "who issued it"}, {"number", "number", "its number"}},
           "document {number} is accepted for {lots} lots"});
  AddDeed(papers, later,
          {"limit",
           "what an analysis of a grade must keep to; many at once by `heatkeep grades limits`",
           "1.4404 C --most 0.030 --source \"EN 10088-3\"",
           &StockDeeds::DefineLimits,
           {{"grade", "grade", "the grade"},
            {"element", "element", "C, Cr, ..."},
            {"--least", "least", "at least, mass % with the figures it is printed with", WordKind::Text, false},
            {"--most", "most", "at most, mass % with the figures it is printed with", WordKind::Text, false},
            {"--source", "source", "where that is said"}},
           "{added} limits added",
           [](Json row) {
             PutBound(row, "least");
             PutBound(row, "most");
             return Json::array({std::move(row)});
           }});
  AddList(papers, later,
          {"awaited",
           "lots that wait, first to be chased first",
           "papers_awaited",
           "chase_on mill heat",
           {"chase_on", "mill", "heat", "grade", "section", "pieces", "length_nm", "receipts", "chase_words", "at_risk_by"}});
  AddList(papers, later,
          {"waiting",
           "pieces, cut pieces and order lines that wait for papers",
           "waiting_for_papers",
           "mill heat what name",
           {"mill", "heat", "what", "name", "count", "length_nm"},
           "heat"});
  AddList(papers, later,
          {"list",
           "documents, with earlier versions",
           "documents",
           "issuer number version",
           {"issuer", "number", "version", "type", "heat", "section", "accepted_by", "accepted_at", "cut_before_accepted", "reason"},
           "number",
           {{"accepted_by", "accepted by {}"}, {"cut_before_accepted", "{} pieces cut before it was accepted"}}});
  AddList(papers, later,
          {"values",
           "what documents say of a heat, and what of it is valid now",
           "document_values",
           "heat section kind what issued_on",
           {"heat", "section", "kind", "what", "value", "unit", "issuer", "number", "version", "issued_on", "valid"},
           "heat"});
  AddList(Noun(root, "heats", "heat numbers"), later,
          {"look-alikes", "heats that are easily misread for each other", "look_alikes", "heat looks_like", {"heat", "looks_like"}});
  AddList(Noun(root, "rules", "prices, keep lengths and settings"), later,
          {"list",
           "all there ever were, from when and by whom",
           "rules",
           "rule grade section valid_from",
           {"rule", "grade", "section", "words", "valid_from", "who"}});
}

}  // namespace heatkeep::command
