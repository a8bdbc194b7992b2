#include "app/print/photo_reader.h"

#include <QBuffer>
#include <QColorSpace>
#include <QFile>
#include <QTemporaryDir>
#include <gtest/gtest.h>

#include "app/print/jpeg_check.h"
#include "tests/app/print/sample_photos.h"

namespace headcap::app::print {
namespace {

using namespace test;

class PhotoReader : public ::testing::Test {
protected:
    QString written(const QString& name, const QByteArray& bytes) {
        const QString path = m_folder.filePath(name);
        writeFile(path, bytes);
        return path;
    }

    QTemporaryDir m_folder;
};

// Red where the stored picture begins, green at the end of its first row.
QImage corners() {
    QImage image(120, 80, QImage::Format_RGB32);
    image.fill(Qt::gray);
    for (int y = 0; y < 40; ++y) {
        for (int x = 0; x < 40; ++x) {
            image.setPixelColor(x, y, Qt::red);
            image.setPixelColor(119 - x, y, Qt::green);
        }
    }
    return image;
}

QString cornerOf(const QImage& image, bool (*is)(QColor)) {
    for (const bool bottom : {false, true}) {
        for (const bool right : {false, true}) {
            if (is(image.pixelColor(right ? image.width() - 10 : 10,
                                    bottom ? image.height() - 10 : 10))) {
                return QStringLiteral("%1 %2").arg(bottom ? u"bottom" : u"top",
                                                   right ? u"right" : u"left");
            }
        }
    }
    return {};
}

bool isRed(QColor colour) {
    return colour.red() > 200 && colour.green() < 100;
}
bool isGreen(QColor colour) {
    return colour.green() > 200 && colour.red() < 100;
}

struct Orientation {
    int value;
    const char* red;
    const char* green;
};

class Orientations : public PhotoReader, public ::testing::WithParamInterface<Orientation> {};

// TIFF 6.0, section 8, Orientation: which side of the picture the stored 0th row and column are.
INSTANTIATE_TEST_SUITE_P(Tiff6, Orientations,
                         ::testing::Values(Orientation{1, "top left", "top right"},
                                           Orientation{2, "top right", "top left"},
                                           Orientation{3, "bottom right", "bottom left"},
                                           Orientation{4, "bottom left", "bottom right"},
                                           Orientation{5, "top left", "bottom left"},
                                           Orientation{6, "top right", "bottom right"},
                                           Orientation{7, "bottom right", "top right"},
                                           Orientation{8, "bottom left", "top left"}));

TEST_P(Orientations, areHonouredInSizeAndPicture) {
    const QString path =
        written(QStringLiteral("turned.jpg"), withOrientation(jpegOf(corners()), GetParam().value));
    const QSize upright = GetParam().value < 5 ? QSize(120, 80) : QSize(80, 120);
    const auto facts = inspectPhoto(path);
    ASSERT_TRUE(facts.has_value());
    EXPECT_EQ(facts->upright, upright);
    const auto image = readPhoto(path, {60, 60});
    ASSERT_TRUE(image.has_value());
    EXPECT_EQ(image->size(), upright / 2);
    EXPECT_EQ(cornerOf(*image, isRed).toStdString(), GetParam().red);
    EXPECT_EQ(cornerOf(*image, isGreen).toStdString(), GetParam().green);
}

TEST_F(PhotoReader, neverEnlargesAndNeverExceedsTheRoom) {
    const QString path = written(QStringLiteral("p.jpg"), jpegOf(noisyPhotograph(300, 200)));
    EXPECT_EQ(readPhoto(path, {1000, 1000})->size(), QSize(300, 200));
    EXPECT_EQ(readPhoto(path, {150, 1000})->size(), QSize(150, 100));
    EXPECT_EQ(readPhoto(path, {1000, 50})->size(), QSize(75, 50));
}

TEST_F(PhotoReader, laysWhatIsTransparentOnWhite) {
    QImage image(20, 20, QImage::Format_ARGB32);
    image.fill(Qt::transparent);
    QByteArray png;
    QBuffer buffer(&png);
    image.save(&buffer, "PNG");
    const auto read = readPhoto(written(QStringLiteral("clear.png"), png), {20, 20});
    ASSERT_TRUE(read.has_value());
    EXPECT_FALSE(read->hasAlphaChannel());
    EXPECT_EQ(read->pixelColor(3, 3), QColor(Qt::white));
}

TEST_F(PhotoReader, bringsOtherColourSpacesToSrgb) {
    QImage image(64, 64, QImage::Format_RGB32);
    image.fill(QColor(200, 120, 90));
    image.setColorSpace(QColorSpace(QColorSpace::AdobeRgb));
    QImage expected = image;
    expected.convertToColorSpace(QColorSpace::SRgb);
    const auto read = readPhoto(written(QStringLiteral("adobe.jpg"), jpegOf(image, 98)), {64, 64});
    ASSERT_TRUE(read.has_value());
    EXPECT_NEAR(read->pixelColor(32, 32).red(), expected.pixelColor(32, 32).red(), 3);
    EXPECT_GT(read->pixelColor(32, 32).red(), 210); // Adobe's 200 is redder than sRGB's
}

TEST_F(PhotoReader, refusesAPhotographCutOffAnywhere) {
    const QByteArray whole = withOrientation(jpegOf(noisyPhotograph(640, 480)), 6);
    EXPECT_TRUE(inspectPhoto(written(QStringLiteral("whole.jpg"), whole)).has_value());
    for (const double part : {0.999, 0.9, 0.5, 0.1, 0.02}) {
        const auto cut =
            whole.left(static_cast<qsizetype>(static_cast<double>(whole.size()) * part));
        const auto facts = inspectPhoto(written(QStringLiteral("cut.jpg"), cut));
        ASSERT_FALSE(facts.has_value()) << part;
        EXPECT_TRUE(facts.error() == PhotoFault::truncated ||
                    facts.error() == PhotoFault::notAPicture);
    }
}

TEST_F(PhotoReader, refusesACutOffPng) {
    QByteArray png;
    QBuffer buffer(&png);
    noisyPhotograph(300, 200).save(&buffer, "PNG");
    EXPECT_TRUE(inspectPhoto(written(QStringLiteral("whole.png"), png)).has_value());
    EXPECT_FALSE(
        inspectPhoto(written(QStringLiteral("cut.png"), png.left(png.size() / 2))).has_value());
}

TEST_F(PhotoReader, takesAJpegWithSomethingAfterItsEnd) {
    const QByteArray bytes = jpegOf(noisyPhotograph(64, 64)) + QByteArray(5'000, 'x');
    EXPECT_TRUE(inspectPhoto(written(QStringLiteral("more.jpg"), bytes)).has_value());
}

TEST_F(PhotoReader, tellsWhatIsWrong) {
    EXPECT_EQ(inspectPhoto(m_folder.filePath(QStringLiteral("none.jpg"))).error(),
              PhotoFault::missing);
    EXPECT_EQ(inspectPhoto(m_folder.path()).error(), PhotoFault::missing);
    EXPECT_EQ(readPhoto({}, {10, 10}).error(), PhotoFault::missing);
    EXPECT_EQ(inspectPhoto(written(QStringLiteral("text.jpg"), "not a picture at all")).error(),
              PhotoFault::notAPicture);
    EXPECT_EQ(inspectPhoto(written(QStringLiteral("empty.jpg"), {})).error(),
              PhotoFault::notAPicture);
    for (const auto fault : {PhotoFault::missing, PhotoFault::notReadable, PhotoFault::notAPicture,
                             PhotoFault::truncated, PhotoFault::damaged}) {
        EXPECT_TRUE(sentence(fault).endsWith(u'.'));
    }
}

TEST_F(PhotoReader, goesByTheContentNotTheName) {
    const auto facts =
        inspectPhoto(written(QStringLiteral("really-a-jpeg.png"), jpegOf(noisyPhotograph(64, 48))));
    ASSERT_TRUE(facts.has_value());
    EXPECT_EQ(facts->mediaType, QStringLiteral("image/jpeg"));
}

TEST(EncodeJpeg, keepsToItsBytesWhereTheLeastQualityAllows) {
    const QImage image = noisyPhotograph(800, 600);
    const qint64 best = encodeJpeg(image, 1 << 30).size();
    const qint64 least = encodeJpeg(image, 1).size();
    EXPECT_LT(least, best / 2);
    const qint64 room = (best + least) / 2;
    EXPECT_LE(encodeJpeg(image, room).size(), room);
    EXPECT_GT(encodeJpeg(image, room).size(), least);
}

} // namespace
} // namespace headcap::app::print
