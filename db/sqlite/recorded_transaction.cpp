#include "db/sqlite/recorded_transaction.h"

#include <algorithm>

#include <sqlite3.h>

#include "core/record/kind_words.h"
#include "db/files/journal_note.h"
#include "db/sqlite/errors.h"
#include "db/sqlite/migrations.h"
#include "db/sqlite/record_sql.h"
#include "db/sqlite/search_sql.h"

namespace headcap::db {
namespace {

using core::RecordRef;
using core::Refusal;

// The row was not written: why, in the terms of a refusal. Failures of the disk are thrown.
Refusal refusalFor(int code, const std::string& message, const core::AnyRecord& record) {
    const RecordRef ref = core::refOf(record);
    switch (code) {
    case SQLITE_CONSTRAINT_UNIQUE:
        return {Refusal::Code::numberTaken, ref, message};
    case SQLITE_CONSTRAINT_PRIMARYKEY:
        return {Refusal::Code::keyTaken, ref, message};
    case SQLITE_CONSTRAINT_TRIGGER:
        return {Refusal::Code::neverDeleted, ref, message};
    case SQLITE_CONSTRAINT_FOREIGNKEY:
        return {Refusal::Code::namesNothing, ref};
    default:
        if ((code & 0xff) == SQLITE_CONSTRAINT) {
            return {Refusal::Code::breaksRule, ref, message};
        }
        throwStoreError(code, "writing " + core::oneOf(ref.kind) + ": " + message);
    }
}

} // namespace

std::vector<RecordRef> namedBy(const core::AnyRecord& record) {
    auto refs = core::referencesOf(record);
    if (const auto* attachment = std::get_if<core::Attachment>(&record)) {
        refs.push_back(attachment->subject);
    }
    return refs;
}

std::string countsText(const std::vector<Namers>& namers) {
    std::vector<core::KindCount> counts;
    for (const Namers& one : namers) {
        counts.push_back({one.kind, one.count});
    }
    return core::countsText(counts);
}

void reopenAndSay(Connection& connection, const UnknownOutcome& unknown) {
    std::string found = "the workshop could not be opened again";
    try {
        connection.reopen();
        const auto entry = entryRow(connection, unknown.sequence());
        found = entry && entry->hash == unknown.hash()
                    ? "after opening the workshop again, the change is there"
                    : "after opening the workshop again, the change is not there";
    } catch (const core::StoreError& error) {
        found += std::string{": "} + error.what();
    }
    throw core::StoreError(core::StoreError::Code::outcomeUnknown,
                           std::string{unknown.what()} + "; " + found);
}

RecordedTransaction::RecordedTransaction(Connection& connection, int schemaVersion)
    : m_transaction(connection), m_session(connection), m_schemaVersion(schemaVersion) {
    if (schemaVersionOf(connection) != schemaVersion) {
        throw core::StoreError(core::StoreError::Code::newerProgram,
                               "another program has changed this workshop's schema since it was "
                               "opened");
    }
}

std::optional<core::Found> RecordedTransaction::find(const RecordRef& ref) {
    return findRecord(connection(), ref);
}

void RecordedTransaction::touch(const RecordRef& ref, std::optional<core::AnyRecord> before) {
    m_isRead = false;
    m_touched.try_emplace(ref, Touched{std::move(before), {}});
}

Done RecordedTransaction::write(core::Write::What what, const core::AnyRecord& record,
                                const std::optional<core::Found>& found) {
    const RecordRef ref = core::refOf(record);
    touch(ref, found ? std::optional{found->record} : std::nullopt);
    int code = SQLITE_OK;
    switch (what) {
    case core::Write::What::add:
        code = insertRecord(connection(), record);
        break;
    case core::Write::What::update:
        code = updateRecord(connection(), record);
        break;
    case core::Write::What::remove:
        code = deleteRecord(connection(), ref);
        break;
    }
    if (code != SQLITE_OK) {
        return tl::unexpected(refusalFor(code, connection().message(), record));
    }
    return {};
}

void RecordedTransaction::readAfter() {
    if (m_isRead) {
        return;
    }
    for (auto& [ref, touched] : m_touched) {
        auto after = find(ref);
        touched.after = after ? std::optional{std::move(after->record)} : std::nullopt;
    }
    std::erase_if(m_touched, [](const auto& one) { return one.second.before == one.second.after; });
    m_isRead = true;
}

Done RecordedTransaction::checkNames() {
    readAfter();
    for (const auto& [ref, touched] : m_touched) {
        if (!touched.after) {
            if (const auto namers = namersOf(connection(), ref); !namers.empty()) {
                return tl::unexpected(Refusal{Refusal::Code::stillNamed, ref, countsText(namers)});
            }
            continue;
        }
        const auto known = touched.before ? namedBy(*touched.before) : std::vector<RecordRef>{};
        for (const RecordRef& named : namedBy(*touched.after)) {
            const bool isOld = std::find(known.begin(), known.end(), named) != known.end();
            if (!isOld && !recordExists(connection(), named)) {
                return tl::unexpected(
                    Refusal{Refusal::Code::namesNothing, ref, core::oneOf(named.kind)});
            }
        }
    }
    return {};
}

tl::expected<EntryRow, Refusal> RecordedTransaction::commit(const EntryHead& head) {
    readAfter();
    auto rows = recordRows(m_touched);
    if (!rows) {
        return tl::unexpected(
            Refusal{Refusal::Code::breaksRule, rows.error().record, "a text is not UTF-8"});
    }
    EntryRow entry;
    entry.at = core::isoText(head.at);
    entry.who = head.who ? std::optional{head.who->text()} : std::nullopt;
    entry.kind = entryKindName(head.kind);
    entry.sentence = head.sentence;
    entry.reverses = head.reverses;
    entry.schemaVersion = m_schemaVersion;
    entry.changes = m_session.changeSet();
    entry.records = *std::move(rows);
    appendEntry(connection(), entry);
    updateSearch(connection(), m_touched);
    try {
        m_transaction.commit();
    } catch (const core::StoreError& error) {
        if (error.code() == core::StoreError::Code::outcomeUnknown) {
            throw UnknownOutcome(error, entry.sequence, entry.hash);
        }
        throw;
    }
    noteJournal(connection().file().parent_path(), {entry.sequence, entry.hash});
    return entry;
}

} // namespace headcap::db
