#include "app/look/fold_heading.h"

#include <algorithm>

#include <QPainter>

#include "app/look/fonts.h"
#include "app/look/grid.h"
#include "app/look/palette.h"
#include "app/look/style.h"
#include "app/look/style_controls.h"

namespace headcap::app {
namespace {

constexpr int kChevron = 4 * kGrid;

} // namespace

FoldHeading::FoldHeading(const QString& name, QWidget* parent) : QPushButton(parent), m_name(name) {
    setProperty(kQuietButton, true);
    setCheckable(true);
    setAccessibleName(name);
    setToolTip(tr("Opens and folds these fields (Space)"));
    setMinimumHeight(kBenchControl);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void FoldHeading::setSummary(const QString& words) {
    m_summary = words;
    setAccessibleDescription(words);
    update();
}

void FoldHeading::setNameWidth(int width) {
    m_nameWidth = width;
    update();
}

QSize FoldHeading::sizeHint() const {
    return {200, kBenchControl};
}

void FoldHeading::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    const Colours& c = coloursFor(palette());
    const QFontMetrics strong{faceFont(Face::smallStrong)};
    const QFontMetrics body{faceFont(Face::small)};
    controls::chevron(painter, QRect{0, 0, kChevron, height()}, c.accent,
                      isChecked() ? Qt::DownArrow : Qt::RightArrow);
    painter.setFont(faceFont(Face::smallStrong));
    painter.setPen(c.accent);
    const int left = kChevron + kGrid;
    const int baseline = (height() + strong.ascent() - strong.descent()) / 2;
    painter.drawText(left, baseline, m_name);
    const int from = std::max(m_nameWidth, left + strong.horizontalAdvance(m_name) + kSpace);
    painter.setFont(faceFont(Face::small));
    painter.setPen(c.quiet);
    painter.drawText(from, baseline,
                     body.elidedText(m_summary, Qt::ElideRight, std::max(0, width() - from)));
    if (hasFocus()) {
        controls::focusRing(painter, rect(), c, this);
    }
}

} // namespace headcap::app
