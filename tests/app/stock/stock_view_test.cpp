// The shelf as a whole, where a lot went, and labels.
#include <algorithm>
#include <set>
#include <string>

#include <QPrinter>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

#include "app/form/field_row.h"
#include "app/form/ruled_table.h"
#include "app/print/labels.h"
#include "app/print/qr_code.h"
#include "app/stock/label_chooser.h"
#include "app/stock/lot_story.h"
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

// A sheet as somebody else published it, in millimetres.
struct PublishedSheet {
    const char* name;
    const char* source;
    double width, height, left, top, columnStep, rowStep;
    double apart; // the most it and ours may lie apart, anywhere on the sheet
};

// Held against the templates collected in glabels-qt (templates/avery-iso-, zweckform-iso-
// and avery-us-templates.xml at 21c6b82b; points of 1/72 in there), and against the maker's
// template sheet of the 65 labels as quoted by others. The 70 mm sheet fills the paper's
// width (3 × 70 = 210); whether it begins at its upper edge or half a millimetre below (297 =
// 8 × 37 + 1) the two publications do not agree.
TEST(Labels, agreeWithWhatIsPublishedOfTheirSheets) {
    constexpr double kPoint = 25.4 / 72;
    constexpr double kInch = 25.4;
    const PublishedSheet published[]{
        {"A4, 3 × 7 of 63.5 × 38.1 mm", "templates, 7160", 181.4 * kPoint, 108 * kPoint,
         21.2 * kPoint, 43.9 * kPoint, 187.2 * kPoint, 108 * kPoint, 0.5},
        {"A4, 3 × 8 of 70 × 37 mm", "templates, 3474", 70, 37, 0, 0, 70, 37, 0.5},
        {"A4, 2 × 7 of 99.1 × 38.1 mm", "templates, 7163", 280.9 * kPoint, 108 * kPoint,
         9.5 * kPoint, 43 * kPoint, 292 * kPoint, 108 * kPoint, 1.4},
        {"A4, 5 × 13 of 38.1 × 21.2 mm", "templates, 8651", 108 * kPoint, 60.09 * kPoint,
         13.32 * kPoint, 30.90 * kPoint, 115.09 * kPoint, 60.09 * kPoint, 0.3},
        {"A4, 5 × 13 of 38.1 × 21.2 mm", "the maker's template sheet LP65/38", 38.1, 21.2, 4.75,
         10.7, 40.6, 21.2, 0.01},
        {"Letter, 3 × 10 of 66.7 × 25.4 mm", "published dimensions, 5160", 2.625 * kInch, 1 * kInch,
         0.188 * kInch, 0.5 * kInch, 2.75 * kInch, 1 * kInch, 0.01},
    };
    std::set<std::string> checked;
    for (const PublishedSheet& theirs : published) {
        const auto ours = std::ranges::find_if(print::labelSheets(), [&](const auto& sheet) {
            return std::string{sheet.name} == theirs.name;
        });
        ASSERT_NE(ours, print::labelSheets().end()) << theirs.name;
        checked.insert(theirs.name);
        for (int i = 0; i < ours->count(); ++i) {
            const QRectF place = ours->place(i);
            const double left = theirs.left + i % ours->columns * theirs.columnStep;
            const double top = theirs.top + i / ours->columns * theirs.rowStep;
            EXPECT_NEAR(place.left(), left, theirs.apart) << theirs.source << ", label " << i;
            EXPECT_NEAR(place.top(), top, theirs.apart) << theirs.source << ", label " << i;
            EXPECT_NEAR(place.right(), left + theirs.width, theirs.apart + 0.5) << theirs.source;
            EXPECT_NEAR(place.bottom(), top + theirs.height, theirs.apart) << theirs.source;
        }
    }
    EXPECT_EQ(checked.size(), print::labelSheets().size()) << "every sheet that is offered";
}

// A hazard with its state, and a date, stand whole on every sheet that is offered, or it is said.
TEST(Labels, sayWhereTheWordsDoNotStandWhole) {
    const print::LabelWords usual{.number = QStringLiteral("2026-012"),
                                  .title = QStringLiteral("Sermons preached at Wells, 1688"),
                                  .lines = {QStringLiteral("good until 15 October 2026")},
                                  .caution = QStringLiteral("Arsenical green: suspected")};
    print::LabelWords endless = usual;
    endless.caution = QStringLiteral("keep from flames and ventilate; ").repeated(60);
    for (const print::LabelSheet& sheet : print::labelSheets()) {
        EXPECT_TRUE(print::standsWhole(usual, sheet)) << sheet.name;
        EXPECT_FALSE(print::standsWhole(endless, sheet)) << sheet.name;
    }
}

TEST(Labels, areWrittenOnPaperOfTheirOwnSize) {
    const QTemporaryDir folder;
    for (const print::LabelSheet& sheet : print::labelSheets()) {
        QPrinter printer{QPrinter::HighResolution};
        printer.setOutputFormat(QPrinter::PdfFormat);
        printer.setOutputFileName(folder.filePath(QStringLiteral("labels.pdf")));
        printer.setPageSize(QPageSize{QPageSize::A5});
        print::printTestPage(printer, sheet);
        const QSizeF page = printer.pageLayout().fullRect(QPageLayout::Millimeter).size();
        EXPECT_NEAR(page.width(), sheet.pageWidth, 0.5) << sheet.name;
        EXPECT_NEAR(page.height(), sheet.pageHeight, 0.5) << sheet.name;
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
        whereabouts.show(readLotStory(sample.store, lot.id).get());
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
