#include "tests/bench/workshop/bare_log.h"

#include <cstdio>

#include <fmt/format.h>
#include <sqlite3.h>

namespace headcap::bench {
namespace {

namespace fs = std::filesystem;

constexpr const char* kRecordTables = "'step', 'material_use', 'ledger_entry'";
constexpr const char* kAllTables =
    "'step', 'material_use', 'ledger_entry', 'journal', 'journal_record', 'search_text', 'search'";
constexpr const char* kOfTheLast =
    "(SELECT record_id FROM journal_record WHERE sequence = (SELECT max(sequence) FROM journal))";

} // namespace

void BareLog::FreeValue::operator()(sqlite3_value* value) const {
    sqlite3_value_free(value);
}

BareLog::BareLog(const fs::path& workshop, const fs::path& folder, Rows rows) : m_kind(rows) {
    const std::string source = (workshop / "workshop.sqlite").string();
    fs::create_directories(folder);
    const fs::path file = folder / "bare.sqlite";
    fs::remove(file);
    sqlite3_open(source.c_str(), &m_workshop);
    sqlite3_open(file.c_str(), &m_database);
    run("PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL");
    run("ATTACH '" + source + "' AS w");
    std::vector<std::string> tables;
    sqlite3_stmt* query = nullptr;
    const std::string sql =
        fmt::format("SELECT sql FROM w.sqlite_schema WHERE tbl_name IN ({}) AND type IN ('table', "
                    "'index') AND sql IS NOT NULL ORDER BY type DESC",
                    rows == Rows::all ? kAllTables : kRecordTables);
    sqlite3_prepare_v2(m_database, sql.c_str(), -1, &query, nullptr);
    while (sqlite3_step(query) == SQLITE_ROW) {
        tables.emplace_back(reinterpret_cast<const char*>(sqlite3_column_text(query, 0)));
    }
    sqlite3_finalize(query);
    for (const std::string& made : tables) {
        run(made);
    }
    for (const char* table : {"step", "material_use", "ledger_entry"}) {
        run(std::string{"INSERT INTO main."} + table + " SELECT * FROM w." + table);
    }
    run("DETACH w");
}

BareLog::~BareLog() {
    for (const auto& [kind, statement] : m_statements) {
        sqlite3_finalize(statement);
    }
    sqlite3_close(m_database);
    sqlite3_close(m_workshop);
}

void BareLog::readLast() {
    m_rows.clear();
    for (const char* table : {"step", "material_use", "ledger_entry"}) {
        read(table, fmt::format("SELECT * FROM {} WHERE id IN {}", table, kOfTheLast));
    }
    if (m_kind == Rows::records) {
        return;
    }
    read("journal", "SELECT * FROM journal ORDER BY sequence DESC LIMIT 1");
    read("journal_record", "SELECT * FROM journal_record WHERE sequence = (SELECT max(sequence) "
                           "FROM journal)");
    read("search_text", fmt::format("SELECT * FROM search_text WHERE record_id IN {}", kOfTheLast));
    read("search(rowid, words)",
         fmt::format("SELECT id, words FROM search_text WHERE record_id IN {}", kOfTheLast));
}

void BareLog::read(const std::string& table, const std::string& sql) {
    sqlite3_stmt* query = nullptr;
    if (sqlite3_prepare_v2(m_workshop, sql.c_str(), -1, &query, nullptr) != SQLITE_OK) {
        std::fprintf(stderr, "bare: %s: %s\n", sql.c_str(), sqlite3_errmsg(m_workshop));
    }
    while (sqlite3_step(query) == SQLITE_ROW) {
        Row row{.table = table};
        for (int i = 0; i < sqlite3_column_count(query); ++i) {
            row.values.emplace_back(sqlite3_value_dup(sqlite3_column_value(query, i)));
        }
        m_rows.push_back(std::move(row));
    }
    sqlite3_finalize(query);
}

void BareLog::writeThem() {
    run("BEGIN IMMEDIATE");
    for (const Row& row : m_rows) {
        sqlite3_stmt* insert = statementFor(row);
        int at = 0;
        for (const auto& value : row.values) {
            sqlite3_bind_value(insert, ++at, value.get());
        }
        if (sqlite3_step(insert) != SQLITE_DONE) {
            std::fprintf(stderr, "bare: %s\n", sqlite3_errmsg(m_database));
        }
        sqlite3_reset(insert);
    }
    run("COMMIT");
}

void BareLog::run(const std::string& sql) {
    if (sqlite3_exec(m_database, sql.c_str(), nullptr, nullptr, nullptr) != SQLITE_OK) {
        std::fprintf(stderr, "bare: %s: %s\n", sql.c_str(), sqlite3_errmsg(m_database));
    }
}

sqlite3_stmt* BareLog::statementFor(const Row& row) {
    sqlite3_stmt*& statement = m_statements[row.table];
    if (statement == nullptr) {
        std::string marks;
        for (std::size_t i = 0; i < row.values.size(); ++i) {
            marks += marks.empty() ? "?" : ", ?";
        }
        const std::string sql = fmt::format("INSERT INTO {} VALUES({})", row.table, marks);
        sqlite3_prepare_v2(m_database, sql.c_str(), -1, &statement, nullptr);
    }
    return statement;
}

} // namespace headcap::bench
