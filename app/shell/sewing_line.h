// The left edge of a job: a vertical thread with a station for each page, in the order of the
// work. The arrows go up and down it.
#pragma once

#include <array>
#include <span>

#include <QWidget>

#include "core/custody/page_state.h"

namespace headcap::app {

class Station;

class SewingLine : public QWidget {
    Q_OBJECT
public:
    explicit SewingLine(QWidget* parent = nullptr);
    void show(std::span<const core::PageState> states);
    using QWidget::show;
    void setCurrent(core::Page page);

Q_SIGNALS:
    void chosen(headcap::core::Page page);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::array<Station*, 8> m_stations{};
};

} // namespace headcap::app
