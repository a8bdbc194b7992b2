#include "core/materials/trace.h"

#include <algorithm>
#include <set>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "core/materials/trace_json.h"
#include "tests/support/job_builder.h"
#include "tests/support/random_shelf.h"

namespace headcap::core {
namespace {

using tests::RandomShelf;

using Ids = std::set<Id<Lot>>;

// A slow way to the same answer: what is made of what, closed over again and again.
Ids madeOf(const Whereabouts& all, const Id<Lot>& from) {
    Ids known{from};
    for (std::size_t before = 0; before != known.size();) {
        before = known.size();
        for (const LotPart& part : all.parts) {
            if (known.contains(part.source)) {
                known.insert(part.lot);
            }
        }
        for (const Lot& lot : all.lots) {
            if (lot.parent && known.contains(*lot.parent)) {
                known.insert(lot.id);
            }
        }
    }
    return known;
}

class RandomTrace : public testing::TestWithParam<int> {
protected:
    RandomShelf r{static_cast<std::uint64_t>(GetParam()), {}};
};

TEST_P(RandomTrace, findsWhateverWasMadeOfALot) {
    for (const Lot& lot : r.all.lots) {
        const auto trace = traceLot(r.all, lot.id);
        ASSERT_TRUE(trace);
        Ids found{lot.id};
        for (const Lot* one : trace->lots) {
            EXPECT_TRUE(found.insert(one->id).second) << "twice: " << one->number;
        }
        EXPECT_EQ(found, madeOf(r.all, lot.id));
    }
}

TEST_P(RandomTrace, findsEveryStandingUseOfThemAndNoOther) {
    for (const Lot& lot : r.all.lots) {
        const Ids made = madeOf(r.all, lot.id);
        std::set<Id<MaterialUse>> expected;
        for (const MaterialUse& use : r.all.uses) {
            const auto step = std::ranges::find(r.all.steps, use.step, &Step::id);
            if (use.lot && made.contains(*use.lot) && !step->struckAt) {
                expected.insert(use.id);
            }
        }
        std::set<Id<MaterialUse>> found;
        const auto trace = traceLot(r.all, lot.id);
        ASSERT_TRUE(trace);
        for (const TracedJob& job : trace->jobs) {
            for (const TracedUse& one : job.uses) {
                EXPECT_EQ(one.use->job, job.job->id);
                EXPECT_EQ(job.owner->id, job.job->owner);
                EXPECT_TRUE(found.insert(one.use->id).second);
            }
        }
        EXPECT_EQ(found, expected);
    }
}

// On the way from a lot to one made of it lie those made of the first of which the second is made.
TEST_P(RandomTrace, saysEveryLotOnTheWay) {
    for (const Lot& lot : r.all.lots) {
        const auto trace = traceLot(r.all, lot.id);
        const Ids made = madeOf(r.all, lot.id);
        for (const Lot* used : trace->lots) {
            Ids expected;
            for (const Id<Lot>& between : made) {
                if (between != lot.id && madeOf(r.all, between).contains(used->id)) {
                    expected.insert(between);
                }
            }
            Ids found;
            for (const Lot* one : trace->through(*used)) {
                found.insert(one->id);
            }
            EXPECT_EQ(found, expected);
            EXPECT_EQ(trace->through(*used).back(), used);
        }
        EXPECT_TRUE(trace->through(*trace->lot).empty());
    }
}

INSTANTIATE_TEST_SUITE_P(Histories, RandomTrace, testing::Range(1, 9));

// Starch, its paste, and a mix of the paste; a tear mended with the mix.
class Starch : public testing::Test {
protected:
    Starch() {
        const Amount some = Amount::of(Mass::grams(100));
        for (const char* number : {"31-001", "31-002", "31-003"}) {
            b.lot(number, "paste", some);
        }
        part("31-002", "31-001");
        part("31-003", "31-002");
        b.use(b.step("tear_mending", "B2", tests::day(2031, 4, 1)), "31-003",
              Amount::of(Mass::milligrams(400)));
    }
    void part(const char* lot, const char* source) {
        b.file.lotParts.push_back({.id = b.ids.next<LotPart>(),
                                   .lot = b.lotNumbered(lot).id,
                                   .source = b.lotNumbered(source).id,
                                   .amount = Amount::of(Mass::grams(10))});
    }
    Whereabouts all() {
        return {.materials = b.file.materials,
                .lots = b.file.lots,
                .parts = b.file.lotParts,
                .uses = b.file.uses,
                .steps = b.file.steps,
                .facsimiles = b.file.facsimiles,
                .jobs = {b.file.job},
                .items = {b.file.item},
                .owners = {b.file.owner}};
    }
    tests::JobBuilder b;
};

TEST_F(Starch, isTracedThroughTwoMixings) {
    const Whereabouts where = all();
    const auto json = traceJson(*traceLot(where, b.lotNumbered("31-001").id));
    EXPECT_EQ(json["lots"], (nlohmann::json{"31-002", "31-003"}));
    const auto& job = json["jobs"][0];
    EXPECT_EQ(job["job"], "2031-004");
    EXPECT_EQ(job["owner"], "Library of St Vedast, Oxmoor");
    EXPECT_EQ(job["steps"][0]["place"], "B2");
    EXPECT_EQ(job["steps"][0]["amount"], "0.4 g");
    EXPECT_EQ(job["steps"][0]["through"], (nlohmann::json{"31-002", "31-003"}));
    EXPECT_FALSE(job.contains("owner_now"));
}

TEST_F(Starch, ofTheLotUsedItselfNothingLiesBetween) {
    const Whereabouts where = all();
    const auto json = traceJson(*traceLot(where, b.lotNumbered("31-003").id));
    EXPECT_TRUE(json["jobs"][0]["steps"][0]["through"].empty());
    EXPECT_TRUE(json["lots"].empty());
}

TEST_F(Starch, aFacsimileItHoldsIsFoundWithoutAStep) {
    b.facsimile("K5").attachedWith = b.lotNumbered("31-002").id;
    const Whereabouts where = all();
    const auto trace = traceLot(where, b.lotNumbered("31-001").id);
    ASSERT_EQ(trace->jobs.front().leaves.size(), 1U);
    EXPECT_FALSE(trace->jobs.front().leaves.front().isPrintedOn);
}

// A piece cut for a job counts, until the cutting is taken back; offcuts and waste are no pieces.
TEST_F(Starch, aPieceCutForAJobIsFound) {
    Cutting cutting{.id = b.ids.next<Cutting>(), .job = b.file.job.id, .at = b.clock.now()};
    Whereabouts where = all();
    for (const CutPartKind kind : {CutPartKind::piece, CutPartKind::waste}) {
        where.cutParts.push_back({.id = b.ids.next<CutPart>(),
                                  .cutting = cutting.id,
                                  .sheet = b.lotNumbered("31-002").id,
                                  .kind = kind,
                                  .name = "guard",
                                  .width = Length::millimetres(24),
                                  .height = Length::millimetres(186)});
    }
    where.cuttings.push_back(cutting);
    const auto json = traceJson(*traceLot(where, b.lotNumbered("31-001").id));
    ASSERT_EQ(json["jobs"][0]["pieces"].size(), 1U);
    EXPECT_EQ(json["jobs"][0]["pieces"][0]["piece"], "guard");
    EXPECT_EQ(json["jobs"][0]["pieces"][0]["width"], 24.0);
    EXPECT_EQ(json["jobs"][0]["pieces"][0]["through"], (nlohmann::json{"31-002"}));
    where.cuttings.front().takenBackAt = b.clock.now();
    EXPECT_TRUE(traceLot(where, b.lotNumbered("31-001").id)->jobs.front().pieces.empty());
}

TEST_F(Starch, aBookThatHasGoneToAnotherOwnerNamesBoth) {
    Whereabouts where = all();
    const Owner buyer{.id = b.ids.next<Owner>(), .name = "Mr Pike"};
    where.owners.push_back(buyer);
    where.items.front().owner = buyer.id;
    const auto json = traceJson(*traceLot(where, b.lotNumbered("31-001").id));
    EXPECT_EQ(json["jobs"][0]["owner_now"], "Mr Pike");
}

TEST_F(Starch, aWrongRecordThatRunsInACircleEnds) {
    part("31-001", "31-003");
    const Whereabouts where = all();
    const auto trace = traceLot(where, b.lotNumbered("31-001").id);
    EXPECT_EQ(trace->lots.size(), 2U);
    EXPECT_EQ(trace->through(*trace->lots.back()).size(), 2U);
}

} // namespace
} // namespace headcap::core
