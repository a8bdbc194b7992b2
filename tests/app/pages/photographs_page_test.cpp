#include "app/pages/photographs_page.h"

#include <QClipboard>
#include <QFile>
#include <QGuiApplication>
#include <QMimeData>
#include <QTest>

#include <gtest/gtest.h>

#include "app/photo/contact_sheet.h"
#include "app/photo/large_view.h"
#include "app/photo/photo_grid.h"
#include "tests/support/sample_survey.h"

namespace headcap::app {
namespace {

class PhotographsPageTest : public testing::Test {
protected:
    PhotographsPageTest() {
        QObject::connect(&session, &Session::changed, &page, [this] { load(); });
        QObject::connect(&session, &Session::said, &page,
                         [this](const Notice& notice) { said = notice; });
        page.resize(1000, 800);
    }
    void open() {
        load();
        page.show();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&page));
    }
    void load() { page.load(sample.file(*sample.grafting)); }
    std::vector<core::Photograph> kept() { return sample.file(*sample.grafting).photographs; }
    QString written(const char* name, const QByteArray& bytes) {
        const QString path = folder.filePath(QLatin1String(name));
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
        return path;
    }
    QByteArray original(const core::Photograph& photo) {
        QFile file(QString::fromStdString(
            sample.files.pathOf(core::FileStore::Shelf::photograph, photo.digest).string()));
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        return file.readAll();
    }
    bool waitForSaid() {
        return QTest::qWaitFor([this] { return said.has_value(); });
    }
    photo::PhotoGrid& before() { return page.sheet().grid(core::PhotoRole::before); }

    QTemporaryDir folder;
    tests::SampleWorkshop sample;
    Session session{sample.means()};
    PhotographsPage page{session};
    std::optional<Notice> said;
};

TEST_F(PhotographsPageTest, takesInSeveralAsOneChangeAndKeepsThemUnaltered) {
    open();
    const QByteArray one = tests::drawnJpeg({400, 300}, 1);
    const QByteArray two = tests::drawnJpeg({300, 400}, 2);
    sample.prompts.files = {written("one.jpg", one), written("two.jpg", two)};
    const auto changes = sample.store.changes();
    page.setFocus();
    QTest::keyClick(&page, Qt::Key_Insert);
    ASSERT_TRUE(waitForSaid());
    EXPECT_EQ(sample.store.changes(), changes + 1);
    ASSERT_EQ(kept().size(), 2U);
    EXPECT_EQ(original(kept()[0]), one);
    EXPECT_EQ(original(kept()[1]), two);
    EXPECT_EQ(kept()[1].fileName, "two.jpg");
    EXPECT_EQ(kept()[1].heightPx, 400);
    EXPECT_EQ(kept()[1].mediaType, "image/jpeg");
    EXPECT_LT(kept()[0].position, kept()[1].position);
    session.undo();
    EXPECT_TRUE(kept().empty());
}

TEST_F(PhotographsPageTest, refusesATruncatedOneInOneSentenceAndTakesTheRest) {
    open();
    const QByteArray whole = tests::drawnJpeg({400, 300}, 3);
    sample.prompts.files = {written("cut.jpg", whole.first(whole.size() / 2)),
                            written("whole.jpg", whole)};
    QTest::keyClick(&page, Qt::Key_Insert);
    ASSERT_TRUE(waitForSaid());
    ASSERT_EQ(kept().size(), 1U);
    EXPECT_EQ(kept()[0].fileName, "whole.jpg");
    EXPECT_TRUE(said->sentence.contains(QLatin1String("cut.jpg: The end of this photograph")));
}

TEST_F(PhotographsPageTest, doesNotTakeTheSameOneInTwice) {
    open();
    const QString path = written("one.jpg", tests::drawnJpeg({400, 300}, 1));
    sample.prompts.files = {path, path};
    QTest::keyClick(&page, Qt::Key_Insert);
    ASSERT_TRUE(waitForSaid());
    EXPECT_EQ(kept().size(), 1U);
}

TEST_F(PhotographsPageTest, pastesAPicture) {
    open();
    QImage picture(40, 30, QImage::Format_RGB32);
    picture.fill(Qt::darkGreen);
    QGuiApplication::clipboard()->setImage(picture);
    QTest::keyClick(&page, Qt::Key_V, Qt::ControlModifier);
    ASSERT_TRUE(waitForSaid());
    ASSERT_EQ(kept().size(), 1U);
    EXPECT_EQ(kept()[0].widthPx, 40);
    EXPECT_EQ(QImage::fromData(original(kept()[0])).pixelColor(5, 5), QColor(Qt::darkGreen));
}

TEST_F(PhotographsPageTest, opensTheLargeViewByEnterAndGoesBackByEsc) {
    addPhotographs(sample);
    open();
    before().setFocus();
    before().select(kept()[0].id);
    QTest::keyClick(&before(), Qt::Key_Return);
    ASSERT_TRUE(page.largeView().isVisible());
    QTest::keyClick(&page.largeView(), Qt::Key_Right);
    EXPECT_EQ(page.largeView().current().id, kept()[1].id);
    QTest::keyClick(&page.largeView(), Qt::Key_Escape);
    EXPECT_FALSE(page.largeView().isVisible());
    EXPECT_EQ(page.sheet().current(), kept()[1].id);
}

TEST_F(PhotographsPageTest, keepsACaptionWhenTheFieldIsLeft) {
    addPhotographs(sample);
    open();
    before().select(kept()[1].id);
    QWidget* caption = page.form().rowLabelled(QStringLiteral("Caption"))->control();
    caption->setFocus();
    QTest::keyClicks(caption, QStringLiteral(", in raking light"));
    QTest::keyClick(caption, Qt::Key_Tab);
    EXPECT_TRUE(page.leave());
    EXPECT_NE(kept()[1].caption.find(", in raking light"), std::string::npos);
}

TEST_F(PhotographsPageTest, putsOneEarlierAndRemovesOneUndoably) {
    addPhotographs(sample);
    open();
    const auto second = kept()[1].id;
    before().setFocus();
    before().select(second);
    QTest::keyClick(&before(), Qt::Key_Left, Qt::ControlModifier);
    EXPECT_EQ(kept()[0].id, second);
    EXPECT_EQ(page.sheet().current(), second) << "the chosen one stays chosen";
    QTest::keyClick(&before(), Qt::Key_Delete);
    EXPECT_FALSE(core::find(sample.store, second).has_value());
    ASSERT_TRUE(said);
    EXPECT_TRUE(said->offersUndo);
    session.undo();
    EXPECT_TRUE(core::find(sample.store, second).has_value());
}

TEST_F(PhotographsPageTest, goesFromGroupToGroupByArrow) {
    addPhotographs(sample);
    open();
    before().setFocus();
    before().select(kept()[3].id);
    QTest::keyClick(&before(), Qt::Key_Right);
    EXPECT_EQ(page.sheet().current(), kept()[4].id);
}

} // namespace
} // namespace headcap::app
