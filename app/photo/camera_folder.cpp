#include "app/photo/camera_folder.h"

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

void CameraFolder::watch(const QString& folder) {
    m_folder = folder;
    m_growing.clear();
    m_known.clear();
    const bool hadAny = !m_waiting.empty();
    m_waiting.clear();
    for (const auto& [path, seen] : there()) {
        m_known.insert(path);
    }
    if (hadAny) {
        Q_EMIT waitingChanged();
    }
}

std::map<QString, CameraFolder::Seen> CameraFolder::there() const {
    std::map<QString, Seen> files;
    if (m_folder.isEmpty()) {
        return files;
    }
    for (const QFileInfo& one :
         QDir{m_folder}.entryInfoList(pictureNames(), QDir::Files | QDir::Readable, QDir::Name)) {
        files[one.absoluteFilePath()] = {one.size(), one.lastModified()};
    }
    return files;
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

void CameraFolder::look() {
    const auto files = there();
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
