#include "app/print/photo_loader.h"

#include <utility>

#include <QDir>
#include <QFileInfo>
#include <QSaveFile>

namespace headcap::app::print {

namespace {

constexpr int kMemoryKb = 96 * 1024;
constexpr int kThreads = 2;
constexpr int kEdgeStep = 160;   // sizes are rounded up, so that a small zoom reads nothing anew
constexpr int kEdgeOnDisk = 480; // larger ones are quicker read than kept
constexpr qint64 kBytesOnDisk = 200'000;

QByteArray nameOf(const core::Digest& photograph) {
    return QByteArray::fromStdString(photograph.hex());
}

int rounded(int edge) {
    return (qMax(1, edge) + kEdgeStep - 1) / kEdgeStep * kEdgeStep;
}

void keep(const QImage& image, const QString& cacheFile) {
    if (!QDir().mkpath(QFileInfo(cacheFile).absolutePath())) {
        return; // a cache that can't be written is no fault
    }
    QSaveFile file(cacheFile);
    if (file.open(QIODevice::WriteOnly)) {
        file.write(encodeJpeg(image, kBytesOnDisk, 86));
        file.commit();
    }
}

tl::expected<QImage, PhotoFault> readThrough(const QString& path, const QString& cacheFile,
                                             int edge) {
    if (!cacheFile.isEmpty() && QFileInfo::exists(cacheFile)) {
        if (auto kept = readPhoto(cacheFile, {edge, edge}); kept) {
            return kept;
        }
    }
    auto image = readPhoto(path, {edge, edge});
    if (image && !cacheFile.isEmpty()) {
        keep(*image, cacheFile);
    }
    return image;
}

} // namespace

PhotoLoader::PhotoLoader(PhotoLookup photos, QString cacheFolder, QObject* parent)
    : QObject(parent), m_photos(std::move(photos)), m_cacheFolder(std::move(cacheFolder)),
      m_images(kMemoryKb) {
    m_pool.setMaxThreadCount(kThreads);
}

PhotoLoader::~PhotoLoader() {
    m_pool.clear();
    m_pool.waitForDone();
}

QImage PhotoLoader::find(const core::Digest& photograph, int edge) {
    edge = rounded(edge);
    const QByteArray key = nameOf(photograph) + ' ' + QByteArray::number(edge);
    if (const QImage* image = m_images.object(key); image != nullptr) {
        return *image;
    }
    if (!m_faults.contains(nameOf(photograph)) && !m_waiting.contains(key)) {
        const QString path = m_photos ? m_photos(photograph) : QString();
        start({photograph, edge, path, cacheFileOf(photograph, edge)}, key);
    }
    return {};
}

std::optional<PhotoFault> PhotoLoader::fault(const core::Digest& photograph) const {
    const auto found = m_faults.constFind(nameOf(photograph));
    return found == m_faults.constEnd() ? std::nullopt : std::optional(*found);
}

void PhotoLoader::forgetWaiting() {
    m_pool.clear();
    m_waiting.clear();
}

void PhotoLoader::start(const Wanted& wanted, const QByteArray& key) {
    m_waiting.insert(key);
    m_pool.start([this, wanted, key] {
        auto result = readThrough(wanted.path, wanted.cacheFile, wanted.edge);
        QMetaObject::invokeMethod(
            this, [this, wanted, key, result] { take(wanted, key, result); }, Qt::QueuedConnection);
    });
}

void PhotoLoader::take(const Wanted& wanted, const QByteArray& key,
                       const tl::expected<QImage, PhotoFault>& result) {
    m_waiting.remove(key);
    if (!result) {
        m_faults.insert(nameOf(wanted.photograph), result.error());
        Q_EMIT failed(wanted.photograph);
        return;
    }
    const auto cost = static_cast<int>(result->sizeInBytes() / 1024) + 1;
    m_images.insert(key, new QImage(*result), cost); // the cache owns it
    Q_EMIT ready(wanted.photograph);
}

QString PhotoLoader::cacheFileOf(const core::Digest& photograph, int edge) const {
    if (m_cacheFolder.isEmpty() || edge > kEdgeOnDisk) {
        return {};
    }
    const QString name = QString::fromLatin1(nameOf(photograph));
    return QStringLiteral("%1/%2/%3-%4.jpg").arg(m_cacheFolder, name.left(2), name).arg(edge);
}

} // namespace headcap::app::print
