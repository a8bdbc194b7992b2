#include "app/pages/collation/leaf_sheet_model.h"

#include <algorithm>

#include "app/session/words.h"
#include "core/collation/folds.h"

namespace headcap::app {

void LeafSheetModel::show(core::LaidBook book, std::vector<core::LeafTask> tasks,
                          const core::TechniquesInForce& techniques) {
    core::LeafSheet sheet = sheetOf(book, tasks);
    const bool isAlike =
        sheet.leaves.size() == m_sheet.leaves.size() && tasks.size() == m_tasks.size();
    if (!isAlike) {
        beginResetModel();
    }
    m_book = std::move(book);
    m_tasks = std::move(tasks);
    m_sheet = std::move(sheet);
    m_names.clear();
    for (const core::LeafTask& task : m_tasks) {
        m_names.push_back(task.technique.empty() ? tr("Work")
                                                 : fromCore(techniques.nameOf(task.technique)));
    }
    if (!isAlike) {
        endResetModel();
    } else if (rowCount() > 0) {
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
        Q_EMIT headerDataChanged(Qt::Horizontal, 0, columnCount() - 1);
    }
}

const core::LeafTask& LeafSheetModel::task(int column) const {
    return m_tasks[static_cast<std::size_t>(column) - 1];
}

std::size_t LeafSheetModel::leaf(int row) const {
    return m_sheet.leaves[static_cast<std::size_t>(row)].leaf;
}

LeafSheetModel::Tick LeafSheetModel::tick(const QModelIndex& index) const {
    const auto& works = m_sheet.leaves[static_cast<std::size_t>(index.row())].works;
    const auto work = std::ranges::find(works, static_cast<std::size_t>(index.column()) - 1,
                                        &core::LeafWork::task);
    return index.column() == 0 || work == works.end() ? Tick::none
           : work->isDone                             ? Tick::done
                                                      : Tick::toDo;
}

int LeafSheetModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_sheet.leaves.size());
}

int LeafSheetModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_tasks.size()) + 1;
}

QVariant LeafSheetModel::data(const QModelIndex& index, int role) const {
    const QString ref = fromCore(leafText(m_book, leaf(index.row())));
    if (role == Qt::DisplayRole && index.column() == 0) {
        return ref;
    }
    if (role == kTickRole) {
        return static_cast<int>(tick(index));
    }
    if (role == Qt::AccessibleTextRole && index.column() > 0) {
        const Tick now = tick(index);
        return tr("%1, %2: %3")
            .arg(ref, m_names[static_cast<std::size_t>(index.column()) - 1],
                 now == Tick::done   ? tr("done")
                 : now == Tick::toDo ? tr("to do")
                                     : tr("not of this work"));
    }
    return {};
}

QVariant LeafSheetModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) {
        return {};
    }
    return section == 0 ? tr("Leaf") : m_names[static_cast<std::size_t>(section) - 1];
}

Qt::ItemFlags LeafSheetModel::flags(const QModelIndex& index) const {
    return index.column() == 0 ? Qt::ItemIsEnabled : Qt::ItemIsEnabled | Qt::ItemIsSelectable;
}

} // namespace headcap::app
