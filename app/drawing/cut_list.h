// The cuts of one sheet in their order, in columns as on a bench card: number, what is set at the
// gauge and how often, from which edge of the part that is cut.
#pragma once

#include <vector>

#include <QFont>
#include <QRectF>
#include <QString>

#include "app/look/palette.h"
#include "core/cutting/cut_plan.h"

class QPainter;

namespace headcap::app {

class CutList {
public:
    static constexpr double kRow = 20;

    CutList(const core::CutProblem& problem, const core::CutPlan& plan, const core::SheetPlace& on,
            const QFont& font, bool hasTicks);

    [[nodiscard]] double columnWidth() const;
    // In as few columns as stand in `free`, and in as many as its width has where they do not.
    [[nodiscard]] double height(double width, double free) const;
    void paint(QPainter& painter, const Colours& colours, const QRectF& area) const;

private:
    struct Row {
        QString order, at, from;
    };
    [[nodiscard]] std::size_t rowsAColumn(double width, double free) const;

    QFont m_font;
    std::vector<Row> m_rows;
    double m_tick;                            // of a box to tick, on paper
    double m_order = 0, m_at = 0, m_from = 0; // widths
};

} // namespace headcap::app
