#include "tests/faults/fault_vfs.h"

#include <algorithm>
#include <cstring>

#include <sqlite3.h>

namespace headcap::test {
namespace {

constexpr std::size_t kSector = 512;

sqlite3_vfs* system() {
    static sqlite3_vfs* const kSystem = sqlite3_vfs_find("unix");
    return kSystem;
}

// SQLite gives the memory; the system's own file follows in it.
struct File {
    sqlite3_file base;
    std::string* name;
    sqlite3_file* real() { return reinterpret_cast<sqlite3_file*>(this + 1); }
};

File* own(sqlite3_file* file) {
    return reinterpret_cast<File*>(file);
}

sqlite3_file* real(sqlite3_file* file) {
    return own(file)->real();
}

int closeFile(sqlite3_file* file) {
    const int code = real(file)->pMethods->xClose(real(file));
    delete own(file)->name;
    return code;
}

int writeFile(sqlite3_file* file, const void* bytes, int count, sqlite3_int64 offset) {
    const int code = FaultVfs::instance().onWrite(
        *own(file)->name, offset,
        std::string(static_cast<const char*>(bytes), static_cast<std::size_t>(count)));
    return code != SQLITE_OK ? code
                             : real(file)->pMethods->xWrite(real(file), bytes, count, offset);
}

int truncateFile(sqlite3_file* file, sqlite3_int64 length) {
    FaultVfs::instance().onTruncate(*own(file)->name, length);
    return real(file)->pMethods->xTruncate(real(file), length);
}

int syncFile(sqlite3_file* file, int flags) {
    const int code = FaultVfs::instance().onSync(*own(file)->name);
    return code != SQLITE_OK ? code : real(file)->pMethods->xSync(real(file), flags);
}

int readFile(sqlite3_file* file, void* into, int count, sqlite3_int64 offset) {
    return real(file)->pMethods->xRead(real(file), into, count, offset);
}
int fileSize(sqlite3_file* file, sqlite3_int64* size) {
    return real(file)->pMethods->xFileSize(real(file), size);
}
int lockFile(sqlite3_file* file, int level) {
    return real(file)->pMethods->xLock(real(file), level);
}
int unlockFile(sqlite3_file* file, int level) {
    return real(file)->pMethods->xUnlock(real(file), level);
}
int isReserved(sqlite3_file* file, int* out) {
    return real(file)->pMethods->xCheckReservedLock(real(file), out);
}
int control(sqlite3_file* file, int what, void* argument) {
    return real(file)->pMethods->xFileControl(real(file), what, argument);
}
int sectorSize(sqlite3_file*) {
    return static_cast<int>(kSector);
}
// No promise of atomic writes, nor that a write leaves its neighbours alone.
int characteristics(sqlite3_file*) {
    return 0;
}
int mapMemory(sqlite3_file* file, int page, int size, int extend, void volatile** out) {
    return real(file)->pMethods->xShmMap(real(file), page, size, extend, out);
}
int lockMemory(sqlite3_file* file, int offset, int count, int flags) {
    return real(file)->pMethods->xShmLock(real(file), offset, count, flags);
}
void memoryBarrier(sqlite3_file* file) {
    real(file)->pMethods->xShmBarrier(real(file));
}
int unmapMemory(sqlite3_file* file, int remove) {
    return real(file)->pMethods->xShmUnmap(real(file), remove);
}

const sqlite3_io_methods kMethods{
    .iVersion = 2,
    .xClose = closeFile,
    .xRead = readFile,
    .xWrite = writeFile,
    .xTruncate = truncateFile,
    .xSync = syncFile,
    .xFileSize = fileSize,
    .xLock = lockFile,
    .xUnlock = unlockFile,
    .xCheckReservedLock = isReserved,
    .xFileControl = control,
    .xSectorSize = sectorSize,
    .xDeviceCharacteristics = characteristics,
    .xShmMap = mapMemory,
    .xShmLock = lockMemory,
    .xShmBarrier = memoryBarrier,
    .xShmUnmap = unmapMemory,
    .xFetch = nullptr,
    .xUnfetch = nullptr,
};

std::string nameOf(const char* path) {
    const std::string whole = path == nullptr ? "" : path;
    return whole.substr(whole.rfind('/') + 1);
}

int openFile(sqlite3_vfs*, const char* path, sqlite3_file* file, int flags, int* outFlags) {
    std::memset(static_cast<void*>(file), 0, sizeof(File));
    const int code = system()->xOpen(system(), path, real(file), flags, outFlags);
    if (code == SQLITE_OK) {
        own(file)->name = new std::string(nameOf(path));
        file->pMethods = &kMethods;
    }
    return code;
}

int removeFile(sqlite3_vfs*, const char* path, int syncFolder) {
    FaultVfs::instance().onRemove(nameOf(path));
    return system()->xDelete(system(), path, syncFolder);
}

void write(std::string& file, std::int64_t offset, std::string_view bytes) {
    const auto at = static_cast<std::size_t>(offset);
    if (file.size() < at + bytes.size()) {
        file.resize(at + bytes.size());
    }
    std::copy(bytes.begin(), bytes.end(), file.begin() + offset);
}

void apply(std::string& file, const DiskOp& op) {
    if (op.what == DiskOp::What::write) {
        write(file, op.offset, op.bytes);
    } else {
        file.resize(static_cast<std::size_t>(op.offset));
    }
}

// Each sector of it by chance.
void applyInPart(std::string& file, const DiskOp& op, std::mt19937_64& chance) {
    std::bernoulli_distribution isKept(0.5);
    if (op.what != DiskOp::What::write) {
        if (isKept(chance)) {
            apply(file, op);
        }
        return;
    }
    for (std::size_t at = 0; at < op.bytes.size();) {
        const std::size_t place = static_cast<std::size_t>(op.offset) + at;
        const std::size_t length = std::min(kSector - place % kSector, op.bytes.size() - at);
        if (isKept(chance)) {
            write(file, static_cast<std::int64_t>(place),
                  std::string_view{op.bytes}.substr(at, length));
        }
        at += length;
    }
}

} // namespace

FaultVfs& FaultVfs::instance() {
    static FaultVfs vfs;
    static const bool kRegistered = [] {
        static sqlite3_vfs own = *system();
        own.zName = kName;
        own.pNext = nullptr;
        own.szOsFile = static_cast<int>(sizeof(File)) + system()->szOsFile;
        own.xOpen = openFile;
        own.xDelete = removeFile;
        return sqlite3_vfs_register(&own, 0) == SQLITE_OK;
    }();
    (void)kRegistered;
    return vfs;
}

void FaultVfs::failWrites(std::int64_t from, int code) {
    const std::lock_guard lock(m_mutex);
    m_writes = {from, code};
    m_hasFailed = false;
}

void FaultVfs::failSyncs(std::int64_t from, int code) {
    const std::lock_guard lock(m_mutex);
    m_syncs = {from, code};
    m_hasFailed = false;
}

void FaultVfs::disarm() {
    const std::lock_guard lock(m_mutex);
    m_writes = m_syncs = {};
}

bool FaultVfs::hasFailed() {
    const std::lock_guard lock(m_mutex);
    return m_hasFailed;
}

int FaultVfs::strike(Fault& fault) {
    if (fault.left < 0) {
        return SQLITE_OK;
    }
    if (fault.left > 0) {
        --fault.left;
        return SQLITE_OK;
    }
    m_hasFailed = true;
    return fault.code;
}

int FaultVfs::onWrite(const std::string& file, std::int64_t offset, std::string bytes) {
    const std::lock_guard lock(m_mutex);
    const int code = strike(m_writes);
    if (code == SQLITE_OK && m_isLogging) {
        m_log.push_back({DiskOp::What::write, file, offset, std::move(bytes)});
    }
    return code;
}

int FaultVfs::onSync(const std::string& file) {
    const std::lock_guard lock(m_mutex);
    const int code = strike(m_syncs);
    if (code == SQLITE_OK && m_isLogging) {
        m_log.push_back({DiskOp::What::sync, file});
    }
    return code;
}

void FaultVfs::onTruncate(const std::string& file, std::int64_t length) {
    const std::lock_guard lock(m_mutex);
    if (m_isLogging) {
        m_log.push_back({DiskOp::What::truncate, file, length});
    }
}

void FaultVfs::onRemove(const std::string& file) {
    const std::lock_guard lock(m_mutex);
    if (m_isLogging) {
        m_log.push_back({DiskOp::What::remove, file});
    }
}

void FaultVfs::startLog() {
    const std::lock_guard lock(m_mutex);
    m_log.clear();
    m_isLogging = true;
}

std::vector<DiskOp> FaultVfs::stopLog() {
    const std::lock_guard lock(m_mutex);
    m_isLogging = false;
    return std::move(m_log);
}

void FaultVfs::acknowledge(std::int64_t what) {
    const std::lock_guard lock(m_mutex);
    if (m_isLogging) {
        m_log.push_back({DiskOp::What::acknowledged, {}, what});
    }
}

DiskImage afterPowerLoss(DiskImage before, const std::vector<DiskOp>& log, std::size_t end,
                         std::mt19937_64& chance) {
    std::map<std::string, std::vector<const DiskOp*>> pending;
    for (std::size_t i = 0; i < end; ++i) {
        const DiskOp& op = log[i];
        switch (op.what) {
        case DiskOp::What::write:
        case DiskOp::What::truncate:
            pending[op.file].push_back(&op);
            break;
        case DiskOp::What::sync:
            for (const DiskOp* kept : pending[op.file]) {
                apply(before[op.file], *kept);
            }
            pending[op.file].clear();
            break;
        case DiskOp::What::remove:
            before.erase(op.file);
            pending.erase(op.file);
            break;
        case DiskOp::What::acknowledged:
            break;
        }
    }
    for (const auto& [file, ops] : pending) {
        for (const DiskOp* op : ops) {
            applyInPart(before[file], *op, chance);
        }
    }
    return before;
}

} // namespace headcap::test
