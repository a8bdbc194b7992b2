#include "core/materials/fitness.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using Rule = FitnessRule;
using tests::day;

class Fitness : public testing::Test {
protected:
    Fitness()
        : kind(b.material("paper", MaterialClass::paper, Unit::sheet)),
          lot(b.lot("31-001", "paper", Amount::sheets(10))) {
        purpose.on = day(2031, 4, 2);
    }
    std::vector<Rule> rules() {
        std::vector<Rule> found;
        for (const FitnessPoint& point : fitnessOf(lot, kind, purpose)) {
            EXPECT_FALSE(point.sentence.empty());
            EXPECT_FALSE(point.source.empty());
            found.push_back(point.rule);
        }
        return found;
    }
    bool asksReason(Rule rule) {
        const auto points = fitnessOf(lot, kind, purpose);
        const auto at = std::ranges::find(points, rule, &FitnessPoint::rule);
        return at != points.end() && at->asksReason;
    }

    tests::JobBuilder b;
    Material& kind;
    Lot& lot;
    FitnessPurpose purpose{.on = day(2031, 4, 2)};
};

TEST_F(Fitness, aLotOfWhichNothingSpeaksAgainstIsFit) {
    kind.standard = "ISO 9706";
    lot.evidence = "maker's certificate";
    lot.phHundredths = 820;
    lot.alkaliReserveMmolKg = 460;
    kind.grammageMgM2 = 30'000;
    purpose.isRepairOfPaper = true;
    purpose.isPromisedReversible = true;
    EXPECT_TRUE(rules().empty());
}

TEST_F(Fitness, theDateIsThatOfTheUse) {
    lot.openedOn = day(2031, 3, 1);
    lot.goodUntil = day(2031, 4, 1);
    EXPECT_EQ(rules(), std::vector{Rule::pastDate});
    EXPECT_TRUE(asksReason(Rule::pastDate));
    purpose.on = day(2031, 4, 1);
    EXPECT_EQ(rules(), std::vector{Rule::nearDate});
    EXPECT_FALSE(asksReason(Rule::nearDate));
    purpose.on = day(2031, 3, 10);
    EXPECT_TRUE(rules().empty());
}

// ISO 9706: pH 7.5 to 10, alkali reserve 0.4 mol/kg. The lot's own figure goes before its kind's.
TEST_F(Fitness, whatStaysInABookIsPermanent) {
    kind.phHundredths = 680;
    EXPECT_EQ(rules(), std::vector{Rule::notPermanent});
    lot.phHundredths = 790;
    EXPECT_TRUE(rules().empty());
    lot.alkaliReserveMmolKg = 390;
    EXPECT_EQ(rules(), std::vector{Rule::notPermanent});
    purpose.stays = false;
    EXPECT_TRUE(rules().empty());
}

TEST_F(Fitness, whatCannotBeUndoneIsNotPromised) {
    kind.kind = MaterialClass::adhesivePrepared;
    kind.reversibility = Reversibility::no;
    EXPECT_TRUE(rules().empty());
    purpose.isPromisedReversible = true;
    EXPECT_EQ(rules(), std::vector{Rule::notReversible});
    EXPECT_TRUE(asksReason(Rule::notReversible));
}

TEST_F(Fitness, aRepairIsNoHeavierThanWhatItMends) {
    kind.grammageMgM2 = 60'000;
    purpose.isRepairOfPaper = true;
    purpose.mendedMgM2 = 60'000;
    EXPECT_TRUE(rules().empty());
    purpose.mendedMgM2 = 59'000;
    EXPECT_EQ(rules(), std::vector{Rule::tooHeavy});
    purpose.isRepairOfPaper = false;
    EXPECT_TRUE(rules().empty());
    purpose.isRepairOfPaper = true;
    purpose.mendedMgM2.reset(); // nobody has weighed the leaf: nothing is held against a guess
    EXPECT_TRUE(rules().empty());
}

TEST_F(Fitness, grainRunsAlongTheSpine) {
    purpose.followsSpine = true;
    purpose.grainAtSpine = GrainAtSpine::along;
    EXPECT_TRUE(rules().empty());
    purpose.grainAtSpine = GrainAtSpine::across;
    EXPECT_EQ(rules(), std::vector{Rule::grainAcross});
    EXPECT_TRUE(asksReason(Rule::grainAcross));
    kind.kind = MaterialClass::adhesivePrepared;
    EXPECT_TRUE(rules().empty());
}

TEST_F(Fitness, grainIsAskedForWhereItMatters) {
    lot.grain = Grain::alongHeight;
    EXPECT_TRUE(rules().empty());
    purpose.followsSpine = true;
    EXPECT_EQ(rules(), std::vector{Rule::grainUnsaid});
    EXPECT_FALSE(asksReason(Rule::grainUnsaid));
    purpose.grainAtSpine = GrainAtSpine::along;
    EXPECT_TRUE(rules().empty());
    purpose.grainAtSpine = GrainAtSpine::notSaid;
    lot.grain = Grain::none; // made by hand
    EXPECT_TRUE(rules().empty());
}

TEST_F(Fitness, bufferedStockKeepsAwayFromCyanotypes) {
    lot.alkaliReserveMmolKg = 420;
    EXPECT_TRUE(rules().empty());
    purpose.touchesCyanotype = true;
    EXPECT_EQ(rules(), std::vector{Rule::bufferedOnPrint});
    lot.alkaliReserveMmolKg = 0;
    purpose.stays = false;
    EXPECT_TRUE(rules().empty());
}

TEST_F(Fitness, aClaimIsShown) {
    kind.standard = "ISO 9706";
    EXPECT_EQ(rules(), std::vector{Rule::claimUnproven});
    kind.standard = "ISO 9706, maker's certificate";
    EXPECT_TRUE(rules().empty());
}

TEST_F(Fitness, inksOfAFacsimileSayHowLongTheyLast) {
    kind.kind = MaterialClass::ink;
    EXPECT_TRUE(rules().empty());
    purpose.isForFacsimile = true;
    EXPECT_EQ(rules(), std::vector{Rule::printUnstable});
    kind.standard = "ISO 11798";
    EXPECT_TRUE(rules().empty());
}

TEST_F(Fitness, thePurposeIsReadFromTheStepAndTheBook) {
    const Step step = b.step("tear_mending", "B2", day(2031, 4, 1));
    const MaterialUse use = b.use(step, "31-001", Amount::sheets(1));
    FitnessPurpose read = purposeOf(use, step, b.file, day(2031, 4, 1));
    EXPECT_TRUE(read.isRepairOfPaper);
    EXPECT_EQ(read.isPromisedReversible, step.reversibility == Reversibility::yes);
    EXPECT_FALSE(read.touchesCyanotype);
    EXPECT_FALSE(read.followsSpine);
    EXPECT_FALSE(read.mendedMgM2);
    b.file.item.leafMgM2 = 90'000;
    EXPECT_EQ(purposeOf(use, step, b.file, day(2031, 4, 1)).mendedMgM2, 90'000);
    Item volume = b.file.item;
    volume.id = b.ids.next<Item>();
    volume.leafMgM2 = 60'000;
    b.file.parts = {volume};
    Step inVolume = step;
    inVolume.part = volume.id;
    EXPECT_EQ(purposeOf(use, inVolume, b.file, day(2031, 4, 1)).mendedMgM2, 60'000);
    Step lining = step;
    lining.technique = "spine_lining";
    EXPECT_TRUE(purposeOf(use, lining, b.file, day(2031, 4, 1)).followsSpine);
    b.file.item.note = "Twelve Cyanotypes of ferns";
    read = purposeOf(use, step, b.file, day(2031, 4, 1));
    EXPECT_TRUE(read.touchesCyanotype);
}

} // namespace
} // namespace headcap::core
