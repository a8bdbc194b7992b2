#include "db/sqlite/session.h"

#include <memory>

#include <sqlite3.h>

#include "db/sqlite/errors.h"

namespace headcap::db {
namespace {

struct FreeSqlite {
    void operator()(void* memory) const { sqlite3_free(memory); }
};
using Buffer = std::unique_ptr<void, FreeSqlite>;

ChangeSet bytesOf(const Buffer& buffer, int size) {
    const auto* bytes = static_cast<const std::byte*>(buffer.get());
    return bytes == nullptr ? ChangeSet{} : ChangeSet(bytes, bytes + size);
}

void orThrow(int code, const char* doing) {
    if (code != SQLITE_OK) {
        throwStoreError(code, doing);
    }
}

// The C API takes what it only reads as void*.
void* input(std::span<const std::byte> changes) {
    return const_cast<std::byte*>(changes.data());
}

struct Application {
    const TableFilter& passes;
    std::optional<ApplyConflict> conflict{};
};

int filterTable(void* context, const char* table) {
    return static_cast<Application*>(context)->passes(table) ? 1 : 0;
}

std::string keyOf(int what, sqlite3_changeset_iter* at) {
    // A foreign key conflict has no row.
    if (what == SQLITE_CHANGESET_FOREIGN_KEY) {
        return {};
    }
    sqlite3_value* value = nullptr;
    const char* table = nullptr;
    int columns = 0;
    int operation = 0;
    if (sqlite3changeset_op(at, &table, &columns, &operation, nullptr) != SQLITE_OK) {
        return {};
    }
    const int code = operation == SQLITE_INSERT ? sqlite3changeset_new(at, 0, &value)
                                                : sqlite3changeset_old(at, 0, &value);
    const auto* text = code == SQLITE_OK && value != nullptr ? sqlite3_value_text(value) : nullptr;
    return text == nullptr ? std::string{} : reinterpret_cast<const char*>(text);
}

ApplyConflict::Why whyOf(int what) {
    switch (what) {
    case SQLITE_CHANGESET_DATA:
        return ApplyConflict::Why::changedSince;
    case SQLITE_CHANGESET_NOTFOUND:
        return ApplyConflict::Why::missing;
    case SQLITE_CHANGESET_CONFLICT:
        return ApplyConflict::Why::keyTaken;
    case SQLITE_CHANGESET_FOREIGN_KEY:
        return ApplyConflict::Why::foreignKey;
    default:
        return ApplyConflict::Why::breaksRule;
    }
}

int abortOnConflict(void* context, int what, sqlite3_changeset_iter* at) {
    auto& application = *static_cast<Application*>(context);
    ApplyConflict conflict{whyOf(what)};
    if (what != SQLITE_CHANGESET_FOREIGN_KEY) {
        const char* table = nullptr;
        int columns = 0;
        int operation = 0;
        if (sqlite3changeset_op(at, &table, &columns, &operation, nullptr) == SQLITE_OK) {
            conflict.table = table;
        }
        conflict.key = keyOf(what, at);
    }
    application.conflict = std::move(conflict);
    return SQLITE_CHANGESET_ABORT;
}

int isOfRecords(void*, const char* table) {
    return core::recordKindNamed(table) ? 1 : 0;
}

} // namespace

Session::Session(Connection& connection) {
    orThrow(sqlite3session_create(connection.handle(), "main", &m_session), "recording");
    sqlite3session_table_filter(m_session, isOfRecords, nullptr);
    if (const int code = sqlite3session_attach(m_session, nullptr); code != SQLITE_OK) {
        sqlite3session_delete(m_session);
        throwStoreError(code, "recording");
    }
}

Session::~Session() {
    sqlite3session_delete(m_session);
}

ChangeSet Session::changeSet() const {
    int size = 0;
    void* bytes = nullptr;
    orThrow(sqlite3session_changeset(m_session, &size, &bytes), "recording");
    return bytesOf(Buffer{bytes}, size);
}

ChangeSet inverted(std::span<const std::byte> changes) {
    if (changes.empty()) {
        return {};
    }
    int size = 0;
    void* bytes = nullptr;
    orThrow(
        sqlite3changeset_invert(static_cast<int>(changes.size()), input(changes), &size, &bytes),
        "inverting a change set");
    return bytesOf(Buffer{bytes}, size);
}

std::int64_t rowsOf(std::span<const std::byte> changes, const TableFilter& passes) {
    if (changes.empty()) {
        return 0;
    }
    sqlite3_changeset_iter* at = nullptr;
    orThrow(sqlite3changeset_start(&at, static_cast<int>(changes.size()), input(changes)),
            "reading a change set");
    std::int64_t rows = 0;
    while (sqlite3changeset_next(at) == SQLITE_ROW) {
        const char* table = nullptr;
        int columns = 0;
        int operation = 0;
        orThrow(sqlite3changeset_op(at, &table, &columns, &operation, nullptr),
                "reading a change set");
        rows += passes(table) ? 1 : 0;
    }
    orThrow(sqlite3changeset_finalize(at), "reading a change set");
    return rows;
}

std::optional<ApplyConflict> applyChangeSet(Connection& connection,
                                            std::span<const std::byte> changes,
                                            const TableFilter& passes) {
    if (changes.empty()) {
        return std::nullopt;
    }
    Application application{passes};
    const std::int64_t before = sqlite3_total_changes64(connection.handle());
    const int code = sqlite3changeset_apply_v2(
        connection.handle(), static_cast<int>(changes.size()), input(changes), filterTable,
        abortOnConflict, &application, nullptr, nullptr, 0);
    if (application.conflict) {
        return application.conflict;
    }
    orThrow(code, "applying a change set");
    const std::int64_t changed = sqlite3_total_changes64(connection.handle()) - before;
    if (changed != rowsOf(changes, passes)) {
        return ApplyConflict{ApplyConflict::Why::doneInPart};
    }
    return std::nullopt;
}

} // namespace headcap::db
