#include "core/record/acts_in_job.h"

#include <gtest/gtest.h>

#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

class ActsInJobTest : public testing::Test {
protected:
    JournalEntry act(std::int64_t sequence, std::vector<AnyRecord> added) {
        JournalEntry made{.sequence = sequence};
        for (AnyRecord& record : added) {
            const RecordRef ref = refOf(record);
            made.records.push_back({.ref = ref, .after = std::move(record)});
        }
        return made;
    }
    FollowUp followUp(const Id<Job>& job) {
        return {.id = b.ids.next<FollowUp>(), .job = job, .what = "Look again"};
    }
    std::vector<std::int64_t> numbers(const std::vector<JournalEntry>& newest, std::size_t most) {
        std::vector<std::int64_t> found;
        for (const JournalEntry& one : actsIn(b.file, newest, most)) {
            found.push_back(one.sequence);
        }
        return found;
    }

    tests::JobBuilder b;
    Id<Job> here = b.file.job.id;
    Id<Job> elsewhere = b.ids.next<Job>();
    Person person{.id = b.ids.next<Person>(), .name = "Ines Marrow"};
};

TEST_F(ActsInJobTest, areThoseOfTheJobAndItsBookNewestFirst) {
    const std::vector newest{act(5, {followUp(here)}), act(4, {person}), act(3, {b.file.item}),
                             act(2, {followUp(elsewhere)}), act(1, {b.file.job})};
    EXPECT_EQ(numbers(newest, 9), (std::vector<std::int64_t>{5, 3, 1}));
    EXPECT_EQ(numbers(newest, 2), (std::vector<std::int64_t>{5, 3}));
}

TEST_F(ActsInJobTest, whatWasTakenBackIsSaidByItsTakingBack) {
    JournalEntry undo = act(3, {followUp(here)});
    undo.kind = EntryKind::undo;
    undo.reverses = 2;
    JournalEntry schema = act(1, {followUp(here)});
    schema.kind = EntryKind::migration;
    EXPECT_EQ(numbers({undo, act(2, {followUp(here)}), schema}, 9), std::vector<std::int64_t>{3});
}

TEST_F(ActsInJobTest, anActIsOfOneJobWhereNoneOfItsRecordsIsOfAnother) {
    EXPECT_EQ(onlyJobOf(act(1, {followUp(here), person})), here);
    EXPECT_EQ(onlyJobOf(act(1, {followUp(here), followUp(here)})), here);
    EXPECT_EQ(onlyJobOf(act(1, {followUp(here), followUp(elsewhere)})), std::nullopt);
    EXPECT_EQ(onlyJobOf(act(1, {person})), std::nullopt);
    JournalEntry removed = act(1, {followUp(here)});
    removed.records.front().before = std::exchange(removed.records.front().after, std::nullopt);
    EXPECT_EQ(onlyJobOf(removed), here);
}

} // namespace
} // namespace headcap::core
