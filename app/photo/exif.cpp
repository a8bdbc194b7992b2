#include "app/photo/exif.h"

#include <QDateTime>
#include <QFile>

#include <exiv2/exiv2.hpp>

namespace headcap::app::photo {
namespace {

QString valueOf(const Exiv2::ExifData& data, const char* key) {
    const auto at = data.findKey(Exiv2::ExifKey(key));
    return at == data.end() ? QString{} : QString::fromStdString(at->toString()).trimmed();
}

// "+05:45"; nothing where it is not written so.
std::optional<int> secondsOf(const QString& offset) {
    if (offset.size() != 6 || (offset[0] != QLatin1Char('+') && offset[0] != QLatin1Char('-'))) {
        return std::nullopt;
    }
    const QTime time = QTime::fromString(offset.mid(1), QStringLiteral("HH:mm"));
    if (!time.isValid()) {
        return std::nullopt;
    }
    const int seconds = QTime(0, 0).secsTo(time);
    return offset[0] == QLatin1Char('-') ? -seconds : seconds;
}

std::optional<core::Instant> instantOf(const QString& taken, const QString& offset) {
    QDateTime time = QDateTime::fromString(taken, QStringLiteral("yyyy:MM:dd HH:mm:ss"));
    if (!time.isValid()) {
        return std::nullopt; // a camera whose clock was never set writes blanks or noughts
    }
    if (const auto seconds = secondsOf(offset)) {
        time.setOffsetFromUtc(*seconds);
    }
    return core::Instant{std::chrono::milliseconds{time.toMSecsSinceEpoch()}};
}

} // namespace

std::optional<core::Instant> captureTime(const QString& path) {
    try {
        const auto image = Exiv2::ImageFactory::open(QFile::encodeName(path).toStdString());
        image->readMetadata();
        const Exiv2::ExifData& data = image->exifData();
        return instantOf(valueOf(data, "Exif.Photo.DateTimeOriginal"),
                         valueOf(data, "Exif.Photo.OffsetTimeOriginal"));
    } catch (const Exiv2::AnyError&) {
        return std::nullopt; // a picture without such words, or with broken ones, is still one
    }
}

} // namespace headcap::app::photo
