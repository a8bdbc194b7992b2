// The bounds of the diagnosis on 66 whole German books of 1603–1839 (pages.tsv), three trials a
// book and arm; the benchmark runs many more and prints the figures.

#include <chrono>
#include <random>
#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "core/catchwords/leaf_diagnosis.h"
#include "tests/support/leaf_trials.h"
#include "tests/support/reference_file.h"

namespace headcap::core {
namespace {

using tests::Arm;

const std::vector<tests::TrialBook>& books() {
    static const auto kText = tests::readReference("pages.tsv");
    static const auto kBooks =
        kText ? tests::trialBooks(TextTable(*kText)) : std::vector<tests::TrialBook>{};
    return kBooks;
}

class WholeBooks : public testing::Test {
protected:
    void SetUp() override {
        if (books().empty())
            GTEST_SKIP() << "pages.tsv is not in " << HEADCAP_REFERENCE_DIR;
    }
};

struct Shares {
    double named = 0;
    double lacking = 0;
};

Shares run(Arm arm) {
    constexpr int kTrialsEach = 3;
    std::mt19937 random(1609);
    int trials = 0;
    int named = 0;
    int lacking = 0;
    for (const tests::TrialBook& book : books()) {
        for (int round = 0; round < kTrialsEach; ++round) {
            const auto trial = tests::makeTrial(book, arm, true, random);
            const auto result = tests::judge(trial, diagnoseLeaves(trial.pages));
            ++trials;
            named += result.named ? 1 : 0;
            lacking += result.lacking ? 1 : 0;
        }
    }
    return {static_cast<double>(named) / trials, static_cast<double>(lacking) / trials};
}

double lackingIn1500(bool numbered) {
    int lacking = 0;
    std::size_t pages = 0;
    for (const tests::TrialBook& book : books()) {
        const auto rows = numbered ? book.pages : tests::withoutNumbers(book.pages);
        lacking += tests::lackingFindings(diagnoseLeaves(rows));
        pages += rows.size();
    }
    return 1500.0 * lacking / static_cast<double>(pages);
}

TEST_F(WholeBooks, asTheyAreLackHardlyALeaf) {
    EXPECT_LE(lackingIn1500(true), 0.25);
    EXPECT_LE(lackingIn1500(false), 0.5);
}

TEST_F(WholeBooks, showALeafTakenOut) {
    EXPECT_GE(run(Arm::leafOut).named, 0.99);
}

// What the formula takes out, a finding has told; nothing lacks there silently.
TEST_F(WholeBooks, lackInTheirFormulaOnlyWhatIsFound) {
    std::mt19937 random(1612);
    for (const tests::TrialBook& book : books()) {
        const auto trial = tests::makeTrial(book, Arm::leafOutUnnumbered, false, random);
        const auto diagnosis = diagnoseLeaves(trial.pages);
        int inFormula = 0;
        int found = 0;
        for (const InferredGathering& gathering : diagnosis.gatherings)
            inFormula += gathering.lacking;
        for (const LeafFinding& finding : diagnosis.findings)
            found += finding.kind == LeafFindingKind::leafLacking ? finding.leaves : 0;
        EXPECT_LE(inFormula, found) << book.name << " " << diagnosis.formula;
    }
}

TEST_F(WholeBooks, showItWithoutNumbers) {
    EXPECT_GE(run(Arm::leafOutUnnumbered).named, 0.85);
}

TEST_F(WholeBooks, showMisnumberingAsWhatItIs) {
    const Shares shares = run(Arm::numbersRaised);
    EXPECT_GE(shares.named, 0.95);
    EXPECT_LE(shares.lacking, 0.03);
}

TEST_F(WholeBooks, showALeafTakenOutWhereLeavesAreNumbered) {
    EXPECT_GE(run(Arm::leafOutFoliated).named, 0.97);
}

TEST_F(WholeBooks, showLeavesExchanged) {
    EXPECT_GE(run(Arm::leavesExchanged).named, 0.95);
}

} // namespace
} // namespace headcap::core
