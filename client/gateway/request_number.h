// Request numbers (UUID, RFC 9562): every deed carries one; the same number twice does nothing twice.
#pragma once

#include <cstdint>
#include <string>

namespace heatkeep {

struct RequestNumber {
  std::string text;  // 8-4-4-4-12 hex digits
};

// A fresh one (version 7): the time and 74 random bits, so that the book's index of them grows at its end.
RequestNumber NewRequest();

// The one of this moment (milliseconds since 1970, UTC; 48 bits of it) with these random hex digits: 20, of whose bits 74 count.
RequestNumber RequestAt(std::uint64_t unix_ms, const std::string& random_hex);

// The one that belongs to these 32 bytes of a digest, always the same (version 8): so that a file given twice is one deed.
RequestNumber RequestFromDigest(const std::string& hex_digest);

}  // namespace heatkeep
