// Common practice for the hazards of old books: a negative look is no clearance.
#include "core/custody/hazard_evidence.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "core/custody/hazards.h"
#include "core/report/hazard_words.h"
#include "tests/support/random_job.h"

namespace headcap::core {
namespace {

using tests::day;

Hazard hazardOf(const std::string& term, HazardState state, const std::string& method) {
    tests::JobBuilder b;
    return {.id = b.ids.next<Hazard>(),
            .item = b.file.item.id,
            .term = term,
            .state = state,
            .method = method,
            .onDay = day(2031, 3, 1),
            .who = std::nullopt};
}

// Red dust comes off on the glove, a nail is there or not: these the eye does settle.
bool showsItself(const std::string& term) {
    return term == "red_rot_dust" || term == "iron_or_glass";
}

TEST(HazardEvidence, whatIsNotClearedWarnsWhateverTheMethod) {
    for (const HazardKind& kind : hazardKinds()) {
        for (const auto state :
             {HazardState::notTested, HazardState::suspected, HazardState::confirmed}) {
            EXPECT_TRUE(stillWarns(hazardOf(kind.key, state, "XRF"))) << kind.key;
        }
    }
}

TEST(HazardEvidence, aLookLeavesTheCautionAndAnAnalysisTakesItAway) {
    for (const HazardKind& kind : hazardKinds()) {
        const Hazard looked = hazardOf(kind.key, HazardState::cleared, "Looked at under x40");
        EXPECT_EQ(stillWarns(looked), !showsItself(kind.key)) << kind.key;
        EXPECT_EQ(standingOf(looked) == "cleared", showsItself(kind.key)) << kind.key;
        const Hazard analysed = hazardOf(kind.key, HazardState::cleared, "XRF, by a laboratory");
        EXPECT_FALSE(stillWarns(analysed)) << kind.key;
        EXPECT_EQ(standingOf(analysed), "cleared");
    }
}

TEST(HazardEvidence, papersForTheBenchBearTheCautionOfWhatWasOnlyLookedFor) {
    tests::JobBuilder b;
    b.file.hazards = {hazardOf("mould", HazardState::cleared, "Looked at under x40"),
                      hazardOf("arsenical_green", HazardState::cleared, "XRF")};
    Section section;
    report::addHazards(section, b.file, report::HazardReader::bench);
    ASSERT_EQ(section.blocks.size(), 1U);
    const auto& caution = std::get<Caution>(section.blocks.front());
    EXPECT_NE(caution.title.find("not seen active on 1 March 2031"), std::string::npos);
    EXPECT_FALSE(caution.text.empty());
}

} // namespace
} // namespace headcap::core
