#include "tests/walk/spoil.h"

#include <array>

namespace heatkeep {
namespace {

template <typename List>
const auto& OneOf(Dice& dice, const List& list) {
  return list[dice() % std::size(list)];
}

std::string BadText(Dice& dice, const std::string& other) {
  static const std::array<std::string, 11> kTexts{"",
                                                  " ",
                                                  "O'Brien \\\"x\\\" %s $1 {}",
                                                  "'; drop table book.piece; --",
                                                  "\\u0041\\n\t\xE2\x82\xAC",
                                                  "A999999X",
                                                  "-1",
                                                  "M 2208",
                                                  "infinity",
                                                  "-Infinity",
                                                  std::string(5000, 'x')};
  return dice() % 4 == 0 ? other : OneOf(dice, kTexts);
}

Json BadValue(Dice& dice, const std::string& other) {
  switch (dice() % 8) {
    case 0: return nullptr;
    case 1: return -1;
    case 2: return 0;
    case 3: return OneOf(dice, std::array<Json, 5>{9'223'372'036'854'775'807, 2'000'000'000, 1e30, 1.5, -6'000'000'000});
    case 4: return OneOf(dice, std::array<Json, 4>{Json::array(), Json::object(), true, Json::array({1, "x"})});
    default: return BadText(dice, other);
  }
}

// A random leaf or branch of the body is replaced or left out.
void SpoilInside(Dice& dice, Json& body, const std::string& other) {
  if (body.empty() || !body.is_structured()) {
    body = BadValue(dice, other);
    return;
  }
  auto at = body.begin();
  std::advance(at, static_cast<std::ptrdiff_t>(dice() % body.size()));
  if (at->is_structured() && !at->empty() && dice() % 4 != 0) {
    SpoilInside(dice, *at, other);
  } else if (body.is_object() && dice() % 3 == 0) {
    body.erase(at);
  } else {
    *at = BadValue(dice, other);
  }
}

}  // namespace

Argument Spoil(Dice& dice, const std::string& type, const Argument& value, const std::string& other) {
  if (dice() % 6 == 0) return std::nullopt;
  if (type == "jsonb") {
    if (!value || dice() % 12 == 0) return BadValue(dice, other).dump();
    Json body = Json::parse(*value);
    SpoilInside(dice, body, other);
    return body.dump();
  }
  if (type == "bigint") return OneOf(dice, std::array<std::string, 5>{"-1", "0", "9223372036854775807", "1", "-6000000000"});
  if (type == "integer") return OneOf(dice, std::array<std::string, 4>{"-1", "0", "2147483647", "1"});
  if (type == "boolean") return dice() % 2 == 0 ? "t" : "f";
  if (type.starts_with("timestamp"))
    return OneOf(dice, std::array<std::string, 5>{"2099-01-01", "1900-01-01", "-infinity", "infinity", "2026-01-01 06:00+05"});
  return BadText(dice, other);
}

}  // namespace heatkeep
