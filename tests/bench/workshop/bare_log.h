// The same rows into the same tables by SQLite's bare API, with the same durability: what logging a
// step is held against.
#pragma once

#include <filesystem>
#include <map>
#include <memory>
#include <string>
#include <vector>

struct sqlite3;
struct sqlite3_stmt;
struct sqlite3_value;

namespace headcap::bench {

enum class Rows {
    records, // of the log and the ledger
    all,     // and what the store writes with them: the journal and the search index
};

class BareLog {
public:
    // A database of its own in the folder, with the tables and indexes of the workshop's; the log
    // and the ledger are copied into it, the journal and the search index begin empty.
    BareLog(const std::filesystem::path& workshop, const std::filesystem::path& folder, Rows rows);
    ~BareLog();
    BareLog(const BareLog&) = delete;
    BareLog& operator=(const BareLog&) = delete;

    // Reads the rows that the workshop's last entry wrote.
    void readLast();
    // Writes them, as one transaction.
    void writeThem();

private:
    struct FreeValue {
        void operator()(sqlite3_value* value) const;
    };
    struct Row {
        std::string table;
        std::vector<std::unique_ptr<sqlite3_value, FreeValue>> values{};
    };

    void run(const std::string& sql);
    void read(const std::string& table, const std::string& sql);
    sqlite3_stmt* statementFor(const Row& row);

    Rows m_kind;
    sqlite3* m_workshop = nullptr;
    sqlite3* m_database = nullptr;
    std::vector<Row> m_rows{};
    std::map<std::string, sqlite3_stmt*> m_statements{};
};

} // namespace headcap::bench
