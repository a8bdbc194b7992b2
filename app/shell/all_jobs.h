// A plain table of all jobs, newest first, fetched as one scrolls.
#pragma once

#include <vector>

#include <QAbstractTableModel>

#include "app/session/session.h"
#include "app/shell/worklist.h"

namespace headcap::app {

class AllJobsModel : public QAbstractTableModel {
    Q_OBJECT
public:
    explicit AllJobsModel(Session& session, QObject* parent = nullptr);
    void reload();
    [[nodiscard]] const core::JobLine& line(int row) const {
        return m_lines[static_cast<std::size_t>(row)];
    }

    // Of all jobs, fetched or not.
    [[nodiscard]] std::size_t total() const { return m_total; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;
    [[nodiscard]] bool canFetchMore(const QModelIndex& parent) const override;
    void fetchMore(const QModelIndex& parent) override;

private:
    // Nothing is due of a job that has left the house.
    [[nodiscard]] Due dueOf(const core::JobLine& at) const;

    Session& m_session;
    std::vector<core::JobLine> m_lines;
    std::size_t m_total = 0;
};

} // namespace headcap::app
