#include "client/allocator/plan.h"

namespace heatkeep::allocator {

std::vector<Key> KeysOf(Aim aim) {
  switch (aim) {
    case Aim::DropsFirst: return {Key::Unmet, Key::NewLength, Key::LostWorth, Key::PiecesPulled, Key::Layouts};
    case Aim::LeastMoney: return {Key::Unmet, Key::Money};
    case Aim::FewestBars: return {Key::Unmet, Key::BarsOpened, Key::NewLength, Key::LostWorth, Key::PiecesPulled, Key::Layouts};
    case Aim::LeastMetres: return {Key::Unmet, Key::ConsumedLength};
  }
  return {};
}

std::string NameOf(Key key) {
  switch (key) {
    case Key::Unmet: return "unmet_pieces";
    case Key::BarsOpened: return "bars_opened";
    case Key::NewLength: return "new_length";
    case Key::ConsumedLength: return "consumed_length";
    case Key::LostWorth: return "lost_worth";
    case Key::Money: return "money";
    case Key::PiecesPulled: return "pieces_pulled";
    case Key::Layouts: return "layouts";
  }
  return {};
}

std::int64_t FigureOf(const Value& value, Key key) {
  switch (key) {
    case Key::Unmet: return value.unmet_pieces;
    case Key::BarsOpened: return value.bars_opened;
    case Key::NewLength: return value.new_length.nm;
    case Key::ConsumedLength: return value.consumed_length.nm;
    case Key::LostWorth: return value.lost_worth.nm;
    case Key::Money: return value.money.micro;
    case Key::PiecesPulled: return value.pieces_pulled;
    case Key::Layouts: return value.layouts;
  }
  return 0;
}

}  // namespace heatkeep::allocator
