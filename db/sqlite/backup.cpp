#include "db/sqlite/backup.h"

#include <algorithm>
#include <chrono>
#include <memory>
#include <thread>
#include <vector>

#include <sqlite3.h>

#include "core/record/stores.h"
#include "db/files/durable_file.h"
#include "db/sqlite/errors.h"
#include "db/sqlite/migrations.h"

namespace headcap::db {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t kDailyKept = 10;
constexpr std::size_t kBeforeSchemaKept = 3;
constexpr const char* kDaily = "workshop-";
constexpr const char* kBeforeSchema = "before-schema-";
constexpr std::size_t kStampLength = 18;
constexpr std::int64_t kFirstWithJournal = 2;
constexpr int kMostTries = 200;
constexpr std::chrono::milliseconds kBetweenTries{25};

struct CloseDatabase {
    void operator()(sqlite3* database) const { sqlite3_close(database); }
};

// One step, begun again while another program holds the file.
void copyAllPages(Connection& from, sqlite3* to, const fs::path& target) {
    sqlite3_backup* backup = sqlite3_backup_init(to, "main", from.handle(), "main");
    if (backup == nullptr) {
        throwStoreError(sqlite3_extended_errcode(to), "copying the database to " + target.string());
    }
    int code = SQLITE_BUSY;
    for (int i = 0; i < kMostTries && (code == SQLITE_BUSY || code == SQLITE_LOCKED); ++i) {
        if (i > 0) {
            std::this_thread::sleep_for(kBetweenTries);
        }
        code = sqlite3_backup_step(backup, -1);
    }
    const int finished = sqlite3_backup_finish(backup);
    if (code != SQLITE_DONE || finished != SQLITE_OK) {
        throwStoreError(code == SQLITE_DONE ? finished : code,
                        "copying the database to " + target.string());
    }
}

void copyInto(Connection& from, const fs::path& file) {
    sqlite3* opened = nullptr;
    const int code = sqlite3_open_v2(file.c_str(), &opened, SQLITE_OPEN_READWRITE, nullptr);
    const std::unique_ptr<sqlite3, CloseDatabase> target(opened);
    if (code != SQLITE_OK) {
        throwStoreError(code, "making " + file.string());
    }
    copyAllPages(from, target.get(), file);
}

JournalHead checkAndSettle(const fs::path& file, CopyFor purpose) {
    Connection copy(file, Access::write, {});
    {
        Query check(copy, "PRAGMA quick_check(1)");
        if (!check.step() || check.text(0) != "ok") {
            throw core::StoreError(core::StoreError::Code::truncated,
                                   file.string() + " is damaged: " + check.text(0));
        }
    }
    copy.run(purpose == CopyFor::keeping ? "PRAGMA journal_mode = DELETE"
                                         : "PRAGMA journal_mode = WAL");
    return schemaVersionOf(copy) >= kFirstWithJournal ? journalHead(copy) : JournalHead{};
}

void removeWithCompanions(const fs::path& database) {
    std::error_code ignored;
    for (const char* suffix : {"", "-wal", "-shm", "-journal"}) {
        fs::remove(database.string() + suffix, ignored);
    }
}

// "2031-03-05T091000Z", in which names sort by time.
std::string stamp(core::Instant now) {
    std::string text = core::isoText(now).substr(0, 19) + 'Z';
    std::erase(text, ':');
    return text;
}

std::string stampOf(const fs::path& copy) {
    const std::string name = copy.stem().string();
    return name.size() < kStampLength ? name : name.substr(name.size() - kStampLength);
}

// The newest first.
std::vector<fs::path> copiesIn(const fs::path& folder, const std::string& prefix) {
    std::vector<fs::path> copies;
    std::error_code none;
    for (const auto& entry : fs::directory_iterator(folder, none)) {
        const std::string name = entry.path().filename().string();
        if (name.starts_with(prefix) && name.ends_with(".sqlite")) {
            copies.push_back(entry.path());
        }
    }
    std::sort(copies.rbegin(), copies.rend());
    return copies;
}

// Those last that bear a time to come: the clock was wrong when they were made, and they would push
// out what is made after it was put right.
std::vector<fs::path> comingOnesLast(std::vector<fs::path> copies, core::Instant now) {
    const std::string tomorrow = stamp(now + std::chrono::hours{24});
    std::stable_partition(copies.begin(), copies.end(),
                          [&](const fs::path& copy) { return stampOf(copy) <= tomorrow; });
    return copies;
}

void keepNewest(const fs::path& folder, const std::string& prefix, std::size_t count,
                core::Instant now) {
    const auto copies = comingOnesLast(copiesIn(folder, prefix), now);
    for (std::size_t i = count; i < copies.size(); ++i) {
        removeWithCompanions(copies[i]);
    }
}

} // namespace

JournalHead copyDatabase(Connection& from, const fs::path& to, CopyFor purpose) {
    const fs::path making = to.parent_path() / (".new-" + to.filename().string());
    removeWithCompanions(making);
    makePrivateFile(making);
    try {
        copyInto(from, making);
        const JournalHead head = checkAndSettle(making, purpose);
        syncFile(making);
        renameDurably(making, to);
        return head;
    } catch (...) {
        removeWithCompanions(making);
        throw;
    }
}

std::string firstHash(Connection& connection) {
    Query query(connection, "SELECT hash FROM journal ORDER BY sequence LIMIT 1");
    return query.step() ? query.text(0) : std::string{};
}

std::vector<fs::path> insideBackups(const fs::path& workshop) {
    auto copies = copiesIn(workshop / "backups", kDaily);
    const auto others = copiesIn(workshop / "backups", kBeforeSchema);
    copies.insert(copies.end(), others.begin(), others.end());
    std::sort(copies.begin(), copies.end(),
              [](const fs::path& a, const fs::path& b) { return stampOf(a) > stampOf(b); });
    return copies;
}

std::optional<core::Instant> lastInsideBackup(const fs::path& workshop, core::Instant now) {
    const auto copies = comingOnesLast(insideBackups(workshop), now);
    if (copies.empty()) {
        return std::nullopt;
    }
    // "2031-03-05T091000Z" as "2031-03-05T09:10:00.000Z".
    std::string text = stampOf(copies.front());
    if (text.size() != kStampLength) {
        return std::nullopt;
    }
    text.insert(13, ":").insert(16, ":").insert(19, ".000");
    return core::instantFromIso(text);
}

void backUpBeforeMigration(Connection& from, const fs::path& workshop, core::Instant now) {
    const fs::path folder = workshop / "backups";
    makeFolder(folder);
    copyDatabase(from, folder / (kBeforeSchema + stamp(now) + ".sqlite"), CopyFor::keeping);
    keepNewest(folder, kBeforeSchema, kBeforeSchemaKept, now);
}

void backUpByRule(Connection& from, const fs::path& workshop, core::Instant now) {
    const fs::path folder = workshop / "backups";
    const auto copies = comingOnesLast(copiesIn(folder, kDaily), now);
    if (!copies.empty() && stampOf(copies.front()) > stamp(now - std::chrono::hours{24}) &&
        stampOf(copies.front()) <= stamp(now + std::chrono::hours{24})) {
        return;
    }
    makeFolder(folder);
    copyDatabase(from, folder / (kDaily + stamp(now) + ".sqlite"), CopyFor::keeping);
    keepNewest(folder, kDaily, kDailyKept, now);
}

} // namespace headcap::db
