#include "seed/scenario/draw.h"

#include <limits>
#include <stdexcept>

namespace heatkeep::scenario {

namespace {

constexpr std::uint64_t kShopSeed = 20261125;

// FNV-1a over the subject's bytes (from memory; any fixed mixing would do).
std::uint64_t mixed(std::string_view subject) {
  std::uint64_t h = 14695981039346656037ULL ^ kShopSeed;
  for (const char c : subject) {
    h ^= static_cast<unsigned char>(c);
    h *= 1099511628211ULL;
  }
  return h;
}

}  // namespace

Draw::Draw(std::string_view subject) : raw_(mixed(subject)) {}

std::int64_t Draw::from(std::int64_t least, std::int64_t most) {
  if (most < least) throw std::invalid_argument("Draw::from: the range is empty");
  const std::uint64_t span = static_cast<std::uint64_t>(most - least) + 1;
  const std::uint64_t top = std::numeric_limits<std::uint64_t>::max();
  const std::uint64_t usable = top - (top % span + 1) % span;  // last value of the last whole run
  std::uint64_t r = raw_();
  while (r > usable) r = raw_();
  return least + static_cast<std::int64_t>(r % span);
}

}  // namespace heatkeep::scenario
