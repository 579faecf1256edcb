#include "client/command/extras_words.h"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <ostream>

#include "client/allocator/eligible.h"
#include "client/command/option_text.h"
#include "client/planning/watched_search.h"
#include "schema/terms/length_text.h"
#include "schema/terms/number_text.h"

namespace heatkeep::command {
namespace {

using namespace allocator;
using Json = nlohmann::ordered_json;

// To two decimals, halves away from zero.
double Units(FineMoney money) { return std::stod(MoneyText(money)); }

std::string LeftName(LeftKind kind) { return kind == LeftKind::Drop ? "drop" : kind == LeftKind::Scrap ? "scrap" : "none"; }

Json DifferenceJson(const Difference& d) {
  Json j = {{"unmet_pieces", d.unmet_pieces},
            {"bars_opened", d.bars_opened},
            {"new_length_nm", d.new_length.nm},
            {"consumed_length_nm", d.consumed_length.nm},
            {"lost_worth_nm", d.lost_worth.nm},
            {"pieces_pulled", d.pieces_pulled},
            {"layouts", d.layouts}};
  if (d.new_mass) j["mass_g"] = d.new_mass->g;
  if (d.money) j["money"] = Units(*d.money);
  return j;
}

Json WhyJson(const Problem& problem, const std::vector<Alternative>& why) {
  Json list = Json::array();
  for (const Alternative& a : why) {
    const Piece& piece = problem.pieces.at(static_cast<std::size_t>(a.piece));
    Json j = {{"tag", piece.tag}};
    if (!piece.place.empty()) j["place"] = piece.place;
    j["left_nm"] = a.left.nm;
    j["left"] = LeftName(a.left_kind);
    j["lost_worth_nm"] = a.lost_more.nm;
    if (a.dearer) j["dearer"] = Units(*a.dearer);
    j["words"] = a.words;
    list.push_back(std::move(j));
  }
  return list;
}

Json BuyJson(const Problem& problem, const Purchase& buy) {
  Json j;
  j["bars"] = Json::array();
  for (const Bought& b : buy.bars) {
    Json bar = {{"section", b.section}, {"grade", b.grade}};
    if (!b.condition.empty()) bar["condition"] = b.condition;
    if (b.papers != PaperType::None) bar["papers"] = NameOf(b.papers);
    if (!b.heat.empty()) bar["heat"] = b.heat;
    bar["length_nm"] = b.length.nm;
    bar["count"] = b.count;
    if (b.price) bar["price"] = Units(*b.price);
    j["bars"].push_back(std::move(bar));
  }
  j["length_nm"] = buy.length.nm;
  if (buy.money) j["price"] = Units(*buy.money);
  j["left"] = Json::array();
  for (const LeftOver& l : buy.left) j["left"].push_back({{"length_nm", l.length.nm}, {"count", l.count}, {"left", LeftName(l.kind)}});
  j["not_served"] = Json::array();
  for (const Short& s : buy.not_served) {
    const Line& line = problem.lines.at(static_cast<std::size_t>(s.line));
    j["not_served"].push_back({{"order", line.order}, {"line", line.line}, {"missing", s.missing}, {"why", s.why}});
  }
  j["proved"] = buy.proved;
  j["words"] = buy.words;
  return j;
}

// What the ends offer, alike ones once with all their tags, and no more than people read.
std::vector<std::string> EndWords(const Problem& problem, const Plan& plan, const std::vector<EndOffers>& ends) {
  constexpr std::size_t kMostLines = 8;
  std::vector<std::pair<std::string, std::string>> said;  // words, tags
  for (std::size_t i = 0; i < ends.size(); ++i)
    for (const std::string& words : ends[i].words) {
      const std::string& tag = problem.pieces.at(static_cast<std::size_t>(plan.layouts[i].piece)).tag;
      const auto at = std::find_if(said.begin(), said.end(), [&](const auto& s) { return s.first == words; });
      if (at == said.end()) said.emplace_back(words, tag);
      else at->second += ", " + tag;
    }
  std::vector<std::string> lines;
  for (const auto& [words, tags] : said) {
    if (lines.size() == kMostLines) {
      lines.push_back("and " + std::to_string(said.size() - kMostLines) + " more such lines; --json has all");
      break;
    }
    lines.push_back(tags + ": " + words);
  }
  return lines;
}

void AddEnds(const Problem& problem, const EndOffers& ends, Json& layout) {
  if (!ends.words.empty()) layout["ends"] = ends.words;
  for (const Further& f : ends.further) {
    const Line& line = problem.lines.at(static_cast<std::size_t>(f.line));
    layout["further"].push_back(
        {{"order", line.order}, {"line", line.line}, {"count", f.count}, {"length_nm", f.length.nm}, {"left_nm", f.left.nm}});
  }
  if (ends.last_uncut) {
    layout["last_uncut_nm"] = ends.last_uncut->nm;
    layout["chips_saved_nm"] = ends.chips_saved.nm;
  }
  if (ends.thin) layout["thin_slice"] = true;
  if (ends.whole) layout["whole"] = true;
  if (ends.last_is_rest) layout["last_is_rest"] = true;
}

Json WaysOutJson(const Problem& problem, const Plan& plan, const std::vector<std::vector<WayOut>>& all) {
  Json list = Json::array();
  for (std::size_t i = 0; i < all.size(); ++i) {
    const Line& line = problem.lines.at(static_cast<std::size_t>(plan.shorts[i].line));
    for (const WayOut& w : all[i]) {
      const char* way = w.kind == WayOutKind::PartShip ? "part ship" : w.kind == WayOutKind::Wait ? "wait" : "weaker papers";
      list.push_back({{"order", line.order}, {"line", line.line}, {"way", way}, {"count", w.count}, {"words", w.words}});
    }
  }
  return list;
}

}  // namespace

void AddExtras(Json& file, const Problem& problem, const Plan& plan, const PlanExtras& extras) {
  Json& layouts = file["layouts"];
  for (std::size_t i = 0; i < extras.why.size(); ++i) layouts.at(i)["why"] = WhyJson(problem, extras.why[i]);
  for (std::size_t i = 0; i < extras.ends.size(); ++i) AddEnds(problem, extras.ends[i], layouts.at(i));
  for (const planning::StandIn& s : extras.stand_ins) {
    const Line& line = problem.lines.at(static_cast<std::size_t>(s.line));
    Json j = {{"order", line.order}, {"line", line.line}, {"count", s.count}};
    if (s.cost) j["money"] = Units(*s.cost);
    j["words"] = s.words;
    layouts.at(s.layout)["stands_in"].push_back(std::move(j));
  }
  int number = 0;
  for (const Bundle& bundle : extras.bundles) {
    if (bundle.bars < 2) continue;
    ++number;
    for (const int layout : bundle.layouts) layouts.at(static_cast<std::size_t>(layout))["bundle"] = number;
  }
  file["by_hand"]["less_by_search"] = DifferenceJson(extras.less_by_search);
  file["by_hand"]["taken"] = extras.choice.plain;
  file["by_hand"]["words"] = extras.choice.words;
  if (!extras.bar_words.empty()) file["bars_although_drops"] = extras.bar_words;
  if (!extras.ways_out.empty()) file["ways_out"] = WaysOutJson(problem, plan, extras.ways_out);
  if (extras.buy) file["buy"] = BuyJson(problem, *extras.buy);
  if (extras.one_heat)
    file["one_heat_costs"] = {
        {"difference", DifferenceJson(extras.one_heat->difference)}, {"heats", extras.one_heat->heats}, {"words", extras.one_heat->words}};
}

Json ExtrasJson(const Problem& problem, const Plan& plan, const PlanExtras& extras) {
  Json told;
  told["layouts"] = Json::array();
  for (const Layout& layout : plan.layouts)
    told["layouts"].push_back({{"tag", problem.pieces.at(static_cast<std::size_t>(layout.piece)).tag}});
  AddExtras(told, problem, plan, extras);
  return told;
}

void SayExtras(const Problem& problem, const Plan& plan, const PlanExtras& extras, std::ostream& out) {
  for (const std::string& words : planning::StandInWords(extras.stand_ins)) out << "stands in: " << words << '\n';
  for (const std::vector<WayOut>& ways : extras.ways_out)
    for (const WayOut& way : ways) out << "  way out, " << way.words << '\n';
  for (const std::string& words : extras.bar_words) out << words << '\n';
  for (const std::string& words : EndWords(problem, plan, extras.ends)) out << words << '\n';
  out << extras.choice.words << '\n';
  if (extras.buy && !extras.buy->words.empty()) out << extras.buy->words << '\n';
  if (extras.one_heat) out << extras.one_heat->words << '\n';
}

void SayEnd(const Plan& plan, std::ostream& out) {
  if (const std::string words = planning::EndedWords(plan); !words.empty()) out << words << '\n';
}

FineMoney ReadAmount(const std::string& option, const std::string& text) {
  return {ReadOption(option, text, [](const std::string& words) { return ReadScaled(words, 2); }) * 1'000'000};
}

std::vector<Offer> ReadOffers(const std::string& text) {
  std::vector<Offer> offers;
  for (std::size_t from = 0; from <= text.size();) {
    const std::size_t comma = std::min(text.find(',', from), text.size());
    const std::string part = text.substr(from, comma - from);
    const std::size_t equal = part.find('=');
    Offer offer;
    offer.length = ReadOption("--buy", part.substr(0, equal), [](const std::string& words) { return ReadLength(words); });
    if (offer.length.nm == 0) throw BadText("--buy: a length is nothing", "a length above 0");
    if (equal != std::string::npos) offer.price = ReadAmount("--buy", part.substr(equal + 1));
    offers.push_back(offer);
    if (offer.price.has_value() != offers.front().price.has_value())
      throw BadText("--buy: only some lengths have a price", "6000mm=378.80,12000mm=750 or no prices");
    from = comma + 1;
  }
  return offers;
}

}  // namespace heatkeep::command
