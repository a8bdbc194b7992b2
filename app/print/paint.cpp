#include "app/print/paint.h"

#include <algorithm>
#include <cmath>

#include "app/print/layout/page_setup.h"
#include "app/print/layout/set_text.h"
#include "app/print/layout/types.h"

namespace headcap::app::print {

namespace {

QPen penOf(Ink ink, double width) {
    QPen pen(colourOf(ink), width);
    pen.setCapStyle(Qt::FlatCap);
    pen.setJoinStyle(Qt::MiterJoin);
    return pen;
}

class MarkPainter {
public:
    MarkPainter(QPainter& painter, const PaintPicture& paintPicture)
        : m_painter(painter), m_paintPicture(paintPicture) {}

    void operator()(const TextLine& line) const {
        m_painter.save();
        m_painter.setPen(colourOf(line.ink));
        m_painter.translate(line.at);
        if (line.upward) {
            m_painter.rotate(-90);
        }
        m_painter.scale(1 / kGlyphScale, 1 / kGlyphScale);
        for (const QGlyphRun& run : line.glyphs) {
            m_painter.drawGlyphRun({0, 0}, run);
        }
        m_painter.restore();
    }
    void operator()(const Rule& rule) const {
        m_painter.setPen(penOf(rule.ink, rule.width));
        m_painter.drawLine(QLineF(rule.from, rule.to));
    }
    void operator()(const Hatch& hatch) const {
        m_painter.setPen(penOf(hatch.ink, hatch.width));
        m_painter.drawLines(hatchStrokes(hatch));
    }
    void operator()(const Frame& frame) const {
        m_painter.setPen(penOf(frame.ink, frame.width));
        m_painter.setBrush(Qt::NoBrush);
        m_painter.drawRect(frame.area);
    }
    void operator()(const Picture& picture) const { m_paintPicture(m_painter, picture); }

private:
    QPainter& m_painter;
    const PaintPicture& m_paintPicture;
};

} // namespace

QColor colourOf(Ink ink) {
    switch (ink) {
    case Ink::text:
        return {0x1f, 0x1c, 0x18};
    case Ink::quiet:
        return {0x5a, 0x52, 0x48};
    case Ink::rule:
        return {0x8e, 0x84, 0x74};
    case Ink::faint:
        return {0xc9, 0xbf, 0xae};
    case Ink::accent:
        return {0x2d, 0x4b, 0x6b};
    case Ink::warning:
        return {0x8c, 0x2b, 0x2b};
    }
    return Qt::black;
}

QList<QLineF> hatchStrokes(const Hatch& hatch) {
    // Strokes lie on x + y = k · step, whatever the area, so that they meet between areas.
    const QRectF& area = hatch.area;
    const double step = hatch.distance * std::sqrt(2.0);
    const double first = std::ceil((area.left() + area.top()) / step);
    const double last = std::floor((area.right() + area.bottom()) / step);
    QList<QLineF> strokes;
    for (double k = first; k <= last; k += 1) {
        const double sum = k * step;
        const double x1 = std::max(area.left(), sum - area.bottom());
        const double x2 = std::min(area.right(), sum - area.top());
        if (x2 > x1) {
            strokes.append(QLineF(x1, sum - x1, x2, sum - x2));
        }
    }
    return strokes;
}

QSize pixelsOf(const Picture& picture, double dotsPerInch) {
    const QSizeF size = picture.area.size() * (dotsPerInch / 72);
    return QSize(static_cast<int>(std::ceil(size.width())),
                 static_cast<int>(std::ceil(size.height())))
        .expandedTo({1, 1});
}

void paintPage(QPainter& painter, const Page& page, const PaintPicture& paintPicture) {
    const MarkPainter markPainter(painter, paintPicture);
    for (const Mark& mark : page.marks) {
        std::visit(markPainter, mark);
    }
}

QRectF areaOf(const Picture& picture, QSize pixels) {
    return {picture.area.topLeft(),
            QSizeF(pixels).scaled(picture.area.size(), Qt::KeepAspectRatio)};
}

void paintPhoto(QPainter& painter, const QRectF& area, const QImage& image) {
    painter.drawImage(area, image);
    painter.setPen(penOf(Ink::rule, kHair));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(area);
}

void paintAbsence(QPainter& painter, const Picture& picture, const QString& reason) {
    const QRectF& area = picture.area;
    const MarkPainter paintMark(painter, {});
    paintMark(Frame{area, 0.6, Ink::warning});
    paintMark(Hatch{{area.left(), area.top(), mm(2.2), area.height()}, 2.6, 0.6, Ink::warning});
    const double left = area.left() + mm(7);
    const double width = area.right() - mm(4) - left;
    if (width <= 0) {
        return;
    }
    const QString hex = QString::fromStdString(picture.photograph.hex());
    double top = area.top() + mm(5);
    for (const SetText& text : {setText(reason, kBody, width),
                                setText(QStringLiteral("SHA-256 ") + hex, kFurniture, width)}) {
        for (const TextLine& line : text.lines) {
            paintMark(std::get<TextLine>(moved(line, {left, top})));
        }
        top += text.height() + 3;
    }
}

} // namespace headcap::app::print
