#include "app/pages/job_materials_page.h"

#include "app/form/ruled_table.h"
#include "app/pages/bench/step_details.h"
#include "app/pages/bench_page.h"
#include "tests/app/pages/page_test.h"

namespace headcap::app {
namespace {

class JobMaterialsPageTest : public PageTest<JobMaterialsPage> {
protected:
    JobMaterialsPageTest() { EXPECT_TRUE(open(*sample.grafting, core::Page::materials)); }
};

TEST_F(JobMaterialsPageTest, showsEveryStandingUseUnderItsLot) {
    const auto now = file();
    ASSERT_FALSE(now.uses.empty());
    for (const core::MaterialUse& use : now.uses) {
        const bool stands = !now.step(use.step)->struckAt.has_value();
        EXPECT_EQ(page().table().rows().rowOf(use.id.uuid()) >= 0, stands);
    }
    EXPECT_FALSE(page().table().rows().row(0).id.has_value());
}

TEST_F(JobMaterialsPageTest, enterGoesToTheStep) {
    page().table().setFocus();
    QTest::keyClick(&page().table(), Qt::Key_Home);
    const core::Uuid id = *page().table().current();
    const auto now = file();
    const auto use = std::find_if(now.uses.begin(), now.uses.end(),
                                  [&](const auto& one) { return one.id.uuid() == id; });
    ASSERT_NE(use, now.uses.end());
    QTest::keyClick(&page().table(), Qt::Key_Return);
    EXPECT_EQ(job().page(), core::Page::bench);
    auto* bench = qobject_cast<BenchPage*>(job().currentPage());
    ASSERT_NE(bench, nullptr);
    EXPECT_EQ(bench->log().current(), use->step.uuid());
    EXPECT_EQ(bench->details().step(), use->step);
}

TEST_F(JobMaterialsPageTest, anAuditPointAboutALotGoesToItsFirstRow) {
    const auto now = file();
    for (const core::Lot& lot : now.lots) {
        const bool isUsed = std::any_of(now.uses.begin(), now.uses.end(),
                                        [&](const auto& use) { return use.lot == lot.id; });
        EXPECT_EQ(page().goTo(core::refOf(lot.id)), isUsed) << lot.number;
    }
}

TEST_F(JobMaterialsPageTest, emptyItOffersTheBench) {
    ASSERT_TRUE(open(*sample.hymnal, core::Page::materials));
    EXPECT_FALSE(page().table().isVisible());
}

} // namespace
} // namespace headcap::app
