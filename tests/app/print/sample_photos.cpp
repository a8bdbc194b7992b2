#include "tests/app/print/sample_photos.h"

#include <algorithm>
#include <cstdint>

#include <QBuffer>
#include <QFile>
#include <QProcess>
#include <QStandardPaths>

namespace headcap::app::print::test {

namespace {

std::uint64_t mixed(std::uint64_t value) {
    value = (value ^ (value >> 31)) * 0x9E3779B97F4A7C15U;
    return value ^ (value >> 29);
}

// The sum of two even chances, its deviation some 13 of 255.
int noiseOf(std::uint64_t chance, int shift) {
    return static_cast<int>((chance >> shift) & 31U) +
           static_cast<int>((chance >> (shift + 5)) & 31U) - 31;
}

} // namespace

// Noise of single pixels mostly goes when a photograph is lessened; what a camera's own smoothing
// leaves is coarser and stays: both are here.
QImage noisyPhotograph(int width, int height, unsigned seed) {
    constexpr int kGrain = 5;
    QImage image(width, height, QImage::Format_RGB32);
    for (int y = 0; y < height; ++y) {
        auto* line = reinterpret_cast<QRgb*>(image.scanLine(y));
        for (int x = 0; x < width; ++x) {
            const auto at = [seed](int column, int row) {
                return mixed((static_cast<std::uint64_t>(row) << 32U) +
                             static_cast<std::uint64_t>(column) + 1 + seed * 0x51ED270BU);
            };
            const std::uint64_t fine = at(x, y);
            const std::uint64_t coarse = at(x / kGrain, y / kGrain);
            const int light = 200 - 90 * x / width - 40 * y / height;
            const auto tone = [&](int add, int shift) {
                return std::clamp(light + add + noiseOf(fine, shift) + noiseOf(coarse, shift) / 2,
                                  0, 255);
            };
            line[x] = qRgb(tone(12, 20), tone(0, 32), tone(-22, 44));
        }
    }
    return image;
}

QByteArray jpegOf(const QImage& image, int quality) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "JPEG", quality);
    return bytes;
}

QByteArray withOrientation(const QByteArray& jpeg, int orientation) {
    // Exif 2.3, 4.5: a TIFF header and one directory with the one field 0112 (Orientation, SHORT).
    QByteArray tiff("MM\0*\0\0\0\x08\0\x01\x01\x12\0\x03\0\0\0\x01\0\0\0\0\0\0\0\0", 26);
    tiff[19] = static_cast<char>(orientation);
    const QByteArray body = QByteArray("Exif\0\0", 6) + tiff;
    QByteArray segment("\xFF\xE1\0\0", 4);
    segment[3] = static_cast<char>(body.size() + 2);
    return jpeg.left(2) + segment + body + jpeg.mid(2);
}

void writeFile(const QString& path, const QByteArray& bytes) {
    QFile file(path);
    if (file.open(QIODevice::WriteOnly)) {
        file.write(bytes);
    }
}

QByteArray readFile(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

ProgramResult runProgram(const QString& program, const QStringList& arguments) {
    const QString path = QStandardPaths::findExecutable(program);
    if (path.isEmpty()) {
        return {};
    }
    QProcess process;
    process.start(path, arguments);
    process.waitForFinished(60'000);
    return {true, process.exitCode(), process.readAllStandardOutput()};
}

} // namespace headcap::app::print::test
