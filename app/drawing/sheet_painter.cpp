#include "app/drawing/sheet_painter.h"

#include <algorithm>
#include <cmath>

#include <QCoreApplication>

#include "app/drawing/cut_marks.h"
#include "app/session/words.h"
#include "core/values/decimal.h"

namespace headcap::app {
namespace {

constexpr double kGrainStep = 9;

QString tr(const char* text) {
    return QCoreApplication::translate("CuttingDrawing", text);
}

core::CutRect wholeOf(const core::StockSheet& sheet) {
    return {{}, {}, sheet.width, sheet.height};
}

} // namespace

double mm(core::Length length) {
    return static_cast<double>(length.count()) / 1e6;
}

QString mmWords(core::Length length) {
    return fromCore(core::decimalText((length.count() + 50'000) / 100'000, 1));
}

void SheetPainter::paint() {
    const QRectF whole = m_frame.of(wholeOf(m_sheet));
    m_painter.fillRect(whole, QBrush{m_drawing.colours.hatch, Qt::BDiagPattern});
    for (const core::PlannedOffcut& offcut : m_plan.offcuts) {
        if (offcut.on == m_on) {
            paintOffcut(offcut);
        }
    }
    for (const core::PlacedPiece& placed : m_plan.placed) {
        if (placed.on == m_on) {
            paintPiece(placed);
        }
    }
    m_painter.setPen(QPen{m_drawing.colours.ink, 1.5});
    m_painter.setBrush(Qt::NoBrush);
    m_painter.drawRect(whole);
    for (const core::SheetCut& cut : m_plan.cuts) {
        if (cut.on == m_on) {
            paintCut(cut);
        }
    }
    paintMarks();
}

void SheetPainter::paintGrain(const QRectF& rect) {
    if (m_sheet.grain == core::GrainWay::none) {
        return;
    }
    m_painter.setPen(QPen{m_drawing.colours.rule, 1});
    const bool isAlongWidth = m_sheet.grain == core::GrainWay::alongWidth;
    // Counted from the sheet's own corner, so that the lines run on from piece to piece.
    const double from = isAlongWidth ? m_frame.at.y() : m_frame.at.x();
    const double first = isAlongWidth ? rect.top() : rect.left();
    const double last = isAlongWidth ? rect.bottom() : rect.right();
    for (double at = from + std::ceil((first - from) / kGrainStep) * kGrainStep; at < last;
         at += kGrainStep) {
        if (isAlongWidth) {
            m_painter.drawLine(QPointF{rect.left(), at}, QPointF{rect.right(), at});
        } else {
            m_painter.drawLine(QPointF{at, rect.top()}, QPointF{at, rect.bottom()});
        }
    }
}

void SheetPainter::paintOffcut(const core::PlannedOffcut& offcut) {
    const QRectF rect = m_frame.of(offcut.at);
    m_painter.fillRect(rect, m_drawing.colours.paper);
    paintGrain(rect);
    m_painter.setPen(QPen{m_drawing.colours.settled, 1, Qt::DashLine});
    m_painter.setBrush(Qt::NoBrush);
    m_painter.drawRect(rect);
    paintWords(rect, {tr("offcut"), sizeWords(offcut.at.width, offcut.at.height)},
               m_drawing.colours.settled);
}

void SheetPainter::paintPiece(const core::PlacedPiece& placed) {
    const QRectF rect = m_frame.of(placed.at);
    m_painter.fillRect(rect, m_drawing.colours.raised);
    paintGrain(rect);
    m_painter.setPen(QPen{m_drawing.colours.ink, 1});
    m_painter.setBrush(Qt::NoBrush);
    m_painter.drawRect(rect);
    paintWords(rect,
               {letterOf(placed.piece), sizeWords(placed.at.width, placed.at.height),
                fromCore(m_problem.pieces[placed.piece].id)},
               m_drawing.colours.ink);
}

void SheetPainter::paintWords(const QRectF& rect, const QStringList& lines, const QColor& ink) {
    const QFontMetricsF metrics{m_drawing.small};
    QStringList shown;
    for (const QString& line : lines) {
        const double edge = shown.isEmpty() ? 1 : 4; // a letter stands where little else has room
        if (metrics.height() * static_cast<double>(shown.size() + 1) <= rect.height() - edge &&
            metrics.horizontalAdvance(line) <= rect.width() - 2 * edge) {
            shown << line;
        }
    }
    if (shown.isEmpty()) {
        return;
    }
    const double tall = metrics.height() * static_cast<double>(shown.size());
    double wide = 0;
    for (const QString& line : shown) {
        wide = std::max(wide, metrics.horizontalAdvance(line));
    }
    const QRectF box{rect.center().x() - wide / 2 - 3, rect.center().y() - tall / 2, wide + 6,
                     tall};
    m_written.push_back(box);
    m_painter.fillRect(box, m_drawing.colours.raised);
    m_painter.setPen(ink);
    m_painter.setFont(m_drawing.small);
    m_painter.drawText(box, Qt::AlignCenter, shown.join(QLatin1Char('\n')));
}

void SheetPainter::paintCut(const core::SheetCut& cut) {
    m_painter.setPen(QPen{m_drawing.colours.accent, 2});
    m_painter.drawLine(endOf(cut, cut.from), endOf(cut, cut.to));
}

QPointF SheetPainter::endOf(const core::SheetCut& cut, core::Length along) const {
    return cut.axis == core::CutAxis::x ? m_frame.of(cut.at, along) : m_frame.of(along, cut.at);
}

void SheetPainter::paintMarks() {
    std::vector<core::SheetCut> cuts;
    for (const core::SheetCut& cut : m_plan.cuts) {
        if (cut.on == m_on) {
            cuts.push_back(cut);
        }
    }
    const CutMarks marks{m_sheet, std::move(cuts), core::cutSteps(m_problem, m_plan, m_on), m_frame,
                         m_drawing.small};
    const auto placed = marks.placed(m_written);
    m_painter.setPen(QPen{m_drawing.colours.accent, 1});
    for (const CutMark& mark : placed) {
        for (const QLineF& line : mark.lines) {
            m_painter.drawLine(line);
        }
    }
    m_painter.setFont(m_drawing.small);
    for (const CutMark& mark : placed) {
        const double round = mark.box.height() / 2;
        m_painter.setPen(QPen{m_drawing.colours.accent, 1.2});
        m_painter.setBrush(m_drawing.colours.paper);
        m_painter.drawRoundedRect(mark.box, round, round);
        m_painter.setPen(m_drawing.colours.accent);
        m_painter.drawText(mark.box, Qt::AlignCenter, mark.words);
    }
}

} // namespace headcap::app
