// The database itself, looked at beside the store: its tables as bytes, its schema.
#pragma once

#include <filesystem>
#include <map>
#include <string>

#include <SQLiteCpp/SQLiteCpp.h>

#include "core/record/any_record.h"

namespace headcap::test {

inline SQLite::Database openBeside(const std::filesystem::path& workshop) {
    return {(workshop / "workshop.sqlite").string(), SQLite::OPEN_READWRITE};
}

// Every row of the tables of records, every column in it, by table.
inline std::map<std::string, std::string> recordTables(const std::filesystem::path& workshop) {
    SQLite::Database database = openBeside(workshop);
    std::map<std::string, std::string> tables;
    for (const auto kind : core::EnumNames<core::RecordKind>::kNames) {
        const std::string table{kind};
        std::string& all = tables[table];
        SQLite::Statement query(database, "SELECT * FROM \"" + table + "\" ORDER BY id");
        while (query.executeStep()) {
            for (int i = 0; i < query.getColumnCount(); ++i) {
                const auto column = query.getColumn(i);
                all += std::to_string(column.getType()) + ":" + column.getString() + "|";
            }
            all += '\n';
        }
    }
    return tables;
}

} // namespace headcap::test
