#include "core/record/kind_words.h"

#include <set>

#include <gtest/gtest.h>

namespace headcap::core {
namespace {

TEST(KindWords, countsEachKindInItsOwnNumber) {
    EXPECT_EQ(countsText({{RecordKind::finding, 1}, {RecordKind::step, 2}}),
              "1 finding and 2 steps");
    EXPECT_EQ(countsText({{RecordKind::ledgerEntry, 2}, {RecordKind::person, 3}}),
              "2 ledger entries and 3 people");
    EXPECT_EQ(countsText({{RecordKind::item, 1}, {RecordKind::lotPart, 2}, {RecordKind::job, 1}}),
              "1 book, 2 parts of the mix and 1 job");
    EXPECT_EQ(countsText({}), "");
}

TEST(KindWords, oneHasItsArticle) {
    EXPECT_EQ(oneOf(RecordKind::step), "a step");
    EXPECT_EQ(oneOf(RecordKind::issuedReport), "an issued report");
    EXPECT_EQ(oneOf(RecordKind::materialUse), "a use of a material");
}

// No two kinds are called alike, none by the name it is kept under where that is not said.
TEST(KindWords, everyKindHasItsOwnWords) {
    std::set<std::string_view> nouns;
    for (std::size_t i = 0; i < kRecordKindCount; ++i) {
        const auto kind = static_cast<RecordKind>(i);
        EXPECT_TRUE(nouns.insert(nounOf(kind)).second) << nounOf(kind);
        EXPECT_EQ(nounOf(kind).find('_'), std::string_view::npos) << nounOf(kind);
        EXPECT_EQ(countsText({{kind, 1}}), "1 " + std::string{nounOf(kind)});
        EXPECT_NE(countsText({{kind, 2}}), "2 " + std::string{nounOf(kind)});
    }
}

} // namespace
} // namespace headcap::core
