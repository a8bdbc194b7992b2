// The photographs of a job as a contact sheet: before, during, after and detail, one group below
// the other; one photograph is chosen in all of them, and its form opens under its group.
// Photographs may be dropped on a group, and so belong to it.
#pragma once

#include <array>
#include <functional>
#include <optional>

#include <QWidget>

#include "app/photo/incoming.h"
#include "core/photo/photograph.h"

class QVBoxLayout;

namespace headcap::app {
class Label;
}
namespace headcap::app::print {
class PhotoLoader;
}

namespace headcap::app::photo {

class PhotoGrid;

class ContactSheet : public QWidget {
    Q_OBJECT
public:
    static constexpr std::size_t kRoles = core::EnumNames<core::PhotoRole>::kNames.size();

    // The form belongs to the sheet from then on.
    ContactSheet(print::PhotoLoader& loader, QWidget* form, QWidget* parent = nullptr);

    // In the order of the job's file.
    void show(const std::vector<core::Photograph>& photographs);
    using QWidget::show;
    [[nodiscard]] std::optional<core::Id<core::Photograph>> current() const;
    // False where it is not among them.
    bool select(const core::Id<core::Photograph>& id);
    [[nodiscard]] PhotoGrid& grid(core::PhotoRole role) const;
    void focusCurrent();

Q_SIGNALS:
    void currentMoved();
    void opened();
    void removeAsked();
    void moveAsked(int by);
    void dropped(const std::vector<headcap::app::photo::Incoming>& incoming,
                 headcap::core::PhotoRole role);

protected:
    bool event(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    struct Group {
        QWidget* area = nullptr;
        PhotoGrid* grid = nullptr;
        Label* count = nullptr;
        Label* empty = nullptr;
    };
    Group buildGroup(core::PhotoRole role, print::PhotoLoader& loader);
    void connectGroup(std::size_t at);
    void goBeyond(std::size_t from, int direction);
    void placeForm();

    std::array<Group, kRoles> m_groups;
    QWidget* m_form;
    QVBoxLayout* m_body;
    bool m_isMoving = false;
};

} // namespace headcap::app::photo
