#include "db/sqlite/upkeep.h"

#include <algorithm>
#include <iterator>

#include "db/files/disk_errors.h"
#include "db/files/durable_file.h"
#include "db/files/shelves.h"
#include "db/sqlite/backup.h"
#include "db/sqlite/folder_check.h"
#include "db/sqlite/kept_files.h"
#include "db/sqlite/search_sql.h"
#include "db/sqlite/verify.h"
#include "db/sqlite/write_transaction.h"

namespace headcap::db {
namespace {

namespace fs = std::filesystem;
using core::StoreError;

bool isWithin(const fs::path& inner, const fs::path& outer) {
    const fs::path relative =
        fs::weakly_canonical(inner).lexically_relative(fs::weakly_canonical(outer));
    return !relative.empty() && *relative.begin() != "..";
}

constexpr std::string_view kLastOutside = "last_outside_backup";
constexpr std::string_view kOutsideFolder = "outside_backup_folder";

std::optional<std::string> meta(Connection& connection, std::string_view name) {
    Query query(connection, "SELECT value FROM meta WHERE name = ?");
    return query.with(name).step() ? std::optional{query.text(0)} : std::nullopt;
}

// The backup in a folder. Between the two renames that put a new one in its place there is none
// of that name, and the one before it holds.
fs::path databaseIn(const fs::path& backup) {
    const fs::path usual = backup / kBackupName;
    const fs::path previous = backup / (std::string{"previous-"} + kBackupName);
    return fs::exists(usual) || !fs::exists(previous) ? usual : previous;
}

// A folder for backups holds the backup of one workshop, and is none itself.
void checkBackupFolder(const fs::path& folder, const fs::path& workshop, Connection& reader) {
    if (isWithin(folder, workshop)) {
        throw StoreError(StoreError::Code::ioFailed,
                         "a backup inside the workshop would be lost with it: " + folder.string());
    }
    if (fs::exists(folder / kDatabaseName)) {
        throw StoreError(StoreError::Code::ioFailed, folder.string() + " is itself a workshop");
    }
    if (fs::exists(databaseIn(folder))) {
        Connection other(databaseIn(folder), Access::read, {});
        if (firstHash(other) != firstHash(reader)) {
            throw StoreError(StoreError::Code::ioFailed,
                             folder.string() + " holds the backup of another workshop");
        }
    }
}

} // namespace

core::VerifyReport SqliteUpkeep::verify(const core::Progress& progress) const {
    const auto reader = m_kept.readers.lend();
    auto report = verifyWorkshop(*reader, m_files, progress);
    try {
        if (auto finding = m_kept.writer.run(verifySearchIndex)) {
            report.findings.push_back(*std::move(finding));
        }
    } catch (const StoreError& error) {
        report.findings.push_back(
            {"search_index", std::nullopt,
             std::string{"The search index could not be checked: "} + error.what() + "."});
    }
    return report;
}

core::BackupReport SqliteUpkeep::backup(const fs::path& folder, const core::Progress& progress) {
    return onDisk([&] { return backUp(folder, progress); });
}

core::BackupReport SqliteUpkeep::backUp(const fs::path& folder, const core::Progress& progress) {
    const fs::path whole = fs::absolute(folder);
    const auto reader = m_kept.readers.lend();
    checkBackupFolder(whole, m_folder, *reader);
    makeFolder(whole);
    // The database first: what it names was on the disk before it was named.
    const fs::path fresh = whole / (std::string{"fresh-"} + kBackupName);
    const JournalHead head = copyDatabase(*reader, fresh, CopyFor::keeping);
    const auto total = static_cast<std::int64_t>(filesOnShelves(m_folder).size());
    // The head differs from one backup to the next, and by chance: so does the share.
    const ShelfCopy files = copyShelves(
        m_folder, whole, [&](std::int64_t done) { return progress(done, std::max(done, total)); },
        head.hash.front());
    if (files.wasStopped) {
        fs::remove(fresh);
        return {whole, files.copied, files.alreadyThere, files.bytes};
    }
    const auto entry = entryRow(*reader, head.sequence);
    if (!entry || entry->hash != head.hash) {
        throw StoreError(StoreError::Code::ioFailed, "the copy is not of this workshop");
    }
    if (fs::exists(whole / kBackupName)) {
        renameDurably(whole / kBackupName, whole / (std::string{"previous-"} + kBackupName));
    }
    renameDurably(fresh, whole / kBackupName);
    if (!files.altered.empty()) {
        throw StoreError(StoreError::Code::fileAltered,
                         "all was backed up but for " + std::to_string(files.altered.size()) +
                             " files that are not what was kept: " + files.altered.front());
    }
    noteOutsideBackup(whole);
    return {whole, files.copied, files.alreadyThere, files.bytes};
}

void SqliteUpkeep::noteOutsideBackup(const fs::path& folder) {
    const std::string now = core::isoText(m_kept.clock.now());
    m_kept.writer.run([&](Connection& connection) {
        WriteTransaction transaction(connection);
        for (const auto& [name, value] :
             {std::pair{kLastOutside, now}, std::pair{kOutsideFolder, folder.string()}}) {
            Query note(connection, "INSERT INTO meta(name, value) VALUES(?, ?) ON CONFLICT(name) "
                                   "DO UPDATE SET value = excluded.value");
            note.with(name).with(std::string_view{value}).step();
        }
        transaction.commit();
    });
}

std::optional<core::Instant> SqliteUpkeep::lastOutsideBackup() const {
    const auto noted = meta(*m_kept.readers.lend(), kLastOutside);
    return noted ? core::instantFromIso(*noted) : std::nullopt;
}

std::optional<fs::path> SqliteUpkeep::outsideFolder() const {
    const auto noted = meta(*m_kept.readers.lend(), kOutsideFolder);
    return noted ? std::optional<fs::path>{*noted} : std::nullopt;
}

std::optional<core::Instant> SqliteUpkeep::firstWork() const {
    const auto reader = m_kept.readers.lend();
    Query query(*reader, "SELECT at FROM journal WHERE kind = 'change' ORDER BY sequence LIMIT 1");
    return query.step() ? core::instantFromIso(query.text(0)) : std::nullopt;
}

std::optional<core::Instant> SqliteUpkeep::lastInsideBackup() const {
    return onDisk([&] { return db::lastInsideBackup(m_folder, m_kept.clock.now()); });
}

bool SqliteUpkeep::restore(const fs::path& backup, const fs::path& folder,
                           const core::Progress& progress) {
    return onDisk([&] { return restoreWorkshop(backup, folder, m_settings, progress); });
}

core::MendReport SqliteUpkeep::mendFiles(const fs::path& from, const core::Progress& progress) {
    std::vector<FileFault> faults;
    {
        const auto reader = m_kept.readers.lend();
        for (const auto kind : {core::RecordKind::photograph, core::RecordKind::attachment,
                                core::RecordKind::issuedReport}) {
            auto some = faultyFiles(*reader, m_files, kind, [] {});
            std::move(some.begin(), some.end(), std::back_inserter(faults));
        }
    }
    return onDisk([&] { return mendFaults(std::move(faults), m_files, from, progress); });
}

void SqliteUpkeep::rebuildSearch() {
    m_kept.writer.run([](Connection& connection) {
        WriteTransaction transaction(connection);
        rebuildSearchIndex(connection);
        transaction.commit();
    });
}

bool restoreWorkshop(const fs::path& backup, const fs::path& folder,
                     const WorkshopSettings& settings, const core::Progress& progress) {
    const fs::path database = databaseIn(backup);
    if (!fs::exists(database)) {
        throw StoreError(StoreError::Code::missing,
                         "there is no " + std::string{kBackupName} + " in " + backup.string());
    }
    const fs::path whole = fs::absolute(folder);
    checkCanCreate(whole, settings);
    makeFolder(whole);
    const auto total = static_cast<std::int64_t>(filesOnShelves(backup).size());
    const ShelfCopy files = copyShelves(
        backup, whole, [&](std::int64_t done) { return progress(done, std::max(done, total)); });
    if (files.wasStopped) {
        for (const std::string_view shelf : kShelfFolders) {
            fs::remove_all(whole / shelf);
        }
        return false;
    }
    {
        Connection from(database, Access::read, {});
        copyDatabase(from, whole / kDatabaseName, CopyFor::working);
    }
    if (!files.altered.empty()) {
        throw StoreError(StoreError::Code::fileAltered,
                         "all was restored but for " + std::to_string(files.altered.size()) +
                             " files that are damaged in the backup: " + files.altered.front());
    }
    return true;
}

} // namespace headcap::db
