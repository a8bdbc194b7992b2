#include "app/pages/bench/work_button.h"

#include <algorithm>

#include <QPainter>
#include <QStyleOptionButton>

#include "app/look/fonts.h"
#include "app/look/grid.h"
#include "app/look/palette.h"
#include "app/session/words.h"

namespace headcap::app {
namespace {

constexpr int kMarkSize = 3 * kGrid;
constexpr int kNarrowest = 44 * kGrid;

void paintMark(QPainter& painter, const QRect& box, WorkButton::Mark mark, const Colours& c) {
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    switch (mark) {
    case WorkButton::Mark::starts:
        painter.setBrush(c.accent);
        painter.drawPolygon(
            QPolygon{{box.topLeft(), QPoint{box.right(), box.center().y()}, box.bottomLeft()}});
        break;
    case WorkButton::Mark::stops:
        painter.setBrush(c.must);
        painter.drawRect(box);
        break;
    case WorkButton::Mark::toLog:
        painter.setPen(QPen(c.open, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawEllipse(box.adjusted(1, 1, -1, -1));
        break;
    case WorkButton::Mark::none:
        break;
    }
}

// A title too long for one line goes on below, from the last comma or blank that lets it.
std::pair<QString, QString> inTwo(const QString& title, const QFontMetrics& face, int room) {
    if (face.horizontalAdvance(title) <= room) {
        return {title, {}};
    }
    for (const QChar at : {QLatin1Char(','), QLatin1Char(' ')}) {
        for (qsizetype cut = title.lastIndexOf(at); cut > 0; cut = title.lastIndexOf(at, cut - 1)) {
            if (face.horizontalAdvance(title.left(cut)) <= room) {
                return {title.left(cut), title.mid(cut + 1).trimmed()};
            }
        }
    }
    return {title, {}};
}

} // namespace

WorkButton::WorkButton(QWidget* parent) : QPushButton(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void WorkButton::show(const QString& title, const QString& below, Mark mark) {
    m_title = title;
    m_below = below;
    m_mark = mark;
    update();
}

QSize WorkButton::sizeHint() const {
    const int lines = QFontMetrics{faceFont(Face::strong)}.height() +
                      QFontMetrics{faceFont(Face::small)}.height();
    return {kNarrowest, std::max(kBenchControl, lines + 4 * kGrid)};
}

void WorkButton::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    QStyleOptionButton option;
    initStyleOption(&option);
    option.text.clear();
    style()->drawControl(QStyle::CE_PushButton, &option, &painter, this);
    const Colours& c = coloursFor(palette());
    const QFontMetrics strong{faceFont(Face::strong)};
    const QFontMetrics small{faceFont(Face::small)};
    const bool hasMark = m_mark != Mark::none;
    if (hasMark) {
        paintMark(painter, QRect{3 * kGrid, (height() - kMarkSize) / 2, kMarkSize, kMarkSize},
                  m_mark, c);
    }
    const int left = hasMark ? 6 * kGrid + kMarkSize : 3 * kGrid;
    const int room = std::max(0, width() - left - 2 * kGrid);
    const auto [first, second] = inTwo(m_title, strong, room);
    const QString below = dotted({second, m_below});
    int y = (height() - strong.height() - (below.isEmpty() ? 0 : small.height())) / 2;
    painter.setFont(faceFont(Face::strong));
    painter.setPen(c.ink);
    painter.drawText(left, y + strong.ascent(), strong.elidedText(first, Qt::ElideRight, room));
    y += strong.height();
    painter.setFont(faceFont(Face::small));
    painter.setPen(m_mark == Mark::starts || m_mark == Mark::none ? c.quiet
                   : m_mark == Mark::stops                        ? c.must
                                                                  : c.open);
    painter.drawText(left, y + small.ascent(), small.elidedText(below, Qt::ElideRight, room));
}

} // namespace headcap::app
