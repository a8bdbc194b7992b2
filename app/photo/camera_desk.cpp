#include "app/photo/camera_desk.h"

#include <QTimer>

#include "app/photo/take_in.h"
#include "app/session/actions.h"
#include "app/session/words.h"
#include "core/photo/photo_order.h"

namespace headcap::app::photo {
namespace {

constexpr int kLookMs = 3'000;

} // namespace

CameraDesk::CameraDesk(Session& session, QObject* parent)
    : QObject(parent), m_session(session), m_intake(session.stores().files, this),
      m_looking(session, this) {
    connect(&m_folder, &CameraFolder::waitingChanged, this, &CameraDesk::waitingChanged);
    connect(&m_intake, &PhotoIntake::finished, this, &CameraDesk::record);
    auto* timer = new QTimer(this);
    connect(timer, &QTimer::timeout, this, &CameraDesk::look);
    timer->start(kLookMs);
    look();
}

void CameraDesk::look() {
    const QString wanted = m_session.settings().value(Setting::watchedFolder).toString();
    if (wanted != m_folder.folder()) {
        m_folder.watch(wanted);
    }
    if (wanted.isEmpty() || m_looking.isReading()) {
        return;
    }
    m_looking.ask([wanted] { return CameraFolder::filesIn(wanted); },
                  [this, wanted](const CameraFolder::Files& files) {
                      if (wanted == m_folder.folder()) {
                          m_folder.see(files);
                      }
                      Q_EMIT looked();
                  });
}

void CameraDesk::record(const IntakeResult& result, const IntakePlace& place) {
    const QStringList asked = m_asked.front();
    m_asked.pop_front();
    if (!recordKept(m_session, result, place).isWhole) {
        m_folder.offerAgain(asked);
    }
    Q_EMIT takenIn();
}

QString CameraDesk::sentence(const QString& job) const {
    const auto count = static_cast<int>(m_folder.waiting().size());
    if (count == 0) {
        return {};
    }
    const QString came = counted(count, tr("The camera has brought %1 photograph"),
                                 tr("The camera has brought %1 photographs"));
    return job.isEmpty() ? tr("%1. Open the job they belong to.").arg(came)
                         : tr("%1, to be taken into %2 (%3).")
                               .arg(came, job, keyText(ActionId::takeFromCamera));
}

void CameraDesk::takeInto(const core::Job& job) {
    const QStringList paths = m_folder.waiting();
    if (paths.isEmpty()) {
        m_session.say({Notice::Kind::done,
                       m_folder.folder().isEmpty()
                           ? tr("No folder of a camera is watched: choose one on the photographs "
                                "page.")
                           : tr("Nothing new has come into %1.").arg(m_folder.folder())});
        return;
    }
    m_asked.push_back(paths);
    m_intake.take(incomingFrom(paths), {job.id, core::usualRole(job.state)});
    m_folder.forget(paths);
}

void CameraDesk::putAside() {
    m_folder.forget(m_folder.waiting());
}

} // namespace headcap::app::photo
