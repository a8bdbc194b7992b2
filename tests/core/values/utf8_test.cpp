#include "core/values/utf8.h"

#include <string>

#include <gtest/gtest.h>

namespace headcap::core {
namespace {

TEST(Utf8, whatIsUtf8HasNoSuchLine) {
    for (const char* text : {"", "A8", "C⁴ π² — ſ\n\xF0\x9D\x84\x9E", "\n\n"}) {
        EXPECT_FALSE(firstLineNotUtf8(text)) << text;
    }
}

// RFC 3629, sections 3 and 10: bytes of another encoding, overlong forms, surrogates, what is
// beyond U+10FFFF, what is cut off.
TEST(Utf8, tellsTheLineOnWhichItStopsBeingSo) {
    for (const std::string bad : {"\xE9", "\xC0\x80", "\xE0\x80\xAF", "\xED\xA0\x80",
                                  "\xF4\x90\x80\x80", "\xE2\x82", "\x80", "\xFE\xFF"}) {
        EXPECT_EQ(firstLineNotUtf8(bad), 1U);
        EXPECT_EQ(firstLineNotUtf8("é\nü\n" + bad + "\n" + bad), 3U);
    }
}

} // namespace
} // namespace headcap::core
