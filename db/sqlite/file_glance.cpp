#include "db/sqlite/file_glance.h"

#include <array>
#include <cstddef>
#include <fstream>
#include <span>
#include <string_view>
#include <utility>
#include <vector>

#include "core/record/stores.h"
#include "db/files/disk_errors.h"

namespace headcap::db {
namespace {

constexpr std::string_view kMagic{"SQLite format 3\0", 16};
constexpr std::size_t kHeaderSize = 100;
constexpr std::size_t kWalHeaderSize = 32;
constexpr std::size_t kFrameHeaderSize = 24;

using Bytes = std::vector<unsigned char>;

std::uint32_t bigEndian(std::span<const unsigned char> bytes, std::size_t at) {
    return static_cast<std::uint32_t>(bytes[at]) << 24U |
           static_cast<std::uint32_t>(bytes[at + 1]) << 16U |
           static_cast<std::uint32_t>(bytes[at + 2]) << 8U | bytes[at + 3];
}

std::uint32_t littleEndian(std::span<const unsigned char> bytes, std::size_t at) {
    return static_cast<std::uint32_t>(bytes[at + 3]) << 24U |
           static_cast<std::uint32_t>(bytes[at + 2]) << 16U |
           static_cast<std::uint32_t>(bytes[at + 1]) << 8U | bytes[at];
}

// The WAL's running checksum over pairs of 32-bit words.
struct WalSum {
    std::uint32_t first = 0;
    std::uint32_t second = 0;
    bool isBigEndian = false;

    void add(std::span<const unsigned char> bytes) {
        const auto word = isBigEndian ? bigEndian : littleEndian;
        for (std::size_t i = 0; i + 8 <= bytes.size(); i += 8) {
            first += word(bytes, i) + second;
            second += word(bytes, i + 4) + first;
        }
    }
    [[nodiscard]] bool isAt(std::span<const unsigned char> bytes, std::size_t at) const {
        return bigEndian(bytes, at) == first && bigEndian(bytes, at + 4) == second;
    }
};

bool read(std::istream& in, Bytes& into) {
    in.read(reinterpret_cast<char*>(into.data()), static_cast<std::streamsize>(into.size()));
    return in.gcount() == static_cast<std::streamsize>(into.size());
}

// The first page as the last committed transaction of the WAL has it.
std::optional<Bytes> firstPageInWal(const std::filesystem::path& wal) {
    std::ifstream in(wal, std::ios::binary);
    Bytes header(kWalHeaderSize);
    if (!in || !read(in, header) || (bigEndian(header, 0) & ~1U) != 0x377f0682U) {
        return std::nullopt;
    }
    WalSum sum{.isBigEndian = (bigEndian(header, 0) & 1U) != 0};
    sum.add(std::span{header}.first(24));
    const std::uint32_t pageSize = bigEndian(header, 8);
    if (!sum.isAt(header, 24) || pageSize < 512 || pageSize > 65'536) {
        return std::nullopt;
    }
    std::optional<Bytes> committed;
    std::optional<Bytes> pending;
    Bytes frame(kFrameHeaderSize);
    Bytes page(pageSize);
    while (read(in, frame) && read(in, page)) {
        const bool isOfThisWal = bigEndian(frame, 8) == bigEndian(header, 16) &&
                                 bigEndian(frame, 12) == bigEndian(header, 20);
        sum.add(std::span{frame}.first(8));
        sum.add(page);
        if (!isOfThisWal || !sum.isAt(frame, 16)) {
            break;
        }
        if (bigEndian(frame, 0) == 1) {
            pending = page;
        }
        if (bigEndian(frame, 4) != 0 && pending) {
            committed = std::exchange(pending, std::nullopt);
        }
    }
    return committed;
}

} // namespace

std::optional<FileGlance> glanceAt(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    if (!in) {
        throw core::StoreError(core::StoreError::Code::ioFailed,
                               "the database can't be read: " + file.string());
    }
    Bytes header(kHeaderSize);
    if (!read(in, header) ||
        std::string_view(reinterpret_cast<const char*>(header.data()), kMagic.size()) != kMagic) {
        return std::nullopt;
    }
    auto wal = file;
    wal += "-wal";
    std::error_code ignored;
    const bool hasWal = std::filesystem::exists(wal, ignored) &&
                        std::filesystem::file_size(wal, ignored) > kWalHeaderSize;

    FileGlance glance;
    std::uint64_t pageSize = static_cast<std::uint64_t>(header[16]) << 8U | header[17];
    pageSize = pageSize == 1 ? 65'536 : pageSize;
    // The page count holds only where the change counter is that of the version that wrote it. A
    // write-back of the WAL that was cut off leaves the rest of the pages in the WAL.
    const bool countHolds = bigEndian(header, 24) == bigEndian(header, 92);
    const auto size = onDisk([&] { return std::filesystem::file_size(file); });
    glance.isCutShort = !hasWal && countHolds && size < pageSize * bigEndian(header, 28);
    if (const auto page = hasWal ? firstPageInWal(wal) : std::nullopt) {
        header.assign(page->begin(), page->begin() + kHeaderSize);
    }
    glance.applicationId = bigEndian(header, 68);
    glance.userVersion = bigEndian(header, 60);
    return glance;
}

} // namespace headcap::db
