// One connection to the workshop's database, with the statements it has prepared. Used by one
// thread at a time. WAL, synchronous=FULL, foreign keys on.
#pragma once

#include <chrono>
#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "core/record/any_record.h"

struct sqlite3;
namespace SQLite {
class Database;
class Statement;
} // namespace SQLite

namespace headcap::db {

enum class Access { read, write };

struct ConnectionSettings {
    std::chrono::milliseconds patience{5'000}; // with another program that writes
    std::string vfs{};                         // a file system of SQLite's; empty: its own
};

class Query;

class Connection {
public:
    Connection(std::filesystem::path file, Access access, ConnectionSettings settings);
    ~Connection();
    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;

    // Runs statements that give no rows. Throws StoreError.
    void run(const std::string& sql);
    // The same, giving the extended result code.
    [[nodiscard]] int tryRun(const std::string& sql);
    [[nodiscard]] std::string message();
    [[nodiscard]] sqlite3* handle();
    [[nodiscard]] const std::filesystem::path& file() const { return m_file; }

    // Forgets everything and opens anew, after an error that leaves the outcome unknown. Where that
    // fails, the next use tries again.
    void reopen();

private:
    friend class Query;
    using Idle = std::vector<std::unique_ptr<SQLite::Statement>>;
    using Statements = std::unordered_map<std::string, Idle>;

    void open();
    SQLite::Database& database();

    std::filesystem::path m_file;
    Access m_access;
    ConnectionSettings m_settings;
    std::unique_ptr<SQLite::Database> m_database;
    Statements m_idle;
    std::vector<Query*> m_live{}; // the queries that are there now
};

// One use of a statement. It is put back, and its read ended, when the query goes.
class Query {
public:
    Query(Connection& connection, const std::string& sql);
    ~Query();
    Query(const Query&) = delete;
    Query& operator=(const Query&) = delete;

    // Gives the next parameter its value.
    Query& with(std::string_view text);
    Query& with(std::int64_t number);
    Query& withNull();
    Query& withValue(const core::ColumnValue& value);
    Query& withBlob(std::span<const std::byte> bytes);
    Query& withOptional(const std::optional<std::string>& text);

    // True while there are rows. Throws StoreError.
    bool step();
    // Runs a write; its extended result code, SQLITE_OK where it was done.
    [[nodiscard]] int tryWrite();

    [[nodiscard]] bool isNull(int column) const;
    [[nodiscard]] std::string text(int column) const;
    [[nodiscard]] std::int64_t number(int column) const;
    [[nodiscard]] std::vector<std::byte> blob(int column) const;
    [[nodiscard]] core::ColumnValue value(int column) const;

private:
    friend class Connection;
    // Throws StoreError where the connection has been opened anew since.
    [[nodiscard]] SQLite::Statement& statement() const;

    Connection& m_connection;
    Connection::Idle& m_idle; // where it is put back
    std::unique_ptr<SQLite::Statement> m_statement;
    int m_next = 1;
};

} // namespace headcap::db
