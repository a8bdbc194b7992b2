// Work that takes a while, done off the GUI thread: it says how far it is, stops when asked, and
// gives one sentence at its end.
#pragma once

#include <atomic>
#include <functional>

#include <QObject>
#include <QThreadPool>

#include "app/session/session.h"

namespace headcap::app {

class LongWork : public QObject {
    Q_OBJECT
public:
    // In another thread; what it gives is said here.
    using Work = std::function<Notice(const core::Progress&)>;

    explicit LongWork(QObject* parent = nullptr);
    ~LongWork() override; // stops it, and waits

    // `what` is shown while it lasts: "Backing up". False: another is not done yet. A StoreError
    // becomes a sentence that begins with `failed`.
    bool start(const QString& what, const QString& failed, const Work& work);
    void stop();
    [[nodiscard]] bool isBusy() const { return m_isBusy; }
    [[nodiscard]] bool wasStopped() const { return m_isStopped; }

Q_SIGNALS:
    void started(const QString& what);
    void progressed(qint64 done, qint64 total);
    void finished(const headcap::app::Notice& notice);

private:
    [[nodiscard]] bool say(std::int64_t done, std::int64_t total);

    std::atomic<bool> m_isStopped = false;
    std::atomic<std::int64_t> m_lastSaid = 0; // milliseconds of a steady clock
    bool m_isBusy = false;
    QThreadPool m_pool;
};

} // namespace headcap::app
