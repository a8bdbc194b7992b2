#include "app/form/growing_text.h"

#include <QTextBlock>
#include <QTextLayout>
#include <QWheelEvent>

#include "app/look/grid.h"

namespace headcap::app {
namespace {

constexpr int kLeastLines = 1;
constexpr int kMargin = 4; // of the document, all round

} // namespace

GrowingText::GrowingText(QWidget* parent) : QPlainTextEdit(parent) {
    setTabChangesFocus(true);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    document()->setDocumentMargin(kMargin);
    setViewportMargins(kGrid - 1, kGrid, kGrid, kGrid);
    viewport()->setAutoFillBackground(false);
    connect(document()->documentLayout(), &QAbstractTextDocumentLayout::documentSizeChanged, this,
            &GrowingText::fit);
    fit();
}

void GrowingText::setLeastHeight(int height) {
    m_least = height;
    fit();
}

void GrowingText::fit() {
    // The layout of plain text gives its height in lines.
    const int lines = std::max(kLeastLines, qRound(document()->size().height()));
    const int height = std::max(std::max(m_least, controlHeight(fontMetrics())),
                                lines * fontMetrics().lineSpacing() + 2 * kMargin + 2 * kGrid + 4);
    if (height != minimumHeight() || height != maximumHeight()) {
        setFixedHeight(height);
        updateGeometry();
    }
}

void GrowingText::resizeEvent(QResizeEvent* event) {
    QPlainTextEdit::resizeEvent(event);
    fit();
}

void GrowingText::changeEvent(QEvent* event) {
    QPlainTextEdit::changeEvent(event);
    if (event->type() == QEvent::FontChange) {
        fit();
    }
}

void GrowingText::wheelEvent(QWheelEvent* event) {
    event->ignore(); // the page scrolls
}

void GrowingText::focusInEvent(QFocusEvent* event) {
    QPlainTextEdit::focusInEvent(event);
    update(); // the line it stands on
    for (QWidget* child : findChildren<QWidget*>(Qt::FindDirectChildrenOnly)) {
        child->update();
    }
}

void GrowingText::focusOutEvent(QFocusEvent* event) {
    QPlainTextEdit::focusOutEvent(event);
    update();
}

} // namespace headcap::app
