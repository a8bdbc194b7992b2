// Random histories over every kind of record there is, with what they name: undone to the start
// and redone to the end they give the same tables byte for byte; and what is permanent stays,
// whatever is undone.
#include <set>

#include <gtest/gtest.h>

#include "tests/db/database_look.h"
#include "tests/db/workshop_fixture.h"
#include "tests/support/valid_records.h"

namespace headcap::core {
namespace {

const Progress kGoOn = [](std::int64_t, std::int64_t) { return true; };
constexpr int kSteps = 120;

class EveryKindHistory : public test::WorkshopFixture, public ::testing::WithParamInterface<int> {
protected:
    // One change by chance; what the rules of the schema refuse is not made.
    void step(bool withPermanent) {
        const RecordKind kind = valid.anyKind();
        const bool isPermanent = permanenceOf(kind) == Permanence::permanent;
        if (isPermanent && !withPermanent) {
            return;
        }
        Change change{.sentence = "Change", .who = person.id};
        const auto some = valid.any(kind);
        if (!some || isPermanent || chance.oneIn(2)) {
            auto made = valid.make(kind);
            if (!made) {
                return;
            }
            change.add(unsent(*std::move(made)));
        } else if (chance.oneIn(3)) {
            change.remove(some->record, some->revision);
        } else if (auto other = valid.remake(some->record)) {
            change.update(unsent(*std::move(other)), some->revision);
        }
        const auto done =
            change.writes.empty() ? std::nullopt : std::optional{records().apply(change)};
        if (done && *done) {
            kinds.insert(kind);
            ++changes;
        }
    }
    // What was sent can't be undone.
    static AnyRecord unsent(AnyRecord record) {
        if (auto* proposal = std::get_if<Proposal>(&record)) {
            proposal->sentOn.reset();
        }
        return record;
    }
    std::string verified() {
        std::string all;
        for (const auto& finding : stores().upkeep.verify(kGoOn).findings) {
            // Chance ledgers need not balance, and chance files are not kept.
            if (finding.what != "ledger" && finding.what != "photograph" &&
                finding.what != "attachment" && finding.what != "report") {
                all += finding.sentence + "\n";
            }
        }
        return all;
    }
    std::size_t permanentRecords() {
        std::size_t count = 0;
        for (std::size_t i = 0; i < kRecordKindCount; ++i) {
            const auto kind = static_cast<RecordKind>(i);
            count += permanenceOf(kind) == Permanence::permanent ? records().all(kind).size() : 0;
        }
        return count;
    }

    test::Chance chance{static_cast<std::uint64_t>(GetParam())};
    test::ValidRecords valid{stores(), ids, chance};
    std::set<RecordKind> kinds{};
    int changes = 0;
};

TEST_P(EveryKindHistory, undoneToTheStartAndRedoneToTheEndIsTheSame) {
    const auto start = test::recordTables(folder());
    for (int i = 0; i < kSteps; ++i) {
        step(false);
    }
    EXPECT_GE(kinds.size(), 10U) << "of many kinds";
    const auto end = test::recordTables(folder());
    int undone = 0;
    while (journal().undo(person.id)) {
        ++undone;
    }
    EXPECT_EQ(undone, changes);
    EXPECT_EQ(test::recordTables(folder()), start);
    EXPECT_EQ(verified(), "");
    int redone = 0;
    while (journal().redo(person.id)) {
        ++redone;
    }
    EXPECT_EQ(redone, changes);
    EXPECT_EQ(test::recordTables(folder()), end);
    EXPECT_EQ(verified(), "");
}

TEST_P(EveryKindHistory, whatIsPermanentStaysWhateverIsUndone) {
    for (int i = 0; i < kSteps; ++i) {
        step(true);
        if (chance.oneIn(3)) {
            const auto before = permanentRecords();
            (void)(chance.oneIn(3) ? journal().redo(person.id) : journal().undo(person.id));
            EXPECT_GE(permanentRecords(), before);
        }
    }
    const auto before = permanentRecords();
    EXPECT_GT(before, 0U);
    for (int i = 0; i < kSteps && journal().undo(person.id); ++i) {
        EXPECT_GE(permanentRecords(), before);
    }
    EXPECT_EQ(verified(), "");
    // Every entry reads as a sentence, with what was before and after.
    for (const JournalEntry& entry : journal().latest(1'000)) {
        EXPECT_NE(entry.sentence, "");
        for (const JournalRecord& record : entry.records) {
            EXPECT_TRUE(record.before || record.after);
            EXPECT_NE(record.before, record.after);
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Seeds, EveryKindHistory, ::testing::Range(1, 7));

} // namespace
} // namespace headcap::core
