#include "app/shell/sewing_line.h"

#include <QPainter>
#include <QPainterPath>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/palette.h"
#include "app/shell/station.h"

namespace headcap::app {

SewingLine::SewingLine(QWidget* parent) : QWidget(parent) {
    setAccessibleName(tr("Pages of the job"));
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, kGap, 0, kGap);
    down->setSpacing(0);
    for (std::size_t i = 0; i < m_stations.size(); ++i) {
        const auto page = static_cast<core::Page>(i);
        m_stations[i] = new Station(page, this);
        down->addWidget(m_stations[i]);
        // By key or click; checking alone, by arrows, too.
        connect(m_stations[i], &QAbstractButton::toggled, this, [this, page](bool isOn) {
            if (isOn) {
                update();
                Q_EMIT chosen(page);
            }
        });
    }
    down->addStretch(1);
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Preferred);
}

void SewingLine::show(std::span<const core::PageState> states) {
    for (const core::PageState& state : states) {
        m_stations[static_cast<std::size_t>(state.page)]->show(state);
    }
}

void SewingLine::setCurrent(core::Page page) {
    auto* station = m_stations[static_cast<std::size_t>(page)];
    const QSignalBlocker quiet{station};
    station->setChecked(true);
    update();
}

void SewingLine::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(coloursFor(palette()).quiet, 1.6));
    for (std::size_t i = 0; i + 1 < m_stations.size(); ++i) {
        const QPointF from = m_stations[i]->geometry().topLeft() + m_stations[i]->knot();
        const QPointF to = m_stations[i + 1]->geometry().topLeft() + m_stations[i + 1]->knot();
        // A thread is never quite straight.
        const qreal third = (to.y() - from.y()) / 3;
        QPainterPath thread;
        thread.moveTo(from);
        thread.cubicTo(from.x() + 4, from.y() + third, to.x() - 5, to.y() - third, to.x(), to.y());
        painter.drawPath(thread);
    }
}

} // namespace headcap::app
