// Takes photographs in: looks each file over, refuses what is truncated or no picture, and keeps
// the original unaltered in the workshop's files. Only what is kept there, and synced, is given
// back to be recorded.
#pragma once

#include <optional>

#include <QSize>

#include "app/photo/incoming.h"
#include "app/session/intake.h"
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

class PhotoIntake : public Intake {
    Q_OBJECT
public:
    explicit PhotoIntake(core::FileStore& files, QObject* parent = nullptr)
        : Intake(parent), m_files(files) {}

    void take(const std::vector<Incoming>& incoming, const IntakePlace& place);

Q_SIGNALS:
    void finished(const headcap::app::photo::IntakeResult& result,
                  const headcap::app::photo::IntakePlace& place);

private:
    core::FileStore& m_files;
};

} // namespace headcap::app::photo
