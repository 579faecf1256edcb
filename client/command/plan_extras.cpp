#include "client/command/plan_extras.h"

#include <algorithm>
#include <cstdlib>
#include <nlohmann/json.hpp>
#include <ostream>

#include "client/allocator/eligible.h"
#include "client/allocator/fewer_layouts.h"
#include "client/allocator/plain_choice.h"
#include "client/allocator/plan_of_layouts.h"
#include "client/allocator/value.h"
#include "schema/terms/length_text.h"
#include "schema/terms/number_text.h"

namespace heatkeep::command {
namespace {

using namespace allocator;
using Json = nlohmann::ordered_json;

// To two decimals, halves away from zero.
double Units(FineMoney money) { return std::stod(MoneyText(money)); }

std::string LeftName(LeftKind kind) {
  return kind == LeftKind::Drop ? "drop" : kind == LeftKind::Scrap ? "scrap" : "none";
}

Json DifferenceJson(const Difference& d) {
  Json j = {{"unmet_pieces", d.unmet_pieces}, {"bars_opened", d.bars_opened}, {"new_length_nm", d.new_length.nm},
            {"consumed_length_nm", d.consumed_length.nm}, {"lost_worth_nm", d.lost_worth.nm},
            {"pieces_pulled", d.pieces_pulled}, {"layouts", d.layouts}};
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

// The dearest price a metre of the shop's own metal of this kind; nothing where none is priced.
std::optional<FineMoney> PriceOf(const Problem& problem, const std::string& section, const std::string& grade) {
  std::optional<FineMoney> price;
  for (const Piece& p : problem.pieces)
    if (p.section == section && p.grade == grade && p.owner.empty() && p.costs.per_metre.micro > 0)
      price = std::max(price.value_or(FineMoney{}), p.costs.per_metre);
  return price;
}

std::string CostWords(const std::optional<FineMoney>& cost) {
  if (!cost || MoneyText(*cost) == "0.00") return {};
  return ", " + MoneyText({std::abs(cost->micro)}) + (cost->micro < 0 ? " cheaper" : " dearer");
}

// One line for all pieces of a line that the same metal stands in for.
std::vector<std::string> StandInWords(const std::vector<StandIn>& all) {
  std::vector<StandIn> sums;
  for (const StandIn& s : all) {
    const auto at = std::find_if(sums.begin(), sums.end(), [&](const StandIn& sum) { return sum.what == s.what && sum.of == s.of; });
    if (at == sums.end()) {
      sums.push_back(s);
      continue;
    }
    at->count += s.count;
    at->tag += ", " + s.tag;
    if (at->cost && s.cost) at->cost->micro += s.cost->micro;
  }
  std::vector<std::string> words;
  for (const StandIn& s : sums) words.push_back(s.what + std::to_string(s.count) + s.of + CostWords(s.cost) + " (" + s.tag + ")");
  return words;
}

std::vector<StandIn> StandInsOf(const Problem& problem, const Plan& plan) {
  std::vector<StandIn> all;
  for (std::size_t i = 0; i < plan.layouts.size(); ++i) {
    const Piece& piece = problem.pieces.at(static_cast<std::size_t>(plan.layouts[i].piece));
    for (const Cut& cut : plan.layouts[i].cuts) {
      const Line& line = problem.lines.at(static_cast<std::size_t>(cut.line));
      if (piece.section == line.section && piece.grade == line.grade) continue;
      StandIn s{i, cut.line, cut.count * plan.layouts[i].repeat, {}, {}, piece.tag, {}, {}};
      const std::optional<FineMoney> asked = PriceOf(problem, line.section, line.grade), given = PriceOf(problem, piece.section, piece.grade);
      FineMoney each = SubstituteExtra(problem, piece, line);
      const bool known = asked && given;
      if (known) each.micro += given->micro - asked->micro;
      if (known || each.micro > 0) s.cost = FineMoney{Priced(each, cut.length).micro * s.count};
      const std::string is = piece.section == line.section ? piece.grade : piece.section + " " + piece.grade;
      const std::string wanted = piece.section == line.section ? line.grade : line.section + " " + line.grade;
      s.what = is + " for " + wanted + ", order " + line.order + " line " + line.line + ": ";
      s.of = " x " + WriteMm(cut.length) + " mm";
      s.words = s.what + std::to_string(s.count) + s.of + CostWords(s.cost);
      all.push_back(std::move(s));
    }
  }
  return all;
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

}  // namespace

PlanExtras ExtrasOf(const Problem& problem, Plan& plan, const ExtraWishes& wishes) {
  PlanExtras extras;
  plan = WithFewerLayouts(problem, plan);
  Plan by_hand = PlanByHand(problem);
  extras.by_hand = by_hand.value;
  extras.less_by_search = DifferenceOf(problem, plan, problem, by_hand);
  extras.choice = ChooseBetween(problem, plan, by_hand, wishes.plain_below);
  if (!extras.choice.plain && FiguresOf(problem, by_hand.value) < FiguresOf(problem, plan.value))
    extras.choice = {true, "the plan by hand is taken: it is better than what was found in the time there was"};
  if (extras.choice.plain) {
    TakeBounds(problem, plan, by_hand);
    by_hand.seconds = plan.seconds;
    plan = std::move(by_hand);
  }
  Explanation explanation(problem, plan);
  for (std::size_t i = 0; i < plan.layouts.size(); ++i) extras.why.push_back(explanation.Why(i));
  extras.bundles = BundlesOf(problem, plan, wishes.bars_at_a_time);
  extras.stand_ins = StandInsOf(problem, plan);
  if (!plan.shorts.empty()) extras.buy = WhatToBuy(problem, plan, wishes.offers, std::min(2.0, problem.limits.seconds / 5));
  if (wishes.price_of_one_heat) extras.one_heat = PriceOfOneHeat(problem, plan);
  return extras;
}

void AddExtras(Json& file, const Problem& problem, const PlanExtras& extras) {
  Json& layouts = file["layouts"];
  for (std::size_t i = 0; i < extras.why.size(); ++i) layouts.at(i)["why"] = WhyJson(problem, extras.why[i]);
  for (const StandIn& s : extras.stand_ins) {
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
  if (extras.buy) file["buy"] = BuyJson(problem, *extras.buy);
  if (extras.one_heat)
    file["one_heat_costs"] = {{"difference", DifferenceJson(extras.one_heat->difference)}, {"heats", extras.one_heat->heats},
                              {"words", extras.one_heat->words}};
}

Json ExtrasJson(const Problem& problem, const Plan& plan, const PlanExtras& extras) {
  Json told;
  told["layouts"] = Json::array();
  for (const Layout& layout : plan.layouts)
    told["layouts"].push_back({{"tag", problem.pieces.at(static_cast<std::size_t>(layout.piece)).tag}});
  AddExtras(told, problem, extras);
  return told;
}

void SayExtras(const PlanExtras& extras, std::ostream& out) {
  for (const std::string& words : StandInWords(extras.stand_ins)) out << "stands in: " << words << '\n';
  out << extras.choice.words << '\n';
  if (extras.buy && !extras.buy->words.empty()) out << extras.buy->words << '\n';
  if (extras.one_heat) out << extras.one_heat->words << '\n';
}

void SayEnd(const Plan& plan, std::ostream& out) {
  if (plan.ended_by == EndedBy::Stopped) out << "the search was stopped; this is the best it had found\n";
  if (plan.ended_by == EndedBy::Clock) out << "the search ended by the clock; more seconds may give a better plan\n";
}

FineMoney ReadAmount(const std::string& option, const std::string& text) {
  try {
    return {ReadScaled(text, 2) * 1'000'000};
  } catch (const BadText& e) {
    throw BadText(option + ": " + e.Wrong(), e.Expected());
  }
}

std::vector<Offer> ReadOffers(const std::string& text) {
  std::vector<Offer> offers;
  for (std::size_t from = 0; from <= text.size();) {
    const std::size_t comma = std::min(text.find(',', from), text.size());
    const std::string part = text.substr(from, comma - from);
    const std::size_t equal = part.find('=');
    Offer offer;
    try {
      offer.length = ReadLength(part.substr(0, equal));
    } catch (const BadText& e) {
      throw BadText("--buy: " + e.Wrong(), e.Expected());
    }
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
