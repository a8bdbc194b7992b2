#include "app/look/fonts.h"

#include <QApplication>
#include <QFontInfo>
#include <QFontMetricsF>
#include <QRawFont>

#include <gtest/gtest.h>

namespace headcap::app {
namespace {

constexpr Face kFaces[] = {Face::body,    Face::strong,  Face::small, Face::smallStrong,
                           Face::heading, Face::formula, Face::slip,  Face::book,
                           Face::title,   Face::bench,   Face::clock};

TEST(Fonts, areTheFacesOfTheHouse) {
    EXPECT_EQ(QFontInfo(faceFont(Face::body)).family(), QStringLiteral("Noto Sans"));
    EXPECT_EQ(QFontInfo(faceFont(Face::title)).family(), QStringLiteral("Gentium Plus"));
    EXPECT_TRUE(QFontInfo(faceFont(Face::heading)).italic());
}

TEST(Fonts, haveFiguresOfOneWidth) {
    for (const Face face : kFaces) {
        const QFontMetricsF metrics{faceFont(face)};
        for (char figure = '1'; figure <= '9'; ++figure) {
            EXPECT_DOUBLE_EQ(metrics.horizontalAdvance(QLatin1Char('0')),
                             metrics.horizontalAdvance(QLatin1Char(figure)))
                << static_cast<int>(face) << " " << figure;
        }
    }
}

// The signs of collation formulas and of the windows themselves: no fallback inside a word.
TEST(Fonts, holdTheirOwnSigns) {
    const QString formula = QStringLiteral("ſπχ¶†°²⁴⁶⁸¹⁰ⁿ±–—“”…·→ꝑßøœþ²A4Σ");
    const QRawFont text = QRawFont::fromFont(faceFont(Face::formula));
    for (const QChar sign : formula) {
        EXPECT_TRUE(text.supportsCharacter(sign)) << QString(sign).toStdString();
    }
    const QString interface = QStringLiteral("éßøœ°²³×½¼±–—“”…·µ†¶");
    const QRawFont face = QRawFont::fromFont(faceFont(Face::body));
    for (const QChar sign : interface) {
        EXPECT_TRUE(face.supportsCharacter(sign)) << QString(sign).toStdString();
    }
}

TEST(Fonts, areNeverUnderTenAndAHalfPointAndGrowWithTheSystem) {
    QFont system;
    system.setPointSizeF(8);
    EXPECT_DOUBLE_EQ(interfaceFont(system, 1.0).pointSizeF(), 10.5);
    system.setPointSizeF(14);
    EXPECT_DOUBLE_EQ(interfaceFont(system, 1.0).pointSizeF(), 14);
    EXPECT_DOUBLE_EQ(interfaceFont(system, 1.5).pointSizeF(), 21);
}

} // namespace
} // namespace headcap::app
