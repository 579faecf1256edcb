#include "client/allocator/proof_words.h"

namespace heatkeep::allocator {
namespace {

// Hundredths as "12.05".
std::string Hundredths(std::int64_t hundredths) {
  return std::to_string(hundredths / 100) + "." + std::to_string(100 + hundredths % 100).substr(1);
}

// Metres with two decimals, rounded half up.
std::string Metres(std::int64_t nm) { return Hundredths((nm + 5'000'000) / 10'000'000) + " m"; }

std::string Amount(Key key, std::int64_t figure) {
  switch (key) {
    case Key::BarsOpened: return std::to_string(figure) + (figure == 1 ? " full bar" : " full bars");
    case Key::Money: return Hundredths((figure + 500'000) / 1'000'000);
    case Key::NewLength:
    case Key::ConsumedLength:
    case Key::LostWorth: return Metres(figure);
    default: return std::to_string(figure);
  }
}

std::string NoneLess(Key key) {
  switch (key) {
    case Key::ConsumedLength: return "no plan uses less (proved)";
    case Key::Money: return "no plan costs less (proved)";
    default: return "no plan opens less (proved)";
  }
}

std::string What(const Problem& problem, const Plan& plan) {
  int drops = 0;
  for (const Layout& layout : plan.layouts) {
    if (problem.pieces[static_cast<std::size_t>(layout.piece)].kind == PieceKind::Drop) drops += layout.repeat;
  }
  std::string words = "takes " + std::to_string(drops) + (drops == 1 ? " drop" : " drops");
  if (plan.value.bars_opened == 0) words += ", opens no full bar";
  else words += ", opens " + Amount(Key::BarsOpened, plan.value.bars_opened) + ", " + Metres(plan.value.new_length.nm);
  if (problem.aim == Aim::LeastMoney) words += ", costs " + Amount(Key::Money, plan.value.money.micro);
  if (problem.aim == Aim::LeastMetres) words += ", uses " + Metres(plan.value.consumed_length.nm);
  return words;
}

}  // namespace

std::string ProofWords(const Problem& problem, const Plan& plan) {
  std::string words;
  if (plan.value.unmet_pieces > 0)
    words = std::to_string(plan.value.unmet_pieces) + (plan.value.unmet_pieces == 1 ? " cut" : " cuts") + " cannot be served; ";
  words += What(problem, plan);
  const Key lead = KeysOf(problem.aim).at(1);
  const std::int64_t value = FigureOf(plan.value, lead);
  if (plan.proved) return words + "; " + NoneLess(lead);
  const auto bound = plan.bound.figures.find(lead);
  if (bound == plan.bound.figures.end()) return words + "; how near the best it is was not worked out";
  return words + "; at most " + Amount(lead, value - bound->second) + " from the best possible";
}

}  // namespace heatkeep::allocator
