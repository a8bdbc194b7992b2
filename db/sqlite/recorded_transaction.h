// A change to the records that is written to the journal with them: its change set by SQLite's
// session extension, each record before and after as JSON, and the hash that chains it to the
// entries before. Journal, search index and records are committed as one.
#pragma once

#include <optional>
#include <string>

#include "core/record/stores.h"
#include "db/sqlite/journal_sql.h"
#include "db/sqlite/record_sql.h"
#include "db/sqlite/session.h"
#include "db/sqlite/write_transaction.h"

namespace headcap::db {

struct EntryHead {
    core::Instant at;
    std::optional<core::Id<core::Person>> who{};
    core::EntryKind kind = core::EntryKind::change;
    std::string sentence{};
    std::optional<std::int64_t> reverses{};
};

// The disk failed under COMMIT: the entry that may or may not be there.
class UnknownOutcome : public core::StoreError {
public:
    UnknownOutcome(const core::StoreError& error, std::int64_t sequence, std::string hash)
        : StoreError(error), m_sequence(sequence), m_hash(std::move(hash)) {}
    [[nodiscard]] std::int64_t sequence() const { return m_sequence; }
    [[nodiscard]] const std::string& hash() const { return m_hash; }

private:
    std::int64_t m_sequence;
    std::string m_hash;
};

// Opens the database anew, looks for the entry and throws StoreError outcomeUnknown, saying what
// was found.
[[noreturn]] void reopenAndSay(Connection& connection, const UnknownOutcome& unknown);

using Done = tl::expected<void, core::Refusal>;

class RecordedTransaction {
public:
    // Refuses to write into a workshop whose schema another program has moved on since.
    RecordedTransaction(Connection& connection, int schemaVersion);

    [[nodiscard]] std::optional<core::Found> find(const core::RecordRef& ref);
    // One row written, which was `found` before it; the constraints of its own row are checked at
    // once.
    [[nodiscard]] Done write(core::Write::What what, const core::AnyRecord& record,
                             const std::optional<core::Found>& found);
    // For rows written by an applied change set: what the record was before it.
    void touch(const core::RecordRef& ref, std::optional<core::AnyRecord> before);
    // Whether every record that was written names what is there, and nothing that was removed is
    // named.
    [[nodiscard]] Done checkNames();
    // Appends the entry, brings the search index up to date and commits; the entry's row.
    [[nodiscard]] tl::expected<EntryRow, core::Refusal> commit(const EntryHead& head);
    [[nodiscard]] bool isEmpty() const { return m_touched.empty(); }
    [[nodiscard]] Connection& connection() const { return m_transaction.connection(); }

private:
    void readAfter();

    WriteTransaction m_transaction;
    Session m_session;
    int m_schemaVersion;
    TouchedRecords m_touched{};
    bool m_isRead = false; // what every record came to be, since the last of them was written
};

// The records a record names, those of any kind among them.
[[nodiscard]] std::vector<core::RecordRef> namedBy(const core::AnyRecord& record);

// "2 steps and 1 photograph": what a refusal tells of those that still name a record.
[[nodiscard]] std::string countsText(const std::vector<Namers>& namers);

} // namespace headcap::db
