#include "app/photo/photo_intake.h"

#include <QFile>
#include <QFileInfo>
#include <QTemporaryFile>

#include "app/photo/exif.h"
#include "app/print/photo_reader.h"
#include "app/session/words.h"

namespace headcap::app::photo {
namespace {

QString refusal(const Incoming& one, print::PhotoFault fault) {
    return QStringLiteral("%1: %2").arg(one.name, print::sentence(fault));
}

tl::expected<KeptPhoto, print::PhotoFault> keep(core::FileStore& files, const Incoming& one,
                                                const QString& path) {
    const auto facts = print::inspectPhoto(path);
    if (!facts) {
        return tl::unexpected(facts.error());
    }
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) {
        return tl::unexpected(print::PhotoFault::notReadable);
    }
    const QByteArray bytes = file.readAll();
    if (file.error() != QFileDevice::NoError || bytes.isEmpty()) {
        return tl::unexpected(print::PhotoFault::notReadable);
    }
    const auto span =
        std::as_bytes(std::span{bytes.constData(), static_cast<std::size_t>(bytes.size())});
    const core::Digest digest =
        files.put(core::FileStore::Shelf::photograph, span, toCore(QFileInfo(one.name).suffix()));
    return KeptPhoto{digest,       one.name,       facts->mediaType,
                     bytes.size(), facts->upright, captureTime(path)};
}

// Where there is no file, the bytes are written to one, to be looked over like any other.
tl::expected<KeptPhoto, print::PhotoFault> keep(core::FileStore& files, const Incoming& one) {
    if (!one.path.isEmpty()) {
        return keep(files, one, one.path);
    }
    QTemporaryFile file;
    if (!file.open() || file.write(one.bytes) != one.bytes.size() || !file.flush()) {
        return tl::unexpected(print::PhotoFault::notReadable);
    }
    return keep(files, one, file.fileName());
}

} // namespace

PhotoIntake::PhotoIntake(core::FileStore& files, QObject* parent)
    : QObject(parent), m_files(files) {
    m_pool.setMaxThreadCount(1);
}

PhotoIntake::~PhotoIntake() {
    m_isStopped = true;
    m_pool.waitForDone();
}

void PhotoIntake::take(const std::vector<Incoming>& incoming, const IntakePlace& place) {
    if (incoming.empty()) {
        return;
    }
    if (m_batches++ == 0) {
        m_isStopped = false;
    }
    m_pool.start([this, incoming, place] { work(incoming, place); });
}

void PhotoIntake::stop() {
    m_isStopped = true;
}

void PhotoIntake::work(const std::vector<Incoming>& incoming, const IntakePlace& place) {
    IntakeResult result;
    const int total = static_cast<int>(incoming.size());
    int done = 0;
    try {
        for (const Incoming& one : incoming) {
            if (m_isStopped) {
                break;
            }
            const auto say = [this, done, total] { Q_EMIT progressed(done, total); };
            QMetaObject::invokeMethod(this, say, Qt::QueuedConnection);
            if (const auto kept = keep(m_files, one)) {
                result.kept.push_back(*kept);
            } else {
                result.refused << refusal(one, kept.error());
            }
            ++done;
        }
    } catch (const core::StoreError& error) {
        result.failure = error;
    }
    const auto give = [this, result, place] {
        --m_batches;
        Q_EMIT finished(result, place);
    };
    QMetaObject::invokeMethod(this, give, Qt::QueuedConnection);
}

} // namespace headcap::app::photo
