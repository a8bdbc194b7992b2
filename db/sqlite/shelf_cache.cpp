#include "db/sqlite/shelf_cache.h"

#include <algorithm>

#include "db/sqlite/journal_sql.h"
#include "db/sqlite/read_snapshot.h"
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

core::LedgerInBrief::Group groupAt(const Query& query, const core::Id<core::Lot>& lot, int first) {
    return {lot, named<core::LedgerKind>(query.text(first)),
            named<core::Unit>(query.text(first + 1)), query.number(first + 2) != 0};
}

// The columns of a sum after its lot, in the order sumAt reads them.
const std::string kSum = "kind, unit, is_in, lines, last_entry, last_at, millions, rest";

struct LotSum {
    core::LedgerInBrief::Group group;
    std::int64_t lines = 0;
    core::LedgerInBrief::Sum sum;
};

LotSum sumAt(const Query& query, const core::Id<core::Lot>& lot, int first) {
    return {groupAt(query, lot, first),
            query.number(first + 3),
            {keyAt<core::LedgerEntry>(query, first + 4), timeAt(query, first + 5),
             query.number(first + 6), query.number(first + 7)}};
}

std::vector<LotSum> sumsOf(Connection& connection, const core::Id<core::Lot>& lot) {
    Query query(connection, "SELECT " + kSum + " FROM lot_sum WHERE lot = ?");
    query.with(lot.text());
    std::vector<LotSum> sums;
    while (query.step()) {
        sums.push_back(sumAt(query, lot, 0));
    }
    return sums;
}

// The last line of a group that is not of the job's uses: known to be there, and near the end.
void findLast(Connection& connection, LotSum& one, const core::Id<core::Job>& apartFrom) {
    Query query(connection,
                "SELECT id, at FROM ledger_entry WHERE lot = ? AND kind = ? AND amount_unit = ? "
                "AND (amount_count > 0) = ? AND (use IS NULL OR use NOT IN (SELECT id FROM "
                "material_use WHERE job = ?)) ORDER BY rowid DESC LIMIT 1");
    query.with(one.group.lot.text()).with(core::nameOf(one.group.kind));
    query.with(core::nameOf(one.group.unit)).with(std::int64_t{one.group.isIn});
    query.with(apartFrom.text());
    if (query.step()) {
        one.sum.last = keyAt<core::LedgerEntry>(query, 0);
        one.sum.at = timeAt(query, 1);
    }
}

// Takes the lines of the job's own uses out of the sums.
void leaveOut(Connection& connection, std::vector<LotSum>& sums, const core::Id<core::Lot>& lot,
              const core::Id<core::Job>& job) {
    Query query(connection,
                "SELECT e.kind, e.amount_unit, e.amount_count > 0, count(*), "
                "sum(e.amount_count / 1000000), sum(e.amount_count % 1000000) FROM material_use u "
                "JOIN ledger_entry e ON e.use = u.id WHERE u.job = ? AND e.lot = ? GROUP BY 1, 2, "
                "3");
    query.with(job.text()).with(lot.text());
    while (query.step()) {
        const auto group = groupAt(query, lot, 0);
        const auto at = std::ranges::find_if(
            sums, [&](const LotSum& one) { return !(one.group < group) && !(group < one.group); });
        if (at == sums.end()) {
            throw core::StoreError(core::StoreError::Code::truncated,
                                   "the ledger's sums lack a line of the lot " + lot.text());
        }
        at->lines -= query.number(3);
        at->sum.millions -= query.number(4);
        at->sum.rest -= query.number(5);
        if (at->lines > 0) {
            findLast(connection, *at, job);
        }
    }
    std::erase_if(sums, [](const LotSum& one) { return one.lines <= 0; });
}

template <class Record>
std::vector<Record> everything(Connection& connection) {
    std::vector<Record> records;
    for (auto& found : allRecords(connection, core::kindOf<Record>())) {
        records.push_back(std::get<Record>(std::move(found.record)));
    }
    return records;
}

// The records of a kind that the journal says were touched since.
std::vector<core::RecordRef> touched(Connection& connection, core::RecordKind kind,
                                     std::int64_t since) {
    Query query(connection,
                "SELECT DISTINCT record_id FROM journal_record WHERE sequence > ? AND kind = ?");
    query.with(since).with(core::nameOf(kind));
    std::vector<core::RecordRef> refs;
    while (query.step()) {
        if (const auto id = core::Uuid::fromText(query.text(0))) {
            refs.push_back({kind, *id});
        }
    }
    return refs;
}

// Reads again what was touched, in the order of the keys; true where anything was.
template <class Record>
bool refresh(Connection& connection, std::vector<Record>& records, std::int64_t since) {
    const auto refs = touched(connection, core::kindOf<Record>(), since);
    for (const core::RecordRef& ref : refs) {
        const core::Id<Record> id{ref.id};
        auto at = std::ranges::lower_bound(records, id, {}, &Record::id);
        const bool isKnown = at != records.end() && at->id == id;
        auto found = findRecord(connection, ref);
        if (!found) {
            if (isKnown) {
                records.erase(at);
            }
        } else if (isKnown) {
            *at = std::get<Record>(std::move(found->record));
        } else {
            records.insert(at, std::get<Record>(std::move(found->record)));
        }
    }
    return !refs.empty();
}

} // namespace

std::vector<core::LedgerEntry> ShelfCache::ofLot(const core::Id<core::Lot>& lot,
                                                 const core::Id<core::Job>& apartFrom) const {
    const auto reader = m_readers.lend();
    const ReadSnapshot snapshot(*reader);
    std::vector<LotSum> sums = sumsOf(*reader, lot);
    leaveOut(*reader, sums, lot, apartFrom);
    core::LedgerInBrief brief;
    for (const LotSum& one : sums) {
        brief.add(one.group, one.sum);
    }
    return brief.lines();
}

void ShelfCache::readAll(Connection& connection, core::Shelf& shelf) {
    shelf.materials = everything<core::Material>(connection);
    shelf.lots = everything<core::Lot>(connection);
    shelf.parts = everything<core::LotPart>(connection);
    m_ledger = {};
    Query query(connection, "SELECT lot, " + kSum + " FROM lot_sum");
    while (query.step()) {
        const LotSum one = sumAt(query, keyAt<core::Lot>(query, 0), 1);
        m_ledger.add(one.group, one.sum);
    }
    shelf.ledger = m_ledger.lines();
}

bool ShelfCache::readTouched(Connection& connection, core::Shelf& shelf) {
    bool isChanged = refresh(connection, shelf.materials, m_sequence);
    isChanged = refresh(connection, shelf.lots, m_sequence) || isChanged;
    isChanged = refresh(connection, shelf.parts, m_sequence) || isChanged;
    Query lots(connection, "SELECT DISTINCT lot FROM ledger_entry WHERE id IN (SELECT record_id "
                           "FROM journal_record WHERE sequence > ? AND kind = 'ledger_entry')");
    lots.with(m_sequence);
    bool hasMoved = false;
    while (lots.step()) {
        const auto lot = keyAt<core::Lot>(lots, 0);
        m_ledger.forget(lot);
        for (const LotSum& one : sumsOf(connection, lot)) {
            m_ledger.add(one.group, one.sum);
        }
        hasMoved = true;
    }
    if (hasMoved) {
        shelf.ledger = m_ledger.lines();
    }
    return isChanged || hasMoved;
}

std::shared_ptr<const core::Shelf> ShelfCache::now() {
    const std::lock_guard lock(m_mutex);
    const auto reader = m_readers.lend();
    const ReadSnapshot snapshot(*reader);
    const std::int64_t sequence = journalHead(*reader).sequence;
    if (m_shelf && sequence == m_sequence) {
        return m_shelf;
    }
    if (!m_shelf) {
        auto shelf = std::make_shared<core::Shelf>();
        readAll(*reader, *shelf);
        m_shelf = std::move(shelf);
    } else {
        auto shelf = std::make_shared<core::Shelf>(*m_shelf);
        if (readTouched(*reader, *shelf)) {
            m_shelf = std::move(shelf);
        }
    }
    m_sequence = sequence;
    return m_shelf;
}

} // namespace headcap::db
