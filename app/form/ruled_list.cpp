#include "app/form/ruled_list.h"

#include <QKeyEvent>

#include "app/form/ruled_delegate.h"
#include "app/session/words.h"
#include "core/values/fold.h"

namespace headcap::app {
namespace {

bool isSame(const RowWords& a, const RowWords& b) {
    return a.mark == b.mark && a.title == b.title && a.detail == b.detail && a.right == b.right &&
           a.rightInk == b.rightInk && a.isStruck == b.isStruck && a.isBookTitle == b.isBookTitle;
}

} // namespace

void RuledModel::show(std::vector<Row> rows) {
    const bool isSameRows = std::equal(rows.begin(), rows.end(), m_rows.begin(), m_rows.end(),
                                       [](const Row& a, const Row& b) { return a.id == b.id; });
    if (isSameRows) {
        for (std::size_t i = 0; i < rows.size(); ++i) {
            if (!isSame(rows[i].words, m_rows[i].words)) {
                m_rows[i].words = std::move(rows[i].words);
                const QModelIndex at = index(static_cast<int>(i));
                Q_EMIT dataChanged(at, at);
            }
        }
        return;
    }
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
}

int RuledModel::rowOf(const core::Uuid& id) const {
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        if (m_rows[i].id == id) {
            return static_cast<int>(i);
        }
    }
    return -1;
}

int RuledModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant RuledModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) {
        return {};
    }
    const RowWords& words = row(index.row()).words;
    if (role == Qt::DisplayRole) {
        return words.title;
    }
    if (role == Qt::AccessibleTextRole) {
        QStringList parts{words.mark, words.title, words.detail, words.right};
        parts.removeAll({});
        if (words.isStruck) {
            parts << tr("struck");
        }
        return parts.join(QStringLiteral(", "));
    }
    return {};
}

RuledList::RuledList(const QString& accessibleName, QWidget* parent)
    : QListView(parent), m_model(new RuledModel(this)) {
    setAccessibleName(accessibleName);
    setModel(m_model);
    setItemDelegate(new RuledDelegate(this));
    setFrameShape(QFrame::NoFrame);
    viewport()->setAutoFillBackground(false);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setTabKeyNavigation(false);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setResizeMode(QListView::Adjust);
    connect(this, &QListView::clicked, this, &RuledList::opened);
    fit();
}

void RuledList::setMarkWidth(int width) {
    static_cast<RuledDelegate*>(itemDelegate())->setMarkWidth(width);
    scheduleDelayedItemsLayout();
    fit();
}

void RuledList::show(std::vector<RuledModel::Row> rows) {
    const auto kept = current();
    m_isShowing = true;
    m_model->show(std::move(rows));
    if (kept && m_model->rowOf(*kept) >= 0 && m_model->rowOf(*kept) != currentIndex().row()) {
        setCurrentIndex(m_model->index(m_model->rowOf(*kept)));
    }
    setFilter(m_filter);
    m_isShowing = false;
    fit();
    if (current() != kept) {
        Q_EMIT currentMoved();
    }
}

void RuledList::setFilter(const QString& words) {
    m_filter = words;
    const std::string asked = core::foldForSearch(toCore(words.trimmed()));
    for (int i = 0; i < m_model->rowCount(); ++i) {
        if (asked.empty()) {
            setRowHidden(i, false);
            continue;
        }
        const RowWords& row = m_model->row(i).words;
        const std::string text =
            core::foldForSearch(toCore(row.mark + QLatin1Char(' ') + row.title + QLatin1Char(' ') +
                                       row.detail + QLatin1Char(' ') + row.right));
        setRowHidden(i, text.find(asked) == std::string::npos);
    }
    fit();
}

std::optional<core::Uuid> RuledList::current() const {
    const QModelIndex at = currentIndex();
    return at.isValid() ? std::optional{m_model->row(at.row()).id} : std::nullopt;
}

void RuledList::select(std::optional<core::Uuid> id) {
    const int at = id ? m_model->rowOf(*id) : -1;
    setCurrentIndex(at >= 0 ? m_model->index(at) : QModelIndex{});
}

void RuledList::fit() {
    setFixedHeight(sizeHint().height());
}

QSize RuledList::sizeHint() const {
    int height = 0;
    for (int i = 0; i < m_model->rowCount(); ++i) {
        if (!isRowHidden(i)) {
            height += sizeHintForRow(i);
        }
    }
    return {320, height};
}

// Text below a title takes more lines in a narrow list.
void RuledList::resizeEvent(QResizeEvent* event) {
    QListView::resizeEvent(event);
    if (event->oldSize().width() != event->size().width()) {
        scheduleDelayedItemsLayout();
        fit();
    }
}

void RuledList::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        Q_EMIT opened();
        return;
    }
    // At the ends the arrows leave the list, as Tab does.
    const int at = currentIndex().row();
    if (event->key() == Qt::Key_Escape) {
        event->ignore();
        return;
    }
    QListView::keyPressEvent(event);
    if (currentIndex().row() == at && event->key() == Qt::Key_Up && at == 0) {
        focusPreviousChild();
    }
}

void RuledList::focusInEvent(QFocusEvent* event) {
    QListView::focusInEvent(event);
    const bool isByKey =
        event->reason() == Qt::TabFocusReason || event->reason() == Qt::BacktabFocusReason;
    if (isByKey && !currentIndex().isValid() && m_model->rowCount() > 0) {
        setCurrentIndex(m_model->index(0));
    }
}

void RuledList::wheelEvent(QWheelEvent* event) {
    event->ignore(); // the page scrolls
}

void RuledList::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QListView::currentChanged(current, previous);
    if (!m_isShowing) {
        Q_EMIT currentMoved();
    }
}

void RuledList::changeEvent(QEvent* event) {
    QListView::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::ApplicationFontChange) {
        scheduleDelayedItemsLayout();
        fit();
    }
}

} // namespace headcap::app
