// The way to workshops on the disk, for whoever opens one: the window, the command line. The
// program is assembled with the one that keeps them in SQLite.
#pragma once

#include <filesystem>
#include <memory>

#include "core/record/safe_keeping.h"

namespace headcap::core {

// A workshop that is open; closed when it goes.
class OpenWorkshop {
public:
    virtual ~OpenWorkshop() = default;
    [[nodiscard]] virtual Stores stores() = 0;
};

// What became of a damaged workshop. What is not in `lost` is as it was.
struct SalvageReport {
    std::filesystem::path base{};     // the backup it began with; empty: none could be used
    std::int64_t entriesOfBase = 0;   // of the journal
    std::int64_t entriesReplayed = 0; // from the damaged journal, each proved by its hash
    std::int64_t recordsPutBack = 0;  // one by one, where the journal could not be followed
    std::int64_t filesCopied = 0;
    std::vector<std::string> lost{}; // sentences
    VerifyReport check{};            // of the new workshop
    [[nodiscard]] bool isWhole() const { return lost.empty() && check.isClean(); }
};

// Each throws StoreError, and changes nothing on the disk where it refuses.
class Workshops {
public:
    virtual ~Workshops() = default;
    [[nodiscard]] virtual std::unique_ptr<OpenWorkshop>
    open(const std::filesystem::path& folder) = 0;
    // In a folder that is missing or empty.
    [[nodiscard]] virtual std::unique_ptr<OpenWorkshop>
    create(const std::filesystem::path& folder) = 0;
    // A new workshop from a backup, in a folder that is missing or empty.
    // False: it was stopped, and the folder is as empty as it was.
    virtual bool restore(const std::filesystem::path& backup, const std::filesystem::path& folder,
                         const Progress& progress) = 0;
    // A new workshop of what can be saved of a damaged one, which is only read: the latest backup
    // (of those inside it, and of these folders), the journal from there on as far as it can be
    // read and proved, and of what lies beyond, the records that can be read.
    [[nodiscard]] virtual SalvageReport salvage(const std::filesystem::path& damaged,
                                                const std::filesystem::path& folder,
                                                const std::vector<std::filesystem::path>& backups,
                                                const Progress& progress) = 0;
};

} // namespace headcap::core
