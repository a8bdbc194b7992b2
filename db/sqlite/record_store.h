#pragma once

#include "core/record/stores.h"
#include "db/sqlite/recorded_transaction.h"
#include "db/sqlite/shelf_cache.h"
#include "db/sqlite/threads.h"

namespace headcap::db {

// What the parts of an open workshop share.
struct Kept {
    const core::Clock& clock;
    Writer& writer;
    Readers& readers;
    int schemaVersion;
};

// Runs a recorded transaction on the thread that writes: work(RecordedTransaction&). Where the
// disk failed under its COMMIT, the database is opened anew and looked at, and the StoreError
// outcomeUnknown says what was found.
template <class Work>
auto recorded(Kept& kept, Work work) {
    return kept.writer.run([&](Connection& connection) {
        try {
            RecordedTransaction transaction(connection, kept.schemaVersion);
            return work(transaction);
        } catch (const UnknownOutcome& unknown) {
            reopenAndSay(connection, unknown);
        }
    });
}

class SqliteRecordStore final : public core::RecordStore, public core::BriefStore {
public:
    explicit SqliteRecordStore(Kept& kept, std::unique_ptr<Connection> watch);

    [[nodiscard]] std::optional<core::Found> find(const core::RecordRef& ref) const override;
    [[nodiscard]] std::vector<core::Found> all(core::RecordKind kind) const override;
    [[nodiscard]] std::vector<core::Found> allWith(core::RecordKind kind, std::string_view column,
                                                   const core::ColumnValue& value) const override;
    [[nodiscard]] std::vector<core::Found> allBetween(core::RecordKind kind,
                                                      std::string_view column,
                                                      std::string_view from,
                                                      std::string_view to) const override;
    [[nodiscard]] std::vector<core::Found> newestWith(core::RecordKind kind,
                                                      std::string_view column,
                                                      const core::ColumnValue& value,
                                                      std::size_t most) const override;
    [[nodiscard]] std::optional<std::string> greatest(core::RecordKind kind,
                                                      std::string_view column,
                                                      std::string_view prefix) const override;
    [[nodiscard]] std::vector<std::string> lately(core::RecordKind kind, std::string_view column,
                                                  std::size_t records) const override;
    [[nodiscard]] tl::expected<core::Revision, core::Refusal>
    apply(const core::Change& change) override;
    [[nodiscard]] std::int64_t dataVersion() const override;

    [[nodiscard]] std::vector<core::LedgerEntry>
    ledgerInBrief(const core::Id<core::Lot>& lot,
                  const core::Id<core::Job>& apartFrom) const override;
    [[nodiscard]] std::shared_ptr<const core::Shelf> shelfInBrief() const override;

private:
    Kept& m_kept;
    mutable ShelfCache m_shelf;
    mutable std::mutex m_watching;
    std::unique_ptr<Connection> m_watch; // sees the commits of every other connection
};

} // namespace headcap::db
