// One sheet of a cutting plan, drawn to scale: pieces, offcuts and waste, the grain as fine lines,
// the cuts numbered in their order.
#pragma once

#include <vector>

#include <QPainter>

#include "app/drawing/cutting_drawing.h"

namespace headcap::app {

[[nodiscard]] double mm(core::Length length);
// To the tenth of a millimetre, as a rule is read.
[[nodiscard]] QString mmWords(core::Length length);

// Where a sheet is drawn, and how large a millimetre is.
struct Frame {
    QPointF at;
    double scale;
    [[nodiscard]] QRectF of(const core::CutRect& r) const {
        return {at.x() + mm(r.x) * scale, at.y() + mm(r.y) * scale, mm(r.width) * scale,
                mm(r.height) * scale};
    }
    [[nodiscard]] QPointF of(core::Length x, core::Length y) const {
        return {at.x() + mm(x) * scale, at.y() + mm(y) * scale};
    }
};

class SheetPainter {
public:
    SheetPainter(QPainter& painter, const CuttingDrawing& drawing, const core::CutProblem& problem,
                 const core::CutPlan& plan, const core::SheetPlace& on, const Frame& frame)
        : m_painter(painter), m_drawing(drawing), m_problem(problem), m_plan(plan), m_on(on),
          m_sheet(problem.sheets[on.sheet]), m_frame(frame) {}

    void paint();

private:
    void paintGrain(const QRectF& rect);
    void paintOffcut(const core::PlannedOffcut& offcut);
    void paintPiece(const core::PlacedPiece& placed);
    // As many of the lines as have room, the first above all.
    void paintWords(const QRectF& rect, const QStringList& lines, const QColor& ink);
    void paintCut(const core::SheetCut& cut);
    [[nodiscard]] QPointF endOf(const core::SheetCut& cut, core::Length along) const;
    void paintMarks();

    QPainter& m_painter;
    const CuttingDrawing& m_drawing;
    const core::CutProblem& m_problem;
    const core::CutPlan& m_plan;
    core::SheetPlace m_on;
    const core::StockSheet& m_sheet;
    Frame m_frame;
    std::vector<QRectF> m_written; // words on pieces and offcuts
};

} // namespace headcap::app
