// The journal in its tables: entries appended and read, and the chain of hashes that shows that
// none was edited. The digest of an entry is SHA-256 over all it holds, each part with its name
// and length before it; its hash is SHA-256 over the hash before and that digest, both as 64
// lower-case digits. The hash before the first entry is 64 zeros.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/record/stores.h"
#include "db/sqlite/connection.h"
#include "db/sqlite/session.h"

namespace headcap::db {

// What a transaction did to a record.
struct Touched {
    std::optional<core::AnyRecord> before{};
    std::optional<core::AnyRecord> after{};
};
using TouchedRecords = std::map<core::RecordRef, Touched>;

// An entry as its rows hold it.
struct EntryRow {
    std::int64_t sequence = 0;
    std::string at{};
    std::optional<std::string> who{};
    std::string kind{};
    std::string sentence{};
    std::optional<std::int64_t> reverses{};
    std::int64_t schemaVersion = 0;
    ChangeSet changes{};
    std::string hash{};

    struct Record {
        std::string kind{};
        std::string id{};
        std::optional<std::string> before{};
        std::optional<std::string> after{};
    };
    std::vector<Record> records{};
};

[[nodiscard]] std::string entryKindName(core::EntryKind kind);
[[nodiscard]] std::string hashOf(const EntryRow& entry, const std::string& previousHash);
[[nodiscard]] const std::string& firstPreviousHash();

struct JournalHead {
    std::int64_t sequence = 0;
    std::string hash = firstPreviousHash();
};
[[nodiscard]] JournalHead journalHead(Connection& connection);

// Writes an entry as it is. Within a write transaction.
void insertEntry(Connection& connection, const EntryRow& entry);
// Gives the entry its sequence and hash, and writes it. Within a write transaction.
void appendEntry(Connection& connection, EntryRow& entry);

// Rows for touched records, in the order of their kinds and keys. Nothing where a text is not
// UTF-8: the record is named.
struct NotUtf8 {
    core::RecordRef record;
};
[[nodiscard]] tl::expected<std::vector<EntryRow::Record>, NotUtf8>
recordRows(const TouchedRecords& touched);

[[nodiscard]] std::optional<EntryRow> entryRow(Connection& connection, std::int64_t sequence);
[[nodiscard]] core::JournalEntry entryFrom(const EntryRow& row);

// A record from its JSON in the journal, in today's columns.
[[nodiscard]] core::AnyRecord recordFromJournal(const core::RecordRef& ref,
                                                const std::string& json);

} // namespace headcap::db
