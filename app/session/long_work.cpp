#include "app/session/long_work.h"

#include <chrono>

#include "app/session/words.h"

namespace headcap::app {
namespace {

constexpr std::int64_t kBetweenMs = 50; // no more often than can be seen

std::int64_t steadyMs() {
    return std::chrono::duration_cast<std::chrono::milliseconds>(
               std::chrono::steady_clock::now().time_since_epoch())
        .count();
}

} // namespace

LongWork::LongWork(QObject* parent) : QObject(parent) {
    m_pool.setMaxThreadCount(1);
}

LongWork::~LongWork() {
    m_isStopped = true;
    m_pool.waitForDone();
}

bool LongWork::start(const QString& what, const QString& failed, const Work& work) {
    if (m_isBusy) {
        return false;
    }
    m_isBusy = true;
    m_isStopped = false;
    m_lastSaid = 0;
    Q_EMIT started(what);
    m_pool.start([this, failed, work] {
        Notice notice;
        try {
            notice =
                work([this](std::int64_t done, std::int64_t total) { return say(done, total); });
        } catch (const core::StoreError& error) {
            notice = {Notice::Kind::failed,
                      QStringLiteral("%1: %2.").arg(failed, fromCore(error.what()))};
        } catch (const std::exception& error) { // a folder that is gone or can't be read
            notice = {Notice::Kind::failed,
                      QStringLiteral("%1: %2.").arg(failed, fromCore(error.what()))};
        }
        const auto give = [this, notice] {
            m_isBusy = false;
            Q_EMIT finished(notice);
        };
        QMetaObject::invokeMethod(this, give, Qt::QueuedConnection);
    });
    return true;
}

void LongWork::stop() {
    m_isStopped = true;
}

bool LongWork::say(std::int64_t done, std::int64_t total) {
    const std::int64_t now = steadyMs();
    if (now - m_lastSaid >= kBetweenMs) {
        m_lastSaid = now;
        const auto tell = [this, done, total] { Q_EMIT progressed(done, total); };
        QMetaObject::invokeMethod(this, tell, Qt::QueuedConnection);
    }
    return !m_isStopped;
}

} // namespace headcap::app
