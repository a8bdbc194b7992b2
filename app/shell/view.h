// One of the windows' views: the worklist, a job, find, and so on, all in one window. A view asks
// to go elsewhere with a Destination; Esc steps back the way one came.
#pragma once

#include <optional>

#include <QWidget>

#include "core/custody/job.h"
#include "core/custody/page.h"
#include "core/record/record_ref.h"

class QBoxLayout;

namespace headcap::app {

enum class ViewId {
    worklist,
    job,
    materials,
    find,
    newJob,
    keys,
    workshop,
    backups,
    mixing,
    cutting,
    stock,
    techniques,
    day
};

struct Destination {
    ViewId view = ViewId::worklist;
    std::optional<core::Id<core::Job>> job{};
    std::optional<core::Page> page{};
    // Of the workshop, a person: one who is to be added.
    std::optional<core::RecordRef> record{};
    QString words{}; // to find
};

class View : public QWidget {
    Q_OBJECT
public:
    using QWidget::QWidget;
    // Shows what is asked for; false where it is not there.
    virtual bool enter(const Destination& destination) = 0;
    // False: something could not be saved, and it is to stay.
    [[nodiscard]] virtual bool leave() { return true; }
    // The workshop has changed.
    virtual void refresh() {}
    // A step back inside the view; false where there is none.
    virtual bool back() { return false; }
    virtual bool print() { return false; }
    [[nodiscard]] virtual QString title() const = 0;
    // Where notices stand, below what is shown; null: at the foot of the window.
    [[nodiscard]] virtual QBoxLayout* noticePlace() { return nullptr; }
    // What the menu of people opens under; null: nothing here says who is working.
    [[nodiscard]] virtual QWidget* personAnchor() { return nullptr; }

Q_SIGNALS:
    void goAsked(const headcap::app::Destination& destination);
    // Empty: the person is asked which.
    void otherWorkshopAsked(const QString& folder);
};

} // namespace headcap::app
