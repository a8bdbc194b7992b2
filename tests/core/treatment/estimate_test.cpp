#include "core/treatment/estimate.h"

#include <array>
#include <cmath>
#include <random>

#include <gtest/gtest.h>

#include "core/treatment/techniques_in_force.h"
#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

std::vector<PastWork> pastOf(const std::string& technique, const std::vector<int>& minutes) {
    std::vector<PastWork> past;
    for (const int one : minutes) {
        past.push_back({.technique = technique, .minutes = Minutes{one}});
    }
    return past;
}

// Python 3.11, module statistics: quantiles(…, method='inclusive').
TEST(Estimate, quantilesAreThoseOfAGeneralStatisticsTool) {
    const std::vector<double> mends{11, 14, 9, 20, 13, 16, 12};
    EXPECT_DOUBLE_EQ(quantileOf(mends, 0.25), 11.5);
    EXPECT_DOUBLE_EQ(quantileOf(mends, 0.5), 13.0);
    EXPECT_DOUBLE_EQ(quantileOf(mends, 0.75), 15.0);
    const std::vector<double> resewings{420, 510, 365, 480, 600};
    EXPECT_DOUBLE_EQ(quantileOf(resewings, 0.1), 387.0);
    EXPECT_DOUBLE_EQ(quantileOf(resewings, 0.9), 564.0);
    EXPECT_DOUBLE_EQ(quantileOf({}, 0.5), 0.0);
}

void expectNear(Minutes found, int expected) {
    EXPECT_NEAR(static_cast<double>(found.count()), expected, std::max(2.0, 0.025 * expected));
}

// Worked in Python 3.11 by its module statistics (mean and stdev of the logarithms, quantiles of
// 60,000 totals drawn by random.choice and random.gauss): 12 mends, 4 guards and a resewing.
TEST(Estimate, agreesWithAnExampleWorkedInAGeneralStatisticsTool) {
    auto past = pastOf("tear_mending", {11, 14, 9, 20, 13, 16, 12});
    const auto guards = pastOf("guarding", {10, 12, 15, 11});
    const auto resewings = pastOf("resewing", {420, 510, 365, 480, 600});
    past.insert(past.end(), guards.begin(), guards.end());
    past.insert(past.end(), resewings.begin(), resewings.end());
    const std::vector<WorkAsked> asked{{"tear_mending", 12}, {"guarding", 4}, {"resewing", 1}};
    const OptionEstimate estimate = estimateOf(asked, past);
    ASSERT_EQ(estimate.lines.size(), 3U);
    expectNear(estimate.lines[0].quarter, 128);
    expectNear(estimate.lines[0].median, 157);
    expectNear(estimate.lines[0].threeQuarters, 195);
    expectNear(estimate.lines[1].median, 46);
    expectNear(estimate.lines[2].quarter, 391);
    expectNear(estimate.lines[2].threeQuarters, 558);
    expectNear(estimate.low, 538);
    expectNear(estimate.quarter, 601);
    expectNear(estimate.median, 686);
    expectNear(estimate.threeQuarters, 781);
    expectNear(estimate.high, 868);
    EXPECT_EQ(estimate.steps, 16U);
}

TEST(Estimate, isTheSameEachTime) {
    const auto past = pastOf("guarding", {10, 12, 15, 11});
    const std::vector<WorkAsked> asked{{"guarding", 4}, {"boxing", 1}};
    const auto once = estimateOf(asked, past);
    const auto again = estimateOf(asked, past);
    EXPECT_EQ(once.low, again.low);
    EXPECT_EQ(once.high, again.high);
}

TEST(Estimate, ofWorkThatWasNeverDoneIsTheVocabularysUsualMinutes) {
    const std::vector<WorkAsked> asked{{"guarding", 5}};
    const auto estimate = estimateOf(asked, {});
    EXPECT_EQ(estimate.lines.front().basis, EstimateBasis::vocabulary);
    EXPECT_EQ(estimate.lines.front().steps, 0U);
    const auto usual = TechniquesInForce{}.named("guarding")->minutes.count() * 5;
    EXPECT_NEAR(static_cast<double>(estimate.median.count()), static_cast<double>(usual),
                0.05 * static_cast<double>(usual));
    EXPECT_LT(estimate.low, estimate.median);
    EXPECT_GT(estimate.high, estimate.median);
}

TEST(Estimate, ofAWordOfTheHouseIsWhatTheLineSays) {
    const std::vector<WorkAsked> said{{"our own way", 1, Minutes{90}}};
    EXPECT_EQ(estimateOf(said, {}).lines.front().basis, EstimateBasis::said);
    EXPECT_NEAR(static_cast<double>(estimateOf(said, {}).median.count()), 90, 5);
    const std::vector<WorkAsked> unsaid{{"our own way", 1}};
    const auto nothing = estimateOf(unsaid, {});
    EXPECT_EQ(nothing.lines.front().basis, EstimateBasis::nothing);
    EXPECT_EQ(nothing.unknown, 1U);
    EXPECT_EQ(nothing.high, Minutes{0});
}

TEST(Estimate, oneOrTwoPastJobsAreWeighedWithTheUsualMinutes) {
    const auto past = pastOf("guarding", {48});
    const std::vector<WorkAsked> asked{{"guarding", 1}};
    const auto estimate = estimateOf(asked, past);
    EXPECT_EQ(estimate.lines.front().basis, EstimateBasis::few);
    const double between = std::sqrt(
        48.0 * static_cast<double>(TechniquesInForce{}.named("guarding")->minutes.count()));
    EXPECT_NEAR(static_cast<double>(estimate.median.count()), between, 2);
}

TEST(Estimate, jobsAlikeCountWhereThereAreEnoughOfThem) {
    std::vector<PastWork> past;
    for (const int one : {300, 310, 320, 330, 340}) {
        past.push_back({"rebacking", 1, Minutes{one}, 1, Length::millimetres(200), "leather"});
        past.push_back({"rebacking", 1, Minutes{one * 4}, 1, Length::millimetres(450), "leather"});
        past.push_back({"rebacking", 1, Minutes{one * 3}, 1, Length::millimetres(200), "vellum"});
    }
    const std::vector<WorkAsked> small{
        {"rebacking", 1, Minutes{0}, Length::millimetres(210), "leather"}};
    const auto alike = estimateOf(small, past);
    EXPECT_EQ(alike.lines.front().basis, EstimateBasis::alike);
    EXPECT_EQ(alike.lines.front().jobs, 5U);
    EXPECT_NEAR(static_cast<double>(alike.median.count()), 320, 12);
    const std::vector<WorkAsked> odd{
        {"rebacking", 1, Minutes{0}, Length::millimetres(90), "cloth"}};
    EXPECT_EQ(estimateOf(odd, past).lines.front().basis, EstimateBasis::past);
    EXPECT_EQ(estimateOf(odd, past).lines.front().jobs, 15U);
}

// A workshop whose minutes lie as minutes do, to the right: log-normal, or gamma.
class Simulated {
public:
    explicit Simulated(bool isGamma) : m_isGamma(isGamma) {}
    struct Trial {
        std::vector<PastWork> past;
        std::vector<WorkAsked> asked;
        double truth = 0;
    };
    Trial trial(int lines, int fewest, int most) {
        Trial made;
        for (int i = 0; i < lines; ++i) {
            const double mean = std::uniform_real_distribution<>{3.5, 6}(m_engine);
            const double spread = std::uniform_real_distribution<>{0.2, 0.6}(m_engine);
            const std::string technique = "technique " + std::to_string(i);
            const int jobs = std::uniform_int_distribution<>{fewest, most}(m_engine);
            for (int j = 0; j < jobs; ++j) {
                const auto minutes = std::max(1LL, std::llround(one(mean, spread)));
                made.past.push_back({technique, 1, Minutes{minutes}});
            }
            made.asked.push_back({technique, 1});
            made.truth += one(mean, spread);
        }
        return made;
    }

private:
    double one(double mean, double spread) {
        if (!m_isGamma) {
            return std::exp(std::normal_distribution<>{mean, spread}(m_engine));
        }
        const double shape = 1 / (spread * spread);
        return std::gamma_distribution<>{shape, std::exp(mean) / shape}(m_engine);
    }
    std::mt19937_64 m_engine{7};
    bool m_isGamma;
};

TEST(Estimate, coversTheTruthInFourOfFiveSimulatedWorkshops) {
    constexpr int kWorkshops = 600;
    for (const bool isGamma : {false, true}) {
        for (const auto& [lines, fewest, most] :
             {std::array{1, 5, 12}, std::array{3, 3, 8}, std::array{6, 3, 20}}) {
            Simulated workshops{isGamma};
            int covered = 0;
            for (int i = 0; i < kWorkshops; ++i) {
                const auto trial = workshops.trial(lines, fewest, most);
                const auto estimate = estimateOf(trial.asked, trial.past);
                covered += trial.truth >= static_cast<double>(estimate.low.count()) &&
                                   trial.truth <= static_cast<double>(estimate.high.count())
                               ? 1
                               : 0;
            }
            const double share = static_cast<double>(covered) / kWorkshops;
            EXPECT_GE(share, 0.75) << lines << " lines, gamma " << isGamma;
            EXPECT_LE(share, 0.85) << lines << " lines, gamma " << isGamma;
        }
    }
}

TEST(Estimate, usualMinutesFollowTheNumber) {
    const Technique mending{.minutes = Minutes{25}};
    EXPECT_EQ(usualMinutes(mending, 1), Minutes{25});
    EXPECT_EQ(usualMinutes(mending, 4), Minutes{100});
    EXPECT_EQ(usualMinutes(mending, 0), Minutes{25});
    EXPECT_EQ(usualMinutes(Technique{}, 4), Minutes{0});
    EXPECT_GT(usualMinutes(mending, 9'000'000'000'000'000'000), Minutes{0}); // no overflow
}

TEST(Estimate, aLineBelowTheMiddleHalfIsLessThanUsual) {
    tests::JobBuilder b;
    const Proposal& proposal = b.proposal();
    ProposalLine line = b.line(b.option(proposal, "A"), "rebacking");
    const LineEstimate usual{.basis = EstimateBasis::past,
                             .quarter = Minutes{600},
                             .median = Minutes{700},
                             .threeQuarters = Minutes{900}};
    line.minutes = Minutes{420};
    EXPECT_TRUE(isLessThanUsual(line, usual));
    line.minutes = Minutes{600};
    EXPECT_FALSE(isLessThanUsual(line, usual));
    line.minutes = Minutes{0}; // nothing said
    EXPECT_FALSE(isLessThanUsual(line, usual));
    line.minutes = Minutes{420};
    EXPECT_FALSE(isLessThanUsual(line, {.basis = EstimateBasis::nothing}));
}

} // namespace
} // namespace headcap::core
