#include "app/print/layout/bind_words.h"

#include <QRegularExpression>

namespace headcap::app::print {

namespace {

const QRegularExpression& beforeUnit() {
    static const QRegularExpression pattern(
        QStringLiteral(
            "(?<=[0-9½¼¾⅛⅜⅝⅞]) (?=(?:%|‰|[kmµ]?g|m?l|[cmnµ]?m|[cm]?m²|g/m²|in|ft|min|h|s|"
            "°C|°F|K|pt|px|pH|ppm|leaves|leaf|pages|plates)(?![\\w/²]))"),
        QRegularExpression::UseUnicodePropertiesOption);
    return pattern;
}

const QRegularExpression& beforeMonth() {
    static const QRegularExpression pattern(
        QStringLiteral("(?<=[0-9]) (?=(?:January|February|March|April|May|June|July|August|"
                       "September|October|November|December)\\b)"));
    return pattern;
}

const QRegularExpression& beforeNumber() {
    static const QRegularExpression pattern(QStringLiteral(
        "(?<=\\bp\\.|\\bpp\\.|\\bf\\.|\\bff\\.|\\bno\\.|\\bvol\\.|\\bpl\\.|\\b[Ll]ot|"
        "\\bFigure|\\bJob) (?=\\[?[0-9]|[IVXLC]+\\b)"));
    return pattern;
}

const QRegularExpression& aroundTimes() {
    static const QRegularExpression pattern(QStringLiteral("(?<=[0-9]) (?=× [0-9])|(?<=[0-9] ×) "));
    return pattern;
}

// "7 h 30 min" is one time.
const QRegularExpression& withinTime() {
    static const QRegularExpression pattern(
        QStringLiteral("(?<=[0-9]\\x{a0}h) (?=[0-9]{1,2}\\x{a0}min\\b)"));
    return pattern;
}

constexpr QChar kDash{0x2013};

} // namespace

bool isBoundAcross(const QString& text, qsizetype at) {
    if (at < 1 || at >= text.size()) {
        return false;
    }
    const bool isUnit = text[at - 1] == u'/' && text.mid(at - 1).startsWith(QStringLiteral("/m²"));
    const bool isRange =
        at > 1 && text[at - 1] == kDash && !text[at - 2].isSpace() && !text[at].isSpace();
    return isUnit || isRange;
}

QString bindWords(QString text) {
    const QString space(QChar::Nbsp);
    text.replace(beforeUnit(), space);
    text.replace(withinTime(), space);
    text.replace(beforeMonth(), space);
    text.replace(beforeNumber(), space);
    text.replace(aroundTimes(), space);
    return text;
}

} // namespace headcap::app::print
