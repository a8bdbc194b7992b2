#include "app/print/labels.h"

#include <algorithm>
#include <array>
#include <utility>
#include <vector>

#include <QCoreApplication>
#include <QPageSize>
#include <QPrinter>
#include <QTextLayout>

#include "app/look/fonts.h"
#include "app/print/qr_code.h"

namespace headcap::app::print {
namespace {

constexpr double kInset = 2; // mm
constexpr double kMmOfPoint = 25.4 / 72;
constexpr double kMmOfInch = 25.4;
constexpr double kSmallLabel = 26; // mm high: below it words are set smaller

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
    if (text.isEmpty()) {
        return {};
    }
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
    const int column = index % columns;
    const int row = index / columns;
    return {left + column * columnStep, top + row * rowStep, width, height};
}

std::span<const LabelSheet> labelSheets() {
    return kSheets;
}

namespace {

// The words of a label as they are set into its room. What must be read whole (number, caution, the
// first line) is set smaller before any of it is cut.
class LabelSetting {
public:
    LabelSetting(const LabelWords& label, const QSizeF& room, bool isSmall)
        : m_number(isSmall ? 10 : 14), m_title(isSmall ? 6 : 8), m_small(isSmall ? 5.5 : 7) {
        for (const double by : {1.0, 0.9, 0.8}) {
            set(label, room, by);
            if (m_isWhole) {
                return;
            }
        }
    }
    [[nodiscard]] bool isWhole() const { return m_isWhole; }
    void paint(QPainter& painter, QRectF words) const {
        for (const Block& block : m_blocks) {
            words.setTop(words.top() +
                         paintLines(painter, block.face, block.points, block.lines, words));
        }
    }

private:
    struct Block {
        Face face;
        double points;
        QStringList lines;
    };

    void set(const LabelWords& label, const QSizeF& room, double by) {
        m_blocks.clear();
        double left = room.height();
        m_isWhole = true;
        const auto add = [&](Face face, double points, const QString& text, qsizetype most) {
            const auto stand = static_cast<qsizetype>((left + 0.01) / heightOf(points, 1));
            QStringList lines = inLines(face, points, text, room.width(),
                                        std::min(most, std::max<qsizetype>(1, stand)));
            left -= heightOf(points, lines.size());
            const bool isSet = text.isEmpty() || (stand > 0 && !isCut(lines));
            m_blocks.push_back({face, points, std::move(lines)});
            return isSet;
        };
        m_isWhole = add(Face::strong, m_number * by, label.number, 1) && m_isWhole;
        // A caution is worth more than the further lines of a title.
        const QStringList caution =
            inLines(Face::smallStrong, m_small * by, label.caution, room.width(), kAny);
        const QString first = label.lines.isEmpty() ? QString{} : label.lines.front();
        const auto below = heightOf(
            m_small * by,
            caution.size() + inLines(Face::small, m_small * by, first, room.width(), kAny).size());
        const auto titleLines = static_cast<qsizetype>((left - below) / heightOf(m_title * by, 1));
        add(Face::strong, m_title * by, label.title, std::clamp<qsizetype>(titleLines, 1, 2));
        m_isWhole = add(Face::smallStrong, m_small * by, label.caution, kAny) && m_isWhole;
        for (const QString& line : label.lines) {
            const bool isSet = add(Face::small, m_small * by, line, 2);
            m_isWhole = m_isWhole && (isSet || line != first);
        }
    }

    static bool isCut(const QStringList& lines) {
        return !lines.isEmpty() && lines.back().endsWith(QChar(0x2026));
    }

    static constexpr qsizetype kAny = 40;
    double m_number, m_title, m_small; // points
    std::vector<Block> m_blocks;
    bool m_isWhole = false;
};

struct LabelRooms {
    QRectF code, words;
};

LabelRooms roomsOf(const QRectF& place) {
    const QRectF inner = place.adjusted(kInset, kInset, -kInset, -kInset);
    // Large enough for a hand scanner; on small labels the words need the room.
    const double share = place.height() < kSmallLabel ? 0.34 : 0.42;
    const double side = std::min(inner.height(), inner.width() * share);
    return {{inner.topLeft(), QSizeF{side, side}},
            {inner.left() + side + 1, inner.top(), inner.width() - side - 1, inner.height()}};
}

} // namespace

bool standsWhole(const LabelWords& label, const LabelSheet& sheet) {
    const QRectF words = roomsOf(sheet.place(0)).words;
    return LabelSetting{label, words.size(), sheet.height < kSmallLabel}.isWhole();
}

void paintLabel(QPainter& painter, const LabelWords& label, const QRectF& place) {
    const LabelRooms rooms = roomsOf(place);
    paintQr(painter, qrCode(label.number.toStdString()), rooms.code);
    painter.setPen(Qt::black);
    LabelSetting{label, rooms.words.size(), place.height() < kSmallLabel}.paint(painter,
                                                                                rooms.words);
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
    // A hand's breadth across and down: a printer may stretch either.
    const double left = (sheet.pageWidth - kRule) / 2;
    const double top = (sheet.pageHeight - kRule) / 2;
    painter.drawLine(QPointF{left, top}, QPointF{left + kRule, top});
    painter.drawLine(QPointF{left, top}, QPointF{left, top + kRule});
    for (int mm = 0; mm <= 100; mm += 10) {
        painter.drawLine(QPointF{left + mm, top - kTick}, QPointF{left + mm, top + kTick});
        painter.drawLine(QPointF{left - kTick, top + mm}, QPointF{left + kTick, top + mm});
    }
    const QString said =
        QCoreApplication::translate("Labels",
                                    "%1. Both rules are 100 mm long where it is printed at 100 %, "
                                    "not fitted to the page.")
            .arg(QString::fromUtf8(sheet.name));
    const QStringList lines = inLines(Face::small, 9, said, kRule, 4);
    const QRectF words{left + kTick + 2, top + kTick + 1, kRule, heightOf(9, lines.size()) + 1};
    painter.fillRect(words, Qt::white);
    paintLines(painter, Face::small, 9, lines, words);
}

namespace {

// The paper is that of the labels, whatever the printer usually holds.
void setPaper(QPrinter& printer, const LabelSheet& sheet) {
    printer.setPageSize(
        QPageSize{QSizeF{sheet.pageWidth, sheet.pageHeight}, QPageSize::Millimeter});
    printer.setPageOrientation(QPageLayout::Portrait);
    printer.setFullPage(true);
}

} // namespace

void printTestPage(QPrinter& printer, const LabelSheet& sheet) {
    setPaper(printer, sheet);
    QPainter painter{&printer};
    const double scale = printer.resolution() / kMmOfInch;
    painter.scale(scale, scale);
    paintTestPage(painter, sheet);
}

void printLabels(QPrinter& printer, const LabelSheet& sheet, std::span<const LabelWords> labels,
                 int from) {
    setPaper(printer, sheet);
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
