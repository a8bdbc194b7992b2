#include "app/shell/line_offers.h"

#include <algorithm>

#include <QMouseEvent>
#include <QPainter>
#include <QRegularExpression>

#include "app/look/fonts.h"
#include "app/look/grid.h"
#include "app/look/palette.h"

namespace headcap::app {
namespace {

constexpr int kNarrowest = 480;
constexpr int kMark = 12 * kGrid; // for the word "Tab"

} // namespace

LineOffers::LineOffers(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::NoFocus);
    setAccessibleName(tr("What the words may become"));
    hide();
}

void LineOffers::show(std::vector<LineOffer> offers, const QString& typed, const QWidget& field,
                      const QWidget& foot) {
    m_offers = std::move(offers);
    m_typed = typed;
    m_current = 0;
    m_isChosen = false;
    if (m_offers.empty()) {
        hide();
        return;
    }
    QStringList said;
    for (const LineOffer& offer : m_offers) {
        said << QStringLiteral("%1, %2").arg(offer.text, offer.says);
    }
    setAccessibleDescription(said.join(QStringLiteral("; ")));
    const QPoint at = field.mapTo(parentWidget(), QPoint{0, 0});
    const int high = static_cast<int>(m_offers.size()) * kBenchControl + 2;
    const int wide = std::min(std::max(kNarrowest, field.width() * 3 / 5), field.width());
    const int bottom = foot.mapTo(parentWidget(), QPoint{0, 0}).y();
    setGeometry(at.x() - kGap, bottom - high - kGrid, wide, high);
    raise();
    setVisible(true);
    update();
}

void LineOffers::move(int by) {
    const int last = static_cast<int>(m_offers.size()) - 1;
    m_current = static_cast<std::size_t>(std::clamp(static_cast<int>(m_current) + by, 0, last));
    m_isChosen = true;
    update();
}

const LineOffer* LineOffers::current() const {
    return m_offers.empty() ? nullptr : &m_offers[m_current];
}

bool LineOffers::isTakenByTab() const {
    const LineOffer* offer = current();
    if (offer == nullptr || m_isChosen || offer->line.startsWith(m_typed, Qt::CaseInsensitive)) {
        return offer != nullptr;
    }
    static const QRegularExpression kApart{QStringLiteral("[^\\w]+"),
                                           QRegularExpression::UseUnicodePropertiesOption};
    return !offer->says.split(kApart).contains(m_typed.section(u' ', -1), Qt::CaseInsensitive);
}

void LineOffers::mousePressEvent(QMouseEvent* event) {
    const auto row = static_cast<std::size_t>(std::max(0, event->pos().y() / kBenchControl));
    if (row < m_offers.size()) {
        const LineOffer offer = m_offers[row];
        Q_EMIT taken(offer);
    }
}

void LineOffers::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    const Colours& c = coloursFor(palette());
    painter.fillRect(rect(), c.raised);
    const QFontMetrics bench{faceFont(Face::bench)};
    const QFontMetrics small{faceFont(Face::small)};
    for (std::size_t i = 0; i < m_offers.size(); ++i) {
        const QRect row{1, 1 + static_cast<int>(i) * kBenchControl, width() - 2, kBenchControl};
        if (i == m_current) {
            painter.fillRect(row, c.picked);
        }
        const int baseline = row.top() + (row.height() + bench.ascent() - bench.descent()) / 2;
        const int left = row.left() + kGap;
        const int room = row.width() - 2 * kGap - kMark;
        painter.setFont(faceFont(Face::bench));
        painter.setPen(c.ink);
        const QString text = bench.elidedText(m_offers[i].text, Qt::ElideRight, room);
        painter.drawText(left, baseline, text);
        const int after = bench.horizontalAdvance(text) + kSpace;
        painter.setFont(faceFont(Face::small));
        painter.setPen(c.quiet);
        painter.drawText(
            left + after, baseline,
            small.elidedText(m_offers[i].says, Qt::ElideRight, std::max(0, room - after)));
        if (i == m_current) {
            const QString key = isTakenByTab() ? tr("Tab") : tr("Down");
            painter.drawText(row.right() - kGap - small.horizontalAdvance(key), baseline, key);
        }
    }
    painter.setPen(c.edge);
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
}

} // namespace headcap::app
