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

void PhotoIntake::take(const std::vector<Incoming>& incoming, const IntakePlace& place) {
    if (incoming.empty()) {
        return;
    }
    const auto result = std::make_shared<IntakeResult>();
    start({.files = static_cast<int>(incoming.size()),
           .takeOne =
               [this, incoming, result](int at) {
                   const Incoming& one = incoming[static_cast<std::size_t>(at)];
                   if (const auto kept = keep(m_files, one)) {
                       result->kept.push_back(*kept);
                   } else {
                       result->refused << refusal(one, kept.error());
                   }
               },
           .give =
               [this, place, result](const std::optional<core::StoreError>& failure) {
                   result->failure = failure;
                   Q_EMIT finished(*result, place);
               }});
}

} // namespace headcap::app::photo
