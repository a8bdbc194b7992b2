#include "app/print/photo_reader.h"

#include <QBuffer>
#include <QColorSpace>
#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QImageReader>
#include <QImageWriter>
#include <QPainter>

#include "app/print/jpeg_check.h"

namespace headcap::app::print {

namespace {

constexpr int kMegabytesAtMost = 1024; // of one decoded picture: 256 megapixels
constexpr int kTrialEdge = 64;

QString say(const char* text) {
    return QCoreApplication::translate("PhotoFault", text);
}

void prepare(QImageReader& reader) {
    static const bool isSet = [] {
        QImageReader::setAllocationLimit(kMegabytesAtMost);
        return true;
    }();
    Q_UNUSED(isSet)
    reader.setDecideFormatFromContent(true);
    reader.setAutoTransform(true);
}

bool turnsOnItsSide(const QImageReader& reader) {
    return reader.transformation().testFlag(QImageIOHandler::TransformationRotate90);
}

QSize uprightSize(const QImageReader& reader) {
    return turnsOnItsSide(reader) ? reader.size().transposed() : reader.size();
}

QImage onWhite(const QImage& image) {
    QImage flat(image.size(), QImage::Format_RGB32);
    flat.fill(Qt::white);
    QPainter painter(&flat);
    painter.drawImage(0, 0, image);
    return flat;
}

// Plain sRGB pixels without profile or transparency.
QImage plain(QImage image) {
    const QColorSpace space = image.colorSpace();
    if (space.isValid() && space != QColorSpace(QColorSpace::SRgb)) {
        image.convertToColorSpace(QColorSpace::SRgb);
    }
    image = image.hasAlphaChannel() ? onWhite(image)
                                    : std::move(image).convertToFormat(QImage::Format_RGB32);
    image.setColorSpace({});
    return image;
}

bool fitsWithin(QSize size, QSize room) {
    return size.width() <= room.width() && size.height() <= room.height();
}

tl::expected<void, PhotoFault> checkFile(QFile& file) {
    if (!QFileInfo(file).isFile()) {
        return tl::unexpected(PhotoFault::missing);
    }
    if (!file.open(QIODevice::ReadOnly)) {
        return tl::unexpected(PhotoFault::notReadable);
    }
    return {};
}

} // namespace

QString sentence(PhotoFault fault) {
    switch (fault) {
    case PhotoFault::missing:
        return say(QT_TRANSLATE_NOOP("PhotoFault", "The file of this photograph is missing."));
    case PhotoFault::notReadable:
        return say(QT_TRANSLATE_NOOP("PhotoFault", "The file of this photograph can't be read."));
    case PhotoFault::notAPicture:
        return say(QT_TRANSLATE_NOOP("PhotoFault", "This file is not a picture of a known kind."));
    case PhotoFault::truncated:
        return say(
            QT_TRANSLATE_NOOP("PhotoFault", "The end of this photograph's file is missing."));
    case PhotoFault::damaged:
        return say(QT_TRANSLATE_NOOP("PhotoFault", "The file of this photograph is damaged."));
    }
    return {};
}

tl::expected<PhotoFacts, PhotoFault> inspectPhoto(const QString& path) {
    QFile file(path);
    if (const auto opened = checkFile(file); !opened) {
        return tl::unexpected(opened.error());
    }
    QImageReader reader(&file);
    prepare(reader);
    if (!reader.canRead()) {
        return tl::unexpected(PhotoFault::notAPicture);
    }
    const QString mediaType =
        QStringLiteral("image/") + QString::fromLatin1(reader.format().toLower());
    if (reader.format() == "jpeg") {
        QFile again(path);
        if (!again.open(QIODevice::ReadOnly)) {
            return tl::unexpected(PhotoFault::notReadable);
        }
        if (checkJpeg(again) != JpegState::whole) {
            return tl::unexpected(PhotoFault::truncated);
        }
    }
    QSize upright = uprightSize(reader);
    if (reader.size().isValid()) {
        reader.setScaledSize(
            reader.size().scaled(kTrialEdge, kTrialEdge, Qt::KeepAspectRatio).expandedTo({1, 1}));
    }
    const QImage trial = reader.read();
    if (trial.isNull()) {
        return tl::unexpected(PhotoFault::damaged);
    }
    return PhotoFacts{upright.isValid() ? upright : trial.size(), mediaType};
}

tl::expected<QImage, PhotoFault> readPhoto(const QString& path, QSize atMost) {
    QFile file(path);
    if (const auto opened = checkFile(file); !opened) {
        return tl::unexpected(opened.error());
    }
    QImageReader reader(&file);
    prepare(reader);
    if (!reader.canRead()) {
        return tl::unexpected(PhotoFault::notAPicture);
    }
    const QSize size = reader.size();
    const QSize room = turnsOnItsSide(reader) ? atMost.transposed() : atMost;
    if (size.isValid() && !fitsWithin(size, room)) {
        reader.setScaledSize(size.scaled(room, Qt::KeepAspectRatio).expandedTo({1, 1}));
    }
    QImage image = reader.read();
    if (image.isNull()) {
        return tl::unexpected(PhotoFault::damaged);
    }
    if (!fitsWithin(image.size(), atMost)) { // of a kind that does not tell its size beforehand
        image = image.scaled(atMost, Qt::KeepAspectRatio, Qt::SmoothTransformation);
    }
    return plain(std::move(image));
}

QByteArray encodeJpeg(const QImage& image, qint64 bytes, int best, int least) {
    QByteArray encoded;
    for (int quality = best;; quality -= 4) {
        encoded.clear();
        QBuffer buffer(&encoded);
        buffer.open(QIODevice::WriteOnly);
        QImageWriter writer(&buffer, "jpeg");
        writer.setQuality(quality);
        writer.setOptimizedWrite(true);
        writer.write(image);
        if (encoded.size() <= bytes || quality - 4 < least) {
            return encoded;
        }
    }
}

} // namespace headcap::app::print
