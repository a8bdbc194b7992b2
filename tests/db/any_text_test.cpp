// Any text in any field: a megabyte, control characters, right to left, quotes, what looks like
// SQL, markup. It is kept to the byte, through the journal, undo and a backup; or it is refused
// with the record named, where it is not UTF-8.
#include <gtest/gtest.h>

#include "tests/db/workshop_fixture.h"
#include "tests/support/valid_records.h"

namespace headcap::core {
namespace {

const Progress kGoOn = [](std::int64_t, std::int64_t) { return true; };

// The values a column of free text may hold; others have their own rules.
template <class Record>
void fillTexts(Record& record, const std::string& text) {
    std::apply(
        [&](const auto&... fields) {
            const auto fill = [&](const auto& field) {
                if constexpr (std::is_same_v<std::decay_t<decltype(record.*(field.member))>,
                                             std::string>) {
                    record.*(field.member) = text;
                }
            };
            (fill(fields), ...);
        },
        Description<Record>::fields());
}

class AnyTextTest : public test::WorkshopFixture,
                    public ::testing::WithParamInterface<std::string> {};

TEST_P(AnyTextTest, isKeptToTheByteInEveryKindOfRecord) {
    test::Chance chance{7};
    test::ValidRecords valid(stores(), ids, chance);
    std::vector<AnyRecord> kept;
    for (std::size_t i = 0; i < kRecordKindCount; ++i) {
        for (int tries = 0; tries < 40; ++tries) {
            auto made = valid.make(static_cast<RecordKind>(i));
            if (!made) {
                continue;
            }
            std::visit([&](auto& record) { fillTexts(record, GetParam()); }, *made);
            if (records().apply(Change{.sentence = GetParam(), .who = person.id}.add(*made))) {
                kept.push_back(*made);
                break;
            }
        }
    }
    EXPECT_GE(kept.size(), 25U) << "of most kinds";
    reopen();
    for (const AnyRecord& record : kept) {
        const auto found = records().find(refOf(record));
        ASSERT_TRUE(found) << nameOf(kindOf(record));
        EXPECT_TRUE(found->record == record) << nameOf(kindOf(record));
        const auto history = journal().historyOf(refOf(record));
        ASSERT_EQ(history.size(), 1U);
        EXPECT_EQ(history[0].sentence, GetParam());
    }
    for (const VerifyFinding& finding : stores().upkeep.verify(kGoOn).findings) {
        // Chance ledgers and files.
        EXPECT_TRUE(finding.what == "ledger" || finding.what == "photograph" ||
                    finding.what == "attachment" || finding.what == "report")
            << finding.sentence;
    }
    (void)stores().upkeep.backup(temp.path() / "backup", kGoOn);
    ASSERT_TRUE(workshops.restore(temp.path() / "backup", temp.path() / "restored", kGoOn));
    const auto restored = workshops.open(temp.path() / "restored");
    for (const AnyRecord& record : kept) {
        EXPECT_TRUE(restored->stores().records.find(refOf(record))->record == record);
    }
}

std::string megabyte() {
    std::string text;
    while (text.size() < 1'000'000) {
        text += "paste, tissue, ſewn; \"so\" ";
    }
    return text;
}

INSTANTIATE_TEST_SUITE_P(
    Texts, AnyTextTest,
    ::testing::Values(
        std::string("\x01\x02\x1b[31m\x7f tab\t bell\x07"), std::string("a\0b", 3),
        std::string("line\nline\r\nline\u2028end"),
        std::string("\u202eright to left\u202c שלום עליכם \u0645\u0631\u062d\u0628\u0627"),
        std::string("'; DROP TABLE job; -- \"quoted\" `ticks` \\ back"),
        std::string("<b>bold</b> &amp; <script>alert(1)</script> %1 %n {0}"),
        std::string("e\u0301\u0323 \U0001F4D6 \uFFFD \uFEFF z\u0300\u0300\u0300")),
    [](const auto& text) { return "text" + std::to_string(text.index); });

class LongTextTest : public test::WorkshopFixture {};

TEST_F(LongTextTest, aMegabyteIsKeptAndFound) {
    const Finding finding = aFinding(megabyte() + "palimpsest");
    test::mustApply(records(), Change{.sentence = "Long"}.add(finding));
    reopen();
    EXPECT_EQ(find(records(), finding.id)->record, finding);
    EXPECT_EQ(stores().search.find("palimpsest", 5).hits.size(), 1U);
    EXPECT_TRUE(stores().upkeep.verify(kGoOn).isClean());
}

TEST_F(LongTextTest, whatIsNotUtf8IsRefusedAndNamed) {
    for (const char* bytes : {"\xff", "caf\xe9", "\xc3", "\xed\xa0\x80"}) {
        const Finding finding = aFinding(bytes);
        const auto made = records().apply(Change{.sentence = "Bytes"}.add(finding));
        ASSERT_FALSE(made) << bytes;
        EXPECT_EQ(made.error().record, refOf(finding.id));
        EXPECT_FALSE(find(records(), finding.id));
    }
    EXPECT_TRUE(stores().upkeep.verify(kGoOn).isClean());
}

} // namespace
} // namespace headcap::core
