#include "app/papers/file_intake.h"

#include <QFile>
#include <QFileInfo>
#include <QMimeDatabase>

#include "app/session/words.h"

namespace headcap::app::papers {
namespace {

// Read whole before it is hashed and kept.
constexpr qint64 kMostBytes = 512 * 1024 * 1024;

struct Taken {
    std::optional<KeptFile> kept{};
    QString refusal{};
};

Taken keep(core::FileStore& files, const QString& path) {
    const QFileInfo info(path);
    const QString name = info.fileName();
    if (info.isDir()) {
        return {.refusal = FileIntake::tr("%1 is a folder; choose the files in it.").arg(name)};
    }
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) {
        return {.refusal = FileIntake::tr("%1 can't be read: %2.").arg(name, file.errorString())};
    }
    if (file.size() > kMostBytes) {
        return {.refusal = FileIntake::tr("%1 is larger than 512 MB; keep it elsewhere, and attach "
                                          "a note of where it is.")
                               .arg(name)};
    }
    const QByteArray bytes = file.readAll();
    if (file.error() != QFileDevice::NoError) {
        return {.refusal = FileIntake::tr("%1 can't be read: %2.").arg(name, file.errorString())};
    }
    if (bytes.isEmpty()) {
        return {.refusal = FileIntake::tr("%1 is empty.").arg(name)};
    }
    const auto span =
        std::as_bytes(std::span{bytes.constData(), static_cast<std::size_t>(bytes.size())});
    const core::Digest digest =
        files.put(core::FileStore::Shelf::attachment, span, toCore(info.suffix()));
    return {.kept = KeptFile{.digest = digest,
                             .name = name,
                             .mediaType =
                                 QMimeDatabase{}.mimeTypeForFileNameAndData(name, bytes).name(),
                             .bytes = bytes.size()}};
}

} // namespace

void FileIntake::take(const QStringList& paths, const Subject& subject) {
    if (paths.isEmpty()) {
        return;
    }
    const auto result = std::make_shared<IntakeResult>();
    start({.files = static_cast<int>(paths.size()),
           .takeOne =
               [this, paths, result](int at) {
                   Taken taken = keep(m_files, paths[at]);
                   if (taken.kept) {
                       result->kept.push_back(std::move(*taken.kept));
                   } else {
                       result->refused << taken.refusal;
                   }
               },
           .give =
               [this, subject, result](const std::optional<core::StoreError>& failure) {
                   result->failure = failure;
                   Q_EMIT finished(*result, subject);
               }});
}

} // namespace headcap::app::papers
