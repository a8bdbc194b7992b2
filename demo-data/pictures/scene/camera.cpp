#include "demo-data/pictures/scene/camera.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstring>
#include <stdexcept>

#include <QBuffer>
#include <QTransform>
#include <exiv2/exiv2.hpp>

namespace headcap::demo {
namespace {

// Sums of four chances lie near a bell; a table of them is as good, and quick.
class Bell {
public:
    explicit Bell(Seed seed) {
        for (std::size_t i = 0; i < m_values.size(); ++i) {
            float sum = -2;
            for (int k = 0; k < 4; ++k) {
                sum += chanceAt(seed, static_cast<int>(i), k);
            }
            m_values[i] = sum * 1.73F; // of deviation one
        }
    }
    [[nodiscard]] float operator[](Seed at) const { return m_values[at & (kSize - 1)]; }

private:
    static constexpr std::size_t kSize = 4096;
    std::array<float, kSize> m_values{};
};

struct Falling {
    float x;
    float y;
};

float lampAt(float u, float v, const Falling& lamp) {
    const float dx = u - lamp.x;
    const float dy = v - lamp.y;
    return 1.05F - 0.16F * (dx * dx + dy * dy);
}

int channel(float value) {
    return static_cast<int>(value < 0 ? 0 : value > 255 ? 255 : value + 0.5F);
}

QByteArray jpegOf(const QImage& image) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    if (!buffer.open(QIODevice::WriteOnly) || !image.save(&buffer, "JPEG", 90)) {
        throw std::runtime_error("a photograph could not be written as JPEG");
    }
    return bytes;
}

void writeExif(QByteArray& jpeg, const Frame& frame) {
    auto image = Exiv2::ImageFactory::open(reinterpret_cast<const Exiv2::byte*>(jpeg.constData()),
                                           static_cast<long>(jpeg.size()));
    image->readMetadata();
    Exiv2::ExifData exif;
    exif["Exif.Image.Orientation"] = static_cast<std::uint16_t>(frame.sideways ? 6 : 1);
    exif["Exif.Image.ImageDescription"] = frame.title;
    if (!frame.takenAt.empty()) {
        exif["Exif.Photo.DateTimeOriginal"] = frame.takenAt;
        exif["Exif.Photo.DateTimeDigitized"] = frame.takenAt;
        exif["Exif.Image.DateTime"] = frame.takenAt;
    }
    image->setExifData(exif);
    image->writeMetadata();
    Exiv2::BasicIo& io = image->io();
    if (io.open() != 0) {
        throw std::runtime_error("a photograph's EXIF could not be read back");
    }
    const Exiv2::DataBuf written = io.read(static_cast<long>(io.size()));
    jpeg = QByteArray(reinterpret_cast<const char*>(written.pData_),
                      static_cast<qsizetype>(written.size_));
}

} // namespace

void expose(QImage& image, const Exposure& exposure) {
    const Bell bell{mixed(exposure.seed, 11)};
    const Falling lamp{0.34F + 0.1F * chanceAt(exposure.seed, 1, 1),
                       0.28F + 0.1F * chanceAt(exposure.seed, 1, 2)};
    const auto width = static_cast<float>(image.width());
    const auto height = static_cast<float>(image.height());
    for (int y = 0; y < image.height(); ++y) {
        auto* line = reinterpret_cast<QRgb*>(image.scanLine(y));
        const float v = static_cast<float>(y) / height;
        Seed dice = mixed(exposure.seed, static_cast<Seed>(y) + 100);
        float grain = 0;
        for (int x = 0; x < image.width(); ++x) {
            const float u = static_cast<float>(x) / width;
            const float edge = (u - 0.5F) * (u - 0.5F) + (v - 0.5F) * (v - 0.5F);
            const float lamps = exposure.lift * lampAt(u, v, lamp) * (1 - 0.20F * edge);
            dice = dice * 1664525U + 1013904223U;
            const QRgb p = line[x];
            const float bright = static_cast<float>(qGreen(p)) * (1.0F / 255.0F);
            const float sigma = exposure.noise * (1.3F + 2.1F * std::sqrt(bright));
            // Neighbours share some of it, as the colours of a sensor are read together.
            grain = 0.45F * grain + bell[dice >> 20] * sigma;
            const float blue = bell[dice >> 12] * sigma * 0.55F;
            const float red = bell[dice >> 8] * sigma * 0.4F;
            line[x] = qRgb(
                channel(static_cast<float>(qRed(p)) * lamps * (1 + exposure.warmth) + grain + red),
                channel(static_cast<float>(qGreen(p)) * lamps + grain),
                channel(static_cast<float>(qBlue(p)) * lamps * (1 - exposure.warmth) + grain +
                        blue));
        }
    }
}

std::vector<std::byte> developed(const QImage& image, const Frame& frame) {
    QByteArray jpeg = jpegOf(frame.sideways ? image.transformed(QTransform().rotate(-90)) : image);
    if (!frame.takenAt.empty() || frame.sideways) {
        writeExif(jpeg, frame);
    }
    std::vector<std::byte> bytes(static_cast<std::size_t>(jpeg.size()));
    std::memcpy(bytes.data(), jpeg.constData(), bytes.size());
    return bytes;
}

} // namespace headcap::demo
