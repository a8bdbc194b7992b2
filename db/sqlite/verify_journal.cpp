// The journal against itself, and the records against the journal.
#include "core/record/kind_words.h"
#include "core/values/english.h"
#include "db/files/journal_note.h"
#include "db/sqlite/journal_sql.h"
#include "db/sqlite/record_sql.h"
#include "db/sqlite/verify_run.h"

namespace headcap::db {
namespace {

using core::RecordKind;
using core::RecordRef;
using core::StoreError;

void compare(Connection& connection, VerifyRun& run, const RecordRef& ref,
             const std::optional<std::string>& after, std::int64_t sequence) {
    const std::string what = core::capitalised(core::oneOf(ref.kind));
    const std::string entry = " (entry " + std::to_string(sequence) + " of the journal).";
    try {
        const auto found = findRecord(connection, ref);
        if (after && !found) {
            run.find("record", ref, what + " is missing" + entry);
        } else if (!after && found) {
            run.find("record", ref, what + " is there that was removed" + entry);
        } else if (after && found->record != recordFromJournal(ref, *after)) {
            run.find("record", ref, what + " is not as it was written" + entry);
        }
    } catch (const StoreError& error) {
        run.find("record", ref, what + " can't be read: " + error.what() + ".");
    }
}

} // namespace

void verifyJournal(Connection& connection, VerifyRun& run) {
    std::string previous = firstPreviousHash();
    std::int64_t expected = 1;
    Query sequences(connection, "SELECT sequence FROM journal ORDER BY sequence");
    while (sequences.step()) {
        const auto entry = entryRow(connection, sequences.number(0));
        const std::string number = std::to_string(sequences.number(0));
        if (sequences.number(0) != expected) {
            run.find("journal", std::nullopt,
                     "Entries of the journal are missing before entry " + number + ".");
        } else if (entry && hashOf(*entry, previous) != entry->hash) {
            run.find("journal", std::nullopt,
                     "Entry " + number + " of the journal (\"" + entry->sentence +
                         "\") is not as it was written.");
        }
        previous = entry ? entry->hash : previous;
        expected = sequences.number(0) + 1;
        run.checkedOne();
    }
    const auto noted = notedJournal(connection.file().parent_path());
    const auto there = noted ? entryRow(connection, noted->sequence) : std::nullopt;
    if (there && there->hash != noted->hash) {
        // Its chain of hashes holds, for it was made anew with it.
        run.find("journal", std::nullopt,
                 "Entry " + std::to_string(noted->sequence) +
                     " of the journal is not the one that was written: the journal was written "
                     "anew, or another copy of the workshop was put in its place and worked on.");
    }
    if (noted && noted->sequence >= expected) {
        run.find("journal", std::nullopt,
                 "The journal ends at entry " + std::to_string(expected - 1) + ", and entry " +
                     std::to_string(noted->sequence) +
                     " was written: what was committed last is lost (the WAL beside the database "
                     "was removed, or an older copy put in its place).");
    }
    Query loose(connection, "SELECT DISTINCT sequence FROM journal_record WHERE sequence NOT "
                            "IN (SELECT sequence FROM journal)");
    while (loose.step()) {
        run.find("journal", std::nullopt,
                 "The journal holds records of entry " + std::to_string(loose.number(0)) +
                     ", which is missing.");
    }
}

void verifyRecords(Connection& connection, VerifyRun& run) {
    Query last(connection, "SELECT record_id, kind, max(sequence), after FROM journal_record "
                           "GROUP BY record_id");
    while (last.step()) {
        run.checkedOne();
        const auto kind = core::recordKindNamed(last.text(1));
        const auto id = core::Uuid::fromText(last.text(0));
        if (!kind || !id) {
            run.find("record", std::nullopt,
                     "The journal names a record that can't be: " + last.text(0) + ".");
            continue;
        }
        compare(connection, run, {*kind, *id},
                last.isNull(3) ? std::nullopt : std::optional{last.text(3)}, last.number(2));
    }
    for (const std::string_view name : core::EnumNames<RecordKind>::kNames) {
        Query loose(connection, "SELECT \"id\" FROM " + sqlName(name) +
                                    " t WHERE NOT EXISTS (SELECT 1 FROM journal_record "
                                    "WHERE record_id = t.\"id\")");
        while (loose.step()) {
            const auto id = core::Uuid::fromText(loose.text(0));
            run.find(
                "record",
                id ? std::optional{RecordRef{*core::recordKindNamed(name), *id}} : std::nullopt,
                core::capitalised(oneOf(name)) + " is there of which the journal knows nothing.");
        }
    }
}

} // namespace headcap::db
