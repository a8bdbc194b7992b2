#include "app/drawing/cut_list.h"

#include <algorithm>
#include <cmath>

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>

#include "app/drawing/sheet_painter.h"
#include "core/cutting/cut_steps.h"

namespace headcap::app {
namespace {

constexpr double kBetween = 10; // within a row
constexpr double kTick = 10;    // a box to tick
constexpr double kApart = 28;   // two columns

QString tr(const char* text) {
    return QCoreApplication::translate("CuttingDrawing", text);
}

} // namespace

CutList::CutList(const core::CutProblem& problem, const core::CutPlan& plan,
                 const core::SheetPlace& on, const QFont& font, bool hasTicks)
    : m_font(font), m_tick(hasTicks ? kTick + kBetween : 0) {
    const QFontMetricsF metrics{font};
    for (const core::CutStep& step : core::cutSteps(problem, plan, on)) {
        const bool isOne = step.times() == 1;
        const QString from =
            step.axis == core::CutAxis::x ? tr("from the left") : tr("from the top");
        m_rows.push_back({isOne ? QString::number(step.first)
                                : QStringLiteral("%1–%2").arg(step.first).arg(step.last),
                          tr("%1 mm").arg(mmWords(step.measure)),
                          isOne ? from : tr("%1, %2 times").arg(from).arg(step.times())});
        m_order = std::max(m_order, metrics.horizontalAdvance(m_rows.back().order));
        m_at = std::max(m_at, metrics.horizontalAdvance(m_rows.back().at));
        m_from = std::max(m_from, metrics.horizontalAdvance(m_rows.back().from));
    }
}

double CutList::columnWidth() const {
    return std::ceil(m_tick + m_order + kBetween + m_at + kBetween + m_from) + 1;
}

std::size_t CutList::rowsAColumn(double width, double free) const {
    const auto columns = std::max<std::size_t>(
        1, static_cast<std::size_t>((width + kApart) / (columnWidth() + kApart)));
    const std::size_t least = (m_rows.size() + columns - 1) / columns;
    const auto stand = static_cast<std::size_t>(std::max(0.0, free - kRow) / kRow);
    return std::max(least, std::min(m_rows.size(), stand));
}

double CutList::height(double width, double free) const {
    return m_rows.empty() ? 0 : static_cast<double>(rowsAColumn(width, free) + 1) * kRow;
}

void CutList::paint(QPainter& painter, const Colours& colours, const QRectF& area) const {
    if (m_rows.empty()) {
        return;
    }
    const std::size_t rows = rowsAColumn(area.width(), area.height());
    painter.setFont(m_font);
    painter.setPen(colours.quiet);
    painter.drawText(QRectF{area.left(), area.top(), area.width(), kRow},
                     Qt::AlignLeft | Qt::AlignVCenter, tr("Measured on the part that is cut:"));
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        const std::size_t column = i / rows;
        double x = area.left() + static_cast<double>(column) * (columnWidth() + kApart);
        const double y = area.top() + static_cast<double>(i % rows + 1) * kRow;
        const auto set = [&](const QString& words, double wide, Qt::AlignmentFlag side,
                             const QColor& ink) {
            painter.setPen(ink);
            painter.drawText(QRectF{x, y, wide, kRow},
                             static_cast<int>(side) | static_cast<int>(Qt::AlignVCenter), words);
            x += wide + kBetween;
        };
        if (m_tick > 0) {
            painter.setPen(QPen{colours.ink, 0.8});
            painter.setBrush(Qt::NoBrush);
            painter.drawRect(QRectF{x, y + (kRow - kTick) / 2, kTick, kTick});
            x += m_tick;
        }
        set(m_rows[i].order, m_order, Qt::AlignRight, colours.accent);
        set(m_rows[i].at, m_at, Qt::AlignRight, colours.ink);
        set(m_rows[i].from, m_from + 1, Qt::AlignLeft, colours.quiet);
    }
}

} // namespace headcap::app
