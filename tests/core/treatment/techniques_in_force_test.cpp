#include "core/treatment/techniques_in_force.h"

#include <algorithm>
#include <set>

#include <gtest/gtest.h>

#include "core/audit/audit.h"
#include "core/treatment/estimate.h"
#include "core/treatment/house_technique.h"
#include "core/treatment/line_completion.h"
#include "core/treatment/step_checks.h"
#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::day;
using tests::JobBuilder;

class TechniquesOfAWorkshop : public testing::Test {
protected:
    HouseTechnique own(const char* key) {
        const Technique* shipped = TechniquesInForce{}.named(key);
        return houseTechniqueFrom(*shipped, m_b.ids.next<HouseTechnique>());
    }
    HouseTechnique further() {
        return {.id = m_b.ids.next<HouseTechnique>(),
                .key = "drumming_on",
                .name = "Drumming on vellum",
                .said = "Drummed on vellum\n  drummed on \n\n",
                .doneTo = "boards",
                .minutes = Minutes{40},
                .sets = Minutes{180},
                .reversibility = Reversibility::withCare,
                .undoing = "lifted dry at the turn-ins",
                .adds = true,
                .checks = "turn-ins lie flat"};
    }
    JobBuilder m_b;
};

TEST_F(TechniquesOfAWorkshop, areThoseThatShipUntilItSaysOtherwise) {
    const TechniquesInForce inForce;
    ASSERT_EQ(inForce.offered().size(), techniques().size());
    for (const Technique& one : techniques()) {
        EXPECT_EQ(inForce.named(one.key)->name, one.name);
    }
    EXPECT_EQ(inForce.nameOf("our word"), "our word");
}

// Taken over as it is and read back, a technique says what it said before.
TEST_F(TechniquesOfAWorkshop, takenOverSayWhatTheySaidBefore) {
    for (const Technique& one : techniques()) {
        const HouseTechnique kept = houseTechniqueFrom(one, m_b.ids.next<HouseTechnique>());
        const Technique back = techniqueFrom(kept, &one);
        EXPECT_EQ(houseTechniqueFrom(back, kept.id), kept) << one.key;
        EXPECT_EQ(back.named, one.named) << one.key;
        EXPECT_EQ(back.aat, one.aat) << one.key;
    }
}

TEST_F(TechniquesOfAWorkshop, standInPlaceOfThoseThatShip) {
    HouseTechnique guarding = own("guarding");
    guarding.minutes = Minutes{7};
    guarding.checks = "the guard lies square";
    const std::vector kept{guarding};
    const TechniquesInForce inForce{kept};
    ASSERT_EQ(inForce.offered().size(), techniques().size());
    EXPECT_EQ(inForce.named("guarding")->minutes, Minutes{7});
    EXPECT_EQ(inForce.named("guarding")->checks, std::vector<std::string>{"the guard lies square"});
    for (std::size_t i = 0; i < techniques().size(); ++i) {
        EXPECT_EQ(inForce.offered()[i].key, techniques()[i].key);
    }
}

TEST_F(TechniquesOfAWorkshop, retiredAreNotOfferedAndKeepTheirName) {
    HouseTechnique washing = own("washing");
    washing.retired = true;
    const std::vector kept{washing};
    const TechniquesInForce inForce{kept};
    EXPECT_EQ(inForce.offered().size(), techniques().size() - 1);
    EXPECT_EQ(std::ranges::count(inForce.offered(), "washing", &Technique::key), 0);
    EXPECT_EQ(inForce.nameOf("washing"), washing.name);
}

TEST_F(TechniquesOfAWorkshop, ofItsOwnAreReadInTheBenchLineAndOffered) {
    const std::vector kept{further()};
    const TechniquesInForce inForce{kept};
    const Shelf shelf;
    const LineContext context{
        .shelf = shelf, .people = m_b.file.people, .techniques = inForce.offered()};
    for (const char* line : {"drummed on upper board 45 min", "Drummed on vellum, 45 min",
                             "drumming on vellum lower board"}) {
        EXPECT_EQ(readStepLine(line, context).technique, "drumming_on") << line;
    }
    const auto offers = completionsOf("drum", context, {}, 5);
    ASSERT_FALSE(offers.empty());
    EXPECT_EQ(offers.front().says, "Drumming on vellum");
    const LoggedStep step =
        stepFrom(readStepLine("drummed on upper board", context), m_b.file.job.id, m_b.anyone(),
                 m_b.clock.now(), context, m_b.ids);
    EXPECT_EQ(step.step.reversibility, Reversibility::withCare);
    EXPECT_EQ(step.step.undoing, "lifted dry at the turn-ins");
    // What does not know it keeps it in words.
    EXPECT_EQ(readStepLine("drummed on upper board", {.shelf = shelf, .people = {}}).technique, "");
}

TEST_F(TechniquesOfAWorkshop, areGoneByInChecksEstimateAndAudit) {
    const std::vector kept{further()};
    m_b.file.techniques = TechniquesInForce{kept};
    m_b.step("drumming_on", "upper board", day(2031, 4, 1));
    EXPECT_EQ(openChecks(m_b.file, m_b.file.steps.front()),
              std::vector<std::string>{"turn-ins lie flat"});
    const std::vector<WorkAsked> asked{{.technique = "drumming_on"}};
    const auto estimate = estimateOf(asked, {}, m_b.file.techniques.offered());
    EXPECT_EQ(estimate.lines.front().basis, EstimateBasis::vocabulary);
    EXPECT_EQ(estimateOf(asked, {}).lines.front().basis, EstimateBasis::nothing);
    const auto asksForMaterial = [&] {
        return std::ranges::any_of(audit(m_b.file, m_b.clock), [](const AuditPoint& point) {
            return point.sentence.find("Drumming on vellum") != std::string::npos &&
                   point.sentence.find("names no material") != std::string::npos;
        });
    };
    EXPECT_TRUE(asksForMaterial());
    m_b.file.techniques = {};
    EXPECT_FALSE(asksForMaterial());
}

TEST_F(TechniquesOfAWorkshop, haveKeysOfTheirOwn) {
    EXPECT_EQ(techniqueKeyFor("Drumming on vellum", {}), "drumming_on_vellum");
    EXPECT_EQ(techniqueKeyFor("  Überzug, ½ Leder! ", {}), "uberzug_1_2_leder");
    EXPECT_EQ(techniqueKeyFor("Guarding", {}), "guarding_2");
    EXPECT_EQ(techniqueKeyFor("…", {}), "own");
}

TEST(LinesOfText, areWithoutBlanksAndComeBack) {
    EXPECT_EQ(linesIn(" one \r\n\n\ttwo"), (std::vector<std::string>{"one", "two"}));
    EXPECT_TRUE(linesIn("").empty());
    for (const Technique& one : techniques()) {
        EXPECT_EQ(linesIn(asLines(one.checks)), one.checks);
    }
}

} // namespace
} // namespace headcap::core
