// A cutting plan drawn to scale, on screen and on paper alike: each sheet that is cut with its
// grain as fine parallel lines, its pieces by letter with their measures, the cuts numbered in
// order, offcuts dashed, waste hatched. A legend says what each letter is.
#pragma once

#include <QPainter>
#include <QRectF>

#include "app/look/palette.h"
#include "core/cutting/cut_plan.h"

namespace headcap::app {

struct CuttingDrawing {
    QFont words;
    QFont small;
    Colours colours;
    bool isPaper = false; // with boxes to tick beside the cuts

    // How high the drawing of so wide a plan is.
    [[nodiscard]] double height(const core::CutProblem& problem, const core::CutPlan& plan,
                                double width) const;
    void paint(QPainter& painter, const core::CutProblem& problem, const core::CutPlan& plan,
               double width) const;
    // One sheet and its legend on a page of its own, as large as it can be.
    void paintSheet(QPainter& painter, const core::CutProblem& problem, const core::CutPlan& plan,
                    const core::SheetPlace& on, const QRectF& page) const;
};

// The sheets a plan cuts, in order.
[[nodiscard]] std::vector<core::SheetPlace> sheetsCut(const core::CutPlan& plan);
// "a" … "z", "aa" …
[[nodiscard]] QString letterOf(std::size_t piece);
// "242 × 196"
[[nodiscard]] QString sizeWords(core::Length width, core::Length height);

} // namespace headcap::app
