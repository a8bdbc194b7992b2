// Backs up and restores away from the window's thread: one thing at a time, with how far it is, and
// stopped when asked.
#pragma once

#include <atomic>
#include <chrono>
#include <optional>
#include <thread>

#include <QObject>

#include "core/record/safe_keeping.h"

namespace headcap::app {

class KeepingWork : public QObject {
    Q_OBJECT
public:
    enum class Kind { backup, restore };
    struct Outcome {
        Kind kind = Kind::backup;
        std::filesystem::path folder{}; // where the backup or the new workshop is
        core::BackupReport report{};    // of a backup
        bool wasStopped = false;
        std::optional<core::StoreError> failure{};
    };

    explicit KeepingWork(core::Upkeep& upkeep, QObject* parent = nullptr)
        : QObject(parent), m_upkeep(upkeep) {}
    ~KeepingWork() override;

    // Nothing happens while something is at work.
    void backUp(const std::filesystem::path& folder);
    void restore(const std::filesystem::path& backup, const std::filesystem::path& folder);
    void stop() { m_isStopped = true; }
    [[nodiscard]] bool isRunning() const { return m_isRunning; }

Q_SIGNALS:
    // Of the files; before the first, the records are being copied.
    void progressed(qint64 done, qint64 total);
    void finished(const headcap::app::KeepingWork::Outcome& outcome);

private:
    template <class Work>
    void start(Outcome outcome, Work work);
    bool goOn(std::int64_t done, std::int64_t total);

    core::Upkeep& m_upkeep;
    std::thread m_thread;
    std::atomic_bool m_isStopped = false;
    std::chrono::steady_clock::time_point m_told{}; // the thread's own
    bool m_isRunning = false;
};

} // namespace headcap::app
