// The same rows into the same tables by SQLite's bare API, with the same durability: what logging a
// step is held against.
#pragma once

#include <filesystem>
#include <map>
#include <string>
#include <vector>

#include "core/record/any_record.h"

struct sqlite3;
struct sqlite3_stmt;

namespace headcap::bench {

class BareLog {
public:
    // The log and ledger of a workshop copied into a database of its own, with their indexes.
    BareLog(const std::filesystem::path& workshop, const std::filesystem::path& folder);
    ~BareLog();
    BareLog(const BareLog&) = delete;
    BareLog& operator=(const BareLog&) = delete;

    void add(const std::vector<core::AnyRecord>& records);

private:
    void run(const std::string& sql);
    sqlite3_stmt* statementFor(core::RecordKind kind);

    sqlite3* m_database = nullptr;
    std::map<core::RecordKind, sqlite3_stmt*> m_statements{};
};

} // namespace headcap::bench
