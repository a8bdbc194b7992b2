#pragma once

#include "core/record/stores.h"
#include "db/sqlite/record_store.h"

namespace headcap::db {

class SqliteJournal final : public core::Journal {
public:
    explicit SqliteJournal(Kept& kept) : m_kept(kept), m_keys(kept.clock) {}

    [[nodiscard]] std::vector<core::JournalEntry>
    historyOf(const core::RecordRef& ref) const override;
    [[nodiscard]] std::vector<core::JournalEntry> latest(std::size_t limit) const override;
    [[nodiscard]] core::Digest head() const override;

    [[nodiscard]] std::optional<core::JournalEntry>
    undoable(std::optional<core::Id<core::Person>> who) const override;
    [[nodiscard]] std::optional<core::JournalEntry>
    redoable(std::optional<core::Id<core::Person>> who) const override;
    [[nodiscard]] tl::expected<core::JournalEntry, core::Refusal>
    undo(std::optional<core::Id<core::Person>> who) override;
    [[nodiscard]] tl::expected<core::JournalEntry, core::Refusal>
    redo(std::optional<core::Id<core::Person>> who) override;

private:
    using Candidate = std::optional<std::int64_t> (*)(Connection&,
                                                      const std::optional<std::string>& who);
    [[nodiscard]] std::optional<core::JournalEntry>
    candidate(Candidate find, std::optional<core::Id<core::Person>> who) const;
    [[nodiscard]] tl::expected<core::JournalEntry, core::Refusal>
    reverse(Candidate find, core::EntryKind kind, std::optional<core::Id<core::Person>> who);

    Kept& m_kept;
    core::IdSource m_keys; // used on the thread that writes alone
};

} // namespace headcap::db
