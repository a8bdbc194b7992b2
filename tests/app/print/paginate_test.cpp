#include "app/print/layout/paginate.h"

#include <random>

#include <gtest/gtest.h>

namespace headcap::app::print {
namespace {

constexpr Span kPage{100, 800};

Slab slabOf(double height, bool keep = false) {
    Slab slab;
    slab.height = height;
    slab.keepWithNext = keep;
    return slab;
}

Flow flowOf(std::vector<Slab> slabs) {
    return {std::move(slabs), {}, {}};
}

// Flows by chance: slabs of all heights, kept or not, with gaps, side matter and table heads.
Flow randomFlow(unsigned seed) {
    std::mt19937 chance(seed);
    const auto upTo = [&chance](int limit) {
        return std::uniform_int_distribution<int>(0, limit)(chance);
    };
    Flow flow;
    flow.heads = {slabOf(20)};
    for (int i = 0; i < 120; ++i) {
        Slab slab = slabOf(5 + upTo(150), upTo(2) == 0);
        slab.gap = upTo(20);
        slab.onGrid = upTo(1) == 0;
        slab.overhang = upTo(6) == 0 ? upTo(80) : 0;
        slab.clearsSide = upTo(4) == 0;
        if (upTo(1) == 0) {
            slab.head = 0;
        }
        flow.slabs.push_back(slab);
    }
    return flow;
}

TEST(Paginate, placesEachSlabOnceInOrderWithinItsPageAndWithoutOverlap) {
    for (unsigned seed = 1; seed <= 200; ++seed) {
        const Flow flow = randomFlow(seed);
        std::size_t next = 0;
        std::size_t page = 0;
        double bottom = kPage.top;
        for (const Placed& placed : paginate(flow, kPage, kPage)) {
            const Slab& slab =
                placed.repeatedHead ? flow.heads[placed.index] : flow.slabs[placed.index];
            if (placed.page != page) {
                ASSERT_EQ(placed.page, page + 1);
                page = placed.page;
                bottom = kPage.top;
            }
            ASSERT_GE(placed.top, bottom - 0.001) << "seed " << seed;
            bottom = placed.top + slab.height;
            ASSERT_LE(bottom, kPage.bottom + 0.02) << "seed " << seed;
            if (!placed.repeatedHead) {
                ASSERT_EQ(placed.index, next++);
            }
        }
        ASSERT_EQ(next, flow.slabs.size());
    }
}

TEST(Paginate, neverEndsAPageWithAKeptSlabWhoseChainFitsOnAPage) {
    for (unsigned seed = 1; seed <= 200; ++seed) {
        const Flow flow = randomFlow(seed);
        const std::vector<Placed> placed = paginate(flow, kPage, kPage);
        for (std::size_t i = 0; i + 1 < placed.size(); ++i) {
            const bool endsPage = placed[i].page != placed[i + 1].page;
            if (!endsPage || placed[i].repeatedHead || !flow.slabs[placed[i].index].keepWithNext) {
                continue;
            }
            std::size_t begin = placed[i].index;
            while (begin > 0 && flow.slabs[begin - 1].keepWithNext) {
                --begin;
            }
            double chain = 20; // with a repeated head
            for (std::size_t j = begin; j < flow.slabs.size(); ++j) {
                chain += flow.slabs[j].height + 27 + flow.slabs[j].overhang;
                if (!flow.slabs[j].keepWithNext) {
                    break;
                }
            }
            EXPECT_GT(chain, kPage.bottom - kPage.top) << "seed " << seed << " slab " << begin;
        }
    }
}

TEST(Paginate, repeatsTheHeadWhereATableGoesOnAndOnlyThere) {
    Flow flow;
    flow.heads = {slabOf(20)};
    flow.slabs = {slabOf(20, true)}; // the head itself
    for (int i = 0; i < 30; ++i) {
        flow.slabs.push_back(slabOf(50));
        flow.slabs.back().head = 0;
    }
    const std::vector<Placed> placed = paginate(flow, kPage, kPage);
    std::vector<std::size_t> pagesOfHeads;
    for (std::size_t i = 0; i < placed.size(); ++i) {
        if (placed[i].repeatedHead) {
            pagesOfHeads.push_back(placed[i].page);
            EXPECT_DOUBLE_EQ(placed[i].top, kPage.top);
            EXPECT_DOUBLE_EQ(placed[i + 1].top, kPage.top + 20);
        }
    }
    EXPECT_EQ(pagesOfHeads, (std::vector<std::size_t>{1, 2})); // 13 rows a page beside the head
}

TEST(Paginate, dropsTheGapAtTheHeadOfAPage) {
    Flow flow = flowOf({slabOf(600), slabOf(200)});
    flow.slabs[1].gap = 28;
    const std::vector<Placed> placed = paginate(flow, kPage, kPage);
    EXPECT_EQ(placed[1].page, 1U);
    EXPECT_DOUBLE_EQ(placed[1].top, kPage.top);
}

TEST(Paginate, startsBelowWhatHangsInTheSideColumn) {
    Flow flow = flowOf({slabOf(7, true), slabOf(14), slabOf(100)});
    flow.slabs[0].overhang = 60;
    flow.slabs[2].clearsSide = true;
    flow.slabs[2].gap = 14;
    const std::vector<Placed> placed = paginate(flow, kPage, kPage);
    EXPECT_DOUBLE_EQ(placed[1].top, kPage.top + 7);
    EXPECT_DOUBLE_EQ(placed[2].top, kPage.top + 60 + 14);
}

TEST(Paginate, leavesNoSideMatterHangingBelowThePage) {
    Flow flow = flowOf({slabOf(640), slabOf(7, true), slabOf(14)});
    flow.slabs[1].overhang = 90;
    EXPECT_EQ(paginate(flow, kPage, kPage)[1].page, 1U);
}

TEST(Paginate, givesTheFirstPageItsOwnSpan) {
    const Flow flow = flowOf({slabOf(300), slabOf(300)});
    const std::vector<Placed> placed = paginate(flow, {500, 800}, kPage);
    EXPECT_DOUBLE_EQ(placed[0].top, 500);
    EXPECT_EQ(placed[1].page, 1U);
    EXPECT_DOUBLE_EQ(placed[1].top, 100);
}

} // namespace
} // namespace headcap::app::print
