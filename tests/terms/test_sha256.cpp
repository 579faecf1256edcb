// Vectors: NIST, "Examples with Intermediate Values", SHA256.pdf (one block: "abc"; two blocks: the 448-bit
// message); the million a's: FIPS 180-2, appendix B.3; the empty message: NIST CAVP SHA256ShortMsg.rsp, Len =
// 0.
#include "schema/terms/sha256.h"

#include <gtest/gtest.h>

namespace heatkeep {
namespace {

TEST(Sha256, OfTheEmptyMessage) { EXPECT_EQ(Sha256Hex(""), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"); }

TEST(Sha256, OfAbc) { EXPECT_EQ(Sha256Hex("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"); }

TEST(Sha256, OfTheMessageOf448Bits) {
  EXPECT_EQ(Sha256Hex("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq"),
            "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
}

TEST(Sha256, OfAMillionTimesA) {
  EXPECT_EQ(Sha256Hex(std::string(1'000'000, 'a')), "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
}

}  // namespace
}  // namespace heatkeep
