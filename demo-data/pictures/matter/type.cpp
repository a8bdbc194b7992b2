#include "demo-data/pictures/matter/type.h"

#include <QFont>
#include <QFontMetricsF>
#include <QStringList>

namespace headcap::demo {
namespace {

// Outlines are taken at one large size and scaled, so that nothing is fitted to pixels.
constexpr int kTaken = 120;

QFont fontOf(const Face& face) {
    QFont font(QStringLiteral("Gentium Plus"));
    font.setStyleHint(QFont::Serif);
    font.setPixelSize(kTaken);
    font.setItalic(face.italic);
    font.setBold(face.bold);
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setKerning(true);
    if (face.track > 0) {
        font.setLetterSpacing(QFont::AbsoluteSpacing, face.track * kTaken / face.size);
    }
    return font;
}

} // namespace

double widthOf(const QString& text, const Face& face) {
    return QFontMetricsF(fontOf(face)).horizontalAdvance(text) * face.size / kTaken;
}

QPainterPath setLine(const QString& text, const Face& face, double x, double y, Seed unevenness) {
    QPainterPath line;
    const QFont font = fontOf(face);
    const QFontMetricsF metrics(font);
    const double share = face.size / kTaken;
    double at = 0;
    int word = 0;
    const QStringList words = text.split(QLatin1Char(' '));
    for (const QString& part : words) {
        QPainterPath letters;
        letters.addText(0, 0, font, part);
        const double up = (static_cast<double>(chanceAt(unevenness, word, 1)) - 0.5) * 0.06;
        QTransform place;
        place.translate(x + at * share, y + up);
        place.scale(share, share);
        line.addPath(place.map(letters));
        at += metrics.horizontalAdvance(part + QLatin1Char(' '));
        ++word;
    }
    line.setFillRule(Qt::WindingFill);
    return line;
}

QString withLongS(const QString& text) {
    QString set;
    for (qsizetype i = 0; i < text.size(); ++i) {
        const bool inWord = i + 1 < text.size() && text[i + 1].isLetter();
        const bool beforeF = inWord && text[i + 1] == QLatin1Char('f');
        set += text[i] == QLatin1Char('s') && inWord && !beforeF ? QChar(0x017F) : text[i];
    }
    return set;
}

} // namespace headcap::demo
