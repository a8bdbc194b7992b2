#include "core/treatment/proposal_versions.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "core/treatment/totals.h"
#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::day;
using tests::JobBuilder;

void applyTo(JobFile& file, const Change& change) {
    for (const Write& write : change.writes) {
        if (const auto* proposal = std::get_if<Proposal>(&write.record)) {
            std::erase_if(file.proposals, [&](const auto& one) { return one.id == proposal->id; });
            file.proposals.push_back(*proposal);
        } else if (const auto* option = std::get_if<ProposalOption>(&write.record)) {
            std::erase_if(file.options, [&](const auto& one) { return one.id == option->id; });
            if (write.what != Write::What::remove) {
                file.options.push_back(*option);
            }
        } else if (const auto* line = std::get_if<ProposalLine>(&write.record)) {
            std::erase_if(file.lines, [&](const auto& one) { return one.id == line->id; });
            if (write.what != Write::What::remove) {
                file.lines.push_back(*line);
            }
        } else if (const auto* job = std::get_if<Job>(&write.record)) {
            file.job = *job;
        }
    }
}

NewVersion next(JobBuilder& b) {
    return nextVersion(b.file, b.anyone(), day(2031, 4, 2), b.ids);
}

TEST(ProposalVersions, theFirstOffersToDoNothing) {
    JobBuilder b;
    const NewVersion made = next(b);
    applyTo(b.file, made.change);
    ASSERT_EQ(b.file.proposals.size(), 1U);
    EXPECT_EQ(b.file.proposals.front().version, 1);
    EXPECT_EQ(optionsOf(b.file, made.proposal).size(), 2U);
    EXPECT_TRUE(offersDoingNothing(b.file, made.proposal));
    EXPECT_EQ(optionsOf(b.file, made.proposal).front()->name, "Do nothing");
}

TEST(ProposalVersions, aLaterOneCopiesOptionsAndLinesAndIsNeitherSentNorDecided) {
    JobBuilder b;
    const Proposal first = b.proposal();
    const ProposalOption a = b.option(first, "A");
    b.line(a, "resewing");
    b.line(a, "guarding");
    b.option(first, "Do nothing");
    b.decision(first, DecisionKind::approved);
    const NewVersion made = next(b);
    applyTo(b.file, made.change);
    const Proposal* latest = latestProposal(b.file);
    ASSERT_NE(latest, nullptr);
    EXPECT_EQ(latest->id, made.proposal);
    EXPECT_EQ(latest->version, 2);
    EXPECT_EQ(latest->aim, first.aim);
    EXPECT_FALSE(latest->sentOn.has_value());
    const auto options = optionsOf(b.file, made.proposal);
    ASSERT_EQ(options.size(), 2U);
    EXPECT_NE(options.front()->id, a.id);
    const auto copied = linesOf(b.file, options.front()->id);
    ASSERT_EQ(copied.size(), 2U);
    EXPECT_EQ(copied.front()->price, linesOf(b.file, a.id).front()->price);
    EXPECT_EQ(linesOf(b.file, a.id).size(), 2U); // the earlier version keeps its own
}

TEST(ProposalVersions, doingNothingIsPutBackWhereALaterVersionLacksIt) {
    JobBuilder b;
    const Proposal first = b.proposal();
    b.line(b.option(first, "A"), "resewing");
    ASSERT_FALSE(offersDoingNothing(b.file, first.id));
    const NewVersion made = next(b);
    applyTo(b.file, made.change);
    EXPECT_TRUE(offersDoingNothing(b.file, made.proposal));
}

TEST(ProposalVersions, anOptionTakesTheNextLetter) {
    JobBuilder b;
    const Proposal proposal = b.proposal();
    b.option(proposal, "A: resew");
    b.option(proposal, "As it is");
    auto made = addOption(b.file, proposal, false, b.ids);
    applyTo(b.file, made.change);
    EXPECT_EQ(b.file.options.back().name, "B");
    made = addOption(b.file, proposal, false, b.ids);
    applyTo(b.file, made.change);
    EXPECT_EQ(b.file.options.back().name, "C");
    EXPECT_EQ(optionsOf(b.file, proposal.id).back()->id, made.option);
}

TEST(ProposalVersions, anOptionGoesWithItsLines) {
    JobBuilder b;
    const Proposal proposal = b.proposal();
    const ProposalOption a = b.option(proposal, "A");
    b.line(a, "resewing");
    b.line(b.option(proposal, "B"), "guarding");
    applyTo(b.file, removeOption(b.file, a));
    EXPECT_EQ(b.file.options.size(), 1U);
    ASSERT_EQ(b.file.lines.size(), 1U);
    EXPECT_EQ(b.file.lines.front().technique, "guarding");
}

TEST(ProposalVersions, sendingTakesTheJobToProposedAndNeverBack) {
    for (std::size_t i = 0; i < EnumNames<JobState>::kNames.size(); ++i) {
        JobBuilder b;
        b.file.job.state = static_cast<JobState>(i);
        const Proposal proposal = b.proposal();
        const JobState before = b.file.job.state;
        applyTo(b.file,
                sendProposal(b.file, proposal, b.anyone(), b.clock.now(), day(2031, 4, 2), b.ids));
        const bool moves = before == JobState::received || before == JobState::surveyed ||
                           before == JobState::declined;
        EXPECT_EQ(b.file.job.state, moves ? JobState::proposed : before) << wordsFor(before);
        EXPECT_EQ(b.file.proposals.back().sentOn, day(2031, 4, 2));
    }
}

TEST(ProposalVersions, onlyAnApprovalTakesTheJobToApproved) {
    for (std::size_t i = 0; i < EnumNames<DecisionKind>::kNames.size(); ++i) {
        JobBuilder b;
        b.file.job.state = JobState::proposed;
        const auto kind = static_cast<DecisionKind>(i);
        const Decision decision = b.decision(b.proposal(), kind);
        const auto move = moveOnDecision(b.file, decision, b.anyone(), b.clock.now());
        const bool approves =
            kind == DecisionKind::approved || kind == DecisionKind::approvedWithLimits;
        ASSERT_EQ(move.has_value(), approves);
        if (move) {
            Change change;
            EXPECT_TRUE(addMove(change, b.file, *move, b.ids));
            applyTo(b.file, change);
            EXPECT_EQ(b.file.job.state, JobState::approved);
            EXPECT_EQ(move->why, "proposal 1 approved by Mrs Pell");
        }
    }
}

TEST(ProposalVersions, anApprovalAtTheBenchLeavesTheJobThere) {
    JobBuilder b;
    b.file.job.state = JobState::atTheBench;
    const Decision decision = b.decision(b.proposal(), DecisionKind::approved);
    EXPECT_FALSE(moveOnDecision(b.file, decision, b.anyone(), b.clock.now()));
}

} // namespace
} // namespace headcap::core
