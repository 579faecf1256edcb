#include "client/command/search_watch.h"

#include <chrono>

#include "client/allocator/compare.h"

namespace heatkeep::command {
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
  words += lead == Key::Money ? "costs " : lead == Key::ConsumedLength ? "takes " : "opens ";
  words += FigureText(lead, allocator::FigureOf(value, lead));
  if (const auto at_least = bound.figures.find(lead); at_least != bound.figures.end())
    words += ", at least " + FigureText(lead, at_least->second) + " is needed";
  return words;
}

allocator::Plan Searched(const allocator::Problem& problem, std::ostream& err) {
  SearchWatch watch(err, problem.aim);
  return allocator::Allocate(problem, watch.Token(), watch.Shown());
}

SearchWatch::SearchWatch(std::ostream& err, allocator::Aim aim) : watch_(err), aim_(aim) {
  listener_ = std::jthread([stop = stop_](const std::stop_token& over) mutable {
    while (!over.stop_requested()) {
      if (WorkWatch::Interrupted()) {
        stop.request_stop();
        return;
      }
      std::this_thread::sleep_for(std::chrono::milliseconds(20));
    }
  });
}

allocator::Progress SearchWatch::Shown() {
  if (!watch_.Shown()) return {};
  return [this](const allocator::Value& value, const allocator::Bound& bound) {
    watch_.Say([&](std::int64_t seconds) { return std::to_string(seconds) + " s: " + ProgressWords(aim_, value, bound) + "; Ctrl-C takes this"; });
  };
}

}  // namespace heatkeep::command
