#include "tests/bench/workshop/bare_log.h"

#include <cstdio>

#include <fmt/format.h>
#include <sqlite3.h>

namespace headcap::bench {

namespace fs = std::filesystem;

BareLog::BareLog(const fs::path& workshop, const fs::path& folder) {
    fs::create_directories(folder);
    const fs::path file = folder / "bare.sqlite";
    fs::remove(file);
    sqlite3_open(file.c_str(), &m_database);
    run("PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL");
    run("ATTACH '" + (workshop / "workshop.sqlite").string() + "' AS w");
    std::vector<std::string> tables;
    sqlite3_stmt* query = nullptr;
    sqlite3_prepare_v2(m_database,
                       "SELECT sql FROM w.sqlite_schema WHERE tbl_name IN ('step', "
                       "'material_use', 'ledger_entry') AND type IN ('table', 'index') AND "
                       "sql IS NOT NULL ORDER BY type DESC",
                       -1, &query, nullptr);
    while (sqlite3_step(query) == SQLITE_ROW) {
        tables.emplace_back(reinterpret_cast<const char*>(sqlite3_column_text(query, 0)));
    }
    sqlite3_finalize(query);
    for (const std::string& sql : tables) {
        run(sql);
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
}

void BareLog::add(const std::vector<core::AnyRecord>& records) {
    run("BEGIN IMMEDIATE");
    for (const core::AnyRecord& record : records) {
        sqlite3_stmt* insert = statementFor(core::kindOf(record));
        int at = 0;
        for (const core::ColumnValue& value : core::valuesOf(record)) {
            ++at;
            if (const auto* number = std::get_if<std::int64_t>(&value)) {
                sqlite3_bind_int64(insert, at, *number);
            } else if (const auto* text = std::get_if<std::string>(&value)) {
                sqlite3_bind_text(insert, at, text->data(), static_cast<int>(text->size()),
                                  SQLITE_TRANSIENT);
            } else {
                sqlite3_bind_null(insert, at);
            }
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

sqlite3_stmt* BareLog::statementFor(core::RecordKind kind) {
    sqlite3_stmt*& statement = m_statements[kind];
    if (statement == nullptr) {
        std::string marks;
        for (std::size_t i = 0; i < core::columnsOf(kind).size(); ++i) {
            marks += marks.empty() ? "?" : ", ?";
        }
        const std::string sql = fmt::format("INSERT INTO {} VALUES({})", core::nameOf(kind), marks);
        sqlite3_prepare_v2(m_database, sql.c_str(), -1, &statement, nullptr);
    }
    return statement;
}

} // namespace headcap::bench
