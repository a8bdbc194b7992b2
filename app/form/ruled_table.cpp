#include "app/form/ruled_table.h"

#include <QKeyEvent>
#include <QScrollBar>

#include "app/form/ruled_table_delegate.h"
#include "app/look/grid.h"

namespace headcap::app {
namespace {

constexpr int kColumnsFrom = 700; // narrower, the columns stand below

} // namespace

void RuledTableModel::show(std::vector<TableRow> rows) {
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
}

int RuledTableModel::rowOf(const core::Uuid& id) const {
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        if (m_rows[i].id == id) {
            return static_cast<int>(i);
        }
    }
    return -1;
}

int RuledTableModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant RuledTableModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) {
        return {};
    }
    const TableRow& at = row(index.row());
    if (role == Qt::DisplayRole) {
        return at.title.text;
    }
    if (role == Qt::AccessibleTextRole) {
        QStringList parts{at.mark, at.title.text};
        for (const TableCell& cell : at.middle) {
            parts << cell.text;
        }
        parts << at.below.text << at.right.text;
        if (at.isStruck) {
            parts << tr("struck");
        }
        parts.removeAll({});
        return parts.join(QStringLiteral(", "));
    }
    return {};
}

Qt::ItemFlags RuledTableModel::flags(const QModelIndex& index) const {
    return index.isValid() && row(index.row()).id ? Qt::ItemIsEnabled | Qt::ItemIsSelectable
                                                  : Qt::NoItemFlags;
}

RuledTable::RuledTable(const QString& accessibleName, Columns columns, QWidget* parent)
    : QListView(parent), m_model(new RuledTableModel(this)), m_columns(std::move(columns)) {
    setAccessibleName(accessibleName);
    setModel(m_model);
    setItemDelegate(new RuledTableDelegate(*this));
    setFrameShape(QFrame::NoFrame);
    viewport()->setAutoFillBackground(false);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    verticalScrollBar()->setSingleStep(6 * kGrid);
    setTabKeyNavigation(false);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
}

bool RuledTable::isNarrow() const {
    return viewport()->width() < kColumnsFrom;
}

void RuledTable::show(std::vector<TableRow> rows) {
    const auto kept = current();
    const int scrolled = verticalScrollBar()->value();
    m_isShowing = true;
    m_model->show(std::move(rows));
    if (kept && m_model->rowOf(*kept) >= 0) {
        setCurrentIndex(m_model->index(m_model->rowOf(*kept)));
    }
    m_isShowing = false;
    doItemsLayout();
    verticalScrollBar()->setValue(scrolled);
    if (current() != kept) {
        Q_EMIT currentMoved();
    }
}

std::optional<core::Uuid> RuledTable::current() const {
    const QModelIndex at = currentIndex();
    return at.isValid() ? m_model->row(at.row()).id : std::nullopt;
}

void RuledTable::select(std::optional<core::Uuid> id) {
    const int at = id ? m_model->rowOf(*id) : -1;
    setCurrentIndex(at >= 0 ? m_model->index(at) : QModelIndex{});
    if (at >= 0) {
        scrollTo(m_model->index(at));
    }
}

void RuledTable::setFresh(std::optional<core::Uuid> id) {
    m_fresh = id;
    const int at = id ? m_model->rowOf(*id) : -1;
    if (at >= 0) {
        scrollTo(m_model->index(at));
    }
    viewport()->update();
}

void RuledTable::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        if (current()) {
            Q_EMIT opened();
        }
        return;
    }
    if (event->key() == Qt::Key_Escape) {
        event->ignore();
        return;
    }
    QListView::keyPressEvent(event);
}

void RuledTable::focusInEvent(QFocusEvent* event) {
    if (!current() && event->reason() != Qt::MouseFocusReason) {
        enter();
    }
    QListView::focusInEvent(event);
}

void RuledTable::enter() {
    const int count = m_model->rowCount();
    for (int i = 0; i < count; ++i) {
        const int at = m_isEnteredAtEnd ? count - 1 - i : i;
        if (m_model->row(at).id) {
            setCurrentIndex(m_model->index(at));
            return;
        }
    }
}

void RuledTable::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QListView::currentChanged(current, previous);
    if (!m_isShowing) {
        Q_EMIT currentMoved();
    }
}

void RuledTable::resizeEvent(QResizeEvent* event) {
    // A log that stood at its end stays there when it is given less room.
    const bool isAtEnd = m_isEnteredAtEnd && verticalScrollBar()->value() > 0 &&
                         verticalScrollBar()->value() == verticalScrollBar()->maximum();
    QListView::resizeEvent(event);
    if (event->size().width() != event->oldSize().width()) {
        doItemsLayout(); // rows are as high as their words need in this width
    }
    if (currentIndex().isValid()) {
        scrollTo(currentIndex());
    } else if (isAtEnd) {
        scrollToBottom();
    }
}

void RuledTable::changeEvent(QEvent* event) {
    QListView::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::ApplicationFontChange) {
        scheduleDelayedItemsLayout();
    }
}

} // namespace headcap::app
