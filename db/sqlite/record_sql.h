// Records in and out of their tables. The statements are built from what a kind says of its
// columns; a table has its kind's name, and its columns in the record's order.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/record/stores.h"
#include "db/sqlite/connection.h"

namespace headcap::db {

// A name of the schema, quoted.
[[nodiscard]] std::string sqlName(std::string_view name);

// The column of a kind with this name. Asking for one that is not there is our own mistake.
[[nodiscard]] const core::Column& columnNamed(core::RecordKind kind, std::string_view name);

[[nodiscard]] std::optional<core::Found> findRecord(Connection& connection,
                                                    const core::RecordRef& ref);
[[nodiscard]] std::vector<core::Found> allRecords(Connection& connection, core::RecordKind kind);
[[nodiscard]] std::vector<core::Found> recordsWith(Connection& connection, core::RecordKind kind,
                                                   std::string_view column,
                                                   const core::ColumnValue& value);
[[nodiscard]] std::vector<core::Found> recordsBetween(Connection& connection, core::RecordKind kind,
                                                      std::string_view column,
                                                      std::string_view from, std::string_view to);
[[nodiscard]] std::vector<core::Found>
newestRecordsWith(Connection& connection, core::RecordKind kind, std::string_view column,
                  const core::ColumnValue& value, std::size_t most);
[[nodiscard]] std::optional<std::string> greatestText(Connection& connection, core::RecordKind kind,
                                                      std::string_view column,
                                                      std::string_view prefix);
[[nodiscard]] std::vector<std::string> latestTexts(Connection& connection, core::RecordKind kind,
                                                   std::string_view column, std::size_t records);
[[nodiscard]] bool recordExists(Connection& connection, const core::RecordRef& ref);

// Each gives the extended result code, SQLITE_OK where it was done.
[[nodiscard]] int insertRecord(Connection& connection, const core::AnyRecord& record);
[[nodiscard]] int updateRecord(Connection& connection, const core::AnyRecord& record);
[[nodiscard]] int deleteRecord(Connection& connection, const core::RecordRef& ref);

// How many records of a kind name this one, and one of them.
struct Namers {
    core::RecordKind kind;
    std::int64_t count = 0;
    core::RecordRef one;
};
[[nodiscard]] std::vector<Namers> namersOf(Connection& connection, const core::RecordRef& ref);

// A record from the columns of a query, which begin at `first`. Throws StoreError where they hold
// what no record can.
[[nodiscard]] core::AnyRecord recordAt(const Query& query, core::RecordKind kind, int first = 0);

// "a.id, a.job, …" of a kind, for a query that reads whole records.
[[nodiscard]] std::string columnList(core::RecordKind kind, std::string_view table);

} // namespace headcap::db
