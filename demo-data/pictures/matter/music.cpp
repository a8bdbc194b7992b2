// A page of a hymnal: a tune in two staves at a time, words under them.
#include <array>

#include "demo-data/pictures/matter/matter.h"
#include "demo-data/pictures/matter/type.h"

namespace headcap::demo {
namespace {

struct Staff {
    double left;
    double width;
    double top;
    double space; // between its lines

    [[nodiscard]] double lineAt(int step) const { return top + space * (4 - step / 2.0); }
};

void drawStaff(QPainter& painter, const Staff& staff) {
    for (int i = 0; i < 5; ++i) {
        painter.fillRect(QRectF(staff.left, staff.top + i * staff.space - 0.06, staff.width, 0.14),
                         painter.pen().color());
    }
}

void drawNote(QPainter& painter, const Staff& staff, double x, int step, bool open, bool stem) {
    const QPointF head{x, staff.lineAt(step)};
    const QColor ink = painter.pen().color();
    painter.save();
    painter.translate(head);
    painter.rotate(-18);
    QPainterPath oval;
    oval.addEllipse(QPointF{}, staff.space * 0.62, staff.space * 0.44);
    if (open) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(ink, staff.space * 0.17));
        painter.drawPath(oval);
    } else {
        painter.fillPath(oval, ink);
    }
    painter.restore();
    if (stem) {
        const int up = step < 4 ? 1 : -1;
        painter.fillRect(QRectF(x + up * staff.space * 0.55 - 0.09,
                                up > 0 ? head.y() - staff.space * 3.2 : head.y(), 0.2,
                                staff.space * 3.2),
                         ink);
    }
}

void drawClef(QPainter& painter, const Staff& staff, bool bass) {
    const QString clef = bass ? QStringLiteral("?:") : QStringLiteral("&");
    const Face face{staff.space * (bass ? 4.2 : 6.2), true, true, 0};
    painter.fillPath(
        setLine(clef, face, staff.left + 0.6, staff.top + staff.space * (bass ? 2.9 : 4.1), 5),
        painter.pen().color());
}

void drawPart(QPainter& painter, const Staff& staff, bool bass, Seed seed) {
    drawStaff(painter, staff);
    drawClef(painter, staff, bass);
    constexpr int kNotes = 16;
    int step = bass ? 2 : 4;
    for (int i = 0; i < kNotes; ++i) {
        const double x = staff.left + staff.width * (0.14 + 0.84 * (i + 0.3) / kNotes);
        step = std::clamp(step + static_cast<int>(chanceAt(seed, i, 2) * 5) - 2, -1, 9);
        const bool last = i % 8 == 7;
        drawNote(painter, staff, x, step, last || i % 4 == 0, true);
        if (i % 4 == 3) {
            const double bar = staff.left + staff.width * (0.14 + 0.84 * (i + 0.85) / kNotes);
            painter.fillRect(QRectF(bar, staff.top, 0.16, staff.space * 4), painter.pen().color());
        }
    }
}

} // namespace

void drawMusic(QPainter& painter, const Json& music, const QSizeF& leaf, Ink ink, Seed seed) {
    if (ink != Ink::black) {
        return;
    }
    const double left = leaf.width() * 0.12;
    const double width = leaf.width() * 0.74;
    const Face head{leaf.width() * 0.042, true, false, 0.12};
    const QString title = withLongS(textOf(music, "title"));
    painter.fillPath(
        setLine(title, head, left + (width - widthOf(title, head)) / 2, leaf.height() * 0.10, seed),
        painter.pen().color());
    const Face words{leaf.width() * 0.031, false, false, 0};
    const double space = leaf.width() * 0.0155;
    double y = leaf.height() * 0.15;
    std::size_t line = 0;
    const Json& verses = music.at("words");
    for (int system = 0; system < 3; ++system) {
        drawPart(painter, {left, width, y, space}, false,
                 mixed(seed, static_cast<Seed>(system * 2)));
        const double text = y + space * 7.6;
        const auto sung =
            withLongS(QString::fromStdString(verses[line % verses.size()].get<std::string>()));
        const QStringList syllables = sung.split(QLatin1Char(' '));
        double own = 0;
        for (const QString& syllable : syllables) {
            own += widthOf(syllable, words);
        }
        const double gap = (width * 0.82 - own) / static_cast<double>(syllables.size());
        double x = left + width * 0.14;
        for (const QString& syllable : syllables) {
            painter.fillPath(setLine(syllable, words, x, text, mixed(seed, static_cast<Seed>(x))),
                             painter.pen().color());
            x += widthOf(syllable, words) + gap;
        }
        ++line;
        drawPart(painter, {left, width, y + space * 10.5, space}, true,
                 mixed(seed, static_cast<Seed>(system * 2 + 1)));
        painter.fillRect(QRectF(left - 0.5, y, 0.35, space * 14.5), painter.pen().color());
        y += space * 19.5;
    }
    int number = 2;
    for (; line < verses.size() && y < leaf.height() * 0.9; ++line) {
        const auto verse = withLongS(QString::fromStdString(verses[line].get<std::string>()));
        painter.fillPath(
            setLine(line % 2 == 1 ? QString::number(number++) + QStringLiteral("  ") + verse
                                  : QStringLiteral("     ") + verse,
                    words, left + width * 0.08, y, mixed(seed, static_cast<Seed>(line))),
            painter.pen().color());
        y += words.size * 1.25;
    }
}

} // namespace headcap::demo
