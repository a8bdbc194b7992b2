#include "app/print/labels.h"

#include <algorithm>
#include <array>

#include <QPrinter>

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

// One line, cut where it is too long; gives its height in mm.
double paintLine(QPainter& painter, Face face, double points, const QString& text,
                 const QRectF& area) {
    const double tall = points * kMmOfPoint * 1.25;
    if (text.isEmpty() || tall > area.height() + 0.01) {
        return 0;
    }
    const double scale = points * kMmOfPoint / 100;
    painter.save();
    painter.translate(area.topLeft());
    painter.scale(scale, scale);
    painter.setFont(faceOf(face));
    const QFontMetricsF metrics{painter.font()};
    painter.drawText(QPointF{0, metrics.ascent()},
                     metrics.elidedText(text, Qt::ElideRight, area.width() / scale));
    painter.restore();
    return tall;
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
    const auto next = [&](Face face, double points, const QString& text) {
        words.setTop(words.top() + paintLine(painter, face, points, text, words));
    };
    next(Face::strong, isSmall ? 10 : 14, label.number);
    next(Face::strong, isSmall ? 6 : 8, label.title);
    if (!label.caution.isEmpty()) {
        next(Face::smallStrong, isSmall ? 5.5 : 7, label.caution);
    }
    for (const QString& line : label.lines) {
        next(Face::small, isSmall ? 5.5 : 7, line);
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
    paintLine(painter, Face::small, 7, QStringLiteral("100 mm"), {left + kRule + 1, y - 2, 20, 5});
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
