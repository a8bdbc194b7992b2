// The plan as it is drawn, as high as its width asks.
#pragma once

#include <optional>

#include <QWidget>

#include "app/drawing/cutting_drawing.h"

namespace headcap::app {

class CuttingPlanWidget : public QWidget {
    Q_OBJECT
public:
    explicit CuttingPlanWidget(QWidget* parent = nullptr);
    void show(const core::CutProblem& problem, const core::CutPlan& plan);
    using QWidget::show;

    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    [[nodiscard]] CuttingDrawing drawing() const;
    std::optional<core::CutProblem> m_problem;
    core::CutPlan m_plan;
};

} // namespace headcap::app
