#include "app/pages/collation/leaf_sheet_delegate.h"

#include <QPainter>

#include "app/look/fonts.h"
#include "app/look/grid.h"
#include "app/look/palette.h"
#include "app/pages/collation/leaf_sheet_model.h"

namespace headcap::app {
namespace {

constexpr qreal kBox = 16;

void drawTick(QPainter& painter, const QRectF& box, LeafSheetModel::Tick tick,
              const Colours& colours) {
    using Tick = LeafSheetModel::Tick;
    painter.setBrush(Qt::NoBrush);
    if (tick == Tick::none) {
        painter.setPen(QPen{colours.quiet, 1});
        painter.drawLine(QPointF{box.left() + 4, box.center().y()},
                         QPointF{box.right() - 4, box.center().y()});
        return;
    }
    painter.setPen(QPen{tick == Tick::done ? colours.settled : colours.edge, 1.5});
    painter.drawRect(box);
    if (tick == Tick::done) {
        painter.setPen(QPen{colours.settled, 2.5, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin});
        painter.drawPolyline(QPolygonF{{QPointF{box.left() + 3.5, box.center().y()},
                                        QPointF{box.left() + 7, box.bottom() - 4},
                                        QPointF{box.right() - 3, box.top() + 4}}});
    }
}

} // namespace

void LeafSheetDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                              const QModelIndex& index) const {
    const Colours& colours = coloursFor(option.palette);
    const QRect at = option.rect;
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    const bool isHere = option.state.testFlag(QStyle::State_Selected);
    if (isHere) {
        painter->fillRect(at.adjusted(0, 1, 0, -1), colours.picked);
    }
    painter->setPen(QPen{colours.rule, 1});
    painter->drawLine(at.bottomLeft(), at.bottomRight());
    if (index.column() == 0) {
        painter->setFont(faceFont(Face::formula));
        painter->setPen(colours.ink);
        painter->drawText(at.adjusted(kGap, 0, 0, 0), Qt::AlignVCenter | Qt::AlignLeft,
                          index.data().toString());
    } else {
        const QRectF box{at.left() + kGap + 0.5, at.center().y() - kBox / 2 + 0.5, kBox, kBox};
        drawTick(*painter, box,
                 static_cast<LeafSheetModel::Tick>(index.data(LeafSheetModel::kTickRole).toInt()),
                 colours);
    }
    if (isHere && option.state.testFlag(QStyle::State_HasFocus)) {
        painter->setPen(QPen{colours.accent, 2});
        painter->drawRect(QRectF{at}.adjusted(1, 2, -2, -2));
    }
    painter->restore();
}

} // namespace headcap::app
