#include "app/print/photo_loader.h"

#include <QDir>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <gtest/gtest.h>

#include "tests/app/print/sample_photos.h"

namespace headcap::app::print {
namespace {

using namespace test;

constexpr int kWait = 20'000;

class PhotoLoaderTest : public ::testing::Test {
protected:
    PhotoLoaderTest() { writeFile(photoPath(), jpegOf(noisyPhotograph(1'200, 800))); }
    QString photoPath() const { return m_folder.filePath(QStringLiteral("photo.jpg")); }
    QString cachePath() const { return m_folder.filePath(QStringLiteral("thumbs")); }
    PhotoLookup lookup() const {
        return [path = photoPath()](const core::Digest&) { return path; };
    }

    QTemporaryDir m_folder;
    const core::Digest m_photo = core::sha256("a photograph");
};

TEST_F(PhotoLoaderTest, givesAPhotographOnceItIsRead) {
    PhotoLoader loader(lookup());
    QSignalSpy ready(&loader, &PhotoLoader::ready);
    EXPECT_TRUE(loader.find(m_photo, 300).isNull());
    EXPECT_TRUE(loader.find(m_photo, 300).isNull()); // asked for twice, read once
    ASSERT_TRUE(ready.wait(kWait));
    const QImage image = loader.find(m_photo, 300);
    EXPECT_GE(image.width(), 300);
    EXPECT_NEAR(image.width() * 2.0 / 3, image.height(), 1);
    EXPECT_FALSE(ready.wait(50));
    EXPECT_EQ(ready.size(), 1);
}

TEST_F(PhotoLoaderTest, keepsThumbnailsAsFilesThatOutliveThePhotograph) {
    {
        PhotoLoader loader(lookup(), cachePath());
        QSignalSpy ready(&loader, &PhotoLoader::ready);
        EXPECT_TRUE(loader.find(m_photo, 300).isNull());
        ASSERT_TRUE(ready.wait(kWait));
    }
    QFile::remove(photoPath());
    PhotoLoader loader(lookup(), cachePath());
    QSignalSpy ready(&loader, &PhotoLoader::ready);
    EXPECT_TRUE(loader.find(m_photo, 300).isNull());
    ASSERT_TRUE(ready.wait(kWait));
    EXPECT_FALSE(loader.find(m_photo, 300).isNull());
}

TEST_F(PhotoLoaderTest, readsThePhotographWhereTheCacheIsDamagedOrDeleted) {
    for (int round = 0; round < 2; ++round) {
        PhotoLoader loader(lookup(), cachePath());
        QSignalSpy ready(&loader, &PhotoLoader::ready);
        EXPECT_TRUE(loader.find(m_photo, 300).isNull());
        ASSERT_TRUE(ready.wait(kWait));
        const QString hex = QString::fromStdString(m_photo.hex());
        const QDir folder(cachePath() + u'/' + hex.left(2));
        ASSERT_EQ(folder.entryList(QDir::Files).size(), 1);
        writeFile(folder.filePath(folder.entryList(QDir::Files).front()), "damaged");
    }
    QDir(cachePath()).removeRecursively();
    PhotoLoader loader(lookup(), cachePath());
    QSignalSpy ready(&loader, &PhotoLoader::ready);
    EXPECT_TRUE(loader.find(m_photo, 300).isNull());
    EXPECT_TRUE(ready.wait(kWait));
}

TEST_F(PhotoLoaderTest, saysWhatIsMissingAndDoesNotAskAgain) {
    int asked = 0;
    PhotoLoader loader([&asked](const core::Digest&) {
        ++asked;
        return QString();
    });
    QSignalSpy failed(&loader, &PhotoLoader::failed);
    EXPECT_TRUE(loader.find(m_photo, 300).isNull());
    ASSERT_TRUE(failed.wait(kWait));
    EXPECT_EQ(loader.fault(m_photo), PhotoFault::missing);
    EXPECT_TRUE(loader.find(m_photo, 300).isNull());
    EXPECT_EQ(asked, 1);
}

TEST_F(PhotoLoaderTest, endsWhileItReads) {
    PhotoLoader loader(lookup());
    for (int edge = 160; edge < 1'200; edge += 160) {
        EXPECT_TRUE(loader.find(m_photo, edge).isNull());
    }
}

} // namespace
} // namespace headcap::app::print
