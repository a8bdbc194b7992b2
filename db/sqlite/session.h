// SQLite's session extension: what a transaction changed, as a change set that can be inverted
// and applied.
#pragma once

#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/record/record_kind.h"
#include "db/sqlite/connection.h"

struct sqlite3_session;

namespace headcap::db {

using ChangeSet = std::vector<std::byte>;

// Records every change to the tables of records, and to no other: a derived table in a change set
// would be changed twice when the set is applied, and the search index broken by it.
class Session {
public:
    explicit Session(Connection& connection);
    ~Session();
    Session(const Session&) = delete;
    Session& operator=(const Session&) = delete;

    [[nodiscard]] ChangeSet changeSet() const;

private:
    sqlite3_session* m_session = nullptr;
};

// The change set that takes this one back.
[[nodiscard]] ChangeSet inverted(std::span<const std::byte> changes);

// Which tables of a change set are applied.
using TableFilter = std::function<bool(std::string_view table)>;

// How many rows it changes in the tables that pass.
[[nodiscard]] std::int64_t rowsOf(std::span<const std::byte> changes, const TableFilter& passes);

struct ApplyConflict {
    enum class Why {
        changedSince, // the row is there, but not as the change set says
        missing,      // the row is gone
        keyTaken,     // a row with that key is there
        breaksRule,   // a constraint of the schema
        foreignKey,   // rows would name a row that is gone
        doneInPart,   // it said OK, and changed fewer rows than it holds
    };
    Why why;
    std::string table{};
    std::string key{}; // of the row, where one row is to blame
};

// Applies it whole, or not at all.
[[nodiscard]] std::optional<ApplyConflict> applyChangeSet(Connection& connection,
                                                          std::span<const std::byte> changes,
                                                          const TableFilter& passes);

} // namespace headcap::db
