#include "core/custody/release_list.h"

#include <algorithm>
#include <functional>

#include <gtest/gtest.h>

#include "tests/support/apply_change.h"
#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::applyTo;
using tests::at;
using tests::day;
using tests::FinishedJob;

class ReleaseTest : public testing::Test {
protected:
    ReleaseTest() {
        job.file.reports.push_back(
            IssuedReport{.id = job.ids.next<IssuedReport>(), .job = job.file.job.id});
        job.file.job.state = JobState::reported;
    }
    std::vector<ReleaseRow> rows() { return releaseList(job.file, job.clock); }
    bool isSettled(const std::string& key) {
        const auto all = rows();
        const auto row = std::ranges::find(all, key, &ReleaseRow::key);
        return row != all.end() && row->isSettled();
    }
    auto answer(const std::string& key, ReleaseAnswer given = ReleaseAnswer::done,
                const std::string& why = "") {
        return answerRow(job.file, job.clock, {key, given, why, job.anyone()}, job.ids);
    }
    void answerAll() {
        for (const ReleaseRow& row : rows()) {
            if (!row.isSettled() && row.key != kSignOff) {
                applyTo(job.file, *answer(row.key));
            }
        }
    }
    HandBack back() {
        return {.id = job.ids.next<HandBack>(),
                .job = job.file.job.id,
                .onDay = day(2031, 4, 2),
                .who = job.anyone(),
                .givenTo = "the keeper",
                .condition = "as in the report"};
    }

    FinishedJob job;
};

// A list made while work still goes on must look at the log too.
TEST_F(ReleaseTest, anApprovedLineNotBegunIsOpenInAnyState) {
    const ProposalOption option = job.file.options.front();
    job.line(option, "boxing");
    for (const JobState state : {JobState::atTheBench, JobState::passed, JobState::reported}) {
        job.file.job.state = state;
        EXPECT_FALSE(isSettled("approved_done")) << nameOf(state);
    }
    job.step("boxing", "book", day(2031, 3, 21));
    EXPECT_TRUE(isSettled("approved_done"));
}

// A book that has gone can't be counted; what was not done can still be said.
TEST_F(ReleaseTest, theListOfABookGivenBackIsClosed) {
    job.file.job.state = JobState::returned;
    EXPECT_EQ(answer("leaf_tally").error(), ReleaseProblem::gone);
    EXPECT_EQ(answer(std::string{kSignOff}).error(), ReleaseProblem::gone);
    EXPECT_EQ(answer("leaf_tally", ReleaseAnswer::open).error(), ReleaseProblem::gone);
    EXPECT_EQ(answer("leaf_tally", ReleaseAnswer::explained).error(), ReleaseProblem::unexplained);
    applyTo(job.file, *answer("leaf_tally", ReleaseAnswer::explained, "not counted out"));
    EXPECT_TRUE(isSettled("leaf_tally"));
}

TEST_F(ReleaseTest, whatTheRecordSaysNobodyNeedAnswer) {
    for (const char* key : {"approved_done", "done_approved", "removed_accounted", "lots_settled",
                            "nothing_running", "report_issued"}) {
        EXPECT_TRUE(isSettled(key)) << key;
    }
    for (const char* key : {"leaf_tally", "collated_again", "marks_present", "sign_off"}) {
        EXPECT_FALSE(isSettled(key)) << key;
    }
    EXPECT_FALSE(mayLeave(rows()));
}

struct Fault {
    const char* key;
    std::function<void(FinishedJob&)> make;
};

TEST_F(ReleaseTest, eachRowOfTheRecordOpensByItsFault) {
    const Fault kFaults[]{
        {"approved_done",
         [](FinishedJob& j) {
             const ProposalOption option = j.file.options.front();
             j.line(option, "boxing");
         }},
        {"done_approved",
         [](FinishedJob& j) { j.step("surface_cleaning", "boards", day(2031, 3, 21)); }},
        {"after_has_before",
         [](FinishedJob& j) {
             for (Photograph& one : j.file.photographs) {
                 one.place = one.role == PhotoRole::before ? "B2" : "C2";
                 one.facsimile.reset();
             }
         }},
        {"removed_accounted", [](FinishedJob& j) { j.file.steps.front().removedFate.clear(); }},
        {"lots_settled", [](FinishedJob& j) { j.file.uses.front().lot.reset(); }},
        {"nothing_running",
         [](FinishedJob& j) {
             j.file.settings.push_back({.id = j.ids.next<Setting>(),
                                        .job = j.file.job.id,
                                        .what = "Boards under weight",
                                        .startedAt = j.clock.now(),
                                        .endsAt = j.clock.now() + Minutes{60}});
         }},
        {"report_issued", [](FinishedJob& j) { j.file.reports.clear(); }},
    };
    for (const Fault& fault : kFaults) {
        FinishedJob faulty;
        faulty.file.reports.push_back(
            IssuedReport{.id = faulty.ids.next<IssuedReport>(), .job = faulty.file.job.id});
        fault.make(faulty);
        const auto all = releaseList(faulty.file, faulty.clock);
        const auto row = std::ranges::find(all, fault.key, &ReleaseRow::key);
        ASSERT_NE(row, all.end()) << fault.key;
        EXPECT_FALSE(row->isSettled()) << fault.key;
        EXPECT_FALSE(row->finds.empty()) << fault.key;
    }
}

TEST_F(ReleaseTest, aHazardAsksForItsLabelAndPiecesForTheirReturn) {
    const std::size_t before = rows().size();
    job.file.hazards.push_back({.id = job.ids.next<Hazard>(),
                                .item = job.file.item.id,
                                .term = "arsenical_green",
                                .state = HazardState::suspected});
    job.file.pieces.push_back(
        {.id = job.ids.next<Piece>(), .job = job.file.job.id, .what = "slipcase"});
    EXPECT_EQ(rows().size(), before + 2);
    EXPECT_FALSE(isSettled("hazard_label"));
    EXPECT_FALSE(isSettled("piece " + job.file.pieces.front().id.text()));
}

// AIC Commentary 25: accessories are counted when they come in, and so when they go.
TEST_F(ReleaseTest, eachPieceIsTickedByItselfAndItsOwnRecordSaysWhatBecameOfIt) {
    const auto piece = [&](std::int64_t count, const char* what) {
        job.file.pieces.push_back(
            {.id = job.ids.next<Piece>(), .job = job.file.job.id, .count = count, .what = what});
        return "piece " + job.file.pieces.back().id.text();
    };
    const std::string slipcase = piece(1, "slipcase");
    const std::string boards = piece(2, "grey board");
    const auto all = rows();
    EXPECT_EQ(std::ranges::find(all, slipcase, &ReleaseRow::key)->asks, "Came with it: slipcase");
    EXPECT_EQ(std::ranges::find(all, boards, &ReleaseRow::key)->asks,
              "Came with it: 2 × grey board");
    applyTo(job.file, *answer(slipcase));
    EXPECT_TRUE(isSettled(slipcase));
    EXPECT_FALSE(isSettled(boards));
    EXPECT_EQ(job.file.pieces[0].returned, "given back with the book");
    EXPECT_EQ(answer(boards, ReleaseAnswer::explained, "").error(), ReleaseProblem::unexplained);
    applyTo(job.file, *answer(boards, ReleaseAnswer::explained, "thrown away, as the owner asked"));
    EXPECT_TRUE(isSettled(boards));
    EXPECT_EQ(job.file.pieces[1].returned, "thrown away, as the owner asked");
    applyTo(job.file, *answer(slipcase, ReleaseAnswer::open));
    EXPECT_FALSE(isSettled(slipcase));
    EXPECT_EQ(job.file.pieces[0].returned, "");
}

// Lists of before were ticked for all pieces together.
TEST_F(ReleaseTest, piecesThatWereAnsweredTogetherStaySettled) {
    job.file.pieces.push_back(
        {.id = job.ids.next<Piece>(), .job = job.file.job.id, .what = "slipcase"});
    job.file.releaseChecks.push_back({.id = job.ids.next<ReleaseCheck>(),
                                      .job = job.file.job.id,
                                      .key = "pieces",
                                      .answer = ReleaseAnswer::done});
    EXPECT_TRUE(isSettled("pieces"));
    EXPECT_FALSE(isSettled("piece " + job.file.pieces.front().id.text()));
    job.file.releaseChecks.back().answer = ReleaseAnswer::open;
    EXPECT_FALSE(isSettled("piece " + job.file.pieces.front().id.text()));
    EXPECT_FALSE(isSettled("pieces"));
}

// A facsimile stands where the original is lacking.
TEST_F(ReleaseTest, aSuppliedLeafHasNoPhotographBefore) {
    const auto row = [&] {
        const auto all = releaseList(job.file, job.clock);
        return *std::ranges::find(all, "after_has_before", &ReleaseRow::key);
    };
    for (Photograph& one : job.file.photographs) {
        one.place = "B2";
        one.facsimile.reset();
    }
    Photograph& after = job.photograph(PhotoRole::after);
    after.place = "F9";
    EXPECT_FALSE(row().isMet);
    job.file.photographs.back().facsimile = job.file.facsimiles.front().id;
    EXPECT_TRUE(row().isMet);
    job.file.photographs.back().facsimile.reset();
    job.file.photographs.back().place = job.file.facsimiles.front().place;
    EXPECT_TRUE(row().isMet);
}

TEST_F(ReleaseTest, collatedAgainIsSaidByAWalkAfterTheLastWork) {
    Walk walk{.id = job.ids.next<Walk>(), .job = job.file.job.id, .startedAt = {}};
    walk.finishedAt = at(day(2031, 3, 1));
    job.file.walks.push_back(walk);
    EXPECT_FALSE(isSettled("collated_again"));
    job.file.walks.back().finishedAt = at(day(2031, 3, 30));
    EXPECT_TRUE(isSettled("collated_again"));
}

TEST_F(ReleaseTest, anOpenRowOfTheRecordIsOnlyExplained) {
    job.file.reports.clear();
    EXPECT_EQ(answer("report_issued").error(), ReleaseProblem::unexplained);
    applyTo(job.file, *answer("report_issued", ReleaseAnswer::explained, "the owner waives it"));
    EXPECT_TRUE(isSettled("report_issued"));
}

TEST_F(ReleaseTest, theSignOffWaitsForEverythingElse) {
    EXPECT_EQ(answer("sign_off").error(), ReleaseProblem::stillOpen);
    answerAll();
    EXPECT_FALSE(mayLeave(rows()));
    applyTo(job.file, *answer("sign_off"));
    EXPECT_TRUE(mayLeave(rows()));
    EXPECT_EQ(job.file.releaseChecks.back().who, job.anyone());
    applyTo(job.file, *answer("leaf_tally", ReleaseAnswer::open));
    EXPECT_FALSE(mayLeave(rows()));
}

TEST_F(ReleaseTest, refusesWhatCantBeAnswered) {
    EXPECT_EQ(answer("no such row").error(), ReleaseProblem::noSuchRow);
    EXPECT_EQ(answer("leaf_tally", ReleaseAnswer::explained).error(), ReleaseProblem::unexplained);
    EXPECT_EQ(answerRow(job.file, job.clock, {"leaf_tally", ReleaseAnswer::done, "", std::nullopt},
                        job.ids)
                  .error(),
              ReleaseProblem::nobody);
}

TEST_F(ReleaseTest, theReturnMovesTheBookEndsTheJobAndKeepsTheNextLook) {
    HandBack given = back();
    given.nextLookOn = day(2032, 4, 1);
    const auto change = giveBack(job.file, given, job.clock, job.ids);
    ASSERT_TRUE(change);
    applyTo(job.file, *change);
    EXPECT_EQ(job.file.job.state, JobState::returned);
    EXPECT_EQ(job.file.job.keptAt, "with the keeper");
    EXPECT_EQ(job.file.moves.back().toPlace, "with the keeper");
    EXPECT_EQ(job.file.followUps.back().dueOn, day(2032, 4, 1));
    EXPECT_EQ(job.file.handBacks.size(), 1U);
}

TEST_F(ReleaseTest, aReturnSaysToWhomAndInWhatCondition) {
    HandBack nobody = back();
    nobody.givenTo.clear();
    EXPECT_EQ(giveBack(job.file, nobody, job.clock, job.ids).error(),
              ReleaseProblem::toWhomMissing);
    HandBack unseen = back();
    unseen.condition.clear();
    EXPECT_EQ(giveBack(job.file, unseen, job.clock, job.ids).error(),
              ReleaseProblem::conditionMissing);
}

} // namespace
} // namespace headcap::core
