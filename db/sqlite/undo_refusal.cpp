#include "db/sqlite/undo_refusal.h"

#include <algorithm>

#include "db/sqlite/record_sql.h"

namespace headcap::db {
namespace {

using core::JournalEntry;
using core::JournalRecord;
using core::RecordRef;
using core::Refusal;

// A record named by one that comes back, or naming one that goes.
Refusal foreignKeyRefusal(Connection& connection, const JournalEntry& entry) {
    for (const JournalRecord& record : entry.records) {
        if (record.before || !record.after) {
            continue;
        }
        auto namers = namersOf(connection, record.ref);
        // Those of the same entry go with it.
        for (const JournalRecord& other : entry.records) {
            if (other.ref == record.ref || !other.after || other.before) {
                continue;
            }
            const auto named = core::referencesOf(*other.after);
            if (std::find(named.begin(), named.end(), record.ref) == named.end()) {
                continue;
            }
            for (Namers& namer : namers) {
                namer.count -= namer.kind == other.ref.kind ? 1 : 0;
            }
        }
        std::erase_if(namers, [](const Namers& namer) { return namer.count <= 0; });
        if (!namers.empty()) {
            return {Refusal::Code::stillNamed, record.ref, countsText(namers)};
        }
    }
    return {Refusal::Code::namesNothing};
}

std::optional<RecordRef> conflictRecord(const ApplyConflict& conflict) {
    const auto kind = core::recordKindNamed(conflict.table);
    const auto id = core::Uuid::fromText(conflict.key);
    return kind && id ? std::optional{RecordRef{*kind, *id}} : std::nullopt;
}

} // namespace

Refusal refusalFor(Connection& connection, const JournalEntry& entry,
                   const ApplyConflict& conflict) {
    const auto ref = conflictRecord(conflict);
    switch (conflict.why) {
    case ApplyConflict::Why::changedSince:
        return {Refusal::Code::changedSince, ref, "it was changed again since"};
    case ApplyConflict::Why::missing:
        return {Refusal::Code::missing, ref, "it has been removed since"};
    case ApplyConflict::Why::keyTaken:
        return {Refusal::Code::keyTaken, ref, "its key is in use again"};
    case ApplyConflict::Why::foreignKey:
        return foreignKeyRefusal(connection, entry);
    case ApplyConflict::Why::breaksRule:
        return {Refusal::Code::numberTaken, ref, "its number is in use again"};
    case ApplyConflict::Why::doneInPart:
        break;
    }
    return {Refusal::Code::cannotUndo, ref, "the change set does not fit the schema any more"};
}

} // namespace headcap::db
