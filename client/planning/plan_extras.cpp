#include "client/planning/plan_extras.h"

#include <algorithm>
#include <cstdlib>

#include "client/allocator/eligible.h"
#include "client/allocator/fewer_layouts.h"
#include "client/allocator/plain_choice.h"
#include "client/allocator/plan_of_layouts.h"
#include "client/allocator/value.h"
#include "schema/terms/length_text.h"

namespace heatkeep::planning {

namespace {

using namespace allocator;

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

std::vector<StandIn> StandInsOf(const Problem& problem, const Plan& plan) {
  std::vector<StandIn> all;
  for (std::size_t i = 0; i < plan.layouts.size(); ++i) {
    const Piece& piece = problem.pieces.at(static_cast<std::size_t>(plan.layouts[i].piece));
    for (const Cut& cut : plan.layouts[i].cuts) {
      const Line& line = problem.lines.at(static_cast<std::size_t>(cut.line));
      if (piece.section == line.section && piece.grade == line.grade) continue;
      StandIn s{i, cut.line, cut.count * plan.layouts[i].repeat, {}, {}, piece.tag, {}, {}};
      const std::optional<FineMoney> asked = PriceOf(problem, line.section, line.grade),
                                     given = PriceOf(problem, piece.section, piece.grade);
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

// Where a full bar is opened although a drop would hold the same cuts: which, and what it costs more.
std::vector<std::string> BarWords(const Problem& problem, const Plan& plan, const std::vector<std::vector<Alternative>>& why) {
  std::vector<std::string> words;
  for (std::size_t i = 0; i < why.size(); ++i) {
    const Piece& bar = problem.pieces.at(static_cast<std::size_t>(plan.layouts[i].piece));
    if (bar.kind != PieceKind::Bar) continue;
    const auto drop = std::find_if(why[i].begin(), why[i].end(), [&](const Alternative& a) {
      return problem.pieces.at(static_cast<std::size_t>(a.piece)).kind == PieceKind::Drop;
    });
    if (drop == why[i].end()) continue;
    words.push_back("full bar " + bar.tag + " although drop " + SourceWords(problem.pieces.at(static_cast<std::size_t>(drop->piece))) +
                    ", would do: the drop " + drop->words + "; what the bar leaves keeps nearly its worth");
  }
  return words;
}

}  // namespace

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

PlanExtras TakeBetter(const Problem& problem, Plan& plan, const ExtraWishes& wishes) {
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
  return extras;
}

void AddWhy(const Problem& problem, const Plan& plan, const ExtraWishes& wishes, PlanExtras& extras) {
  Explanation explanation(problem, plan);
  for (std::size_t i = 0; i < plan.layouts.size(); ++i) extras.why.push_back(explanation.Why(i));
  for (const Layout& layout : plan.layouts) extras.ends.push_back(OffersOf(problem, layout));
  if (problem.aim == Aim::LeastMoney) extras.bar_words = BarWords(problem, plan, extras.why);
  for (std::size_t i = 0; i < plan.shorts.size(); ++i) extras.ways_out.push_back(WaysOut(problem, plan, i));
  extras.bundles = BundlesOf(problem, plan, wishes.bars_at_a_time);
  extras.stand_ins = StandInsOf(problem, plan);
  if (!plan.shorts.empty()) extras.buy = WhatToBuy(problem, plan, wishes.offers, std::min(2.0, problem.limits.seconds / 5));
  if (wishes.price_of_one_heat) extras.one_heat = PriceOfOneHeat(problem, plan);
}

PlanExtras ExtrasOf(const Problem& problem, Plan& plan, const ExtraWishes& wishes) {
  PlanExtras extras = TakeBetter(problem, plan, wishes);
  AddWhy(problem, plan, wishes, extras);
  return extras;
}

}  // namespace heatkeep::planning
