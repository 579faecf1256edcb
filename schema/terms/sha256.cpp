#include "schema/terms/sha256.h"

#include <algorithm>
#include <bit>

namespace heatkeep {
namespace {

// FIPS 180-4, 4.2.2: the first 32 bits of the fractional parts of the cube roots of the first 64 primes.
constexpr std::array<std::uint32_t, 64> kRound{
    0x428a2f98, 0x71374491, 0xb5c0fbcf, 0xe9b5dba5, 0x3956c25b, 0x59f111f1, 0x923f82a4, 0xab1c5ed5, 0xd807aa98, 0x12835b01, 0x243185be,
    0x550c7dc3, 0x72be5d74, 0x80deb1fe, 0x9bdc06a7, 0xc19bf174, 0xe49b69c1, 0xefbe4786, 0x0fc19dc6, 0x240ca1cc, 0x2de92c6f, 0x4a7484aa,
    0x5cb0a9dc, 0x76f988da, 0x983e5152, 0xa831c66d, 0xb00327c8, 0xbf597fc7, 0xc6e00bf3, 0xd5a79147, 0x06ca6351, 0x14292967, 0x27b70a85,
    0x2e1b2138, 0x4d2c6dfc, 0x53380d13, 0x650a7354, 0x766a0abb, 0x81c2c92e, 0x92722c85, 0xa2bfe8a1, 0xa81a664b, 0xc24b8b70, 0xc76c51a3,
    0xd192e819, 0xd6990624, 0xf40e3585, 0x106aa070, 0x19a4c116, 0x1e376c08, 0x2748774c, 0x34b0bcb5, 0x391c0cb3, 0x4ed8aa4a, 0x5b9cca4f,
    0x682e6ff3, 0x748f82ee, 0x78a5636f, 0x84c87814, 0x8cc70208, 0x90befffa, 0xa4506ceb, 0xbef9a3f7, 0xc67178f2};

constexpr std::size_t kBlock = 64;

}  // namespace

// FIPS 180-4, 6.2.2.
void Sha256::TakeBlock(State& state, const char* bytes) {
  std::array<std::uint32_t, 64> w{};
  for (std::size_t t = 0; t < 16; ++t)
    for (std::size_t b = 0; b < 4; ++b) w[t] = (w[t] << 8) | static_cast<std::uint8_t>(bytes[4 * t + b]);
  for (std::size_t t = 16; t < 64; ++t) {
    const std::uint32_t s0 = std::rotr(w[t - 15], 7) ^ std::rotr(w[t - 15], 18) ^ (w[t - 15] >> 3);
    const std::uint32_t s1 = std::rotr(w[t - 2], 17) ^ std::rotr(w[t - 2], 19) ^ (w[t - 2] >> 10);
    w[t] = s1 + w[t - 7] + s0 + w[t - 16];
  }
  auto [a, b, c, d, e, f, g, h] = state;
  for (std::size_t t = 0; t < 64; ++t) {
    const std::uint32_t t1 = h + (std::rotr(e, 6) ^ std::rotr(e, 11) ^ std::rotr(e, 25)) + ((e & f) ^ (~e & g)) + kRound[t] + w[t];
    const std::uint32_t t2 = (std::rotr(a, 2) ^ std::rotr(a, 13) ^ std::rotr(a, 22)) + ((a & b) ^ (a & c) ^ (b & c));
    h = g;
    g = f;
    f = e;
    e = d + t1;
    d = c;
    c = b;
    b = a;
    a = t1 + t2;
  }
  const State worked{a, b, c, d, e, f, g, h};
  for (std::size_t i = 0; i < state.size(); ++i) state[i] += worked[i];
}

void Sha256::Take(std::string_view bytes) {
  taken_ += bytes.size();
  if (!rest_.empty()) {
    const std::size_t more = std::min(kBlock - rest_.size(), bytes.size());
    rest_ += bytes.substr(0, more);
    bytes.remove_prefix(more);
    if (rest_.size() < kBlock) return;
    TakeBlock(state_, rest_.data());
    rest_.clear();
  }
  for (; bytes.size() >= kBlock; bytes.remove_prefix(kBlock)) TakeBlock(state_, bytes.data());
  rest_ = bytes;
}

std::string Sha256::Hex() const {
  // 5.1.1: a one bit, zeros, and the length in bits as 64 bits make it whole blocks.
  std::string last = rest_ + '\x80';
  while (last.size() % kBlock != 56) last += '\0';
  const std::uint64_t bits = taken_ * 8;
  for (int shift = 56; shift >= 0; shift -= 8) last += static_cast<char>((bits >> shift) & 0xff);
  State state = state_;
  for (std::size_t at = 0; at < last.size(); at += kBlock) TakeBlock(state, last.data() + at);

  std::string hex;
  for (const std::uint32_t word : state)
    for (int shift = 28; shift >= 0; shift -= 4) hex += "0123456789abcdef"[(word >> shift) & 0xf];
  return hex;
}

std::string Sha256Hex(std::string_view bytes) {
  Sha256 digest;
  digest.Take(bytes);
  return digest.Hex();
}

}  // namespace heatkeep
