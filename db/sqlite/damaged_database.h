// A damaged database, read as far as it can be: a copy of it and of its WAL, so that the original
// is left alone. Pages that are missing are empty in the copy; a first page that can't be used is
// taken from a backup, whose tables begin on the same pages.
#pragma once

#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <span>

#include "db/sqlite/journal_sql.h"

namespace headcap::db {

class DamagedDatabase {
public:
    DamagedDatabase(const std::filesystem::path& database, const std::filesystem::path& copy,
                    std::span<const std::filesystem::path> backups);
    ~DamagedDatabase();
    DamagedDatabase(const DamagedDatabase&) = delete;
    DamagedDatabase& operator=(const DamagedDatabase&) = delete;

    // Nothing in it can be read.
    [[nodiscard]] bool isLost() const { return m_connection == nullptr; }

    enum class Reading { there, notThere, unreadable };
    struct Entry {
        Reading reading = Reading::notThere;
        std::optional<EntryRow> row{};
    };
    [[nodiscard]] Entry entry(std::int64_t sequence);
    // The last entry that can be read after this one, and whether there may be more behind it.
    struct End {
        std::int64_t sequence = 0;
        bool mayGoOn = false;
    };
    [[nodiscard]] End lastEntry(std::int64_t after);

    // Every row of a kind that can be read.
    void readRows(core::RecordKind kind, const std::function<void(const core::AnyRecord&)>& take);

private:
    [[nodiscard]] bool canOpen();

    std::filesystem::path m_copy;
    std::unique_ptr<Connection> m_connection{};
};

} // namespace headcap::db
