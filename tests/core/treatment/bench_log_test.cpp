#include "core/treatment/bench_log.h"

#include <gtest/gtest.h>

#include "core/treatment/step_checks.h"
#include "core/treatment/techniques.h"
#include "tests/support/apply_change.h"
#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::applyTo;
using tests::at;
using tests::day;
using tests::JobBuilder;

Amount grams(std::int64_t milligrams) {
    return Amount::of(Mass::milligrams(milligrams));
}

class BenchLog : public testing::Test {
protected:
    BenchLog() { m_b.lot("31-002", "wheat starch paste", grams(10'000)); }

    LoggedStep mend(Amount amount) {
        Step step{.id = m_b.ids.next<Step>(),
                  .job = m_b.file.job.id,
                  .part = std::nullopt,
                  .at = at(day(2031, 4, 1)),
                  .who = m_b.anyone(),
                  .technique = "tear_mending",
                  .place = "B2",
                  .line = std::nullopt,
                  .corrects = std::nullopt,
                  .struckBy = std::nullopt};
        MaterialUse use{.id = m_b.ids.next<MaterialUse>(),
                        .job = step.job,
                        .step = step.id,
                        .lot = m_b.file.lots.front().id,
                        .amount = amount};
        return {step, {use}};
    }
    Amount balance() { return *shelfOf(m_b.file).balanceOf(m_b.file.lots.front().id); }
    Striking striking(const std::string& why) {
        return {m_b.anyone(), at(day(2031, 4, 1), 15), why};
    }

    JobBuilder m_b;
};

TEST_F(BenchLog, aStepTakesWhatItUsedFromTheLot) {
    const auto change = logStep(mend(grams(400)), shelfOf(m_b.file), m_b.file.techniques, m_b.ids);
    ASSERT_TRUE(change);
    EXPECT_EQ(change->sentence, "Step logged: Mending tears, B2");
    applyTo(m_b.file, *change);
    EXPECT_EQ(balance(), grams(9'600));
}

TEST_F(BenchLog, strikingGivesItBackAndKeepsEverything) {
    const LoggedStep logged = mend(grams(400));
    applyTo(m_b.file, *logStep(logged, shelfOf(m_b.file), m_b.file.techniques, m_b.ids));
    const auto change =
        strikeStep(m_b.file, logged.step.id, striking("logged to the wrong job"), m_b.ids);
    ASSERT_TRUE(change);
    for (const Write& write : change->writes) {
        EXPECT_NE(write.what, Write::What::remove);
    }
    applyTo(m_b.file, *change);
    EXPECT_EQ(balance(), grams(10'000));
    EXPECT_EQ(m_b.file.steps.size(), 1U);
    EXPECT_EQ(m_b.file.steps.front().struckWhy, "logged to the wrong job");
    EXPECT_EQ(m_b.file.uses.size(), 1U);

    // A second striking can't give it back twice.
    EXPECT_EQ(strikeStep(m_b.file, logged.step.id, striking("again"), m_b.ids).error(),
              StepProblem::alreadyStruck);
}

TEST_F(BenchLog, aCorrectionReplacesTheStepForWhatNamedIt) {
    const LoggedStep wrong = mend(grams(4'000));
    applyTo(m_b.file, *logStep(wrong, shelfOf(m_b.file), m_b.file.techniques, m_b.ids));
    m_b.facsimile("K5").step = wrong.step.id;
    m_b.photograph(PhotoRole::during).step = wrong.step.id;
    const LoggedStep right = mend(grams(400));
    const auto change = correctStep(m_b.file, wrong.step.id, right, shelfOf(m_b.file),
                                    striking("4 g was 0.4 g"), m_b.ids);
    ASSERT_TRUE(change);
    applyTo(m_b.file, *change);
    EXPECT_EQ(balance(), grams(9'600));
    ASSERT_EQ(m_b.file.steps.size(), 2U);
    EXPECT_TRUE(m_b.file.steps.front().struckAt);
    EXPECT_EQ(m_b.file.steps.back().corrects, wrong.step.id);
    EXPECT_EQ(m_b.file.facsimiles.front().step, right.step.id);
    EXPECT_EQ(m_b.file.photographs.front().step, right.step.id);
}

TEST_F(BenchLog, refusesWhatItCanNotAnswerFor) {
    const Shelf shelf = shelfOf(m_b.file);
    EXPECT_EQ(logStep(mend(Amount::sheets(1)), shelf, m_b.file.techniques, m_b.ids).error(),
              StepProblem::unitDiffers);
    EXPECT_EQ(logStep(mend(grams(0)), shelf, m_b.file.techniques, m_b.ids).error(),
              StepProblem::amountNotAbove);
    EXPECT_EQ(logStep(mend(grams(1)), Shelf{}, m_b.file.techniques, m_b.ids).error(),
              StepProblem::lotUnknown);
    LoggedStep silent = mend(grams(1));
    silent.step.technique.clear();
    silent.step.place.clear();
    EXPECT_EQ(logStep(silent, shelf, m_b.file.techniques, m_b.ids).error(),
              StepProblem::nothingSaid);
    const LoggedStep logged = mend(grams(1));
    EXPECT_EQ(strikeStep(m_b.file, logged.step.id, striking("why"), m_b.ids).error(),
              StepProblem::notAStep);
    applyTo(m_b.file, *logStep(logged, shelf, m_b.file.techniques, m_b.ids));
    EXPECT_EQ(strikeStep(m_b.file, logged.step.id, striking(""), m_b.ids).error(),
              StepProblem::reasonMissing);
}

TEST_F(BenchLog, saysWhichLotIsCountedOtherwise) {
    const Shelf shelf = shelfOf(m_b.file);
    const std::string said = unitSentence(mend(Amount::pieces(2)), shelf);
    for (const char* words : {"31-002", "counted in grams", "2 pieces"}) {
        EXPECT_NE(said.find(words), std::string::npos) << said;
    }
    EXPECT_EQ(unitSentence(mend(grams(400)), shelf), "");
}

TEST_F(BenchLog, theChecksOfATechniqueStayOpenUntilTheyAreAnswered) {
    const LoggedStep mended = mend(grams(200));
    applyTo(m_b.file, *logStep(mended, shelfOf(m_b.file), m_b.file.techniques, m_b.ids));
    const Step step = m_b.file.steps.back();
    const auto open = openChecks(m_b.file, step);
    ASSERT_EQ(open, TechniquesInForce{}.named("tear_mending")->checks);
    StepCheck check{
        .id = m_b.ids.next<StepCheck>(), .job = step.job, .step = step.id, .what = open.front()};
    EXPECT_EQ(answerCheck(m_b.file, check, m_b.anyone()).error(), CheckProblem::unexplained);
    check.done = true;
    applyTo(m_b.file, *answerCheck(m_b.file, check, m_b.anyone()));
    EXPECT_EQ(openChecks(m_b.file, step).size(), open.size() - 1);
}

TEST_F(BenchLog, aCorrectionKeepsWhatWasChecked) {
    const LoggedStep mended = mend(grams(200));
    applyTo(m_b.file, *logStep(mended, shelfOf(m_b.file), m_b.file.techniques, m_b.ids));
    const std::string what = TechniquesInForce{}.named("tear_mending")->checks.front();
    applyTo(m_b.file, *answerCheck(m_b.file,
                                   {.id = m_b.ids.next<StepCheck>(),
                                    .job = m_b.file.job.id,
                                    .step = mended.step.id,
                                    .what = what,
                                    .done = true},
                                   m_b.anyone()));
    LoggedStep rightly = mend(grams(300));
    const Id<Step> id = rightly.step.id;
    applyTo(m_b.file, *correctStep(m_b.file, mended.step.id, rightly, shelfOf(m_b.file),
                                   {m_b.anyone(), m_b.clock.now(), "weighed again"}, m_b.ids));
    const auto open = openChecks(m_b.file, *m_b.file.step(id));
    EXPECT_EQ(std::ranges::find(open, what), open.end());
}

} // namespace
} // namespace headcap::core
