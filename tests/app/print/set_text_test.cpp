#include "app/print/layout/set_text.h"

#include <array>

#include <QRawFont>
#include <QSet>
#include <gtest/gtest.h>

#include "app/print/layout/bind_words.h"
#include "app/print/layout/types.h"
#include "tests/app/print/sample_document.h"

namespace headcap::app::print {
namespace {

using test::plainRun;

QString joined(const SetText& text) {
    QStringList lines;
    for (const TextLine& line : text.lines) {
        lines << line.text;
    }
    return lines.join(u' ');
}

QSet<QString> facesOf(const SetText& text) {
    QSet<QString> faces;
    for (const TextLine& line : text.lines) {
        for (const QGlyphRun& run : line.glyphs) {
            faces << run.rawFont().familyName();
        }
    }
    return faces;
}

constexpr const char* kProse =
    "The text block was softened by damp at the tail; the first two gatherings were loose, their "
    "folds split for some 90 mm, and the officinal stains of the flyleaf were left.";

TEST(SetText, keepsEveryWordInOrderAndEveryLineWithinItsWidth) {
    for (double width = 70; width < 500; width += 23) {
        const SetText text = setText(plainRun(kProse), kBody, width);
        EXPECT_EQ(joined(text).toStdString(), kProse);
        EXPECT_LE(text.widest(), width + 0.1);
    }
}

TEST(SetText, endsNoLineWithinAUnitOrARange) {
    const std::string words = "Handmade laid paper 110 g/m² for pl. I–VIII and pl. X–XIII of it";
    for (double width = 70; width < 300; width += 1.5) {
        const SetText text = setText(plainRun(words), kTable, width);
        EXPECT_EQ(joined(text).toStdString(), words) << width;
        EXPECT_LE(text.widest(), width + 0.1);
        for (const TextLine& line : text.lines) {
            EXPECT_FALSE(line.text.endsWith(u'/') || line.text.endsWith(QChar(0x2013)) ||
                         line.text.endsWith(QStringLiteral("pl.")))
                << line.text.toStdString() << " at " << width;
        }
    }
}

TEST(SetText, curlsWhatWasTypedStraight) {
    const SetText text = setText(
        {core::Run{"The Pilots' House: "}, core::Run{"\"back glued\"", core::Run::Style::italic}},
        kBody, 10'000);
    EXPECT_EQ(joined(text).toStdString(), "The Pilots’ House: “back glued”");
    EXPECT_EQ(facesOf(text), QSet<QString>{QStringLiteral("Gentium Plus")});
}

TEST(SetText, breaksAWordThatIsLongerThanTheLine) {
    const std::string hash(64, 'a');
    const SetText text = setText(plainRun(hash), kBody, 100);
    EXPECT_GT(text.lines.size(), 1U);
    EXPECT_LE(text.widest(), 100.1);
}

TEST(SetText, leavesNoShortWordAloneOnTheLastLine) {
    const std::string words = "Norbury: printed by T. Vellacott for the widow Penmarsh, 1612";
    const double whole = setText(plainRun(words), kBody, 10'000).widest();
    const SetText text = setText(plainRun(words), kBody, whole - 3); // greedily: "1612" alone
    ASSERT_EQ(text.lines.size(), 2U);
    EXPECT_TRUE(text.lines.back().text.contains(u' ')) << text.lines.back().text.toStdString();
}

TEST(SetText, hasNoEmptyBoxAndNoFallbackForTheSignsOfTheTrade) {
    const std::string signs =
        "8°: π² A–K⁸ 2A³ ²B⁴ χ1 a¹⁰ ¶4 †2 §1 *6 ſpeciall quꝑ Æneas œuvre ß þe "
        "ðæt āēīōū é ñ ½ ¼ ¾ 182 × 121 mm² g/m² µm 30 °C ± 2 − 1 … ‘a’ “b” √ ≥ →";
    const SetText text = setText(plainRun(signs), kBody, 10'000);
    EXPECT_TRUE(text.signsWithoutFace.isEmpty()) << text.signsWithoutFace.toStdString();
    EXPECT_EQ(facesOf(text), QSet<QString>{QStringLiteral("Gentium Plus")});
}

TEST(SetText, takesOnlyTheSignThatIsLackingFromAnotherFace) {
    const SetText text = setText(plainRun("before ספר after ☞ end"), kBody, 10'000);
    EXPECT_TRUE(text.signsWithoutFace.isEmpty()) << text.signsWithoutFace.toStdString();
    EXPECT_EQ(facesOf(text),
              (QSet<QString>{QStringLiteral("Gentium Plus"), QStringLiteral("Noto Serif Hebrew"),
                             QStringLiteral("DejaVu Sans")}));
    EXPECT_EQ(facesOf(setText(plainRun("before after end"), kBody, 10'000)).size(), 1);
}

TEST(SetText, saysWhichSignsNoFaceHas) {
    const SetText text = setText(plainRun("a\U0010FFFDb"), kBody, 1'000);
    EXPECT_EQ(text.signsWithoutFace.toUcs4(), QList<uint>{0x10FFFDU});
}

TEST(SetText, setsNoLigatureGlyphSinceItsLettersWouldBeLostToACopy) {
    const QRawFont face = QRawFont::fromFont(fontOf(kBody));
    const SetText text = setText(plainRun("softened officinal afflicted fly"), kBody, 10'000);
    qsizetype glyphs = 0;
    for (const QGlyphRun& run : text.lines.front().glyphs) {
        glyphs += run.glyphIndexes().size();
    }
    EXPECT_EQ(glyphs, 32); // one a letter and space
}

TEST(SetText, raisesAndLessensARaisedRun) {
    const SetText text = setText({{"2A"}, {"x", core::Run::Style::raised}, {" b"}}, kBody, 1'000);
    const QList<QGlyphRun>& glyphs = text.lines.front().glyphs;
    ASSERT_EQ(glyphs.size(), 3);
    EXPECT_LT(glyphs[1].positions().front().y(), glyphs[0].positions().front().y());
    EXPECT_LT(glyphs[1].rawFont().pixelSize(), glyphs[0].rawFont().pixelSize());
    EXPECT_DOUBLE_EQ(glyphs[2].positions().front().y(), glyphs[0].positions().front().y());
}

TEST(SetText, endsRightAlignedLinesOnOneEdge) {
    const SetText text = setText(plainRun(kProse), kBody, 150, Align::right);
    for (const TextLine& line : text.lines) {
        EXPECT_NEAR(line.at.x() + line.width, 150, 0.01);
    }
}

TEST(SetText, keepsLineEndsAndMakesControlSignsSpaces) {
    const SetText text = setText(plainRun("one\r\ntwo\tthree\x01"
                                          "four"),
                                 kBody, 1'000);
    ASSERT_EQ(text.lines.size(), 2U);
    EXPECT_EQ(text.lines[1].text, QStringLiteral("two three four"));
}

TEST(SetText, setsAnEmptyTextAsOneEmptyLine) {
    const SetText text = setText(plainRun(""), kBody, 100);
    ASSERT_EQ(text.lines.size(), 1U);
    EXPECT_DOUBLE_EQ(text.height(), kBody.leading);
}

struct Bound {
    const char* text;
    const char* bound; // ~ for a no-break space
};

class BindWords : public ::testing::TestWithParam<Bound> {};

TEST_P(BindWords, bindsWhatBelongsTogetherAndNothingElse) {
    QString bound = bindWords(QString::fromUtf8(GetParam().text));
    bound.replace(QChar::Nbsp, u'~');
    EXPECT_EQ(bound.toStdString(), GetParam().bound);
}

INSTANTIATE_TEST_SUITE_P(
    Texts, BindWords,
    ::testing::Values(
        Bound{"paper of 90 g/m² and 1 % paste", "paper of 90~g/m² and 1~% paste"},
        Bound{"182 × 121 × 24 mm", "182~×~121~×~24~mm"}, Bound{"3 March 2031", "3~March 2031"},
        Bound{"see pp. [4] 1", "see pp.~[4] 1"}, Bound{"lot 31-006, lots", "lot~31-006, lots"},
        Bound{"of 3/8 in. and 60 minutes", "of 3/8~in. and 60 minutes"},
        Bound{"2 millimetres, 2 good", "2 millimetres, 2 good"}, Bound{"1 240 mm²", "1 240~mm²"},
        Bound{"7 h 30 min. Set for 2 h 10 min", "7~h~30~min. Set for 2~h~10~min"}));

} // namespace
} // namespace headcap::app::print
