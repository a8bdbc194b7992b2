#include "core/values/digest.h"

#include <string>

#include <gtest/gtest.h>

namespace headcap::core {
namespace {

// FIPS 180-2, appendix B, and the empty message of NIST's validation vectors.
TEST(Sha256, isThatOfTheStandard) {
    EXPECT_EQ(sha256("abc").hex(),
              "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    EXPECT_EQ(sha256("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq").hex(),
              "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
    EXPECT_EQ(sha256(std::string(1'000'000, 'a')).hex(),
              "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
    EXPECT_EQ(sha256("").hex(), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
}

TEST(Sha256, isTheSamePieceByPieceAndBeginsAnew) {
    const std::string text(1'000, 'x');
    Sha256 hash;
    for (int round = 0; round < 2; ++round) {
        for (std::size_t at = 0; at < text.size(); at += 7) {
            hash.add(std::as_bytes(
                std::span(text).subspan(at, std::min<std::size_t>(7, text.size() - at))));
        }
        EXPECT_EQ(hash.finish(), sha256(text));
    }
}

TEST(Digest, readsItsHex) {
    const Digest digest = sha256("abc");
    EXPECT_EQ(Digest::fromHex(digest.hex()), digest);
    EXPECT_FALSE(Digest::fromHex("").has_value());
    EXPECT_FALSE(Digest::fromHex(std::string(64, 'G')).has_value());
    EXPECT_FALSE(Digest::fromHex(std::string(64, 'A')).has_value());
    EXPECT_FALSE(Digest::fromHex(std::string(63, 'a')).has_value());
}

} // namespace
} // namespace headcap::core
