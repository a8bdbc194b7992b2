// A change to the workshop: some writes that belong together, and the plain sentence that says
// what was done. It is kept whole or not at all, as one entry of the journal.
#pragma once

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/record/any_record.h"

namespace headcap::core {

// Where in the journal a record was last changed. A change says which revision it was made from;
// a record that has changed since is a conflict, and nothing is overwritten.
struct Revision {
    std::int64_t sequence = 0;
    friend auto operator<=>(const Revision&, const Revision&) = default;
};

struct Write {
    enum class What { add, update, remove };
    What what;
    AnyRecord record; // for a removal, as it was read
    Revision read{};  // of an update or removal: the revision the record was read at
};

struct Change {
    std::string sentence; // "Finding added: boards, detached"
    std::optional<Id<Person>> who{};
    std::vector<Write> writes{};

    Change& add(AnyRecord record) {
        writes.push_back({Write::What::add, std::move(record), {}});
        return *this;
    }
    Change& update(AnyRecord record, Revision read) {
        writes.push_back({Write::What::update, std::move(record), read});
        return *this;
    }
    Change& remove(AnyRecord record, Revision read) {
        writes.push_back({Write::What::remove, std::move(record), read});
        return *this;
    }
};

// Why a change was not made, though the store is sound: nothing at all was written.
struct Refusal {
    enum class Code {
        changedSince, // somebody changed the record since it was read
        missing,      // it is no longer there
        keyTaken,     // another record has the key
        numberTaken,  // a number people see (job, lot) is in use
        stillNamed,   // other records name the one to be removed
        neverDeleted, // the log, the ledger and issued reports
        neverChanged, // nor rewritten
        namesNothing, // it names a record that is not there
        breaksRule,   // a CHECK of the schema
        cannotUndo,   // issuing and sending; or the schema has changed since
        nothingToUndo,
    };
    Code code;
    std::optional<RecordRef> record{};
    std::string detail{}; // for the person: which column, how many records of what kind
};

} // namespace headcap::core
