#include "client/allocator/compare.h"

#include <algorithm>

#include "schema/terms/mass_text.h"

namespace heatkeep::allocator {
namespace {

__extension__ using Wide = __int128;

// Whole hundredths of `unit`, halves away from zero, as "1.80" without a sign.
std::string Hundredths(std::int64_t amount, std::int64_t unit) {
  const std::int64_t plain = amount < 0 ? -amount : amount;
  const std::int64_t step = unit / 100;
  const std::int64_t hundredths = (plain + step / 2) / step;
  const std::string cents = std::to_string(100 + hundredths % 100).substr(1);
  return std::to_string(hundredths / 100) + "." + cents;
}

std::optional<Wide> NewMass(const Problem& problem, const Plan& plan) {  // ng x nm
  Wide sum = 0;
  for (const Layout& layout : plan.layouts) {
    const Piece& piece = problem.pieces.at(static_cast<std::size_t>(layout.piece));
    if (piece.kind != PieceKind::Bar || !piece.owner.empty()) continue;
    if (piece.mass.ng <= 0) return std::nullopt;
    sum += Wide{piece.mass.ng} * piece.length.nm * layout.repeat;
  }
  return sum;
}

Mass Grams(Wide ng_nm) {
  const Wide gram = Wide{1'000'000'000} * 1'000'000'000;  // ng a g x nm a m
  const Wide plain = ng_nm < 0 ? -ng_nm : ng_nm;
  const auto grams = static_cast<std::int64_t>((plain + gram / 2) / gram);
  return {ng_nm < 0 ? -grams : grams};
}

}  // namespace

std::string MoneyText(FineMoney money) {
  const std::string text = Hundredths(money.micro, 100'000'000);
  return (money.micro < 0 && text != "0.00" ? "-" : "") + text;
}

std::string MetresText(Length length) {
  const std::string text = Hundredths(length.nm, 1'000'000'000);
  return (length.nm < 0 && text != "0.00" ? "-" : "") + text + " m";
}

bool HasPrices(const Problem& problem, const Plan& plan) {
  return !plan.layouts.empty() && std::all_of(plan.layouts.begin(), plan.layouts.end(), [&](const Layout& layout) {
    const Piece& piece = problem.pieces.at(static_cast<std::size_t>(layout.piece));
    return !piece.owner.empty() || piece.costs.per_metre.micro > 0;
  });
}

Difference DifferenceOf(const Problem& problem, const Plan& plan, const Problem& other_problem, const Plan& other) {
  const Value &a = plan.value, &b = other.value;
  Difference d;
  d.unmet_pieces = a.unmet_pieces - b.unmet_pieces;
  d.bars_opened = a.bars_opened - b.bars_opened;
  d.pieces_pulled = a.pieces_pulled - b.pieces_pulled;
  d.layouts = a.layouts - b.layouts;
  d.new_length = a.new_length - b.new_length;
  d.consumed_length = a.consumed_length - b.consumed_length;
  d.lost_worth = a.lost_worth - b.lost_worth;
  const auto mass = NewMass(problem, plan), other_mass = NewMass(other_problem, other);
  if (mass && other_mass) d.new_mass = Grams(*mass - *other_mass);
  if (HasPrices(problem, plan) && HasPrices(other_problem, other)) d.money = FineMoney{a.money.micro - b.money.micro};
  return d;
}

std::string DifferenceWords(const Difference& d) {
  std::string words;
  const auto add = [&](const std::string& part) { words += (words.empty() ? "" : ", ") + part; };
  const auto plain = [](auto n) { return n < 0 ? -n : n; };
  if (d.unmet_pieces != 0) add(std::to_string(plain(d.unmet_pieces)) + (d.unmet_pieces < 0 ? " fewer" : " more") + " cuts short");
  if (d.new_length.nm != 0) {
    add(MetresText({plain(d.new_length.nm)}) + (d.new_length.nm < 0 ? " less full bar" : " more full bar"));
    if (d.new_mass) add(WriteKg({plain(d.new_mass->g)}) + " kg");
    if (d.bars_opened != 0)
      add(std::to_string(plain(d.bars_opened)) + (d.bars_opened < 0 ? " fewer" : " more") + (plain(d.bars_opened) == 1 ? " bar" : " bars") +
          " opened");
  } else if (d.lost_worth.nm != 0) {
    add("metal as good as " + MetresText({plain(d.lost_worth.nm)}) + " of full bar " + (d.lost_worth.nm < 0 ? "less" : "more") +
        " used up");
  }
  if (d.money && MoneyText(*d.money) != "0.00") add(MoneyText({plain(d.money->micro)}) + (d.money->micro < 0 ? " cheaper" : " dearer"));
  if (d.new_length.nm == 0 && d.pieces_pulled != 0)
    add(std::to_string(plain(d.pieces_pulled)) + (d.pieces_pulled < 0 ? " fewer" : " more") +
        (plain(d.pieces_pulled) == 1 ? " piece" : " pieces") + " pulled");
  return words.empty() ? "the same metal" : words;
}

Choice ChooseBetween(const Problem& problem, const Plan& searched, const Plan& by_hand, FineMoney least_gain) {
  const Key lead = KeysOf(problem.aim).at(1);
  const bool as_good = searched.value.unmet_by_priority == by_hand.value.unmet_by_priority &&
      (lead == Key::Money || FigureOf(by_hand.value, lead) <= FigureOf(searched.value, lead));
  const Difference d = DifferenceOf(problem, searched, problem, by_hand);
  Choice choice;
  if (searched.value == by_hand.value) {
    choice.words = "a plan by hand takes the same metal";
    return choice;
  }
  choice.words = "against the plan by hand: " + DifferenceWords(d);
  if (!as_good || !d.money || least_gain.micro <= 0 || -d.money->micro >= least_gain.micro) return choice;
  choice.plain = true;
  const FineMoney gain{-d.money->micro};
  choice.words = "the plan by hand is taken: " +
      (MoneyText(gain) == "0.00" ? "it costs no more"
           : gain.micro < 0      ? "it is " + MoneyText({-gain.micro}) + " cheaper"
                                 : "it costs " + MoneyText(gain) + " more, less than " + MoneyText(least_gain));
  Difference metal = DifferenceOf(problem, by_hand, problem, searched);
  metal.money.reset();
  choice.words += "; it takes " + DifferenceWords(metal);
  return choice;
}

}  // namespace heatkeep::allocator
