// The leaf-by-leaf sheet as a table: a row a leaf, a column a piece of work.
#pragma once

#include <optional>
#include <vector>

#include <QAbstractTableModel>

#include "core/collation/leaf_sheet.h"
#include "core/treatment/techniques_in_force.h"

namespace headcap::app {

class LeafSheetModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum class Tick { none, toDo, done }; // none: the leaf is not of that work
    static constexpr int kTickRole = Qt::UserRole;

    using QAbstractTableModel::QAbstractTableModel;
    void show(core::LaidBook book, std::vector<core::LeafTask> tasks,
              const core::TechniquesInForce& techniques);

    [[nodiscard]] const core::LaidBook& book() const { return m_book; }
    [[nodiscard]] const core::LeafTask& task(int column) const;
    [[nodiscard]] std::size_t leaf(int row) const;
    [[nodiscard]] Tick tick(const QModelIndex& index) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
    core::LaidBook m_book;
    std::vector<core::LeafTask> m_tasks;
    std::vector<QString> m_names;
    core::LeafSheet m_sheet;
};

} // namespace headcap::app
