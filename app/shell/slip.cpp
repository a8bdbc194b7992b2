#include "app/shell/slip.h"

#include <QKeyEvent>
#include <QPainter>

#include "app/look/fonts.h"
#include "app/look/grid.h"
#include "app/session/words.h"
#include "core/values/fold.h"

namespace headcap::app {
namespace {

constexpr int kPad = 3 * kGrid;
constexpr int kNumberX = 5 * kGrid;
constexpr int kBookX = 23 * kGrid;
constexpr int kRight = 4 * kGrid;

} // namespace

Slip::Slip(SlipWords words, QWidget* parent) : QAbstractButton(parent), m_words(std::move(words)) {
    m_folded = core::foldForSearch(toCore(m_words.number + QLatin1Char(' ') + m_words.book +
                                          QLatin1Char(' ') + m_words.owner + QLatin1Char(' ') +
                                          m_words.next));
    QStringList said{m_words.number, m_words.book, m_words.owner, m_words.next, m_words.due};
    said.removeAll({});
    setAccessibleName(said.join(QStringLiteral(", ")));
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    setAttribute(Qt::WA_Hover);
    setToolTip(tr("Opens the job (Enter)"));
    // A fixed height would hold a slip of two lines to the height of one.
    QSizePolicy policy{QSizePolicy::Expanding, QSizePolicy::Minimum};
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

bool Slip::holds(const std::string& folded) const {
    return m_folded.find(folded) != std::string::npos;
}

QSize Slip::sizeHint() const {
    constexpr int kWide = 360;
    return {kWide, measures().fixedHeight + measures().next.height()};
}

const Slip::Measures& Slip::measures() const {
    if (!m_measures) {
        const QFontMetrics strong{faceFont(Face::smallStrong)};
        const QRect endless{0, 0, QWIDGETSIZE_MAX, QWIDGETSIZE_MAX};
        m_measures = {.wordsX = std::max(
                          kBookX, kNumberX + strong.horizontalAdvance(m_words.number) + kSpace),
                      .fixedHeight = kPad + QFontMetrics{faceFont(Face::slip)}.height() +
                                     QFontMetrics{faceFont(Face::small)}.height() + kPad,
                      .next = strong.boundingRect(endless, Qt::TextWordWrap, m_words.next).size()};
    }
    return *m_measures;
}

int Slip::heightForWidth(int width) const {
    const Measures& m = measures();
    if (m.next.width() <= width - kRight - m.wordsX) {
        return m.fixedHeight + m.next.height();
    }
    if (m_wrapped.width() != width) {
        m_wrapped = {width, m.fixedHeight + nextRect(0, width).height()};
    }
    return m_wrapped.height();
}

void Slip::changeEvent(QEvent* event) {
    m_measures.reset();
    m_wrapped = {-1, -1};
    QAbstractButton::changeEvent(event);
}

// The next thing to do is never cut: it takes the lines it needs.
QRect Slip::nextRect(int top, int width) const {
    const int left = measures().wordsX;
    const QRect room{left, top, std::max(1, width - kRight - left), QWIDGETSIZE_MAX};
    return QFontMetrics{faceFont(Face::smallStrong)}.boundingRect(room, Qt::TextWordWrap,
                                                                  m_words.next);
}

void Slip::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    const Colours& c = coloursFor(palette());
    const QColor ink = colourOf(c, m_words.ink);
    const QRectF edge = QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5);
    painter.setPen(QPen(hasFocus() ? c.accent : c.rule, hasFocus() ? 2 : 1));
    painter.setBrush(underMouse() || isDown() ? c.picked : c.raised);
    painter.drawRect(hasFocus() ? edge.adjusted(0.5, 0.5, -0.5, -0.5) : edge);
    painter.fillRect(QRect(0, 0, 4, height()), ink);

    const QFontMetrics book{faceFont(Face::slip)};
    const QFontMetrics small{faceFont(Face::small)};
    const QFontMetrics strong{faceFont(Face::smallStrong)};
    const auto draw = [&](Face face, const QColor& colour, int x, int y, const QString& text) {
        painter.setFont(faceFont(face));
        painter.setPen(colour);
        painter.drawText(x, y, text);
    };
    const int baseline = kPad + book.ascent();
    int right = width() - kRight;
    if (!m_words.due.isEmpty()) {
        const QFontMetrics& face = m_words.isLate ? strong : small;
        right -= face.horizontalAdvance(m_words.due);
        draw(m_words.isLate ? Face::smallStrong : Face::small, m_words.isLate ? c.must : c.quiet,
             right, baseline, m_words.due);
        right -= kSpace;
    }
    draw(Face::smallStrong, c.quiet, kNumberX, baseline, m_words.number);
    const int left = measures().wordsX;
    draw(Face::slip, c.ink, left, baseline,
         book.elidedText(m_words.book, Qt::ElideRight, right - left));
    const int wide = width() - kRight - left;
    const int y = kPad + book.height() + small.ascent();
    draw(Face::small, c.quiet, left, y, small.elidedText(m_words.owner, Qt::ElideRight, wide));
    painter.setFont(faceFont(Face::smallStrong));
    painter.setPen(ink);
    painter.drawText(nextRect(y + small.descent(), width()), Qt::TextWordWrap, m_words.next);
}

void Slip::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        click();
        return;
    }
    QAbstractButton::keyPressEvent(event);
}

} // namespace headcap::app
