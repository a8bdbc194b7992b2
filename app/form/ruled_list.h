// A list set as ruled lines, as high as its rows: the page scrolls, the list does not. A row is a
// mark in a narrow column, a line in the running face with a quiet line below, and words at the
// right.
#pragma once

#include <optional>
#include <vector>

#include <QAbstractListModel>
#include <QListView>

#include "app/look/palette.h"
#include "core/values/id.h"

namespace headcap::app {

struct RowWords {
    QString mark{}; // a leaf, a count, a time
    QString title{};
    QString detail{};
    QString right{}; // a state, a date
    Ink rightInk = Ink::quiet;
    bool isStruck = false;
    bool isBookTitle = false; // in the text face
    bool isGrouped = false;   // the mark is a group's, said at its first row only
};

class RuledModel : public QAbstractListModel {
    Q_OBJECT
public:
    struct Row {
        core::Uuid id;
        RowWords words;
    };
    using QAbstractListModel::QAbstractListModel;

    // Rows whose words do not change keep their place and the selection.
    void show(std::vector<Row> rows);
    [[nodiscard]] const Row& row(int at) const { return m_rows[static_cast<std::size_t>(at)]; }
    [[nodiscard]] int rowOf(const core::Uuid& id) const; // -1: not there

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;

private:
    std::vector<Row> m_rows;
};

class RuledList : public QListView {
    Q_OBJECT
public:
    explicit RuledList(const QString& accessibleName, QWidget* parent = nullptr);

    void show(std::vector<RuledModel::Row> rows);
    // Only rows that hold these words, however accented.
    void setFilter(const QString& words);
    [[nodiscard]] std::optional<core::Uuid> current() const;
    void select(std::optional<core::Uuid> id);
    void setMarkWidth(int width);
    using QListView::show;

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return {120, sizeHint().height()}; }

Q_SIGNALS:
    void currentMoved();
    void opened(); // Enter or a click

protected:
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    void changeEvent(QEvent* event) override;

private:
    void fit();
    RuledModel* m_model;
    bool m_isShowing = false;
    QString m_filter;
};

} // namespace headcap::app
