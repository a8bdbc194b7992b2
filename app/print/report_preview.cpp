#include "app/print/report_preview.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <QWheelEvent>

#include "app/look/palette.h"
#include "app/print/layout/page_setup.h"
#include "app/print/paint.h"

namespace headcap::app::print {

namespace {

constexpr double kAround = 16; // pixels around and between pages
constexpr double kZoomStep = 1.2;
constexpr double kSmallest = 0.4; // pixels a point
constexpr double kLargest = 6;
constexpr double kReadable = 1.1;
constexpr double kShare = 0.6; // of a page, seen at once

} // namespace

ReportPreview::ReportPreview(PhotoLoader& loader, QWidget* parent)
    : QAbstractScrollArea(parent), m_loader(loader) {
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::StrongFocus);
    viewport()->setBackgroundRole(QPalette::Window);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn); // else its coming changes what fits
    verticalScrollBar()->setSingleStep(40);
    connect(&loader, &PhotoLoader::ready, viewport(), qOverload<>(&QWidget::update));
    connect(&loader, &PhotoLoader::failed, viewport(), qOverload<>(&QWidget::update));
    say();
}

void ReportPreview::setPages(Pages pages) {
    m_pages = std::move(pages);
    updateBars();
    say();
    viewport()->update();
}

int ReportPreview::pageCount() const {
    return static_cast<int>(m_pages.pages.size());
}

int ReportPreview::currentPage() const {
    if (pageCount() == 0) {
        return 0;
    }
    const double middle = verticalScrollBar()->value() + viewport()->height() / 3.0;
    return std::clamp(static_cast<int>(middle / pageStep()) + 1, 1, pageCount());
}

void ReportPreview::showPage(int page) {
    verticalScrollBar()->setValue(static_cast<int>((page - 1) * pageStep()));
}

void ReportPreview::showSection(std::size_t index) {
    if (index >= m_pages.entries.size()) {
        return;
    }
    const Entry& entry = m_pages.entries[index];
    const double y = static_cast<double>(entry.page) * pageStep() + entry.top * scale();
    verticalScrollBar()->setValue(static_cast<int>(y));
}

void ReportPreview::zoomIn() {
    setZoom(scale() * kZoomStep);
}

void ReportPreview::zoomOut() {
    setZoom(scale() / kZoomStep);
}

void ReportPreview::fitWidth() {
    setZoom(std::nullopt);
}

void ReportPreview::setZoom(std::optional<double> zoom) {
    const double at = verticalScrollBar()->value() / m_step;
    m_zoom = zoom.has_value() ? std::optional(std::clamp(*zoom, kSmallest, kLargest)) : zoom;
    m_loader.forgetWaiting();
    updateBars();
    verticalScrollBar()->setValue(static_cast<int>(std::lround(at * m_step)));
    viewport()->update();
}

double ReportPreview::scale() const {
    if (m_zoom.has_value() || m_pages.size.isEmpty()) {
        return m_zoom.value_or(1.0);
    }
    // Of a wide window the width alone would leave too little of a page to be seen.
    const double most =
        std::max(kReadable, viewport()->height() / (kShare * m_pages.size.height()));
    const double fits = std::min(most, (viewport()->width() - 2 * kAround) / m_pages.size.width());
    return std::clamp(fits, kSmallest, kLargest);
}

double ReportPreview::pageStep() const {
    return std::max(1.0, m_pages.size.height() * scale() + kAround);
}

QRectF ReportPreview::pageArea(int index) const {
    const QSizeF size = m_pages.size * scale();
    const double free = viewport()->width() - size.width();
    const double x = free > 0 ? free / 2 : kAround - horizontalScrollBar()->value();
    const double y = kAround + index * pageStep() - verticalScrollBar()->value();
    // On whole pixels, so that the edge of the paper is sharp.
    return {std::round(x), std::round(y), size.width(), size.height()};
}

void ReportPreview::updateBars() {
    m_step = pageStep();
    const double height = pageCount() * m_step + kAround;
    const double width = m_pages.size.width() * scale() + 2 * kAround;
    verticalScrollBar()->setPageStep(viewport()->height());
    verticalScrollBar()->setRange(0, std::max(0, static_cast<int>(height) - viewport()->height()));
    horizontalScrollBar()->setPageStep(viewport()->width());
    horizontalScrollBar()->setRange(0, std::max(0, static_cast<int>(width) - viewport()->width()));
}

void ReportPreview::say() {
    m_page = currentPage();
    setAccessibleName(
        m_page == 0 ? tr("Preview of the report")
                    : tr("Preview of the report, page %1 of %2").arg(m_page).arg(pageCount()));
    Q_EMIT currentPageChanged(m_page, pageCount());
}

void ReportPreview::paintEvent(QPaintEvent* event) {
    QPainter painter(viewport());
    painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
    for (int i = 0; i < pageCount(); ++i) {
        const QRectF area = pageArea(i);
        if (!area.intersects(event->rect())) {
            continue;
        }
        painter.fillRect(area, Qt::white);
        painter.save();
        painter.setClipRect(area);
        painter.translate(area.topLeft());
        painter.scale(scale(), scale());
        paintPage(painter, m_pages.pages[static_cast<std::size_t>(i)],
                  [this](QPainter& on, const Picture& picture) { paintPhotograph(on, picture); });
        painter.restore();
    }
    if (hasFocus()) {
        painter.setPen(QPen(coloursFor(palette()).accent, 2));
        painter.drawRect(QRectF(viewport()->rect()).adjusted(1, 1, -1, -1));
    }
}

void ReportPreview::focusInEvent(QFocusEvent* event) {
    QAbstractScrollArea::focusInEvent(event);
    viewport()->update();
}

void ReportPreview::focusOutEvent(QFocusEvent* event) {
    QAbstractScrollArea::focusOutEvent(event);
    viewport()->update();
}

void ReportPreview::paintPhotograph(QPainter& painter, const Picture& picture) {
    if (const auto fault = m_loader.fault(picture.photograph); fault.has_value()) {
        paintAbsence(painter, picture, sentence(*fault));
        return;
    }
    const double edge = std::max(picture.area.width(), picture.area.height()) * scale();
    const QImage image =
        m_loader.find(picture.photograph, static_cast<int>(std::ceil(edge * devicePixelRatioF())));
    if (!image.isNull()) {
        paintPhoto(painter, areaOf(picture, image.size()), image);
        return;
    }
    painter.setPen(QPen(colourOf(Ink::faint), kHair));
    painter.drawRect(picture.area);
}

void ReportPreview::resizeEvent(QResizeEvent* event) {
    QAbstractScrollArea::resizeEvent(event);
    setZoom(m_zoom);
}

void ReportPreview::scrollContentsBy(int dx, int dy) {
    Q_UNUSED(dx)
    Q_UNUSED(dy)
    viewport()->update();
    if (currentPage() != m_page) {
        say();
    }
}

void ReportPreview::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        zoomIn();
        return;
    case Qt::Key_Minus:
        zoomOut();
        return;
    case Qt::Key_0:
        fitWidth();
        return;
    case Qt::Key_Home:
        showPage(1);
        return;
    case Qt::Key_End:
        verticalScrollBar()->setValue(verticalScrollBar()->maximum());
        return;
    default:
        QAbstractScrollArea::keyPressEvent(event);
    }
}

void ReportPreview::wheelEvent(QWheelEvent* event) {
    if (!event->modifiers().testFlag(Qt::ControlModifier)) {
        QAbstractScrollArea::wheelEvent(event);
        return;
    }
    if (event->angleDelta().y() > 0) {
        zoomIn();
    } else if (event->angleDelta().y() < 0) {
        zoomOut();
    }
}

} // namespace headcap::app::print
