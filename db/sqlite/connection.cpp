#include "db/sqlite/connection.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>
#include <sqlite3.h>

#include "db/sqlite/errors.h"

namespace headcap::db {
namespace {

// Runs what may throw SQLiteCpp's exception, and throws ours.
template <class Work>
decltype(auto) translated(const std::string& doing, Work&& work) {
    try {
        return work();
    } catch (const SQLite::Exception& error) {
        throwStoreError(error.getExtendedErrorCode(), doing + ": " + error.what());
    }
}

// SQLite counts the memory it uses under a lock, and nobody asks for the count.
void countNoMemory() {
    [[maybe_unused]] static const int kDone = sqlite3_config(SQLITE_CONFIG_MEMSTATUS, 0);
}

} // namespace

Connection::Connection(std::filesystem::path file, Access access, ConnectionSettings settings)
    : m_file(std::move(file)), m_access(access), m_settings(std::move(settings)) {
    open();
}

Connection::~Connection() = default;

void Connection::open() {
    countNoMemory();
    translated("opening " + m_file.string(), [&] {
        // One thread at a time uses it: SQLite need not lock at every column it gives.
        // A reader, too, needs to write the shared memory of the WAL; query_only holds it back.
        m_database = std::make_unique<SQLite::Database>(
            m_file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_NOMUTEX,
            static_cast<int>(m_settings.patience.count()), m_settings.vfs);
    });
    try {
        sqlite3_extended_result_codes(handle(), 1);
        run("PRAGMA foreign_keys = ON");
        run("PRAGMA trusted_schema = OFF");
        run("PRAGMA cell_size_check = ON");
        if (m_access == Access::read) {
            // SQLite syncs in full unless told otherwise. Nothing here has the schema read: one
            // that is only asked for the data's version never does.
            run("PRAGMA query_only = ON");
        } else {
            run("PRAGMA synchronous = FULL");
            run("PRAGMA journal_size_limit = 67108864");
            // KiB: the indexes that every entry writes to stay at hand in a workshop of any size.
            run("PRAGMA cache_size = -16384");
        }
    } catch (...) {
        m_database.reset();
        throw;
    }
}

SQLite::Database& Connection::database() {
    if (!m_database) {
        open();
    }
    return *m_database;
}

void Connection::reopen() {
    // Queries that are still there know the place of theirs. No database can be closed that has a
    // statement left.
    for (auto& [sql, idle] : m_idle) {
        idle.clear();
    }
    for (Query* query : m_live) {
        query->m_statement.reset();
    }
    m_database.reset();
    open();
}

void Connection::run(const std::string& sql) {
    if (const int code = tryRun(sql); code != SQLITE_OK) {
        throwStoreError(code, message());
    }
}

int Connection::tryRun(const std::string& sql) {
    const int code = sqlite3_exec(handle(), sql.c_str(), nullptr, nullptr, nullptr);
    return code == SQLITE_OK ? code : sqlite3_extended_errcode(handle());
}

std::string Connection::message() {
    return sqlite3_errmsg(handle());
}

sqlite3* Connection::handle() {
    return database().getHandle();
}

Query::Query(Connection& connection, const std::string& sql)
    : m_connection(connection), m_idle(connection.m_idle[sql]) {
    if (!m_idle.empty()) {
        m_statement = std::move(m_idle.back());
        m_idle.pop_back();
    } else {
        translated("preparing", [&] {
            m_statement = std::make_unique<SQLite::Statement>(m_connection.database(), sql);
        });
    }
    m_connection.m_live.push_back(this);
}

Query::~Query() {
    std::erase(m_connection.m_live, this);
    if (!m_statement) {
        return; // the connection was opened anew
    }
    try {
        // An error of the step before comes back from reset, and has been thrown already.
        (void)m_statement->tryReset();
        m_statement->clearBindings();
        m_idle.push_back(std::move(m_statement));
    } catch (const std::exception&) {
        m_statement.reset(); // what can't be put back is prepared anew
    }
}

SQLite::Statement& Query::statement() const {
    if (!m_statement) {
        throw core::StoreError(core::StoreError::Code::outcomeUnknown,
                               "the database was opened anew while it was read");
    }
    return *m_statement;
}

Query& Query::with(std::string_view text) {
    translated("binding", [&] { statement().bind(m_next++, std::string{text}); });
    return *this;
}

Query& Query::with(std::int64_t number) {
    translated("binding", [&] { statement().bind(m_next++, number); });
    return *this;
}

Query& Query::withNull() {
    translated("binding", [&] { statement().bind(m_next++); });
    return *this;
}

Query& Query::withValue(const core::ColumnValue& value) {
    if (const auto* number = std::get_if<std::int64_t>(&value)) {
        return with(*number);
    }
    if (const auto* text = std::get_if<std::string>(&value)) {
        return with(std::string_view{*text});
    }
    return withNull();
}

Query& Query::withBlob(std::span<const std::byte> bytes) {
    // An empty vector has no address, and SQLite would bind a null.
    const void* data = bytes.empty() ? static_cast<const void*>("") : bytes.data();
    translated("binding",
               [&] { statement().bind(m_next++, data, static_cast<int>(bytes.size())); });
    return *this;
}

Query& Query::withOptional(const std::optional<std::string>& text) {
    return text ? with(std::string_view{*text}) : withNull();
}

bool Query::step() {
    return translated("reading", [&] { return statement().executeStep(); });
}

int Query::tryWrite() {
    const int code = statement().tryExecuteStep();
    return code == SQLITE_DONE || code == SQLITE_ROW
               ? SQLITE_OK
               : sqlite3_extended_errcode(m_connection.handle());
}

bool Query::isNull(int column) const {
    return statement().getColumn(column).isNull();
}

std::string Query::text(int column) const {
    return statement().getColumn(column).getString();
}

std::int64_t Query::number(int column) const {
    return statement().getColumn(column).getInt64();
}

std::vector<std::byte> Query::blob(int column) const {
    const auto value = statement().getColumn(column);
    const auto* bytes = static_cast<const std::byte*>(value.getBlob());
    return bytes == nullptr ? std::vector<std::byte>{}
                            : std::vector<std::byte>(bytes, bytes + value.getBytes());
}

core::ColumnValue Query::value(int column) const {
    const auto held = statement().getColumn(column);
    if (held.isInteger()) {
        return held.getInt64();
    }
    if (held.isText()) {
        return held.getString();
    }
    return std::monostate{};
}

} // namespace headcap::db
