#include "app/print/report_preview.h"

#include <QScrollBar>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <gtest/gtest.h>

#include "app/print/layout/layout.h"
#include "tests/app/print/sample_document.h"
#include "tests/app/print/sample_photos.h"

namespace headcap::app::print {
namespace {

using namespace test;

class ReportPreviewTest : public ::testing::Test {
protected:
    ReportPreviewTest() {
        writeFile(photoPath(), jpegOf(noisyPhotograph(600, 400)));
        m_preview.resize(700, 600);
        m_preview.show();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&m_preview));
    }
    QString photoPath() const { return m_folder.filePath(QStringLiteral("photo.jpg")); }
    void show(const core::Document& document) {
        m_preview.setPages(layOut(document, pageSetup(Sheet::a4)));
    }

    QTemporaryDir m_folder;
    PhotoLoader m_loader{[this](const core::Digest&) { return photoPath(); }};
    ReportPreview m_preview{m_loader};
};

TEST_F(ReportPreviewTest, showsThePagesOnWhitePaper) {
    EXPECT_EQ(m_preview.currentPage(), 0);
    show(sampleDocument());
    EXPECT_GT(m_preview.pageCount(), 3);
    EXPECT_EQ(m_preview.currentPage(), 1);
    const QImage shot = m_preview.viewport()->grab().toImage();
    EXPECT_EQ(shot.pixelColor(shot.width() / 2, 30), QColor(Qt::white));
    int dark = 0;
    for (int x = 0; x < shot.width(); ++x) {
        for (int y = 0; y < shot.height(); ++y) {
            dark += shot.pixelColor(x, y).lightness() < 80 ? 1 : 0;
        }
    }
    EXPECT_GT(dark, 500); // letters
}

TEST_F(ReportPreviewTest, goesThroughThePagesByKey) {
    show(sampleDocument());
    QSignalSpy turned(&m_preview, &ReportPreview::currentPageChanged);
    QTest::keyClick(&m_preview, Qt::Key_End);
    EXPECT_EQ(m_preview.currentPage(), m_preview.pageCount());
    ASSERT_FALSE(turned.isEmpty());
    EXPECT_EQ(turned.last().at(0).toInt(), m_preview.pageCount());
    EXPECT_TRUE(m_preview.accessibleName().contains(QString::number(m_preview.pageCount())));
    QTest::keyClick(&m_preview, Qt::Key_Home);
    EXPECT_EQ(m_preview.currentPage(), 1);
}

TEST_F(ReportPreviewTest, staysAtItsPageWhenZoomedOrWidened) {
    show(sampleDocument());
    m_preview.showPage(3);
    for (int i = 0; i < 4; ++i) {
        QTest::keyClick(&m_preview, Qt::Key_Plus);
        EXPECT_EQ(m_preview.currentPage(), 3);
    }
    EXPECT_GT(m_preview.horizontalScrollBar()->maximum(), 0);
    QTest::keyClick(&m_preview, Qt::Key_0);
    EXPECT_EQ(m_preview.horizontalScrollBar()->maximum(), 0);
    m_preview.resize(1'000, 700);
    EXPECT_EQ(m_preview.currentPage(), 3);
}

TEST_F(ReportPreviewTest, leadsToASection) {
    const core::Document document = sampleDocument();
    show(document);
    m_preview.showSection(document.sections.size() - 2); // the photographs, near the end
    EXPECT_GE(m_preview.currentPage(), m_preview.pageCount() - 1);
}

TEST_F(ReportPreviewTest, readsThePhotographsOfTheVisiblePages) {
    show(documentOf({core::Figures{{figureOf(1, core::FigureWidth::full, 600, 400)}}}));
    QSignalSpy ready(&m_loader, &PhotoLoader::ready);
    m_preview.viewport()->grab();
    EXPECT_TRUE(!ready.isEmpty() || ready.wait(20'000));
}

} // namespace
} // namespace headcap::app::print
