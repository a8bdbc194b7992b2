#include "app/stock/cutting_plan_widget.h"

#include <cmath>

#include <QPainter>

#include "app/look/fonts.h"

namespace headcap::app {

CuttingPlanWidget::CuttingPlanWidget(QWidget* parent) : QWidget(parent) {
    QSizePolicy policy{QSizePolicy::Preferred, QSizePolicy::Fixed};
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    setAccessibleName(tr("Cutting plan"));
}

void CuttingPlanWidget::show(const core::CutProblem& problem, const core::CutPlan& plan) {
    m_problem = problem;
    m_plan = plan;
    setFixedHeight(heightForWidth(width()));
    update();
}

CuttingDrawing CuttingPlanWidget::drawing() const {
    return {faceFont(Face::strong), faceFont(Face::small), coloursFor(palette())};
}

int CuttingPlanWidget::heightForWidth(int width) const {
    return m_problem ? static_cast<int>(
                           std::ceil(drawing().height(*m_problem, m_plan, std::max(width, 200))))
                     : 0;
}

QSize CuttingPlanWidget::sizeHint() const {
    return {width(), heightForWidth(width())};
}

void CuttingPlanWidget::resizeEvent(QResizeEvent*) {
    setFixedHeight(heightForWidth(width()));
}

void CuttingPlanWidget::paintEvent(QPaintEvent*) {
    if (m_problem) {
        QPainter painter{this};
        drawing().paint(painter, *m_problem, m_plan, width());
    }
}

} // namespace headcap::app
