#include "app/print/labels.h"

#include <algorithm>
#include <array>

#include <QPrinter>
#include <QTextLayout>

#include "app/look/fonts.h"
#include "app/print/qr_code.h"

namespace headcap::app::print {
namespace {

constexpr double kInset = 2; // mm
constexpr double kMmOfPoint = 25.4 / 72;
constexpr double kMmOfInch = 25.4;

// Sizes and pitches are published, margins follow from the size of the paper where a sheet is
// symmetrical; the test of this table names the publications each was held against, and how far
// they lie apart: up to 1.4 mm. So a test page is printed before the first labels.
constexpr std::array kSheets{
    LabelSheet{"A4, 3 × 7 of 63.5 × 38.1 mm", 210, 297, 3, 7, 63.5, 38.1, 7.25, 15.15, 66, 38.1},
    LabelSheet{"A4, 3 × 8 of 70 × 37 mm", 210, 297, 3, 8, 70, 37, 0, 0.5, 70, 37},
    LabelSheet{"A4, 2 × 7 of 99.1 × 38.1 mm", 210, 297, 2, 7, 99.1, 38.1, 4.65, 15.15, 101.6, 38.1},
    LabelSheet{"A4, 5 × 13 of 38.1 × 21.2 mm", 210, 297, 5, 13, 38.1, 21.2, 4.75, 10.7, 40.6, 21.2},
    LabelSheet{"Letter, 3 × 10 of 66.7 × 25.4 mm", 215.9, 279.4, 3, 10, 66.675, 25.4, 4.775, 12.7,
               69.85, 25.4},
};

// Of a hundred units, which the painter scales to millimetres.
QFont faceOf(Face face) {
    QFont font = faceFont(face);
    font.setPixelSize(100); // scaled by the painter: fractions of a pixel are not kept
    return font;
}

double heightOf(double points, qsizetype lines) {
    return points * kMmOfPoint * 1.25 * static_cast<double>(lines);
}

// The text in lines of so many millimetres; what does not fit into the most of them ends with a
// sign that it goes on.
QStringList inLines(Face face, double points, const QString& text, double width, qsizetype most) {
    const double wide = width / (points * kMmOfPoint / 100);
    QTextLayout layout{text, faceOf(face)};
    layout.beginLayout();
    QStringList lines;
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(wide);
        if (lines.size() + 1 == most || line.naturalTextWidth() > wide) {
            const QFontMetricsF metrics{faceOf(face)};
            lines << metrics.elidedText(text.mid(line.textStart()), Qt::ElideRight, wide);
            break;
        }
        lines << text.mid(line.textStart(), line.textLength()).trimmed();
    }
    layout.endLayout();
    return lines;
}

// As many of the lines as have room; gives their height in mm.
double paintLines(QPainter& painter, Face face, double points, const QStringList& lines,
                  const QRectF& area) {
    double gone = 0;
    for (const QString& line : lines) {
        const double tall = heightOf(points, 1);
        if (gone + tall > area.height() + 0.01) {
            break;
        }
        const double scale = points * kMmOfPoint / 100;
        painter.save();
        painter.translate(area.left(), area.top() + gone);
        painter.scale(scale, scale);
        painter.setFont(faceOf(face));
        painter.drawText(QPointF{0, QFontMetricsF{painter.font()}.ascent()}, line);
        painter.restore();
        gone += tall;
    }
    return gone;
}

} // namespace

QRectF LabelSheet::place(int index) const {
    return {left + index % columns * columnStep, top + index / columns * rowStep, width, height};
}

std::span<const LabelSheet> labelSheets() {
    return kSheets;
}

void paintLabel(QPainter& painter, const LabelWords& label, const QRectF& place) {
    const QRectF inner = place.adjusted(kInset, kInset, -kInset, -kInset);
    const double side = std::min(inner.height(), inner.width() * 0.42);
    paintQr(painter, qrCode(label.number.toStdString()), {inner.topLeft(), QSizeF{side, side}});
    painter.setPen(Qt::black);
    QRectF words{inner.left() + side + 1, inner.top(), inner.width() - side - 1, inner.height()};
    const bool isSmall = place.height() < 26;
    const double number = isSmall ? 10 : 14;
    const double title = isSmall ? 6 : 8;
    const double small = isSmall ? 5.5 : 7;
    const auto next = [&](Face face, double points, const QStringList& lines) {
        words.setTop(words.top() + paintLines(painter, face, points, lines, words));
    };
    next(Face::strong, number, inLines(Face::strong, number, label.number, words.width(), 1));
    // A caution is worth more than the second line of a title.
    const double room = words.height() - heightOf(title, 1);
    const QStringList caution =
        inLines(Face::smallStrong, small, label.caution, words.width(),
                std::max<qsizetype>(1, static_cast<qsizetype>(room / heightOf(small, 1))));
    const bool isRoomy = room - heightOf(small, caution.size()) >= heightOf(title, 1);
    next(Face::strong, title,
         inLines(Face::strong, title, label.title, words.width(), isRoomy ? 2 : 1));
    next(Face::smallStrong, small, caution);
    for (const QString& line : label.lines) {
        next(Face::small, small, inLines(Face::small, small, line, words.width(), 1));
    }
}

int paintLabels(QPainter& painter, const LabelSheet& sheet, std::span<const LabelWords> labels,
                int from) {
    const int first = std::clamp(from, 0, sheet.count() - 1);
    const int held = std::min(static_cast<int>(labels.size()), sheet.count() - first);
    for (int i = 0; i < held; ++i) {
        paintLabel(painter, labels[static_cast<std::size_t>(i)], sheet.place(first + i));
    }
    return held;
}

void paintTestPage(QPainter& painter, const LabelSheet& sheet) {
    constexpr double kRule = 100;
    constexpr double kTick = 2;
    painter.setPen(QPen{Qt::black, 0.2});
    for (int i = 0; i < sheet.count(); ++i) {
        painter.drawRect(sheet.place(i));
    }
    const QRectF middle = sheet.place(sheet.count() / 2);
    const double left = (sheet.pageWidth - kRule) / 2;
    const double y = middle.center().y();
    painter.drawLine(QPointF{left, y}, QPointF{left + kRule, y});
    for (int mm = 0; mm <= 100; mm += 10) {
        painter.drawLine(QPointF{left + mm, y - kTick}, QPointF{left + mm, y + kTick});
    }
    paintLines(painter, Face::small, 7, {QStringLiteral("100 mm")},
               {left + kRule + 1, y - 2, 20, 5});
}

void printTestPage(QPrinter& printer, const LabelSheet& sheet) {
    printer.setFullPage(true);
    QPainter painter{&printer};
    const double scale = printer.resolution() / kMmOfInch;
    painter.scale(scale, scale);
    paintTestPage(painter, sheet);
}

void printLabels(QPrinter& printer, const LabelSheet& sheet, std::span<const LabelWords> labels,
                 int from) {
    printer.setFullPage(true);
    QPainter painter{&printer};
    const double scale = printer.resolution() / kMmOfInch;
    painter.scale(scale, scale);
    while (!labels.empty()) {
        const int held = paintLabels(painter, sheet, labels, from);
        from = 0;
        labels = labels.subspan(static_cast<std::size_t>(held));
        if (!labels.empty()) {
            printer.newPage();
        }
    }
}

} // namespace headcap::app::print
