// Random histories: whatever was done, undone to the start and redone to the end, gives the same
// tables byte for byte, a search index that passes its own check, and a clean bill from verify.
#include <map>

#include <gtest/gtest.h>

#include "tests/db/database_look.h"
#include "tests/db/workshop_fixture.h"
#include "tests/support/random_record.h"

namespace headcap::core {
namespace {

const Progress kGoOn = [](std::int64_t, std::int64_t) { return true; };

class HistoryProperty : public test::WorkshopFixture, public ::testing::WithParamInterface<int> {
protected:
    // One change by chance, among kinds that may be edited and removed.
    void step(test::Chance& chance) {
        Change change{.sentence = "Change", .who = person.id};
        for (std::int64_t n = chance.between(1, 3); n > 0; --n) {
            const auto findings = allWith(records(), &Finding::job, job.id);
            const auto& some = findings.empty() || chance.oneIn(3)
                                   ? nullptr
                                   : &findings[static_cast<std::size_t>(chance.between(
                                         0, static_cast<std::int64_t>(findings.size()) - 1))];
            if (some == nullptr) {
                add(change, chance);
            } else if (isIn(change, refOf(some->record.id))) {
                continue;
            } else if (chance.oneIn(3)) {
                removeWithChildren(change, *some);
            } else {
                Finding changed = some->record;
                changed.observed = chance.words();
                changed.severity = chance.between(0, 3);
                change.update(changed, some->revision);
            }
        }
        ASSERT_TRUE(records().apply(change));
    }

    std::string verified() {
        std::string all;
        for (const auto& finding : stores().upkeep.verify(kGoOn).findings) {
            all += finding.sentence + "\n";
        }
        return all;
    }

private:
    static bool isIn(const Change& change, const RecordRef& ref) {
        for (const Write& write : change.writes) {
            if (refOf(write.record) == ref) {
                return true;
            }
        }
        return false;
    }

    void add(Change& change, test::Chance& chance) {
        Finding finding = test::randomRecord<Finding>(chance);
        finding.id = ids.next<Finding>();
        finding.job = job.id;
        finding.part = item.id;
        FollowUp followUp = test::randomRecord<FollowUp>(chance);
        followUp.id = ids.next<FollowUp>();
        followUp.job = job.id;
        followUp.who = person.id;
        Attachment letter{
            .id = ids.next<Attachment>(), .job = job.id, .subject = refOf(finding.id)};
        letter.note = chance.words();
        letter.digest = stores().files.put(FileStore::Shelf::attachment,
                                           std::as_bytes(std::span{letter.note}), ".txt");
        change.add(letter).add(finding).add(followUp);
        kept.insert_or_assign(refOf(finding.id), letter.id);
    }

    void removeWithChildren(Change& change, const Stored<Finding>& finding) {
        const auto letter = find(records(), kept.at(refOf(finding.record.id)));
        change.remove(finding.record, finding.revision);
        change.remove(letter->record, letter->revision);
    }

    std::map<RecordRef, Id<Attachment>> kept{};
};

TEST_P(HistoryProperty, undoneToTheStartAndRedoneToTheEndIsTheSame) {
    test::Chance chance{static_cast<std::uint64_t>(GetParam())};
    const auto start = test::recordTables(folder());
    constexpr int kSteps = 25;
    for (int i = 0; i < kSteps; ++i) {
        step(chance);
    }
    const auto end = test::recordTables(folder());
    int undone = 0;
    while (journal().undo(person.id)) {
        ++undone;
    }
    EXPECT_EQ(test::recordTables(folder()), start);
    EXPECT_EQ(verified(), "");
    int redone = 0;
    while (journal().redo(person.id)) {
        ++redone;
    }
    EXPECT_EQ(redone, undone);
    EXPECT_GE(undone, kSteps / 2);
    EXPECT_EQ(test::recordTables(folder()), end);
    EXPECT_EQ(verified(), "");
}

INSTANTIATE_TEST_SUITE_P(Seeds, HistoryProperty, ::testing::Range(1, 9));

} // namespace
} // namespace headcap::core
