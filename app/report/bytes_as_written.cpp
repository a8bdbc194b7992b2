#include "app/report/bytes_as_written.h"

#include <span>

#include <QFile>

namespace headcap::app {

std::optional<std::vector<std::byte>> bytesAsWritten(const QString& path,
                                                     const core::Digest& digest) {
    QFile file{path};
    if (!file.open(QIODevice::ReadOnly)) {
        return std::nullopt;
    }
    const QByteArray read = file.readAll();
    const auto bytes =
        std::as_bytes(std::span{read.constData(), static_cast<std::size_t>(read.size())});
    if (file.error() != QFileDevice::NoError || core::sha256(bytes) != digest) {
        return std::nullopt;
    }
    return std::vector<std::byte>{bytes.begin(), bytes.end()};
}

} // namespace headcap::app
