#include "app/photo/photo_delegate.h"

#include <algorithm>

#include <QListView>
#include <QPainter>
#include <QStyle>

#include "app/look/fonts.h"
#include "app/look/grid.h"
#include "app/look/palette.h"
#include "app/photo/photo_grid.h"
#include "app/print/photo_loader.h"
#include "app/session/words.h"

namespace headcap::app::photo {
namespace {

constexpr int kPad = 2 * kGrid;
constexpr int kPictureHeight = 136;

QString detailOf(const core::Photograph& photo) {
    QStringList parts{fromCore(photo.place)};
    if (!photo.inReport) {
        parts << PhotoDelegate::tr("not in the report");
    } else if (photo.figureWidth == core::FigureWidth::full) {
        parts << words(photo.figureWidth);
    }
    return dotted(parts);
}

} // namespace

QString titleOf(const core::Photograph& photograph) {
    return fromCore(photograph.caption.empty() ? photograph.fileName : photograph.caption);
}

void paintPhoto(QPainter& painter, const QRect& box, const core::Photograph& photograph,
                print::PhotoLoader& loader, Qt::Alignment alignment, const QWidget& widget) {
    const Colours& c = coloursFor(widget.palette());
    const double ratio = widget.devicePixelRatioF();
    const int edge = static_cast<int>(std::max(box.width(), box.height()) * ratio);
    const QImage image = loader.find(photograph.digest, edge);
    if (!image.isNull()) {
        QSize size = image.size().scaled(box.size(), Qt::KeepAspectRatio);
        size = size.boundedTo(image.size());
        const QRect place = QStyle::alignedRect(Qt::LeftToRight, alignment, size, box);
        painter.setRenderHint(QPainter::SmoothPixmapTransform);
        painter.drawImage(place, image);
        return;
    }
    const auto fault = loader.fault(photograph.digest);
    painter.setPen(c.rule);
    painter.setBrush(c.raised);
    painter.drawRect(box.adjusted(0, 0, -1, -1));
    painter.setPen(fault ? c.must : c.quiet);
    painter.setFont(faceFont(Face::small));
    painter.drawText(box.adjusted(kPad, kPad, -kPad, -kPad), Qt::AlignCenter | Qt::TextWordWrap,
                     fault ? print::sentence(*fault) : PhotoDelegate::tr("reading …"));
}

PhotoDelegate::PhotoDelegate(print::PhotoLoader& loader, QObject* parent)
    : QStyledItemDelegate(parent), m_loader(loader) {}

int PhotoDelegate::cellHeight() {
    return kPictureHeight + QFontMetrics{faceFont(Face::body)}.height() +
           QFontMetrics{faceFont(Face::small)}.height() + 3 * kPad;
}

void PhotoDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const {
    const auto& photo = static_cast<const PhotoModel*>(index.model())->photograph(index.row());
    const Colours& c = coloursFor(option.palette);
    painter->save();
    const QRect cell = option.rect.adjusted(0, 0, -kGrid, -kGrid);
    if (option.state & QStyle::State_Selected) {
        painter->fillRect(cell, c.picked);
        if (option.state & QStyle::State_HasFocus) {
            painter->fillRect(QRect(cell.topLeft(), QSize(3, cell.height())), c.accent);
        }
    }
    const QRect inner = cell.adjusted(kPad, kPad, -kPad, -kGrid);
    const QRect box{inner.topLeft(), QSize{inner.width(), kPictureHeight}};
    paintPhoto(*painter, box, photo, m_loader, Qt::AlignLeft | Qt::AlignBottom, *option.widget);

    const QFontMetrics title{faceFont(Face::body)};
    const QFontMetrics small{faceFont(Face::small)};
    int y = box.bottom() + kGrid + title.ascent();
    painter->setFont(faceFont(Face::body));
    painter->setPen(photo.caption.empty() || !photo.inReport ? c.quiet : c.ink);
    painter->drawText(inner.left(), y,
                      title.elidedText(titleOf(photo), Qt::ElideRight, inner.width()));
    y += title.descent() + small.ascent();
    painter->setFont(faceFont(Face::small));
    painter->setPen(c.quiet);
    painter->drawText(inner.left(), y,
                      small.elidedText(detailOf(photo), Qt::ElideRight, inner.width()));
    painter->restore();
}

QSize PhotoDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const {
    const auto* grid = qobject_cast<const QListView*>(option.widget);
    return grid != nullptr ? grid->gridSize() : QSize{kLeastWidth, cellHeight()};
}

} // namespace headcap::app::photo
