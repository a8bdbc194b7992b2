#include "app/keeping/keeping_work.h"

namespace headcap::app {
namespace {

constexpr std::chrono::milliseconds kBetweenTellings{100};

} // namespace

KeepingWork::~KeepingWork() {
    m_isStopped = true;
    if (m_thread.joinable()) {
        m_thread.join();
    }
}

bool KeepingWork::goOn(std::int64_t done, std::int64_t total) {
    const auto now = std::chrono::steady_clock::now();
    if (now - m_told >= kBetweenTellings) {
        m_told = now;
        QMetaObject::invokeMethod(
            this, [this, done, total] { Q_EMIT progressed(done, total); }, Qt::QueuedConnection);
    }
    return !m_isStopped;
}

template <class Work>
void KeepingWork::start(Outcome outcome, Work work) {
    if (m_isRunning) {
        return;
    }
    if (m_thread.joinable()) {
        m_thread.join();
    }
    m_isRunning = true;
    m_isStopped = false;
    m_told = {};
    // This object outlives the thread: its destructor waits for it.
    m_thread = std::thread([this, outcome = std::move(outcome), work = std::move(work)]() mutable {
        try {
            work(outcome, [&](std::int64_t done, std::int64_t total) {
                const bool isWanted = goOn(done, total);
                outcome.wasStopped = !isWanted;
                return isWanted;
            });
        } catch (const core::StoreError& error) {
            outcome.failure = error;
        } catch (const std::exception& error) {
            outcome.failure = core::StoreError{core::StoreError::Code::ioFailed, error.what()};
        }
        QMetaObject::invokeMethod(
            this,
            [this, outcome] {
                m_isRunning = false;
                Q_EMIT finished(outcome);
            },
            Qt::QueuedConnection);
    });
}

void KeepingWork::backUp(const std::filesystem::path& folder) {
    start({.kind = Kind::backup, .folder = folder},
          [this](Outcome& outcome, const core::Progress& progress) {
              outcome.report = m_upkeep.backup(outcome.folder, progress);
          });
}

void KeepingWork::restore(const std::filesystem::path& backup,
                          const std::filesystem::path& folder) {
    start({.kind = Kind::restore, .folder = folder},
          [this, backup](Outcome& outcome, const core::Progress& progress) {
              core::SafeKeeping* keeping = core::safeKeepingOf(m_upkeep);
              if (keeping != nullptr) {
                  outcome.wasStopped = !keeping->restore(backup, outcome.folder, progress);
              }
          });
}

} // namespace headcap::app
