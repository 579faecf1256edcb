#include "client/planning/watched_search.h"

#include "client/allocator/allocate.h"
#include "client/allocator/compare.h"

namespace heatkeep::planning {
namespace {

using allocator::Key;

std::string FigureText(Key key, std::int64_t figure) {
  switch (key) {
    case Key::Money: return allocator::MoneyText({figure});
    case Key::NewLength:
    case Key::ConsumedLength:
    case Key::LostWorth: return allocator::MetresText({figure});
    case Key::BarsOpened: return std::to_string(figure) + (figure == 1 ? " bar" : " bars");
    case Key::Unmet:
    case Key::PiecesPulled:
    case Key::Layouts: break;
  }
  return std::to_string(figure);
}

}  // namespace

std::string ProgressWords(allocator::Aim aim, const allocator::Value& value, const allocator::Bound& bound) {
  const Key lead = allocator::KeysOf(aim).at(1);
  std::string words;
  if (value.unmet_pieces > 0) words = std::to_string(value.unmet_pieces) + " short, ";
  const std::string figure = FigureText(lead, allocator::FigureOf(value, lead));
  words += lead == Key::Money ? "costs " + figure : lead == Key::ConsumedLength ? "takes " + figure : "opens " + figure;
  if (const auto at_least = bound.figures.find(lead); at_least != bound.figures.end())
    words += ", at least " + FigureText(lead, at_least->second) + " is needed";
  return words;
}

std::string EndedWords(const allocator::Plan& plan) {
  if (plan.ended_by == allocator::EndedBy::Stopped) return "the search was stopped; this is the best it had found";
  if (plan.ended_by == allocator::EndedBy::Clock) return "the search ended by the clock; more seconds may give a better plan";
  return {};
}

Searcher Watched(std::stop_token stop, std::function<void(const std::string& words)> told) {
  return [stop = std::move(stop), told = std::move(told)](const allocator::Problem& problem) {
    return allocator::Allocate(problem, stop, [&](const allocator::Value& value, const allocator::Bound& bound) {
      if (told) told(ProgressWords(problem.aim, value, bound));
    });
  };
}

}  // namespace heatkeep::planning
