// Takes photographs in, off the GUI thread: looks each file over, refuses what is truncated or no
// picture, and keeps the original unaltered in the workshop's files. Only what is kept there, and
// synced, is given back to be recorded. Says how far it is and can be stopped; what was kept by
// then is given all the same.
#pragma once

#include <atomic>
#include <optional>

#include <QObject>
#include <QSize>
#include <QThreadPool>

#include "app/photo/incoming.h"
#include "core/record/stores.h"

namespace headcap::app::photo {

struct KeptPhoto {
    core::Digest digest;
    QString name;
    QString mediaType;
    qint64 bytes = 0;
    QSize size; // upright
    std::optional<core::Instant> takenAt;
};

struct IntakeResult {
    std::vector<KeptPhoto> kept{};             // in the order they came
    QStringList refused{};                     // a sentence each
    std::optional<core::StoreError> failure{}; // the storage failed; the rest was not tried
};

// What they are taken in for; the page may have gone to another job by the time they are kept.
struct IntakePlace {
    core::Id<core::Job> job;
    core::PhotoRole role = core::PhotoRole::before;
};

class PhotoIntake : public QObject {
    Q_OBJECT
public:
    explicit PhotoIntake(core::FileStore& files, QObject* parent = nullptr);
    ~PhotoIntake() override;

    // What comes while it is at work waits.
    void take(const std::vector<Incoming>& incoming, const IntakePlace& place);
    void stop();
    [[nodiscard]] bool isBusy() const { return m_batches > 0; }

Q_SIGNALS:
    void progressed(int done, int total);
    void finished(const headcap::app::photo::IntakeResult& result,
                  const headcap::app::photo::IntakePlace& place);

private:
    void work(const std::vector<Incoming>& incoming, const IntakePlace& place);

    core::FileStore& m_files;
    std::atomic<bool> m_isStopped = false;
    int m_batches = 0;
    QThreadPool m_pool;
};

} // namespace headcap::app::photo
