// The shelf as a whole, where a lot went, and labels.
#include <QTest>

#include <gtest/gtest.h>

#include "app/form/field_row.h"
#include "app/form/ruled_table.h"
#include "app/print/qr_code.h"
#include "app/stock/label_chooser.h"
#include "app/stock/lot_whereabouts.h"
#include "app/stock/plain_form.h"
#include "app/stock/stock_view.h"
#include "core/materials/stock_report.h"
#include "core/materials/trace.h"
#include "tests/support/stock_on_shelf.h"

namespace headcap::app {
namespace {

using core::Amount;
using core::Mass;

class StockViewTest : public testing::Test {
protected:
    StockViewTest() {
        view.resize(1280, 900);
        view.setVisible(true);
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&view));
    }
    int lotsListed() {
        EXPECT_TRUE(QTest::qWaitFor([this] { return !view.isReading(); }));
        int count = 0;
        for (int i = 0; i < view.stock().rows().rowCount(); ++i) {
            count += view.stock().rows().row(i).id ? 1 : 0;
        }
        return count;
    }

    tests::SampleWorkshop sample;
    Session session{sample.means()};
    tests::StockOnShelf stock{sample, session};
    StockView view{session};
};

TEST_F(StockViewTest, listsWhatThereIsOnTheDay) {
    view.enter({ViewId::stock});
    const int today = lotsListed();
    EXPECT_EQ(today, static_cast<int>(
                         core::stockOn(stock.shelf(), sample.clock.today(), sample.clock).size()));
    ASSERT_GT(today, 0);
    view.day().rewrite(QStringLiteral("1 January 2001"));
    Q_EMIT view.day().edited();
    EXPECT_EQ(lotsListed(), 0);
}

TEST_F(StockViewTest, aLabelHoldsTheNumberItIsScannedAs) {
    const auto kind = stock.material("Kozo", core::MaterialClass::tissue, core::Unit::sheet);
    const auto lot = stock.lot("31-901", kind, Amount::sheets(3));
    view.enter({.view = ViewId::stock, .record = core::refOf(lot.id)});
    ASSERT_EQ(view.labels().labels().size(), 1U);
    EXPECT_EQ(view.labels().labels().front().number, QStringLiteral("31-901"));
    EXPECT_EQ(view.labels().labels().front().title, QStringLiteral("Kozo"));
    view.labels().choose(QStringLiteral("31-901, 31-999"));
    EXPECT_EQ(view.labels().labels().size(), 1U);
    EXPECT_NE(view.labels().form().troubled(), nullptr);
}

TEST_F(StockViewTest, aJobsLabelNamesItsOwner) {
    const auto file = sample.file(*sample.grafting);
    view.enter({.view = ViewId::stock, .job = file.job.id});
    ASSERT_EQ(view.labels().labels().size(), 1U);
    EXPECT_EQ(view.labels().labels().front().lines.front(), fromCore(file.owner.name));
}

TEST(Labels, lieOnTheirSheetAndApart) {
    for (const print::LabelSheet& sheet : print::labelSheets()) {
        const QRectF page{0, 0, sheet.pageWidth, sheet.pageHeight};
        for (int i = 0; i < sheet.count(); ++i) {
            EXPECT_TRUE(page.contains(sheet.place(i))) << sheet.name << " " << i;
            for (int k = 0; k < i; ++k) {
                const QRectF common = sheet.place(i).intersected(sheet.place(k));
                EXPECT_LT(common.width() * common.height(), 1e-6) << sheet.name;
            }
        }
    }
}

// ISO/IEC 18004: three finder patterns of 7 × 7, a light ring about each, and timing lines between.
TEST(QrCode, hasItsFinderPatterns) {
    const print::QrCode code = print::qrCode("26-014");
    ASSERT_EQ(code.side, 21); // version 1
    const auto finder = [&](int left, int top) {
        for (int y = 0; y < 7; ++y) {
            for (int x = 0; x < 7; ++x) {
                const int ring = std::max(std::abs(x - 3), std::abs(y - 3));
                EXPECT_EQ(code.isDark(left + x, top + y), ring != 2);
            }
        }
    };
    finder(0, 0);
    finder(14, 0);
    finder(0, 14);
    for (int i = 8; i < 13; ++i) {
        EXPECT_EQ(code.isDark(i, 6), i % 2 == 0);
        EXPECT_EQ(code.isDark(6, i), i % 2 == 0);
    }
    EXPECT_EQ(print::qrCode(std::string(5'000, 'x')).side, 0);
}

TEST_F(StockViewTest, theBooksALotWentIntoAreListedWithTheirSteps) {
    LotWhereabouts whereabouts{session};
    std::optional<Destination> asked;
    QObject::connect(&whereabouts, &LotWhereabouts::goAsked, &view,
                     [&](const Destination& destination) { asked = destination; });
    bool isAny = false;
    for (const core::Lot& lot : stock.shelf().lots) {
        whereabouts.show(lot.id);
        const auto all = core::loadWhereabouts(sample.store, lot.id);
        std::size_t expected = 0;
        const auto trace = core::traceLot(all, lot.id);
        ASSERT_TRUE(trace);
        for (const core::TracedJob& job : trace->jobs) {
            expected += 1 + job.uses.size() + job.leaves.size();
        }
        auto* table = whereabouts.findChild<RuledTable*>();
        EXPECT_EQ(table->rows().rowCount(), static_cast<int>(expected));
        if (expected > 0) {
            isAny = true;
            table->select(table->rows().row(1).id);
            Q_EMIT table->opened();
            ASSERT_TRUE(asked);
            EXPECT_EQ(asked->view, ViewId::job);
        }
    }
    EXPECT_TRUE(isAny);
}

} // namespace
} // namespace headcap::app
