// Photographs read from files: upright by their EXIF orientation, no larger than asked for, in
// sRGB, on white. Scaled while decoding, so that 24 megapixels cost some 20 MB, not 100. All of it
// works on any thread.
#pragma once

#include <functional>

#include <QByteArray>
#include <QImage>
#include <QSize>
#include <QString>

#include <tl/expected.hpp>

#include "core/values/digest.h"

namespace headcap::app::print {

// Where the file of a photograph lies; empty where nobody knows.
using PhotoLookup = std::function<QString(const core::Digest&)>;

enum class PhotoFault { missing, notReadable, notAPicture, truncated, damaged };

[[nodiscard]] QString sentence(PhotoFault fault);

struct PhotoFacts {
    QSize upright;     // pixels, after EXIF orientation
    QString mediaType; // "image/jpeg"
};

// Looks a file over before it is taken in: a truncated one is refused, though it would decode.
[[nodiscard]] tl::expected<PhotoFacts, PhotoFault> inspectPhoto(const QString& path);

// Fits within `atMost`, which is upright, and is never enlarged.
[[nodiscard]] tl::expected<QImage, PhotoFault> readPhoto(const QString& path, QSize atMost);

// As good a JPEG as the bytes allow, `least` bounding how coarse it may get.
[[nodiscard]] QByteArray encodeJpeg(const QImage& image, qint64 bytes, int best = 92,
                                    int least = 60);

} // namespace headcap::app::print
