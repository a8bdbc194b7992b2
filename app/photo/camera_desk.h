// What the camera's folder has brought, to be taken into the job in hand: looked at every few
// seconds, offered, and taken in when somebody says so.
#pragma once

#include <deque>

#include "app/photo/camera_folder.h"
#include "app/photo/photo_intake.h"
#include "app/session/aside.h"

namespace headcap::app::photo {

class CameraDesk : public QObject {
    Q_OBJECT
public:
    explicit CameraDesk(Session& session, QObject* parent = nullptr);

    // What the window says of what waits, with the number of the job it would go into; empty:
    // nothing waits.
    [[nodiscard]] QString sentence(const QString& job) const;
    void takeInto(const core::Job& job);
    // Not wanted: they are not offered again.
    void putAside();
    // Looks whether the folder is another, and what has come; done by itself. A card or a share
    // that does not answer is waited for elsewhere.
    void look();

Q_SIGNALS:
    void looked();
    void waitingChanged();
    void takenIn();

private:
    void record(const IntakeResult& result, const IntakePlace& place);

    Session& m_session;
    CameraFolder m_folder;
    PhotoIntake m_intake;
    Aside m_looking;
    std::deque<QStringList> m_asked{}; // what each intake that is under way was asked to take
};

} // namespace headcap::app::photo
