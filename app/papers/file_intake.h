// Takes files in as attachments: each is kept unaltered in the workshop's files, and only what is
// kept there, and synced, is given back to be recorded.
#pragma once

#include <optional>

#include <QStringList>

#include "app/session/intake.h"
#include "core/record/record_ref.h"
#include "core/record/stores.h"

namespace headcap::app::papers {

struct KeptFile {
    core::Digest digest;
    QString name;
    QString mediaType;
    qint64 bytes = 0;
};

// The record the files are attached to; the page may have gone elsewhere by the time they are kept.
struct Subject {
    core::RecordRef record;
    std::optional<core::Id<core::Job>> job{};
};

struct IntakeResult {
    std::vector<KeptFile> kept{};
    QStringList refused{};                     // a sentence each
    std::optional<core::StoreError> failure{}; // the storage failed; the rest was not tried
};

class FileIntake : public Intake {
    Q_OBJECT
public:
    explicit FileIntake(core::FileStore& files, QObject* parent = nullptr)
        : Intake(parent), m_files(files) {}

    void take(const QStringList& paths, const Subject& subject);

Q_SIGNALS:
    void finished(const headcap::app::papers::IntakeResult& result,
                  const headcap::app::papers::Subject& subject);

private:
    core::FileStore& m_files;
};

} // namespace headcap::app::papers
