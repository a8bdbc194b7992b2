#include "db/files/durable_file.h"

#include <cerrno>
#include <cstring>
#include <random>
#include <vector>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include "core/record/stores.h"
#include "db/files/disk_errors.h"

namespace headcap::db {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t kPiece = 1U << 18U;

[[noreturn]] void fail(const std::string& doing, const fs::path& path, int error) {
    throw core::StoreError(storeCodeOfErrno(error),
                           doing + " " + path.string() + ": " + std::strerror(error));
}

class Descriptor {
public:
    Descriptor(const fs::path& path, int flags, const char* doing)
        : m_path(path), m_number(::open(path.c_str(), flags | O_CLOEXEC, 0600)) {
        if (m_number < 0) {
            fail(doing, path, errno);
        }
    }
    ~Descriptor() {
        if (m_number >= 0) {
            ::close(m_number);
        }
    }
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;

    void write(std::span<const std::byte> bytes) {
        while (!bytes.empty()) {
            const ::ssize_t written = ::write(m_number, bytes.data(), bytes.size());
            if (written < 0 && errno != EINTR) {
                fail("writing", m_path, errno);
            }
            bytes = bytes.subspan(written < 0 ? 0 : static_cast<std::size_t>(written));
        }
    }
    std::size_t read(std::span<std::byte> into) {
        for (;;) {
            const ::ssize_t count = ::read(m_number, into.data(), into.size());
            if (count >= 0) {
                return static_cast<std::size_t>(count);
            }
            if (errno != EINTR) {
                fail("reading", m_path, errno);
            }
        }
    }
    void sync() {
        if (::fsync(m_number) != 0) {
            fail("writing to the disk", m_path, errno);
        }
    }

private:
    fs::path m_path;
    int m_number;
};

fs::path besideIt(const fs::path& file) {
    static thread_local std::mt19937_64 chance{std::random_device{}()};
    return file.parent_path() / (".incoming-" + std::to_string(chance()));
}

// Removed again unless it was given its name.
class Incoming {
public:
    explicit Incoming(const fs::path& file)
        : m_path(besideIt(file)),
          m_descriptor(m_path, O_WRONLY | O_CREAT | O_EXCL, "making a file in") {}
    ~Incoming() {
        if (!m_isNamed) {
            ::unlink(m_path.c_str());
        }
    }
    Incoming(const Incoming&) = delete;
    Incoming& operator=(const Incoming&) = delete;

    void write(std::span<const std::byte> bytes) { m_descriptor.write(bytes); }
    void nameIt(const fs::path& file) {
        m_descriptor.sync();
        renameDurably(m_path, file);
        m_isNamed = true;
    }

private:
    fs::path m_path;
    Descriptor m_descriptor;
    bool m_isNamed = false;
};

} // namespace

void makeFolder(const fs::path& folder) {
    if (folder.empty() || onDisk([&] { return fs::is_directory(folder); })) {
        return;
    }
    const fs::path parent = onDisk([&] { return fs::absolute(folder); }).parent_path();
    makeFolder(parent);
    if (::mkdir(folder.c_str(), 0700) != 0 && errno != EEXIST) {
        fail("making the folder", folder, errno);
    }
    syncFolder(parent);
}

void makePrivateFile(const fs::path& file) {
    const Descriptor made(file, O_WRONLY | O_CREAT, "making");
}

void writeDurably(const fs::path& file, std::span<const std::byte> bytes) {
    Incoming incoming(file);
    incoming.write(bytes);
    incoming.nameIt(file);
}

std::optional<std::int64_t> copyDurably(const fs::path& from, const fs::path& to,
                                        const std::optional<core::Digest>& expected) {
    Descriptor source(from, O_RDONLY, "reading");
    Incoming incoming(to);
    core::Sha256 hash;
    std::int64_t bytes = 0;
    std::vector<std::byte> piece(kPiece);
    while (const std::size_t count = source.read(piece)) {
        hash.add(std::span{piece}.first(count));
        incoming.write(std::span{piece}.first(count));
        bytes += static_cast<std::int64_t>(count);
    }
    if (expected && hash.finish() != *expected) {
        return std::nullopt;
    }
    incoming.nameIt(to);
    return bytes;
}

void syncFile(const fs::path& file) {
    Descriptor(file, O_RDONLY, "opening").sync();
}

void syncFolder(const fs::path& folder) {
    Descriptor(folder, O_RDONLY | O_DIRECTORY, "opening").sync();
}

void renameDurably(const fs::path& from, const fs::path& to) {
    if (::rename(from.c_str(), to.c_str()) != 0) {
        fail("naming", to, errno);
    }
    syncFolder(fs::absolute(to).parent_path());
}

core::Digest digestOfFile(const fs::path& file) {
    Descriptor source(file, O_RDONLY, "reading");
    core::Sha256 hash;
    std::vector<std::byte> piece(kPiece);
    while (const std::size_t count = source.read(piece)) {
        hash.add(std::span{piece}.first(count));
    }
    return hash.finish();
}

} // namespace headcap::db
