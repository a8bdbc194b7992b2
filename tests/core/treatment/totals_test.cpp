#include "core/treatment/totals.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "core/treatment/approval.h"
#include "core/treatment/carried_out.h"
#include "core/treatment/techniques.h"

#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::day;
using tests::JobBuilder;

class Totals : public testing::Test {
protected:
    Totals() : m_option(m_b.option(m_b.proposal(), "A").id) {}

    ProposalLine& line(const std::string& technique, std::optional<Money> price,
                       Minutes minutes = Minutes{30}) {
        const ProposalOption option = m_b.file.options.front();
        ProposalLine& made = m_b.line(option, technique);
        made.price = std::move(price);
        made.minutes = minutes;
        return made;
    }

    JobBuilder m_b;
    Id<ProposalOption> m_option;
};

TEST_F(Totals, minutesAreThoseOfTheOptionsOwnLines) {
    EXPECT_EQ(minutesOf(m_b.file, m_option), Minutes{0});
    line("tear_mending", Money{10, "EUR"});
    line("guarding", std::nullopt, Minutes{45});
    const ProposalOption other = m_b.option(m_b.file.proposals.front(), "B");
    m_b.line(other, "resewing").minutes = Minutes{600};
    EXPECT_EQ(minutesOf(m_b.file, m_option), Minutes{75});
    EXPECT_EQ(optionsOf(m_b.file, other.proposal).size(), 2U);
}

TEST_F(Totals, aStepThatNamesNoLineCountsForOneLineOnly) {
    const ProposalLine first = line("guarding", std::nullopt);
    const ProposalLine second = line("guarding", std::nullopt);
    m_b.step("guarding", "K7", day(2031, 4, 1)).minutes = Minutes{20};
    m_b.step("guarding", "K8", day(2031, 4, 1)).line = second.id;
    m_b.file.steps.back().minutes = Minutes{7};
    EXPECT_EQ(workedOn(m_b.file, first).minutes, Minutes{20});
    EXPECT_EQ(workedOn(m_b.file, second).minutes, Minutes{7});
}

TEST_F(Totals, aStruckStepCarriesOutNothing) {
    const ProposalLine only = line("guarding", std::nullopt);
    m_b.step("guarding", "K7", day(2031, 4, 1)).struckAt = m_b.clock.now();
    EXPECT_EQ(workedOn(m_b.file, only).steps, 0U);
}

TEST_F(Totals, nameTheLinesThatCantBeUndone) {
    for (const Technique& technique : techniques()) {
        line(technique.key, std::nullopt);
    }
    const auto found = irreversibleLines(m_b.file, m_option);
    EXPECT_FALSE(found.empty());
    for (const ProposalLine& one : m_b.file.lines) {
        const bool isFound = std::ranges::find(found, one.id, &ProposalLine::id) != found.end();
        EXPECT_EQ(isFound,
                  TechniquesInForce{}.named(one.technique)->reversibility == Reversibility::no)
            << one.technique;
    }
}

// Two lines of one technique, told apart by their places.
TEST_F(Totals, aStepCountsForTheLineWithItsPlace) {
    line("tear_mending", std::nullopt).place = "SR 11, 12, 19";
    line("tear_mending", std::nullopt).place = "spine";
    m_b.file.lines.front().position = 1;
    m_b.file.lines.back().position = 2;
    m_b.decision(m_b.file.proposals.front(), DecisionKind::approved).option = m_option;
    m_b.step("tear_mending", "spine", day(2031, 4, 2)).minutes = Minutes{20};
    const auto& lines = m_b.file.lines;
    EXPECT_EQ(workedOn(m_b.file, lines[0]).steps, 0U);
    EXPECT_EQ(workedOn(m_b.file, lines[1]).minutes, Minutes{20});
    EXPECT_EQ(openLines(m_b.file), (std::vector<const ProposalLine*>{&lines[0]}));
    m_b.step("tear_mending", "SR 12", day(2031, 4, 2)).minutes = Minutes{5};
    EXPECT_EQ(workedOn(m_b.file, lines[0]).minutes, Minutes{5});
    EXPECT_TRUE(openLines(m_b.file).empty());
}

// Somewhere that no line names: it is the first line's, and nothing is told to be undone for it.
TEST_F(Totals, aStepAtNoLinesPlaceCountsForTheFirst) {
    line("tear_mending", std::nullopt).place = "B2";
    line("tear_mending", std::nullopt).place = "spine";
    m_b.decision(m_b.file.proposals.front(), DecisionKind::approved).option = m_option;
    m_b.step("tear_mending", "K9", day(2031, 4, 2)).minutes = Minutes{20};
    EXPECT_EQ(workedOn(m_b.file, m_b.file.lines[0]).steps, 1U);
    EXPECT_EQ(workedOn(m_b.file, m_b.file.lines[1]).steps, 0U);
    EXPECT_TRUE(openLines(m_b.file).empty());
}

TEST_F(Totals, ofALineOfSeveralPlacesTheOnesNotDoneAreNamed) {
    line("tear_mending", std::nullopt).place = "B2, C5, title leaf";
    m_b.decision(m_b.file.proposals.front(), DecisionKind::approved).option = m_option;
    const ProposalLine& mends = m_b.file.lines.front();
    EXPECT_TRUE(placesNotDone(m_b.file, mends).empty()) << "not begun at all";
    m_b.step("tear_mending", "B2", day(2031, 4, 2));
    EXPECT_EQ(placesNotDone(m_b.file, mends), (std::vector<std::string>{"C5", "title leaf"}));
    m_b.step("tear_mending", "title leaf, C5", day(2031, 4, 2));
    EXPECT_TRUE(placesNotDone(m_b.file, mends).empty());
    m_b.file.steps.clear();
    m_b.step("tear_mending", "all the tears", day(2031, 4, 2));
    EXPECT_TRUE(placesNotDone(m_b.file, mends).empty()) << "said in other words";
}

} // namespace
} // namespace headcap::core
