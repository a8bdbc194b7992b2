// Changes the state of a job: the states it may go to, and a line for the reason where one is
// needed. Stands under the head while it is asked for.
#pragma once

#include <QWidget>

#include "app/session/session.h"
#include "core/custody/job_states.h"

class QHBoxLayout;
class QLineEdit;

namespace headcap::app {

class Label;

class StateBar : public QWidget {
    Q_OBJECT
public:
    explicit StateBar(Session& session, QWidget* parent = nullptr);
    void ask(const core::Job& job, core::Revision read);

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void go(core::JobState to);
    void addWay(core::JobState to);
    void addOthers(const std::vector<core::JobState>& states);

    Session& m_session;
    Label* m_words;
    QHBoxLayout* m_ways;
    QLineEdit* m_why;
    std::optional<core::Job> m_job;
    core::Revision m_read{};
    std::optional<core::JobState> m_waiting; // for its reason
};

} // namespace headcap::app
