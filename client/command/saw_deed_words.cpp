#include "client/command/saw_deed_words.h"

#include <stdexcept>

#include "client/command/bundle_body.h"
#include "client/command/saw_strokes.h"
#include "client/gateway/section_json.h"
#include "schema/terms/bad_text.h"
#include "schema/terms/length_text.h"
#include "schema/terms/mass_text.h"
#include "schema/terms/number_text.h"
#include "schema/terms/scan.h"
#include "schema/terms/tag.h"

namespace heatkeep::command {
namespace {

using Json = nlohmann::json;
using K = WordKind;

const SawWord kTag{"tag", "tag", K::Text, true, "the tag"};
const SawWord kSaw{"--saw", "saw", K::Text, true, "which saw"};
const SawWord kLine{"--line", "", K::OrderLine, true, "ORDER/LINE"};
const SawWord kCount{"--count", "count", K::Whole, true, "how many pieces"};
const SawWord kReason{"--reason", "reason", K::Text, true, "why"};
const SawWord kWhy{"--reason", "reason", K::Text, false, "why it differs"};
const SawWord kPlace{"--place", "place", K::Text, true, "where it is put"};
const SawWord kHeat{"--heat", "heat", K::Text, true, "the heat as it is on the label and the metal, or NO HEAT"};
const SawWord kKerf{"--kerf", "kerf_nm", K::Length, true, "what a stroke costs"};
const SawWord kMeasured{"--measured", "measured_nm", K::Length, false, "as measured, where it is off"};
const SawWord kHeatRead{"--heat-read", "heat_read", K::Text, false, "the last 4 characters of the heat as read from the metal"};
const SawWord kBars{"tags", "tags", K::Tags, true, "the tags of the bars"};
const SawWord kEachKerf{"--kerf", "", K::Length, false, "what every stroke costs"};
const SawWord kLeft{"--left", "left.fate", K::Text, false, "what is left: closes the cut", {"drop", "scrap", "none", "same piece"}};
const SawWord kRest{"--rest", "left.length_nm", K::Length, false, "the rest as measured"};
const SawWord kDropPlace{"--place", "left.place", K::Text, false, "where the drop is put"};
const SawWord kDropHeat{"--heat", "left.heat", K::Text, false, "the heat as it is on the drop's label"};
const SawWord kBin{"--bin", "left.bin", K::Text, false, "which scrap bin"};
const SawWord kAlreadyCut{"--already-cut", "already_cut", K::Flag, false, "it has been cut though the saw was told to stop"};

Json Part(const std::string& text) {  // LENGTH@PLACE=HEAT
  const auto at = text.find('@'), equals = text.rfind('=');
  if (at == std::string::npos || equals == std::string::npos || equals < at)
    throw BadText(Quoted(text) + " is no part of a split", "LENGTH@PLACE=HEAT, the heat as it is marked on that part");
  return {
      {"length_nm", ReadLength(text.substr(0, at)).nm}, {"place", text.substr(at + 1, equals - at - 1)}, {"heat", text.substr(equals + 1)}};
}

// NAME=REST, both filled. Throws BadText.
std::pair<std::string, std::string> Pair(const std::string& text, const char* expected) {
  const auto equals = text.find('=');
  if (equals == std::string::npos || equals == 0 || equals + 1 == text.size()) throw BadText(Quoted(text) + " is not understood", expected);
  return {text.substr(0, equals), text.substr(equals + 1)};
}

Json Capacity(const std::string& text) {  // SHAPE=WIDTHxHEIGHT
  constexpr const char* expected = "SHAPE=WIDTHxHEIGHT, as round=250x250 or flat=300x200";
  const auto [shape, size] = Pair(text, expected);
  const auto times = size.find('x');
  bool known = false;
  for (int i = 0; i <= static_cast<int>(Shape::Beam); ++i) known = known || shape == ShapeText(static_cast<Shape>(i));
  if (times == std::string::npos || !known) throw BadText(Quoted(text) + " is no capacity", expected);
  return {{"shape", shape}, {"width_nm", ReadLength(size.substr(0, times)).nm}, {"height_nm", ReadLength(size.substr(times + 1)).nm}};
}

Json Open(const std::string& text) {  // ORDER/LINE: WHY
  const auto colon = text.find(": ");
  if (colon == std::string::npos) throw BadText(Quoted(text) + " does not say why the line is open", "ORDER/LINE: WHY");
  Json open{{"why", text.substr(colon + 2)}};
  ReadOrderLine(text.substr(0, colon), open);
  return open;
}

void Put(Json& body, const SawWord& word, Json value) {
  const std::string key = word.key;
  const auto dot = key.find('.');
  if (dot == std::string::npos) body[key] = std::move(value);
  else body[key.substr(0, dot)][key.substr(dot + 1)] = std::move(value);
}

void Read(Json& body, const SawWord& word, const std::string& text, Length kerf) {
  switch (word.kind) {
    case K::Text: {
      const std::string key = word.key;
      return Put(body, word, key == "tag" ? TagOfScan(text) : key == "place" || key == "left.place" ? PlaceOfScan(text) : text);
    }
    case K::Length: return Put(body, word, ReadLength(text).nm);
    case K::Whole: return Put(body, word, ReadWhole(text, 0, 1'000'000'000));
    case K::Mass: return Put(body, word, ReadMass(text).g);
    case K::Cents: return Put(body, word, ReadScaled(text, 2));
    case K::PerKg: return Put(body, word, CentsPerTonne({ReadScaled(text, 2)}));
    case K::OrderLine: return ReadOrderLine(text, body);
    case K::Section: return Put(body, word, SectionJson(ReadSection(text)));
    case K::Stroke: body["strokes"].push_back(ReadStroke(text, kerf)); return;
    case K::Part: body["parts"].push_back(Part(text)); return;
    case K::Open: body["open"].push_back(Open(text)); return;
    case K::Capacity: body["capacity"].push_back(Capacity(text)); return;
    case K::Bin: {
      const auto [name, group] = Pair(text, "NAME=ALLOY GROUP");
      body[word.key].push_back({{std::string(word.key) == "bins" ? "bin" : "family", name}, {"group", group}});
      return;
    }
    case K::HeatRead: {
      const auto [tag, heat] = Pair(text, "TAG=LAST4");
      body["heats_read"][TagForm(tag)] = heat;
      return;
    }
    case K::OfBar: return ReadBarWord(text, kerf, body);
    case K::Tags: body[word.key].push_back(TagOfScan(text)); return;
    case K::Flag: return Put(body, word, true);
  }
}

}  // namespace

const std::vector<SawDeedWords>& AllSawDeeds() {
  static const std::vector<SawDeedWords> deeds{
      {"reserve",
       "keep a piece for a line: heatkeep saw reserve A000012K --line O1/10 --count 4",
       "reserve",
       &SawDeeds::Reserve,
       false,
       {kTag, kLine, kCount, {"--until", "until", K::Text, false, "2026-03-04 14:00; else the end of the next shift"}}},
      {"unreserve",
       "let it go again: heatkeep saw unreserve A000012K --reason \"other bar\"",
       "unreserve",
       &SawDeeds::Unreserve,
       false,
       {kTag, kReason}},
      {"lapse", "free every promise whose time is over: heatkeep saw lapse", "lapse_promises", &SawDeeds::LapsePromises, false, {}},
      {"pull",
       "fetch a promised piece: heatkeep saw pull A000012K --saw 1 --heat-read 2208",
       "pull",
       &SawDeeds::Pull,
       true,
       {kTag, kSaw, {"--plan", "plan", K::Whole, false, "the plan it must be for"}, kHeatRead, kMeasured}},
      {"fetch",
       "fetch a piece for a line that no plan has, an urgent one: heatkeep saw fetch A000012K --saw 1 --line O9/10 --count 2",
       "pull_for_line",
       &SawDeeds::PullForLine,
       true,
       {kTag, kSaw, kLine, kCount, kHeatRead, kMeasured}},
      {"cut",
       "book strokes, and close the cut: heatkeep saw cut A000012K --saw 1 --kerf 2 --stroke \"trim 10\" --stroke \"good 9x300 O1/10\" --left drop "
       "--rest 2968 --place B1-1 --heat M2208",
       "record_cut",
       &SawDeeds::RecordCut,
       true,
       {kTag,
        kSaw,
        {"--stroke", "", K::Stroke, false,
         "trim 10 | good 9x300 O1/10 | reject 1x285 O1/10: fault | crop 150: fault | slice 25: lab | stock 3x200 PLACE"},
        kEachKerf,
        kMeasured,
        {"--measured-with", "measured_with", K::Text, false, "the tape or readout"},
        kLeft,
        kRest,
        kDropPlace,
        kDropHeat,
        kBin,
        kAlreadyCut,
        kWhy}},
      {"make-up",
       "bars are made up into a bundle, and fetched for it: heatkeep saw make-up A000012K A000013L --saw 1 --heat-read 2208",
       "make_up_bundle",
       &SawDeeds::MakeUpBundle,
       true,
       {kBars,
        kSaw,
        {"--plan", "plan", K::Whole, false, "the plan they must be for"},
        {"--heat-read", "heat_read", K::Text, false, "the last 4 characters of the heat as read from every bar"},
        {"--heat-of", "", K::HeatRead, false, "TAG=LAST4, where one bar reads otherwise; may be given several times"}}},
      {"cut-bundle",
       "book bars cut together, every stroke once: heatkeep saw cut-bundle A000012K A000013L --saw 1 --kerf 2 --stroke \"trim 10\" --stroke \"good 19x300 O1/10\" "
       "--left drop --place B1-1 --bar \"A000013L: rest 248\"",
       "record_bundle",
       &SawDeeds::RecordBundle,
       true,
       {kBars,
        kSaw,
        {"--stroke", "", K::Stroke, false, "of every bar, as for saw cut"},
        kEachKerf,
        {"--bar", "", K::OfBar, false,
         "TAG: what one bar had otherwise: rest 248 | measured 5998 | left scrap | place B1-2 | good 18x300 O1/10 (its strokes in place of those of all)"},
        kLeft,
        kRest,
        kDropPlace,
        kDropHeat,
        kBin,
        kAlreadyCut,
        kWhy}},
      {"split",
       "one bar into several for storage: heatkeep saw split A000012K --saw 1 --kerf 2 --part 3000@B1-1=M2208 --part 2998@B1-2=M2208",
       "split_piece",
       &SawDeeds::SplitPiece,
       true,
       {kTag, kSaw, kKerf, {"--part", "", K::Part, true, "LENGTH@PLACE=HEAT; the last is what is left"}, kWhy}},
      {"slice",
       "a slice for the laboratory: heatkeep saw slice A000012K --saw 1 --length 25 --kerf 2 --lab \"LAB 77\" --place B1-1",
       "take_test_slice",
       &SawDeeds::TakeTestSlice,
       false,
       {kTag,
        kSaw,
        {"--length", "length_nm", K::Length, true, "of the slice"},
        kKerf,
        {"--lab", "lab", K::Text, true, "the laboratory's reference"},
        kPlace,
        {"--rest", "rest_nm", K::Length, false, "the rest as measured"},
        kWhy}},
      {"first",
       "the first piece measured: heatkeep saw first --saw 1 --line O1/10 --measured 300.4",
       "first_piece",
       &SawDeeds::FirstPiece,
       true,
       {kSaw,
        kLine,
        {"--measured", "measured_nm", K::Length, true, "the piece"},
        {"--set", "set_nm", K::Length, false, "what the stop is set to"}}},
      {"handover",
       "end of shift: heatkeep saw handover --saw 1 --tag A000012K --open \"O1/10: no time\" --words \"half done\"",
       "hand_over",
       &SawDeeds::HandOver,
       true,
       {kSaw,
        {"--tag", "tag", K::Text, false, "what is in the vice"},
        kMeasured,
        {"--words", "words", K::Text, true, "how things stand"},
        {"--open", "", K::Open, false, "ORDER/LINE: why it is still open; may be given several times"}}},
      {"takeover",
       "the next shift: heatkeep saw takeover 1",
       "take_over",
       &SawDeeds::TakeOver,
       false,
       {{"saw", "saw", K::Text, true, "which saw"}}},
      {"defect",
       "a defect found: heatkeep saw defect A000012K --kind pipe --at 0 --to 302 --words \"on the face\"",
       "report_defect",
       &SawDeeds::ReportDefect,
       true,
       {kTag,
        {"--kind", "kind", K::Text, true, "what it is", {"pipe", "crack", "seam", "lap", "bend", "inclusion", "other"}},
        {"--at", "at_nm", K::Length, true, "where it begins"},
        {"--to", "to_nm", K::Length, false, "where it ends"},
        {"--from-end", "from_end", K::Text, false, "from which end: first is cut first", {"first", "last"}},
        {"--words", "words", K::Text, true, "what is seen"}}},
      {"answer",
       "the lead answers: heatkeep saw answer 3 --answer \"cut on\" --words \"only the end\"",
       "answer_defect",
       &SawDeeds::AnswerDefect,
       false,
       {{"report", "report", K::Whole, true, "the report"},
        {"--answer", "answer", K::Text, true, "what is to be done", {"cut on", "stop"}},
        {"--words", "words", K::Text, true, "why"}}},
      {"half-cut",
       "the blade broke or the bar slipped: heatkeep saw half-cut A000012K --at 290 --kerf 2 --cause \"blade broke\"",
       "report_half_cut",
       &SawDeeds::ReportHalfCut,
       true,
       {kTag,
        {"--at", "at_nm", K::Length, true, "from the end that is cut first"},
        kKerf,
        {"--cause", "cause", K::Text, true, "how it came", {"blade broke", "bar slipped"}}}},
      {"band",
       "a band fitted, or its kerf measured anew: heatkeep saw band --saw 1 --width 34 --thickness 1.1 --kerf 1.8 --reason worn",
       "fit_band",
       &SawDeeds::FitBand,
       true,
       {kSaw,
        {"--width", "width_nm", K::Length, false, "of a new band"},
        {"--thickness", "thickness_nm", K::Length, false, "of a new band"},
        kKerf,
        kReason}},
      {"set",
       "what a saw can: heatkeep saw set 1 --stop 500 --per-hour 45.00 --bundle 6 --capacity round=260x260 --capacity flat=300x200",
       "set_saw",
       &SawDeeds::SetSaw,
       false,
       {{"saw", "saw", K::Text, true, "which saw"},
        {"--stop", "stop_stroke_nm", K::Length, false, "the stroke of its length stop"},
        {"--per-hour", "cents_per_hour", K::Cents, false, "what an hour of it costs"},
        {"--bundle", "bundle_bars", K::Whole, false, "bars at a time at most"},
        {"--capacity", "", K::Capacity, false, "SHAPE=WIDTHxHEIGHT; may be given several times"}}},
      {"bins",
       "scrap bins by alloy group: heatkeep saw bins --bin \"BIN-2=Cr-Mo\" --family \"alloy steel=Cr-Mo\"",
       "define_bins",
       &SawDeeds::DefineBins,
       false,
       {{"--bin", "bins", K::Bin, false, "NAME=GROUP; may be given several times"},
        {"--family", "groups", K::Bin, false, "FAMILY=GROUP; a family not named is its own group"}}},
      {"scrap",
       "a whole piece to a bin: heatkeep saw scrap A000012K --bin BIN-2 --reason bent",
       "scrap_piece",
       &SawDeeds::ScrapPiece,
       true,
       {kTag,
        {"--bin", "bin", K::Text, false, "which bin"},
        kReason,
        {"--instruction", "instruction", K::Text, false, "the owner's, in writing, of metal that is not ours"}}},
      {"ticket",
       "a bin sold by weight: heatkeep saw ticket --bin BIN-2 --dealer D --ticket T-7 --mass 480 --per-kg 0.25",
       "scrap_ticket",
       &SawDeeds::ScrapTicket,
       false,
       {{"--bin", "bin", K::Text, true, "which bin"},
        {"--dealer", "dealer", K::Text, true, "to whom"},
        {"--ticket", "ticket", K::Text, true, "its number"},
        {"--mass", "mass_g", K::Mass, true, "as weighed"},
        {"--per-kg", "cents_per_tonne", K::PerKg, true, "price a kilogram"}}},
      {"reuse",
       "a reject as a drop: heatkeep saw reuse 17 --length 284 --place B1-2 --heat M2208 --reason \"for 250\"",
       "reuse_reject",
       &SawDeeds::ReuseReject,
       false,
       {{"reject", "reject", K::Whole, true, "its number"},
        {"--length", "length_nm", K::Length, true, "as measured"},
        kPlace,
        kHeat,
        kReason}},
      {"recut",
       "where a reject's replacement comes from: heatkeep saw recut 17 --tag A000012K",
       "recut",
       &SawDeeds::Recut,
       false,
       {{"reject", "reject", K::Whole, true, "its number"},
        {"--tag", "tag", K::Text, true, "the source"},
        {"--agreed-by", "agreed.who", K::Text, false, "who agreed to another heat"},
        {"--writing", "agreed.writing", K::Text, false, "where that is written"}}},
      {"to-stock",
       "surplus pieces get tags: heatkeep saw to-stock --line O1/10 --count 1 --place B1-2 --reason \"one too many\"",
       "pieces_to_stock",
       &SawDeeds::PiecesToStock,
       false,
       {kLine, kCount, kPlace, kReason}},
      {"take-back",
       "one was confirmed too many: heatkeep saw take-back A000012K --count 1 --reason \"9 confirmed, 8 cut\"",
       "not_cut",
       &SawDeeds::NotCut,
       false,
       {{"tag", "tag", K::Text, true, "the bar being cut, or the drop that was left: what is longer than the book has it"},
        {"--count", "count", K::Whole, false, "how many strokes, from the last one back; 1 by default"},
        kReason}},
      {"change",
       "an order changed (0: cancelled): heatkeep saw change --line O1/10 --quantity 0 --place B1-2 --reason mail",
       "change_order",
       &SawDeeds::ChangeOrder,
       false,
       {kLine,
        {"--quantity", "quantity", K::Whole, true, "wanted now"},
        {"--place", "place", K::Text, false, "where pieces done go"},
        kReason}},
      {"consent",
       "other metal, in writing: heatkeep saw consent --line O1/10 --section \"round 85\" --agreed-by \"Ms Alder\" --writing mail --cost 14.00",
       "record_consent",
       &SawDeeds::RecordConsent,
       false,
       {kLine,
        {"--grade", "grade", K::Text, false, "another grade"},
        {"--section", "section", K::Section, false, "another section"},
        {"--papers", "papers", K::Text, false, "weaker papers"},
        {"--count", "count", K::Whole, false, "for so many pieces"},
        {"--agreed-by", "agreed_by", K::Text, true, "who"},
        {"--writing", "writing", K::Text, true, "where it is written"},
        {"--cost", "cost_cents", K::Cents, true, "what it costs more"}}},
      {"sign",
       "quality signs a consent: heatkeep saw sign 4",
       "sign_consent",
       &SawDeeds::SignConsent,
       false,
       {{"consent", "consent", K::Whole, true, "its number"}}},
  };
  return deeds;
}

Json SawBody(const SawDeedWords& deed, const std::map<std::string, std::vector<std::string>>& given) {
  Json body = Json::object();
  Length kerf;
  if (const auto at = given.find("--kerf"); at != given.end()) kerf = ReadLength(at->second.front());
  for (const SawWord& word : deed.words) {
    const auto at = given.find(word.option);
    if (at == given.end() || (word.key[0] == '\0' && word.kind == K::Length)) continue;
    for (const std::string& text : at->second) {
      try {
        Read(body, word, text, kerf);
      } catch (const BadText& error) { throw BadText(std::string(word.option) + ": " + error.Wrong(), error.Expected()); }
    }
  }
  if (body.contains("left")) {
    if (!body["left"].contains("fate"))
      throw std::invalid_argument("what becomes of the rest is not said; expected --left drop, scrap, none or \"same piece\"");
    body["finish"] = true;
  }
  if (body.contains("strokes") && !given.contains("--kerf")) throw std::invalid_argument("a stroke has a kerf; expected --kerf");
  return std::string(deed.deed) == "record_bundle" ? BundleBody(std::move(body)) : body;
}

}  // namespace heatkeep::command
