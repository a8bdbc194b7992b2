// The pages of a report on screen, one below the other, as they will be printed: white in either
// palette. Fits the width, and in a wide window most of a page, until it is zoomed. Photographs
// come in as they are read.
#pragma once

#include <memory>
#include <optional>

#include <QAbstractScrollArea>

#include "app/print/layout/marks.h"
#include "app/print/photo_loader.h"

namespace headcap::app::print {

class ReportPreview : public QAbstractScrollArea {
    Q_OBJECT

public:
    // The loader must live as long as the preview.
    explicit ReportPreview(PhotoLoader& loader, QWidget* parent = nullptr);

    // Laid out elsewhere (layout.h); stays where it was being read.
    void setPages(Pages pages);
    [[nodiscard]] int pageCount() const;
    [[nodiscard]] int currentPage() const; // from 1; 0 where there is none
    void showPage(int page);
    // Scrolls to a section by its place among the document's sections.
    void showSection(std::size_t index);

    void zoomIn();
    void zoomOut();
    void fitWidth();

Q_SIGNALS:
    void currentPageChanged(int page, int pages);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void scrollContentsBy(int dx, int dy) override;

private:
    void updateBars();
    void setZoom(std::optional<double> zoom);
    void say();
    [[nodiscard]] double scale() const; // pixels a point
    [[nodiscard]] double pageStep() const;
    [[nodiscard]] QRectF pageArea(int index) const; // in the viewport
    void paintPhotograph(QPainter& painter, const Picture& picture);

    PhotoLoader& m_loader;
    Pages m_pages;
    std::optional<double> m_zoom; // pixels a point; none: fits the width
    double m_step = 1;            // the page step that the scroll bar's value was made with
    int m_page = 0;
};

} // namespace headcap::app::print
