#include "app/photo/photo_grid.h"

#include <algorithm>

#include <QKeyEvent>

#include "app/photo/photo_delegate.h"
#include "app/print/photo_loader.h"
#include "app/session/words.h"

namespace headcap::app::photo {

void PhotoModel::show(std::vector<core::Photograph> photographs) {
    const auto idOf = [](const core::Photograph& photo) { return photo.id; };
    const bool isSame = std::ranges::equal(photographs, m_photographs, {}, idOf, idOf);
    if (isSame) {
        m_photographs = std::move(photographs);
        if (!m_photographs.empty()) {
            Q_EMIT dataChanged(index(0), index(rowCount() - 1));
        }
        return;
    }
    beginResetModel();
    m_photographs = std::move(photographs);
    endResetModel();
}

int PhotoModel::rowOf(const core::Id<core::Photograph>& id) const {
    const auto at = std::ranges::find(m_photographs, id, &core::Photograph::id);
    return at == m_photographs.end() ? -1 : static_cast<int>(at - m_photographs.begin());
}

int PhotoModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_photographs.size());
}

QVariant PhotoModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || (role != Qt::DisplayRole && role != Qt::AccessibleTextRole)) {
        return {};
    }
    return titleOf(photograph(index.row()));
}

PhotoGrid::PhotoGrid(print::PhotoLoader& loader, const QString& accessibleName, QWidget* parent)
    : QListView(parent), m_model(new PhotoModel(this)) {
    setAccessibleName(accessibleName);
    setModel(m_model);
    setItemDelegate(new PhotoDelegate(loader, this));
    setViewMode(QListView::IconMode);
    setMovement(QListView::Static);
    setResizeMode(QListView::Adjust);
    setUniformItemSizes(true);
    setFrameShape(QFrame::NoFrame);
    viewport()->setAutoFillBackground(false);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setTabKeyNavigation(false);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    connect(this, &QListView::doubleClicked, this, &PhotoGrid::opened);
    const auto repaint = [this] { viewport()->update(); };
    connect(&loader, &print::PhotoLoader::ready, this, repaint);
    connect(&loader, &print::PhotoLoader::failed, this, repaint);
    fit();
}

void PhotoGrid::show(std::vector<core::Photograph> photographs) {
    const auto kept = current();
    m_isShowing = true;
    m_model->show(std::move(photographs));
    select(kept);
    m_isShowing = false;
    fit();
}

std::optional<core::Id<core::Photograph>> PhotoGrid::current() const {
    const QModelIndex at = currentIndex();
    return at.isValid() ? std::optional{m_model->photograph(at.row()).id} : std::nullopt;
}

void PhotoGrid::select(const std::optional<core::Id<core::Photograph>>& id) {
    const int at = id ? m_model->rowOf(*id) : -1;
    if (at < 0) {
        selectionModel()->clear();
    } else if (at != currentIndex().row()) {
        setCurrentIndex(m_model->index(at));
    }
}

void PhotoGrid::enterFrom(int direction) {
    setFocus(Qt::OtherFocusReason);
    setCurrentIndex(m_model->index(direction > 0 ? 0 : count() - 1));
}

QSize PhotoGrid::minimumSizeHint() const {
    return {PhotoDelegate::kLeastWidth, height()};
}

void PhotoGrid::fit() {
    const int room = std::max(width(), PhotoDelegate::kLeastWidth);
    const int columns = room / PhotoDelegate::kLeastWidth;
    const int rows = (count() + columns - 1) / columns;
    const QSize cell{room / columns, PhotoDelegate::cellHeight()};
    if (gridSize() != cell) {
        setGridSize(cell);
    }
    if (height() != rows * cell.height()) {
        setFixedHeight(rows * cell.height());
    }
}

void PhotoGrid::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        if (currentIndex().isValid()) {
            Q_EMIT opened();
        }
        return;
    }
    if (event->key() == Qt::Key_Escape) {
        event->ignore();
        return;
    }
    const int at = currentIndex().row();
    QListView::keyPressEvent(event);
    if (currentIndex().row() != at) {
        return;
    }
    if (event->key() == Qt::Key_Up || event->key() == Qt::Key_Left) {
        Q_EMIT leftBy(-1);
    } else if (event->key() == Qt::Key_Down || event->key() == Qt::Key_Right) {
        Q_EMIT leftBy(1);
    }
}

void PhotoGrid::focusInEvent(QFocusEvent* event) {
    QListView::focusInEvent(event);
    const bool isByKey =
        event->reason() == Qt::TabFocusReason || event->reason() == Qt::BacktabFocusReason;
    if (isByKey && !currentIndex().isValid() && count() > 0) {
        setCurrentIndex(m_model->index(0));
    }
}

void PhotoGrid::wheelEvent(QWheelEvent* event) {
    event->ignore(); // the page scrolls
}

void PhotoGrid::resizeEvent(QResizeEvent* event) {
    fit();
    QListView::resizeEvent(event);
}

void PhotoGrid::changeEvent(QEvent* event) {
    QListView::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::ApplicationFontChange) {
        fit();
    }
}

void PhotoGrid::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QListView::currentChanged(current, previous);
    if (!m_isShowing) {
        Q_EMIT currentMoved();
    }
}

} // namespace headcap::app::photo
