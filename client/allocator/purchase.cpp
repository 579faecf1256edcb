#include "client/allocator/purchase.h"

#include <algorithm>
#include <set>
#include <stdexcept>

#include "client/allocator/allocate.h"
#include "client/allocator/compare.h"
#include "client/allocator/eligible.h"
#include "schema/terms/length_text.h"

namespace heatkeep::allocator {
namespace {

std::size_t At(int i) { return static_cast<std::size_t>(i); }

// Lines that one kind of bar serves.
struct Metal {
  std::string section, grade, condition, heat;
  PaperType papers = PaperType::None;
  auto operator<=>(const Metal&) const = default;
};

// The heats a line's own rule has settled on already.
std::set<std::string> HeatsOf(const Problem& problem, const Plan& plan, const Line& line) {
  std::set<std::string> heats;
  for (const Layout& layout : plan.layouts)
    for (const Cut& cut : layout.cuts) {
      const Line& other = problem.lines[At(cut.line)];
      const bool together = !line.one_heat.empty() && other.one_heat == line.one_heat;
      if (together || &other == &line) heats.insert(problem.pieces[At(layout.piece)].heat);
    }
  return heats;
}

Length GreatestDoubt(const Problem& problem, const Metal& metal) {
  Length doubt;
  for (const Piece& piece : problem.pieces)
    if (piece.kind == PieceKind::Bar && piece.owner.empty() && piece.section == metal.section && piece.grade == metal.grade)
      doubt = std::max(doubt, piece.doubt);
  return doubt;
}

// The problem of buying for one metal: these lines, unlimited bars of every offered length.
Problem ToBuy(const Problem& problem, const Metal& metal, const std::vector<Short>& shorts, const std::vector<Offer>& offers) {
  Problem buy;
  buy.rules = problem.rules;
  buy.exceptions = problem.exceptions;
  buy.limits = problem.limits;
  buy.aim = offers.front().price ? Aim::LeastMoney : Aim::DropsFirst;
  const Length doubt = GreatestDoubt(problem, metal);
  for (const Offer& offer : offers) {
    Piece bar;
    bar.tag = WriteMmExact(offer.length);
    bar.section = metal.section;
    bar.grade = metal.grade;
    bar.condition = metal.condition;
    bar.papers = metal.papers;
    bar.heat = "bought";
    bar.length = offer.length;
    bar.doubt = doubt < offer.length ? doubt : Length{};
    bar.count = std::nullopt;
    if (offer.price) bar.costs.per_pull = *offer.price;
    buy.pieces.push_back(bar);
  }
  for (const Short& s : shorts) {
    Line line = problem.lines[At(s.line)];
    line.quantity = s.missing;
    line.one_heat.clear();
    line.max_heats = 0;
    buy.lines.push_back(line);
  }
  return buy;
}

std::string Words(const Purchase& p) {
  std::string words;
  for (const Bought& b : p.bars) {
    words += (words.empty() ? "buy " : "; buy ") + std::to_string(b.count) + " x " + WriteMm(b.length) + " mm " + b.section + " " + b.grade;
    if (!b.condition.empty()) words += " " + b.condition;
    if (b.papers != PaperType::None) words += ", papers " + NameOf(b.papers);
    if (!b.heat.empty()) words += ", only of heat " + b.heat;
  }
  if (!p.bars.empty()) {
    words += ": " + MetresText(p.length);
    if (p.money) words += ", " + MoneyText(*p.money);
    std::string left;
    for (const LeftOver& l : p.left)
      left += (left.empty() ? "" : ", ") + (l.count > 1 ? std::to_string(l.count) + " x " : std::string()) +
          WriteMm(l.length, Rounding::Down) + " mm" + (l.kind == LeftKind::Scrap ? " scrap" : "");
    words += left.empty() ? "; nothing is left over" : "; left over " + left;
    if (p.proved) words += p.money ? "; none costs less (proved)" : "; none is shorter (proved)";
  }
  for (const Short& s : p.not_served) words += (words.empty() ? "" : "; ") + s.why;
  return words;
}

void Refuse(const std::vector<Offer>& offers) {
  if (offers.empty()) throw std::invalid_argument("no length to buy is named; expected at least one");
  for (const Offer& offer : offers) {
    if (offer.length.nm <= 0) throw std::invalid_argument("a length to buy is nothing; expected above 0");
    if (offer.price.has_value() != offers.front().price.has_value())
      throw std::invalid_argument("only some of the lengths to buy have a price; expected a price for all, or for none");
  }
}

}  // namespace

std::vector<Offer> MillLengths() {
  constexpr std::int64_t foot = 12 * kNmPerInch;
  return {{{3'000 * kNmPerMm}, {}}, {{12 * foot}, {}}, {{6'000 * kNmPerMm}, {}}, {{20 * foot}, {}}, {{12'000 * kNmPerMm}, {}}};
}

Purchase WhatToBuy(const Problem& problem, const Plan& plan, const std::vector<Offer>& offers, double seconds) {
  Refuse(offers);
  Purchase purchase;
  std::map<Metal, std::vector<Short>> wanted;
  for (const Short& s : plan.shorts) {
    const Line& line = problem.lines[At(s.line)];
    if (!line.owner.empty()) {
      purchase.not_served.push_back(
          {s.line, s.missing,
           "order " + line.order + " line " + line.line + ": it is to be cut from " + line.owner + "'s own metal, which is not bought"});
      continue;
    }
    Metal metal{line.section, line.grade, line.condition, "", line.papers};
    const std::set<std::string> heats = HeatsOf(problem, plan, line);
    const bool full = line.max_heats > 0 && static_cast<int>(heats.size()) >= line.max_heats;
    if (!heats.empty() && (full || !line.one_heat.empty())) metal.heat = *heats.begin();
    wanted[metal].push_back(s);
  }
  purchase.proved = !wanted.empty();
  if (offers.front().price && !wanted.empty()) purchase.money = FineMoney{};
  std::map<std::pair<Length, LeftKind>, int> left;
  for (const auto& [metal, shorts] : wanted) {
    Problem buy = ToBuy(problem, metal, shorts, offers);
    buy.limits.seconds = std::min(problem.limits.seconds, seconds / static_cast<double>(wanted.size()));
    const Plan bought = Allocate(buy);
    purchase.proved = purchase.proved && bought.proved;
    std::map<int, int> counts;
    for (const Layout& layout : bought.layouts) {
      counts[layout.piece] += layout.repeat;
      if (layout.left_kind != LeftKind::None) left[{layout.left, layout.left_kind}] += layout.repeat;
    }
    for (const auto& [piece, count] : counts) {
      const Offer& offer = offers[At(piece)];
      purchase.bars.push_back({metal.section, metal.grade, metal.condition, metal.papers, metal.heat, offer.length, count, {}});
      purchase.length += offer.length * count;
      if (!offer.price) continue;
      purchase.bars.back().price = FineMoney{offer.price->micro * count};
      purchase.money->micro += offer.price->micro * count;
    }
    for (const Short& s : bought.shorts) {
      const Line& line = buy.lines[At(s.line)];
      purchase.not_served.push_back(
          {shorts[At(s.line)].line, s.missing, "order " + line.order + " line " + line.line + ": no length offered is long enough"});
    }
  }
  for (auto it = left.rbegin(); it != left.rend(); ++it) purchase.left.push_back({it->first.first, it->first.second, it->second});
  purchase.words = Words(purchase);
  return purchase;
}

}  // namespace heatkeep::allocator
