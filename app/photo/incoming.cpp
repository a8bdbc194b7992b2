#include "app/photo/incoming.h"

#include <algorithm>

#include <QBuffer>
#include <QCoreApplication>
#include <QFileInfo>
#include <QImage>
#include <QMimeData>
#include <QUrl>

namespace headcap::app::photo {

std::vector<Incoming> incomingFrom(const QStringList& paths) {
    std::vector<Incoming> all;
    for (const QString& path : paths) {
        all.push_back({path, {}, QFileInfo(path).fileName()});
    }
    return all;
}

std::vector<Incoming> incomingFrom(const QMimeData& data) {
    QStringList paths;
    for (const QUrl& url : data.urls()) {
        if (url.isLocalFile()) {
            paths << url.toLocalFile();
        }
    }
    if (!paths.isEmpty()) {
        return incomingFrom(paths);
    }
    const auto image = qvariant_cast<QImage>(data.imageData());
    if (image.isNull()) {
        return {};
    }
    Incoming pasted;
    pasted.name = QCoreApplication::translate("photo", "pasted.png");
    QBuffer buffer(&pasted.bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "PNG");
    return {pasted};
}

bool holdsPhotographs(const QMimeData& data) {
    const QList<QUrl> urls = data.urls();
    return data.hasImage() ||
           std::any_of(urls.begin(), urls.end(), [](const QUrl& url) { return url.isLocalFile(); });
}

} // namespace headcap::app::photo
