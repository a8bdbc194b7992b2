#include "app/print/layout/set_text.h"

#include <algorithm>
#include <cmath>

#include <QFontMetricsF>
#include <QRawFont>
#include <QTextCharFormat>
#include <QTextLayout>
#include <QTextOption>

#include "app/print/layout/bind_words.h"
#include "core/values/typographic.h"

namespace headcap::app::print {

namespace {

constexpr double kRaisedBy = 0.34; // of the size

// Of the width: a last line below this looks lost, and a last word alone below the other.
constexpr double kShortLine = 0.16;
constexpr double kShortWord = 0.33;

// Where the first baseline lies within its leading: letters stand a little below the middle.
constexpr double kBaseline = 0.75;

struct Prepared {
    QString text;
    struct Span {
        int start = 0;
        int length = 0;
        core::Run::Style style = core::Run::Style::plain;
    };
    std::vector<Span> spans;
};

// Line ends are kept, other control signs become spaces: no face can draw them.
QString drawable(std::string_view utf8) {
    QString text = fromUtf8(utf8);
    text.replace(QStringLiteral("\r\n"), QStringLiteral("\n"));
    for (QChar& sign : text) {
        if (sign == u'\n') {
            sign = QChar::LineSeparator;
        } else if (sign.category() == QChar::Other_Control) {
            sign = u' ';
        }
    }
    return text;
}

// One sign for one sign, so that the spans hold.
QString curled(const QString& text) {
    return fromUtf8(core::typographic(text.toStdString()));
}

Prepared prepare(const std::vector<core::Run>& runs) {
    Prepared prepared;
    for (const core::Run& run : runs) {
        const QString piece = drawable(run.text);
        prepared.spans.push_back(
            {static_cast<int>(prepared.text.size()), static_cast<int>(piece.size()), run.style});
        prepared.text += piece;
    }
    prepared.text = bindWords(curled(prepared.text));
    return prepared;
}

QList<QTextLayout::FormatRange> formatsOf(const Prepared& prepared, const Type& type) {
    QList<QTextLayout::FormatRange> formats;
    for (const Prepared::Span& span : prepared.spans) {
        if (span.length == 0) {
            continue;
        }
        QTextCharFormat format;
        format.setFont(fontOf(type, span.style));
        formats.push_back({span.start, span.length, format});
    }
    return formats;
}

void raise(QList<QGlyphRun>& glyphs, double by) {
    for (QGlyphRun& run : glyphs) {
        QList<QPointF> positions = run.positions();
        for (QPointF& position : positions) {
            position.ry() -= by;
        }
        run.setPositions(positions);
    }
}

// A no-break space has done its work once lines are broken: copied text shall have plain spaces.
void plainSpaces(QList<QGlyphRun>& glyphs) {
    for (QGlyphRun& run : glyphs) {
        const QList<quint32> spaces =
            run.rawFont().glyphIndexesForString(QString(QChar::Nbsp) + u' ');
        if (spaces.size() == 2) {
            QList<quint32> indexes = run.glyphIndexes();
            std::replace(indexes.begin(), indexes.end(), spaces[0], spaces[1]);
            run.setGlyphIndexes(indexes);
        }
    }
}

// Glyphs of a line, its baseline at 0; a span at a time, since raised ones are lifted.
QList<QGlyphRun> glyphsOf(const QTextLine& line, const Prepared& prepared, const Type& type) {
    QList<QGlyphRun> all;
    const int start = line.textStart();
    const int end = start + line.textLength();
    for (const Prepared::Span& span : prepared.spans) {
        const int from = std::max(start, span.start);
        const int to = std::min(end, span.start + span.length);
        if (from >= to) {
            continue;
        }
        QList<QGlyphRun> glyphs = line.glyphRuns(from, to - from);
        if (span.style == core::Run::Style::raised) {
            raise(glyphs, type.size * kRaisedBy * kGlyphScale);
        }
        all += glyphs;
    }
    plainSpaces(all);
    return all;
}

// Glyph 0 is the empty box that stands for a sign no face has.
bool hasEmptyBox(const QList<QGlyphRun>& glyphs) {
    return std::any_of(glyphs.begin(), glyphs.end(),
                       [](const QGlyphRun& run) { return run.glyphIndexes().contains(0U); });
}

double indent(double room, double taken, Align align) {
    switch (align) {
    case Align::left:
        return 0;
    case Align::right:
        return room - taken;
    case Align::centre:
        return (room - taken) / 2;
    }
    return 0;
}

// No line ends within a unit (g/m²) or a range (I–VIII) that could stand whole on the next.
void keepWhole(QTextLine& line, const QString& text, double width) {
    const qsizetype end = line.textStart() + line.textLength();
    if (end >= text.size() || text[end].isSpace() || !isBoundAcross(text, end)) {
        return;
    }
    qsizetype word = end;
    while (word > line.textStart() && text[word - 1] != u' ') {
        --word;
    }
    if (word > line.textStart()) {
        line.setNumColumns(static_cast<int>(word - line.textStart()), width);
    }
}

void breakAt(QTextLayout& layout, double width) {
    layout.beginLayout();
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(width);
        keepWhole(line, layout.text(), width);
        line.setPosition({0, -line.ascent()});
    }
    layout.endLayout();
}

bool endsShort(const QTextLayout& layout, double width) {
    const QTextLine last = layout.lineAt(layout.lineCount() - 1);
    const bool isOneWord =
        !layout.text().mid(last.textStart(), last.textLength()).trimmed().contains(u' ');
    return last.naturalTextWidth() < width * (isOneWord ? kShortWord : kShortLine);
}

// Where the last line would hold a short word alone, the lines are set a little narrower, so that
// it gets company; never at the cost of a line more.
void breakLines(QTextLayout& layout, double width) {
    breakAt(layout, width);
    const int count = layout.lineCount();
    if (count < 2 || !endsShort(layout, width)) {
        return;
    }
    for (int percent = 96; percent >= 80; percent -= 4) {
        breakAt(layout, width * percent / 100);
        if (layout.lineCount() == count && !endsShort(layout, width)) {
            return;
        }
    }
    breakAt(layout, width);
}

QString visibleText(const QString& text, const QTextLine& line) {
    QString part = text.mid(line.textStart(), line.textLength());
    part.remove(QChar::LineSeparator);
    part.replace(QChar::Nbsp, u' ');
    return part.trimmed();
}

} // namespace

QString fromUtf8(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()))
        .normalized(QString::NormalizationForm_C);
}

double SetText::widest() const {
    double widest = 0;
    for (const TextLine& line : lines) {
        widest = std::max(widest, line.width);
    }
    return widest;
}

SetText setText(const std::vector<core::Run>& runs, const Type& type, double width, Align align) {
    const Prepared prepared = prepare(runs);
    QTextLayout layout(prepared.text, fontOf(type));
    layout.setFormats(formatsOf(prepared, type));
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    option.setTextDirection(Qt::LeftToRight);
    layout.setTextOption(option);
    breakLines(layout, width * kGlyphScale);

    const double xHeight = QFontMetricsF(fontOf(type)).xHeight() / kGlyphScale;
    SetText set{{}, type.leading, {}};
    for (int i = 0; i < layout.lineCount(); ++i) {
        const QTextLine line = layout.lineAt(i);
        TextLine result;
        // The space after the last letter is no part of the line.
        result.width = std::max(0.0, line.naturalTextWidth() / kGlyphScale - type.spacing);
        result.at = {indent(width, result.width, align),
                     type.leading * (kBaseline + static_cast<double>(i))};
        result.ascent = xHeight * 1.5;
        result.descent = type.size * 0.25;
        result.text = visibleText(prepared.text, line);
        result.ink = type.ink;
        result.glyphs = glyphsOf(line, prepared, type);
        if (hasEmptyBox(result.glyphs)) {
            addOnce(set.signsWithoutFace, signsWithoutFace(result.text, type));
        }
        set.lines.push_back(std::move(result));
    }
    return set;
}

SetText setText(const QString& text, const Type& type, double width, Align align) {
    return setText({core::Run{text.toStdString(), core::Run::Style::plain}}, type, width, align);
}

namespace {

// What does not fit ends after a whole word.
QString fitted(const QString& text, const QFontMetricsF& metrics, double width) {
    const QString cut = metrics.elidedText(text, Qt::ElideRight, width);
    const auto space = cut.lastIndexOf(u' ');
    return cut == text || space <= 0 ? cut : cut.left(space) + QStringLiteral(" …");
}

} // namespace

SetText setOneLine(const QString& text, const Type& type, double width, Align align) {
    const QFontMetricsF metrics(fontOf(type));
    SetText set = setText(fitted(text, metrics, width * kGlyphScale), type,
                          width * 2); // rounding must not break it
    for (TextLine& line : set.lines) {
        line.at.setX(indent(width, line.width, align));
    }
    return set;
}

double longestWord(const std::vector<core::Run>& runs, const Type& type) {
    double longest = 0;
    double word = 0; // may go on from one run into the next
    for (const core::Run& run : runs) {
        const QFontMetricsF metrics(fontOf(type, run.style));
        QString piece;
        for (const QChar sign : bindWords(curled(drawable(run.text)))) {
            if (!sign.isSpace() || sign == QChar::Nbsp) {
                piece += sign;
                continue;
            }
            longest = std::max(longest, word + metrics.horizontalAdvance(piece));
            word = 0;
            piece.clear();
        }
        word += metrics.horizontalAdvance(piece);
        longest = std::max(longest, word);
    }
    return longest / kGlyphScale;
}

} // namespace headcap::app::print
