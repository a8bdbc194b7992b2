// One station of the sewing line: a knot, the page's name, and what is open on it in words. The
// knot is hollow where nothing is begun, half where it is begun, solid where it is settled.
#pragma once

#include <QAbstractButton>

#include "core/custody/page_state.h"

namespace headcap::app {

class Station : public QAbstractButton {
    Q_OBJECT
public:
    explicit Station(core::Page page, QWidget* parent = nullptr);
    [[nodiscard]] core::Page page() const { return m_state.page; }
    void show(const core::PageState& state);
    using QWidget::show;
    [[nodiscard]] QSize sizeHint() const override;
    // The middle of the knot, in the station.
    [[nodiscard]] QPointF knot() const;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    core::PageState m_state;
};

} // namespace headcap::app
