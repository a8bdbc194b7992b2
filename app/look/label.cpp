#include "app/look/label.h"

#include <algorithm>

#include <QApplication>
#include <QEvent>
#include <QPainter>

#include "app/look/grid.h"

namespace headcap::app {

Label::Label(Face face, Ink ink, const QString& text, QWidget* parent)
    : QLabel(text, parent), m_face(face), m_ink(ink) {
    setTextFormat(Qt::PlainText);
    dress();
}

void Label::setInk(Ink ink) {
    m_ink = ink;
    dress();
}

void Label::setRunning() {
    m_isRunning = true;
    setWordWrap(true);
    dress();
}

int Label::heightForWidth(int width) const {
    width = std::min(width, maximumWidth());
    if (m_measured.width != width || m_measured.isWrapped != wordWrap() ||
        m_measured.text != text()) {
        m_measured = {text(), wordWrap(), width, QLabel::heightForWidth(width)};
    }
    return m_measured.height;
}

void Label::dress() {
    setFont(faceFont(m_face));
    if (m_isRunning) {
        setMaximumWidth(app::lineWidth(fontMetrics()));
    }
    QPalette own = palette();
    const QColor colour = colourOf(coloursFor(QApplication::palette()), m_ink);
    if (own.color(QPalette::WindowText) != colour) {
        own.setColor(QPalette::WindowText, colour);
        setPalette(own);
    }
}

void Label::changeEvent(QEvent* event) {
    m_measured = {};
    QLabel::changeEvent(event);
    switch (event->type()) {
    case QEvent::ApplicationFontChange:
    case QEvent::ApplicationPaletteChange:
    case QEvent::PaletteChange: // of what it stands in
    case QEvent::StyleChange:
        dress();
        break;
    default:
        break;
    }
}

HairRule::HairRule(QWidget* parent) : QWidget(parent) {
    setFixedHeight(1);
}

void HairRule::paintEvent(QPaintEvent*) {
    QPainter{this}.fillRect(rect(), coloursFor(palette()).rule);
}

} // namespace headcap::app
