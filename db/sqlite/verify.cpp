#include "db/sqlite/verify.h"

#include "core/record/kind_words.h"
#include "core/values/english.h"
#include "db/sqlite/kept_files.h"
#include "db/sqlite/read_snapshot.h"
#include "db/sqlite/verify_run.h"

namespace headcap::db {
namespace {

using core::RecordKind;

std::int64_t count(Connection& connection, const std::string& sql) {
    Query query(connection, sql);
    return query.step() ? query.number(0) : 0;
}

std::int64_t workIn(Connection& connection) {
    return count(connection, "SELECT count(*) FROM journal") +
           2 * count(connection, "SELECT count(*) FROM search_text") +
           count(connection, "SELECT count(*) FROM photograph");
}

void verifyDatabase(Connection& connection, VerifyRun& run) {
    Query check(connection, "PRAGMA integrity_check(20)");
    while (check.step()) {
        if (check.text(0) != "ok") {
            run.find("database", std::nullopt, "The database is damaged: " + check.text(0) + ".");
        }
    }
    Query names(connection, "SELECT \"table\", parent FROM pragma_foreign_key_check LIMIT 20");
    while (names.step()) {
        run.find("database", std::nullopt,
                 core::capitalised(oneOf(names.text(0))) + " names " + oneOf(names.text(1)) +
                     " that is not there.");
    }
    run.countAs(count(connection, "PRAGMA page_count"));
}

} // namespace

std::string oneOf(std::string_view kindName) {
    const auto kind = core::recordKindNamed(kindName);
    return kind ? core::oneOf(*kind) : "a record";
}

core::VerifyReport verifyWorkshop(Connection& connection, const FolderFileStore& files,
                                  const core::Progress& progress) {
    const ReadSnapshot snapshot(connection);
    VerifyRun run(progress, workIn(connection));
    const auto keptFiles = [&](RecordKind kind) {
        for (FileFault& fault :
             faultyFiles(connection, files, kind, [&run] { run.checkedOne(); })) {
            run.add(std::move(fault.finding));
        }
    };
    try {
        run.part("database", [&] { verifyDatabase(connection, run); });
        run.part("journal", [&] { verifyJournal(connection, run); });
        run.part("record", [&] { verifyRecords(connection, run); });
        run.part("search_index", [&] { verifySearchTexts(connection, run); });
        run.part("photograph", [&] { keptFiles(RecordKind::photograph); });
        run.part("attachment", [&] { keptFiles(RecordKind::attachment); });
        run.part("report", [&] { keptFiles(RecordKind::issuedReport); });
        run.part("ledger", [&] { verifyLedger(connection, run); });
    } catch (const VerifyRun::Stopped&) {
        run.find("verify", std::nullopt, "The check was stopped before its end.");
    }
    return run.takeReport();
}

} // namespace headcap::db
