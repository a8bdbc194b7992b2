#include "app/pages/proposal/option_cell.h"

#include <algorithm>

#include <QPainter>

#include "app/look/grid.h"

namespace headcap::app {
namespace {

constexpr int kWrap = Qt::TextWordWrap | Qt::AlignLeft | Qt::AlignTop;
constexpr int kNarrowest = 24 * kGrid;

int heightOf(const OptionCell::Passage& passage, int width) {
    const QRect room{0, 0, std::max(1, width), QWIDGETSIZE_MAX};
    return QFontMetrics{faceFont(passage.face)}.boundingRect(room, kWrap, passage.words).height();
}

} // namespace

OptionCell::OptionCell(std::vector<Passage> passages, QWidget* parent)
    : QWidget(parent), m_passages(std::move(passages)) {
    QSizePolicy policy{QSizePolicy::Ignored, QSizePolicy::Minimum};
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    QStringList said;
    for (const Passage& passage : m_passages) {
        said << passage.words;
    }
    setAccessibleName(said.join(QLatin1Char('\n')));
}

QSize OptionCell::sizeHint() const {
    return {kNarrowest, heightForWidth(kNarrowest)};
}

int OptionCell::heightForWidth(int width) const {
    int high = 0;
    for (const Passage& passage : m_passages) {
        high += passage.above + heightOf(passage, width - kGap);
    }
    return high;
}

void OptionCell::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    const Colours& c = coloursFor(palette());
    int y = 0;
    for (const Passage& passage : m_passages) {
        y += passage.above;
        const int high = heightOf(passage, width() - kGap);
        painter.setFont(faceFont(passage.face));
        painter.setPen(colourOf(c, passage.ink));
        painter.drawText(QRect{kGap, y, width() - kGap, high}, kWrap, passage.words);
        y += high;
    }
}

} // namespace headcap::app
