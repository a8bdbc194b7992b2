// Watches what sets, in every job: says when a setting time is over, until somebody has seen to
// it. Only ends are compared with the clock, so that a machine that slept, or a program that was
// closed, changes nothing.
#pragma once

#include <set>
#include <vector>

#include <QObject>
#include <QString>

#include "app/session/session.h"
#include "core/treatment/day_of_work.h"

namespace headcap::app {

class SettingWatch : public QObject {
    Q_OBJECT
public:
    explicit SettingWatch(Session& session, QObject* parent = nullptr);

    // Those that are over, the last to end first; not those put aside.
    [[nodiscard]] std::vector<core::SettingWork> over() const;
    // What the window says of them; empty: nothing is over.
    [[nodiscard]] QString sentence() const;
    // Compares with the clock; done by itself.
    void look();
    // Not said again while the program runs.
    void putAside();
    // Notes that somebody saw to the first of them.
    void seeToFirst();

Q_SIGNALS:
    void changed();

private:
    void read();

    Session& m_session;
    std::vector<core::SettingWork> m_settings;
    std::set<core::Id<core::Setting>> m_aside;
    QString m_said;
};

} // namespace headcap::app
