// Thumbnails in rows, as many to a row as there is room for, as high as its rows: the page
// scrolls. Pictures come in as they are read; one whose file is missing says so in words. The
// arrows go from picture to picture and, past the first or last row, to the group before or after.
#pragma once

#include <optional>
#include <vector>

#include <QAbstractListModel>
#include <QListView>

#include "core/photo/photograph.h"

namespace headcap::app::print {
class PhotoLoader;
}

namespace headcap::app::photo {

class PhotoModel : public QAbstractListModel {
    Q_OBJECT
public:
    using QAbstractListModel::QAbstractListModel;

    void show(std::vector<core::Photograph> photographs);
    [[nodiscard]] const core::Photograph& photograph(int at) const {
        return m_photographs[static_cast<std::size_t>(at)];
    }
    [[nodiscard]] int rowOf(const core::Id<core::Photograph>& id) const; // -1: not there

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;

private:
    std::vector<core::Photograph> m_photographs;
};

class PhotoGrid : public QListView {
    Q_OBJECT
public:
    PhotoGrid(print::PhotoLoader& loader, const QString& accessibleName, QWidget* parent = nullptr);

    void show(std::vector<core::Photograph> photographs);
    using QListView::show;
    [[nodiscard]] int count() const { return m_model->rowCount(); }
    [[nodiscard]] std::optional<core::Id<core::Photograph>> current() const;
    void select(const std::optional<core::Id<core::Photograph>>& id);
    // Goes into it from above or below.
    void enterFrom(int direction);

    [[nodiscard]] QSize minimumSizeHint() const override;

Q_SIGNALS:
    void currentMoved();
    void opened();              // Enter or a double click
    void leftBy(int direction); // -1 above its first row, 1 below its last

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;

private:
    void fit();

    PhotoModel* m_model;
    bool m_isShowing = false;
};

} // namespace headcap::app::photo
