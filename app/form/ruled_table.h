// Ruled rows in columns under headings, for what is read more than it is written: a log, the
// materials of a job. Where it is narrow, the middle columns stand below the first words of a row.
// It scrolls by itself. Enter opens a row; headings are passed over by the keys.
#pragma once

#include <optional>
#include <vector>

#include <QAbstractListModel>
#include <QListView>

#include "app/look/fonts.h"
#include "app/look/palette.h"
#include "core/values/id.h"

namespace headcap::app {

struct TableCell {
    QString text{};
    Face face = Face::small;
    Ink ink = Ink::quiet;
};

struct TableRow {
    std::optional<core::Uuid> id{}; // nothing: a heading
    TableCell title{};              // of a heading too
    QString mark{};                 // a time, before the title
    std::vector<TableCell> middle{};
    TableCell right{};
    TableCell below{}; // under the title
    bool isStruck = false;
    bool isTied = false; // hangs on the row above it
};

class RuledTableModel : public QAbstractListModel {
    Q_OBJECT
public:
    using QAbstractListModel::QAbstractListModel;
    void show(std::vector<TableRow> rows);
    [[nodiscard]] const TableRow& row(int at) const { return m_rows[static_cast<std::size_t>(at)]; }
    [[nodiscard]] int rowOf(const core::Uuid& id) const; // -1: not there

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
    std::vector<TableRow> m_rows;
};

class RuledTable : public QListView {
    Q_OBJECT
public:
    // The mark's and the right one's in px; the others share what is left of the width.
    struct Columns {
        int mark = 0;
        int right = 72;
        int title = 5;
        std::vector<int> middle{};
    };
    RuledTable(const QString& accessibleName, Columns columns, QWidget* parent = nullptr);

    void show(std::vector<TableRow> rows);
    using QListView::show;
    [[nodiscard]] const RuledTableModel& rows() const { return *m_model; }
    [[nodiscard]] const Columns& columns() const { return m_columns; }
    [[nodiscard]] bool isNarrow() const;
    [[nodiscard]] std::optional<core::Uuid> current() const;
    // Brings it into view as well; nothing: no row is chosen.
    void select(std::optional<core::Uuid> id);
    // Where the keys go in first: at the last row, as in a log; else at the first.
    void setEnteredAtEnd() { m_isEnteredAtEnd = true; }
    // What has just been added: it is marked until the next change, and comes into view.
    void setFresh(std::optional<core::Uuid> id);
    [[nodiscard]] const std::optional<core::Uuid>& fresh() const { return m_fresh; }

Q_SIGNALS:
    void currentMoved();
    void opened(); // by Enter; clicked() is the list view's own

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void enter();

    RuledTableModel* m_model;
    Columns m_columns;
    std::optional<core::Uuid> m_fresh;
    bool m_isShowing = false;
    bool m_isEnteredAtEnd = false;
};

} // namespace headcap::app
