#include "app/shell/chip_row.h"

#include <algorithm>

#include <QPainter>

#include "app/look/fonts.h"
#include "app/look/grid.h"
#include "app/look/palette.h"

namespace headcap::app {
namespace {

constexpr int kBeside = 6 * kGrid; // of a chip, about and between its words

int rowHeight() {
    return QFontMetrics{faceFont(Face::smallStrong)}.height() + kGap;
}

} // namespace

ChipRow::ChipRow(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void ChipRow::show(std::vector<LineChip> chips) {
    m_chips = std::move(chips);
    QStringList said;
    for (const LineChip& chip : m_chips) {
        said << QStringLiteral("%1 %2").arg(chip.label, chip.text);
    }
    setAccessibleName(said.join(QStringLiteral(", ")));
    fit();
    update();
}

QSize ChipRow::sizeHint() const {
    return {320, rowHeight()};
}

std::vector<ChipRow::Placed> ChipRow::placed() const {
    const QFontMetrics quiet{faceFont(Face::small)};
    const QFontMetrics strong{faceFont(Face::smallStrong)};
    std::vector<Placed> all;
    int x = 0;
    int y = 0;
    for (const LineChip& chip : m_chips) {
        const int label = quiet.horizontalAdvance(chip.label) + kBeside;
        const QString text =
            strong.elidedText(chip.text, Qt::ElideRight, std::max(kBeside, width() - label));
        const int wide = label + strong.horizontalAdvance(text);
        if (x > 0 && x + wide > width()) {
            x = 0;
            y += rowHeight() + kGrid;
        }
        all.push_back({QRectF(x + 0.5, y + 0.5, wide - 1.0, rowHeight() - 1.0), text});
        x += wide + kGap;
    }
    return all;
}

void ChipRow::fit() {
    const auto all = placed();
    setFixedHeight(all.empty() ? rowHeight() : qRound(all.back().box.bottom() + 0.5));
}

void ChipRow::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fit();
}

void ChipRow::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    const Colours& c = coloursFor(palette());
    const QFontMetrics quiet{faceFont(Face::small)};
    const QFontMetrics strong{faceFont(Face::smallStrong)};
    const auto all = placed();
    for (std::size_t i = 0; i < all.size(); ++i) {
        const LineChip& chip = m_chips[i];
        const QRectF& box = all[i].box;
        painter.setPen(QPen(chip.isDoubtful ? c.open : c.rule, 1,
                            chip.isDoubtful ? Qt::DashLine : Qt::SolidLine));
        painter.setBrush(c.paper);
        painter.drawRoundedRect(box, 3, 3);
        const int x = qRound(box.left() - 0.5) + kGap;
        const int baseline =
            qRound(box.top() - 0.5) + (rowHeight() + strong.ascent() - strong.descent()) / 2;
        painter.setFont(faceFont(Face::small));
        painter.setPen(c.quiet);
        painter.drawText(x, baseline, chip.label);
        painter.setFont(faceFont(Face::smallStrong));
        painter.setPen(chip.isDoubtful ? c.open : c.ink);
        painter.drawText(x + quiet.horizontalAdvance(chip.label) + 2 * kGrid, baseline,
                         all[i].text);
    }
}

} // namespace headcap::app
