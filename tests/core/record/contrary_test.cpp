#include "core/record/contrary.h"

#include <set>

#include <gtest/gtest.h>

#include "tests/support/random_record.h"

namespace headcap::core {
namespace {

using test::Chance;

class StillClock final : public Clock {
public:
    [[nodiscard]] Instant now() const override { return Instant{std::chrono::milliseconds{1'000}}; }
    [[nodiscard]] Day today() const override { return dayOf(now()); }
    [[nodiscard]] Day dayOf(Instant instant) const override {
        return Day{std::chrono::floor<std::chrono::days>(instant)};
    }
};

class Contrary : public ::testing::Test {
protected:
    template <class Record>
    JournalEntry entryAdding(const Record& record) {
        JournalEntry entry;
        entry.records.push_back({refOf(record.id), std::nullopt, AnyRecord{record}});
        return entry;
    }

    Chance chance{1590};
    StillClock clock;
    IdSource keys{clock, 7};
    TakingBack taking{clock.now(), Id<Person>{keys.nextUuid()}};
};

TEST_F(Contrary, ofALedgerEntryBalancesIt) {
    for (int i = 0; i < 50; ++i) {
        const auto entry = test::randomRecord<LedgerEntry>(chance);
        const auto writes = contraryOf(entry, entryAdding(entry), taking, keys);
        ASSERT_EQ(writes.size(), 1U);
        EXPECT_EQ(writes[0].what, Write::What::add);
        const auto& contrary = std::get<LedgerEntry>(writes[0].record);
        EXPECT_EQ(sum(contrary.amount, entry.amount), (Amount{0, entry.amount.unit}));
        EXPECT_EQ(contrary.lot, entry.lot);
        EXPECT_EQ(contrary.kind, LedgerKind::contrary);
        EXPECT_EQ(contrary.contraryOf, entry.id);
        EXPECT_EQ(contrary.who, taking.who);
    }
}

TEST_F(Contrary, ofAStepStrikesItAndChangesNothingElse) {
    auto step = test::randomRecord<Step>(chance);
    step.struckAt.reset();
    step.struckBy.reset();
    step.struckWhy.clear();
    const auto writes = contraryOf(step, entryAdding(step), taking, keys);
    ASSERT_EQ(writes.size(), 1U);
    EXPECT_EQ(writes[0].what, Write::What::update);
    auto struck = std::get<Step>(writes[0].record);
    EXPECT_EQ(struck.struckAt, taking.at);
    EXPECT_EQ(struck.struckBy, taking.who);
    const auto again = contraryOf(struck, entryAdding(step), taking, keys);
    EXPECT_TRUE(again.empty()) << "it is struck already";
    struck.struckAt = step.struckAt;
    struck.struckBy = step.struckBy;
    struck.struckWhy = step.struckWhy;
    EXPECT_EQ(struck, step);
}

TEST_F(Contrary, ofAChangeOfStateOrPlaceLeadsBack) {
    const auto change = test::randomRecord<StateChange>(chance);
    const auto back =
        std::get<StateChange>(contraryOf(change, entryAdding(change), taking, keys).at(0).record);
    EXPECT_EQ(back.fromState, change.toState);
    EXPECT_EQ(back.toState, change.fromState);
    EXPECT_NE(back.id, change.id);
    const auto move = test::randomRecord<CustodyMove>(chance);
    const auto moved =
        std::get<CustodyMove>(contraryOf(move, entryAdding(move), taking, keys).at(0).record);
    EXPECT_EQ(moved.fromPlace, move.toPlace);
    EXPECT_EQ(moved.toPlace, move.fromPlace);
}

TEST_F(Contrary, isRefusedForWhatWasIssuedOrSent) {
    const auto report = test::randomRecord<IssuedReport>(chance);
    ASSERT_TRUE(whyNotTakenBack(entryAdding(report)));
    EXPECT_EQ(whyNotTakenBack(entryAdding(report))->code, Refusal::Code::cannotUndo);
    auto proposal = test::randomRecord<Proposal>(chance);
    proposal.sentOn.reset();
    EXPECT_FALSE(whyNotTakenBack(entryAdding(proposal)));
    auto sent = proposal;
    sent.sentOn = clock.today();
    JournalEntry sending;
    sending.records.push_back({refOf(proposal.id), AnyRecord{proposal}, AnyRecord{sent}});
    EXPECT_TRUE(whyNotTakenBack(sending));
    auto edited = sent;
    edited.note = "later";
    JournalEntry editing;
    editing.records.push_back({refOf(proposal.id), AnyRecord{sent}, AnyRecord{edited}});
    EXPECT_FALSE(whyNotTakenBack(editing));
}

TEST_F(Contrary, holdsWhatPermanentRecordsNameThroughOthers) {
    const auto item = test::randomRecord<Item>(chance);
    auto job = test::randomRecord<Job>(chance);
    job.item = item.id;
    const auto finding = test::randomRecord<Finding>(chance);
    auto move = test::randomRecord<CustodyMove>(chance);
    move.job = job.id;
    JournalEntry entry;
    for (const AnyRecord& record : std::initializer_list<AnyRecord>{item, job, finding, move}) {
        entry.records.push_back({refOf(record), std::nullopt, record});
    }
    const auto held = heldByPermanent(entry);
    EXPECT_EQ(std::set<RecordRef>(held.begin(), held.end()),
              (std::set<RecordRef>{refOf(job.id), refOf(item.id)}));
}

TEST_F(Contrary, putsBackTheFieldsThatChangedAndNoOther) {
    for (int i = 0; i < 50; ++i) {
        const auto before = test::randomRecord<Finding>(chance);
        auto after = before;
        after.observed = before.observed + " more";
        after.severity = before.severity + 1;
        auto now = after;
        now.inferred = "by another";
        const auto back = fieldsPutBack(now, before, after);
        ASSERT_TRUE(back);
        auto expected = before;
        expected.inferred = "by another";
        EXPECT_EQ(std::get<Finding>(*back), expected);
        now.observed = "otherwise";
        EXPECT_FALSE(fieldsPutBack(now, before, after));
    }
}

} // namespace
} // namespace headcap::core
