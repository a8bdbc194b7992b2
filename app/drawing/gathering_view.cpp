#include "app/drawing/gathering_view.h"

#include <algorithm>

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include "app/drawing/gathering_drawing.h"
#include "app/look/fonts.h"
#include "app/look/grid.h"
#include "app/session/words.h"

namespace headcap::app {
namespace {

constexpr int kStation = 48; // width of a gathering in the row
constexpr int kDrawing = 232;

} // namespace

GatheringView::GatheringView(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Gatherings"));
    QSizePolicy policy{QSizePolicy::Preferred, QSizePolicy::Preferred};
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void GatheringView::setPictures(std::vector<core::PicturedGathering> pictures, bool isGoneThrough) {
    m_isGoneThrough = isGoneThrough;
    const std::string looked =
        m_current < m_pictures.size() ? m_pictures[m_current].signature : std::string{};
    m_pictures = std::move(pictures);
    const auto named = std::find_if(m_pictures.begin(), m_pictures.end(),
                                    [&](const auto& p) { return p.signature == looked; });
    const auto open = std::find_if(m_pictures.begin(), m_pictures.end(),
                                   [](const auto& p) { return !p.isWhole(); });
    const auto chosen = !looked.empty() && named != m_pictures.end() ? named
                        : open != m_pictures.end()                   ? open
                                                                     : m_pictures.begin();
    updateGeometry();
    setCurrent(static_cast<std::size_t>(chosen - m_pictures.begin()));
}

void GatheringView::setCurrent(std::size_t index) {
    m_current = index;
    if (index < m_pictures.size()) {
        setAccessibleDescription(describe(m_pictures[index]));
    }
    update();
}

int GatheringView::perRow(int width) const {
    return std::max(1, width / kStation);
}

int GatheringView::rowHeight() const {
    return QFontMetrics{faceFont(Face::formula)}.height() + 5 * kGrid;
}

QSize GatheringView::sizeHint() const {
    return {12 * kStation, heightForWidth(12 * kStation)};
}

int GatheringView::heightForWidth(int width) const {
    const int count = static_cast<int>(m_pictures.size());
    const int rows = (count + perRow(width) - 1) / perRow(width);
    return count == 0 ? 0 : rows * rowHeight() + kSpace + kDrawing;
}

QRect GatheringView::stationOf(std::size_t index) const {
    const int row = static_cast<int>(index) / perRow(width());
    const int column = static_cast<int>(index) % perRow(width());
    return {column * kStation, row * rowHeight(), kStation, rowHeight()};
}

void GatheringView::paintStation(QPainter& painter, std::size_t index) const {
    const Colours& colours = coloursFor(palette());
    const core::PicturedGathering& picture = m_pictures[index];
    const QRect at = stationOf(index);
    const bool isCurrent = index == m_current;
    QFont font = faceFont(Face::formula);
    font.setBold(isCurrent);
    painter.setFont(font);
    painter.setPen(isCurrent ? colours.accent : colours.ink);
    painter.drawText(at.adjusted(0, 0, 0, -4 * kGrid), Qt::AlignCenter,
                     fromCore(picture.signature));
    // Under it: a dot where it is whole, hollow where nobody has looked yet, a stroke where a leaf
    // is not as it should be.
    const QPointF foot{at.center().x() + 0.5, at.bottom() - 2.5 * kGrid};
    if (picture.isWhole()) {
        painter.setPen(m_isGoneThrough ? QPen{Qt::NoPen} : QPen{colours.quiet, 1.2});
        painter.setBrush(m_isGoneThrough ? QBrush{colours.settled} : QBrush{Qt::NoBrush});
        painter.drawEllipse(foot, 2.5, 2.5);
    } else {
        painter.setPen(QPen{colours.must, 2});
        painter.drawLine(foot + QPointF{0, -5}, foot + QPointF{0, 4});
    }
    if (isCurrent) {
        painter.setPen(QPen{colours.accent, hasFocus() ? 3.0 : 1.5});
        painter.drawLine(QPointF(at.left() + 10, at.bottom() - 2),
                         QPointF(at.right() - 10, at.bottom() - 2));
    }
}

void GatheringView::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    for (std::size_t i = 0; i < m_pictures.size(); ++i) {
        paintStation(painter, i);
    }
    if (m_current >= m_pictures.size()) {
        return;
    }
    const QRectF area{0.0, static_cast<double>(height() - kDrawing), static_cast<double>(width()),
                      static_cast<double>(kDrawing)};
    drawGathering(painter, area, m_pictures[m_current],
                  {.colours = coloursFor(palette()),
                   .refs = faceFont(Face::formula),
                   .words = faceFont(Face::small)});
}

void GatheringView::keyPressEvent(QKeyEvent* event) {
    const std::size_t last = m_pictures.empty() ? 0 : m_pictures.size() - 1;
    if (event->key() == Qt::Key_Left && m_current > 0) {
        setCurrent(m_current - 1);
    } else if (event->key() == Qt::Key_Right && m_current < last) {
        setCurrent(m_current + 1);
    } else if (event->key() == Qt::Key_Home) {
        setCurrent(0);
    } else if (event->key() == Qt::Key_End) {
        setCurrent(last);
    } else {
        QWidget::keyPressEvent(event);
    }
}

void GatheringView::mousePressEvent(QMouseEvent* event) {
    for (std::size_t i = 0; i < m_pictures.size(); ++i) {
        if (stationOf(i).contains(event->pos())) {
            setCurrent(i);
        }
    }
}

} // namespace headcap::app
