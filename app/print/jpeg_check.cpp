#include "app/print/jpeg_check.h"

#include <optional>

#include <QByteArray>
#include <QIODevice>

namespace headcap::app::print {

namespace {

constexpr unsigned char kStartOfImage = 0xD8;
constexpr unsigned char kEndOfImage = 0xD9;
constexpr unsigned char kStartOfScan = 0xDA;

class Bytes {
public:
    explicit Bytes(QIODevice& device) : m_device(device) {}

    std::optional<unsigned char> next() {
        if (m_at == m_piece.size()) {
            m_piece = m_device.read(qint64{1} << 16);
            m_at = 0;
            if (m_piece.isEmpty()) {
                return std::nullopt;
            }
        }
        return static_cast<unsigned char>(m_piece[m_at++]);
    }

    bool skip(qsizetype count) {
        while (count > 0) {
            const qsizetype here = qMin(count, m_piece.size() - m_at);
            m_at += here;
            count -= here;
            if (count > 0 && !next().has_value()) {
                return false;
            }
            count -= count > 0 ? 1 : 0;
        }
        return true;
    }

private:
    QIODevice& m_device;
    QByteArray m_piece;
    qsizetype m_at = 0;
};

// The next marker, past fill bytes and, within a scan, past stuffed zeros and restarts.
std::optional<unsigned char> nextMarker(Bytes& bytes) {
    bool afterFf = false;
    for (auto byte = bytes.next(); byte.has_value(); byte = bytes.next()) {
        if (*byte == 0xFF) {
            afterFf = true;
        } else if (afterFf) {
            const bool isRestart = *byte >= 0xD0 && *byte <= 0xD7;
            if (*byte != 0 && !isRestart) {
                return byte;
            }
            afterFf = false;
        }
    }
    return std::nullopt;
}

bool skipSegment(Bytes& bytes) {
    const auto high = bytes.next();
    const auto low = bytes.next();
    if (!high.has_value() || !low.has_value()) {
        return false;
    }
    const int length = *high * 256 + *low;
    return length >= 2 && bytes.skip(length - 2);
}

} // namespace

JpegState checkJpeg(QIODevice& device) {
    Bytes bytes(device);
    if (bytes.next() != 0xFF || bytes.next() != kStartOfImage) {
        return JpegState::notJpeg;
    }
    bool hasScan = false;
    for (auto marker = nextMarker(bytes); marker.has_value(); marker = nextMarker(bytes)) {
        if (*marker == kEndOfImage) {
            return hasScan ? JpegState::whole : JpegState::truncated;
        }
        hasScan = hasScan || *marker == kStartOfScan;
        if (!skipSegment(bytes)) {
            return JpegState::truncated;
        }
    }
    return JpegState::truncated;
}

} // namespace headcap::app::print
