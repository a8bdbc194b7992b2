#include "app/drawing/gathering_drawing.h"

#include <algorithm>

#include <QCoreApplication>
#include <QPainter>
#include <QPainterPath>

#include "app/session/words.h"

namespace headcap::app {
namespace {

constexpr double kWidestStep = 88;
constexpr double kStubShare = 0.14; // of a leaf's height

QString tr(const char* text) {
    return QCoreApplication::translate("GatheringDrawing", text);
}

struct Frame {
    double left;
    double step;
    double top;  // of a leaf
    double foot; // where leaves meet their arches
    double deepest;

    [[nodiscard]] double x(std::size_t leaf) const {
        return left + (static_cast<double>(leaf) + 0.5) * step;
    }
};

QColor inkOf(core::LeafState state, const Colours& colours) {
    switch (state) {
    case core::LeafState::lacking:
        return colours.must;
    case core::LeafState::loose:
    case core::LeafState::misbound:
        return colours.open;
    case core::LeafState::facsimile:
    case core::LeafState::supplied:
        return colours.accent;
    case core::LeafState::cancelled:
        return colours.quiet;
    case core::LeafState::present:
        break;
    }
    return colours.ink;
}

Frame frameOf(const QRectF& area, std::size_t leaves, const GatheringDrawing& drawing) {
    const double step = std::min(kWidestStep, area.width() / static_cast<double>(leaves));
    const double labels =
        QFontMetricsF{drawing.words}.height() + QFontMetricsF{drawing.refs}.height() + 8;
    const double arches = std::min(area.height() * 0.26, 12.0 * static_cast<double>(leaves) / 2);
    return {.left = area.left(),
            .step = step,
            .top = area.top() + labels,
            .foot = area.bottom() - arches - 4,
            .deepest = arches};
}

// A fold: deeper the farther apart its two leaves stand.
void drawArch(QPainter& painter, const Frame& frame, std::size_t from, std::size_t to,
              std::size_t leaves, double gapFrom, double gapTo) {
    const double share = static_cast<double>(to - from) / static_cast<double>(leaves);
    const double depth = std::max(6.0, frame.deepest * share);
    QPainterPath path;
    path.moveTo(frame.x(from), frame.foot + gapFrom);
    const double bottom = frame.foot + depth;
    const double reach = std::min(frame.step * 0.9, (frame.x(to) - frame.x(from)) * 0.4);
    path.cubicTo(frame.x(from), bottom, frame.x(from) + reach / 2, bottom, frame.x(from) + reach,
                 bottom);
    path.lineTo(frame.x(to) - reach, bottom);
    path.cubicTo(frame.x(to) - reach / 2, bottom, frame.x(to), bottom, frame.x(to),
                 frame.foot + gapTo);
    painter.drawPath(path);
}

void drawLine(QPainter& painter, const core::PicturedLeaf& leaf, double x, const Frame& frame) {
    const double height = frame.foot - frame.top;
    switch (leaf.state) {
    case core::LeafState::lacking:
        painter.drawLine(QPointF{x, frame.foot - height * kStubShare}, QPointF{x, frame.foot});
        return;
    case core::LeafState::cancelled: {
        const double cut = frame.foot - height * kStubShare;
        painter.drawLine(QPointF{x, cut}, QPointF{x, frame.foot});
        painter.drawLine(QPointF{x - 5, cut + 3}, QPointF{x + 5, cut - 3});
        return;
    }
    case core::LeafState::facsimile:
    case core::LeafState::supplied:
        painter.drawLine(QPointF{x - 2, frame.top}, QPointF{x - 2, frame.foot - 4});
        painter.drawLine(QPointF{x + 2, frame.top}, QPointF{x + 2, frame.foot - 4});
        return;
    case core::LeafState::loose:
        painter.drawLine(QPointF{x, frame.top}, QPointF{x, frame.foot - 12});
        return;
    case core::LeafState::misbound:
        painter.drawLine(QPointF{x + 5, frame.top}, QPointF{x - 5, frame.foot});
        return;
    case core::LeafState::present:
        painter.drawLine(QPointF{x, frame.top}, QPointF{x, frame.foot});
    }
}

void drawLabels(QPainter& painter, const core::PicturedLeaf& leaf, double x, const Frame& frame,
                const GatheringDrawing& drawing) {
    QFont refs = drawing.refs;
    refs.setStrikeOut(leaf.state == core::LeafState::lacking ||
                      leaf.state == core::LeafState::cancelled);
    const double refHeight = QFontMetricsF{refs}.height();
    painter.setFont(refs);
    painter.drawText(QRectF{x - kWidestStep / 2, frame.top - refHeight - 4, kWidestStep, refHeight},
                     Qt::AlignCenter, fromCore(leaf.ref));
    QString word = words(leaf.state);
    if (word.isEmpty() && leaf.isBlank) {
        word = tr("blank");
    }
    const double wordHeight = QFontMetricsF{drawing.words}.height();
    painter.setFont(drawing.words);
    painter.drawText(QRectF{x - kWidestStep / 2, frame.top - refHeight - wordHeight - 4,
                            kWidestStep, wordHeight},
                     Qt::AlignCenter, word);
}

} // namespace

QString words(core::LeafState state) {
    switch (state) {
    case core::LeafState::present:
        return {};
    case core::LeafState::lacking:
        return tr("lacking");
    case core::LeafState::loose:
        return tr("loose");
    case core::LeafState::misbound:
        return tr("misbound");
    case core::LeafState::facsimile:
        return tr("facsimile");
    case core::LeafState::supplied:
        return tr("supplied");
    case core::LeafState::cancelled:
        return tr("cancelled");
    }
    return {};
}

QString describe(const core::PicturedGathering& gathering) {
    QStringList said;
    for (const core::PicturedLeaf& leaf : gathering.leaves) {
        if (leaf.state != core::LeafState::present) {
            said << fromCore(leaf.ref) + QLatin1Char(' ') + words(leaf.state);
        }
    }
    const QString head =
        fromCore(gathering.signature) + QStringLiteral(", ") +
        counted(static_cast<int>(gathering.leaves.size()), tr("%1 leaf"), tr("%1 leaves"));
    return said.isEmpty() ? head : head + QStringLiteral(": ") + said.join(QStringLiteral(", "));
}

void drawGathering(QPainter& painter, const QRectF& area, const core::PicturedGathering& gathering,
                   const GatheringDrawing& drawing) {
    const std::size_t count = gathering.leaves.size();
    if (count == 0) {
        return;
    }
    painter.setRenderHint(QPainter::Antialiasing);
    const Frame frame = frameOf(area, count, drawing);
    const auto gapOf = [](const core::PicturedLeaf& leaf) {
        return leaf.state == core::LeafState::loose ? 4.0 : 0.0;
    };
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen{drawing.colours.ink, 1.4});
    for (std::size_t i = 0; i < count; ++i) {
        const auto& other = gathering.leaves[i].conjugate;
        if (other && *other > i) {
            drawArch(painter, frame, i, *other, count, gapOf(gathering.leaves[i]),
                     gapOf(gathering.leaves[*other]));
        }
    }
    for (std::size_t i = 0; i < count; ++i) {
        const core::PicturedLeaf& leaf = gathering.leaves[i];
        painter.setPen(QPen{inkOf(leaf.state, drawing.colours), drawing.looked == i ? 3.5 : 1.4});
        drawLine(painter, leaf, frame.x(i), frame);
        drawLabels(painter, leaf, frame.x(i), frame, drawing);
    }
}

} // namespace headcap::app
