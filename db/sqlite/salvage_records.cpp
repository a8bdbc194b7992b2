#include "db/sqlite/salvage_records.h"

#include <map>
#include <set>

#include "core/record/kind_words.h"
#include "core/values/english.h"
#include "db/sqlite/apply_change.h"
#include "db/sqlite/recorded_transaction.h"

namespace headcap::db {
namespace {

using core::AnyRecord;
using core::RecordRef;
using Reading = DamagedDatabase::Reading;

constexpr std::int64_t kEndless = INT64_MAX;

// "entry 7", "entries 7 to 9".
std::string entriesText(std::int64_t first, std::int64_t last) {
    return first == last ? "entry " + std::to_string(first)
                         : "entries " + std::to_string(first) + " to " + std::to_string(last);
}

class Salvaging {
public:
    Salvaging(DamagedDatabase& damaged, Connection& into, const JournalHead& proved,
              core::Instant now)
        : m_damaged(damaged), m_into(into), m_proved(proved), m_now(now),
          m_schema(static_cast<int>(schemaVersionOf(into))) {}

    SalvagedRecords run() {
        readJournal();
        if (m_lastUnread > 0) {
            putBackRows();
        }
        nameTheLost();
        return std::move(m_result);
    }

private:
    // A record as the journal last tells of it.
    struct Word {
        std::optional<AnyRecord> record{}; // nothing: removed
        std::int64_t sequence = 0;
        bool isDoubtful = false; // its entry is not as it was written
    };

    void readJournal() {
        const auto end = m_damaged.lastEntry(m_proved.sequence);
        // What the hash of an entry may follow: that of the one before, as it is and as it should
        // be.
        std::vector<std::string> previous{m_proved.hash};
        std::int64_t unreadFrom = 0;
        for (std::int64_t at = m_proved.sequence + 1; at <= end.sequence; ++at) {
            const auto entry = m_damaged.entry(at);
            if (!entry.row) {
                unreadFrom = unreadFrom == 0 ? at : unreadFrom;
                m_lastUnread = at;
                previous.clear();
                continue;
            }
            sayUnread(unreadFrom, at - 1);
            unreadFrom = 0;
            std::vector<std::string> possible{entry.row->hash};
            bool isProved = previous.empty(); // nothing speaks against it
            for (const std::string& before : previous) {
                possible.push_back(hashOf(*entry.row, before));
                isProved = isProved || possible.back() == entry.row->hash;
            }
            take(*entry.row, !isProved);
            previous = std::move(possible);
        }
        sayUnread(unreadFrom, end.sequence);
        if (end.mayGoOn) {
            m_lastUnread = kEndless;
            m_result.lost.push_back("What the journal held after entry " +
                                    std::to_string(end.sequence) + " can't be read.");
        }
    }

    void sayUnread(std::int64_t first, std::int64_t last) {
        if (first != 0) {
            std::string what = entriesText(first, last);
            what.front() = 'E';
            m_result.lost.push_back(what + " of the journal can't be read.");
        }
    }

    void take(const EntryRow& row, bool isDoubtful) {
        const std::string named =
            entriesText(row.sequence, row.sequence) + " (\"" + row.sentence + "\")";
        std::vector<std::pair<RecordRef, std::optional<AnyRecord>>> told;
        try {
            for (const auto& record : row.records) {
                const auto kind = core::recordKindNamed(record.kind);
                const auto id = core::Uuid::fromText(record.id);
                if (kind && id) {
                    const RecordRef ref{*kind, *id};
                    told.emplace_back(
                        ref, record.after ? std::optional{recordFromJournal(ref, *record.after)}
                                          : std::nullopt);
                }
            }
        } catch (const core::StoreError&) {
            isDoubtful = true;
        }
        for (const auto& [ref, record] : told) {
            m_words[ref] = {record, row.sequence, isDoubtful};
        }
        if (isDoubtful) {
            m_lastUnread = row.sequence;
            m_result.lost.push_back("The journal's " + named +
                                    " is not as it was written; its records are taken as they "
                                    "stood.");
            return;
        }
        const auto who = row.who ? core::Uuid::fromText(*row.who) : std::nullopt;
        const auto at = core::instantFromIso(row.at);
        write(std::move(told),
              {.at = at.value_or(m_now),
               .who = who ? std::optional{core::Id<core::Person>{*who}} : std::nullopt,
               .sentence = row.sentence});
    }

    // Rows of which a readable entry does not have the last word.
    void putBackRows() {
        std::vector<std::pair<RecordRef, std::optional<AnyRecord>>> rows;
        std::set<RecordRef> seen;
        for (std::size_t i = 0; i < core::kRecordKindCount; ++i) {
            const auto kind = static_cast<core::RecordKind>(i);
            m_damaged.readRows(kind, [&](const AnyRecord& row) {
                const RecordRef ref = core::refOf(row);
                const auto word = m_words.find(ref);
                seen.insert(ref);
                if (word != m_words.end() && !word->second.isDoubtful &&
                    word->second.sequence > m_lastUnread) {
                    return;
                }
                const auto kept = findRecord(m_into, ref);
                if (!kept || (kept->record != row && mayBecome(kept->record, row))) {
                    rows.emplace_back(ref, row);
                    m_words[ref] = {row, kEndless, false};
                }
            });
        }
        // Of a row that can't be read, the doubtful word is all there is.
        for (const auto& [ref, word] : m_words) {
            if (word.isDoubtful && word.record && !seen.contains(ref)) {
                rows.emplace_back(ref, word.record);
            }
        }
        write(std::move(rows), {.at = m_now,
                                .who = {},
                                .sentence = "Put back from a damaged workshop, as they stood"});
    }

    // Those that name what is not there wait for it, and are left where it does not come.
    void write(std::vector<std::pair<RecordRef, std::optional<AnyRecord>>> told,
               const EntryHead& head) {
        if (told.empty()) {
            return;
        }
        RecordedTransaction transaction(m_into, m_schema);
        std::int64_t written = 0;
        for (bool isMoving = true; isMoving;) {
            isMoving = std::erase_if(told, [&](const auto& one) {
                           const bool isDone = writeOne(transaction, one.first, one.second);
                           written += isDone ? 1 : 0;
                           return isDone;
                       }) > 0;
        }
        if (written > 0 && transaction.commit(head)) {
            m_result.putBack += written;
        }
    }

    static bool writeOne(RecordedTransaction& transaction, const RecordRef& ref,
                         const std::optional<AnyRecord>& record) {
        Connection& connection = transaction.connection();
        if (!record) {
            const auto kept = transaction.find(ref);
            return kept && core::permanenceOf(ref.kind) != core::Permanence::permanent &&
                   namersOf(connection, ref).empty() &&
                   transaction.write(core::Write::What::remove, kept->record, kept).has_value();
        }
        const auto named = namedBy(*record);
        if (!std::all_of(named.begin(), named.end(), [&](const RecordRef& other) {
                return other == ref || recordExists(connection, other);
            })) {
            return false;
        }
        const auto found = transaction.find(ref);
        const auto what = found ? core::Write::What::update : core::Write::What::add;
        return transaction.write(what, *record, found).has_value();
    }

    void nameTheLost() {
        for (const auto& [ref, word] : m_words) {
            if (word.record && !recordExists(m_into, ref)) {
                m_result.lost.push_back(core::capitalised(core::oneOf(ref.kind)) +
                                        " is lost: what it belongs to can't be read.");
            }
        }
    }

    DamagedDatabase& m_damaged;
    Connection& m_into;
    JournalHead m_proved;
    core::Instant m_now;
    int m_schema;
    std::map<RecordRef, Word> m_words{};
    std::int64_t m_lastUnread = 0;
    SalvagedRecords m_result{};
};

} // namespace

SalvagedRecords salvageRecords(DamagedDatabase& damaged, Connection& into,
                               const JournalHead& proved, core::Instant now) {
    return Salvaging(damaged, into, proved, now).run();
}

} // namespace headcap::db
