#include "app/pages/collation/leaf_sheet_view.h"

#include <QCoreApplication>
#include <QHeaderView>
#include <QKeyEvent>

#include "app/look/grid.h"
#include "app/pages/collation/leaf_sheet_delegate.h"

namespace headcap::app {
namespace {

constexpr int kLeafColumn = 96;
constexpr int kWorkColumn = 160;
constexpr int kRowsShown = 12; // more scroll inside

} // namespace

std::vector<SheetKey> sheetKeys() {
    return {
        {QT_TRANSLATE_NOOP("sheet", "To the sheet of leaves, on the collation page"), kSheetKey},
        {QT_TRANSLATE_NOOP("sheet", "Done, or not; on to the next leaf"), "Space"},
        {QT_TRANSLATE_NOOP("sheet", "Done to the end of the gathering"), "E"},
        {QT_TRANSLATE_NOOP("sheet", "Another leaf, another work"), "Arrows"}};
}

QString wordsOf(const SheetKey& key) {
    return QCoreApplication::translate("sheet", key.words);
}

LeafSheetView::LeafSheetView(QWidget* parent)
    : QTableView(parent), m_model(new LeafSheetModel(this)) {
    setModel(m_model);
    setItemDelegate(new LeafSheetDelegate(this));
    setAccessibleName(tr("Leaf by leaf"));
    setFrameShape(QFrame::NoFrame);
    setShowGrid(false);
    viewport()->setAutoFillBackground(false);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setTabKeyNavigation(false);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAsNeeded);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    verticalHeader()->hide();
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setStretchLastSection(true);
    horizontalHeader()->setSectionsClickable(false);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(this, &QTableView::clicked, this, &LeafSheetView::toggle);
    fit();
}

void LeafSheetView::show(core::LaidBook book, std::vector<core::LeafTask> tasks,
                         const core::TechniquesInForce& techniques) {
    m_model->show(std::move(book), std::move(tasks), techniques);
    fit();
}

void LeafSheetView::enter() {
    if (!currentIndex().isValid() && m_model->rowCount() > 0) {
        for (int row = 0; row < m_model->rowCount(); ++row) {
            for (int column = 1; column < m_model->columnCount(); ++column) {
                const QModelIndex at = m_model->index(row, column);
                if (m_model->tick(at) == LeafSheetModel::Tick::toDo) {
                    setCurrentIndex(at);
                    setFocus(Qt::OtherFocusReason);
                    return;
                }
            }
        }
        setCurrentIndex(m_model->index(0, 1));
    }
    setFocus(Qt::OtherFocusReason);
}

void LeafSheetView::toggle(const QModelIndex& index) {
    const auto tick = index.isValid() ? m_model->tick(index) : LeafSheetModel::Tick::none;
    if (tick != LeafSheetModel::Tick::none) {
        Q_EMIT ticked(m_model->task(index.column()), {m_model->leaf(index.row())},
                      tick == LeafSheetModel::Tick::toDo);
    }
}

// In the same column, to what is to do next.
void LeafSheetView::goOn(const QModelIndex& from) {
    for (int row = from.row() + 1; row < m_model->rowCount(); ++row) {
        const QModelIndex next = m_model->index(row, from.column());
        if (m_model->tick(next) == LeafSheetModel::Tick::toDo) {
            setCurrentIndex(next);
            return;
        }
    }
}

void LeafSheetView::tickGathering() {
    const QModelIndex at = currentIndex();
    if (!at.isValid() || at.column() == 0) {
        return;
    }
    const auto leaves =
        toDoOfGathering(m_model->book(), m_model->task(at.column()), m_model->leaf(at.row()));
    if (!leaves.empty()) {
        Q_EMIT ticked(m_model->task(at.column()), leaves, true);
    }
    goOn(at);
}

void LeafSheetView::keyPressEvent(QKeyEvent* event) {
    if (event->modifiers() == Qt::NoModifier && event->key() == Qt::Key_Space) {
        const QModelIndex at = currentIndex();
        const bool isTicking = at.isValid() && m_model->tick(at) == LeafSheetModel::Tick::toDo;
        toggle(at);
        if (isTicking) {
            goOn(at);
        }
        return;
    }
    if (event->modifiers() == Qt::NoModifier && event->key() == Qt::Key_E) {
        tickGathering();
        return;
    }
    QTableView::keyPressEvent(event);
}

bool LeafSheetView::event(QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->modifiers() == Qt::NoModifier &&
            (key->key() == Qt::Key_E || key->key() == Qt::Key_Space)) {
            event->accept();
            return true;
        }
    }
    return QTableView::event(event);
}

void LeafSheetView::fit() {
    const int rowHeight = controlHeight(fontMetrics());
    verticalHeader()->setMinimumSectionSize(rowHeight);
    verticalHeader()->setDefaultSectionSize(rowHeight);
    const int head = rowHeight + kGap; // so that no letter is cut
    horizontalHeader()->setFixedHeight(head);
    for (int column = 0; column < m_model->columnCount(); ++column) {
        const int words = fontMetrics().horizontalAdvance(
            m_model->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString());
        horizontalHeader()->resizeSection(
            column, column == 0 ? kLeafColumn : std::max(kWorkColumn, words + 4 * kGap));
    }
    const int rows = std::min(m_model->rowCount(), kRowsShown);
    const int wanted = kLeafColumn + (m_model->columnCount() - 1) * kWorkColumn;
    setFixedHeight(head + rows * rowHeight + (wanted > width() ? kSpace : 0));
}

void LeafSheetView::resizeEvent(QResizeEvent* event) {
    QTableView::resizeEvent(event);
    fit();
}

void LeafSheetView::changeEvent(QEvent* event) {
    QTableView::changeEvent(event);
    if (event->type() == QEvent::FontChange) {
        fit();
    }
}

// At its ends the page scrolls.
void LeafSheetView::wheelEvent(QWheelEvent* event) {
    if (m_model->rowCount() <= kRowsShown) {
        event->ignore();
        return;
    }
    QTableView::wheelEvent(event);
}

} // namespace headcap::app
