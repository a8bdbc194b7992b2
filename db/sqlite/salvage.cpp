#include "db/sqlite/salvage.h"

#include <algorithm>

#include "db/files/durable_file.h"
#include "db/files/journal_note.h"
#include "db/files/shelves.h"
#include "db/sqlite/backup.h"
#include "db/sqlite/damaged_database.h"
#include "db/sqlite/file_glance.h"
#include "db/sqlite/folder_check.h"
#include "db/sqlite/replay.h"
#include "db/sqlite/salvage_records.h"
#include "db/sqlite/search_sql.h"
#include "db/sqlite/upkeep.h"
#include "db/sqlite/verify.h"
#include "db/sqlite/write_transaction.h"

namespace headcap::db {
namespace {

namespace fs = std::filesystem;
using core::StoreError;

// Names that begin so are nobody's where a salvaging was cut off.
constexpr const char* kMaking = ".new-workshop.sqlite";
constexpr const char* kDamagedCopy = ".new-damaged.sqlite";

struct Backup {
    fs::path file;
    JournalHead head;
};

std::optional<Backup> soundBackup(const fs::path& file) {
    try {
        const auto glance = glanceAt(file);
        if (!glance || glance->isCutShort ||
            glance->applicationId != static_cast<std::uint32_t>(kApplicationId) ||
            glance->userVersion > static_cast<std::uint32_t>(newestVersion(migrations()))) {
            return std::nullopt;
        }
        Connection connection(file, Access::read, {});
        Query check(connection, "PRAGMA quick_check(1)");
        if (check.step() && check.text(0) == "ok") {
            return Backup{file, journalHead(connection)};
        }
    } catch (const StoreError&) {
    }
    return std::nullopt;
}

// The one that has come furthest first.
std::vector<Backup> soundBackups(const fs::path& workshop, const std::vector<fs::path>& folders) {
    std::vector<fs::path> files = insideBackups(workshop);
    for (const fs::path& folder : folders) {
        for (const char* name : {kBackupName, "previous-backup.sqlite"}) {
            files.push_back(folder / name);
        }
    }
    std::vector<Backup> sound;
    for (const fs::path& file : files) {
        if (auto backup = fs::exists(file) ? soundBackup(file) : std::nullopt) {
            sound.push_back(*std::move(backup));
        }
    }
    std::stable_sort(sound.begin(), sound.end(), [](const Backup& a, const Backup& b) {
        return a.head.sequence > b.head.sequence;
    });
    return sound;
}

void refuseNewer(const fs::path& database) {
    const auto glance = fs::exists(database) ? glanceAt(database) : std::nullopt;
    if (glance && glance->applicationId == static_cast<std::uint32_t>(kApplicationId) &&
        glance->userVersion > static_cast<std::uint32_t>(newestVersion(migrations()))) {
        throw StoreError(StoreError::Code::newerProgram,
                         "the workshop was made by a newer program");
    }
}

class Salvage {
public:
    Salvage(const fs::path& damaged, const fs::path& folder, const std::vector<fs::path>& backups,
            const core::Clock& clock)
        : m_from(damaged), m_to(folder), m_folders(backups), m_clock(clock),
          m_backups(soundBackups(damaged, backups)),
          m_damaged(damaged / kDatabaseName, folder / kDamagedCopy, filesOf(m_backups)) {}

    core::SalvageReport run(const core::Progress& progress) {
        if (m_damaged.isLost() && m_backups.empty()) {
            throw StoreError(StoreError::Code::truncated,
                             "nothing of the database in " + m_from.string() +
                                 " can be read, and there is no backup of it");
        }
        begin();
        {
            Connection making(m_to / kMaking, Access::write, {});
            making.run("PRAGMA synchronous = OFF"); // synced whole, below
            making.run("PRAGMA journal_mode = WAL");
            replay(making);
        }
        syncFile(m_to / kMaking);
        // The files first: a workshop that is there has what it names.
        copyFiles(progress);
        renameDurably(m_to / kMaking, m_to / kDatabaseName);
        check(progress);
        return std::move(m_report);
    }

private:
    static std::vector<fs::path> filesOf(const std::vector<Backup>& backups) {
        std::vector<fs::path> files;
        for (const Backup& backup : backups) {
            files.push_back(backup.file);
        }
        return files;
    }

    // A backup that goes on otherwise than the damaged journal is not its beginning.
    [[nodiscard]] bool isBeginning(const Backup& backup) {
        if (m_damaged.isLost()) {
            return true;
        }
        const auto entry = m_damaged.entry(backup.head.sequence);
        return !entry.row || entry.row->hash == backup.head.hash;
    }

    void begin() {
        for (const Backup& backup : m_backups) {
            if (isBeginning(backup)) {
                Connection from(backup.file, Access::read, {});
                const auto head = copyDatabase(from, m_to / kMaking, CopyFor::working);
                m_report.base = backup.file;
                m_report.entriesOfBase = head.sequence;
                return;
            }
            m_report.lost.push_back(backup.file.string() +
                                    " goes on otherwise than the journal, and was not used.");
        }
        for (const char* suffix : {"", "-wal", "-shm"}) {
            fs::remove(m_to / (std::string{kMaking} + suffix));
        }
        makePrivateFile(m_to / kMaking);
    }

    // The entry after a head. Where its hash alone was changed, the entry behind it tells: it
    // follows the hash that should be there.
    std::optional<EntryRow> next(const JournalHead& head) {
        auto entry = m_damaged.entry(head.sequence + 1);
        if (entry.row && hashOf(*entry.row, head.hash) != entry.row->hash) {
            const std::string should = hashOf(*entry.row, head.hash);
            const auto behind = m_damaged.entry(head.sequence + 2);
            if (behind.row && hashOf(*behind.row, should) == behind.row->hash) {
                entry.row->hash = should;
            }
        }
        return std::move(entry.row);
    }

    void replay(Connection& making) {
        const auto& steps = migrations();
        JournalHead proved = schemaVersionOf(making) > 0 ? journalHead(making) : JournalHead{};
        if (!m_damaged.isLost()) {
            m_report.entriesReplayed = replayJournal(
                making, steps, [this](const JournalHead& head) { return next(head); });
            proved = journalHead(making);
        }
        migrate(making, steps, m_clock.now(), [] {});
        {
            WriteTransaction transaction(making);
            rebuildSearchIndex(making);
            transaction.commit();
        }
        if (!m_damaged.isLost()) {
            auto records = salvageRecords(m_damaged, making, proved, m_clock.now());
            m_report.recordsPutBack = records.putBack;
            m_report.lost.insert(m_report.lost.end(), records.lost.begin(), records.lost.end());
        }
        const auto noted = notedJournal(m_from);
        const std::int64_t last =
            std::max(proved.sequence,
                     m_damaged.isLost() ? 0 : m_damaged.lastEntry(proved.sequence).sequence);
        if (noted && noted->sequence > last) {
            m_report.lost.push_back("Entries " + std::to_string(last + 1) + " to " +
                                    std::to_string(noted->sequence) +
                                    " of the journal were written, and nothing of them is left.");
        }
    }

    void copyFiles(const core::Progress& progress) {
        std::vector<fs::path> sources{m_from};
        sources.insert(sources.end(), m_folders.begin(), m_folders.end());
        for (const fs::path& source : sources) {
            const auto total = static_cast<std::int64_t>(filesOnShelves(source).size());
            const auto copied = copyShelves(source, m_to, [&](std::int64_t done) {
                return progress(done, std::max(done, total));
            });
            m_report.filesCopied += copied.copied;
        }
    }

    void check(const core::Progress& progress) {
        Connection made(m_to / kDatabaseName, Access::write, {});
        m_report.check = verifyWorkshop(made, FolderFileStore(m_to), progress);
    }

    fs::path m_from;
    fs::path m_to;
    const std::vector<fs::path>& m_folders;
    const core::Clock& m_clock;
    std::vector<Backup> m_backups;
    DamagedDatabase m_damaged;
    core::SalvageReport m_report{};
};

} // namespace

core::SalvageReport salvageWorkshop(const fs::path& damaged, const fs::path& folder,
                                    const std::vector<fs::path>& backups, const core::Clock& clock,
                                    const WorkshopSettings& settings,
                                    const core::Progress& progress) {
    if (!fs::is_directory(damaged)) {
        throw StoreError(StoreError::Code::missing, "there is no folder " + damaged.string());
    }
    refuseNewer(damaged / kDatabaseName);
    const fs::path whole = fs::absolute(folder);
    checkCanCreate(whole, settings);
    makeFolder(whole);
    return Salvage(fs::absolute(damaged), whole, backups, clock).run(progress);
}

} // namespace headcap::db
