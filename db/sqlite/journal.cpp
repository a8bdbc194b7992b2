#include "db/sqlite/journal.h"

#include "db/sqlite/undo.h"

namespace headcap::db {
namespace {

std::optional<std::string> keyOf(const std::optional<core::Id<core::Person>>& who) {
    return who ? std::optional{who->text()} : std::nullopt;
}

std::vector<core::JournalEntry> entriesOf(Connection& connection, Query& sequences) {
    std::vector<core::JournalEntry> entries;
    while (sequences.step()) {
        if (const auto row = entryRow(connection, sequences.number(0))) {
            entries.push_back(entryFrom(*row));
        }
    }
    return entries;
}

} // namespace

std::vector<core::JournalEntry> SqliteJournal::historyOf(const core::RecordRef& ref) const {
    const auto reader = m_kept.readers.lend();
    Query query(*reader, "SELECT DISTINCT sequence FROM journal_record WHERE record_id = ? "
                         "ORDER BY sequence DESC");
    query.with(ref.id.text());
    return entriesOf(*reader, query);
}

std::vector<core::JournalEntry> SqliteJournal::latest(std::size_t limit) const {
    const auto reader = m_kept.readers.lend();
    Query query(*reader, "SELECT sequence FROM journal ORDER BY sequence DESC LIMIT ?");
    query.with(static_cast<std::int64_t>(limit));
    return entriesOf(*reader, query);
}

core::Digest SqliteJournal::head() const {
    const auto reader = m_kept.readers.lend();
    const auto digest = core::Digest::fromHex(journalHead(*reader).hash);
    if (!digest) {
        throw core::StoreError(core::StoreError::Code::truncated,
                               "the head of the journal can't be read");
    }
    return *digest;
}

std::optional<core::JournalEntry>
SqliteJournal::candidate(Candidate find, std::optional<core::Id<core::Person>> who) const {
    const auto reader = m_kept.readers.lend();
    const auto sequence = find(*reader, keyOf(who));
    const auto row = sequence ? entryRow(*reader, *sequence) : std::nullopt;
    return row ? std::optional{entryFrom(*row)} : std::nullopt;
}

std::optional<core::JournalEntry>
SqliteJournal::undoable(std::optional<core::Id<core::Person>> who) const {
    return candidate(undoCandidate, who);
}

std::optional<core::JournalEntry>
SqliteJournal::redoable(std::optional<core::Id<core::Person>> who) const {
    return candidate(redoCandidate, who);
}

tl::expected<core::JournalEntry, core::Refusal>
SqliteJournal::reverse(Candidate find, core::EntryKind kind,
                       std::optional<core::Id<core::Person>> who) {
    return recorded(m_kept,
                    [&](RecordedTransaction& transaction) -> tl::expected<EntryRow, core::Refusal> {
                        const auto sequence = find(transaction.connection(), keyOf(who));
                        if (!sequence) {
                            return tl::unexpected(
                                core::Refusal{core::Refusal::Code::nothingToUndo});
                        }
                        return reverseEntry(transaction, *sequence,
                                            {kind, m_kept.clock.now(), who, m_kept.schemaVersion},
                                            m_keys);
                    })
        .map(entryFrom);
}

tl::expected<core::JournalEntry, core::Refusal>
SqliteJournal::undo(std::optional<core::Id<core::Person>> who) {
    return reverse(undoCandidate, core::EntryKind::undo, who);
}

tl::expected<core::JournalEntry, core::Refusal>
SqliteJournal::redo(std::optional<core::Id<core::Person>> who) {
    return reverse(redoCandidate, core::EntryKind::redo, who);
}

} // namespace headcap::db
