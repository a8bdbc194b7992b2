#include "app/session/sentences.h"

#include <set>

#include <gtest/gtest.h>

#include "app/session/settings.h"
#include "app/session/words.h"
#include "core/record/kind_words.h"

namespace headcap::app {
namespace {

// One sentence: begins with a capital or a quotation, ends with a full stop, and has no hole.
void expectSentence(const QString& text, const std::string& what) {
    ASSERT_FALSE(text.isEmpty()) << what;
    EXPECT_TRUE(text.at(0).isUpper() || text.startsWith(QStringLiteral("“"))) << text.toStdString();
    EXPECT_TRUE(text.endsWith(QLatin1Char('.')) || text.contains(QLatin1Char(':')))
        << text.toStdString();
    EXPECT_FALSE(text.contains(QLatin1Char('%'))) << text.toStdString();
}

TEST(Sentences, areThereForEveryRefusal) {
    std::set<QString> seen;
    for (int code = 0; code <= static_cast<int>(core::Refusal::Code::nothingToUndo); ++code) {
        const core::Refusal refusal{static_cast<core::Refusal::Code>(code), {}, {}};
        expectSentence(sentence(refusal), "refusal " + std::to_string(code));
        EXPECT_TRUE(seen.insert(sentence(refusal)).second) << code;
    }
}

TEST(Sentences, sayWhatStillNamesARecordAndWhatIsGone) {
    const core::RecordRef lot{core::RecordKind::lot,
                              *core::Uuid::fromText("019a0000-0000-7000-8000-000000000001")};
    using Code = core::Refusal::Code;
    EXPECT_EQ(sentence(core::Refusal{Code::stillNamed, lot, "1 finding and 2 steps"}).toStdString(),
              "It stays: the lot is still named by 1 finding and 2 steps.");
    EXPECT_EQ(sentence(core::Refusal{Code::namesNothing, lot, "a material"}).toStdString(),
              "Nothing was saved: it names a material that is no longer there.");
}

TEST(Sentences, areThereForEveryFailureOfTheStore) {
    std::set<QString> seen;
    for (int code = 0; code <= static_cast<int>(core::StoreError::Code::internal); ++code) {
        const core::StoreError error{static_cast<core::StoreError::Code>(code), "detail"};
        expectSentence(sentence(error), "store error " + std::to_string(code));
        EXPECT_TRUE(seen.insert(sentence(error)).second) << code;
    }
}

TEST(Sentences, areThereForEveryTextThatCannotBeRead) {
    for (int problem = 0; problem <= static_cast<int>(core::TextProblem::malformed); ++problem) {
        for (int reading = 0; reading <= static_cast<int>(Reading::number); ++reading) {
            const QString text =
                sentence(core::TextError{static_cast<core::TextProblem>(problem), 0},
                         static_cast<Reading>(reading));
            ASSERT_FALSE(text.isEmpty()) << problem << " " << reading;
            EXPECT_TRUE(text.endsWith(QLatin1Char('.'))) << text.toStdString();
        }
    }
}

TEST(Words, nameEveryKindOfRecordAndState) {
    EXPECT_EQ(allWords<core::RecordKind>().size(), static_cast<int>(core::kRecordKindCount));
    for (std::size_t i = 0; i < core::kRecordKindCount; ++i) {
        // As core's own sentences call it.
        const auto kind = static_cast<core::RecordKind>(i);
        EXPECT_EQ(words(kind).toStdString(), "the " + std::string{core::nounOf(kind)});
    }
    for (const QString& word : allWords<core::JobState>()) {
        EXPECT_FALSE(word.isEmpty());
    }
}

TEST(Settings, areEachInTheTableOnceUnderTheirOwnKey) {
    std::set<std::string> keys;
    int at = 0;
    for (const SettingEntry& entry : settingTable()) {
        EXPECT_EQ(static_cast<int>(entry.id), at++) << entry.key;
        EXPECT_TRUE(keys.insert(entry.key).second) << entry.key;
        EXPECT_TRUE(entry.fallback.isValid()) << entry.key;
    }
    EXPECT_EQ(at, static_cast<int>(Setting::watchedFolder) + 1);
}

} // namespace
} // namespace headcap::app
