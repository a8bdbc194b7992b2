// Where the numbers of a sheet's cuts stand: outside the sheet where a cut reaches its edge, else
// on the cut. Equal cuts one after the other have one number and a bracket over them. No number
// lies over another, or over what is written on a piece; one that had to move aside has a leader.
#pragma once

#include <vector>

#include <QFontMetricsF>
#include <QLineF>
#include <QRectF>
#include <QString>

#include "app/drawing/sheet_painter.h"
#include "core/cutting/cut_steps.h"

namespace headcap::app {

struct CutMark {
    QString words; // "3", "8–12"
    QRectF box;
    std::vector<QLineF> lines; // bracket, ticks, leader
};

class CutMarks {
public:
    // What the numbers outside take above and below a sheet, and beside it in a whole plan.
    static constexpr double kRoom = 28;
    [[nodiscard]] static double roomBeside(const core::CutProblem& problem,
                                           const core::CutPlan& plan, const QFont& font);

    CutMarks(const core::StockSheet& sheet, std::vector<core::SheetCut> cuts,
             std::vector<core::CutStep> steps, const Frame& frame, const QFont& font);
    // Keeps clear of these.
    [[nodiscard]] std::vector<CutMark> placed(std::vector<QRectF> taken) const;

private:
    enum class Side { before, after, inside }; // of the sheet: top or left, bottom or right

    [[nodiscard]] const core::SheetCut& cut(int order) const {
        return m_cuts[static_cast<std::size_t>(order) - 1];
    }
    [[nodiscard]] Side sideOf(const core::CutStep& step) const;
    [[nodiscard]] QSizeF sizeOf(const QString& words) const;
    [[nodiscard]] QLineF lineOf(const core::SheetCut& cut) const;
    void placeOutside(core::CutAxis axis, Side side, std::vector<CutMark>& marks) const;
    [[nodiscard]] CutMark inside(const core::CutStep& step, const std::vector<QRectF>& taken) const;
    [[nodiscard]] bool isFree(const QRectF& box, const std::vector<QRectF>& taken,
                              const core::CutStep* step) const;

    std::vector<core::SheetCut> m_cuts;
    std::vector<core::CutStep> m_steps;
    Frame m_frame;
    QRectF m_whole;
    QFontMetricsF m_metrics;
};

} // namespace headcap::app
