#include "tests/bench/workshop/bulk_writer.h"

#include <algorithm>
#include <array>
#include <bit>
#include <map>
#include <optional>

#include <nlohmann/json.hpp>

#include "db/sqlite/journal_sql.h"
#include "db/sqlite/migrations.h"
#include "db/sqlite/record_sql.h"
#include "db/sqlite/search_sql.h"

namespace headcap::bench {
namespace {

constexpr std::int64_t kEntriesAtOnce = 20'000;

void orThrow(int code, db::Connection& connection) {
    if (code != 0) {
        throw std::runtime_error("bulk: " + connection.message());
    }
}

// Change sets in the layout of "The Session Extension", sqlite3session.c: a table's head, then an
// insertion of each of its rows, one byte for the kind of each value before it.
class ChangeSetWriter {
public:
    void beginTable(std::string_view name, std::size_t columns) {
        put(std::byte{'T'});
        putVarint(columns);
        for (std::size_t i = 0; i < columns; ++i) {
            put(std::byte{i == 0 ? std::uint8_t{1} : std::uint8_t{0}}); // the key comes first
        }
        putText(name);
        put(std::byte{0});
    }
    void insertion(const std::vector<core::ColumnValue>& values) {
        put(std::byte{18}); // SQLITE_INSERT
        put(std::byte{0});  // not made by a trigger
        for (const core::ColumnValue& value : values) {
            putValue(value);
        }
    }
    [[nodiscard]] db::ChangeSet take() { return std::move(m_bytes); }

private:
    void put(std::byte byte) { m_bytes.push_back(byte); }
    void putText(std::string_view text) {
        for (const char c : text) {
            put(static_cast<std::byte>(c));
        }
    }
    // Of SQLite's variable-length integers, those below 2^35.
    void putVarint(std::uint64_t value) {
        std::array<std::uint8_t, 5> digits{};
        std::size_t count = 0;
        do {
            digits[count++] = static_cast<std::uint8_t>(value & 0x7fU);
            value >>= 7U;
        } while (value != 0);
        while (count > 0) {
            --count;
            put(std::byte{static_cast<std::uint8_t>(digits[count] | (count > 0 ? 0x80U : 0U))});
        }
    }
    void putValue(const core::ColumnValue& value) {
        if (const auto* number = std::get_if<std::int64_t>(&value)) {
            put(std::byte{1});
            const auto bits = static_cast<std::uint64_t>(*number);
            for (int shift = 56; shift >= 0; shift -= 8) {
                put(std::byte{static_cast<std::uint8_t>(bits >> static_cast<unsigned>(shift))});
            }
        } else if (const auto* text = std::get_if<std::string>(&value)) {
            put(std::byte{3});
            putVarint(text->size());
            putText(*text);
        } else {
            put(std::byte{5});
        }
    }

    db::ChangeSet m_bytes{};
};

} // namespace

struct BulkWriter::State {
    explicit State(const std::filesystem::path& workshop)
        : connection(workshop / "workshop.sqlite", db::Access::write, {}) {
        connection.run("PRAGMA synchronous = OFF");
        connection.run("PRAGMA foreign_keys = OFF");
        connection.run("PRAGMA cache_size = -262144");
        schema = db::schemaVersionOf(connection);
        head = db::journalHead(connection);
        connection.run("BEGIN IMMEDIATE");
    }
    void commitSome() {
        if (++entries % kEntriesAtOnce == 0) {
            connection.run("COMMIT");
            connection.run("BEGIN IMMEDIATE");
        }
    }

    db::Connection connection;
    std::int64_t schema = 0;
    db::JournalHead head;
    std::int64_t entries = 0;
};

BulkWriter::BulkWriter(const std::filesystem::path& workshop)
    : m_state(std::make_unique<State>(workshop)) {}

BulkWriter::~BulkWriter() {
    if (m_state) {
        (void)m_state->connection.tryRun("COMMIT");
    }
}

void BulkWriter::add(core::Instant at, const core::Id<core::Person>& who,
                     const std::string& sentence, const std::vector<core::AnyRecord>& records) {
    // In the order of their kinds and keys, as the journal has them.
    std::map<core::RecordRef, const core::AnyRecord*> sorted;
    for (const core::AnyRecord& record : records) {
        sorted.emplace(core::refOf(record), &record);
    }
    db::EntryRow entry;
    ChangeSetWriter changes;
    std::optional<core::RecordKind> table;
    for (const auto& [ref, record] : sorted) {
        orThrow(db::insertRecord(m_state->connection, *record), m_state->connection);
        const auto values = core::valuesOf(*record);
        if (table != ref.kind) {
            table = ref.kind;
            changes.beginTable(core::nameOf(ref.kind), values.size());
        }
        changes.insertion(values);
        entry.records.push_back({std::string{core::nameOf(ref.kind)}, ref.id.text(), std::nullopt,
                                 core::toJson(*record).dump()});
    }
    entry.sequence = m_state->head.sequence + 1;
    entry.at = core::isoText(at);
    entry.who = who.text();
    entry.kind = "change";
    entry.sentence = sentence;
    entry.schemaVersion = m_state->schema;
    entry.changes = changes.take();
    entry.hash = db::hashOf(entry, m_state->head.hash);
    db::insertEntry(m_state->connection, entry);
    m_state->head = {entry.sequence, entry.hash};
    m_state->commitSome();
}

void BulkWriter::finish() {
    m_state->connection.run("COMMIT");
    m_state->connection.run("BEGIN IMMEDIATE");
    db::rebuildSearchIndex(m_state->connection);
    m_state->connection.run("COMMIT");
    m_state->connection.run("PRAGMA wal_checkpoint(TRUNCATE)");
    m_state->connection.run("PRAGMA optimize");
    m_state.reset();
}

} // namespace headcap::bench
