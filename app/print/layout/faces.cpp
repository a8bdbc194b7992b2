#include "app/print/layout/faces.h"

#include <algorithm>
#include <cmath>

#include <QFontMetricsF>

namespace headcap::app::print {

namespace {

constexpr double kNoLigatures = 0.02; // at kGlyphScale: a thousandth of a point
constexpr double kRaisedSize = 0.66;

} // namespace

QFont fontOf(const Type& type, core::Run::Style style) {
    QFont font;
    if (type.family == Family::text) {
        font.setFamilies({QStringLiteral("Gentium Plus"), QStringLiteral("Noto Serif Hebrew"),
                          QStringLiteral("Noto Sans"), QStringLiteral("Noto Sans CJK SC"),
                          QStringLiteral("DejaVu Sans")});
    } else {
        font.setFamilies({QStringLiteral("Noto Sans"), QStringLiteral("Noto Sans Hebrew"),
                          QStringLiteral("Noto Sans CJK SC"), QStringLiteral("DejaVu Sans"),
                          QStringLiteral("Gentium Plus")});
    }
    const double scale = style == core::Run::Style::raised ? kRaisedSize : 1.0;
    font.setPixelSize(static_cast<int>(std::lround(type.size * kGlyphScale * scale)));
    font.setBold(type.bold || style == core::Run::Style::bold);
    font.setItalic(type.italic != (style == core::Run::Style::italic)); // roman within italic
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setKerning(true);
    font.setLetterSpacing(QFont::AbsoluteSpacing,
                          std::max(kNoLigatures, type.spacing * kGlyphScale));
    return font;
}

QString signsWithoutFace(const QString& text, const Type& type) {
    const QFontMetricsF metrics(fontOf(type));
    QString signs;
    for (const char32_t sign : text.toUcs4()) {
        if (sign != QChar::LineSeparator && !metrics.inFontUcs4(sign)) {
            addOnce(signs, QString::fromUcs4(&sign, 1));
        }
    }
    return signs;
}

void addOnce(QString& signs, const QString& more) {
    for (const char32_t sign : more.toUcs4()) {
        const QString shown = QString::fromUcs4(&sign, 1);
        if (!signs.contains(shown)) {
            signs += shown;
        }
    }
}

} // namespace headcap::app::print
