#include <set>

#include <gtest/gtest.h>

#include "core/custody/job_states.h"
#include "tests/db/database_look.h"
#include "tests/db/workshop_fixture.h"

namespace headcap::core {
namespace {

using Code = Refusal::Code;

class RecordStoreTest : public test::WorkshopFixture {
protected:
    Refusal mustRefuse(const Change& change) {
        const auto before = journal().head();
        const auto made = records().apply(change);
        EXPECT_FALSE(made) << "made: " << change.sentence;
        EXPECT_EQ(journal().head(), before) << "a refused change left an entry";
        return made ? Refusal{} : made.error();
    }
};

TEST_F(RecordStoreTest, givesBackWhatItWasGiven) {
    const auto found = find(records(), job.id);
    ASSERT_TRUE(found);
    EXPECT_EQ(found->record, job);
    EXPECT_EQ(found->revision, firstRevision);
    reopen();
    EXPECT_EQ(find(records(), job.id)->record, job);
}

TEST_F(RecordStoreTest, keepsAnyTextAsItIs) {
    for (const std::string& text :
         {std::string("a\0b", 3), std::string("\x01\x7f\r\n\t"), std::string("שלום \u202E abc"),
          std::string("'; DROP TABLE job; --"), std::string("<b>&amp;\"%1\""),
          std::string(1'000'000, 'x')}) {
        const Finding finding = aFinding(text);
        test::mustApply(records(), Change{.sentence = "Finding added"}.add(finding));
        EXPECT_EQ(find(records(), finding.id)->record, finding);
    }
}

TEST_F(RecordStoreTest, findsByColumnInOrderOfKeys) {
    const Finding first = aFinding("joint split");
    const Finding second = aFinding("corner bumped");
    test::mustApply(records(), Change{.sentence = "Findings"}.add(second).add(first));
    const auto found = allWith(records(), &Finding::job, job.id);
    ASSERT_EQ(found.size(), 2U);
    EXPECT_EQ(found[0].record, first);
    EXPECT_EQ(found[1].record, second);
    EXPECT_EQ(records().allWith(RecordKind::finding, "part", std::monostate{}).size(), 2U);
    EXPECT_EQ(all<Finding>(records()).size(), 2U);
}

// The steps of a day are found by an index, whatever else there is; and the newest of a technique.
TEST_F(RecordStoreTest, findsBetweenTwoTextsInTheirOrder) {
    const auto stepAt = [&](const char* at, const char* technique) {
        Step step = aStep("a step");
        step.at = *instantFromIso(at);
        step.technique = technique;
        test::mustApply(records(), Change{.sentence = "Step"}.add(step));
        return step;
    };
    const Step late = stepAt("2031-04-02T08:00:00Z", "guarding");
    const Step first = stepAt("2031-04-01T00:00:00Z", "guarding");
    const Step before = stepAt("2031-03-31T23:59:59.999Z", "washing");
    const Step last = stepAt("2031-04-01T23:59:59.999Z", "guarding");
    const auto found = records().allBetween(RecordKind::step, "at", "2031-04-01T00:00:00.000Z",
                                            "2031-04-02T00:00:00.000Z");
    ASSERT_EQ(found.size(), 2U);
    EXPECT_EQ(std::get<Step>(found[0].record), first);
    EXPECT_EQ(std::get<Step>(found[1].record), last);
    const auto newest = records().newestWith(RecordKind::step, "technique", "guarding", 2);
    ASSERT_EQ(newest.size(), 2U);
    EXPECT_EQ(std::get<Step>(newest[0].record), last);
    EXPECT_EQ(std::get<Step>(newest[1].record), first);
    EXPECT_EQ(records().newestWith(RecordKind::step, "technique", "boxing", 9).size(), 0U);
}

TEST_F(RecordStoreTest, looksThroughNoTableForADayOrATechnique) {
    auto database = test::openBeside(folder());
    const auto planOf = [&](const std::string& sql) {
        std::string plan;
        SQLite::Statement query(database, "EXPLAIN QUERY PLAN " + sql);
        while (query.executeStep()) {
            plan += query.getColumn(3).getString() + "\n";
        }
        return plan;
    };
    for (const char* sql :
         {"SELECT * FROM step WHERE \"at\" >= '2031' AND \"at\" < '2032' ORDER BY \"at\", id",
          "SELECT * FROM step WHERE technique IS 'guarding' ORDER BY id DESC LIMIT 9",
          "SELECT * FROM setting WHERE ends_at >= '2031' AND ends_at < '2032' ORDER BY ends_at, id",
          "SELECT * FROM attachment WHERE subject_id IS 'x' ORDER BY id"}) {
        EXPECT_EQ(planOf(sql).find("SCAN"), std::string::npos) << planOf(sql);
        EXPECT_NE(planOf(sql).find("USING INDEX"), std::string::npos) << planOf(sql);
    }
}

TEST_F(RecordStoreTest, givesTheGreatestTextThatBeginsSo) {
    Job later = job;
    later.id = ids.next<Job>();
    later.number = "2031-014";
    Job other = job;
    other.id = ids.next<Job>();
    other.number = "2032-001";
    test::mustApply(records(), Change{.sentence = "Jobs"}.add(later).add(other));
    EXPECT_EQ(records().greatest(RecordKind::job, "number", "2031-"), "2031-014");
    EXPECT_EQ(records().greatest(RecordKind::job, "number", "2033-"), std::nullopt);
}

TEST_F(RecordStoreTest, saysWhatAFieldWasLatelyFilledWith) {
    Change change{.sentence = "Findings"};
    for (const char* place : {"spine", "K7", "", "spine", "upper board"}) {
        Finding finding = aFinding("torn");
        finding.place = place;
        change.add(finding);
    }
    test::mustApply(records(), change);
    const auto lately = [&](std::size_t most) {
        return records().lately(RecordKind::finding, "place", most);
    };
    EXPECT_EQ(lately(100), (std::vector<std::string>{"upper board", "spine", "K7"}));
    EXPECT_EQ(lately(2), (std::vector<std::string>{"upper board", "spine"}));
    EXPECT_TRUE(lately(0).empty());
}

TEST_F(RecordStoreTest, refusesAChangeOfWhatChangedSince) {
    Job mine = job;
    mine.note = "first";
    test::mustApply(records(), Change{.sentence = "Note"}.update(mine, firstRevision));
    Job theirs = job;
    theirs.note = "second";
    const auto refusal = mustRefuse(Change{.sentence = "Note"}.update(theirs, firstRevision));
    EXPECT_EQ(refusal.code, Code::changedSince);
    EXPECT_EQ(refusal.record, refOf(job.id));
    EXPECT_EQ(find(records(), job.id)->record.note, "first");
}

TEST_F(RecordStoreTest, makesTheSameChangeTwiceWithoutHarm) {
    const auto change = Change{.sentence = "Step logged"}.add(aStep("paste applied"));
    const auto first = test::mustApply(records(), change);
    const auto head = journal().head();
    EXPECT_EQ(test::mustApply(records(), change), first);
    EXPECT_EQ(journal().head(), head);
    EXPECT_EQ(all<Step>(records()).size(), 1U);
}

TEST_F(RecordStoreTest, refusesAKeyThatAnotherRecordHas) {
    Finding finding = aFinding("foxing");
    test::mustApply(records(), Change{.sentence = "Finding"}.add(finding));
    finding.observed = "tide line";
    EXPECT_EQ(mustRefuse(Change{.sentence = "Finding"}.add(finding)).code, Code::keyTaken);
}

TEST_F(RecordStoreTest, refusesANumberInUse) {
    Job twin = job;
    twin.id = ids.next<Job>();
    const auto refusal = mustRefuse(Change{.sentence = "Job"}.add(twin));
    EXPECT_EQ(refusal.code, Code::numberTaken);
    EXPECT_EQ(refusal.record, refOf(twin.id));
    EXPECT_NE(refusal.detail.find("number"), std::string::npos) << refusal.detail;
}

TEST_F(RecordStoreTest, refusesWhatIsNoLongerThere) {
    const Finding finding = aFinding("foxing");
    EXPECT_EQ(mustRefuse(Change{.sentence = "Finding"}.update(finding, {1})).code, Code::missing);
    EXPECT_EQ(mustRefuse(Change{.sentence = "Finding"}.remove(finding, {1})).code, Code::missing);
}

TEST_F(RecordStoreTest, refusesToRemoveWhatIsNamedAndSaysByWhom) {
    test::mustApply(
        records(),
        Change{.sentence = "Work"}.add(aStep("washed")).add(aStep("sized")).add(aFinding("tear")));
    const auto refusal = mustRefuse(Change{.sentence = "Job removed"}.remove(job, firstRevision));
    EXPECT_EQ(refusal.code, Code::stillNamed);
    EXPECT_EQ(refusal.detail, "1 finding and 2 steps");
}

TEST_F(RecordStoreTest, refusesToRemoveWhatHasAnAttachment) {
    const Finding finding = aFinding("tear");
    const auto revision = test::mustApply(records(), Change{.sentence = "Finding"}.add(finding));
    const Attachment letter{
        .id = ids.next<Attachment>(), .job = job.id, .subject = refOf(finding.id)};
    test::mustApply(records(), Change{.sentence = "Letter"}.add(letter));
    const auto refusal = mustRefuse(Change{.sentence = "Removed"}.remove(finding, revision));
    EXPECT_EQ(refusal.code, Code::stillNamed);
    EXPECT_EQ(refusal.detail, "1 attachment");
}

TEST_F(RecordStoreTest, refusesToNameWhatIsNotThere) {
    Finding finding = aFinding("tear");
    finding.job = ids.next<Job>();
    const auto refusal = mustRefuse(Change{.sentence = "Finding"}.add(finding));
    EXPECT_EQ(refusal.code, Code::namesNothing);
    EXPECT_EQ(refusal.detail, "a job");
    const Attachment letter{
        .id = ids.next<Attachment>(), .job = job.id, .subject = refOf(finding.id)};
    EXPECT_EQ(mustRefuse(Change{.sentence = "Letter"}.add(letter)).detail, "a finding");
}

TEST_F(RecordStoreTest, takesRecordsThatNameEachOtherInAnyOrder) {
    const Finding finding = aFinding("tear");
    const Photograph photograph{
        .id = ids.next<Photograph>(), .job = job.id, .finding = finding.id, .addedAt = clock.now()};
    test::mustApply(records(), Change{.sentence = "Both"}.add(photograph).add(finding));
}

TEST_F(RecordStoreTest, refusesWhatTheSchemaForbids) {
    Step step = aStep("pressed");
    step.minutes = Minutes{-5};
    const auto refusal = mustRefuse(Change{.sentence = "Step"}.add(step));
    EXPECT_EQ(refusal.code, Code::breaksRule);
    EXPECT_NE(refusal.detail.find("minutes_min"), std::string::npos) << refusal.detail;
}

TEST_F(RecordStoreTest, refusesTextThatIsNotUtf8) {
    EXPECT_EQ(mustRefuse(Change{.sentence = "Finding"}.add(aFinding("\xff\xfe"))).code,
              Code::breaksRule);
}

TEST_F(RecordStoreTest, neverRemovesNorRewritesTheLog) {
    const Step step = aStep("washed");
    const auto revision = test::mustApply(records(), Change{.sentence = "Step"}.add(step));
    EXPECT_EQ(mustRefuse(Change{.sentence = "Step"}.remove(step, revision)).code,
              Code::neverDeleted);
    Step other = step;
    other.description = "not washed";
    EXPECT_EQ(mustRefuse(Change{.sentence = "Step"}.update(other, revision)).code,
              Code::neverChanged);
    Step struck = step;
    struck.struckAt = clock.now();
    struck.struckWhy = "logged on the wrong job";
    test::mustApply(records(), Change{.sentence = "Step struck"}.update(struck, revision));
    EXPECT_EQ(find(records(), step.id)->record, struck);
}

TEST_F(RecordStoreTest, keepsAllOfAChangeOrNone) {
    const Finding finding = aFinding("tear");
    Job twin = job;
    twin.id = ids.next<Job>();
    mustRefuse(Change{.sentence = "Both"}.add(finding).add(twin));
    EXPECT_FALSE(find(records(), finding.id));
}

TEST_F(RecordStoreTest, tellsThatAnotherWindowHasWritten) {
    const auto other = workshops.open(folder());
    const auto before = other->stores().records.dataVersion();
    EXPECT_EQ(other->stores().records.dataVersion(), before);
    test::mustApply(records(), Change{.sentence = "Finding"}.add(aFinding("tear")));
    EXPECT_NE(other->stores().records.dataVersion(), before);
}

// One rule, in core: the list goes by it, and so must the words of the index that makes it quick.
TEST_F(RecordStoreTest, whatIsInTheHouseIsAsCoreSays) {
    std::set<JobState> inTheHouse;
    std::string gone;
    for (std::size_t i = 0; i < EnumNames<JobState>::kNames.size(); ++i) {
        Job one = job;
        one.id = ids.next<Job>();
        one.number = "2030-1" + std::to_string(10 + i);
        one.state = static_cast<JobState>(i);
        test::mustApply(records(), Change{.sentence = "Job"}.add(one));
        if (isInTheHouse(one.state)) {
            inTheHouse.insert(one.state);
        } else {
            gone += (gone.empty() ? "'" : ", '") + std::string{nameOf(one.state)} + "'";
        }
    }
    std::set<JobState> listed;
    for (const JobLine& line : stores().jobs.inTheHouse()) {
        listed.insert(line.state);
    }
    EXPECT_EQ(listed, inTheHouse);
    auto database = test::openBeside(folder());
    SQLite::Statement plan(database,
                           "EXPLAIN QUERY PLAN SELECT number FROM job WHERE job.state NOT IN (" +
                               gone + ") ORDER BY number");
    ASSERT_TRUE(plan.executeStep());
    EXPECT_NE(plan.getColumn(3).getString().find("job_in_the_house"), std::string::npos)
        << plan.getColumn(3).getString();
}

TEST_F(RecordStoreTest, listsJobsInTheHouseAndAll) {
    Job gone = job;
    gone.id = ids.next<Job>();
    gone.number = "2030-007";
    gone.state = JobState::returned;
    const FollowUp due{.id = ids.next<FollowUp>(),
                       .job = gone.id,
                       .what = "look at the joints",
                       .dueOn = clock.today()};
    test::mustApply(records(), Change{.sentence = "Job"}.add(gone).add(due));
    auto& jobs = stores().jobs;
    ASSERT_EQ(jobs.inTheHouse().size(), 1U);
    EXPECT_EQ(jobs.inTheHouse()[0].number, "2031-001");
    EXPECT_EQ(jobs.inTheHouse()[0].title, "Hymnal");
    EXPECT_EQ(jobs.inTheHouse()[0].owner, "Kell Chapel");
    EXPECT_EQ(jobs.count(), 2U);
    ASSERT_EQ(jobs.page(0, 10).size(), 2U);
    EXPECT_EQ(jobs.page(0, 10)[0].id, gone.id);
    EXPECT_EQ(jobs.page(1, 10)[0].id, job.id);
    EXPECT_EQ(jobs.numbered("2030-007")->id, gone.id);
    EXPECT_FALSE(jobs.numbered("2030-008"));
    const auto followUps = jobs.dueFollowUps(clock.today());
    ASSERT_EQ(followUps.size(), 1U);
    EXPECT_EQ(followUps[0].first.id, gone.id);
    EXPECT_EQ(followUps[0].second, due);
    EXPECT_TRUE(jobs.dueFollowUps(Day{std::chrono::sys_days{clock.today()} - std::chrono::days{1}})
                    .empty());
}

TEST_F(RecordStoreTest, writesTheHistoryOfARecord) {
    Job noted = job;
    noted.note = "back in May";
    const auto revision = test::mustApply(
        records(),
        Change{.sentence = "Note changed", .who = person.id}.update(noted, firstRevision));
    const auto history = journal().historyOf(refOf(job.id));
    ASSERT_EQ(history.size(), 2U);
    EXPECT_EQ(history[0].sequence, revision.sequence);
    EXPECT_EQ(history[0].sentence, "Note changed");
    EXPECT_EQ(history[0].who, person.id);
    ASSERT_EQ(history[0].records.size(), 1U);
    EXPECT_EQ(history[0].records[0].before, AnyRecord{job});
    EXPECT_EQ(history[0].records[0].after, AnyRecord{noted});
    EXPECT_EQ(history[0].hash, journal().head());
    EXPECT_FALSE(history[1].records[0].before);
}

} // namespace
} // namespace headcap::core
