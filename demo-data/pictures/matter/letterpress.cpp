// Title pages and pages of prose, as set and locked up for the press.
#include <algorithm>
#include <cmath>

#include "demo-data/pictures/matter/matter.h"
#include "demo-data/pictures/matter/ornament.h"
#include "demo-data/pictures/matter/type.h"

namespace headcap::demo {
namespace {

bool isOf(const Json& line, Ink ink) {
    return ink == (line.value("red", false) ? Ink::red : Ink::black);
}

void fill(QPainter& painter, const QPainterPath& path) {
    painter.fillPath(path, painter.pen().color());
}

void drawDevice(QPainter& painter, const std::string& name, const QRectF& box, Seed seed) {
    if (name == "arabesque") {
        drawArabesque(painter, box, seed);
    } else if (name == "flowers") {
        drawFlowers(painter, box);
    } else if (name == "swelled rule") {
        drawSwelledRule(painter, box);
    } else if (name == "rule") {
        painter.fillRect(box, painter.pen().color());
    } else if (name == "rose") {
        drawCompassRose(painter, box.center(), box.height() / 2);
    } else if (name == "ship") {
        drawShip(painter, box);
    } else if (name == "hive") {
        drawHive(painter, box, seed);
    }
}

void drawBorder(QPainter& painter, const QRectF& box) {
    painter.setPen(QPen(painter.pen().color(), 0.55));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(box);
    painter.setPen(QPen(painter.pen().color(), 0.2));
    painter.drawRect(box.adjusted(1.3, 1.3, -1.3, -1.3));
}

struct Measure {
    double left;
    double width;
    double top;
    double bottom;
};

// The type page: the inner margin is the narrowest, the foot the widest.
Measure typePage(const Json& prose, const QSizeF& leaf) {
    const bool recto = prose.value("recto", true);
    const double inner = leaf.width() * 0.11;
    const double outer = leaf.width() * prose.value("outer", 0.16);
    return {recto ? inner : outer, leaf.width() - inner - outer, leaf.height() * 0.095,
            leaf.height() * 0.86};
}

// Words of a page, beginning anywhere in the copy and going round.
class Copy {
public:
    Copy(const QString& text, int from) : m_words(text.split(QLatin1Char(' '))), m_next(from) {}
    const QString& next() { return m_words[m_next++ % m_words.size()]; }
    void back() { --m_next; }

private:
    QStringList m_words;
    qsizetype m_next;
};

void drawJustified(QPainter& painter, const QStringList& words, const Face& face, double x,
                   double y, double width, Seed seed) {
    double own = 0;
    for (const QString& word : words) {
        own += widthOf(word, face);
    }
    const double gap = words.size() > 1 ? (width - own) / static_cast<double>(words.size() - 1) : 0;
    double at = x;
    Seed one = seed;
    for (const QString& word : words) {
        fill(painter, setLine(word, face, at, y, ++one));
        at += widthOf(word, face) + gap;
    }
}

void drawHead(QPainter& painter, const Json& prose, const Measure& page, const Face& face,
              Seed seed) {
    const Face head{face.size * 1.05, true, false, face.size * 0.05};
    const QString title = textOf(prose, "headline");
    const double y = page.top - face.size * 0.4;
    fill(painter,
         setLine(title, head, page.left + (page.width - widthOf(title, head)) / 2, y, seed));
    const QString number = textOf(prose, "page");
    const bool recto = prose.value("recto", true);
    const double x = recto ? page.left + page.width - widthOf(number, face) : page.left;
    fill(painter, setLine(number, face, x, y, seed));
    painter.fillRect(QRectF(page.left, y + face.size * 0.5, page.width, 0.18),
                     painter.pen().color());
}

void drawFoot(QPainter& painter, const Json& prose, const Measure& page, const Face& face, double y,
              Seed seed) {
    const QString signature = textOf(prose, "signature");
    fill(painter, setLine(signature, face, page.left + page.width * 0.47, y, seed));
    const QString catchword = withLongS(textOf(prose, "catchword"));
    fill(painter,
         setLine(catchword, face, page.left + page.width - widthOf(catchword, face), y, seed + 1));
}

// The first letter of a chapter, in a square of scrolls.
double drawInitial(QPainter& painter, const QString& letter, const Measure& page, double top,
                   double side, Seed seed) {
    const QRectF box{page.left, top, side, side};
    painter.setPen(QPen(painter.pen().color(), 0.25));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(box);
    drawArabesque(painter, box.adjusted(0.8, side * 0.04, -0.8, -side * 0.55), seed);
    drawArabesque(painter, box.adjusted(0.8, side * 0.55, -0.8, -side * 0.04), seed + 1);
    const Face face{side * 0.98, false, true, 0};
    const QPainterPath outline = setLine(letter, face, box.center().x() - widthOf(letter, face) / 2,
                                         box.bottom() - side * 0.16, seed);
    QPainterPathStroker halo;
    halo.setWidth(side * 0.09);
    const QColor ink = painter.pen().color();
    painter.fillPath(halo.createStroke(outline), Qt::black);
    painter.fillPath(outline, ink);
    return side + 1.4;
}

} // namespace

void drawTitle(QPainter& painter, const Json& title, const QSizeF& leaf, Ink ink, Seed seed) {
    if (title.value("border", false) && ink == Ink::black) {
        const double margin = leaf.width() * 0.085;
        drawBorder(painter,
                   QRectF(QPointF{}, leaf).adjusted(margin, margin, -margin, -margin * 1.4));
    }
    double y = title.value("top", leaf.height() * 0.12);
    Seed line = seed;
    for (const Json& one : title.at("lines")) {
        ++line;
        y += one.value("gap", 0.0);
        const std::string device = one.value("ornament", std::string{});
        if (!device.empty()) {
            const double tall = one.value("size", 6.0);
            const double wide = one.value("width", leaf.width() * 0.6);
            if (isOf(one, ink)) {
                drawDevice(painter, device, {(leaf.width() - wide) / 2, y, wide, tall}, line);
            }
            y += tall;
            continue;
        }
        const Face face{one.value("size", 5.0), one.value("italic", false),
                        one.value("bold", false), one.value("track", 0.0)};
        QString text = textOf(one, "t");
        if (title.value("long_s", true)) {
            text = withLongS(text);
        }
        y += face.size * 0.86;
        if (isOf(one, ink)) {
            fill(painter, setLine(text, face, (leaf.width() - widthOf(text, face) + face.track) / 2,
                                  y, line));
        }
        y += face.size * 0.36;
    }
}

void drawProse(QPainter& painter, const Json& prose, const QSizeF& leaf, Ink ink, Seed seed) {
    if (ink != Ink::black) {
        return;
    }
    const Measure page = typePage(prose, leaf);
    const Face face{prose.value("size", 4.4), prose.value("italic", false), false, 0};
    const double leading = face.size * prose.value("leading", 1.16);
    drawHead(painter, prose, page, face, seed);
    const QString text = textOf(prose, "text");
    Copy copy{prose.value("long_s", true) ? withLongS(text) : text, prose.value("from", 0)};
    double y = page.top + leading * 1.2;
    if (prose.value("headpiece", false)) {
        drawArabesque(painter, {page.left, y - leading * 0.6, page.width, leaf.height() * 0.09},
                      seed);
        y += leaf.height() * 0.12;
    }
    const QString heading = textOf(prose, "heading");
    if (!heading.isEmpty()) {
        const Face large{face.size * 1.35, true, false, 0.1};
        fill(painter, setLine(heading, large,
                              page.left + (page.width - widthOf(heading, large)) / 2, y, seed));
        y += leading * 1.6;
    }
    const QString initial = textOf(prose, "initial");
    double indent = 0;
    int indented = 0;
    if (!initial.isEmpty()) {
        indented = 4;
        indent = drawInitial(painter, initial, page, y - face.size * 0.75,
                             leading * indented - face.size * 0.2, seed);
    }
    int row = 0;
    while (y < page.bottom) {
        const double x = page.left + (row < indented ? indent : 0);
        const double width = page.width - (x - page.left);
        QStringList words;
        double used = 0;
        for (;;) {
            const QString& word = copy.next();
            const double with =
                used + widthOf(word, face) + (words.isEmpty() ? 0 : face.size * 0.22);
            if (with > width && !words.isEmpty()) {
                copy.back();
                break;
            }
            used = with;
            words << word;
        }
        drawJustified(painter, words, face, x, y, width, mixed(seed, static_cast<Seed>(row)));
        y += leading;
        ++row;
    }
    drawFoot(painter, prose, page, face, y + leading * 0.15, seed);
}

} // namespace headcap::demo
