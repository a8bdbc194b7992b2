#include "app/photo/exif.h"

#include <QFile>
#include <QSize>
#include <QTemporaryDir>

#include <exiv2/exiv2.hpp>
#include <gtest/gtest.h>

#include "tests/support/sample_survey.h"

namespace headcap::app::photo {
namespace {

class ExifTest : public testing::Test {
protected:
    // A photograph of which the camera says this.
    QString taken(const char* time, const char* offset) {
        const QString path = folder.filePath(QStringLiteral("a.jpg"));
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(tests::drawnJpeg({120, 90}, 1));
        file.close();
        const auto image = Exiv2::ImageFactory::open(path.toStdString());
        Exiv2::ExifData data;
        data["Exif.Photo.DateTimeOriginal"] = std::string{time};
        if (offset != nullptr) {
            data["Exif.Photo.OffsetTimeOriginal"] = std::string{offset};
        }
        image->setExifData(data);
        image->writeMetadata();
        return path;
    }
    QTemporaryDir folder;
};

TEST_F(ExifTest, readsTheLocalTimeOfTheCapture) {
    // Tests run at Asia/Kathmandu, UTC+05:45.
    EXPECT_EQ(captureTime(taken("2031:03:05 10:00:00", nullptr)),
              core::instantFromIso("2031-03-05T04:15:00Z"));
}

TEST_F(ExifTest, keepsToTheOffsetTheCameraGives) {
    EXPECT_EQ(captureTime(taken("2031:03:05 10:00:00", "-03:30")),
              core::instantFromIso("2031-03-05T13:30:00Z"));
}

TEST_F(ExifTest, knowsNothingOfAClockNeverSetOrAFileWithoutWords) {
    EXPECT_EQ(captureTime(taken("0000:00:00 00:00:00", nullptr)), std::nullopt);
    EXPECT_EQ(captureTime(taken("    :  :     :  :  ", nullptr)), std::nullopt);
    EXPECT_EQ(captureTime(folder.filePath(QStringLiteral("none.jpg"))), std::nullopt);
}

} // namespace
} // namespace headcap::app::photo
