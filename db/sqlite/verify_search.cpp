// The search index against the records it was made from, and by its own check.
#include <sqlite3.h>

#include "core/record/kind_words.h"
#include "db/sqlite/errors.h"
#include "db/sqlite/record_sql.h"
#include "db/sqlite/search_sql.h"
#include "db/sqlite/verify.h"
#include "db/sqlite/verify_run.h"
#include "db/sqlite/write_transaction.h"

namespace headcap::db {

using core::RecordKind;
using core::RecordRef;

void verifySearchTexts(Connection& connection, VerifyRun& run) {
    Query texts(connection, "SELECT kind, record_id, words FROM search_text");
    while (texts.step()) {
        run.checkedOne();
        const auto kind = core::recordKindNamed(texts.text(0));
        const auto id = core::Uuid::fromText(texts.text(1));
        const auto found =
            kind && id ? findRecord(connection, RecordRef{*kind, *id}) : std::nullopt;
        if (!found || indexedWords(connection, found->record) != texts.text(2)) {
            run.find("search_index",
                     found ? std::optional{core::refOf(found->record)} : std::nullopt,
                     "The search index is out of date for " + oneOf(texts.text(0)) +
                         "; it can be made anew.");
        }
    }
    for (std::size_t i = 0; i < core::kRecordKindCount; ++i) {
        const auto kind = static_cast<RecordKind>(i);
        Query missing(connection, "SELECT " + columnList(kind, "t") + " FROM " +
                                      sqlName(core::nameOf(kind)) +
                                      " t WHERE NOT EXISTS (SELECT 1 FROM search_text WHERE "
                                      "record_id = t.\"id\")");
        while (missing.step()) {
            const auto record = recordAt(missing, kind);
            if (!indexedWords(connection, record).empty()) {
                run.find("search_index", core::refOf(record),
                         "The search index lacks " + core::oneOf(kind) + "; it can be made anew.");
            }
        }
    }
}

std::optional<core::VerifyFinding> verifySearchIndex(Connection& writing) {
    WriteTransaction transaction(writing);
    const int code =
        writing.tryRun("INSERT INTO search(search, rank) VALUES('integrity-check', 1)");
    if (code == SQLITE_OK) {
        return std::nullopt;
    }
    if ((code & 0xff) != SQLITE_CORRUPT) {
        throwStoreError(code, "checking the search index: " + writing.message());
    }
    return core::VerifyFinding{"search_index", std::nullopt,
                               "The search index is damaged; it can be made anew."};
}

} // namespace headcap::db
