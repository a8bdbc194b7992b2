// Photographs for the screen, read off the GUI thread: asked for while painting, given when they
// are there. Small ones are kept as files too, in a folder that may be deleted at any time. Lives
// in the GUI thread; the lookup is called there.
#pragma once

#include <optional>

#include <QByteArray>
#include <QCache>
#include <QHash>
#include <QImage>
#include <QObject>
#include <QSet>
#include <QString>
#include <QThreadPool>

#include "app/print/photo_reader.h"

namespace headcap::app::print {

class PhotoLoader : public QObject {
    Q_OBJECT

public:
    // Without a folder nothing is kept on disk.
    explicit PhotoLoader(PhotoLookup photos, QString cacheFolder = {}, QObject* parent = nullptr);
    ~PhotoLoader() override;

    // The photograph with its longer side of about `edge` pixels (more, never fewer, unless it has
    // no more); null while it is being read, or where it can't be.
    [[nodiscard]] QImage find(const core::Digest& photograph, int edge);
    [[nodiscard]] std::optional<PhotoFault> fault(const core::Digest& photograph) const;
    // Leaves off what was asked for and is not begun: the page was scrolled away.
    void forgetWaiting();

Q_SIGNALS:
    void ready(const headcap::core::Digest& photograph);
    void failed(const headcap::core::Digest& photograph);

private:
    struct Wanted {
        core::Digest photograph;
        int edge = 0;
        QString path;
        QString cacheFile; // empty: not kept on disk
    };
    void start(const Wanted& wanted, const QByteArray& key);
    void take(const Wanted& wanted, const QByteArray& key,
              const tl::expected<QImage, PhotoFault>& result);
    [[nodiscard]] QString cacheFileOf(const core::Digest& photograph, int edge) const;

    PhotoLookup m_photos;
    QString m_cacheFolder;
    QCache<QByteArray, QImage> m_images; // cost in kB
    QSet<QByteArray> m_waiting;
    QHash<QByteArray, PhotoFault> m_faults;
    QThreadPool m_pool;
};

} // namespace headcap::app::print
