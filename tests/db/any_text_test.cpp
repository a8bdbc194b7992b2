// Any text in any field: a megabyte, control characters, right to left, quotes, what looks like
// SQL, markup. It is kept to the byte, through the journal, undo and a backup; or it is refused
// with the record named, where it is not UTF-8.
#include <gtest/gtest.h>

#include "tests/db/workshop_fixture.h"
#include "tests/support/valid_records.h"

namespace headcap::core {
namespace {

const Progress kGoOn = [](std::int64_t, std::int64_t) { return true; };

// Each text of a record in turn, its column's name beside it.
template <class Record, class Visit>
void eachText(Record& record, Visit visit) {
    std::apply(
        [&](const auto&... fields) {
            const auto one = [&](const auto& field) {
                if constexpr (std::is_same_v<std::decay_t<decltype(record.*(field.member))>,
                                             std::string>) {
                    visit(field.name, record.*(field.member));
                }
            };
            (one(fields), ...);
        },
        Description<Record>::fields());
}

std::vector<std::string> textColumns(AnyRecord record) {
    std::vector<std::string> names;
    std::visit(
        [&](auto& one) {
            eachText(one, [&](std::string_view name, std::string&) { names.emplace_back(name); });
        },
        record);
    return names;
}

void setText(AnyRecord& record, std::string_view column, const std::string& text) {
    std::visit(
        [&](auto& one) {
            eachText(one, [&](std::string_view name, std::string& value) {
                if (name == column) {
                    value = text;
                }
            });
        },
        record);
}

class AnyTextTest : public test::WorkshopFixture,
                    public ::testing::WithParamInterface<std::string> {
protected:
    // A record of this kind for each of its texts, that text being the one.
    void tryKind(RecordKind kind) {
        const auto plain = aRecord(kind);
        if (!plain) {
            ADD_FAILURE() << "nothing of the kind " << nameOf(kind);
            return;
        }
        for (const std::string& column : textColumns(*plain)) {
            tryColumn(kind, column);
        }
    }
    // One that is kept; what it must name is made before it.
    std::optional<AnyRecord> aRecord(RecordKind kind) {
        for (int tries = 0; tries < 40; ++tries) {
            const auto made = valid.make(kind);
            if (made && records().apply(Change{.sentence = "Made", .who = person.id}.add(*made))) {
                return made;
            }
        }
        return std::nullopt;
    }
    void tryColumn(RecordKind kind, const std::string& column) {
        const std::string name = std::string{nameOf(kind)} + '.' + column;
        ++tried;
        for (int tries = 0; tries < 40; ++tries) {
            auto made = valid.make(kind);
            if (!made) {
                continue;
            }
            setText(*made, column, GetParam());
            const auto kept =
                records().apply(Change{.sentence = GetParam(), .who = person.id}.add(*made));
            if (kept) {
                all.push_back(*made);
                return;
            }
            EXPECT_EQ(kept.error().record, refOf(*made)) << name;
        }
        ADD_FAILURE() << name << " does not take it";
    }

    test::Chance chance{7};
    test::ValidRecords valid{stores(), ids, chance};
    std::vector<AnyRecord> all;
    int tried = 0;
};

TEST_P(AnyTextTest, isKeptToTheByteInEveryTextOfEveryKindOfRecord) {
    for (std::size_t i = 0; i < kRecordKindCount; ++i) {
        tryKind(static_cast<RecordKind>(i));
    }
    EXPECT_EQ(static_cast<int>(all.size()), tried);
    EXPECT_GT(tried, 150) << "of all kinds";
    reopen();
    for (const AnyRecord& record : all) {
        const auto found = records().find(refOf(record));
        ASSERT_TRUE(found) << nameOf(kindOf(record));
        EXPECT_TRUE(found->record == record) << nameOf(kindOf(record));
        const auto history = journal().historyOf(refOf(record));
        ASSERT_EQ(history.size(), 1U);
        EXPECT_EQ(history[0].sentence, GetParam());
        EXPECT_TRUE(history[0].records.front().after == record) << nameOf(kindOf(record));
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
    for (const AnyRecord& record : all) {
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
