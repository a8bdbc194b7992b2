// A file system of SQLite's that fails when told to, and keeps a log of every write and sync, from
// which the state of the disk after a loss of power can be made: what was not synced is there by
// chance, sector by sector.
#pragma once

#include <cstdint>
#include <functional>
#include <map>
#include <mutex>
#include <random>
#include <string>
#include <vector>

namespace headcap::test {

struct DiskOp {
    enum class What { write, truncate, sync, remove, acknowledged };
    What what;
    std::string file{};      // its name alone
    std::int64_t offset = 0; // or the new length; or what was acknowledged
    std::string bytes{};
};

using DiskImage = std::map<std::string, std::string>;

class FaultVfs {
public:
    static constexpr const char* kName = "headcap-fault";
    // Registered with SQLite at the first call.
    static FaultVfs& instance();

    // The n-th write or sync from now on fails with this result code, and every one after it as
    // long as it is armed, for a disk that is full stays full.
    void failWrites(std::int64_t from, int code);
    void failSyncs(std::int64_t from, int code);
    void disarm();
    [[nodiscard]] bool hasFailed();

    void startLog();
    [[nodiscard]] std::vector<DiskOp> stopLog();
    void acknowledge(std::int64_t what);

    // For the methods of its files: SQLITE_OK, or the code to fail with.
    int onWrite(const std::string& file, std::int64_t offset, std::string bytes);
    int onSync(const std::string& file);
    void onTruncate(const std::string& file, std::int64_t length);
    void onRemove(const std::string& file);

private:
    struct Fault {
        std::int64_t left = -1; // unarmed
        int code = 0;
    };
    int strike(Fault& fault);

    std::mutex m_mutex;
    Fault m_writes{};
    Fault m_syncs{};
    bool m_hasFailed = false;
    bool m_isLogging = false;
    std::vector<DiskOp> m_log{};
};

// The disk after the power failed before the operation at `end`.
[[nodiscard]] DiskImage afterPowerLoss(DiskImage before, const std::vector<DiskOp>& log,
                                       std::size_t end, std::mt19937_64& chance);

} // namespace headcap::test
