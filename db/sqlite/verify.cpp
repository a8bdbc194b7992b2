#include "db/sqlite/verify.h"

#include <algorithm>

#include <sqlite3.h>

#include "core/materials/ledger_laws.h"
#include "core/values/english.h"
#include "db/files/journal_note.h"
#include "db/sqlite/errors.h"
#include "db/sqlite/journal_sql.h"
#include "db/sqlite/kept_files.h"
#include "db/sqlite/read_snapshot.h"
#include "db/sqlite/record_sql.h"
#include "db/sqlite/search_sql.h"
#include "db/sqlite/write_transaction.h"

namespace headcap::db {
namespace {

using core::RecordKind;
using core::RecordRef;
using core::StoreError;

constexpr std::int64_t kAskEvery = 512;

struct Stopped {};

class Verification {
public:
    Verification(Connection& connection, const FolderFileStore& files,
                 const core::Progress& progress)
        : m_connection(connection), m_files(files), m_progress(progress) {}

    core::VerifyReport run() {
        const ReadSnapshot snapshot(m_connection);
        try {
            countWork();
            part("database", [this] { database(); });
            part("journal", [this] { journal(); });
            part("record", [this] { records(); });
            part("search_index", [this] { searchTexts(); });
            part("photograph", [this] { files(RecordKind::photograph); });
            part("attachment", [this] { files(RecordKind::attachment); });
            part("report", [this] { files(RecordKind::issuedReport); });
            part("ledger", [this] { ledger(); });
        } catch (const Stopped&) {
            find("verify", std::nullopt, "The check was stopped before its end.");
        }
        return std::move(m_report);
    }

private:
    template <class Work>
    void part(const std::string& what, Work work) {
        m_count = 0;
        try {
            work();
        } catch (const StoreError& error) {
            find(what, std::nullopt,
                 "The check could not go on: " + std::string{error.what()} + ".");
        }
        m_report.checked.emplace_back(what, m_count);
    }

    void find(const std::string& what, std::optional<RecordRef> record, std::string sentence) {
        m_report.findings.push_back({what, record, std::move(sentence)});
    }

    void checkedOne() {
        ++m_count;
        if (++m_done % kAskEvery == 0 && !m_progress(m_done, std::max(m_done, m_total))) {
            throw Stopped{};
        }
    }

    [[nodiscard]] std::int64_t count(const std::string& sql) {
        Query query(m_connection, sql);
        return query.step() ? query.number(0) : 0;
    }

    void countWork() {
        m_total = count("SELECT count(*) FROM journal") +
                  2 * count("SELECT count(*) FROM search_text") +
                  count("SELECT count(*) FROM photograph");
    }

    void database() {
        Query check(m_connection, "PRAGMA integrity_check(20)");
        while (check.step()) {
            if (check.text(0) != "ok") {
                find("database", std::nullopt, "The database is damaged: " + check.text(0) + ".");
            }
        }
        Query names(m_connection,
                    "SELECT \"table\", parent FROM pragma_foreign_key_check LIMIT 20");
        while (names.step()) {
            find("database", std::nullopt,
                 core::capitalised(one(names.text(0))) + " names " + one(names.text(1)) +
                     " that is not there.");
        }
        m_count = count("PRAGMA page_count");
    }

    void journal() {
        std::string previous = firstPreviousHash();
        std::int64_t expected = 1;
        Query sequences(m_connection, "SELECT sequence FROM journal ORDER BY sequence");
        while (sequences.step()) {
            const auto entry = entryRow(m_connection, sequences.number(0));
            const std::string number = std::to_string(sequences.number(0));
            if (sequences.number(0) != expected) {
                find("journal", std::nullopt,
                     "Entries of the journal are missing before entry " + number + ".");
            } else if (entry && hashOf(*entry, previous) != entry->hash) {
                find("journal", std::nullopt,
                     "Entry " + number + " of the journal (\"" + entry->sentence +
                         "\") is not as it was written.");
            }
            previous = entry ? entry->hash : previous;
            expected = sequences.number(0) + 1;
            checkedOne();
        }
        const auto noted = notedJournal(m_connection.file().parent_path());
        const auto there = noted ? entryRow(m_connection, noted->sequence) : std::nullopt;
        if (there && there->hash != noted->hash) {
            // Its chain of hashes holds, for it was made anew with it.
            find("journal", std::nullopt,
                 "Entry " + std::to_string(noted->sequence) +
                     " of the journal is not the one that was written: the journal was written "
                     "anew, or another copy of the workshop was put in its place and worked on.");
        }
        if (noted && noted->sequence >= expected) {
            find("journal", std::nullopt,
                 "The journal ends at entry " + std::to_string(expected - 1) + ", and entry " +
                     std::to_string(noted->sequence) +
                     " was written: what was committed last is lost (the WAL beside the database "
                     "was removed, or an older copy put in its place).");
        }
        Query loose(m_connection, "SELECT DISTINCT sequence FROM journal_record WHERE sequence NOT "
                                  "IN (SELECT sequence FROM journal)");
        while (loose.step()) {
            find("journal", std::nullopt,
                 "The journal holds records of entry " + std::to_string(loose.number(0)) +
                     ", which is missing.");
        }
    }

    // What the last entry of each record says, against the record.
    void records() {
        Query last(m_connection, "SELECT record_id, kind, max(sequence), after FROM journal_record "
                                 "GROUP BY record_id");
        while (last.step()) {
            checkedOne();
            const auto kind = core::recordKindNamed(last.text(1));
            const auto id = core::Uuid::fromText(last.text(0));
            if (!kind || !id) {
                find("record", std::nullopt,
                     "The journal names a record that can't be: " + last.text(0) + ".");
                continue;
            }
            compare({*kind, *id}, last.isNull(3) ? std::nullopt : std::optional{last.text(3)},
                    last.number(2));
        }
        for (const std::string_view name : core::EnumNames<RecordKind>::kNames) {
            Query loose(m_connection, "SELECT \"id\" FROM " + sqlName(name) +
                                          " t WHERE NOT EXISTS (SELECT 1 FROM journal_record "
                                          "WHERE record_id = t.\"id\")");
            while (loose.step()) {
                const auto id = core::Uuid::fromText(loose.text(0));
                find(
                    "record",
                    id ? std::optional{RecordRef{*core::recordKindNamed(name), *id}} : std::nullopt,
                    core::capitalised(one(name)) + " is there of which the journal knows nothing.");
            }
        }
    }

    void compare(const RecordRef& ref, const std::optional<std::string>& after,
                 std::int64_t sequence) {
        const std::string what = core::capitalised(one(core::nameOf(ref.kind)));
        const std::string entry = " (entry " + std::to_string(sequence) + " of the journal).";
        try {
            const auto found = findRecord(m_connection, ref);
            if (after && !found) {
                find("record", ref, what + " is missing" + entry);
            } else if (!after && found) {
                find("record", ref, what + " is there that was removed" + entry);
            } else if (after && found->record != recordFromJournal(ref, *after)) {
                find("record", ref, what + " is not as it was written" + entry);
            }
        } catch (const StoreError& error) {
            find("record", ref, what + " can't be read: " + error.what() + ".");
        }
    }

    void searchTexts() {
        Query texts(m_connection, "SELECT kind, record_id, words FROM search_text");
        while (texts.step()) {
            checkedOne();
            const auto kind = core::recordKindNamed(texts.text(0));
            const auto id = core::Uuid::fromText(texts.text(1));
            const auto found =
                kind && id ? findRecord(m_connection, RecordRef{*kind, *id}) : std::nullopt;
            if (!found || indexedWords(m_connection, found->record) != texts.text(2)) {
                find("search_index",
                     found ? std::optional{core::refOf(found->record)} : std::nullopt,
                     "The search index is out of date for " + one(texts.text(0)) +
                         "; it can be made anew.");
            }
        }
        for (std::size_t i = 0; i < core::kRecordKindCount; ++i) {
            const auto kind = static_cast<RecordKind>(i);
            Query missing(m_connection, "SELECT " + columnList(kind, "t") + " FROM " +
                                            sqlName(core::nameOf(kind)) +
                                            " t WHERE NOT EXISTS (SELECT 1 FROM search_text WHERE "
                                            "record_id = t.\"id\")");
            while (missing.step()) {
                const auto record = recordAt(missing, kind);
                if (!indexedWords(m_connection, record).empty()) {
                    find("search_index", core::refOf(record),
                         "The search index lacks " + one(core::nameOf(kind)) +
                             "; it can be made anew.");
                }
            }
        }
    }

    void files(RecordKind kind) {
        for (FileFault& fault :
             faultyFiles(m_connection, m_files, kind, [this] { checkedOne(); })) {
            m_report.findings.push_back(std::move(fault.finding));
        }
    }

    template <class Record>
    std::vector<Record> all() {
        constexpr RecordKind kKind = core::kindOf<Record>();
        std::vector<Record> records;
        Query query(m_connection, "SELECT " + columnList(kKind, "t") + " FROM " +
                                      sqlName(core::nameOf(kKind)) + " t");
        while (query.step()) {
            records.push_back(std::get<Record>(recordAt(query, kKind)));
        }
        return records;
    }

    void ledger() {
        const core::LedgerBook book{.shelf = {.materials = all<core::Material>(),
                                              .lots = all<core::Lot>(),
                                              .parts = all<core::LotPart>(),
                                              .ledger = all<core::LedgerEntry>()},
                                    .uses = all<core::MaterialUse>(),
                                    .steps = all<core::Step>(),
                                    .cuttings = all<core::Cutting>(),
                                    .cutParts = all<core::CutPart>(),
                                    .techniques =
                                        core::TechniquesInForce{all<core::HouseTechnique>()}};
        m_count = static_cast<std::int64_t>(book.shelf.ledger.size());
        for (core::LedgerBreach& breach : core::ledgerBreaches(book)) {
            find("ledger", breach.record, std::move(breach.sentence));
        }
        lotSums();
    }

    // What is derived from the ledger, against the ledger.
    void lotSums() {
        static const std::string kSummed =
            "SELECT lot, kind, amount_unit, amount_count > 0, count(*), max(id), max(at), "
            "sum(amount_count / 1000000), sum(amount_count % 1000000) FROM ledger_entry GROUP BY "
            "1, 2, 3, 4";
        static const std::string kKept = "SELECT lot, kind, unit, is_in, lines, last_entry, "
                                         "last_at, millions, rest FROM lot_sum";
        Query wrong(m_connection, "SELECT DISTINCT lot FROM (SELECT * FROM (" + kSummed +
                                      " EXCEPT " + kKept + ") UNION ALL SELECT * FROM (" + kKept +
                                      " EXCEPT " + kSummed + "))");
        while (wrong.step()) {
            const auto id = core::Uuid::fromText(wrong.text(0));
            find("ledger", id ? std::optional{RecordRef{RecordKind::lot, *id}} : std::nullopt,
                 "The sums kept of a lot are not those of its lines in the ledger.");
        }
    }

    // "a finding", "an issued report".
    static std::string one(std::string_view name) {
        const bool hasVowel =
            !name.empty() && std::string_view{"aeiou"}.find(name.front()) != std::string_view::npos;
        return (hasVowel ? "an " : "a ") + words(name);
    }

    static std::string words(std::string_view name) {
        std::string text{name};
        std::replace(text.begin(), text.end(), '_', ' ');
        return text;
    }

    Connection& m_connection;
    const FolderFileStore& m_files;
    const core::Progress& m_progress;
    core::VerifyReport m_report{};
    std::int64_t m_count = 0;
    std::int64_t m_done = 0;
    std::int64_t m_total = 0;
};

} // namespace

core::VerifyReport verifyWorkshop(Connection& connection, const FolderFileStore& files,
                                  const core::Progress& progress) {
    return Verification(connection, files, progress).run();
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
