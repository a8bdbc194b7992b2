#include "db/sqlite/undo.h"

#include <algorithm>

#include "core/record/contrary.h"
#include "core/record/reversal_words.h"
#include "db/sqlite/record_sql.h"
#include "db/sqlite/undo_refusal.h"

namespace headcap::db {
namespace {

using core::JournalEntry;
using core::JournalRecord;
using core::RecordRef;
using core::Refusal;
using core::Write;

tl::unexpected<Refusal> refuse(Refusal::Code code, std::optional<RecordRef> ref,
                               std::string detail = {}) {
    return tl::unexpected(Refusal{code, ref, std::move(detail)});
}

bool isPermanent(const RecordRef& ref) {
    return core::permanenceOf(ref.kind) == core::Permanence::permanent;
}

// Whether the record stands as the entry found it, in the fields the entry changed.
bool isPutBack(RecordedTransaction& transaction, const JournalRecord& record) {
    const auto now = transaction.find(record.ref);
    if (!record.before || !record.after) {
        return now.has_value() == record.before.has_value() &&
               (!now || now->record == *record.before);
    }
    // Going there from here changes nothing: they agree where the entry changed something.
    const auto again =
        now ? core::fieldsPutBack(now->record, *record.after, *record.before) : std::nullopt;
    return again.has_value();
}

// SQLite trusts the bytes of a change set and can loop over altered ones: it is given only what the
// journal's hash vouches for.
bool bearsItsHash(Connection& connection, const EntryRow& row) {
    const auto before = entryRow(connection, row.sequence - 1);
    return hashOf(row, before ? before->hash : firstPreviousHash()) == row.hash;
}

Done applyInverted(RecordedTransaction& transaction, const JournalEntry& entry,
                   const EntryRow& row) {
    if (!bearsItsHash(transaction.connection(), row)) {
        // Of an altered entry not even a record may be left.
        return refuse(Refusal::Code::cannotUndo,
                      entry.records.empty() ? std::nullopt
                                            : std::optional{entry.records.front().ref},
                      "its entry in the journal was altered; headcap verify names it");
    }
    for (const JournalRecord& record : entry.records) {
        auto now = transaction.find(record.ref);
        transaction.touch(record.ref, now ? std::optional{std::move(now->record)} : std::nullopt);
    }
    const auto conflict = applyChangeSet(transaction.connection(), inverted(row.changes),
                                         [](std::string_view) { return true; });
    if (conflict) {
        return tl::unexpected(refusalFor(transaction.connection(), entry, *conflict));
    }
    for (const JournalRecord& record : entry.records) {
        if (!isPutBack(transaction, record)) {
            return refuse(Refusal::Code::cannotUndo, record.ref,
                          "the change set does not fit the schema any more");
        }
    }
    return {};
}

// Puts back one record that may be edited and removed, by its fields.
Done putBack(RecordedTransaction& transaction, const JournalRecord& record) {
    const auto now = transaction.find(record.ref);
    if (!record.before) {
        if (!now) {
            return refuse(Refusal::Code::missing, record.ref, "it has been removed since");
        }
        if (now->record != *record.after) {
            return refuse(Refusal::Code::changedSince, record.ref, "it was changed again since");
        }
        return transaction.write(Write::What::remove, now->record, now);
    }
    if (!record.after) {
        if (now) {
            return refuse(Refusal::Code::keyTaken, record.ref, "its key is in use again");
        }
        return transaction.write(Write::What::add, *record.before, now);
    }
    if (!now) {
        return refuse(Refusal::Code::missing, record.ref, "it has been removed since");
    }
    const auto back = core::fieldsPutBack(now->record, *record.before, *record.after);
    if (!back) {
        return refuse(Refusal::Code::changedSince, record.ref, "it was changed again since");
    }
    return transaction.write(Write::What::update, *back, now);
}

Done writeAll(RecordedTransaction& transaction, const std::vector<Write>& writes) {
    for (const Write& write : writes) {
        const auto found = transaction.find(core::refOf(write.record));
        if (auto done = transaction.write(write.what, write.record, found); !done) {
            return done;
        }
    }
    return {};
}

// An entry with permanent records: their contraries are written, the others put back one by one.
Done writeContrary(RecordedTransaction& transaction, const JournalEntry& entry,
                   const core::TakingBack& taking, core::IdSource& keys) {
    const auto held = core::heldByPermanent(entry);
    for (const JournalRecord& record : entry.records) {
        const bool stays = std::find(held.begin(), held.end(), record.ref) != held.end();
        const bool isNewPermanent = isPermanent(record.ref) && !record.before;
        if (!stays && !isNewPermanent) {
            if (auto done = putBack(transaction, record); !done) {
                return done;
            }
            continue;
        }
        const auto now = transaction.find(record.ref);
        if (!now) {
            return refuse(Refusal::Code::missing, record.ref, "it has been removed since");
        }
        const auto writes = stays ? core::insteadOfRemoval(now->record, taking, keys)
                                  : core::contraryOf(now->record, entry, taking, keys);
        if (auto done = writeAll(transaction, writes); !done) {
            return done;
        }
    }
    return {};
}

// What was done in the first place, through any number of undoings and redoings.
std::string firstSentence(Connection& connection, EntryRow row) {
    while (row.reverses) {
        auto earlier = entryRow(connection, *row.reverses);
        if (!earlier) {
            break;
        }
        row = *std::move(earlier);
    }
    return row.sentence;
}

} // namespace

std::optional<std::int64_t> undoCandidate(Connection& connection,
                                          const std::optional<std::string>& who) {
    Query query(connection, "SELECT sequence FROM journal j WHERE who IS ? AND kind IN ('change', "
                            "'redo') AND NOT EXISTS (SELECT 1 FROM journal r WHERE r.reverses = "
                            "j.sequence) ORDER BY sequence DESC LIMIT 1");
    query.withOptional(who);
    return query.step() ? std::optional{query.number(0)} : std::nullopt;
}

std::optional<std::int64_t> redoCandidate(Connection& connection,
                                          const std::optional<std::string>& who) {
    Query query(connection,
                "SELECT sequence FROM journal j WHERE who IS ?1 AND kind = 'undo' AND sequence > "
                "coalesce((SELECT sequence FROM journal WHERE who IS ?1 AND kind = 'change' "
                "ORDER BY sequence DESC LIMIT 1), 0) AND NOT EXISTS (SELECT 1 FROM journal r "
                "WHERE r.reverses = j.sequence) ORDER BY sequence DESC LIMIT 1");
    query.withOptional(who);
    return query.step() ? std::optional{query.number(0)} : std::nullopt;
}

tl::expected<EntryRow, Refusal> reverseEntry(RecordedTransaction& transaction,
                                             std::int64_t sequence, const Reversal& reversal,
                                             core::IdSource& keys) {
    const auto row = entryRow(transaction.connection(), sequence);
    if (!row) {
        return refuse(Refusal::Code::nothingToUndo, std::nullopt);
    }
    if (row->schemaVersion != reversal.schemaVersion) {
        return refuse(Refusal::Code::cannotUndo, std::nullopt,
                      "the schema of the workshop has changed since");
    }
    const JournalEntry entry = entryFrom(*row);
    if (auto why = core::whyNotTakenBack(entry)) {
        return tl::unexpected(*std::move(why));
    }
    const bool hasPermanent =
        std::any_of(entry.records.begin(), entry.records.end(),
                    [](const JournalRecord& record) { return isPermanent(record.ref); });
    auto done = hasPermanent ? writeContrary(transaction, entry, {reversal.at, reversal.who}, keys)
                             : applyInverted(transaction, entry, *row);
    if (done) {
        done = transaction.checkNames();
    }
    if (!done) {
        return tl::unexpected(done.error());
    }
    const std::string what = firstSentence(transaction.connection(), *row);
    return transaction.commit(
        {.at = reversal.at,
         .who = reversal.who,
         .kind = reversal.kind,
         .sentence = std::string{reversal.kind == core::EntryKind::undo ? core::kUndoneWord
                                                                        : core::kDoneAgainWord} +
                     what,
         .reverses = sequence});
}

} // namespace headcap::db
