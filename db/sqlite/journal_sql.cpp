#include "db/sqlite/journal_sql.h"

#include <nlohmann/json.hpp>

#include "core/values/contract.h"
#include "db/sqlite/errors.h"

namespace headcap::db {
namespace {

void orThrow(int code, Connection& connection) {
    if (code != 0) {
        throwStoreError(code, "writing the journal: " + connection.message());
    }
}

// Collects the parts of an entry, so that no two entries give the same bytes.
class EntryDigest {
public:
    void add(std::string_view name, std::string_view bytes) {
        const std::string head = std::string{name} + ':' + std::to_string(bytes.size()) + ':';
        m_hash.add(std::as_bytes(std::span{head}));
        m_hash.add(std::as_bytes(std::span{bytes}));
    }
    // Nothing is other than empty text.
    void addOptional(std::string_view name, const std::optional<std::string>& text) {
        add(std::string{name} + (text ? "" : " none"), text.value_or(""));
    }
    [[nodiscard]] core::Digest finish() { return m_hash.finish(); }

private:
    core::Sha256 m_hash;
};

core::RecordRef refFrom(const EntryRow::Record& row) {
    const auto kind = core::recordKindNamed(row.kind);
    const auto id = core::Uuid::fromText(row.id);
    if (!kind || !id) {
        throw core::StoreError(core::StoreError::Code::truncated,
                               "the journal names a record that can't be: " + row.kind + " " +
                                   row.id);
    }
    return {*kind, *id};
}

template <class Enum>
Enum enumFrom(std::string_view name, std::span<const std::string_view> names) {
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (names[i] == name) {
            return static_cast<Enum>(i);
        }
    }
    throw core::StoreError(core::StoreError::Code::truncated,
                           "the journal holds an entry of no known kind");
}

constexpr std::array<std::string_view, 4> kEntryKinds{"change", "undo", "redo", "migration"};

} // namespace

const std::string& firstPreviousHash() {
    static const std::string kZeros(64, '0');
    return kZeros;
}

std::string entryKindName(core::EntryKind kind) {
    return std::string{kEntryKinds[static_cast<std::size_t>(kind)]};
}

std::string hashOf(const EntryRow& entry, const std::string& previousHash) {
    EntryDigest digest;
    digest.add("sequence", std::to_string(entry.sequence));
    digest.add("at", entry.at);
    digest.addOptional("who", entry.who);
    digest.add("kind", entry.kind);
    digest.add("sentence", entry.sentence);
    digest.addOptional("reverses", entry.reverses ? std::optional{std::to_string(*entry.reverses)}
                                                  : std::optional<std::string>{});
    digest.add("schema_version", std::to_string(entry.schemaVersion));
    for (const EntryRow::Record& record : entry.records) {
        digest.add("record_kind", record.kind);
        digest.add("record_id", record.id);
        digest.addOptional("before", record.before);
        digest.addOptional("after", record.after);
    }
    digest.add("change_set", core::sha256(std::span{entry.changes}).hex());
    return core::sha256(previousHash + digest.finish().hex()).hex();
}

JournalHead journalHead(Connection& connection) {
    Query query(connection, "SELECT sequence, hash FROM journal ORDER BY sequence DESC LIMIT 1");
    return query.step() ? JournalHead{query.number(0), query.text(1)} : JournalHead{};
}

void insertEntry(Connection& connection, const EntryRow& entry) {
    Query add(connection, "INSERT INTO journal(sequence, at, who, kind, sentence, reverses, "
                          "schema_version, change_set, hash) VALUES(?, ?, ?, ?, ?, ?, ?, ?, ?)");
    add.with(entry.sequence).with(entry.at).withOptional(entry.who).with(entry.kind);
    add.with(entry.sentence);
    entry.reverses ? add.with(*entry.reverses) : add.withNull();
    add.with(entry.schemaVersion).withBlob(entry.changes).with(entry.hash);
    orThrow(add.tryWrite(), connection);
    for (std::size_t i = 0; i < entry.records.size(); ++i) {
        const EntryRow::Record& record = entry.records[i];
        Query row(connection, "INSERT INTO journal_record(sequence, position, kind, record_id, "
                              "before, after) VALUES(?, ?, ?, ?, ?, ?)");
        row.with(entry.sequence).with(static_cast<std::int64_t>(i)).with(record.kind);
        row.with(record.id).withOptional(record.before).withOptional(record.after);
        orThrow(row.tryWrite(), connection);
    }
}

void appendEntry(Connection& connection, EntryRow& entry) {
    const JournalHead head = journalHead(connection);
    entry.sequence = head.sequence + 1;
    entry.hash = hashOf(entry, head.hash);
    insertEntry(connection, entry);
}

tl::expected<std::vector<EntryRow::Record>, NotUtf8> recordRows(const TouchedRecords& touched) {
    std::vector<EntryRow::Record> rows;
    for (const auto& [ref, what] : touched) {
        try {
            EntryRow::Record row{std::string{core::nameOf(ref.kind)}, ref.id.text()};
            if (what.before) {
                row.before = core::toJson(*what.before).dump();
            }
            if (what.after) {
                row.after = core::toJson(*what.after).dump();
            }
            rows.push_back(std::move(row));
        } catch (const nlohmann::json::type_error&) {
            return tl::unexpected(NotUtf8{ref});
        }
    }
    return rows;
}

std::optional<EntryRow> entryRow(Connection& connection, std::int64_t sequence) {
    Query query(connection, "SELECT at, who, kind, sentence, reverses, schema_version, change_set, "
                            "hash FROM journal WHERE sequence = ?");
    if (!query.with(sequence).step()) {
        return std::nullopt;
    }
    EntryRow entry;
    entry.sequence = sequence;
    entry.at = query.text(0);
    entry.who = query.isNull(1) ? std::nullopt : std::optional{query.text(1)};
    entry.kind = query.text(2);
    entry.sentence = query.text(3);
    entry.reverses = query.isNull(4) ? std::nullopt : std::optional{query.number(4)};
    entry.schemaVersion = query.number(5);
    entry.changes = query.blob(6);
    entry.hash = query.text(7);
    Query records(connection, "SELECT kind, record_id, before, after FROM journal_record "
                              "WHERE sequence = ? ORDER BY position");
    records.with(sequence);
    while (records.step()) {
        EntryRow::Record row{records.text(0), records.text(1)};
        row.before = records.isNull(2) ? std::nullopt : std::optional{records.text(2)};
        row.after = records.isNull(3) ? std::nullopt : std::optional{records.text(3)};
        entry.records.push_back(std::move(row));
    }
    return entry;
}

core::AnyRecord recordFromJournal(const core::RecordRef& ref, const std::string& json) {
    const auto object = nlohmann::json::parse(json, nullptr, false);
    if (object.is_object()) {
        if (auto record = core::recordFrom(ref.kind, object)) {
            return *std::move(record);
        }
    }
    throw core::StoreError(core::StoreError::Code::truncated,
                           "the journal's entry for " + ref.id.text() + " can't be read");
}

core::JournalEntry entryFrom(const EntryRow& row) {
    core::JournalEntry entry;
    entry.sequence = row.sequence;
    const auto at = core::instantFromIso(row.at);
    const auto hash = core::Digest::fromHex(row.hash);
    const auto who = row.who ? core::Uuid::fromText(*row.who) : std::nullopt;
    if (!at || !hash || who.has_value() != row.who.has_value()) {
        throw core::StoreError(core::StoreError::Code::truncated,
                               "entry " + std::to_string(row.sequence) +
                                   " of the journal can't be read");
    }
    entry.at = *at;
    entry.hash = *hash;
    if (who) {
        entry.who = core::Id<core::Person>{*who};
    }
    entry.kind = enumFrom<core::EntryKind>(row.kind, kEntryKinds);
    entry.sentence = row.sentence;
    entry.reverses = row.reverses;
    entry.schemaVersion = static_cast<int>(row.schemaVersion);
    for (const EntryRow::Record& record : row.records) {
        const core::RecordRef ref = refFrom(record);
        core::JournalRecord touched{ref};
        if (record.before) {
            touched.before = recordFromJournal(ref, *record.before);
        }
        if (record.after) {
            touched.after = recordFromJournal(ref, *record.after);
        }
        entry.records.push_back(std::move(touched));
    }
    return entry;
}

} // namespace headcap::db
