#include "db/sqlite/record_sql.h"

#include <algorithm>
#include <array>

#include "core/values/contract.h"

namespace headcap::db {
namespace {

using core::RecordKind;

struct Statements {
    std::string select; // without its condition
    std::string find;
    std::string all;
    std::string exists;
    std::string insert;
    std::string update;
    std::string remove;
};

Statements statementsFor(RecordKind kind) {
    const std::string table = sqlName(core::nameOf(kind));
    const auto& columns = core::columnsOf(kind);
    std::string names;
    std::string marks;
    std::string sets;
    for (const core::Column& column : columns) {
        names += (names.empty() ? "" : ", ") + sqlName(column.name);
        marks += marks.empty() ? "?" : ", ?";
        if (&column != &columns.front()) {
            sets += (sets.empty() ? "" : ", ") + sqlName(column.name) + " = ?";
        }
    }
    Statements made;
    made.select = "SELECT " + columnList(kind, "t") +
                  ", (SELECT max(sequence) FROM journal_record WHERE record_id = t.\"id\") FROM " +
                  table + " t";
    made.find = made.select + " WHERE t.\"id\" = ?";
    made.all = made.select + " ORDER BY t.\"id\"";
    made.exists = "SELECT 1 FROM " + table + " WHERE \"id\" = ?";
    made.insert = "INSERT INTO " + table + "(" + names + ") VALUES(" + marks + ")";
    made.update = "UPDATE " + table + " SET " + sets + " WHERE \"id\" = ?";
    made.remove = "DELETE FROM " + table + " WHERE \"id\" = ?";
    return made;
}

const Statements& statementsOf(RecordKind kind) {
    static const auto kStatements = [] {
        std::array<Statements, core::kRecordKindCount> all;
        for (std::size_t i = 0; i < all.size(); ++i) {
            all[i] = statementsFor(static_cast<RecordKind>(i));
        }
        return all;
    }();
    return kStatements[static_cast<std::size_t>(kind)];
}

std::vector<core::Found> readAll(Query& query, RecordKind kind) {
    const int revision = static_cast<int>(core::columnsOf(kind).size());
    std::vector<core::Found> found;
    while (query.step()) {
        found.push_back({recordAt(query, kind), core::Revision{query.number(revision)}});
    }
    return found;
}

} // namespace

std::string sqlName(std::string_view name) {
    return '"' + std::string{name} + '"';
}

std::string columnList(RecordKind kind, std::string_view table) {
    std::string list;
    for (const core::Column& column : core::columnsOf(kind)) {
        list += (list.empty() ? "" : ", ") + std::string{table} + "." + sqlName(column.name);
    }
    return list;
}

const core::Column& columnNamed(RecordKind kind, std::string_view name) {
    const auto& columns = core::columnsOf(kind);
    const auto at = std::find_if(columns.begin(), columns.end(),
                                 [&](const core::Column& column) { return column.name == name; });
    HEADCAP_CONTRACT(at != columns.end());
    return *at;
}

core::AnyRecord recordAt(const Query& query, RecordKind kind, int first) {
    std::vector<core::ColumnValue> values(core::columnsOf(kind).size());
    for (std::size_t i = 0; i < values.size(); ++i) {
        values[i] = query.value(first + static_cast<int>(i));
    }
    auto record = core::recordFrom(kind, values);
    if (!record) {
        throw core::StoreError(core::StoreError::Code::truncated,
                               "the record " + query.text(first) + " of the kind " +
                                   std::string{core::nameOf(kind)} +
                                   " can't be read: " + record.error().column);
    }
    return *std::move(record);
}

std::optional<core::Found> findRecord(Connection& connection, const core::RecordRef& ref) {
    Query query(connection, statementsOf(ref.kind).find);
    query.with(ref.id.text());
    auto found = readAll(query, ref.kind);
    return found.empty() ? std::nullopt : std::optional{std::move(found.front())};
}

std::vector<core::Found> allRecords(Connection& connection, RecordKind kind) {
    Query query(connection, statementsOf(kind).all);
    return readAll(query, kind);
}

std::vector<core::Found> recordsWith(Connection& connection, RecordKind kind,
                                     std::string_view column, const core::ColumnValue& value) {
    const std::string name = sqlName(columnNamed(kind, column).name);
    Query query(connection,
                statementsOf(kind).select + " WHERE t." + name + " IS ? ORDER BY t.\"id\"");
    query.withValue(value);
    return readAll(query, kind);
}

std::vector<core::Found> recordsBetween(Connection& connection, RecordKind kind,
                                        std::string_view column, std::string_view from,
                                        std::string_view to) {
    const core::Column& held = columnNamed(kind, column);
    HEADCAP_CONTRACT(held.isText);
    const std::string name = "t." + sqlName(held.name);
    Query query(connection, statementsOf(kind).select + " WHERE " + name + " >= ? AND " + name +
                                " < ? ORDER BY " + name + ", t.\"id\"");
    query.with(from).with(to);
    return readAll(query, kind);
}

std::vector<core::Found> newestRecordsWith(Connection& connection, RecordKind kind,
                                           std::string_view column, const core::ColumnValue& value,
                                           std::size_t most) {
    const std::string name = sqlName(columnNamed(kind, column).name);
    // The keys alone are sorted; the records of the newest are read after.
    Query query(connection, statementsOf(kind).select + " WHERE t.\"id\" IN (SELECT \"id\" FROM " +
                                sqlName(core::nameOf(kind)) + " WHERE " + name +
                                " IS ? ORDER BY \"id\" DESC LIMIT ?) ORDER BY t.\"id\" DESC");
    query.withValue(value).with(static_cast<std::int64_t>(most));
    return readAll(query, kind);
}

std::optional<std::string> greatestText(Connection& connection, RecordKind kind,
                                        std::string_view column, std::string_view prefix) {
    const core::Column& held = columnNamed(kind, column);
    HEADCAP_CONTRACT(held.isText);
    const std::string name = sqlName(held.name);
    // What begins so lies between the prefix and the prefix with the greatest character after it.
    Query query(connection, "SELECT max(" + name + ") FROM " + sqlName(core::nameOf(kind)) +
                                " WHERE " + name + " >= ? AND " + name + " < ?");
    query.with(prefix).with(std::string{prefix} + "\U0010FFFF");
    return query.step() && !query.isNull(0) ? std::optional{query.text(0)} : std::nullopt;
}

std::vector<std::string> latestTexts(Connection& connection, RecordKind kind,
                                     std::string_view column, std::size_t records) {
    const core::Column& held = columnNamed(kind, column);
    HEADCAP_CONTRACT(held.isText);
    const std::string name = sqlName(held.name);
    // The keys ascend with the time of their making.
    Query query(connection, "SELECT " + name + " FROM (SELECT \"id\", " + name + " FROM " +
                                sqlName(core::nameOf(kind)) +
                                " ORDER BY \"id\" DESC LIMIT ?) WHERE " + name +
                                " <> '' GROUP BY 1 ORDER BY max(\"id\") DESC");
    query.with(static_cast<std::int64_t>(records));
    std::vector<std::string> texts;
    while (query.step()) {
        texts.push_back(query.text(0));
    }
    return texts;
}

bool recordExists(Connection& connection, const core::RecordRef& ref) {
    Query query(connection, statementsOf(ref.kind).exists);
    return query.with(ref.id.text()).step();
}

int insertRecord(Connection& connection, const core::AnyRecord& record) {
    Query query(connection, statementsOf(kindOf(record)).insert);
    for (const core::ColumnValue& value : core::valuesOf(record)) {
        query.withValue(value);
    }
    return query.tryWrite();
}

int updateRecord(Connection& connection, const core::AnyRecord& record) {
    Query query(connection, statementsOf(kindOf(record)).update);
    const auto values = core::valuesOf(record);
    for (std::size_t i = 1; i < values.size(); ++i) {
        query.withValue(values[i]);
    }
    query.withValue(values.front());
    return query.tryWrite();
}

int deleteRecord(Connection& connection, const core::RecordRef& ref) {
    Query query(connection, statementsOf(ref.kind).remove);
    return query.with(ref.id.text()).tryWrite();
}

} // namespace headcap::db
