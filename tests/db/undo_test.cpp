#include <gtest/gtest.h>

#include "tests/db/workshop_fixture.h"

namespace headcap::core {
namespace {

using Code = Refusal::Code;

class UndoTest : public test::WorkshopFixture {
protected:
    Revision made(Change change) {
        change.who = person.id;
        return test::mustApply(records(), change);
    }
    JournalEntry mustUndo() { return must(journal().undo(person.id)); }
    JournalEntry mustRedo() { return must(journal().redo(person.id)); }
    Refusal refusedUndo() {
        const auto head = journal().head();
        const auto undone = journal().undo(person.id);
        EXPECT_FALSE(undone) << "undone";
        EXPECT_EQ(journal().head(), head);
        return undone ? Refusal{} : undone.error();
    }

    Lot aLot() {
        const Material paste{.id = ids.next<Material>(),
                             .name = "Wheat starch paste",
                             .kind = MaterialClass::adhesivePrepared,
                             .unit = Unit::gram};
        made(Change{.sentence = "Material added"}.add(paste));
        return {.id = ids.next<Lot>(), .number = "31-001", .material = paste.id};
    }
    LedgerEntry received(const Lot& lot, std::int64_t grams) {
        return {.id = ids.next<LedgerEntry>(),
                .lot = lot.id,
                .at = clock.now(),
                .amount = Amount::of(Mass::grams(grams))};
    }
    std::int64_t balance(const Id<Lot>& lot) {
        std::int64_t sum = 0;
        for (const auto& entry : allWith(records(), &LedgerEntry::lot, lot)) {
            sum += entry.record.amount.count;
        }
        return sum;
    }

private:
    static JournalEntry must(tl::expected<JournalEntry, Refusal> entry) {
        if (!entry) {
            ADD_FAILURE() << static_cast<int>(entry.error().code) << " " << entry.error().detail;
            return {};
        }
        return *std::move(entry);
    }
};

TEST_F(UndoTest, takesBackAnAdditionAndBringsItAgain) {
    const Finding finding = aFinding("joint split");
    const auto revision = made(Change{.sentence = "Finding added"}.add(finding));
    ASSERT_TRUE(journal().undoable(person.id));
    EXPECT_EQ(journal().undoable(person.id)->sequence, revision.sequence);
    const auto undone = mustUndo();
    EXPECT_EQ(undone.kind, EntryKind::undo);
    EXPECT_EQ(undone.reverses, revision.sequence);
    EXPECT_EQ(undone.sentence, "Undone: Finding added");
    EXPECT_FALSE(find(records(), finding.id));
    ASSERT_TRUE(journal().redoable(person.id));
    const auto redone = mustRedo();
    EXPECT_EQ(redone.sentence, "Done again: Finding added");
    const auto found = find(records(), finding.id);
    ASSERT_TRUE(found);
    EXPECT_EQ(found->record, finding);
    EXPECT_EQ(found->revision.sequence, redone.sequence);
    EXPECT_FALSE(journal().redoable(person.id));
}

TEST_F(UndoTest, takesBackARemovalWithItsChildren) {
    const Finding finding = aFinding("joint split");
    const Photograph photograph{
        .id = ids.next<Photograph>(), .job = job.id, .finding = finding.id, .addedAt = clock.now()};
    const auto revision = made(Change{.sentence = "Added"}.add(finding).add(photograph));
    made(Change{.sentence = "Removed"}.remove(finding, revision).remove(photograph, revision));
    mustUndo();
    EXPECT_EQ(find(records(), finding.id)->record, finding);
    EXPECT_EQ(find(records(), photograph.id)->record, photograph);
}

TEST_F(UndoTest, goesBackStepByStepAndForwardAgain) {
    Finding finding = aFinding("one");
    auto revision = made(Change{.sentence = "one"}.add(finding));
    for (const char* text : {"two", "three"}) {
        finding.observed = text;
        revision = made(Change{.sentence = text}.update(finding, revision));
    }
    const auto observed = [&] { return find(records(), finding.id)->record.observed; };
    mustUndo();
    EXPECT_EQ(observed(), "two");
    mustUndo();
    EXPECT_EQ(observed(), "one");
    mustRedo();
    EXPECT_EQ(observed(), "two");
    mustUndo();
    mustRedo();
    mustRedo();
    EXPECT_EQ(observed(), "three");
    EXPECT_EQ(journal().redo(person.id).error().code, Code::nothingToUndo);
}

TEST_F(UndoTest, forgetsWhatCouldBeDoneAgainAtANewChange) {
    made(Change{.sentence = "one"}.add(aFinding("one")));
    mustUndo();
    made(Change{.sentence = "two"}.add(aFinding("two")));
    EXPECT_FALSE(journal().redoable(person.id));
    mustUndo();
    EXPECT_EQ(journal().undo(person.id).error().code, Code::nothingToUndo);
}

TEST_F(UndoTest, takesBackOnesOwnChangesAlone) {
    const Person other{.id = ids.next<Person>(), .name = "Bram Oake"};
    test::mustApply(records(), Change{.sentence = "Person", .who = other.id}.add(other));
    const Finding mine = aFinding("mine");
    const Finding theirs = aFinding("theirs");
    made(Change{.sentence = "mine"}.add(mine));
    test::mustApply(records(), Change{.sentence = "theirs", .who = other.id}.add(theirs));
    mustUndo();
    EXPECT_FALSE(find(records(), mine.id));
    EXPECT_TRUE(find(records(), theirs.id));
}

TEST_F(UndoTest, leavesWhatAnotherChangedInOtherFields) {
    Finding finding = aFinding("split");
    auto revision = made(Change{.sentence = "Added"}.add(finding));
    finding.observed = "split, 40 mm";
    revision = made(Change{.sentence = "Observed"}.update(finding, revision));
    finding.inferred = "opened too far";
    test::mustApply(records(), Change{.sentence = "Inferred"}.update(finding, revision));
    mustUndo();
    EXPECT_EQ(find(records(), finding.id)->record.observed, "split");
    EXPECT_EQ(find(records(), finding.id)->record.inferred, "opened too far");
}

TEST_F(UndoTest, refusesWhatAnotherChangedSince) {
    Finding finding = aFinding("split");
    auto revision = made(Change{.sentence = "Added"}.add(finding));
    finding.observed = "split, 40 mm";
    revision = made(Change{.sentence = "Observed"}.update(finding, revision));
    finding.observed = "split, 44 mm";
    test::mustApply(records(), Change{.sentence = "Again"}.update(finding, revision));
    const auto refusal = refusedUndo();
    EXPECT_EQ(refusal.code, Code::changedSince);
    EXPECT_EQ(refusal.record, refOf(finding.id));
    EXPECT_EQ(find(records(), finding.id)->record, finding);
}

TEST_F(UndoTest, saysWhatNamesTheRecordThatWouldGo) {
    Job second = job;
    second.id = ids.next<Job>();
    second.number = "2031-002";
    made(Change{.sentence = "Job"}.add(second));
    Step one = aStep("washed");
    Step two = aStep("sized");
    one.job = two.job = second.id;
    test::mustApply(records(), Change{.sentence = "Steps"}.add(one).add(two));
    const auto refusal = refusedUndo();
    EXPECT_EQ(refusal.code, Code::stillNamed);
    EXPECT_EQ(refusal.record, refOf(second.id));
    EXPECT_EQ(refusal.detail, "2 steps");
}

TEST_F(UndoTest, strikesAStepAndKeepsIt) {
    const Step step = aStep("paste applied");
    made(Change{.sentence = "Step logged"}.add(step));
    mustUndo();
    auto now = find(records(), step.id);
    ASSERT_TRUE(now);
    EXPECT_TRUE(now->record.struckAt);
    EXPECT_EQ(now->record.struckBy, person.id);
    EXPECT_EQ(now->record.description, step.description);
    mustRedo();
    EXPECT_EQ(find(records(), step.id)->record, step);
    EXPECT_EQ(journal().historyOf(refOf(step.id)).size(), 3U);
}

TEST_F(UndoTest, takesAUseOfMaterialBackWithItsStep) {
    const Lot lot = aLot();
    made(Change{.sentence = "Lot"}.add(lot).add(received(lot, 100)));
    const Step step = aStep("paste applied");
    const MaterialUse use{
        .id = ids.next<MaterialUse>(), .job = job.id, .step = step.id, .lot = lot.id};
    LedgerEntry used = received(lot, -4);
    used.kind = LedgerKind::used;
    used.use = use.id;
    made(Change{.sentence = "Step logged"}.add(step).add(use).add(used));
    EXPECT_EQ(balance(lot.id), Amount::of(Mass::grams(96)).count);
    mustUndo();
    EXPECT_EQ(balance(lot.id), Amount::of(Mass::grams(100)).count);
    EXPECT_TRUE(find(records(), step.id)->record.struckAt);
    EXPECT_EQ(find(records(), use.id)->record, use);
    EXPECT_EQ(find(records(), used.id)->record, used);
    mustRedo();
    EXPECT_EQ(balance(lot.id), Amount::of(Mass::grams(96)).count);
    EXPECT_FALSE(find(records(), step.id)->record.struckAt);
}

TEST_F(UndoTest, leavesALoneUseOfMaterialInTheLog) {
    const Step step = aStep("paste applied");
    made(Change{.sentence = "Step"}.add(step));
    made(Change{.sentence = "Use"}.add(
        MaterialUse{.id = ids.next<MaterialUse>(), .job = job.id, .step = step.id}));
    EXPECT_EQ(refusedUndo().code, Code::cannotUndo);
}

TEST_F(UndoTest, finishesALotThatItsLedgerHolds) {
    const Lot lot = aLot();
    made(Change{.sentence = "Lot"}.add(lot).add(received(lot, 100)));
    mustUndo();
    EXPECT_EQ(balance(lot.id), 0);
    EXPECT_TRUE(find(records(), lot.id)->record.finished);
    mustRedo();
    EXPECT_EQ(find(records(), lot.id)->record, lot);
    EXPECT_EQ(balance(lot.id), Amount::of(Mass::grams(100)).count);
    EXPECT_EQ(allWith(records(), &LedgerEntry::lot, lot.id).size(), 3U);
}

TEST_F(UndoTest, reversesAStateChangeAndKeepsBoth) {
    Job surveyed = job;
    surveyed.state = JobState::surveyed;
    const StateChange change{.id = ids.next<StateChange>(),
                             .job = job.id,
                             .fromState = JobState::received,
                             .toState = JobState::surveyed,
                             .at = clock.now()};
    made(Change{.sentence = "Surveyed"}.update(surveyed, firstRevision).add(change));
    mustUndo();
    EXPECT_EQ(find(records(), job.id)->record.state, JobState::received);
    const auto changes = allWith(records(), &StateChange::job, job.id);
    ASSERT_EQ(changes.size(), 2U);
    EXPECT_EQ(changes[0].record, change);
    EXPECT_EQ(changes[1].record.fromState, JobState::surveyed);
    EXPECT_EQ(changes[1].record.toState, JobState::received);
}

TEST_F(UndoTest, withdrawsAJobWhoseReceiptIsOnRecord) {
    Job second = job;
    second.id = ids.next<Job>();
    second.number = "2031-002";
    const CustodyMove in{.id = ids.next<CustodyMove>(),
                         .job = second.id,
                         .at = clock.now(),
                         .fromPlace = "owner",
                         .toPlace = "strongroom"};
    made(Change{.sentence = "Received"}.add(second).add(in));
    mustUndo();
    EXPECT_EQ(find(records(), second.id)->record.state, JobState::withdrawn);
    const auto moves = allWith(records(), &CustodyMove::job, second.id);
    ASSERT_EQ(moves.size(), 2U);
    EXPECT_EQ(moves[1].record.fromPlace, "strongroom");
    EXPECT_EQ(moves[1].record.toPlace, "owner");
    EXPECT_EQ(allWith(records(), &StateChange::job, second.id).size(), 1U);
    mustRedo();
    EXPECT_EQ(find(records(), second.id)->record, second);
}

TEST_F(UndoTest, neverTakesBackWhatWasIssuedOrSent) {
    Proposal proposal{.id = ids.next<Proposal>(), .job = job.id, .madeOn = clock.today()};
    const auto revision = made(Change{.sentence = "Proposal"}.add(proposal));
    proposal.sentOn = clock.today();
    made(Change{.sentence = "Sent"}.update(proposal, revision));
    EXPECT_EQ(refusedUndo().code, Code::cannotUndo);
    made(Change{.sentence = "Issued"}.add(
        IssuedReport{.id = ids.next<IssuedReport>(), .job = job.id, .issuedAt = clock.now()}));
    const auto refusal = refusedUndo();
    EXPECT_EQ(refusal.code, Code::cannotUndo);
    EXPECT_EQ(refusal.detail, "a report that was issued stays issued");
}

TEST_F(UndoTest, keepsItsPlaceWhenTheWorkshopIsOpenedAgain) {
    const Finding finding = aFinding("tear");
    made(Change{.sentence = "Finding"}.add(finding));
    reopen();
    mustUndo();
    reopen();
    mustRedo();
    EXPECT_EQ(find(records(), finding.id)->record, finding);
}

} // namespace
} // namespace headcap::core
