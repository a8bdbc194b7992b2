#include "db/sqlite/shelf_cache.h"

#include "db/sqlite/journal_sql.h"
#include "db/sqlite/record_sql.h"

namespace headcap::db {
namespace {

template <class Enum>
Enum named(const std::string& name) {
    const auto& names = core::EnumNames<Enum>::kNames;
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (names[i] == name) {
            return static_cast<Enum>(i);
        }
    }
    throw core::StoreError(core::StoreError::Code::truncated,
                           "the ledger holds a word that is none of its own: " + name);
}

template <class Record>
core::Id<Record> keyAt(const Query& query, int column) {
    const auto key = core::Uuid::fromText(query.text(column));
    if (!key) {
        throw core::StoreError(core::StoreError::Code::truncated,
                               "a key in the ledger can't be read: " + query.text(column));
    }
    return core::Id<Record>{*key};
}

core::Instant timeAt(const Query& query, int column) {
    const auto at = core::instantFromIso(query.text(column));
    if (!at) {
        throw core::StoreError(core::StoreError::Code::truncated,
                               "a time in the ledger can't be read: " + query.text(column));
    }
    return *at;
}

template <class Record>
std::vector<Record> everything(Connection& connection) {
    std::vector<Record> records;
    for (auto& found : allRecords(connection, core::kindOf<Record>())) {
        records.push_back(std::get<Record>(std::move(found.record)));
    }
    return records;
}

// Range scan over the entries since.
bool wasTouched(Connection& connection, std::int64_t since, const char* kinds) {
    Query query(connection, std::string{"SELECT 1 FROM journal_record WHERE sequence > ? AND "
                                        "kind IN ("} +
                                kinds + ") LIMIT 1");
    return query.with(since).step();
}

} // namespace

std::vector<core::LedgerEntry> ShelfCache::ofLot(const core::Id<core::Lot>& lot,
                                                 const core::Id<core::Job>& apartFrom) const {
    const auto reader = m_readers.lend();
    Query query(*reader,
                "SELECT kind, amount_unit, amount_count > 0, max(id), max(at), "
                "sum(amount_count / 1000000), sum(amount_count % 1000000) FROM ledger_entry "
                "WHERE lot = ? AND (use IS NULL OR use NOT IN (SELECT id FROM material_use WHERE "
                "job = ?)) GROUP BY 1, 2, 3");
    query.with(lot.text()).with(apartFrom.text());
    core::LedgerInBrief brief;
    while (query.step()) {
        brief.add({lot, named<core::LedgerKind>(query.text(0)), named<core::Unit>(query.text(1)),
                   query.number(2) != 0},
                  {keyAt<core::LedgerEntry>(query, 3), timeAt(query, 4), query.number(5),
                   query.number(6)});
    }
    return brief.lines();
}

bool ShelfCache::catchUp(Connection& connection, const std::atomic_bool* isEnding) {
    Query query(connection, "SELECT rowid, lot, kind, amount_unit, amount_count, id, at FROM "
                            "ledger_entry WHERE rowid > ? ORDER BY rowid");
    query.with(m_lastRow);
    while (query.step()) {
        if (isEnding != nullptr && *isEnding) {
            return false;
        }
        const std::int64_t count = query.number(4);
        m_ledger.add({keyAt<core::Lot>(query, 1), named<core::LedgerKind>(query.text(2)),
                      named<core::Unit>(query.text(3)), count > 0},
                     {keyAt<core::LedgerEntry>(query, 5), timeAt(query, 6),
                      count / core::LedgerInBrief::kMillion,
                      count % core::LedgerInBrief::kMillion});
        m_lastRow = query.number(0);
    }
    return true;
}

std::shared_ptr<const core::Shelf> ShelfCache::now() {
    const std::lock_guard lock(m_mutex);
    const auto reader = m_readers.lend();
    // Before anything is read: what comes meanwhile is read again the next time.
    const std::int64_t sequence = journalHead(*reader).sequence;
    if (m_shelf && sequence == m_sequence) {
        return m_shelf;
    }
    auto shelf = std::make_shared<core::Shelf>();
    if (m_shelf && !wasTouched(*reader, m_sequence, "'material', 'lot', 'lot_part'")) {
        if (!wasTouched(*reader, m_sequence, "'ledger_entry'")) {
            m_sequence = sequence;
            return m_shelf;
        }
        *shelf = *m_shelf;
    } else {
        shelf->materials = everything<core::Material>(*reader);
        shelf->lots = everything<core::Lot>(*reader);
        shelf->parts = everything<core::LotPart>(*reader);
    }
    (void)catchUp(*reader, nullptr);
    shelf->ledger = m_ledger.lines();
    m_shelf = std::move(shelf);
    m_sequence = sequence;
    return m_shelf;
}

void ShelfCache::warm(const std::atomic_bool& isEnding) {
    {
        const std::lock_guard lock(m_mutex);
        const auto reader = m_readers.lend();
        if (!catchUp(*reader, &isEnding)) {
            return;
        }
    }
    if (!isEnding) {
        (void)now();
    }
}

} // namespace headcap::db
