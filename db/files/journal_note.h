// How far the journal had come, noted beside the database at every change: a database that lost
// its WAL, or in whose place an older copy was put, is whole in itself and can't tell what it
// lacks. The note is not synced: it may be behind the journal, and is never before it.
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>

namespace headcap::db {

struct JournalNote {
    std::int64_t sequence = 0;
    std::string hash{};
};

// Leaves a note that is further on as it is. What can't be written is not noted.
void noteJournal(const std::filesystem::path& workshop, const JournalNote& head);

[[nodiscard]] std::optional<JournalNote> notedJournal(const std::filesystem::path& workshop);

} // namespace headcap::db
