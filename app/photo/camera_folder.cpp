#include "app/photo/camera_folder.h"

#include <utility>

#include <QDir>
#include <QImageReader>

namespace headcap::app::photo {
namespace {

QStringList pictureNames() {
    QStringList names;
    for (const QByteArray& format : QImageReader::supportedImageFormats()) {
        names << QStringLiteral("*.") + QString::fromLatin1(format);
    }
    return names;
}

} // namespace

CameraFolder::Files CameraFolder::filesIn(const QString& folder) {
    Files files;
    for (const QFileInfo& one :
         QDir{folder}.entryInfoList(pictureNames(), QDir::Files | QDir::Readable, QDir::Name)) {
        files[one.absoluteFilePath()] = {one.size(), one.lastModified()};
    }
    return files;
}

void CameraFolder::watch(const QString& folder) {
    m_folder = folder;
    m_isFirst = true;
    m_growing.clear();
    m_known.clear();
    const bool hadAny = !m_waiting.empty();
    m_waiting.clear();
    if (hadAny) {
        Q_EMIT waitingChanged();
    }
}

QStringList CameraFolder::waiting() const {
    return {m_waiting.begin(), m_waiting.end()};
}

void CameraFolder::forget(const QStringList& paths) {
    for (const QString& path : paths) {
        m_waiting.erase(path);
    }
    Q_EMIT waitingChanged();
}

void CameraFolder::offerAgain(const QStringList& paths) {
    m_waiting.insert(paths.begin(), paths.end());
    Q_EMIT waitingChanged();
}

void CameraFolder::see(const Files& files) {
    if (std::exchange(m_isFirst, false)) {
        for (const auto& [path, seen] : files) {
            m_known.insert(path);
        }
        return;
    }
    const auto before = m_waiting;
    std::erase_if(m_waiting, [&](const QString& path) { return !files.contains(path); });
    for (const auto& [path, seen] : files) {
        if (m_known.contains(path)) {
            continue;
        }
        const auto last = m_growing.find(path);
        if (seen.bytes > 0 && last != m_growing.end() && last->second == seen) {
            m_known.insert(path);
            m_waiting.insert(path);
            m_growing.erase(last);
        } else {
            m_growing.insert_or_assign(path, seen);
        }
    }
    if (m_waiting != before) {
        Q_EMIT waitingChanged();
    }
}

} // namespace headcap::app::photo
