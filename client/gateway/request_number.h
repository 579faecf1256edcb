// Request numbers (UUID, RFC 9562): every deed carries one; the same number twice does nothing twice.
#pragma once

#include <string>

namespace heatkeep {

struct RequestNumber {
  std::string text;  // 8-4-4-4-12 hex digits
};

// A fresh random one (version 4).
RequestNumber NewRequest();

// The one that belongs to these 32 bytes of a digest, always the same (version 8): so that a file given twice is one deed.
RequestNumber RequestFromDigest(const std::string& hex_digest);

}  // namespace heatkeep
