#include "db/sqlite/record_store.h"

#include "db/sqlite/apply_change.h"
#include "db/sqlite/record_sql.h"

namespace headcap::db {

SqliteRecordStore::SqliteRecordStore(Kept& kept, std::unique_ptr<Connection> watch)
    : m_kept(kept), m_shelf(kept.readers), m_watch(std::move(watch)) {}

std::optional<core::Found> SqliteRecordStore::find(const core::RecordRef& ref) const {
    return findRecord(*m_kept.readers.lend(), ref);
}

std::vector<core::Found> SqliteRecordStore::all(core::RecordKind kind) const {
    return allRecords(*m_kept.readers.lend(), kind);
}

std::vector<core::Found> SqliteRecordStore::allWith(core::RecordKind kind, std::string_view column,
                                                    const core::ColumnValue& value) const {
    return recordsWith(*m_kept.readers.lend(), kind, column, value);
}

std::vector<core::Found> SqliteRecordStore::allBetween(core::RecordKind kind,
                                                       std::string_view column,
                                                       std::string_view from,
                                                       std::string_view to) const {
    return recordsBetween(*m_kept.readers.lend(), kind, column, from, to);
}

std::vector<core::Found> SqliteRecordStore::newestWith(core::RecordKind kind,
                                                       std::string_view column,
                                                       const core::ColumnValue& value,
                                                       std::size_t most) const {
    return newestRecordsWith(*m_kept.readers.lend(), kind, column, value, most);
}

std::optional<std::string> SqliteRecordStore::greatest(core::RecordKind kind,
                                                       std::string_view column,
                                                       std::string_view prefix) const {
    return greatestText(*m_kept.readers.lend(), kind, column, prefix);
}

std::vector<std::string> SqliteRecordStore::lately(core::RecordKind kind, std::string_view column,
                                                   std::size_t records) const {
    return latestTexts(*m_kept.readers.lend(), kind, column, records);
}

tl::expected<core::Revision, core::Refusal> SqliteRecordStore::apply(const core::Change& change) {
    return recorded(m_kept,
                    [&](RecordedTransaction& transaction) {
                        return applyChange(transaction, change, m_kept.clock.now());
                    })
        .map([](const Applied& applied) { return applied.revision; });
}

std::vector<core::LedgerEntry>
SqliteRecordStore::ledgerInBrief(const core::Id<core::Lot>& lot,
                                 const core::Id<core::Job>& apartFrom) const {
    return m_shelf.ofLot(lot, apartFrom);
}

std::shared_ptr<const core::Shelf> SqliteRecordStore::shelfInBrief() const {
    return m_shelf.now();
}

std::int64_t SqliteRecordStore::dataVersion() const {
    const std::lock_guard lock(m_watching);
    Query query(*m_watch, "PRAGMA data_version");
    query.step();
    return query.number(0);
}

} // namespace headcap::db
